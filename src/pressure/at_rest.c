/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "profile.h"
#include "seismic.h"

/* Earth pressure of ground that does not move: Jaky's simplified coefficient, and EN 1997-1's for a slope. */

lw_status lw_at_rest_coefficient(double friction_rad, double slope_rad, double *k, lw_error *error) {
  if (!(friction_rad >= 0.0) || friction_rad >= acos(0.0))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                        "the friction angle must be from 0 to less than 90 deg");
  if (!(fabs(slope_rad) <= friction_rad + 1e-12))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_STEEPER_THAN_FRICTION,
                        "the ground is steeper than its own friction angle");
  *k = (1.0 - sin(friction_rad)) * (1.0 + sin(slope_rad));
  return LW_OK;
}

lw_status lw_at_rest_overconsolidated(lw_overconsolidation rule, double friction_rad, double slope_rad,
                                      double ratio, double *k, lw_error *error) {
  double once;
  lw_status status = lw_at_rest_coefficient(friction_rad, slope_rad, &once, error);
  if (status != LW_OK) return status;
  if (!(ratio >= 1.0) || isinf(ratio))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                        "an overconsolidation ratio is 1 or more");
  double power = rule == LW_OCR_EN1997 ? 0.5 : sin(friction_rad);
  double most = (1.0 + sin(friction_rad)) / (1.0 - sin(friction_rad));
  *k = fmin(once * pow(ratio, power), most);
  return LW_OK;
}

static double ratio_of(const lw_layer *layer) {
  return layer->overconsolidation > 0.0 ? layer->overconsolidation : 1.0;
}

static void record(const lw_plane *plane, const lw_thrust *thrust, const lw_working *working) {
  const lw_layer *lowest = &plane->layer[lw_layer_at(plane, plane->height_m)];
  double phi = lowest->friction_rad * LW_DEG_PER_RAD, beta = plane->slope_rad * LW_DEG_PER_RAD,
         ratio = ratio_of(lowest);
  bool once = ratio <= 1.0, mayne = plane->overconsolidation == LW_OCR_MAYNE_KULHAWY;
  const char *power = mayne ? "(1 - sin phi)(1 + sin b) OCR^(sin phi), at most (1 + sin phi)/(1 - sin phi)"
                            : "(1 - sin phi)(1 + sin b) OCR^0.5, at most (1 + sin phi)/(1 - sin phi)";
  lw_working_heading(working, "At rest, on a vertical plane");
  lw_step step = {.symbol = "K0",
                  .formula = once ? "(1 - sin phi)(1 + sin b)" : power,
                  .value = thrust->coefficient,
                  .unit = "",
                  .source = once    ? lw_pressure_source(LW_PRESSURE_AT_REST, plane->slope_rad)
                            : mayne ? "[MAYNE-KULHAWY1982 unloading]"
                                    : "[EN1997-1 9.5.2]"};
  if (once)
    lw_working_step(working, &step, "phi = %.2f deg, b = %.2f deg", phi, beta);
  else
    lw_working_step(working, &step, "phi = %.2f deg, b = %.2f deg, OCR = %.2f", phi, beta, ratio);
}

lw_status lw_at_rest_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working) {
  (void)state; /* at rest is its own state */
  lw_law law = {.surcharge_factor = 1.0};
  if (lw_plane_hold(plane, error) != LW_OK) return LW_NO_SOLUTION;
  for (int i = 0; i < plane->layer_count; i++) {
    const lw_layer *layer = &plane->layer[i];
    lw_status status = lw_at_rest_overconsolidated(plane->overconsolidation, layer->friction_rad,
                                                   plane->slope_rad, ratio_of(layer), &law.k[i], error);
    if (status != LW_OK) return status;
  }
  lw_seismic_part part;
  lw_status status = lw_seismic_find(LW_AT_REST, plane, &part, error);
  if (status == LW_OK) status = lw_profile_integrate(plane, &law, plane->slope_rad, thrust, error);
  if (status != LW_OK) return status;
  record(plane, thrust, working);
  lw_thrust_record(plane, thrust, working);
  lw_seismic_add(plane, &part, thrust, working);
  return LW_OK;
}
