/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_SITUATION_EARTHQUAKE_H
#define LOWWALL_LOAD_CASES_SITUATION_EARTHQUAKE_H

#include "situation_plan.h"

bool lw_plan_earthquake(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);

#endif
