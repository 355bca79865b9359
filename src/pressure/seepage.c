/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "seepage.h"

#include <lowwall/lateral.h>

#include <math.h>

#include "base/angles.h"
#include "base/bound.h"
#include "base/solve.h"
#include "base/working.h"
#include "coulomb.h"
#include "profile.h"

/* Seepage to an upright drain by the series of Laplace's equation in a half-strip. */

static const double ZETA_3 = 1.20205690315959428540;
static const double LEAST_ANGLE = 1e-3;

enum { HEAD_TERMS = 1000, PORE_TERMS = 200, SCAN = 32, WRITTEN_TERMS = 6 };

double lw_seepage_head(double height_m, double x_m, double y_m) {
  double sum = 0.0;
  for (int n = 0; n < HEAD_TERMS; n++) {
    double odd = 2.0 * n + 1.0, number = odd * LW_PI / (2.0 * height_m);
    double fades = exp(-number * x_m);
    if (fades < 1e-18) break;
    sum += 8.0 * height_m / (odd * odd * LW_PI * LW_PI) * fades * cos(number * y_m);
  }
  return height_m - sum;
}

/* The alternating sum of exp(-k pi cot(a)/2)/k^3 over odd k. */
static double alternating(double cotangent) {
  double sum = 0.0;
  for (int n = 0; n < PORE_TERMS; n++) {
    double odd = 2.0 * n + 1.0, term = exp(-odd * 0.5 * LW_PI * cotangent) / (odd * odd * odd);
    sum += n % 2 == 0 ? term : -term;
    if (term < 1e-16) break;
  }
  return sum;
}

double lw_seepage_pore_area(double height_m, double angle_rad) {
  double rise = sin(angle_rad), run = fmax(cos(angle_rad), 0.0), cube = LW_PI * LW_PI * LW_PI;
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
         fabs(plane->slope_rad) < 1e-12 && plane->load_count == 0;
}

/* The alternating sum as it is added up, as far as it is printed. */
static void write_alternating(const lw_seepage *s, const lw_working *working) {
  double degrees = s->plane_angle_rad * LW_DEG_PER_RAD;
  char text[400] = "";
  size_t used = 0;
  for (int n = 0; n < WRITTEN_TERMS; n++) {
    int odd = 2 * n + 1;
    used += (size_t)lw_print(text + used, sizeof text - used, "%sexp(-%d pi cot %.5f/2)/%d^3",
                             n == 0       ? ""
                             : n % 2 == 0 ? " + "
                                          : " - ",
                             odd, degrees, odd);
  }
  const lw_step step = {"Sk", "sum over odd k, in turn + and -, of exp(-k pi cot rho/2)/k^3",
                        NULL, alternating(cos(s->plane_angle_rad) / sin(s->plane_angle_rad)),
                        "",   ""};
  lw_working_step(working, &step, "%s", text);
}

/* Each push as it was found; rho is the plane that pushes most. */
static void write(const lw_plane *plane, const lw_seepage *s, double k, const lw_working *working) {
  const lw_layer *soil = &plane->layer[0];
  double rho = s->plane_angle_rad, level = cos(plane->wall_friction_rad);
  double sum = alternating(cos(rho) / sin(rho));
  double weight = weight_of(plane, soil->saturated_unit_weight_kn_per_m3) / tan(rho);
  double moist = weight_of(plane, soil->unit_weight_kn_per_m3), thrust = s->seeping_kn_per_m / level;
  static const char GRAY[] = "[GRAY1958 vertical drain]";
  const lw_bound bound[] = {{"gamma", soil->unit_weight_kn_per_m3, "kN/m3"},
                            {"gsat", soil->saturated_unit_weight_kn_per_m3, "kN/m3"},
                            {"gw", plane->water_unit_weight_kn_per_m3, "kN/m3"},
                            {"hp", plane->height_m, "m"},
                            {"q", plane->surcharge_kpa, "kPa"},
                            {"phi", soil->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"d", plane->wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"rho", rho * LW_DEG_PER_RAD, "deg"},
                            {"Sk", sum, ""},
                            {"Us", s->pore_force_kn_per_m, "kN/m"},
                            {"Ww", weight, "kN/m"},
                            {"Ps", thrust, "kN/m"},
                            {"Ka", k, ""},
                            {"Qm", moist, "kN/m"},
                            {"Hs", s->seeping_kn_per_m, "kN/m"},
                            {"Hd", s->dry_kn_per_m, "kN/m"},
                            {"Hb", s->blocked_kn_per_m, "kN/m"}};
  const lw_step steps[] = {
      {"Us", "gw hp^2 [1/(2 sin rho) - 14 x 1.20205690/pi^3 cos rho - 16/pi^3 Sk sin rho]", NULL,
       s->pore_force_kn_per_m, "kN/m", GRAY},
      {"Ww", "(gsat hp^2/2 + q hp) cot rho", NULL, weight, "kN/m", ""},
      {"Ps", "(Ww sin(rho - phi) + Us sin phi)/cos(rho - phi - d)", NULL, thrust, "kN/m",
       "[BARROS2006 pore pressure]"},
      {"Hs", "Ps cos d", NULL, s->seeping_kn_per_m, "kN/m", ""},
      {"Qm", "gamma hp^2/2 + q hp", NULL, moist, "kN/m", ""},
      {"Hd", "Ka Qm cos d", NULL, s->dry_kn_per_m, "kN/m", ""},
      {"Hb", "Ka ((gsat - gw) hp^2/2 + q hp) cos d + gw hp^2/2", NULL, s->blocked_kn_per_m, "kN/m", ""},
      {"ks", "Hs/Qm", NULL, s->seeping_k, "", ""},
      {"kd", "Hd/Qm", NULL, s->dry_k, "", ""},
      {"kb", "Hb/Qm", NULL, s->blocked_k, "", ""}};
  const lw_wall_angles angles = {.friction_rad = soil->friction_rad,
                                 .wall_friction_rad = plane->wall_friction_rad};
  write_alternating(s, working);
  for (int i = 0; i < 4; i++) lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
  lw_coulomb_write(LW_ACTIVE, &angles, k, working);
  for (size_t i = 4; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}

lw_status lw_seepage_thrust(const lw_plane *plane, lw_seepage *seepage, lw_error *error,
                            const lw_working *working) {
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
  if (lw_solve_minimum(negative_thrust, plane, LEAST_ANGLE, 0.5 * LW_PI, SCAN, &best) != LW_OK)
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
  if (working != NULL) write(plane, &s, k, working);
  *seepage = s;
  return LW_OK;
}
