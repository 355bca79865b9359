/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "parts.h"

/* Which circles cut neither wall nor pad nor the ground's own surface. The arc bulges downwards, so one that
 * passes below two points passes below all between them: of the wall only the lower hull counts. */

static const double TOUCH_M = 1e-7, SAME_M = 1e-9;

static void insert(lw_corner at, lw_slip_hull *all) {
  int i = all->count++;
  for (; i > 0 && (all->corner[i - 1].x_m > at.x_m ||
                   (all->corner[i - 1].x_m >= at.x_m && all->corner[i - 1].y_m > at.y_m));
       i--)
    all->corner[i] = all->corner[i - 1];
  all->corner[i] = at;
}

/* Whether the way from p over q to r turns to the left: only then q lies below the line from p to r. */
static bool turns_left(lw_corner p, lw_corner q, lw_corner r) {
  return (q.x_m - p.x_m) * (r.y_m - p.y_m) - (q.y_m - p.y_m) * (r.x_m - p.x_m) > 0.0;
}

static void lower_side(const lw_slip_hull *all, lw_slip_hull *hull) {
  for (int i = 0; i < all->count; i++) {
    while (hull->count > 1 &&
           !turns_left(hull->corner[hull->count - 2], hull->corner[hull->count - 1], all->corner[i]))
      hull->count--;
    hull->corner[hull->count++] = all->corner[i];
  }
  while (hull->count > 1 && hull->corner[hull->count - 1].x_m - hull->corner[hull->count - 2].x_m <= SAME_M)
    hull->count--;
}

/* The foot of the step that the wall holds up lies within the wall, or where its back overhangs. */
static bool hidden(const lw_slip_ground *ground, const lw_slip_hull *wall, int i) {
  const lw_corner *at = &ground->corner[i];
  if (wall->count == 0 || i + 1 >= ground->corner_count) return false;
  bool foot = at[1].x_m - at->x_m <= SAME_M && at[1].y_m > at->y_m;
  return foot && at->x_m >= wall->corner[0].x_m && at->x_m <= wall->corner[wall->count - 1].x_m + SAME_M;
}

void lw_slip_hull_of(const lw_slip_ground *ground, lw_slip_strips *strips) {
  lw_slip_hull all = {.count = 0};
  strips->wall.count = 0;
  for (int i = 0; i < ground->body_count; i++) insert(ground->body[i], &all);
  if (ground->body_count > 0) {
    insert((lw_corner){ground->pad_front_m, ground->pad_y_m}, &all);
    insert((lw_corner){ground->pad_rear_m, ground->pad_y_m}, &all);
    lower_side(&all, &strips->wall);
  }
  for (int i = 0; i < ground->corner_count; i++) strips->bounds[i] = !hidden(ground, &strips->wall, i);
}

static bool below(const lw_slip_circle *circle, double x_m, double y_m) {
  double dx = x_m - circle->centre_x_m, dy = y_m - circle->centre_y_m;
  return sqrt(dx * dx + dy * dy) <= circle->radius_m + TOUCH_M;
}

static bool between_ends(const lw_slip_circle *circle, double x_m) {
  return x_m > circle->exit_x_m && x_m < circle->entry_x_m;
}

bool lw_slip_clear(const lw_slip_strips *strips, const lw_slip_circle *circle) {
  const lw_slip_ground *ground = strips->ground;
  const lw_slip_hull *wall = &strips->wall;
  if (circle->centre_y_m < circle->entry_y_m - TOUCH_M) return false;
  double deepest =
      circle->centre_x_m < circle->exit_x_m ? circle->exit_y_m : circle->centre_y_m - circle->radius_m;
  if (deepest < ground->floor_y_m - TOUCH_M) return false;
  for (int i = 0; i < ground->corner_count; i++) {
    const lw_corner *at = &ground->corner[i];
    if (strips->bounds[i] && between_ends(circle, at->x_m) && !below(circle, at->x_m, at->y_m)) return false;
  }
  if (wall->count == 0) return true;
  /* A wall or pad that reaches out of what slides is cut. */
  if (wall->corner[0].x_m < circle->exit_x_m - TOUCH_M ||
      wall->corner[wall->count - 1].x_m > circle->entry_x_m + TOUCH_M)
    return false;
  for (int i = 0; i < wall->count; i++) /* Above the ground behind only its place counts. */
    if (!below(circle, wall->corner[i].x_m, lw_smaller(wall->corner[i].y_m, circle->entry_y_m))) return false;
  return true;
}

/* To pass below a point; 0 for one above the chord. One beyond its ends is for lw_slip_clear. */
static double sag_below(const lw_slip_circle *c, double half_m, double x_m, double y_m) {
  double ex = (c->entry_x_m - c->exit_x_m) / (2.0 * half_m),
         ey = (c->entry_y_m - c->exit_y_m) / (2.0 * half_m);
  double dx = x_m - 0.5 * (c->exit_x_m + c->entry_x_m), dy = y_m - 0.5 * (c->exit_y_m + c->entry_y_m);
  double u = dx * ex + dy * ey, v = dx * ey - dy * ex;
  if (v <= 0.0) return 0.0;
  double rest = half_m * half_m - u * u;
  if (rest <= 0.0) return INFINITY;
  /* Centre at h above the chord: h = (a² - u² - v²)/(2v); the arc hangs sqrt(a² + h²) - h. */
  double h = (rest - v * v) / (2.0 * v);
  return sqrt(half_m * half_m + h * h) - h;
}

double lw_slip_least_sag(const lw_slip_strips *strips, const lw_slip_circle *ends, double half_m) {
  const lw_slip_ground *ground = strips->ground;
  double sag = 0.0;
  for (int i = 0; i < ground->corner_count; i++) {
    const lw_corner *at = &ground->corner[i];
    if (strips->bounds[i] && between_ends(ends, at->x_m))
      sag = lw_larger(sag, sag_below(ends, half_m, at->x_m, at->y_m));
  }
  for (int i = 0; i < strips->wall.count; i++) {
    const lw_corner *at = &strips->wall.corner[i];
    sag = lw_larger(sag, sag_below(ends, half_m, at->x_m, lw_smaller(at->y_m, ends->entry_y_m)));
  }
  return sag;
}
