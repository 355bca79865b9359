/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "recompute_cells.h"

#include <math.h>
#include <string.h>

/* Tables of earth pressure. Stress grows by the weight of what lies between two rows, p = K s - pc and not
 * below 0, A is the area between the rows of a stretch and M its moment about the foot, the last depth. Where
 * a row has no K the diagram is curved, and the area is Simpson's over its four parts. */

enum { DEPTH, WEIGHT, STRESS, K, CUT, P, AREA, MOMENT, COLUMNS, ROWS_MAX = 120 };

typedef struct row {
  const char *line;
  cell of[COLUMNS];
} row;

typedef struct rows {
  int count;
  row row[ROWS_MAX];
} rows;

/* The columns from the left, for a row may end early. */
static bool read_row(const char *line, const int *widths, const int *names, int count, row *out) {
  size_t length = strcspn(line, "\n"), at = 2;
  *out = (row){.line = line};
  for (int i = 0; i < count && at < length; i++) {
    size_t width = (size_t)widths[i];
    out->of[names[i]] = recompute_cell(line + at, at + width <= length ? width : length - at);
    at += width;
  }
  return out->of[DEPTH].there && length > 0 && line[0] == ' ';
}

static const char *read_rows(const char *line, const int *widths, const int *names, int count, rows *all) {
  all->count = 0;
  line = recompute_next(recompute_next(line));
  while (all->count < ROWS_MAX && read_row(line, widths, names, count, &all->row[all->count])) {
    all->count++;
    line = recompute_next(line);
  }
  return line;
}

static cell run_of(const row *a, const row *b) {
  return plus(b->of[DEPTH], minus(a->of[DEPTH]));
}

static void hold_stress(recompute *r, const row *before, const row *now) {
  if (!now->of[WEIGHT].there) return;
  cell made = plus(before->of[STRESS], times(now->of[WEIGHT], run_of(before, now)));
  recompute_hold(r, now->line, "stress", made, now->of[STRESS]);
}

static void hold_pressure(recompute *r, const row *now) {
  if (!now->of[K].there) return;
  cell made = times(now->of[K], now->of[STRESS]);
  if (now->of[CUT].there) made = plus(made, minus(now->of[CUT]));
  made.value = fmax(made.value, 0.0);
  recompute_hold(r, now->line, "K s - pc", made, now->of[P]);
}

/* The area under a straight line between two rows, and its moment about the foot. */
static void straight(const row *a, const row *b, double foot, cell *area, cell *moment) {
  double run = b->of[DEPTH].value - a->of[DEPTH].value, p = a->of[P].value, q = b->of[P].value;
  cell mean = {true, 0.5 * (p + q), 0.5 * (a->of[P].half + b->of[P].half)};
  cell part = times(mean, run_of(a, b));
  double about = part.value * (foot - b->of[DEPTH].value) + run * run * (2.0 * p + q) / 6.0;
  *area = plus(*area, part);
  *moment = plus(*moment, (cell){true, about, part.half * foot + part.value * 2e-4});
}

/* The same under a curve through three rows. */
static void simpson(const row *a, double foot, cell *area, cell *moment) {
  double sixth = (a[2].of[DEPTH].value - a[0].of[DEPTH].value) / 6.0, sum = 0.0, about = 0.0;
  static const double TIMES[] = {1.0, 4.0, 1.0};
  for (int i = 0; i < 3; i++) {
    sum += TIMES[i] * sixth * a[i].of[P].value;
    about += TIMES[i] * sixth * a[i].of[P].value * (foot - a[i].of[DEPTH].value);
  }
  double half = 6.0 * sixth * a[1].of[P].half + 2e-4 * fmax(a[1].of[P].value, 1.0);
  *area = plus(*area, (cell){true, sum, half});
  *moment = plus(*moment, (cell){true, about, half * foot + sum * 2e-4});
}

/* From the first row of a stretch to its last. */
static void hold_stretch(recompute *r, const row *first, const row *last, double foot) {
  cell area = {true, 0.0, 0.0}, moment = {true, 0.0, 0.0};
  bool curved = last - first >= 4;
  const row *before = first;
  for (const row *at = first; curved && at + 2 <= last; at += 2) simpson(at, foot, &area, &moment);
  for (const row *at = first + 1; !curved && at <= last; at++) {
    if (!at->of[P].there) continue;
    straight(before, at, foot, &area, &moment);
    before = at;
  }
  recompute_hold(r, last->line, "area", area, last->of[AREA]);
  recompute_hold(r, last->line, "moment", moment, last->of[MOMENT]);
}

static void hold_areas(recompute *r, const rows *all) {
  double foot = all->row[all->count - 1].of[DEPTH].value;
  int first = 0;
  for (int i = 0; i < all->count; i++) {
    if (!all->row[i].of[AREA].there) continue;
    hold_stretch(r, &all->row[first], &all->row[i], foot);
    first = i + 1;
  }
}

const char *recompute_pressure(recompute *r, const char *line) {
  static const int WIDTHS[] = {8, 8, 10, 9, 8, 10, 10, 10};
  static const int NAMES[] = {DEPTH, WEIGHT, STRESS, K, CUT, P, AREA, MOMENT};
  static rows all;
  line = read_rows(line, WIDTHS, NAMES, COLUMNS, &all);
  for (int i = 0; i < all.count; i++) {
    if (i > 0) hold_stress(r, &all.row[i - 1], &all.row[i]);
    hold_pressure(r, &all.row[i]);
  }
  if (all.count > 0) hold_areas(r, &all);
  return line;
}

/* What the uniform load makes of it: the areas alone. */
const char *recompute_load(recompute *r, const char *line) {
  static const int WIDTHS[] = {8, 10, 10, 10}, NAMES[] = {DEPTH, P, AREA, MOMENT};
  static rows all;
  line = read_rows(line, WIDTHS, NAMES, 4, &all);
  if (all.count > 0) hold_areas(r, &all);
  return line;
}
