/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "elastic_at_record.h"

#include <math.h>

#include "base/bound.h"
#include "base/tell.h"
#include "base/working.h"
#include "elastic_reach.h"

/* The level pressure of one load at one depth, as a step. */

/* What a formula is made of: the load's own level and distance at this depth. */
typedef struct at {
  double z_m, near_m, far_m, height_m;
  bool twice;
} at;

static const char *strip_formula(const at *a, bool endless) {
  if (endless)
    return a->twice ? "2 q/180 (90 - atan(x1/z)) - 2 q/pi sin(90 - atan(x1/z)) cos(90 + atan(x1/z))"
                    : "q/180 (90 - atan(x1/z)) - q/pi sin(90 - atan(x1/z)) cos(90 + atan(x1/z))";
  return a->twice ? "2 q/180 (atan(x2/z) - atan(x1/z)) - "
                    "2 q/pi sin(atan(x2/z) - atan(x1/z)) cos(atan(x2/z) + atan(x1/z))"
                  : "q/180 (atan(x2/z) - atan(x1/z)) - "
                    "q/pi sin(atan(x2/z) - atan(x1/z)) cos(atan(x2/z) + atan(x1/z))";
}

static void strip(const at *a, double q, const lw_step *step, const lw_working *working) {
  bool endless = isinf(a->far_m);
  const lw_bound bound[] = {
      {"q", q, "kPa"}, {"z", a->z_m, "m"}, {"x1", a->near_m, "m"}, {"x2", endless ? 0.0 : a->far_m, "m"}};
  lw_step whole = *step;
  whole.formula = strip_formula(a, endless);
  lw_working_bound_finely(working, &whole, bound, 4);
}

static void line(const at *a, double force, const lw_step *step, const lw_working *working) {
  const lw_bound bound[] = {{"Q", force, "kN/m"}, {"x", a->near_m, "m"}, {"z", a->z_m, "m"}};
  lw_step whole = *step;
  whole.formula = a->twice ? "4 Q/pi x^2 z/(x^2 + z^2)^2" : "2 Q/pi x^2 z/(x^2 + z^2)^2";
  lw_working_bound(working, &whole, bound, 3);
}

/* Averaged over the metre of wall in front: the integral of 1/R^5 from half a metre to half a metre, which
 * squared is 0.25 m2. */
static void point(const at *a, double force, const lw_step *step, const lw_working *working) {
  const lw_bound bound[] = {{"Q", force, "kN"}, {"x", a->near_m, "m"}, {"z", a->z_m, "m"}};
  lw_step whole = *step;
  char half[16], formula[160];
  bool us = lw_tell_units(working) == LW_UNITS_US;
  lw_number_print(half, sizeof half, lw_tell(working, "m2", 0.25), us ? 5 : 2);
  lw_print(
      formula, sizeof formula,
      "%s Q/pi x^2 z (1/(3 (x^2 + z^2) (x^2 + z^2 + %s)^1.5) + 2/(3 (x^2 + z^2)^2 (x^2 + z^2 + %s)^0.5))",
      a->twice ? "3" : "1.5", half, half);
  whole.formula = formula;
  lw_working_bound(working, &whole, bound, 3);
}

/* The curves by m = x/H and n = z/H; of a point times its mean fall along the metre. */
static void curve(const at *a, const lw_plane_load *load, const lw_step *step, const lw_working *working) {
  double m = a->near_m / a->height_m, n = a->z_m / a->height_m, along = 1.0;
  bool far = m > 0.4;
  lw_step whole = *step;
  if (load->point) {
    lw_elastic_place straight = {.distance_m = a->near_m};
    double alone = lw_elastic_curve_point_kpa(load->force_kn_per_m, &straight, a->z_m, a->height_m);
    along = alone > 0.0 ? step->value / alone : 1.0;
    whole.formula = far ? "1.77 Q/H^2 m^2 n^2/(m^2 + n^2)^3 fa" : "0.28 Q/H^2 n^2/(0.16 + n^2)^3 fa";
  } else {
    whole.formula = far ? "1.28 Q/H m^2 n/(m^2 + n^2)^2" : "0.203 Q/H n/(0.16 + n^2)^2";
  }
  const lw_bound bound[] = {{"Q", load->force_kn_per_m, load->point ? "kN" : "kN/m"},
                            {"H", a->height_m, "m"},
                            {"m", m, ""},
                            {"n", n, ""},
                            {"fa", along, ""}};
  lw_working_bound(working, &whole, bound, 5);
}

void lw_elastic_at_record(const lw_plane *plane, int load, lw_load_pressure by, double depth_m,
                          const char *symbol, const lw_working *working) {
  const lw_plane_load *on = &plane->load[load];
  lw_elastic_reach r = lw_elastic_reach_of(plane, on, by);
  double nearer = r.lean * depth_m;
  bool curves = by == LW_LOAD_PRESSURE_CURVES && on->pressure_kpa <= 0.0;
  at a = {.z_m = depth_m - r.below_top_m,
          .near_m = on->near_m - nearer,
          .far_m = on->far_m - nearer,
          .height_m = r.height_m,
          .twice = r.face == LW_ELASTIC_DOUBLED};
  const lw_step step = {symbol, NULL,
                        NULL,   lw_elastic_kpa_on(plane, load, by, depth_m),
                        "kPa",  curves ? "[TERZAGHI1954 curves]" : "[BOUSSINESQ1885 line, strip and point]"};
  if (working == NULL || a.z_m <= 1e-6 || step.value <= 0.0) return;
  if (on->pressure_kpa <= 0.0) a.near_m = fmax(a.near_m, LW_ELASTIC_NEAREST_M);
  if (on->pressure_kpa > 0.0)
    strip(&a, on->pressure_kpa, &step, working);
  else if (curves)
    curve(&a, on, &step, working);
  else if (on->point)
    point(&a, on->force_kn_per_m, &step, working);
  else
    line(&a, on->force_kn_per_m, &step, working);
}
