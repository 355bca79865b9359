/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_WIND_H
#define LOWWALL_LOAD_CASES_WIND_H

#include "situation_plan.h"

bool lw_plan_wind(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);

/* The posts of a fence behind push the ground. */
void lw_wind_blow(const lw_wall *wall, lw_ground *ground);

#endif
