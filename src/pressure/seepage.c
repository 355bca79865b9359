/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "seepage.h"

#include <math.h>

#include "base/angles.h"

/* Seepage to an upright drain by the series of Laplace's equation in a half-strip. */

enum { HEAD_TERMS = 1000 };

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

double lw_seepage_alternating(double cotangent) {
  double sum = 0.0;
  for (int n = 0; n < LW_SEEPAGE_PORE_TERMS; n++) {
    double odd = 2.0 * n + 1.0, term = exp(-odd * 0.5 * LW_PI * cotangent) / (odd * odd * odd);
    sum += n % 2 == 0 ? term : -term;
    if (term < 1e-16) break;
  }
  return sum;
}

double lw_seepage_pore_area(double height_m, double angle_rad) {
  double rise = sin(angle_rad), run = fmax(cos(angle_rad), 0.0), cube = LW_PI * LW_PI * LW_PI;
  double relieved = 14.0 * LW_ZETA_3 / cube * run + 16.0 / cube * rise * lw_seepage_alternating(run / rise);
  return height_m * height_m * fmax(0.5 / rise - relieved, 0.0);
}

double lw_seepage_weight(const lw_plane *plane, double unit_weight) {
  return 0.5 * unit_weight * plane->height_m * plane->height_m + plane->surcharge_kpa * plane->height_m;
}
