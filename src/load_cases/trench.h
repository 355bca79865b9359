/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_TRENCH_H
#define LOWWALL_LOAD_CASES_TRENCH_H

#include "situation_plan.h"

bool lw_plan_trench(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);

/* What a trench in front takes away from the support of the wall. */
void lw_trench_open(const lw_wall *wall, lw_ground *ground);

#endif
