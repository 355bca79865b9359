/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/lateral.h>

#include <math.h>

#include "base/angles.h"

/* Push on an upright plane in closed form. The strip's pressure is q/π [F(far) - F(near)] with
 * F = atan(x/z) - xz/(x² + z²): force and moment about the load's level are integrals of F and of zF. */

static double force_to(double x_m, double height_m) {
  return height_m * atan2(x_m, height_m);
}

static double moment_to(double x_m, double height_m) {
  double h = height_m, sector = 0.5 * h * h * atan2(x_m, h);
  return isinf(x_m) ? sector : sector - 0.5 * x_m * (h - x_m * atan2(h, x_m));
}

/* From force and moment about the load's level. */
static lw_elastic_push push_of(double force, double moment, double height_m) {
  double height = force > 0.0 ? height_m - moment / force : 0.0;
  return (lw_elastic_push){.push_kn_per_m = force, .height_m = height};
}

lw_elastic_push lw_elastic_strip_push(const lw_elastic_strip *strip, double height_m, lw_elastic_face face) {
  double each = (face == LW_ELASTIC_DOUBLED ? 2.0 : 1.0) * strip->pressure_kpa / LW_PI;
  if (height_m <= 0.0) return (lw_elastic_push){0};
  double force = each * (force_to(strip->far_m, height_m) - force_to(strip->near_m, height_m));
  double moment = each * (moment_to(strip->far_m, height_m) - moment_to(strip->near_m, height_m));
  return push_of(force, moment, height_m);
}

lw_elastic_push lw_elastic_line_push(double force_kn_per_m, double distance_m, double height_m,
                                     lw_elastic_face face) {
  double each = (face == LW_ELASTIC_DOUBLED ? 2.0 : 1.0) * force_kn_per_m / LW_PI;
  double x = distance_m, h = height_m, square = x * x + h * h;
  if (h <= 0.0) return (lw_elastic_push){0};
  double force = each * h * h / square, moment = each * x * (atan2(h, x) - x * h / square);
  return push_of(force, moment, h);
}
