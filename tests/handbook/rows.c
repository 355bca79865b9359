/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "rows.h"

#include <criterion/criterion.h>
#include <lowwall/base.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

enum { COLUMNS = 11 };

const char *case_cell(const char *at, char *out) {
  bool quoted = *at == '"';
  size_t used = 0;
  at += quoted ? 1 : 0;
  for (; *at != '\0' && *at != '\n'; at++) {
    if (quoted && *at == '"' && at[1] == '"')
      at++;
    else if (quoted && *at == '"')
      quoted = false;
    else if (!quoted && *at == ',')
      break;
    if (*at == '"' && !quoted) continue;
    cr_assert_lt(used, (size_t)CASE_CELL_MAX - 1, "a cell is too long");
    out[used++] = *at;
  }
  out[used] = '\0';
  return *at == ',' ? at + 1 : NULL;
}

static void read_row(const char *line, case_row *row) {
  char *cells[COLUMNS] = {row->id,        row->inputs,    row->quantity,   row->unit,
                          row->published, row->tolerance, row->recomputed, row->source,
                          row->seen,      row->agrees,    row->note};
  const char *at = line;
  for (int i = 0; i < COLUMNS; i++) {
    cr_assert_not_null(at, "too few cells in: %s", line);
    at = case_cell(at, cells[i]);
  }
  cr_assert_null(at, "too many cells in: %s", line);
  lw_print(row->about, sizeof row->about, "%s: %s", row->quantity, row->inputs);
}

double case_number_of(const char *text) {
  double value = NAN;
  size_t length = strcspn(text, " ");
  return lw_number_read(text, length, &value) ? value : NAN;
}

bool case_word(const case_row *row, const char *key, char *out, size_t size) {
  size_t length = strlen(key);
  for (const char *at = row->inputs; at != NULL && *at != '\0';) {
    size_t end = strcspn(at, ";");
    if (strncmp(at, key, length) == 0 && at[length] == '=') {
      lw_print(out, size, "%.*s", (int)(end - length - 1), at + length + 1);
      return true;
    }
    at += end + strspn(at + end, "; ");
  }
  return false;
}

bool case_is(const case_row *row, const char *key, const char *word) {
  char found[CASE_CELL_MAX];
  return case_word(row, key, found, sizeof found) && strcmp(found, word) == 0;
}

double case_number(const case_row *row, const char *key, double instead) {
  char found[CASE_CELL_MAX];
  if (!case_word(row, key, found, sizeof found)) return instead;
  double value = case_number_of(found);
  cr_assert(isfinite(value), "%s: %s is no number", row->id, key);
  const char *unit = strchr(found, ' ');
  return unit != NULL && strcmp(unit, " deg") == 0 ? value * 3.14159265358979323846 / 180.0 : value;
}

/* Half the last of six printed digits, and a little for a wedge's flat top. */
static double derived_tolerance(const case_row *row, double value) {
  return strcmp(row->quantity, "plane_angle") == 0 ? 2e-3 : 6e-6 * fabs(value) + 1e-9;
}

void case_hold(const case_row *row, case_outcome outcome, double ours) {
  cr_expect_neq(outcome, CASE_UNSUPPORTED, "%s: %s is not supported", row->id, row->quantity);
  if (outcome == CASE_UNSUPPORTED) return;
  if (strcmp(row->recomputed, "none") == 0) {
    cr_expect_eq(outcome, CASE_NO_SOLUTION, "%s: there is no answer, and %g was given", row->id, ours);
    return;
  }
  cr_expect_eq(outcome, CASE_VALUE, "%s: no answer", row->id);
  double recomputed = case_number_of(row->recomputed), published = case_number_of(row->published);
  bool same = row->recomputed[0] == '\0' || fabs(ours - recomputed) <= derived_tolerance(row, recomputed);
  cr_expect(same, "%s: ours %.8g, recomputed %.8g", row->id, ours, recomputed);
  if (strcmp(row->agrees, "derived") == 0) return;
  bool met = fabs(ours - published) <= case_number_of(row->tolerance);
  if (strcmp(row->agrees, "yes") == 0)
    cr_expect(met, "%s: ours %.8g, published %.8g", row->id, ours, published);
  else
    cr_expect(!met, "%s: meets %.8g, which is marked wrong", row->id, published);
}

void case_check_marks(const case_row *row) {
  bool seen = strcmp(row->seen, "seen") == 0 || strcmp(row->seen, "memory") == 0;
  bool derived = strcmp(row->seen, "derived") == 0;
  cr_expect(seen || derived, "%s: seen is \"%s\"", row->id, row->seen);
  cr_expect_eq(derived, row->published[0] == '\0', "%s: derived and published do not go together", row->id);
  cr_expect_eq(derived, strcmp(row->agrees, "derived") == 0, "%s: agrees is \"%s\"", row->id, row->agrees);
  cr_expect(row->source[0] == '[', "%s: no source", row->id);
  bool differs = strcmp(row->agrees, "no") == 0;
  cr_expect(!differs || row->note[0] != '\0', "%s: differs, and no note says why", row->id);
  bool needs_ours = differs || derived;
  cr_expect(!needs_ours || row->recomputed[0] != '\0', "%s: nothing to hold our value against", row->id);
}

int case_each(const char *file, case_run run, case_taker taker, void *context) {
  char line[CASE_LINE_MAX];
  int count = 0;
  FILE *in = fopen(file, "r");
  cr_assert_not_null(in, "%s is not there", file);
  cr_assert_not_null(fgets(line, sizeof line, in));
  cr_assert_str_eq(line, "id,inputs,quantity,unit,published,tolerance,recomputed,source,seen,agrees,note\n");
  while (fgets(line, sizeof line, in) != NULL) {
    case_row row;
    double ours = NAN;
    cr_assert_not_null(strchr(line, '\n'), "a line is too long");
    read_row(line, &row);
    case_outcome outcome = run(&row, &ours);
    taker(context, &row, outcome, ours);
    count++;
  }
  fclose(in);
  return count;
}

static void hold_row(void *context, const case_row *row, case_outcome outcome, double ours) {
  (void)context;
  case_check_marks(row);
  case_hold(row, outcome, ours);
}

int case_hold_all(const char *file, case_run run) {
  return case_each(file, run, hold_row, NULL);
}
