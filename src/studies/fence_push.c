/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fence_push.h"

#include <lowwall/studies.h>

#include <math.h>

#include "base/bound.h"
#include "base/solve.h"

/* Soil and wind on a fence, in four measures, and the height of soil that comes to the wind. */

static const double HIGHEST_M = 100.0, CLOSE_M = 1e-10;

static bool is_dry(const lw_fence_bed *bed) {
  return bed->water_depth_m >= bed->height_m;
}

/* What each metre below the water adds to the pressure over moist soil. */
static double wet_gain(const lw_fence_bed *bed) {
  double buoyant = bed->saturated_unit_weight_kn_per_m3 - bed->water_unit_weight_kn_per_m3;
  return bed->coefficient * (buoyant - bed->unit_weight_kn_per_m3) + bed->water_unit_weight_kn_per_m3;
}

static double coefficient(const lw_step *step, double friction_rad, const lw_working *working) {
  const lw_bound bound[] = {{"phi", friction_rad * LW_DEG_PER_RAD, "deg"}};
  lw_working_bound(working, step, bound, 1);
  return step->value;
}

double lw_fence_at_rest(double friction_rad, const lw_working *working) {
  double k = 1.0 - sin(fmax(friction_rad, 0.0));
  return coefficient(&(lw_step){"K0", "1 - sin phi", NULL, k, "", "[JAKY1944 coefficient]"}, friction_rad,
                     working);
}

double lw_fence_yielding(double friction_rad, const lw_working *working) {
  double sine = sin(fmax(friction_rad, 0.0)), k = (1.0 - sine) / (1.0 + sine);
  return coefficient(
      &(lw_step){"Ka", "(1 - sin phi)/(1 + sin phi)", NULL, k, "", "[RANKINE1857 level ground]"},
      friction_rad, working);
}

static const char STATICS[] = "statics";

