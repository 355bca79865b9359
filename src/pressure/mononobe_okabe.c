/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/pressure.h>

#include <math.h>

#include "base/angles.h"

/* Coulomb's plane wedge in a weight that an earthquake turns. [MONONOBE-OKABE formula] */

static lw_status slides(double turn_rad, lw_error *error) {
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_SEISMIC_WEDGE,
                      "the earthquake turns the weight by %.1f deg, more than friction less slope",
                      turn_rad * LW_DEG_PER_RAD);
}

lw_status lw_mononobe_okabe_coefficient(lw_earth_state state, const lw_wall_angles *angles, double turn_rad,
                                        double *k, lw_error *error) {
  if (!(turn_rad < LW_HALF_PI))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                        "the earthquake's angle must be below 90 deg");
  if (fabs(turn_rad) < 1e-15) return lw_coulomb_coefficient(state, angles, k, error);
  double still, sign = state == LW_PASSIVE ? -1.0 : 1.0, psi = turn_rad;
  lw_status status = lw_coulomb_coefficient(state, angles, &still, error);
  if (status != LW_OK) return status;
  double phi = angles->friction_rad, delta = angles->wall_friction_rad, theta = angles->batter_rad;
  double beta = angles->slope_rad, rest = phi - sign * beta - psi, lean = delta + sign * theta + psi;
  if (rest < -1e-12) return slides(psi, error);
  if (!(psi >= 0.0) || fabs(lean) >= LW_HALF_PI)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                        "wall friction, batter and the earthquake's angle together reach 90 deg");
  double facing = cos(phi - sign * theta - psi), square = cos(theta) * cos(theta);
  double under = sin(phi + delta) * sin(fmax(rest, 0.0)) / (cos(lean) * cos(theta - beta));
  double factor = 1.0 + sign * sqrt(fmax(under, 0.0));
  if (factor <= 0.0)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_WEDGE, "no plane wedge resists at these angles");
  *k = facing * facing / (cos(psi) * square * cos(lean) * factor * factor);
  return LW_OK;
}

double lw_westergaard_kn_per_m(double horizontal, double water_unit_weight_kn_per_m3, double depth_m) {
  return 7.0 / 12.0 * horizontal * water_unit_weight_kn_per_m3 * depth_m * depth_m;
}

double lw_seed_whitman_increment(double horizontal) {
  return 0.75 * horizontal;
}
