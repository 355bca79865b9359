/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/passive.h>

#include <math.h>

/* EN 1997-1 annex C.2: two fields of stress and a fan between them. Active is passive with φ and δ negative.
 * [EN1997-1 annex C.2] */

static const double HALF_PI = 1.57079632679489661923;

static lw_status check(const lw_wall_angles *a, lw_error *error) {
  double phi = a->friction_rad;
  if (!(phi > 0.0) || phi >= HALF_PI || !(fabs(a->wall_friction_rad) <= phi + 1e-12) ||
      !(fabs(a->batter_rad) < HALF_PI))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                        "annex C takes a friction angle from above 0 to 90 deg, and at most it on the wall");
  if (!(fabs(a->slope_rad) <= phi + 1e-12))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_STEEPER_THAN_FRICTION,
                        "the ground is steeper than its own friction angle");
  return LW_OK;
}

static double bounded_acos(double x) {
  return acos(fmin(fmax(x, -1.0), 1.0));
}

lw_status lw_annex_c_coefficients(lw_earth_state state, const lw_wall_angles *angles, lw_annex_c *annex,
                                  lw_error *error) {
  lw_status status = check(angles, error);
  if (status != LW_OK) return status;
  double sign = state == LW_PASSIVE ? 1.0 : -1.0, beta = angles->slope_rad, theta = angles->batter_rad;
  double phi = sign * angles->friction_rad, delta = sign * angles->wall_friction_rad;
  double at_ground = 0.5 * (bounded_acos(-sin(beta) / sin(phi)) - phi - beta);
  double at_wall = 0.5 * (bounded_acos(sin(delta) / sin(phi)) - phi - delta);
  double fan = at_ground + beta - at_wall - theta;
  double kn = (1.0 + sin(phi) * sin(2.0 * at_wall + phi)) / (1.0 - sin(phi) * sin(2.0 * at_ground + phi)) *
              exp(2.0 * fan * tan(phi));
  *annex = (lw_annex_c){.kg = kn * cos(beta) * cos(beta - theta),
                        .kq = kn * cos(beta) * cos(beta),
                        .kc = (kn - 1.0) / tan(phi),
                        .kn = kn,
                        .ground_rad = at_ground,
                        .wall_rad = at_wall,
                        .fan_rad = fan};
  annex->k = annex->kg / (cos(delta) * cos(theta) * cos(theta));
  return LW_OK;
}

static lw_status check_level(double friction_rad, double wall_friction_rad, lw_error *error) {
  bool in = friction_rad > 0.0 && friction_rad < HALF_PI && wall_friction_rad >= 0.0 &&
            wall_friction_rad <= friction_rad + 1e-12;
  return in ? LW_OK
            : lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                           "the friction angle must be above 0 and below 90 deg, and the wall's at most it");
}

lw_status lw_lancellotta_coefficient(double friction_rad, double wall_friction_rad, double *k,
                                     lw_error *error) {
  lw_status status = check_level(friction_rad, wall_friction_rad, error);
  if (status != LW_OK) return status;
  double sf = sin(friction_rad), sd = fmin(sin(wall_friction_rad), sf), cd = cos(wall_friction_rad);
  double turn = asin(sd / sf) + wall_friction_rad;
  *k = cd / (1.0 - sf) * (cd + sqrt(fmax(sf * sf - sd * sd, 0.0))) * exp(turn * tan(friction_rad));
  return LW_OK;
}

lw_status lw_ufc_passive_coefficient(double friction_rad, double wall_friction_rad, double *k,
                                     lw_error *error) {
  lw_status status = check_level(friction_rad, wall_friction_rad, error);
  if (status != LW_OK) return status;
  double sf = sin(friction_rad), smooth = (1.0 + sf) / (1.0 - sf);
  *k = smooth * exp(wall_friction_rad / friction_rad * log(smooth) * 1.443 * sf);
  return LW_OK;
}
