/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/pressure.h>

#include <math.h>

#include "base/angles.h"
#include "base/bound.h"

/* EN 1997-1 annex C.2: two fields of stress and a fan between them. Active is passive with φ and δ negative.
 * [EN1997-1 annex C.2] */

static lw_status check(const lw_wall_angles *a, lw_error *error) {
  double phi = a->friction_rad;
  if (!(phi > 0.0) || phi >= LW_HALF_PI || !(fabs(a->wall_friction_rad) <= phi + 1e-12) ||
      !(fabs(a->batter_rad) < LW_HALF_PI))
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

/* How the annex's formulas read, active with φ and δ counted positive as well. */
typedef struct annex_words {
  const char *ground, *wall, *kn, *kc;
} annex_words;

static const annex_words PASSIVE_WORDS = {
    "(acos(-sin b/sin phi) - phi - b)/2", "(acos(sin d/sin phi) - phi - d)/2",
    "(1 + sin phi sin(2 mw + phi))/(1 - sin phi sin(2 mt + phi)) exp(pi v/90 tan phi)", "(Kn - 1) cot phi"};
static const annex_words ACTIVE_WORDS = {
    "(acos(sin b/sin phi) + phi - b)/2", "(acos(sin d/sin phi) + phi + d)/2",
    "(1 - sin phi sin(2 mw - phi))/(1 + sin phi sin(2 mt - phi)) exp(-pi v/90 tan phi)", "(1 - Kn) cot phi"};

static void write(const lw_wall_angles *angles, lw_earth_state state, const lw_annex_c *annex,
                  const lw_working *working) {
  const annex_words *words = state == LW_PASSIVE ? &PASSIVE_WORDS : &ACTIVE_WORDS;
  static const char SOURCE[] = "[EN1997-1 annex C.2]";
  if (working == NULL) return;
  const lw_bound bound[] = {{"phi", angles->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"d", angles->wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"b", angles->slope_rad * LW_DEG_PER_RAD, "deg"},
                            {"t", angles->batter_rad * LW_DEG_PER_RAD, "deg"},
                            {"mt", annex->ground_rad * LW_DEG_PER_RAD, "deg"},
                            {"mw", annex->wall_rad * LW_DEG_PER_RAD, "deg"},
                            {"v", annex->fan_rad * LW_DEG_PER_RAD, "deg"},
                            {"Kn", annex->kn, ""},
                            {"Kg", annex->kg, ""}};
  const lw_step steps[] = {
      {"mt", words->ground, NULL, bound[4].value, "deg", SOURCE},
      {"mw", words->wall, NULL, bound[5].value, "deg", SOURCE},
      {"v", "mt + b - mw - t", NULL, bound[6].value, "deg", SOURCE},
      {"Kn", words->kn, NULL, annex->kn, "", SOURCE},
      {"Kg", "Kn cos b cos(b - t)", NULL, annex->kg, "", SOURCE},
      {state == LW_PASSIVE ? "Kp" : "Ka", "Kg/(cos d cos^2 t)", NULL, annex->k, "", SOURCE},
      {"Kc", words->kc, NULL, annex->kc, "", SOURCE}};
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}

lw_status lw_annex_c_coefficients(lw_earth_state state, const lw_wall_angles *angles, lw_annex_c *annex,
                                  lw_error *error, const lw_working *working) {
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
  write(angles, state, annex, working);
  return LW_OK;
}

static lw_status check_level(double friction_rad, double wall_friction_rad, lw_error *error) {
  bool in = friction_rad > 0.0 && friction_rad < LW_HALF_PI && wall_friction_rad >= 0.0 &&
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
