/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "picture_marks.h"

#include <math.h>

enum { SPOTS = 24 };

static lw_xy_mm spot(const lw_picture *picture, double x, double y) {
  return (lw_xy_mm){x * picture->mm, (LW_PICTURE_HIGH - y) * picture->mm};
}

static int spots_of(const lw_picture *picture, const double *xy, int count, lw_xy_mm *out) {
  for (int i = 0; i < count && i < SPOTS; i++) out[i] = spot(picture, xy[2 * i], xy[2 * i + 1]);
  return count < SPOTS ? count : SPOTS;
}

void lw_picture_line(const lw_picture *picture, lw_pen pen, const double *xy, int spots) {
  lw_xy_mm at[SPOTS];
  size_t count = (size_t)spots_of(picture, xy, spots, at);
  lw_drawing_line(picture->paper, pen, at, count);
}

void lw_picture_area(const lw_picture *picture, lw_pen pen, lw_fill fill, const double *xy, int spots) {
  lw_xy_mm at[SPOTS];
  size_t count = (size_t)spots_of(picture, xy, spots, at);
  lw_drawing_area(picture->paper, pen, fill, at, count);
}

void lw_picture_box(const lw_picture *picture, lw_fill fill, double left, double bottom, double right,
                    double top) {
  const double xy[] = {left, bottom, right, bottom, right, top, left, top};
  lw_picture_area(picture, LW_PEN_SEEN, fill, xy, 4);
}

void lw_picture_ring(const lw_picture *picture, lw_fill fill, double x, double y, double radius) {
  enum { SIDES = 16 };
  static const double TURN = 6.283185307179586;
  double xy[2 * SIDES];
  for (int i = 0; i < SIDES; i++) {
    xy[2 * i] = x + radius * cos(TURN * i / SIDES);
    xy[2 * i + 1] = y + radius * sin(TURN * i / SIDES);
  }
  lw_picture_area(picture, LW_PEN_SEEN, fill, xy, SIDES);
}

/* Its head in the size of the picture. */
void lw_picture_arrow(const lw_picture *picture, double x, double y, double to_x, double to_y) {
  static const double HEAD = 6.0, HALF = 2.4;
  double dx = to_x - x, dy = to_y - y, length = hypot(dx, dy);
  if (!(length > HEAD)) return;
  dx /= length;
  dy /= length;
  double back_x = to_x - HEAD * dx, back_y = to_y - HEAD * dy;
  const double shaft[] = {x, y, back_x, back_y};
  const double head[] = {
      to_x, to_y, back_x - HALF * dy, back_y + HALF * dx, back_x + HALF * dy, back_y - HALF * dx};
  lw_picture_line(picture, LW_PEN_SEEN, shaft, 2);
  lw_picture_area(picture, LW_PEN_NONE, LW_FILL_INK, head, 3);
}

double lw_picture_ground(const lw_picture *picture, double x) {
  return picture->left + (picture->right - picture->left) * x / LW_PICTURE_WIDE;
}
