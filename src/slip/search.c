/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "search.h"

#include <math.h>
#include <string.h>

#include "base/least.h"
#include "circle.h"
#include "parts.h"

/* The search for the circle with the least factor. A circle is three numbers from 0 to 1: how far its exit
 * lies in front, how far its entry lies behind, and how deep it goes between the shallowest that clears wall
 * and ground and the deepest that does not overhang. So no trial is wasted on a circle that cuts the wall. */

/* The gaps are more than tests/bench/slip.c finds on any of 18,000 random cross-sections, the last of them
 * twice what the whole search misses beside a dense one; tests/verdict/governing.c holds what comes of it. */
static const lw_slip_effort USUAL = {.name = "near",
                                     .near = true,
                                     .exits = 7,
                                     .entries = 8,
                                     .depths = 5,
                                     .coarse = 12,
                                     .fine = 40,
                                     .starts = 3,
                                     .turns = 5,
                                     .last_turns = 2,
                                     .line_steps = 3,
                                     .worth = 1e-3,
                                     .gaps = {15.0, 4.5, 1.6, 1.2}};

/* A load that acts on a line, or in the ground, makes hollows of its own. */
static const lw_slip_effort HARD = {.name = "near, loads in hollows",
                                    .near = true,
                                    .exits = 9,
                                    .entries = 12,
                                    .depths = 7,
                                    .coarse = 16,
                                    .fine = 40,
                                    .starts = 6,
                                    .turns = 5,
                                    .last_turns = 3,
                                    .line_steps = 7,
                                    .worth = 1e-6,
                                    .gaps = {3.5, 2.25, 1.6, 1.2}};

/* A rise or fall that goes on far beyond the wall has circles of every size. */
static const lw_slip_effort FAR = {.name = "far",
                                   .exits = 13,
                                   .entries = 13,
                                   .depths = 4,
                                   .coarse = 12,
                                   .fine = 40,
                                   .starts = 4,
                                   .turns = 5,
                                   .last_turns = 2,
                                   .line_steps = 3,
                                   .worth = 1e-3,
                                   .gaps = {24.0, 8.0, 3.5, 1.2}};

typedef struct start {
  double x[3], factor;
  int slices;
} start;

typedef struct search {
  const lw_slip_strips *strips;
  const lw_slip_effort *effort;
  lw_slip_box box;
  double exit_rate, entry_rate; /* of the exponential that crowds ends near the wall; 0: a square does */
  lw_slip_method method;
  int slices;
  int *circles;
  lw_slip *last; /* the circle just tried */
  start *seen;   /* the best that a descent has come by: its lines begin there, and ask for it again */
  const lw_slip_aim *aim;
  lw_slip_stages *stages;
} search;

/* Exit and entry, and between which sags of the arc below them a circle passes. */
typedef struct chord {
  lw_slip_circle ends;
  double half_m, least_m, most_m;
} chord;

/* Half the trials lie within half_m of a range. */
static double rate_of(double range_m, double half_m) {
  return half_m > 0.0 && range_m > 4.001 * half_m ? 2.0 * log(range_m / half_m - 1.0) : 0.0;
}

static void look_within(const lw_slip_box *whole, bool near, search *s) {
  s->box = *whole;
  if (near && whole->exit_half_m > 0.0)
    s->box.exit_from_m = lw_larger(whole->exit_from_m, whole->exit_to_m - 4.0 * whole->exit_half_m);
  if (near && whole->entry_half_m > 0.0)
    s->box.entry_to_m = lw_smaller(whole->entry_to_m, whole->entry_from_m + 4.0 * whole->entry_half_m);
  s->exit_rate = rate_of(s->box.exit_to_m - s->box.exit_from_m, whole->exit_half_m);
  s->entry_rate = rate_of(s->box.entry_to_m - s->box.entry_from_m, whole->entry_half_m);
}

static double crowd(double share, double rate) {
  return rate > 0.0 ? expm1(rate * share) / expm1(rate) : share * share;
}

static bool chord_of(const search *s, double exit_share, double entry_share, chord *line) {
  const lw_slip_ground *ground = s->strips->ground;
  const lw_slip_box *box = &s->box;
  lw_slip_circle *c = &line->ends;
  c->exit_x_m = box->exit_to_m - (box->exit_to_m - box->exit_from_m) * crowd(exit_share, s->exit_rate);
  c->entry_x_m =
      box->entry_from_m + (box->entry_to_m - box->entry_from_m) * crowd(entry_share, s->entry_rate);
  c->exit_y_m = lw_slip_surface(ground, c->exit_x_m, false);
  c->entry_y_m = lw_slip_surface(ground, c->entry_x_m, true);
  double dx = c->entry_x_m - c->exit_x_m, dy = c->entry_y_m - c->exit_y_m,
         half = 0.5 * sqrt(dx * dx + dy * dy);
  if (dx < 1e-6) return false;
  double upright = half * lw_larger(dy, 0.0) / dx;
  line->half_m = half;
  line->most_m = sqrt(half * half + upright * upright) - upright;
  line->least_m = lw_slip_least_sag(s->strips, c, half);
  return line->least_m < line->most_m;
}

