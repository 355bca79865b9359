/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_SITUATION_SOAKED_H
#define LOWWALL_LOAD_CASES_SITUATION_SOAKED_H

#include "situation_plan.h"

/* Where nothing lets the water out, the soaked wall is that with its outlet blocked. */
bool lw_plan_soaked(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);

#endif
