/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "coulomb.h"

#include <math.h>

#include "base/angles.h"
#include "base/bound.h"

/* Coulomb: the plane wedge with friction on the back, in closed form. [COULOMB1776 wedge] */

static lw_status out_of_range(lw_error *error) {
  return lw_error_set(
      error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
      "friction, wall friction and batter together are outside the range of Coulomb's formula");
}

static lw_status check_angles(lw_earth_state state, const lw_wall_angles *a, lw_error *error) {
  double lean =
      state == LW_PASSIVE ? a->wall_friction_rad - a->batter_rad : a->wall_friction_rad + a->batter_rad;
  double facing = state == LW_PASSIVE ? a->friction_rad + a->batter_rad : a->friction_rad - a->batter_rad;
  if (!(a->friction_rad >= 0.0) || a->friction_rad >= LW_HALF_PI) return out_of_range(error);
  bool apart = fabs(a->batter_rad - a->slope_rad) < LW_HALF_PI;
  if (!(fabs(lean) < LW_HALF_PI) || !(fabs(a->batter_rad) < LW_HALF_PI) || !(facing < LW_HALF_PI) || !apart)
    return out_of_range(error);
  if (a->friction_rad + a->wall_friction_rad < 0.0) return out_of_range(error);
  bool steep =
      state == LW_PASSIVE ? a->slope_rad < -a->friction_rad - 1e-12 : a->slope_rad > a->friction_rad + 1e-12;
  if (steep)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_STEEPER_THAN_FRICTION,
                        "ground at %.1f deg is steeper than friction of %.1f deg",
                        a->slope_rad * LW_DEG_PER_RAD, a->friction_rad * LW_DEG_PER_RAD);
  return LW_OK;
}

lw_status lw_coulomb_coefficient(lw_earth_state state, const lw_wall_angles *angles, double *k,
                                 lw_error *error) {
  lw_status status = check_angles(state, angles, error);
  if (status != LW_OK) return status;
  double phi = angles->friction_rad, delta = angles->wall_friction_rad, theta = angles->batter_rad;
  double beta = angles->slope_rad, sign = state == LW_PASSIVE ? -1.0 : 1.0;
  double lean = cos(delta + sign * theta), facing = cos(phi - sign * theta), square = cos(theta) * cos(theta);
  double under = sin(phi + delta) * sin(phi - sign * beta) / (lean * cos(theta - beta));
  double factor = 1.0 + sign * sqrt(fmax(under, 0.0));
  if (factor <= 0.0)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_WEDGE, "no plane wedge resists at these angles");
  *k = facing * facing / (square * lean * factor * factor);
  return LW_OK;
}

static const char SOURCE[] = "[COULOMB1776 wedge]";
static const char ACTIVE[] =
    "cos^2(phi - t)/(cos^2 t cos(d + t) [1 + sqrt(sin(phi + d) sin(phi - b)/(cos(d + t) cos(t - b)))]^2)";
static const char PASSIVE[] =
    "cos^2(phi + t)/(cos^2 t cos(d - t) [1 - sqrt(sin(phi + d) sin(phi + b)/(cos(d - t) cos(t - b)))]^2)";

void lw_coulomb_write(lw_earth_state state, const lw_wall_angles *angles, double k,
                      const lw_working *working) {
  const lw_bound bound[] = {{"phi", angles->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"d", angles->wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"b", angles->slope_rad * LW_DEG_PER_RAD, "deg"},
                            {"t", angles->batter_rad * LW_DEG_PER_RAD, "deg"}};
  const lw_step active = {"Ka", ACTIVE, NULL, k, "", SOURCE}, passive = {"Kp", PASSIVE, NULL, k, "", SOURCE};
  lw_working_bound(working, state == LW_PASSIVE ? &passive : &active, bound, sizeof bound / sizeof bound[0]);
}
