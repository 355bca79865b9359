/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "wall_rows.h"

#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/solve.h"

enum { COLUMNS = 15, UNKNOWNS = 2, NAME_MAX_BYTES = 64 };

static const char HEADER[] = "id,sheet,inputs,solve,situation,where,quantity,unit,published,tolerance,"
                             "recomputed,source,seen,agrees,note\n";

/* An item that is searched for until a quantity has the value that is asked for. */
typedef struct unknown {
  char item[NAME_MAX_BYTES], unit[NAME_MAX_BYTES], until[NAME_MAX_BYTES];
  double low, high, target;
} unknown;

/* Everything one row needs while it is worked out. */
typedef struct attempt {
  const wall_row *row;
  const lw_tables *tables;
  lw_case c; /* the sheet with the row's inputs, not complete */
  lw_result *result;
  lw_free_body body;
  int count;
  unknown unknown[UNKNOWNS];
  double at[UNKNOWNS];
  bool ran;
} attempt;

typedef struct level {
  attempt *attempt;
  int number;
} level;

static const lw_tables *tables_of(void) {
  static lw_tables tables;
  static bool read;
  if (!read) read = lw_tables_read(NULL, &tables, NULL) == LW_OK;
  cr_assert(read, "the built-in tables cannot be read");
  return &tables;
}

double wall_unit(const char *name) {
  if (name[0] == '\0' || strcmp(name, "kN m/m") == 0) return 1.0;
  for (size_t i = 0; lw_unit_at(i) != NULL; i++)
    if (strcmp(lw_unit_at(i)->name, name) == 0) return lw_unit_at(i)->to_si;
  return 0.0;
}

/* --- the case --- */

static void read_sheet(const wall_row *row, lw_case *c, lw_faults *faults) {
  char path[CASE_CELL_MAX + 64], bytes[16384];
  lw_print(path, sizeof path, "tests/handbook/walls/%s.csv", row->sheet);
  FILE *in = fopen(path, "rb");
  cr_assert_not_null(in, "%s is not there", path);
  size_t length = fread(bytes, 1, sizeof bytes, in);
  fclose(in);
  cr_assert_lt(length, sizeof bytes, "%s is too long", path);
  (void)lw_sheet_read(bytes, length, c, faults);
}

/* The row's inputs stand as if given on the command line, one after the other. */
static void override_all(const char *inputs, lw_case *c, lw_faults *faults) {
  int number = 0;
  for (const char *at = inputs; *at != '\0'; at += strspn(at, "; ")) {
    char item[CASE_CELL_MAX];
    size_t length = strcspn(at, ";");
    lw_print(item, sizeof item, "%.*s", (int)length, at);
    (void)lw_sheet_override(item, ++number, c, faults);
    at += length;
  }
}

static void expect_no_faults(const wall_row *row, const lw_faults *faults) {
  lw_text text = {0};
  lw_faults_print(faults, &text);
  cr_assert_eq(faults->count, 0, "%s: %s", row->row.id, text.data);
  lw_text_free(&text);
}

/* --- what is looked for --- */

static bool find_place(attempt *a, wall_place *place) {
  const lw_situations *all = &a->result->situations;
  *place = (wall_place){.result = a->result, .at = LW_AT_BASE};
  for (int i = 0; i < all->count; i++)
    if (strcmp(lw_situation_slug(all->situation[i].name), a->row->situation) == 0)
      place->situation = &all->situation[i];
  if (place->situation == NULL) return false;
  const lw_situation *s = place->situation;
  place->body = &s->base;
  if (strcmp(a->row->where, "base") == 0) return true;
  if (strcmp(a->row->where, "pad") == 0) {
    place->at = LW_AT_PAD;
    place->body = &s->pad;
    return true;
  }
  if (strncmp(a->row->where, "joint-", 6) != 0) return false;
  place->joint = (int)lround(case_number_of(a->row->where + 6));
  place->at = LW_AT_JOINT;
  lw_situation_joint(&a->result->wall, s, place->joint, &a->body);
  place->body = &a->body;
  return true;
}

static bool look_up(attempt *a, const char *name, double *value) {
  wall_place place;
  return a->ran && find_place(a, &place) && wall_quantity(&place, name, value);
}

static void run_wall(attempt *a) {
  lw_case c = a->c;
  lw_faults faults = {.count = 0};
  for (int i = 0; i < a->count; i++) {
    char item[2 * NAME_MAX_BYTES + 40];
    lw_print(item, sizeof item, "%s=%.15g %s", a->unknown[i].item, a->at[i], a->unknown[i].unit);
    (void)lw_sheet_override(item, i + 1, &c, &faults);
  }
  (void)lw_case_complete(a->tables, &c, &faults);
  expect_no_faults(a->row, &faults);
  a->ran = lw_run(&c, a->tables, LW_DETAIL_EVERYTHING, a->result, NULL) == LW_OK;
}

/* --- limits: the first unknown by root search over whole runs, the second anew for each trial of it --- */

static bool find_unknown(attempt *a, int number);

static double miss(double x, const void *context) {
  const level *l = context;
  attempt *a = l->attempt;
  const unknown *u = &a->unknown[l->number];
  double value = NAN;
  a->at[l->number] = x;
  if (l->number + 1 < a->count) {
    if (!find_unknown(a, l->number + 1)) return NAN;
  } else {
    run_wall(a);
  }
  return look_up(a, u->until, &value) ? value - u->target : NAN;
}

