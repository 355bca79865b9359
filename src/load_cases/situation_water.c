/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/studies.h>

#include "soil/site.h"
#include "situation_water.h"
#include "storm.h"

/* Water behind the wall: its way out blocked, and a storm in a bed that cannot drain. */

static bool has_outlet(const lw_site *site) {
  return site->drain_outlets > 0 || site->joints_open || site->ground_drains;
}

/* Water up to the lower of the soil's top and the overflow, or higher where it stands there anyway. */
bool lw_plan_blocked(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  static const char *const WHY[] = {
      "no way out for water is known, so a wet bed is the usual state",
      "there is one way out for water, and it will block one day",
      "there are two or more ways out for water, so all of them blocked is printed and does not decide"};
  static const char NOT_REACHED[] =
      "this soil does not drain, and no drainage stone 300 mm wide or more leads "
      "its water out, so a wet bed is the usual state";
  static const char BURIED[] =
      "the outlets lie below the ground in front, where no water comes out, so a wet bed is the usual state";
  static const lw_situation_kind KIND[] = {LW_USUAL, LW_UNUSUAL, LW_WHAT_IF};
  int ways = lw_site_ways_out(&wall->site);
  int at = ways < 2 ? ways : 2;
  (void)tables;
  plan->name = LW_SITUATION_OUTLET_BLOCKED;
  plan->kind = KIND[at];
  plan->decides = at < 2;
  plan->why = at > 0                      ? WHY[at]
              : has_outlet(&wall->site)   ? NOT_REACHED
              : wall->site.outlets_buried ? BURIED
                                          : WHY[0];
  plan->water_depth_m = lw_site_blocked_depth(&wall->site);
  return true;
}

/* Rain on the bed alone stands no higher than a blocked outlet makes it, and that case is checked anyway. */
bool lw_plan_storm(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  lw_storm storm;
  (void)tables;
  lw_storm_find(wall, &storm);
  plan->name = LW_SITUATION_STORM;
  plan->kind = LW_WHAT_IF;
  plan->decides = false;
  plan->why = "it is never worse than the outlet blocked, which stands above";
  plan->water_depth_m = storm.water_depth_m;
  return storm.rain_m > 0.0;
}
