/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/lateral.h>

#include <math.h>

#include "base/angles.h"

/* Level pressure of a line, strip or point load at one depth, by elasticity. */

static double times(lw_elastic_face face) {
  return face == LW_ELASTIC_DOUBLED ? 2.0 : 1.0;
}

double lw_elastic_line_kpa(double force_kn_per_m, double distance_m, double depth_m, lw_elastic_face face) {
  double x = distance_m, z = depth_m, square = x * x + z * z;
  if (z <= 0.0 || square <= 0.0) return 0.0;
  return times(face) * 2.0 * force_kn_per_m / LW_PI * x * x * z / (square * square);
}

double lw_elastic_strip_kpa(const lw_elastic_strip *strip, double depth_m, lw_elastic_face face) {
  if (depth_m < 0.0) return 0.0;
  double near = atan2(strip->near_m, depth_m), far = atan2(strip->far_m, depth_m);
  double seen = far - near, twice_middle = far + near;
  return times(face) * strip->pressure_kpa / LW_PI * (seen - sin(seen) * cos(twice_middle));
}

double lw_elastic_point_kpa(double force_kn, const lw_elastic_place *place, double depth_m,
                            lw_elastic_face face) {
  double x = place->distance_m, y = place->along_m, z = depth_m, square = x * x + y * y + z * z;
  if (z <= 0.0 || square <= 0.0) return 0.0;
  return times(face) * 1.5 * force_kn / LW_PI * x * x * z / (square * square * sqrt(square));
}

/* The integral of R⁻⁵ over y from -1/2 to 1/2 m: y/(3a²R³) + 2y/(3a⁴R) at the end, twice. */
double lw_elastic_point_mean_kpa(double force_kn, double distance_m, double depth_m, lw_elastic_face face) {
  double x = distance_m, z = depth_m, square = x * x + z * z;
  if (z <= 0.0 || square <= 0.0) return 0.0;
  double half = 0.5, r = sqrt(square + half * half);
  double sum = 2.0 * (half / (3.0 * square * r * r * r) + 2.0 * half / (3.0 * square * square * r));
  return times(face) * 1.5 * force_kn / LW_PI * x * x * z * sum;
}
