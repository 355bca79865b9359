/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_POLYGON_H
#define LOWWALL_WALL_POLYGON_H

#include <lowwall/wall.h>
#include <math.h>

typedef struct lw_patch {
  double area_m2, x_m, y_m; /* and its centroid */
} lw_patch;

/* lw_polygon_area in place, for a search that asks for dozens a wall. */
static inline lw_patch lw_patch_of(const lw_corner *corner, int count) {
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
  double third = fabs(twice) < 1e-300 ? 0.0 : 1.0 / (3.0 * twice);
  return (lw_patch){0.5 * fabs(twice), corner[0].x_m + third * mx, corner[0].y_m + third * my};
}

/** Area, centroid of a simple polygon. Positive area for either sense of rotation. */
void lw_polygon_area(const lw_corner *corner, int count, double *area_m2, lw_corner *centroid);

/** The part of a polygon on one side of a level.
 *  in    corner, count   convex, or at least cut only once by the level
 *  out   kept            room for count + 1 corners
 *  gives how many corners are kept */
int lw_polygon_cut(const lw_corner *corner, int count, double level_m, bool keep_above, lw_corner *kept);

/** The polygon as seen in a mirror standing at its right: x becomes width - x. */
void lw_polygon_mirror(const lw_corner *corner, int count, double width_m, lw_corner *mirrored);

#endif
