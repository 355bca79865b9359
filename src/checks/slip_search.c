/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "slip_parts.h"

/* The search for the circle with the least factor. A circle is three numbers from 0 to 1: how far its exit
 * lies in front, how far its entry lies behind, and how deep it goes between the shallowest that clears wall
 * and ground and the deepest that does not overhang. So no trial is wasted on a circle that cuts the wall. */

static const lw_slip_effort USUAL = {.exits = 7,
                                     .entries = 8,
                                     .depths = 5,
                                     .coarse = 12,
                                     .fine = 40,
                                     .starts = 3,
                                     .turns = 5,
                                     .last_turns = 2,
                                     .line_steps = 3,
                                     .worth = 1e-3};

/* A load that acts on a line, or in the ground, makes hollows of its own. */
static const lw_slip_effort HARD = {.exits = 9,
                                    .entries = 12,
                                    .depths = 7,
                                    .coarse = 16,
                                    .fine = 40,
                                    .starts = 6,
                                    .turns = 5,
                                    .last_turns = 3,
                                    .line_steps = 7,
                                    .worth = 1e-6};

/* How many times the least factor the best of an eighth of the grid may be, the best of all of it, and the
 * bottom of the best's hollow: more than tests/bench/slip.c finds on any of 30,000 random cross-sections,
 * 2.09, 1.44 and 1.31. tests/verdict/governing.c holds what comes of it. */
const lw_slip_stages lw_slip_gaps = {.eighth = 3.5, .grid = 2.25, .hollow = 1.6, .least = 1.0};

typedef struct search {
  const lw_slip_strips *strips;
  const lw_slip_effort *effort;
  lw_slip_method method;
  int slices;
  int *circles;
  lw_slip *last; /* the circle just tried */
  double enough; /* it may end where it cannot come below this */
  lw_slip_stages *stages;
} search;

/* Exit and entry, and between which sags of the arc below them a circle passes. */
typedef struct chord {
  lw_slip_circle ends;
  double half_m, least_m, most_m;
} chord;

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
    if (x <= c->exit_x_m || x >= c->entry_x_m) continue;
    sag = lw_larger(sag, sag_below(c, half_m, x, ground->corner[i].y_m));
  }
  if (ground->body_count == 0) return sag;
  for (int i = 0; i < ground->body_count; i++)
    sag = lw_larger(sag,
                    sag_below(c, half_m, ground->body[i].x_m, lw_smaller(ground->body[i].y_m, c->entry_y_m)));
  sag = lw_larger(sag, sag_below(c, half_m, ground->pad_front_m, ground->pad_y_m));
  return lw_larger(sag, sag_below(c, half_m, ground->pad_rear_m, ground->pad_y_m));
}

/* The square crowds the trials near the wall. */
static bool chord_of(const lw_slip_ground *ground, double exit_share, double entry_share, chord *line) {
  const lw_slip_box *box = &ground->box;
  lw_slip_circle *c = &line->ends;
  c->exit_x_m = box->exit_to_m - (box->exit_to_m - box->exit_from_m) * exit_share * exit_share;
  c->entry_x_m = box->entry_from_m + (box->entry_to_m - box->entry_from_m) * entry_share * entry_share;
  c->exit_y_m = lw_slip_surface(ground, c->exit_x_m, false);
  c->entry_y_m = lw_slip_surface(ground, c->entry_x_m, true);
  double dx = c->entry_x_m - c->exit_x_m, dy = c->entry_y_m - c->exit_y_m,
         half = 0.5 * sqrt(dx * dx + dy * dy);
  if (dx < 1e-6 || half < 1e-6) return false;
  double upright = half * lw_larger(dy, 0.0) / dx;
  line->half_m = half;
  line->most_m = sqrt(half * half + upright * upright) - upright;
  line->least_m = least_sag(ground, c, half);
  return line->least_m < line->most_m;
}

static bool circle_of(const lw_slip_ground *ground, const chord *line, double depth_share,
                      lw_slip_circle *c) {
  *c = line->ends;
  double dx = c->entry_x_m - c->exit_x_m, dy = c->entry_y_m - c->exit_y_m, half = line->half_m;
  double share = line->least_m > 0.0 ? depth_share : 0.01 + 0.99 * depth_share;
  double sag = line->least_m + (line->most_m - line->least_m) * share;
  double up = (half * half - sag * sag) / (2.0 * sag);
  c->radius_m = up + sag;
  c->centre_x_m = 0.5 * (c->exit_x_m + c->entry_x_m) - up * dy / (2.0 * half);
  c->centre_y_m = 0.5 * (c->exit_y_m + c->entry_y_m) + up * dx / (2.0 * half);
  return lw_slip_clear(ground, c);
}

static double factor_of(const search *s, const chord *line, double depth_share) {
  lw_slip_circle circle;
  lw_slip_slices list;
  const lw_slip_ground *ground = s->strips->ground;
  if (!circle_of(ground, line, depth_share, &circle)) return INFINITY;
  ++*s->circles;
  if (!lw_slip_slice_up(s->strips, &circle, s->slices, &list)) return INFINITY;
  if (lw_slip_worse(&list, &circle, ground->seismic_horizontal, s->method, s->last) != LW_OK) return INFINITY;
  return lw_slip_factor(s->last, s->method);
}

static double factor_at(const double *x, const void *context) {
  const search *s = context;
  chord line;
  return chord_of(s->strips->ground, x[0], x[1], &line) ? factor_of(s, &line, x[2]) : INFINITY;
}

