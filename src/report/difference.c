/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "difference.h"

#include <lowwall/pressure.h>

/* Formula and wedge: why they differ, and where the formula is from. */

const char *lw_difference_words(lw_difference difference) {
  switch (difference) {
  case LW_DIFFER_NOT: return "";
  case LW_DIFFER_COHESION:
    return "cohesion: the wedge shares it out along one plane, the formula depth by depth";
  case LW_DIFFER_LAYERS: return "layers: the wedge takes one plane through all, the formula each by itself";
  case LW_DIFFER_LOADS:
    return "loads at a distance: the wedge carries one whole once its plane passes behind it, elasticity a "
           "part of each wherever it stands";
  case LW_DIFFER_WET_SLOPE:
    return "ground that rises above level water: the wedge weighs it moist there, the formula wet";
  case LW_DIFFER_BROKEN: return "broken ground: the formula takes the slope as endless";
  case LW_DIFFER_WATER:
    return "a water level within the height: the wedge weighs wet and moist soil on one plane";
  case LW_DIFFER_SHAKEN_LOAD:
    return "a load on wet ground: the earthquake turns the ground's weight further than the load's";
  case LW_DIFFER_STEEP: return "ground nearly as steep as the friction angle: the wedge has no far end";
  case LW_DIFFER_CURVE: return "the curve of annex C: the wedge slides on a plane";
  }
  return "";
}

const char *lw_thrust_source(const lw_result *result) {
  const lw_method *method = &result->wall.method;
  const lw_pressure_routine *own = lw_pressure_routine_of(method->pressure),
                            *used = lw_active_routine_of(method->pressure, method->active_by);
  return used != own ? used->source : lw_pressure_source(method->pressure, result->wall.site.slope_rad);
}
