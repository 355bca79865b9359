/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "recompute_cells.h"

/* The slices of a circle: each from its place on the circle, its forces from its weight, their sums, and the
 * factor from those. */

enum { SLICES_MAX = 200, COLUMNS = 9 };
static const double UPRIGHT = 0.999;
enum { X, DX, DL, AL, WS, U, C, PHI, YW };

static cell number_at(const char *at, const char **end) {
  char *past;
  double value = strtod(at, &past);
  double half = evaluate_half_digit(at);
  *end = past;
  return (cell){past != at, value, half > 0.0 ? half : 0.5};
}

int recompute_numbers(const char *line, cell *out, int most) {
  int count = 0;
  const char *at = line + strspn(line, " ");
  while (*at != '\n' && *at != '\0' && count < most) {
    const char *past;
    cell c = number_at(at, &past);
    if (c.there) out[count++] = c;
    at = c.there ? past : at + strcspn(at, " \n");
    at += strspn(at, " ");
  }
  return count;
}

cell recompute_after(const char *line, const char *words) {
  const char *found = strstr(line, words), *end = strchr(line, '\n');
  if (found == NULL || (end != NULL && found > end)) return (cell){false, 0.0, 0.0};
  return number_at(found + strlen(words), &end);
}

static void name(evaluate_names *names, const char *word, cell c) {
  evaluate_name *n = &names->of[names->count++];
  snprintf(n->name, sizeof n->name, "%s", word);
  n->value = c.value;
  n->half = c.half;
}

/* What a formula of the page comes to with the numbers of a row. */
static cell by(const char *formula, const evaluate_names *names) {
  evaluated made = {0};
  bool is = evaluate(formula, strlen(formula), names, formula, &made);
  return (cell){is, made.value, made.half};
}

typedef struct circle {
  cell xc, yc, rc, kh, f;
  int count;
  cell of[SLICES_MAX][COLUMNS];
} circle;

static evaluate_names names_of(const circle *c, int row) {
  static const char *const WORDS[] = {"x", "dx", "dl", "al", "Ws", "u", "c", "phi", "yw"};
  evaluate_names names = {0};
  name(&names, "xc", c->xc);
  name(&names, "yc", c->yc);
  name(&names, "Rc", c->rc);
  name(&names, "kh", c->kh);
  name(&names, "F", c->f);
  for (int i = 0; i < COLUMNS; i++) name(&names, WORDS[i], c->of[row][i]);
  return names;
}

/* The arc over a chord, by the page's series. */
static cell arc_of(evaluate_names *names) {
  name(names, "sl",
       by("sqrt(dx^2 + (sqrt(max(Rc^2 - (x + dx/2 - xc)^2, 0)) - sqrt(max(Rc^2 - (x - dx/2 - "
          "xc)^2, 0)))^2)",
          names));
  name(names, "kl", by("sl^2/(4 Rc^2)", names));
  return by("sl (1 + kl/6 + 3 kl^2/40 + 15 kl^3/336)", names);
}

/* Where a slice lies: its slope and its arc follow from its middle and its width. */
static const char *given(recompute *r, const char *line, circle *c) {
  cell of[COLUMNS + 1];
  for (line = recompute_next(recompute_next(line)); recompute_numbers(line, of, COLUMNS + 1) >= COLUMNS;
       line = recompute_next(line)) {
    if (c->count == SLICES_MAX) return line;
    memset(c->of[c->count], 0, sizeof c->of[0]);
    memcpy(c->of[c->count], of + 1, (size_t)(recompute_numbers(line, of, COLUMNS + 1) - 1) * sizeof *of);
    evaluate_names names = names_of(c, c->count);
    recompute_hold(r, line, "al", by("asin((x - xc)/Rc)", &names), c->of[c->count][AL]);
    /* Where the circle stands upright its level is lost in the last digit of x. */
    if (by("max(|x + dx/2 - xc|, |x - dx/2 - xc|)/Rc", &names).value < UPRIGHT)
      recompute_hold(r, line, "dl", arc_of(&names), c->of[c->count][DL]);
    c->count++;
  }
  return line;
}

/* The columns of the second table, each with its formula and its sum. */
typedef struct column {
  const char *word, *formula;
  bool there;
  cell sum;
} column;

static void force_row(recompute *r, const char *line, const circle *c, int row, column *columns) {
  cell of[8];
  evaluate_names names = names_of(c, row);
  int count = recompute_numbers(line, of, 8), at = 1;
  for (int k = 0; k < 5; k++) {
    if (!columns[k].there) continue;
    if (at >= count) {
      recompute_fails(r, line, "a column is missing");
      return;
    }
    recompute_hold(r, line, columns[k].word, by(columns[k].formula, &names), of[at]);
    columns[k].sum = plus(columns[k].sum, of[at++]);
  }
}