static bool circle_of(const lw_slip_strips *strips, const chord *line, double depth_share,
                      lw_slip_circle *c) {
  *c = line->ends;
  double dx = c->entry_x_m - c->exit_x_m, dy = c->entry_y_m - c->exit_y_m, half = line->half_m;
  double share = line->least_m > 0.0 ? depth_share : 0.01 + 0.99 * depth_share;
  double sag = line->least_m + (line->most_m - line->least_m) * share;
  double up = (half * half - sag * sag) / (2.0 * sag);
  c->radius_m = up + sag;
  c->centre_x_m = 0.5 * (c->exit_x_m + c->entry_x_m) - up * dy / (2.0 * half);
  c->centre_y_m = 0.5 * (c->exit_y_m + c->entry_y_m) + up * dx / (2.0 * half);
  return lw_slip_clear(strips, c);
}

/* INFINITY as well where it is known not to lie below `wanted`. */
static double factor_of(const search *s, const chord *line, double depth_share, double wanted) {
  lw_slip_circle circle;
  lw_slip_slices list;
  const lw_slip_ground *ground = s->strips->ground;
  if (!circle_of(s->strips, line, depth_share, &circle)) return INFINITY;
  ++*s->circles;
  if (!lw_slip_slice_up(s->strips, &circle, s->slices, &list)) return INFINITY;
  bool quick = isfinite(wanted) && s->method == LW_SLIP_BISHOP && ground->seismic_horizontal <= 0.0;
  if (quick && lw_slip_above(&list, wanted)) return INFINITY;
  if (lw_slip_worse(&list, &circle, ground->seismic_horizontal, s->method, s->last) != LW_OK) return INFINITY;
  return lw_slip_factor(s->last, s->method);
}

static double factor_at(const double *x, double wanted, const search *s) {
  chord line;
  return chord_of(s, x[0], x[1], &line) ? factor_of(s, &line, x[2], wanted) : INFINITY;
}

/* In a descent. */
static double factor_in(const double *x, double wanted, const void *context) {
  const search *s = context;
  start *seen = s->seen;
  if (memcmp(x, seen->x, sizeof seen->x) == 0) {
    ++*s->circles;
    return seen->factor;
  }
  double factor = factor_at(x, wanted, s);
  if (factor < seen->factor) *seen = (start){{x[0], x[1], x[2]}, factor, s->slices};
  return factor;
}

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

/* From which factor on keep() leaves what is there: it goes from the best to worse ones, and stops at the
 * first that the new one is not apart from. */
static double worth_keeping(const search *s, const start best[LW_SLIP_STARTS_MAX], const start *now) {
  int last = s->effort->starts - 1, i = 0;
  while (i < last && isfinite(best[i].factor) && apart(now, &best[i])) i++;
  return best[i].factor;
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
  if (!chord_of(s, exit_share, entry_share, &line)) return;
  for (int d = 0; d < effort->depths; d++) {
    if (!in_round(round, exit, entry, d)) continue;
    start now = {.x = {exit_share, entry_share,
                       effort->near ? d / (effort->depths - 0.5)
                                    : d * d / ((effort->depths - 0.5) * (effort->depths - 0.5))},
                 .slices = effort->coarse};
    now.factor = factor_of(s, &line, now.x[2], worth_keeping(s, best, &now));
    keep(s, best, &now);
  }
}

/* One that is outdone is only asked whether it has a circle. */
static bool outdone(const search *s, const start best[LW_SLIP_STARTS_MAX]) {
  return s->aim->outdone && isfinite(best[0].factor);
}

static void scan(const search *s, int round, start best[LW_SLIP_STARTS_MAX]) {
  for (int i = 0; i < s->effort->exits; i++)
    for (int k = 0; k < s->effort->entries && !outdone(s, best); k++) scan_chord(s, round, i, k, best);
}

static bool far_off(const search *s, const start *best, double gap) {
  return isfinite(best->factor) && best->factor > gap * s->aim->enough;
}

static bool scan_below(const search *s, start best[LW_SLIP_STARTS_MAX]) {
  for (int i = 0; i < LW_SLIP_STARTS_MAX; i++) best[i] = (start){.factor = INFINITY};
  scan(s, 0, best);
  s->stages->eighth = best[0].factor;
  if (outdone(s, best) || far_off(s, &best[0], s->effort->gaps.eighth)) return false;
  scan(s, 1, best);
  s->stages->grid = best[0].factor;
  return !far_off(s, &best[0], s->effort->gaps.grid);
}

