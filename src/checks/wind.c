/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation.h"

/* Wind on a fence behind the wall: its posts push the ground as a line does. */

bool lw_plan_wind(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  (void)tables;
  plan->name = LW_SITUATION_WIND;
  plan->kind = LW_UNUSUAL;
  plan->decides = true;
  plan->why = "the posts of the fence behind push the ground that the wall holds";
  return wall->wind.behind;
}

void lw_wind_blow(lw_wall *now) {
  lw_site *site = &now->site;
  if (!now->wind.behind || site->load_count >= LW_SITE_LOAD_MAX) return;
  site->load[site->load_count++] = (lw_site_load){.kind = LW_LOAD_LINE,
                                                  .push_kn_per_m = now->wind.push_kn_per_m,
                                                  .near_m = now->wind.distance_m,
                                                  .far_m = now->wind.distance_m};
}
