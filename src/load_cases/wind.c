/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "wind.h"

/* Wind on a fence behind the wall: its posts push the ground as a line does. */

bool lw_plan_wind(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  (void)tables;
  plan->name = LW_SITUATION_WIND;
  plan->kind = LW_UNUSUAL;
  plan->decides = true;
  plan->why = LW_WHY_POSTS_PUSH;
  return wall->wind.behind;
}

void lw_wind_blow(const lw_wall *wall, lw_ground *ground) {
  ground->wind_kn_per_m = wall->wind.push_kn_per_m;
  ground->wind_distance_m = wall->wind.distance_m;
  ground->wind_below_m = wall->wind.below_m;
}