static bool find_unknown(attempt *a, int number) {
  level l = {a, number};
  const unknown *u = &a->unknown[number];
  double found;
  if (lw_solve_root(miss, &l, u->low, u->high, 1e-12, &found) != LW_OK) return false;
  return fabs(miss(found, &l)) <= 1e-6 * fmax(1.0, fabs(u->target));
}

/* A piece of text up to a mark, without the blanks around it; gives what follows the mark. */
static const char *take(const char *at, const char *mark, char *out) {
  const char *end = strstr(at, mark);
  cr_assert_not_null(end, "\"%s\" lacks \"%s\"", at, mark);
  at += strspn(at, " ");
  int length = (int)(end - at);
  while (length > 0 && at[length - 1] == ' ') length--;
  lw_print(out, NAME_MAX_BYTES, "%.*s", length, at);
  return end + strlen(mark);
}

/* "wall height=2..5 m until heel pressure=0 kPa" */
static void read_unknown(const char *text, unknown *u) {
  char low[NAME_MAX_BYTES], high[NAME_MAX_BYTES];
  const char *at = take(text, "=", u->item);
  at = take(at, "..", low);
  at = take(at, " ", high);
  at = take(at, " until ", u->unit);
  at = take(at, "=", u->until);
  u->low = case_number_of(low);
  u->high = case_number_of(high);
  u->target = case_number_of(at);
  const char *unit = at + strcspn(at, " ");
  unit += strspn(unit, " ");
  u->target *= wall_unit(unit);
  cr_assert(isfinite(u->low) && isfinite(u->high) && isfinite(u->target), "\"%s\"", text);
  cr_assert(wall_unit(unit) > 0.0, "\"%s\": no such unit", text);
}

static void read_unknowns(const wall_row *row, attempt *a) {
  char piece[CASE_CELL_MAX];
  for (const char *at = row->solve; *at != '\0'; at += strspn(at, "; ")) {
    size_t length = strcspn(at, ";");
    cr_assert_lt(a->count, (int)UNKNOWNS, "%s: too many unknowns", row->row.id);
    lw_print(piece, sizeof piece, "%.*s", (int)length, at);
    read_unknown(piece, &a->unknown[a->count++]);
    at += length;
  }
}

static case_outcome work_out(attempt *a, double *value) {
  const case_row *row = &a->row->row;
  lw_faults faults = {.count = 0};
  double unit = wall_unit(row->unit);
  read_sheet(a->row, &a->c, &faults);
  override_all(row->inputs, &a->c, &faults);
  expect_no_faults(a->row, &faults);
  read_unknowns(a->row, a);
  if (unit <= 0.0) return CASE_UNSUPPORTED;
  if (a->count == 0) run_wall(a);
  if (a->count > 0 && !find_unknown(a, 0)) return CASE_NO_SOLUTION;
  if (!a->ran) return CASE_NO_SOLUTION;
  for (int i = 0; i < a->count; i++) {
    if (strcmp(row->quantity, a->unknown[i].item) != 0) continue;
    *value = a->at[i] * wall_unit(a->unknown[i].unit) / unit;
    return CASE_VALUE;
  }
  if (!look_up(a, row->quantity, value)) return CASE_UNSUPPORTED;
  *value /= unit;
  return isfinite(*value) ? CASE_VALUE : CASE_NO_SOLUTION;
}

case_outcome wall_row_run(const wall_row *row, double *value) {
  attempt *a = calloc(1, sizeof *a);
  lw_result *result = calloc(1, sizeof *result);
  cr_assert(a != NULL && result != NULL);
  a->row = row;
  a->tables = tables_of();
  a->result = result;
  case_outcome outcome = work_out(a, value);
  free(result);
  free(a);
  return outcome;
}

static void read_row(const char *line, wall_row *w) {
  case_row *row = &w->row;
  char *cells[COLUMNS] = {row->id,         w->sheet,      row->inputs, w->solve,       w->situation,
                          w->where,        row->quantity, row->unit,   row->published, row->tolerance,
                          row->recomputed, row->source,   row->seen,   row->agrees,    row->note};
  const char *at = line;
  for (int i = 0; i < COLUMNS; i++) {
    cr_assert_not_null(at, "too few cells in: %s", line);
    at = case_cell(at, cells[i]);
  }
  cr_assert_null(at, "too many cells in: %s", line);
  bool plain = strcmp(w->where, "base") == 0;
  lw_print(row->about, sizeof row->about, "%s%s%s%s%s%s%s", row->quantity, plain ? "" : " at ",
           plain ? "" : w->where, row->inputs[0] ? "; with " : "", row->inputs, w->solve[0] ? "; with " : "",
           w->solve);
}

int wall_each(const char *file, case_taker taker, void *context) {
  char line[CASE_LINE_MAX];
  int count = 0;
  FILE *in = fopen(file, "r");
  cr_assert_not_null(in, "%s is not there", file);
  cr_assert_not_null(fgets(line, sizeof line, in));
  cr_assert_str_eq(line, HEADER);
  while (fgets(line, sizeof line, in) != NULL) {
    wall_row row;
    double ours = NAN;
    cr_assert_not_null(strchr(line, '\n'), "a line is too long");
    read_row(line, &row);
    case_outcome outcome = wall_row_run(&row, &ours);
    taker(context, &row.row, outcome, ours);
    count++;
  }
  fclose(in);
  return count;
}
