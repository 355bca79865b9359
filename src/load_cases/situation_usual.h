/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_SITUATION_USUAL_H
#define LOWWALL_LOAD_CASES_SITUATION_USUAL_H

#include "situation_plan.h"

bool lw_plan_drained(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
bool lw_plan_sitting(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
bool lw_plan_leaning(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);

#endif
