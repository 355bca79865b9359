/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "compare.h"

#include <math.h>

#include "balance/ground.h"
#include "pressure/back_plane.h"
#include "pressure/elastic_push.h"
#include "pressure/methods.h"

/* Rankine and Coulomb side by side for the whole wall, whichever of them the wall was checked with, each with
 * the wedge of its own plane and direction. Strengths are those of the site, before any partial factor. */

/* Of a wall that may yield, as both methods take it. */
static lw_load_pressure theory(const lw_method *method) {
  return method->load_pressure == LW_LOAD_PRESSURE_OWN ? LW_LOAD_PRESSURE_HALF_SPACE : method->load_pressure;
}

static void compare(const lw_wall *wall, const lw_ground *ground, lw_pressure_method of, lw_compared *out) {
  lw_method method = wall->method;
  lw_back_plane back;
  lw_thrust thrust;
  lw_trial_wedge wedge;
  lw_error error = {0};
  const lw_pressure_routine *routine = lw_pressure_routine_of(of);
  method.pressure = of;
  method.plane = LW_PLANE_OWN;
  *out = (lw_compared){.slug = routine->slug, .title = routine->title, .source = routine->source};
  lw_stack base = {&wall->section, 0.0};
  lw_back_plane_build(&wall->site, ground, &method, &base, &back);
  if (back.plane.height_m <= 0.0) {
    out->reason = LW_REASON_NO_DEMAND;
    return;
  }
  out->difference = lw_plane_difference(&back.plane);
  out->known = routine->thrust(LW_ACTIVE, &back.plane, &thrust, &error, NULL) == LW_OK;
  lw_elastic loads = {0};
  bool apart = method.load_pressure != LW_LOAD_PRESSURE_WEDGE && back.plane.load_count > 0;
  if (out->known && apart) loads = lw_elastic_push_on(&back.plane, theory(&method));
  out->reason = error.reason;
  if (out->known) {
    out->formula_kn_per_m = thrust.total_kn_per_m;
    out->coefficient = thrust.coefficient;
    out->loads_kn_per_m = loads.push_kn_per_m;
    out->by_formula_kn_per_m = thrust.total_kn_per_m + lw_elastic_along(&loads, thrust.angle_rad);
  }
  out->wedge_known = lw_trial_wedge_thrust(LW_ACTIVE, &back.plane, &wedge, &error, NULL) == LW_OK;
  if (out->wedge_known) out->wedge_kn_per_m = wedge.thrust_kn_per_m;
}

void lw_compare_methods(const lw_wall *wall, lw_situation *situation) {
  lw_ground ground;
  lw_ground_own(wall, &ground);
  ground.water_depth_m = situation->water_depth_m;
  ground.seismic = situation->load_case.ground.seismic;
  compare(wall, &ground, LW_PRESSURE_RANKINE, &situation->compared[0]);
  compare(wall, &ground, LW_PRESSURE_COULOMB, &situation->compared[1]);
}
