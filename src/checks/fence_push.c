/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/fence.h>

#include <math.h>

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

void lw_fence_soil_push(const lw_fence_bed *bed, lw_fence_push *push) {
  double h = bed->height_m, wet = is_dry(bed) ? 0.0 : h - bed->water_depth_m, gain = wet_gain(bed);
  double kg = bed->coefficient * bed->unit_weight_kn_per_m3, kq = bed->coefficient * bed->surcharge_kpa;
  double shear = kq * h + kg * h * h / 2.0 + gain * wet * wet / 2.0;
  double moment = kq * h * h / 2.0 + kg * h * h * h / 6.0 + gain * wet * wet * wet / 6.0;
  push->of[LW_FENCE_BOARD] = kq + kg * h + gain * wet;
  push->of[LW_FENCE_SHEAR] = shear;
  push->of[LW_FENCE_GROUND] = moment;
  push->of[LW_FENCE_HOLE] = moment + shear * bed->hole_m;
}

void lw_fence_wind_push(const lw_fence_gust *gust, lw_fence_push *push) {
  double shear = gust->pressure_kpa * gust->height_m;
  push->of[LW_FENCE_BOARD] = gust->pressure_kpa;
  push->of[LW_FENCE_SHEAR] = shear;
  push->of[LW_FENCE_GROUND] = shear * gust->height_m / 2.0;
  push->of[LW_FENCE_HOLE] = shear * (gust->height_m / 2.0 + gust->hole_m);
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
  lw_fence_soil_push(&bed, &push);
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
