/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/section.h>

#include <math.h>

void lw_polygon_area(const lw_corner *corner, int count, double *area_m2, lw_corner *centroid) {
  double twice = 0.0, mx = 0.0, my = 0.0;
  /* Measured from the first corner, so that a small polygon far from the origin keeps its digits. */
  for (int i = 1; i + 1 < count; i++) {
    double ax = corner[i].x_m - corner[0].x_m, ay = corner[i].y_m - corner[0].y_m;
    double bx = corner[i + 1].x_m - corner[0].x_m, by = corner[i + 1].y_m - corner[0].y_m;
    double cross = ax * by - bx * ay;
    twice += cross;
    mx += cross * (ax + bx);
    my += cross * (ay + by);
  }
  *area_m2 = fabs(twice) / 2.0;
  bool flat = fabs(twice) < 1e-300;
  centroid->x_m = corner[0].x_m + (flat ? 0.0 : mx / (3.0 * twice));
  centroid->y_m = corner[0].y_m + (flat ? 0.0 : my / (3.0 * twice));
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
