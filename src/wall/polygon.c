/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "polygon.h"

void lw_polygon_area(const lw_corner *corner, int count, double *area_m2, lw_corner *centroid) {
  lw_patch patch = lw_patch_of(corner, count);
  *area_m2 = patch.area_m2;
  *centroid = (lw_corner){patch.x_m, patch.y_m};
}

void lw_polygon_mirror(const lw_corner *corner, int count, double width_m, lw_corner *mirrored) {
  for (int i = 0; i < count; i++) {
    mirrored[i].x_m = width_m - corner[count - 1 - i].x_m;
    mirrored[i].y_m = corner[count - 1 - i].y_m;
  }
}

int lw_polygon_cut(const lw_corner *corner, int count, double level_m, bool keep_above, lw_corner *kept) {
  double sign = keep_above ? 1.0 : -1.0;
  int n = 0;
  for (int i = 0; i < count; i++) {
    lw_corner a = corner[i], b = corner[(i + 1) % count];
    double da = sign * (a.y_m - level_m), db = sign * (b.y_m - level_m);
    if (da >= 0.0) kept[n++] = a;
    if (da * db < 0.0) kept[n++] = (lw_corner){a.x_m + da / (da - db) * (b.x_m - a.x_m), level_m};
  }
  return n;
}
