/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "recompute_cells.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* The tables of forces, of the two formulas and of the checks: what a row says that it comes to,
 * and what the columns add up to. */

cell recompute_cell(const char *begin, size_t length) {
  char text[40], *end;
  snprintf(text, sizeof text, "%.*s", (int)length, begin);
  const char *at = text + strspn(text, " ");
  double value = strtod(at, &end);
  if (end == at || end[strspn(end, " ")] != '\0') return (cell){false, 0.0, 0.0};
  double half = evaluate_half_digit(at);
  return (cell){true, value, half > 0.0 ? half : 0.5};
}

/* The columns at the end of a line, by their widths; the first words take what is left. */
bool recompute_columns(const char *line, const int *widths, int count, cell *out) {
  size_t length = strcspn(line, "\n"), all = 0;
  for (int i = 0; i < count; i++) all += (size_t)widths[i];
  if (length < all + 2) return false;
  const char *at = line + length - all;
  for (int i = 0; i < count; i++) {
    out[i] = recompute_cell(at, (size_t)widths[i]);
    at += widths[i];
  }
  return true;
}

void recompute_hold(recompute *r, const char *line, const char *what, cell made, cell printed) {
  char why[160];
  double allowed = 1.02 * (made.half + printed.half) + 1e-9 * fabs(printed.value);
  if (printed.there && fabs(made.value - printed.value) <= allowed) {
    r->rows++;
    return;
  }
  snprintf(why, sizeof why, "%s comes to %.6g, printed %.6g, its digits allow %.2g", what, made.value,
           printed.value, allowed);
  recompute_fails(r, line, why);
}

cell times(cell a, cell b) {
  return (cell){true, a.value * b.value, fabs(a.value) * b.half + fabs(b.value) * a.half + a.half * b.half};
}

cell plus(cell a, cell b) {
  return (cell){true, a.value + b.value, a.half + b.half};
}

cell minus(cell a) {
  return (cell){a.there, -a.value, a.half};
}

bool recompute_begins(const char *line, const char *words) {
  return strncmp(line, words, strlen(words)) == 0;
}

/* --- forces: area x weight x factor = down, down x arm or push x arm = moment, and their sums --- */

enum { AREA, WEIGHT, FACTOR, DOWN, PUSH, ARM, MOMENT, FORCE_COLUMNS };

typedef struct sums {
  cell down, push, tips, holds;
} sums;

static void force_row(recompute *r, const char *line, const cell *of, sums *all) {
  cell weighs = times(of[AREA], of[WEIGHT]);
  if (of[FACTOR].there) weighs = times(weighs, of[FACTOR]);
  if (of[AREA].there) recompute_hold(r, line, "area x weight", weighs, of[DOWN]);
  if (of[DOWN].there) all->down = plus(all->down, of[DOWN]);
  if (of[PUSH].there) all->push = plus(all->push, of[PUSH]);
  cell moment = of[DOWN].there ? times(of[DOWN], of[ARM]) : minus(times(of[PUSH], of[ARM]));
  recompute_hold(r, line, "force x arm", moment, of[MOMENT]);
  /* A moment that rounds to nothing may be on either side. */
  bool nothing = !(fabs(of[MOMENT].value) > 0.0);
  if (nothing) all->tips.half += of[MOMENT].half;
  if (of[MOMENT].value >= 0.0)
    all->holds = plus(all->holds, of[MOMENT]);
  else
    all->tips = plus(all->tips, minus(of[MOMENT]));
}

static void force_sums(recompute *r, const char *line, const sums *all) {
  static const int WIDTHS[] = {9, 9, 9, 10};
  cell of[4];
  if (!recompute_columns(line, WIDTHS, 4, of)) return;
  recompute_hold(r, line, "down", all->down, of[0]);
  recompute_hold(r, line, "push", all->push, of[1]);
  recompute_hold(r, line, "tips", all->tips, of[2]);
  recompute_hold(r, line, "holds", all->holds, of[3]);
}

