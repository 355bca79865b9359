/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/lateral.h>

#include <math.h>

#include "base/angles.h"
#include "base/solve.h"
#include "coulomb.h"
#include "profile.h"
#include "seepage.h"
#include "seepage_record.h"

/* The push of soil through which rain seeps to a drain at its back: Coulomb's wedge of saturated soil, with
 * the water in the pores of its plane. */

static const double LEAST_ANGLE = 1e-3;

enum { SCAN = 32, NEWTON_STEPS = 20 };

static double pore_force(const lw_plane *plane, double angle_rad) {
  return plane->water_unit_weight_kn_per_m3 * lw_seepage_pore_area(plane->height_m, angle_rad);
}

/* The wedge's thrust, turned over to be minimised. */
static double negative_thrust(double angle_rad, const void *context) {
  const lw_plane *plane = context;
  double phi = plane->layer[0].friction_rad, delta = plane->wall_friction_rad;
  double weight = lw_seepage_weight(plane, plane->layer[0].saturated_unit_weight_kn_per_m3) / tan(angle_rad);
  double closing = cos(angle_rad - phi - delta);
  if (closing <= 1e-9) return NAN;
  return -(weight * sin(angle_rad - phi) + pore_force(plane, angle_rad) * sin(phi)) / closing;
}

/* With x = cot(a) the thrust of a wedge is a quotient N/D, and no angle has to be turned:
 * N = W x (cos phi - x sin phi) + U sin phi ((1 + x^2)/2 - 14 zeta(3)/pi^3 x - 16/pi^3 S), U = gw H^2,
 * D = x cos(phi + delta) + sin(phi + delta). N is concave as long as the soil outweighs the water. */
typedef struct quotient {
  double weight, water, sine, cosine, closing_sine, closing_cosine;
} quotient;

static double divisor(const quotient *q, double x) {
  return x * q->closing_cosine + q->closing_sine;
}

/* N and its first two derivatives; the sums of t^k/k^3, /k^2 and /k over odd k change sign in turn, down to
 * their least term. */
static void dividend(const quotient *q, double x, double least, double out[3]) {
  const double cube = LW_PI * LW_PI * LW_PI, linear = 14.0 * LW_ZETA_3 / cube, series = 16.0 / cube;
  double t = exp(-0.5 * LW_PI * x), power = t, third = 0.0, second = 0.0;
  for (int k = 1, sign = 1; k < 2 * LW_SEEPAGE_PORE_TERMS && power > least;
       k += 2, sign = -sign, power *= t * t) {
    double term = sign * power / ((double)k * k);
    second += term;
    third += term / k;
  }
  double u = q->water * q->sine;
  out[0] =
      q->weight * x * (q->cosine - x * q->sine) + u * (0.5 * (1.0 + x * x) - linear * x - series * third);
  out[1] = q->weight * (q->cosine - 2.0 * x * q->sine) + u * (x - linear + 0.5 * LW_PI * series * second);
  out[2] = -2.0 * q->weight * q->sine + u * (1.0 - 0.25 * LW_PI * LW_PI * series * atan(t));
}

static quotient quotient_of(const lw_plane *plane) {
  const lw_layer *soil = &plane->layer[0];
  double closing = soil->friction_rad + plane->wall_friction_rad;
  return (quotient){.weight = lw_seepage_weight(plane, soil->saturated_unit_weight_kn_per_m3),
                    .water = plane->water_unit_weight_kn_per_m3 * plane->height_m * plane->height_m,
                    .sine = sin(soil->friction_rad),
                    .cosine = cos(soil->friction_rad),
                    .closing_sine = sin(closing),
                    .closing_cosine = cos(closing)};
}

/* Newton's method on the slope of N/D from the critical wedge without water, which lies a hundredth off: two
 * steps are enough, and a rough slope, as the thrust hardly turns there. False: this plane is none for it. */
