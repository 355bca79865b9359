/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "at_rest.h"

#include <math.h>

#include "base/bound.h"
#include "base/working.h"
#include "profile_record.h"
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

const char *lw_at_rest_source(double slope_rad) {
  return fabs(slope_rad) > 1e-12 ? "[EN1997-1 9.5.2]" : LW_AT_REST_SOURCE;
}

static double ratio_of(const lw_layer *layer) {
  return layer->overconsolidation > 0.0 ? layer->overconsolidation : 1.0;
}

static const char *formula_of(const lw_plane *plane, const lw_layer *layer) {
  bool mayne = plane->overconsolidation == LW_OCR_MAYNE_KULHAWY;
  if (ratio_of(layer) <= 1.0) return "(1 - sin phi)(1 + sin b)";
  return mayne ? "min((1 - sin phi)(1 + sin b) OCR^(sin phi), (1 + sin phi)/(1 - sin phi))"
               : "min((1 - sin phi)(1 + sin b) sqrt(OCR), (1 + sin phi)/(1 - sin phi))";
}

static const char *source_of(const lw_plane *plane, const lw_layer *layer) {
  if (ratio_of(layer) <= 1.0) return lw_at_rest_source(plane->slope_rad);
  return plane->overconsolidation == LW_OCR_MAYNE_KULHAWY ? "[MAYNE-KULHAWY1982 unloading]"
                                                          : "[EN1997-1 9.5.2]";
}

static void record(const lw_plane *plane, int i, double k, const lw_working *working) {
  const lw_layer *layer = &plane->layer[i];
  const lw_bound bound[] = {{"phi", layer->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"b", plane->slope_rad * LW_DEG_PER_RAD, "deg"},
                            {"OCR", ratio_of(layer), ""}};
  if (working == NULL || !lw_layer_is_met(plane, i)) return;
  const lw_step step = {"K0", formula_of(plane, layer), NULL, k, "", source_of(plane, layer)};
  lw_layer_heading(plane, i, working);
  lw_working_bound(working, &step, bound, sizeof bound / sizeof *bound);
}

lw_status lw_at_rest_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working) {
  (void)state; /* at rest is its own state */
  lw_law law = {.surcharge_factor = 1.0, .working = working};
  if (lw_plane_hold(plane, error) != LW_OK) return LW_NO_SOLUTION;
  lw_working_heading(working, "At rest, on a vertical plane");
  for (int i = 0; i < plane->layer_count; i++) {
    const lw_layer *layer = &plane->layer[i];
    lw_status status = lw_at_rest_overconsolidated(plane->overconsolidation, layer->friction_rad,
                                                   plane->slope_rad, ratio_of(layer), &law.k[i], error);
    if (status != LW_OK) return status;
    record(plane, i, law.k[i], working);
  }
  lw_seismic_part part;
  lw_status status = lw_seismic_find(LW_AT_REST, plane, &part, error);
  if (status != LW_OK) return status;
  lw_profile_integrate(plane, &law, plane->slope_rad, thrust);
  lw_seismic_add(LW_AT_REST, plane, &part, thrust, working);
  return LW_OK;
}