static void refine(const search *s, int turns, double step, start *from) {
  lw_least at = {.count = 3,
                 .high = {1.0, 1.0, 1.0},
                 .step = step,
                 .worth = s->effort->worth,
                 .line_steps = s->effort->line_steps};
  for (int i = 0; i < 3; i++) at.x[i] = from->x[i];
  at.value = from->factor;
  *s->seen = *from;
  (void)lw_solve_least(factor_in, s, turns, &at);
  if (!(at.value < from->factor)) return;
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
  fine.factor = factor_at(fine.x, INFINITY, s);
  return isfinite(fine.factor) ? fine : at;
}

static bool deepest_below(search *s, const start best[LW_SLIP_STARTS_MAX], start *least) {
  *least = bottom_of(s, &best[0]);
  s->stages->hollow = least->factor;
  if (far_off(s, least, s->effort->gaps.hollow)) return false;
  for (int i = 1; i < s->effort->starts && best[i].factor <= s->effort->gaps.grid * least->factor; i++) {
    start other = bottom_of(s, &best[i]);
    if (other.factor < least->factor) *least = other;
  }
  s->slices = least->slices;
  refine(s, s->effort->last_turns, 0.02, least);
  s->stages->least = least->factor;
  return true;
}

bool lw_slip_search_by(const lw_slip_effort *effort, const lw_slip_ground *ground, lw_slip_method method,
                       const lw_slip_aim *aim, lw_slip_stages *stages, lw_slip *slip) {
  lw_slip_strips strips;
  lw_slip last = {0};
  int circles = 0;
  start best[LW_SLIP_STARTS_MAX], least, seen;
  lw_slip_cut(ground, &strips);
  search s = {.strips = &strips,
              .effort = effort,
              .method = method,
              .slices = effort->coarse,
              .circles = &circles,
              .last = &last,
              .seen = &seen,
              .aim = aim,
              .stages = stages};
  *stages = (lw_slip_stages){INFINITY, INFINITY, INFINITY, INFINITY};
  look_within(&ground->box, effort->near, &s);
  if (!scan_below(&s, best)) return false;
  if (!isfinite(best[0].factor)) {
    *slip = (lw_slip){.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_CIRCLE, .circles = circles};
    return true;
  }
  if (!deepest_below(&s, best, &least)) return false;
  (void)factor_at(least.x, INFINITY, &s);
  *slip = last;
  slip->circles = circles;
  return true;
}

int lw_slip_efforts(const lw_slip_ground *ground, const lw_slip_effort *efforts[LW_SLIP_EFFORTS_MAX]) {
  const lw_slip_box *box = &ground->box;
  bool hollows = false;
  for (int i = 0; i < ground->load_count; i++)
    hollows = hollows || ground->load[i].below_m > 0.0 || ground->load[i].force_kn_per_m > 0.0;
  efforts[0] = hollows ? &HARD : &USUAL;
  efforts[1] = &FAR;
  bool far = rate_of(box->exit_to_m - box->exit_from_m, box->exit_half_m) > 0.0 ||
             rate_of(box->entry_to_m - box->entry_from_m, box->entry_half_m) > 0.0;
  return far ? 2 : 1;
}

/* What no circle has less than, as far as it was searched. */
static double at_least(const lw_slip_effort *effort, const lw_slip_stages *found) {
  const lw_slip_stages *gaps = &effort->gaps;
  if (isfinite(found->least)) return found->least / gaps->least;
  if (isfinite(found->hollow)) return found->hollow / gaps->hollow;
  if (isfinite(found->grid)) return found->grid / gaps->grid;
  return isfinite(found->eighth) ? found->eighth / gaps->eighth : 0.0;
}

bool lw_slip_search_below(const lw_slip_ground *ground, lw_slip_method method, const lw_slip_aim *aim,
                          double *least, lw_slip *slip) {
  const lw_slip_effort *efforts[LW_SLIP_EFFORTS_MAX];
  lw_slip_stages stages;
  lw_slip one;
  bool found = false;
  int count = lw_slip_efforts(ground, efforts), circles = 0;
  *least = INFINITY;
  for (int i = 0; i < count; i++) {
    bool ended = lw_slip_search_by(efforts[i], ground, method, aim, &stages, &one);
    *least = lw_smaller(*least, at_least(efforts[i], &stages));
    if (!ended) continue;
    circles += one.circles;
    bool worse = one.status == LW_OK && (!found || slip->status != LW_OK ||
                                         lw_slip_factor(&one, method) < lw_slip_factor(slip, method));
    if (!found || worse) *slip = one;
    found = true;
  }
  if (found) slip->circles = circles;
  return found;
}

void lw_slip_search(const lw_slip_ground *ground, lw_slip_method method, lw_slip *slip) {
  const lw_slip_aim all = {.enough = INFINITY};
  double least;
  (void)lw_slip_search_below(ground, method, &all, &least, slip);
}
