/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/studies.h>

#include "situation_water.h"
#include "standing.h"
#include "storm.h"

/* Water behind the wall: its way out blocked, and a storm in a bed that cannot drain. */

static lw_situation_why why_wet(const lw_site *site) {
  if (site->drain_outlets > 0 || site->ground_drains) return LW_WHY_NOT_REACHED;
  return site->outlets_buried ? LW_WHY_BURIED : LW_WHY_NO_WAY_OUT;
}

static lw_situation_why why_blocked(const lw_site *site) {
  if (site->ways_out == 0) return why_wet(site);
  if (site->ways_out > 1) return LW_WHY_WAYS_OUT;
  if (lw_standing_by_joints(site)) return LW_WHY_OPEN_JOINTS;
  return site->ways_found > 1 ? LW_WHY_AS_ONE : LW_WHY_ONE_WAY_OUT;
}

bool lw_plan_blocked(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  static const lw_situation_kind KIND[] = {LW_USUAL, LW_UNUSUAL, LW_WHAT_IF};
  int at = wall->site.ways_out < 2 ? wall->site.ways_out : 2;
  (void)tables;
  plan->name = LW_SITUATION_OUTLET_BLOCKED;
  plan->kind = KIND[at];
  plan->decides = at < 2;
  plan->why = why_blocked(&wall->site);
  plan->water_depth_m = lw_standing_blocked(wall);
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
