/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cap_lay.h"

#include <math.h>

#include "cuts.h"
#include "laying.h"
#include "plan.h"
#include "perpends.h"

/* How the caps of a run are laid: whole ones, and what is left as one cut, or as two of half and more where
 * it would be a sliver. Of several ways the first whose joints keep clear of those of the blocks is taken. */

/* A piece and the gap after it, in the order of laying; 0: no such piece. */
typedef struct way {
  double first_m, closer_m[2], last_m;
  int before, after;
} way;

typedef struct trying {
  const lw_capping *k;
  const lw_cap_line *line;
  double module_m, gap_m, sum_m; /* sum of all modules */
  bool known;                    /* joints below are known */
  lw_nearest below;
  double from_m; /* where the run begins in its stretch, on the lowest face */
  bool found;
  way best;
  double best_m, best_at_m;
} trying;

static int pieces_of(const way *w) {
  int ends = (w->first_m > 0.0 ? 1 : 0) + (w->last_m > 0.0 ? 1 : 0);
  return ends + w->before + w->after + (w->closer_m[0] > 0.0 ? 1 : 0) + (w->closer_m[1] > 0.0 ? 1 : 0);
}

static double module_at(const trying *t, const way *w, int index) {
  int i = index;
  if (w->first_m > 0.0 && i-- == 0) return w->first_m;
  if (i < w->before) return t->module_m;
  i -= w->before;
  for (int n = 0; n < 2; n++)
    if (w->closer_m[n] > 0.0 && i-- == 0) return w->closer_m[n];
  return i < w->after ? t->module_m : w->last_m;
}

/* Where the joint after a length of laying stands on the lowest face, from the run's beginning. */
static double on_base(const trying *t, double laid_m) {
  const lw_cap_line *l = t->line;
  double in_front = laid_m - t->gap_m / 2.0 - l->begin.adds_m;
  return l->begin.base_m + in_front * l->base_m / l->long_m;
}

/* The joint that stands nearest to one of the blocks below. */
static double clear_of(const trying *t, const way *w, double *at_m) {
  int count = pieces_of(w);
  double laid = 0.0, least = INFINITY;
  lw_nearest below = t->below;
  for (int i = 0; i + 1 < count; i++) {
    laid += module_at(t, w, i);
    double at = on_base(t, laid), distance = lw_nearest_to(&below, t->from_m + at);
    if (distance >= least) continue;
    least = distance;
    *at_m = at;
  }
  return least;
}

/* A mitred end must keep something of its short edge. */
static bool sound(const trying *t, const way *w) {
  int count = pieces_of(w);
  double first = module_at(t, w, 0) - t->gap_m, last = module_at(t, w, count - 1) - t->gap_m;
  bool one = count == 1;
  double lost = t->line->begin.extra_m + (one ? t->line->end.extra_m : 0.0);
  return first > lost && (one || last > t->line->end.extra_m);
}

static void attempt(trying *t, const way *w) {
  if (w->before < 0 || w->after < 0 || pieces_of(w) == 0 || !sound(t, w)) return;
  double at = 0.0, clear = t->known ? clear_of(t, w, &at) : INFINITY;
  if (t->found && clear <= t->best_m + 1e-9) return;
  if (t->found && t->best_m >= t->k->joint_least_m) return;
  t->found = true;
  t->best = *w;
  t->best_m = clear;
  t->best_at_m = at;
}

static void attempt_cuts(trying *t, int whole, double first_m, double second_m) {
  const int before[] = {whole / 2, whole / 4, whole - whole / 4, 0, whole};
  for (int i = 0; i < 5; i++) {
    bool at_end = before[i] == 0 || before[i] == whole;
    bool mitred = (before[i] == 0 && t->line->begin.mitred) || (before[i] == whole && t->line->end.mitred);
    if (at_end && mitred && whole > 1) continue;
    attempt(t, &(way){.before = before[i], .after = whole - before[i], .closer_m = {first_m, second_m}});
  }
}

static void attempt_all(trying *t) {
  double module = t->module_m, least = t->k->piece_least_m + t->gap_m;
  int whole = (int)floor((t->sum_m + LW_TAKEN_UP) / module);
  double left = t->sum_m - whole * module;
  if (fabs(left) <= LW_TAKEN_UP)
    attempt(t, &(way){.before = whole});
  else if (left >= fmin(least, module) || whole == 0)
    attempt_cuts(t, whole, left, 0.0);
  double half = (left + module) / 2.0;
  if (whole > 0) {
    attempt_cuts(t, whole - 1, half, half);
    attempt(t, &(way){.first_m = half, .before = whole - 1, .last_m = half});
  }
  if (!t->found && left > LW_TAKEN_UP) attempt_cuts(t, whole, left, 0.0);
}

