/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/lateral.h>

#include <math.h>

#include "base/angles.h"

/* The curves of pressure against depth, fitted to tests on stiff walls. [TERZAGHI1954 line and point] */

static const double CLOSE = 0.4;                         /* m = x/H up to which one curve serves */
static const double LINE_FAR = 1.28, LINE_CLOSE = 0.203; /* about 4/π, and the fit */
static const double POINT_FAR = 1.77, POINT_CLOSE = 0.28;
static const double ALONG = 1.1; /* on the angle along the wall */
double lw_elastic_curve_line_kpa(double force_kn_per_m, double distance_m, double depth_m, double height_m) {
  double m = distance_m / height_m, n = depth_m / height_m, unit = force_kn_per_m / height_m;
  if (n <= 0.0) return 0.0;
  double close = 0.16 + n * n, square = m * m + n * n;
  return m > CLOSE ? LINE_FAR * unit * m * m * n / (square * square)
                   : LINE_CLOSE * unit * n / (close * close);
}

double lw_elastic_curve_point_kpa(double force_kn, const lw_elastic_place *place, double depth_m,
                                  double height_m) {
  double m = place->distance_m / height_m, n = depth_m / height_m, unit = force_kn / (height_m * height_m);
  double angle = ALONG * atan2(fabs(place->along_m), place->distance_m);
  if (n <= 0.0 || angle >= LW_HALF_PI) return 0.0;
  double close = 0.16 + n * n, square = m * m + n * n, beside = cos(angle) * cos(angle);
  double straight = m > CLOSE ? POINT_FAR * unit * m * m * n * n / (square * square * square)
                              : POINT_CLOSE * unit * n * n / (close * close * close);
  return straight * beside;
}