static bool most_by_newton(const lw_plane *plane, double *x, double *thrust) {
  static const double NEAR = 1e-5, LEAST = 1e-3, ROUGHLY = 1e-8, EXACTLY = 1e-15;
  quotient q = quotient_of(plane);
  double n[3], a = q.sine * q.closing_cosine, b = q.sine * q.closing_sine;
  if (2.0 * q.weight <= q.water || a < LEAST || b < LEAST) return false;
  *x = (sqrt(b * b + a * q.cosine * q.closing_sine) - b) / a;
  for (int i = 0; i < NEWTON_STEPS; i++) {
    dividend(&q, *x, ROUGHLY, n);
    double step = n[1] / n[2] - n[0] * q.closing_cosine / (n[2] * divisor(&q, *x));
    if (!(*x - step > 0.0)) return false;
    *x -= step;
    if (fabs(step) > NEAR) continue;
    dividend(&q, *x, EXACTLY, n);
    *thrust = n[0] / divisor(&q, *x);
    return true;
  }
  return false;
}

/* The greatest thrust of all wedges, along its own direction, and their plane. */
static lw_status most(const lw_plane *plane, double *angle_rad, double *thrust, lw_error *error) {
  double cotangent;
  lw_minimum best;
  if (most_by_newton(plane, &cotangent, thrust)) {
    *angle_rad = atan2(1.0, cotangent);
    return LW_OK;
  }
  if (lw_solve_minimum(negative_thrust, plane, LEAST_ANGLE, 0.5 * LW_PI, SCAN, &best) != LW_OK)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_WEDGE, "no wedge of soil is critical");
  *angle_rad = best.x;
  *thrust = -best.value;
  return LW_OK;
}

static bool fits(const lw_plane *plane) {
  const lw_layer *soil = &plane->layer[0];
  bool one_soil = plane->layer_count == 1 || soil->bottom_m >= plane->height_m;
  return one_soil && soil->cohesion_kpa <= 0.0 && fabs(plane->batter_rad) < 1e-12 &&
         fabs(plane->slope_rad) < 1e-12 && plane->load_count == 0;
}

static lw_status no_form(lw_error *error) {
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_SEEPAGE_FORM, "%s",
                      lw_reason_sentence(LW_REASON_NO_SEEPAGE_FORM));
}

lw_status lw_seepage_along(const lw_plane *plane, double *along_kn_per_m, lw_error *error,
                           const lw_working *working) {
  double angle, thrust;
  if (!fits(plane)) return no_form(error);
  if (most(plane, &angle, &thrust, error) != LW_OK) return LW_NO_SOLUTION;
  if (working != NULL) lw_seepage_write_along(plane, angle, thrust, working);
  *along_kn_per_m = thrust;
  return LW_OK;
}

lw_status lw_seepage_thrust(const lw_plane *plane, lw_seepage *seepage, lw_error *error,
                            const lw_working *working) {
  const lw_layer *soil = &plane->layer[0];
  double k, angle, thrust, water = plane->water_unit_weight_kn_per_m3;
  double level = cos(plane->wall_friction_rad);
  if (lw_plane_hold(plane, error) != LW_OK) return LW_NO_SOLUTION;
  if (!fits(plane)) return no_form(error);
  lw_wall_angles angles = {.friction_rad = soil->friction_rad, .wall_friction_rad = plane->wall_friction_rad};
  lw_status status = lw_coulomb_coefficient(LW_ACTIVE, &angles, &k, error);
  if (status != LW_OK) return status;
  if (most(plane, &angle, &thrust, error) != LW_OK) return LW_NO_SOLUTION;
  double moist = lw_seepage_weight(plane, soil->unit_weight_kn_per_m3);
  double buoyant = lw_seepage_weight(plane, soil->saturated_unit_weight_kn_per_m3 - water);
  lw_seepage s = {.dry_kn_per_m = level * k * moist,
                  .seeping_kn_per_m = level * thrust,
                  .blocked_kn_per_m = level * k * buoyant + 0.5 * water * plane->height_m * plane->height_m,
                  .plane_angle_rad = angle,
                  .pore_force_kn_per_m = pore_force(plane, angle)};
  s.dry_k = s.dry_kn_per_m / moist;
  s.seeping_k = s.seeping_kn_per_m / moist;
  s.blocked_k = s.blocked_kn_per_m / moist;
  if (working != NULL) lw_seepage_write(plane, &s, k, working);
  *seepage = s;
  return LW_OK;
}
