/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <lowwall/passive.h>

#include <math.h>

/* Rankine and Coulomb side by side for the whole wall, whichever of them the wall was checked with, each with
 * the wedge of its own plane and direction. Strengths are those of the site, before any partial factor. */

static bool has_cohesion(const lw_plane *plane) {
  for (int i = 0; i < plane->layer_count; i++) {
    if (plane->layer[i].cohesion_kpa > 0.0) return true;
  }
  return false;
}

const char *lw_difference_why(const lw_plane *plane) {
  if (lw_plane_is_plain(plane)) return "";
  if (has_cohesion(plane))
    return "cohesion: the wedge shares it out along one plane, the formula depth by depth";
  if (plane->layer_count > 1)
    return "layers: the wedge takes one plane through all, the formula each by itself";
  if (plane->load_count > 0)
    return "loads at a distance: the wedge carries one whole once its plane passes behind it, elasticity a "
           "part "
           "of each wherever it stands";
  bool slopes = fabs(plane->slope_rad) > 1e-12;
  if (slopes && plane->water_depth_m < plane->height_m)
    return "ground that rises above level water: the wedge weighs it moist there, the formula wet";
  if (isfinite(plane->slope_run_m) && slopes) return "broken ground: the formula takes the slope as endless";
  if (plane->water_depth_m > 0.0 && plane->water_depth_m < plane->height_m)
    return "a water level within the height: the wedge weighs wet and moist soil on one plane";
  if (plane->water_depth_m <= 0.0 && plane->seismic.horizontal > 0.0)
    return "a load on wet ground: the earthquake turns the ground's weight further than the load's";
  return "ground nearly as steep as the friction angle: the wedge has no far end";
}

const char *lw_stage_difference_why(const lw_stage *stage) {
  const char *why = lw_difference_why(&stage->back.plane);
  bool curved = stage->formula == lw_active_routine_of(LW_PRESSURE_COULOMB, LW_ACTIVE_ANNEX_C);
  return curved && !why[0] ? "the curve of annex C: the wedge slides on a plane" : why;
}

const char *lw_thrust_source(const lw_result *result) {
  const lw_method *method = &result->wall.method;
  const lw_pressure_routine *own = lw_pressure_routine_of(method->pressure),
                            *used = lw_active_routine_of(method->pressure, method->active_by);
  return used != own ? used->source : lw_pressure_source(method->pressure, result->wall.site.slope_rad);
}

/* Of a wall that may yield, as both methods take it. */
static lw_load_pressure theory(const lw_method *method) {
  return method->load_pressure == LW_LOAD_PRESSURE_OWN ? LW_LOAD_PRESSURE_HALF_SPACE : method->load_pressure;
}

static void compare(const lw_result *result, const lw_ground *ground, lw_pressure_method of,
                    lw_compared *out) {
  lw_method method = result->wall.method;
  lw_back_plane back;
  lw_thrust thrust;
  lw_wedge wedge;
  lw_error error = {0};
  const lw_pressure_routine *routine = lw_pressure_routine_of(of);
  method.pressure = of;
  method.plane = LW_PLANE_OWN;
  *out = (lw_compared){.slug = routine->slug, .title = routine->title, .source = routine->source, .why = ""};
  lw_stack base = {&result->wall.section, 0.0};
  lw_back_plane_build(&result->wall.site, ground, &method, &base, &back);
  if (back.plane.height_m <= 0.0) {
    out->reason = LW_REASON_NO_DEMAND;
    return;
  }
  out->why = lw_difference_why(&back.plane);
  out->known = routine->thrust(LW_ACTIVE, &back.plane, &thrust, &error, NULL) == LW_OK;
  lw_elastic loads = {0};
  bool apart = method.load_pressure != LW_LOAD_PRESSURE_WEDGE && back.plane.load_count > 0;
  if (out->known && apart) loads = lw_elastic_push_on(&back.plane, theory(&method));
  out->reason = error.reason;
  if (out->known) {
    out->formula_kn_per_m = thrust.total_kn_per_m;
    out->coefficient = thrust.coefficient;
    out->angle_rad = thrust.angle_rad;
    out->loads_kn_per_m = loads.push_kn_per_m;
  }
  out->wedge_known = lw_wedge_thrust(LW_ACTIVE, &back.plane, &wedge, &error, NULL) == LW_OK;
  if (out->wedge_known) out->wedge_kn_per_m = wedge.thrust_kn_per_m;
}

void lw_compare_methods(const lw_result *result, const lw_situation *situation,
                        lw_compared compared[LW_COMPARED]) {
  lw_ground ground;
  lw_ground_own(&result->wall, &ground);
  ground.water_depth_m = situation->water_depth_m;
  ground.seismic = situation->load_case.ground.seismic;
  compare(result, &ground, LW_PRESSURE_RANKINE, &compared[0]);
  compare(result, &ground, LW_PRESSURE_COULOMB, &compared[1]);
}
