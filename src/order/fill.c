/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fill.h"

#include <math.h>

#include "laying.h"
#include "spans.h"

/* How a row is filled: whole units from both ends, and what is left over closed by one or two cut pieces
 * near the middle, or at the step. A piece shorter than a third of a unit is avoided by two cuts of half
 * and more. */

enum { FREE_CHOICES = 6, PLACE_MAX = 12 };

typedef struct filling {
  const lw_laying *laying;
  lw_laid row;
  double module_m, left_m; /* what is left beside the ends and the whole units */
  int whole;
  lw_laid *choice;
  int count, most;
} filling;

static bool at_step(const lw_laid *row) {
  return row->start == LW_ROW_STEP || row->end == LW_ROW_STEP;
}

static void put(filling *f, int before, int whole, double first_m, double second_m) {
  if (f->count >= f->most || before < 0 || before > whole) return;
  lw_laid row = f->row;
  row.before = before;
  row.after = whole - before;
  row.closer_count = second_m > 0.0 ? 2 : first_m > 0.0 ? 1 : 0;
  row.closer_m[0] = first_m;
  row.closer_m[1] = second_m;
  double pieces = row.first_m + row.last_m + whole * f->module_m + first_m + second_m;
  row.slack_m = row.module_sum_m - pieces;
  f->choice[f->count++] = row;
}

/* Whole units before the closers, most wanted first; none twice. */
typedef struct places {
  int count;
  int at[PLACE_MAX];
} places;

static void want(places *p, int whole, int at) {
  for (int i = 0; i < p->count; i++)
    if (p->at[i] == at) return;
  if (at >= 0 && at <= whole && p->count < PLACE_MAX) p->at[p->count++] = at;
}

/* Where a step of the base lies below the row the pattern of the joints below changes: closers there let
 * this row follow it on both sides. */
static void want_at_steps(const filling *f, int whole, places *p) {
  const lw_plan *plan = f->laying->plan;
  const lw_stretch *s = &f->laying->order->stretch[f->row.stretch];
  lw_span span[LW_RUN_MAX];
  int count = lw_spans_of(f->laying->order, s, f->row.course, span);
  for (int i = 0; i < plan->step_count; i++) {
    double at = plan->step[i].at_m - s->from_m;
    if (at < 0.0 && plan->closed) at += plan->length_m;
    if (at <= 0.0 || at >= s->length_m) continue;
    double past = lw_spans_lay(span, count, at) - f->row.from_m - f->row.first_m;
    int units = (int)floor(past / f->module_m);
    for (int shift = 0; shift > -3; shift--) want(p, whole, units + shift);
  }
}

/* The closers stand near the middle, or at the step that ends the row, where the pattern of the other end
 * stops; elsewhere when the joints below ask for it. */
static places places_of(const filling *f, int whole) {
  places p = {0};
  if (at_step(&f->row)) {
    want(&p, whole, f->row.start == LW_ROW_STEP && f->row.end != LW_ROW_STEP ? 0 : whole);
    return p;
  }
  for (int i = 0; i < 3; i++) want(&p, whole, whole / 2 + (i == 2 ? -1 : i));
  want_at_steps(f, whole, &p);
  want(&p, whole, whole / 4);
  want(&p, whole, whole - whole / 4);
  want(&p, whole, 0);
  want(&p, whole, whole);
  return p;
}

static void put_single(filling *f) {
  places p = places_of(f, f->whole);
  for (int i = 0; i < p.count; i++) put(f, p.at[i], f->whole, f->left_m, 0.0);
}

/* One whole unit less, and two cuts in its place. */
static void put_double(filling *f, double least_m) {
  static const double split[] = {0.5, 0.0, 1.0};
  double both = f->module_m + f->left_m, spare = both - 2.0 * least_m;
  if (spare < 0.0 || both - least_m > f->module_m - LW_TAKEN_UP) return;
  places p = places_of(f, f->whole - 1);
  for (int i = 0; i < p.count; i++)
    for (int k = 0; k < 3; k++) {
      double first = least_m + spare * split[k];
      put(f, p.at[i], f->whole - 1, first, both - first);
    }
}

/* Too short for its two end pieces, or a sliver that no whole unit can share: the ends are cut as well. */
static void put_short(filling *f) {
  double module = f->module_m, tight = LW_TAKEN_UP;
  bool last_whole = f->row.last_m > module - tight && f->row.end != LW_ROW_THROUGH;
  bool first_whole = f->row.first_m > module - tight;
  if (f->left_m > 0.0 && (last_whole || first_whole)) {
    double share = (module + f->left_m) / 2.0;
    if (last_whole)
      f->row.last_m = 0.0;
    else
      f->row.first_m = 0.0;
    put(f, 0, 0, share, share);
    return;
  }
  double all = f->row.module_sum_m;
  bool one = all < module + tight;
  f->row.first_m = f->row.last_m = 0.0;
  put(f, 0, 0, one ? all : all / 2.0, one ? 0.0 : all / 2.0);
}

