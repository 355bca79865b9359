/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation_earthquake.h"

#include "situation_water.h"

/* With the water that is usual: where it has no way out, that is a wet bed. Nobody sits there. */
bool lw_plan_earthquake(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  lw_situation_plan blocked = *plan;
  lw_plan_blocked(wall, tables, &blocked);
  plan->name = LW_SITUATION_EARTHQUAKE;
  plan->kind = LW_EXTREME;
  plan->decides = true;
  plan->why = LW_WHY_EARTHQUAKE;
  if (blocked.kind == LW_USUAL) plan->water_depth_m = blocked.water_depth_m;
  return wall->seismic_horizontal > 0.0 || wall->seismic_vertical > 0.0;
}
