/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/seepage.h>

#include <math.h>

#include "profile.h"

/* Seepage to an upright drain by the series of Laplace's equation in a half-strip. */

static const double PI = 3.14159265358979323846, ZETA_3 = 1.20205690315959428540;
static const double LEAST_ANGLE = 1e-3;

enum { HEAD_TERMS = 1000, PORE_TERMS = 200, SCAN = 32 };

double lw_seepage_head(double height_m, double x_m, double y_m) {
  double sum = 0.0;
  for (int n = 0; n < HEAD_TERMS; n++) {
    double odd = 2.0 * n + 1.0, number = odd * PI / (2.0 * height_m);
    double fades = exp(-number * x_m);
    if (fades < 1e-18) break;
    sum += 8.0 * height_m / (odd * odd * PI * PI) * fades * cos(number * y_m);
  }
  return height_m - sum;
}

/* The alternating sum of exp(-k pi cot(a)/2)/k^3 over odd k. */
static double alternating(double cotangent) {
  double sum = 0.0;
  for (int n = 0; n < PORE_TERMS; n++) {
    double odd = 2.0 * n + 1.0, term = exp(-odd * 0.5 * PI * cotangent) / (odd * odd * odd);
    sum += n % 2 == 0 ? term : -term;
    if (term < 1e-16) break;
  }
  return sum;
}

double lw_seepage_pore_area(double height_m, double angle_rad) {
  double rise = sin(angle_rad), run = fmax(cos(angle_rad), 0.0), cube = PI * PI * PI;
  double relieved = 14.0 * ZETA_3 / cube * run + 16.0 / cube * rise * alternating(run / rise);
  return height_m * height_m * fmax(0.5 / rise - relieved, 0.0);
}

static double pore_force(const lw_plane *plane, double angle_rad) {
  return plane->water_unit_weight_kn_per_m3 * lw_seepage_pore_area(plane->height_m, angle_rad);
}

static double weight_of(const lw_plane *plane, double unit_weight) {
  return 0.5 * unit_weight * plane->height_m * plane->height_m + plane->surcharge_kpa * plane->height_m;
}

/* The wedge's thrust, turned over to be minimised. */
static double negative_thrust(double angle_rad, const void *context) {
  const lw_plane *plane = context;
  double phi = plane->layer[0].friction_rad, delta = plane->wall_friction_rad;
  double weight = weight_of(plane, plane->layer[0].saturated_unit_weight_kn_per_m3) / tan(angle_rad);
  double closing = cos(angle_rad - phi - delta);
  if (closing <= 1e-9) return NAN;
  return -(weight * sin(angle_rad - phi) + pore_force(plane, angle_rad) * sin(phi)) / closing;
}

static bool fits(const lw_plane *plane) {
  const lw_layer *soil = &plane->layer[0];
  bool one_soil = plane->layer_count == 1 || soil->bottom_m >= plane->height_m;
  return one_soil && soil->cohesion_kpa <= 0.0 && fabs(plane->batter_rad) < 1e-12 &&
         fabs(plane->slope_rad) < 1e-12 && plane->load_count == 0 && plane->height_m > 0.0;
}

lw_status lw_seepage_thrust(const lw_plane *plane, lw_seepage *seepage, lw_error *error) {
  const lw_layer *soil = &plane->layer[0];
  lw_minimum best;
  double k, water = plane->water_unit_weight_kn_per_m3, level = cos(plane->wall_friction_rad);
  if (lw_plane_hold(plane, error) != LW_OK) return LW_NO_SOLUTION;
  if (!fits(plane))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_SEEPAGE_FORM, "%s",
                        lw_reason_sentence(LW_REASON_NO_SEEPAGE_FORM));
  lw_wall_angles angles = {.friction_rad = soil->friction_rad, .wall_friction_rad = plane->wall_friction_rad};
  lw_status status = lw_coulomb_coefficient(LW_ACTIVE, &angles, &k, error);
  if (status != LW_OK) return status;
  if (lw_solve_minimum(negative_thrust, plane, LEAST_ANGLE, 0.5 * PI, SCAN, &best) != LW_OK)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_WEDGE, "no wedge of soil is critical");
  double moist = weight_of(plane, soil->unit_weight_kn_per_m3);
  double buoyant = weight_of(plane, soil->saturated_unit_weight_kn_per_m3 - water);
  lw_seepage s = {.dry_kn_per_m = level * k * moist,
                  .seeping_kn_per_m = -level * best.value,
                  .blocked_kn_per_m = level * k * buoyant + 0.5 * water * plane->height_m * plane->height_m,
                  .plane_angle_rad = best.x,
                  .pore_force_kn_per_m = pore_force(plane, best.x)};
  s.dry_k = s.dry_kn_per_m / moist;
  s.seeping_k = s.seeping_kn_per_m / moist;
  s.blocked_k = s.blocked_kn_per_m / moist;
  *seepage = s;
  return LW_OK;
}