/* What a free end takes is free as well: whole units between, and the rest as its piece or shared by both. */
static void put_ends(filling *f, double first_m, double both_m) {
  double module = f->module_m, least = f->laying->cut_share * module, tight = LW_TAKEN_UP;
  for (int halves = 1; halves <= 2; halves++)
    if (fabs(first_m - halves * module / 2.0) <= tight) first_m = halves * module / 2.0;
  double last_m = both_m - first_m;
  bool sound = fmin(first_m, last_m) >= least - tight && fmax(first_m, last_m) <= module + tight;
  int whole = (int)floor((f->row.module_sum_m - first_m - last_m + tight) / module);
  if (!sound || whole < 0) return;
  f->row.first_m = first_m;
  f->row.last_m = last_m;
  put(f, whole / 2, whole, 0.0, 0.0);
}

/* Between two free ends: half a unit more at one end than at the other, as far as no piece is too short, or a
 * whole one at one end and all that is left at the other; turned round in the next course. */
static void put_turned(filling *f) {
  double module = f->module_m, least = f->laying->cut_share * module;
  double left = f->row.module_sum_m - module * floor((f->row.module_sum_m + LW_TAKEN_UP) / module);
  put_ends(f, module, left + module);
  put_ends(f, left, left + module);
  for (int more = 0; more < 2; more++) {
    double both = left + more * module;
    double longer = fmin(fmin((both + module / 2.0) / 2.0, f->laying->cut_most_share * module), both - least);
    put_ends(f, longer, both);
    put_ends(f, both - longer, both);
  }
}

/* At a free end whole units and its own piece, a closer before it or none. */
static void put_last(filling *f, int whole, double closer_m, double own_m) {
  bool at_end = f->row.end == LW_ROW_FREE;
  *(at_end ? &f->row.last_m : &f->row.first_m) = own_m;
  put(f, at_end ? whole : 0, whole, closer_m, 0.0);
}

/* Beside one free end all that is left over goes to it: as one cut piece, or shared by two. */
static void put_at_free_end(filling *f) {
  static const double split[] = {0.5, 0.0, 1.0};
  double module = f->module_m, least = f->laying->cut_share * module;
  double room = f->row.module_sum_m - (f->row.end == LW_ROW_FREE ? f->row.first_m : f->row.last_m);
  int whole = (int)floor((room + LW_TAKEN_UP) / module);
  double left = room - whole * module, both = left + module;
  if (whole < 1) return;
  if (fabs(left) <= LW_TAKEN_UP + 1e-9)
    put_last(f, whole - 1, 0.0, module);
  else if (left >= least - LW_TAKEN_UP)
    put_last(f, whole, 0.0, left);
  double high = fmin(f->laying->cut_most_share * module, both - least), low = both - high;
  for (int i = 0; i < 3 && low <= high; i++) {
    double own = low + split[i] * (high - low);
    put_last(f, whole - 1, both - own, own);
  }
}

static void put_free(filling *f, const lw_laid *row) {
  bool start = row->start == LW_ROW_FREE, end = row->end == LW_ROW_FREE;
  if (at_step(row)) return;
  f->row = *row;
  f->most = LW_CHOICE_MAX;
  if (start && end)
    put_turned(f);
  else if (start || end)
    put_at_free_end(f);
}

int lw_row_choices(const lw_laying *laying, const lw_laid *row, lw_laid choice[LW_CHOICE_MAX]) {
  double module = laying->plan->module_m;
  filling f = {.laying = laying, .row = *row, .module_m = module, .choice = choice};
  f.most = LW_CHOICE_MAX - FREE_CHOICES;
  double room = row->module_sum_m - row->first_m - row->last_m;
  f.whole = (int)floor((room + LW_TAKEN_UP) / module);
  f.left_m = room - f.whole * module;
  double least = laying->cut_share * module;
  if (room < -LW_TAKEN_UP) {
    f.left_m = 0.0;
    put_short(&f);
  } else if (fabs(f.left_m) <= LW_TAKEN_UP + 1e-9) {
    put(&f, f.whole / 2, f.whole, 0.0, 0.0);
  } else if (f.left_m >= least - LW_TAKEN_UP) {
    put_single(&f);
    if (f.whole > 0) put_double(&f, fmax(module / 2.0, f.left_m + module / 10.0));
  } else if (f.whole > 0) {
    put_double(&f, module / 2.0);
  } else {
    put_short(&f);
  }
  if (f.count == 0) put_single(&f);
  put_free(&f, row);
  return f.count;
}