/* The joints of the top course under this run. */
static void look_below(trying *t) {
  const lw_laying *laying = t->k->laying;
  const lw_plan *plan = laying->plan;
  const lw_order *order = laying->order;
  for (int i = 0; i < order->row_count && !t->known; i++) {
    const lw_laid *row = &order->row[i];
    if (row->course != plan->courses - 1) continue;
    const lw_stretch *s = &laying->order->stretch[row->stretch];
    double from = 0.0;
    for (int n = 0; n < s->run_count && !t->known; n++) {
      int run = lw_plan_at(plan, s->first_run + n);
      t->known = run == t->line->run;
      if (!t->known) from += plan->run[run].length_m;
    }
    if (!t->known) continue;
    t->from_m = from;
    lw_perpends joints = lw_perpends_of(laying, row);
    t->below = lw_nearest_of(&joints);
  }
}

/* The sort of caps that is so deep; a new one when there is none yet. */
static lw_cap_sort *sort_of(lw_order *order, double depth_m) {
  for (int i = 0; i < order->cap_sort_count; i++)
    if (fabs(order->cap_sort[i].depth_m - depth_m) <= LW_TAKEN_UP) return &order->cap_sort[i];
  order->cap_sort[order->cap_sort_count] = (lw_cap_sort){.depth_m = depth_m};
  return &order->cap_sort[order->cap_sort_count++];
}

static void list_piece(const trying *t, const way *w, int index) {
  lw_order *order = t->k->laying->order;
  const lw_cap_line *l = t->line;
  int count = pieces_of(w);
  double whole = t->k->length_m, length = module_at(t, w, index) - t->gap_m;
  const lw_cap_end *at[2] = {index == 0 ? &l->begin : NULL, index + 1 == count ? &l->end : NULL};
  lw_cap_sort *sort = sort_of(order, t->k->laying->plan->run[l->run].cap_depth_m);
  lw_cut cut = {.kind = LW_CUT_CAP, .long_m = length, .short_m = length * l->ratio, .count = 1};
  cut.cap_depth_m = sort->depth_m;
  if (l->ratio < 1.0) {
    cut.kind = LW_CUT_CAP_WEDGE;
    cut.saw_deg = cut.saw_other_deg = order->cap_wedge_deg * length / whole;
  }
  for (int i = 0; i < 2; i++) {
    if (at[i] == NULL || !at[i]->mitred) continue;
    cut.saw_other_deg = cut.kind == LW_CUT_CAP_MITRED ? cut.saw_deg : cut.saw_other_deg;
    cut.kind = LW_CUT_CAP_MITRED;
    cut.saw_deg = at[i]->saw_deg;
    cut.short_m -= at[i]->extra_m;
  }
  bool uncut = cut.kind == LW_CUT_CAP && fabs(length - whole) <= LW_TAKEN_UP;
  order->cap_whole += uncut ? 1 : 0;
  sort->whole += uncut ? 1 : 0;
  if (!uncut) lw_cuts_add(order, &cut);
}

void lw_caps_lay(const lw_capping *k, const lw_cap_line *line) {
  const lw_plan *plan = k->laying->plan;
  lw_order *order = k->laying->order;
  lw_cap_line laid = *line;
  trying t = {.k = k, .line = &laid, .gap_m = plan->gap_m, .module_m = k->length_m + plan->gap_m};
  bool ring = plan->closed && plan->run_count == 1;
  t.sum_m = line->long_m + line->begin.adds_m + line->end.adds_m + (ring ? 0.0 : plan->gap_m);
  t.sum_m = fmax(t.sum_m, fmin(line->long_m, k->piece_least_m)); /* what a butt joint leaves of a short run */
  double opens = k->length_m * (1.0 - line->ratio);
  /* A wedge no wider than the gap that is allowed anyway is left to the joint. */
  if (opens <= fmax(plan->gap_m, plan->curve_gap_m))
    laid.ratio = 1.0;
  else
    order->cap_wedge_deg =
        fmax(order->cap_wedge_deg,
             LW_DEG_PER_RAD * atan(opens / 2.0 / fmax(plan->run[line->run].cap_depth_m, 1e-6)));
  look_below(&t);
  attempt_all(&t);
  if (!t.found) return;
  for (int i = 0; i < pieces_of(&t.best); i++) list_piece(&t, &t.best, i);
  lw_order_run *r = &order->run[line->run];
  r->caps = (lw_cap_row){.known = true,
                         .first_m = t.best.first_m,
                         .closer_m = {t.best.closer_m[0], t.best.closer_m[1]},
                         .last_m = t.best.last_m,
                         .module_m = t.module_m,
                         .gap_m = t.gap_m,
                         .before = t.best.before,
                         .after = t.best.after,
                         .mitred = {laid.begin.mitred, laid.end.mitred},
                         .hidden_m = fmax(0.0, -laid.begin.adds_m) * laid.base_m / laid.long_m,
                         .base_from_m = laid.begin.base_m,
                         .base_to_m = laid.begin.base_m + laid.base_m,
                         .zero_m = on_base(&t, 0.0),
                         .base_per_laid = laid.base_m / laid.long_m};
  r->caps.base_from_m += r->caps.hidden_m;
  r->cap_joint_known = t.known && isfinite(t.best_m);
  r->cap_joint_m = r->cap_joint_known ? t.best_m : 0.0;
  r->cap_joint_at_m = r->cap_joint_known ? t.best_at_m : 0.0;
}
