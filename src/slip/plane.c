/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/ground.h>

#include <math.h>

#include "base/bound.h"

/* Slips along a plane: the long slope and the free face. */

double lw_slip_infinite(const lw_slip_soil *soil, double slope_rad, double depth_m, double water_kpa,
                        const lw_working *working) {
  double s = sin(slope_rad), c = cos(slope_rad), weight = soil->unit_weight_kn_per_m3 * depth_m;
  double normal = fmax(weight - water_kpa, 0.0) * c * c;
  double factor = (soil->cohesion_kpa + normal * tan(soil->friction_rad)) / (weight * s * c);
  const lw_bound bound[] = {{"c", soil->cohesion_kpa, "kPa"},
                            {"gamma", soil->unit_weight_kn_per_m3, "kN/m3"},
                            {"z", depth_m, "m"},
                            {"uz", water_kpa, "kPa"},
                            {"be", slope_rad * LW_DEG_PER_RAD, "deg"},
                            {"phi", soil->friction_rad * LW_DEG_PER_RAD, "deg"}};
  const lw_step step = {"F",
                        weight > water_kpa ? "[c + (gamma z - uz) cos^2 be tan phi]/(gamma z sin be cos be)"
                                           : "c/(gamma z sin be cos be)",
                        NULL,
                        factor,
                        "",
                        "[TAYLOR1948 infinite slope]"};
  lw_working_bound(working, &step, bound, sizeof bound / sizeof bound[0]);
  return factor;
}

lw_status lw_free_face_height(const lw_slip_soil *soil, double face_rad, double factor, double *height_m,
                              lw_error *error) {
  double share = factor > 0.0 ? 1.0 / factor : NAN, phi = atan(tan(soil->friction_rad) * share);
  double cohesion = soil->cohesion_kpa * share, weight = soil->unit_weight_kn_per_m3, right = acos(0.0);
  if (!(factor > 0.0) || !(soil->friction_rad >= 0.0 && soil->friction_rad < right) ||
      !(face_rad > phi + 1e-9 && face_rad <= right + 1e-9))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE, "%s",
                        "a face no steeper than its friction stands at any height by this formula");
  double height =
      weight > 0.0 ? 4.0 * cohesion * sin(face_rad) * cos(phi) / (weight * (1.0 - cos(face_rad - phi))) : NAN;
  if (!(height >= 0.0) || !isfinite(height))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_OUT_OF_RANGE, "%s",
                        "soil weighs something, and its cohesion is 0 or more");
  *height_m = height;
  return LW_OK;
}
