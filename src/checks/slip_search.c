/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "slip_parts.h"

/* The search for the circle with the least factor. A circle is three numbers from 0 to 1: how far its exit
 * lies in front, how far its entry lies behind, and how deep it goes between the shallowest that clears wall
 * and ground and the deepest that does not overhang. So no trial is wasted on a circle that cuts the wall. */

enum { EXITS = 7, ENTRIES = 8, DEPTHS = 4, COARSE = 14, FINE = 40, TURNS = 6, STARTS = 3 };

typedef struct search {
  const lw_slip_strips *strips;
  lw_slip_method method;
  int slices;
  int *circles;
  lw_slip *last; /* the circle just tried */
} search;

/* How far the arc must hang below the chord from exit to entry to pass below a point; 0 for one above it. */
static double sag_below(const lw_slip_circle *c, double half_m, double x_m, double y_m) {
  double ex = (c->entry_x_m - c->exit_x_m) / (2.0 * half_m),
         ey = (c->entry_y_m - c->exit_y_m) / (2.0 * half_m);
  double dx = x_m - 0.5 * (c->exit_x_m + c->entry_x_m), dy = y_m - 0.5 * (c->exit_y_m + c->entry_y_m);
  double u = dx * ex + dy * ey, v = dx * ey - dy * ex;
  if (v <= 0.0) return u < -half_m || u > half_m ? INFINITY : 0.0;
  double rest = half_m * half_m - u * u;
  if (rest <= 0.0) return INFINITY;
  /* Centre at h above the chord: h = (a² - u² - v²)/(2v); the arc hangs sqrt(a² + h²) - h. */
  double h = (rest - v * v) / (2.0 * v);
  return sqrt(half_m * half_m + h * h) - h;
}

static double least_sag(const lw_slip_ground *ground, const lw_slip_circle *c, double half_m) {
  double sag = 0.0;
  for (int i = 0; i < ground->corner_count; i++) {
    double x = ground->corner[i].x_m;
    if (x > c->exit_x_m && x < c->entry_x_m) sag = fmax(sag, sag_below(c, half_m, x, ground->corner[i].y_m));
  }
  if (ground->body_count == 0) return sag;
  for (int i = 0; i < ground->body_count; i++)
    sag = fmax(sag, sag_below(c, half_m, ground->body[i].x_m, fmin(ground->body[i].y_m, c->entry_y_m)));
  sag = fmax(sag, sag_below(c, half_m, ground->pad_front_m, ground->pad_y_m));
  return fmax(sag, sag_below(c, half_m, ground->pad_rear_m, ground->pad_y_m));
}

/* The square crowds the trials near the wall. */
static bool circle_of(const lw_slip_ground *ground, const double x[3], lw_slip_circle *c) {
  const lw_slip_box *box = &ground->box;
  c->exit_x_m = box->exit_to_m - (box->exit_to_m - box->exit_from_m) * x[0] * x[0];
  c->entry_x_m = box->entry_from_m + (box->entry_to_m - box->entry_from_m) * x[1] * x[1];
  c->exit_y_m = lw_slip_surface(ground, c->exit_x_m, false);
  c->entry_y_m = lw_slip_surface(ground, c->entry_x_m, true);
  double dx = c->entry_x_m - c->exit_x_m, dy = c->entry_y_m - c->exit_y_m,
         half = 0.5 * sqrt(dx * dx + dy * dy);
  if (dx < 1e-6 || half < 1e-6) return false;
  double rise = fmax(dy, 0.0) / dx, upright = half * rise;
  double most = sqrt(half * half + upright * upright) - upright, least = least_sag(ground, c, half);
  if (!(least < most)) return false;
  double sag = least + (most - least) * (least > 0.0 ? x[2] : 0.01 + 0.99 * x[2]);
  double up = (half * half - sag * sag) / (2.0 * sag);
  c->radius_m = up + sag;
  c->centre_x_m = 0.5 * (c->exit_x_m + c->entry_x_m) - up * dy / (2.0 * half);
  c->centre_y_m = 0.5 * (c->exit_y_m + c->entry_y_m) + up * dx / (2.0 * half);
  return lw_slip_clear(ground, c);
}

static double factor_at(const double *x, const void *context) {
  const search *s = context;
  lw_slip_circle circle;
  lw_slip_slices list;
  const lw_slip_ground *ground = s->strips->ground;
  if (!circle_of(ground, x, &circle)) return INFINITY;
  ++*s->circles;
  if (!lw_slip_slice_up(s->strips, &circle, s->slices, &list)) return INFINITY;
  if (lw_slip_worse(&list, &circle, ground->seismic_horizontal, s->method, s->last) != LW_OK) return INFINITY;
  return s->method == LW_SLIP_ORDINARY ? s->last->ordinary : s->last->bishop;
}

typedef struct start {
  double x[3], factor;
} start;

static bool apart(const start *a, const start *b) {
  return fabs(a->x[0] - b->x[0]) + fabs(a->x[1] - b->x[1]) + 0.5 * fabs(a->x[2] - b->x[2]) > 0.25;
}

/* The best of the grid, and the best that lie well away from it and from each other. */
static void keep(start best[STARTS], const start *now) {
  start rest = *now;
  for (int i = 0; i < STARTS && isfinite(rest.factor); i++) {
    if (!(rest.factor < best[i].factor)) {
      if (!apart(&rest, &best[i])) return;
      continue;
    }
    start beaten = best[i];
    best[i] = rest;
    if (!isfinite(beaten.factor) || !apart(&beaten, &rest)) return;
    rest = beaten;
  }
}

static void scan(const search *s, start best[STARTS]) {
  for (int i = 0; i < STARTS; i++) best[i] = (start){.factor = INFINITY};
  for (int i = 0; i < EXITS; i++)
    for (int k = 0; k < ENTRIES; k++)
      for (int d = 0; d < DEPTHS; d++) {
        start now = {.x = {i / (EXITS - 1.0), (k + 1.0) / ENTRIES, d / (DEPTHS - 0.5)}};
        now.factor = factor_at(now.x, s);
        keep(best, &now);
      }
}

static void refine(const search *s, const start *from, lw_slip *least, double *factor) {
  lw_least at = {.count = 3, .low = {0.0, 0.0, 0.0}, .high = {1.0, 1.0, 1.0}, .step = 0.08};
  for (int i = 0; i < 3; i++) at.x[i] = from->x[i];
  if (lw_solve_least(factor_at, s, TURNS, &at) != LW_OK || !(at.value < *factor)) return;
  *factor = factor_at(at.x, s);
  *least = *s->last;
}

void lw_slip_search(const lw_slip_ground *ground, lw_slip_method method, lw_slip *slip) {
  lw_slip_strips strips;
  lw_slip last = {0};
  int circles = 0;
  start best[STARTS];
  search s = {.strips = &strips, .method = method, .slices = COARSE, .circles = &circles, .last = &last};
  double factor = INFINITY;
  lw_slip_cut(ground, &strips);
  scan(&s, best);
  s.slices = FINE;
  *slip = (lw_slip){.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_CIRCLE};
  for (int i = 0; i < STARTS; i++)
    if (isfinite(best[i].factor)) refine(&s, &best[i], slip, &factor);
  slip->circles = circles;
}