static const char *forces(recompute *r, const char *line) {
  static const int WIDTHS[FORCE_COLUMNS] = {7, 7, 5, 9, 9, 7, 9};
  sums all = {0};
  for (line = recompute_next(recompute_next(line)); *line != '\0'; line = recompute_next(line)) {
    cell of[FORCE_COLUMNS];
    if (recompute_begins(line, "  as used in the checks")) return recompute_next(line);
    if (recompute_begins(line, "  sums of this table"))
      force_sums(r, line, &all);
    else if (recompute_columns(line, WIDTHS, FORCE_COLUMNS, of) && of[MOMENT].there)
      force_row(r, line, of, &all);
  }
  return line;
}

/* --- the two formulas, each beside its wedge --- */

enum { K, P, WEDGE, DIFFERENCE, COMPARED_COLUMNS };

static const char *compared(recompute *r, const char *line) {
  static const int WIDTHS[COMPARED_COLUMNS] = {8, 10, 10, 11};
  cell of[COMPARED_COLUMNS];
  for (line = recompute_next(recompute_next(line)); *line != '\n' && *line != '\0';
       line = recompute_next(line)) {
    if (!recompute_columns(line, WIDTHS, COMPARED_COLUMNS, of) || !of[DIFFERENCE].there) {
      if (line[1] == ' ') recompute_states(r, line);
      continue;
    }
    cell made = plus(of[WEDGE], minus(of[P]));
    const char *loads = recompute_next(line);
    if (recompute_begins(loads, "    and ")) {
      cell less = recompute_cell(loads + 8, strcspn(loads + 8, " "));
      made = plus(made, minus(less));
      line = loads;
    }
    recompute_hold(r, line, "difference", made, of[DIFFERENCE]);
  }
  return line;
}

/* --- checks: has = holds / pushes --- */

static const char *checks(recompute *r, const char *line) {
  for (line = recompute_next(line); *line != '\n' && *line != '\0'; line = recompute_next(line)) {
    if (*line == ' ') {
      recompute_states(r, line);
      continue;
    }
    size_t wide = r->us ? 9 : 8;
    cell holds = recompute_cell(line + 27, wide), pushes = recompute_cell(line + 27 + wide, wide);
    cell has = r->us ? recompute_cell(line + 54, 6) : recompute_cell(line + 50, 7);
    if (!holds.there || !pushes.there || pushes.value <= pushes.half) continue;
    cell made = {true, holds.value / pushes.value, 0.0};
    made.half = fmax(fabs((holds.value + holds.half) / (pushes.value - pushes.half) - made.value),
                     fabs((holds.value - holds.half) / (pushes.value + pushes.half) - made.value));
    recompute_hold(r, line, "holds / pushes", made, has);
  }
  return line;
}

typedef struct table {
  const char *head; /* the line that it begins with, blanks run together */
  const char *(*read)(recompute *r, const char *line);
} table;

const char *recompute_table(recompute *r, const char *line) {
  static const table ALL[] = {{"part area weight ", forces},
                              {"depth g s K pc p A M", recompute_pressure},
                              {"depth pq A M", recompute_load},
                              {"K P wedge difference", compared},
                              {"holds pushes has needs", checks},
                              {"The worst of # circles: ", recompute_slices},
                              {"course fill m P kN/m at m", recompute_courses},
                              {"course fill ft P lb/ft at ft", recompute_courses},
                              {"soil and wind at rest blocked yielding", recompute_fence}};
  char key[RECOMPUTE_KEY_MAX];
  if (*line != ' ') return NULL;
  recompute_key(line, key, sizeof key);
  for (size_t i = 0; i < sizeof ALL / sizeof *ALL; i++)
    if (recompute_begins(key, ALL[i].head)) return ALL[i].read(r, line);
  return NULL;
}