/* Below water K (γsat - γw) + γw stands for K γ. */
static void write_soil(const lw_fence_bed *bed, double wet_m, const lw_fence_push *push,
                       const lw_working *working) {
  const double *of = push->of;
  bool wet = wet_m > 0.0;
  const lw_bound bound[] = {{"Kf", bed->coefficient, ""},
                            {"gamma", bed->unit_weight_kn_per_m3, "kN/m3"},
                            {"gsat", bed->saturated_unit_weight_kn_per_m3, "kN/m3"},
                            {"gw", bed->water_unit_weight_kn_per_m3, "kN/m3"},
                            {"gd", wet_gain(bed), "kN/m3"},
                            {"hs", bed->height_m, "m"},
                            {"hw", wet_m, "m"},
                            {"q", bed->surcharge_kpa, "kPa"},
                            {"Vs", of[LW_FENCE_SHEAR], "kN/m"},
                            {"Mg", of[LW_FENCE_GROUND], "kN m/m"},
                            {"Lp", bed->hole_m, "m"}};
  const lw_step steps[] = {{"gd", "Kf (gsat - gw - gamma) + gw", NULL, wet_gain(bed), "kN/m3", STATICS},
                           {"pf", wet ? "Kf (gamma hs + q) + gd hw" : "Kf (gamma hs + q)", NULL,
                            of[LW_FENCE_BOARD], "kPa", STATICS},
                           {"Vs", wet ? "Kf (gamma hs^2/2 + q hs) + gd hw^2/2" : "Kf (gamma hs^2/2 + q hs)",
                            NULL, of[LW_FENCE_SHEAR], "kN/m", STATICS},
                           {"Mg",
                            wet ? "Kf (gamma hs^3/6 + q hs^2/2) + gd hw^3/6" : "Kf (gamma hs^3/6 + q hs^2/2)",
                            NULL, of[LW_FENCE_GROUND], "kN m/m", STATICS},
                           {"Mh", "Mg + Vs Lp", NULL, of[LW_FENCE_HOLE], "kN m/m", STATICS}};
  for (size_t i = wet ? 0 : 1; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}

void lw_fence_soil_push(const lw_fence_bed *bed, lw_fence_push *push, const lw_working *working) {
  double h = bed->height_m, wet = is_dry(bed) ? 0.0 : h - bed->water_depth_m, gain = wet_gain(bed);
  double kg = bed->coefficient * bed->unit_weight_kn_per_m3, kq = bed->coefficient * bed->surcharge_kpa;
  double shear = kq * h + kg * h * h / 2.0 + gain * wet * wet / 2.0;
  double moment = kq * h * h / 2.0 + kg * h * h * h / 6.0 + gain * wet * wet * wet / 6.0;
  push->of[LW_FENCE_BOARD] = kq + kg * h + gain * wet;
  push->of[LW_FENCE_SHEAR] = shear;
  push->of[LW_FENCE_GROUND] = moment;
  push->of[LW_FENCE_HOLE] = moment + shear * bed->hole_m;
  if (working != NULL) write_soil(bed, wet, push, working);
}

static void write_wind(const lw_fence_gust *gust, const lw_fence_push *push, const lw_working *working) {
  const double *of = push->of;
  const lw_bound bound[] = {
      {"pw", gust->pressure_kpa, "kPa"}, {"Hf", gust->height_m, "m"}, {"Lp", gust->hole_m, "m"}};
  const lw_step steps[] = {{"Vw", "pw Hf", NULL, of[LW_FENCE_SHEAR], "kN/m", STATICS},
                           {"Mw", "pw Hf^2/2", NULL, of[LW_FENCE_GROUND], "kN m/m", STATICS},
                           {"Mhw", "pw Hf (Hf/2 + Lp)", NULL, of[LW_FENCE_HOLE], "kN m/m", STATICS}};
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}

void lw_fence_wind_push(const lw_fence_gust *gust, lw_fence_push *push, const lw_working *working) {
  double shear = gust->pressure_kpa * gust->height_m;
  push->of[LW_FENCE_BOARD] = gust->pressure_kpa;
  push->of[LW_FENCE_SHEAR] = shear;
  push->of[LW_FENCE_GROUND] = shear * gust->height_m / 2.0;
  push->of[LW_FENCE_HOLE] = shear * (gust->height_m / 2.0 + gust->hole_m);
  if (working != NULL) write_wind(gust, push, working);
}

typedef struct excess {
  const lw_fence_bed *bed;
  lw_fence_measure measure;
  double target;
} excess;

static double excess_at(double height_m, const void *context) {
  const excess *of = context;
  lw_fence_bed bed = *of->bed;
  lw_fence_push push;
  bed.height_m = height_m;
  lw_fence_soil_push(&bed, &push, NULL);
  return push.of[of->measure] - of->target;
}

/* Without water the boards, the push and, without load, the moment at the ground have a closed form. */
static bool closed(const excess *of, double *height) {
  const lw_fence_bed *bed = of->bed;
  double weight = bed->unit_weight_kn_per_m3, load = bed->surcharge_kpa;
  double stress = of->target / bed->coefficient;
  if (isfinite(bed->water_depth_m) || !(bed->coefficient > 0.0 && weight > 0.0)) return false;
  if (of->measure == LW_FENCE_BOARD) {
    *height = fmax((stress - load) / weight, 0.0);
  } else if (of->measure == LW_FENCE_SHEAR) {
    *height = (sqrt(load * load + 2.0 * weight * stress) - load) / weight;
  } else if (of->measure == LW_FENCE_GROUND && load <= 0.0) {
    *height = cbrt(6.0 * stress / weight);
  } else {
    return false;
  }
  return *height <= HIGHEST_M;
}

lw_status lw_fence_equal_height(const lw_fence_bed *bed, const lw_fence_push *wind, lw_fence_measure measure,
                                double share, double *height) {
  excess of = {bed, measure, share * wind->of[measure]};
  if (!(of.target > 0.0)) return LW_NO_SOLUTION;
  double found;
  if (closed(&of, &found)) {
    *height = found;
    return LW_OK;
  }
  if (excess_at(0.0, &of) >= 0.0) {
    *height = 0.0;
    return LW_OK;
  }
  return lw_solve_root(excess_at, &of, 0.0, HIGHEST_M, CLOSE_M, height);
}