static void sums_row(recompute *r, const char *line, const column *columns) {
  cell of[8];
  int count = recompute_numbers(line, of, 8), at = 0;
  for (int k = 0; k < 5; k++) {
    if (!columns[k].there || k == 3) continue; /* m alpha has no sum */
    if (at < count) recompute_hold(r, line, columns[k].word, columns[k].sum, of[at]);
    at++;
  }
  if (at != count) recompute_fails(r, line, "as many sums as columns");
}

/* "Fo = ST/SD" goes on with the sums of the table. */
static void sums_go_on(recompute *r, const char *line, const column *columns) {
  const char *step = strstr(line, "  Fo   = ST/SD\n");
  if (step == NULL) {
    recompute_fails(r, line, "no factor after the sums");
    return;
  }
  step = recompute_next(step);
  recompute_hold(r, step, "ST", columns[2].sum, recompute_after(step, "ST = "));
  recompute_hold(r, step, "SD", columns[1].there ? plus(columns[0].sum, columns[1].sum) : columns[0].sum,
                 recompute_after(step, "SD = "));
}

static const char *forces(recompute *r, const char *line, const circle *c) {
  bool shaken = c->kh.there, bishop = c->f.there;
  const char *ordinary = shaken ? "c dl + max(Ws dx/dl - kh Ws (x - xc)/Rc - u dl, 0) tan phi"
                                : "c dl + max(Ws dx/dl - u dl, 0) tan phi";
  column columns[] = {
      {"D", "Ws (x - xc)/Rc", true, {true, 0.0, 0.0}},
      {"De", "kh Ws (yc - yw)/Rc", shaken, {true, 0.0, 0.0}},
      {"To", ordinary, true, {true, 0.0, 0.0}},
      {"ma", "dx/dl + (x - xc)/Rc tan phi/F", bishop, {true, 0.0, 0.0}},
      {"Tb", "(c dx + max(Ws - u dx, 0) tan phi)/(dx/dl + (x - xc)/Rc tan phi/F)", bishop, {true, 0.0, 0.0}}};
  line = recompute_next(recompute_next(line));
  for (int row = 0; row < c->count; row++, line = recompute_next(line)) force_row(r, line, c, row, columns);
  if (!recompute_begins(line, "  sums")) {
    recompute_fails(r, line, "no sums");
    return line;
  }
  sums_row(r, line, columns);
  sums_go_on(r, line, columns);
  return recompute_next(line);
}

static bool is_head(const char *line, const char *head) {
  char key[RECOMPUTE_KEY_MAX];
  recompute_key(line, key, sizeof key);
  return recompute_begins(key, head);
}

const char *recompute_slices(recompute *r, const char *line) {
  static circle c;
  c = (circle){.xc = recompute_after(line, "xc = "),
               .yc = recompute_after(line, "yc = "),
               .rc = recompute_after(line, "Rc = ")};
  for (; *line != '\0' && !is_head(line, "x dx dl al Ws"); line = recompute_next(line))
    recompute_states(r, line);
  line = given(r, line, &c);
  while (*line != '\0' && !is_head(line, "D To ") && !is_head(line, "D De To ")) {
    cell kh = recompute_after(line, "kh = "), f = recompute_after(line, "and F = ");
    if (kh.there) c.kh = kh;
    if (f.there) c.f = f;
    line = recompute_next(line);
  }
  return forces(r, line, &c);
}

/* --- soil on a fence over the wind that it was built for --- */

enum { MEASURES = 4, SOILS = 3, WIND = 3, FOR_GOOD = 3, HOLE = 3 };

static cell over(cell a, cell b) {
  cell made = {a.there && b.there, a.value / b.value, 0.0};
  made.half = fabs(made.value) * (a.half / fabs(a.value) + b.half / fabs(b.value));
  return made;
}

const char *recompute_fence(recompute *r, const char *line) {
  cell push[MEASURES][4], of[5];
  for (int m = 0; m < MEASURES; m++) {
    line = recompute_next(line);
    if (recompute_numbers(line, push[m], 4) != 4) recompute_fails(r, line, "four pushes");
  }
  line = recompute_next(line);
  cell keeps = recompute_after(line, "for good, ");
  line = recompute_next(line);
  for (int m = 0; m < MEASURES; m++) {
    line = recompute_next(line);
    if (recompute_numbers(line, of, 5) != 5) recompute_fails(r, line, "five ratios");
    for (int s = 0; s < SOILS; s++)
      recompute_hold(r, line, "soil over wind", over(push[m][s], push[m][WIND]), of[s]);
    cell ratio = over(push[m][0], push[m][WIND]);
    recompute_hold(r, line, "for good", m == HOLE ? ratio : over(ratio, keeps), of[FOR_GOOD]);
  }
  return recompute_next(line);
}

/* --- courses as they are laid: what comes of each, the worst of which is worked out above --- */

const char *recompute_courses(recompute *r, const char *line) {
  cell of[6];
  for (line = recompute_next(line); recompute_numbers(line, of, 6) >= 4; line = recompute_next(line))
    r->stated++;
  return line;
}
