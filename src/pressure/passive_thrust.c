/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/passive.h>

#include <assert.h>
#include <math.h>

#include "profile.h"

/* Thrusts by curved surfaces, each layer at its own coefficient, and the list of the methods. */

typedef struct layer_law {
  double k, cut_kpa;
} layer_law;

typedef lw_status (*layer_rule)(lw_earth_state state, const lw_wall_angles *angles, double cohesion_kpa,
                                layer_law *law, lw_error *error);

static lw_status by_spiral(lw_earth_state state, const lw_wall_angles *angles, double cohesion_kpa,
                           layer_law *law, lw_error *error) {
  lw_status status = lw_log_spiral_coefficient(state, angles, &law->k, error);
  double sign = state == LW_PASSIVE ? -1.0 : 1.0;
  if (status == LW_OK) law->cut_kpa = sign * 2.0 * cohesion_kpa * sqrt(law->k);
  return status;
}

static lw_status by_annex_c(lw_earth_state state, const lw_wall_angles *angles, double cohesion_kpa,
                            layer_law *law, lw_error *error) {
  lw_annex_c annex;
  lw_status status = lw_annex_c_coefficients(state, angles, &annex, error);
  if (status != LW_OK) return status;
  double along_back = cos(angles->wall_friction_rad) * cos(angles->batter_rad);
  double sign = state == LW_PASSIVE ? -1.0 : 1.0;
  *law = (layer_law){annex.k, sign * annex.kc * cohesion_kpa / along_back};
  return LW_OK;
}

static void record(lw_earth_state state, const lw_plane *plane, const lw_thrust *thrust, const char *formula,
                   const char *source, const lw_working *working) {
  const lw_layer *lowest = &plane->layer[lw_layer_at(plane, plane->height_m)];
  lw_working_step(working,
                  &(lw_step){.symbol = state == LW_PASSIVE ? "Kp" : "Ka",
                             .formula = formula,
                             .value = thrust->coefficient,
                             .unit = "",
                             .source = source},
                  "phi = %.2f deg, d = %.2f deg, t = %.2f deg, b = %.2f deg",
                  lowest->friction_rad * LW_DEG_PER_RAD, plane->wall_friction_rad * LW_DEG_PER_RAD,
                  plane->batter_rad * LW_DEG_PER_RAD, plane->slope_rad * LW_DEG_PER_RAD);
}

static lw_status integrate(lw_earth_state state, const lw_plane *plane, layer_rule rule, lw_thrust *thrust,
                           lw_error *error) {
  if (lw_plane_hold(plane, error) != LW_OK) return LW_NO_SOLUTION;
  double theta = plane->batter_rad, beta = plane->slope_rad, delta = plane->wall_friction_rad;
  lw_law law = {.surcharge_factor = cos(theta) * cos(beta) / cos(theta - beta)};
  double angle = state == LW_PASSIVE ? theta - delta : theta + delta;
  if (fabs(plane->seismic.horizontal) > 0.0 || fabs(plane->seismic.vertical) > 0.0)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_WEDGE,
                        "curved surfaces are not computed in an earthquake");
  for (int i = 0; i < plane->layer_count; i++) {
    const lw_layer *layer = &plane->layer[i];
    lw_wall_angles angles = {layer->friction_rad, delta, theta, beta};
    layer_law found = {0};
    lw_status status = rule(state, &angles, layer->cohesion_kpa, &found, error);
    if (status != LW_OK) return status;
    law.k[i] = found.k;
    law.cut_kpa[i] = found.cut_kpa;
  }
  return lw_profile_integrate(plane, &law, angle, thrust, error);
}

lw_status lw_log_spiral_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust,
                               lw_error *error, const lw_working *working) {
  lw_status status = integrate(state, plane, by_spiral, thrust, error);
  if (status != LW_OK) return status;
  lw_working_heading(working, "Logarithmic spiral through the foot");
  record(state, plane, thrust, "moments about the pole, worst over the spiral's two angles",
         "[TERZAGHI-1943 spiral]", working);
  lw_thrust_record(plane, thrust, working);
  return LW_OK;
}

lw_status lw_annex_c_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working) {
  lw_status status = integrate(state, plane, by_annex_c, thrust, error);
  if (status != LW_OK) return status;
  lw_working_heading(working, "EN 1997-1 annex C.2");
  record(state, plane, thrust,
         "Kn cos b cos(b - t) / (cos d cos^2 t), Kn = (1 + sin phi sin(2 mw + phi)) / "
         "(1 - sin phi sin(2 mt + phi)) exp(2 v tan phi)",
         "[EN1997-1 annex C.2]", working);
  lw_thrust_record(plane, thrust, working);
  return LW_OK;
}

const lw_pressure_routine *lw_passive_routine_of(lw_passive_by by) {
  if (by == LW_PASSIVE_BY_RANKINE) return lw_pressure_routine_of(LW_PRESSURE_RANKINE);
  if (by == LW_PASSIVE_BY_COULOMB) return lw_pressure_routine_of(LW_PRESSURE_COULOMB);
  static const lw_pressure_routine routines[] = {
      [LW_PASSIVE_LOG_SPIRAL] = {"log spiral", "logarithmic spiral through the foot",
                                 "[TERZAGHI-1943 spiral]", lw_log_spiral_thrust},
      [LW_PASSIVE_ANNEX_C] = {"annex c", "closed form of EN 1997-1 annex C.2", "[EN1997-1 annex C.2]",
                              lw_annex_c_thrust},
  };
  assert((size_t)by < sizeof routines / sizeof routines[0]);
  return by == LW_PASSIVE_OWN ? NULL : &routines[by];
}

const lw_pressure_routine *lw_active_routine_of(lw_pressure_method method, lw_active_by by) {
  bool annex = method == LW_PRESSURE_COULOMB && by == LW_ACTIVE_ANNEX_C;
  return annex ? lw_passive_routine_of(LW_PASSIVE_ANNEX_C) : lw_pressure_routine_of(method);
}