typedef struct start {
  double x[3], factor;
  int slices;
} start;

static bool apart(const start *a, const start *b) {
  return fabs(a->x[0] - b->x[0]) + fabs(a->x[1] - b->x[1]) + 0.5 * fabs(a->x[2] - b->x[2]) > 0.25;
}

/* The best of the grid, and the best that lie well away from it and from each other. */
static void keep(const search *s, start best[LW_SLIP_STARTS_MAX], const start *now) {
  start rest = *now;
  for (int i = 0; i < s->effort->starts && isfinite(rest.factor); i++) {
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

/* The grid in two rounds: an eighth of it spread over the whole, then the rest. */
static bool in_round(int round, int exit, int entry, int depth) {
  bool eighth = exit % 2 == 0 && entry % 2 == 1 && depth % 2 == 0;
  return eighth == (round == 0);
}

static void scan_chord(const search *s, int round, int exit, int entry, start best[LW_SLIP_STARTS_MAX]) {
  const lw_slip_effort *effort = s->effort;
  double exit_share = exit / (effort->exits - 1.0), entry_share = (entry + 1.0) / effort->entries;
  chord line;
  if (round == 0 && !in_round(round, exit, entry, 0)) return;
  if (!chord_of(s->strips->ground, exit_share, entry_share, &line)) return;
  for (int d = 0; d < effort->depths; d++) {
    if (!in_round(round, exit, entry, d)) continue;
    start now = {.x = {exit_share, entry_share, d / (effort->depths - 0.5)}, .slices = effort->coarse};
    now.factor = factor_of(s, &line, now.x[2]);
    keep(s, best, &now);
  }
}

static void scan(const search *s, int round, start best[LW_SLIP_STARTS_MAX]) {
  for (int i = 0; i < s->effort->exits; i++)
    for (int k = 0; k < s->effort->entries; k++) scan_chord(s, round, i, k, best);
}

static bool far_off(const search *s, const start *best, double gap) {
  return isfinite(best->factor) && best->factor > gap * s->enough;
}

static bool scan_below(const search *s, start best[LW_SLIP_STARTS_MAX]) {
  for (int i = 0; i < LW_SLIP_STARTS_MAX; i++) best[i] = (start){.factor = INFINITY};
  scan(s, 0, best);
  s->stages->eighth = best[0].factor;
  if (far_off(s, &best[0], lw_slip_gaps.eighth)) return false;
  scan(s, 1, best);
  s->stages->grid = best[0].factor;
  return !far_off(s, &best[0], lw_slip_gaps.grid);
}

static void refine(const search *s, int turns, double step, start *from) {
  lw_least at = {.count = 3,
                 .high = {1.0, 1.0, 1.0},
                 .step = step,
                 .worth = s->effort->worth,
                 .line_steps = s->effort->line_steps};
  for (int i = 0; i < 3; i++) at.x[i] = from->x[i];
  at.value = from->factor;
  if (lw_solve_least(factor_at, s, turns, &at) != LW_OK || !(at.value < from->factor)) return;
  for (int i = 0; i < 3; i++) from->x[i] = at.x[i];
  from->factor = at.value;
}

/* The bottom of the hollow a start lies in, found among few slices and weighed by many. */
static start bottom_of(search *s, const start *from) {
  start at = *from, fine;
  s->slices = s->effort->coarse;
  refine(s, s->effort->turns, 0.08, &at);
  fine = at;
  s->slices = fine.slices = s->effort->fine;
  fine.factor = factor_at(fine.x, s);
  return isfinite(fine.factor) ? fine : at;
}

static bool deepest_below(search *s, const start best[LW_SLIP_STARTS_MAX], start *least) {
  *least = bottom_of(s, &best[0]);
  s->stages->hollow = least->factor;
  if (far_off(s, least, lw_slip_gaps.hollow)) return false;
  for (int i = 1; i < s->effort->starts && best[i].factor <= lw_slip_gaps.grid * least->factor; i++) {
    start other = bottom_of(s, &best[i]);
    if (other.factor < least->factor) *least = other;
  }
  s->slices = least->slices;
  refine(s, s->effort->last_turns, 0.02, least);
  s->stages->least = least->factor;
  return true;
}

bool lw_slip_search_by(const lw_slip_effort *effort, const lw_slip_ground *ground, lw_slip_method method,
                       double enough, lw_slip_stages *stages, lw_slip *slip) {
  lw_slip_strips strips;
  lw_slip last = {0};
  int circles = 0;
  start best[LW_SLIP_STARTS_MAX], least;
  lw_slip_cut(ground, &strips);
  if (!effort) effort = strips.by_slice ? &HARD : &USUAL;
  search s = {&strips, effort, method, effort->coarse, &circles, &last, enough, stages};
  if (!scan_below(&s, best)) return false;
  if (!isfinite(best[0].factor)) {
    *slip = (lw_slip){.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_CIRCLE, .circles = circles};
    return true;
  }
  if (!deepest_below(&s, best, &least)) return false;
  (void)factor_at(least.x, &s);
  *slip = last;
  slip->circles = circles;
  return true;
}

bool lw_slip_search_below(const lw_slip_ground *ground, lw_slip_method method, double enough, lw_slip *slip) {
  lw_slip_stages stages;
  return lw_slip_search_by(NULL, ground, method, enough, &stages, slip);
}

void lw_slip_search(const lw_slip_ground *ground, lw_slip_method method, lw_slip *slip) {
  (void)lw_slip_search_below(ground, method, INFINITY, slip);
}
