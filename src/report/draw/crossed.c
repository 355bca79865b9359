/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "drawing.h"

/* Which lines of a drawing go through a box: words look for a place that none does. */

/* The share of a line, begin to end, that lies between two bounds of one axis. */
static bool cut_down(double from, double along, double low, double high, double share[2]) {
  if (fabs(along) < 1e-12) return from > low && from < high;
  double a = (low - from) / along, b = (high - from) / along;
  share[0] = fmax(share[0], fmin(a, b));
  share[1] = fmin(share[1], fmax(a, b));
  return share[0] < share[1];
}

bool lw_box_is_met(const lw_box *box, lw_xy_mm from, lw_xy_mm to) {
  double share[] = {0.0, 1.0};
  return cut_down(from.x_mm, to.x_mm - from.x_mm, box->left_mm, box->right_mm, share) &&
         cut_down(from.y_mm, to.y_mm - from.y_mm, box->top_mm, box->bottom_mm, share);
}

static double distance(lw_xy_mm a, lw_xy_mm b, lw_xy_mm spot) {
  double x = b.x_mm - a.x_mm, y = b.y_mm - a.y_mm, square = x * x + y * y;
  double share = square > 0.0 ? ((spot.x_mm - a.x_mm) * x + (spot.y_mm - a.y_mm) * y) / square : 0.0;
  share = fmin(fmax(share, 0.0), 1.0);
  return hypot(a.x_mm + share * x - spot.x_mm, a.y_mm + share * y - spot.y_mm);
}

/* On which side of a line a spot lies, as the sign. */
static double side(lw_xy_mm a, lw_xy_mm b, lw_xy_mm spot) {
  return (b.x_mm - a.x_mm) * (spot.y_mm - a.y_mm) - (b.y_mm - a.y_mm) * (spot.x_mm - a.x_mm);
}

static bool cross(lw_xy_mm a, lw_xy_mm b, lw_xy_mm c, lw_xy_mm d) {
  return side(a, b, c) * side(a, b, d) < 0.0 && side(c, d, a) * side(c, d, b) < 0.0;
}

/* A box that lines may go through, or a line that they may cross. */
typedef struct target {
  const lw_box *box;
  lw_xy_mm from, to;       /* where there is no box */
  const lw_xy_mm *besides; /* lines through this spot do not count */
} target;

static bool meets(const target *t, lw_xy_mm a, lw_xy_mm b) {
  return t->box ? lw_box_is_met(t->box, a, b) : cross(t->from, t->to, a, b);
}

static bool counts(const lw_drawing *d, const lw_mark *mark, const target *t) {
  static const double NEAR_MM = 0.3;
  const lw_xy_mm *spot = d->spot + mark->first;
  size_t sides = mark->kind == LW_MARK_AREA ? mark->count : mark->count - 1;
  bool met = false;
  for (size_t i = 0; i < sides && !met; i++) met = meets(t, spot[i], spot[(i + 1) % mark->count]);
  for (size_t i = 0; i < sides && met && t->besides; i++)
    if (distance(spot[i], spot[(i + 1) % mark->count], *t->besides) < NEAR_MM) return false;
  return met;
}

static int count_of(const lw_drawing *d, const target *t) {
  int count = 0;
  for (size_t i = 0; i < d->mark_count; i++) {
    const lw_mark *mark = &d->mark[i];
    bool seen = mark->pen != LW_PEN_NONE || mark->fill == LW_FILL_INK;
    if (mark->kind != LW_MARK_WORDS && !mark->shading && seen) count += counts(d, mark, t) ? 1 : 0;
  }
  return count;
}

int lw_drawing_crossings(const lw_drawing *drawing, const lw_box *box, const lw_xy_mm *besides) {
  static const double AIR_MM = 0.25; /* half the heaviest line */
  lw_box wide = {box->left_mm - AIR_MM, box->top_mm - AIR_MM, box->right_mm + AIR_MM,
                 box->bottom_mm + AIR_MM};
  return count_of(drawing, &(target){.box = &wide, .besides = besides});
}

int lw_drawing_crossed_by(const lw_drawing *drawing, lw_xy_mm from, lw_xy_mm to) {
  return count_of(drawing, &(target){.from = from, .to = to, .besides = &from});
}
