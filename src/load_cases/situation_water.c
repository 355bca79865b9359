/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/studies.h>

#include "soil/site.h"
#include "situation_water.h"
#include "storm.h"

/* Water behind the wall: its way out blocked, and a storm in a bed that cannot drain. */

static bool has_outlet(const lw_site *site) {
  return site->drain_outlets > 0 || site->joints_open || site->ground_drains;
}

static lw_situation_why why_wet(const lw_site *site) {
  if (has_outlet(site)) return LW_WHY_NOT_REACHED;
  return site->outlets_buried ? LW_WHY_BURIED : LW_WHY_NO_WAY_OUT;
}

/* Water up to the lower of the soil's top and the overflow, or higher where it stands there anyway. */
bool lw_plan_blocked(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  static const lw_situation_kind KIND[] = {LW_USUAL, LW_UNUSUAL, LW_WHAT_IF};
  int ways = wall->site.ways_out;
  int at = ways < 2 ? ways : 2;
  (void)tables;
  plan->name = LW_SITUATION_OUTLET_BLOCKED;
  plan->kind = KIND[at];
  plan->decides = at < 2;
  plan->why = at == 0 ? why_wet(&wall->site) : at == 1 ? LW_WHY_ONE_WAY_OUT : LW_WHY_WAYS_OUT;
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
  plan->why = LW_WHY_NEVER_WORSE;
  plan->water_depth_m = storm.water_depth_m;
  return storm.rain_m > 0.0;
}
