/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A figure in the prose of docs/ that a cell of a table has: it is that cell. prose.csv has the
 * sentences, with {table/row/column} where a figure stands; {table/row/column*1000} for one in another
 * unit. A row is called by its first cell, or by its first two. */
#include <criterion/criterion.h>

#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <lowwall/tables.h>

#include "../handbook/rows.h"

enum { PHRASES = 125, NAME_BYTES = 96, FIGURES = 16 };

/* Blanks and line breaks are one blank; to be freed. */
static char *run_on(const char *file) {
  lw_text text = {0};
  FILE *in = fopen(file, "rb");
  cr_assert_not_null(in, "%s", file);
  for (int c; (c = fgetc(in)) != EOF;) {
    char byte = isspace(c) ? ' ' : (char)c;
    if (byte != ' ' || text.length == 0 || text.data[text.length - 1] != ' ')
      lw_text_add_bytes(&text, &byte, 1);
  }
  fclose(in);
  cr_assert(!text.failed);
  return text.data;
}

/* The column of a header without its unit. */
static int column_of(const char *header, const char *name) {
  char cell[CASE_CELL_MAX];
  size_t length = strlen(name);
  for (int i = 0; header; i++) {
    header = case_cell(header, cell);
    if (strncmp(cell, name, length) == 0 && (cell[length] == '\0' || cell[length] == ' ')) return i;
  }
  return -1;
}

static const char *line_after(const char *line) {
  const char *end = strchr(line, '\n');
  return end && end[1] ? end + 1 : NULL;
}

static bool is_row(const char *line, const char *row) {
  char first[CASE_CELL_MAX], second[CASE_CELL_MAX], both[2 * CASE_CELL_MAX];
  case_cell(case_cell(line, first), second);
  snprintf(both, sizeof both, "%s %s", first, second);
  return strcmp(first, row) == 0 || strcmp(both, row) == 0;
}

/* What stands in a cell of a table; NAN where there is no such cell. */
static double cell_of(const char *table, const char *row, const char *column) {
  char cell[CASE_CELL_MAX] = "";
  lw_text csv = {0};
  cr_assert_eq(lw_tables_csv(NULL, table, &csv, NULL), LW_OK, "%s", table);
  int wanted = column_of(csv.data, column);
  const char *line = csv.data;
  while (line && !is_row(line, row)) line = line_after(line);
  for (int i = 0; line && i <= wanted; i++) line = case_cell(line, cell);
  double value = wanted >= 0 && cell[0] ? strtod(cell, NULL) : (double)NAN;
  lw_text_free(&csv);
  return value;
}

/* The text up to one of the ends, and what follows that end. */
static const char *name_of(const char *at, const char *ends, char *name) {
  size_t length = strcspn(at, ends);
  cr_assert_lt(length, (size_t)NAME_BYTES, "%s", at);
  snprintf(name, NAME_BYTES, "%.*s", (int)length, at);
  return at + length + (at[length] == '/' ? 1 : 0);
}

/* {table/row/column*times}; gives what follows it. */
static const char *wanted_of(const char *at, double *value) {
  char table[NAME_BYTES], row[NAME_BYTES], column[NAME_BYTES];
  at = name_of(name_of(name_of(at + 1, "/", table), "/", row), "*}", column);
  *value = cell_of(table, row, column) * (*at == '*' ? strtod(at + 1, NULL) : 1.0);
  cr_assert(!isnan(*value), "no cell %s/%s/%s", table, row, column);
  return strchr(at, '}') + 1;
}

/* A number as prose has it: 0.5, 1/2, 1:4, 1 in 8. */
static const char *said_of(const char *at, double *value) {
  static const char *const over[] = {"/", ":", " in "};
  char *end;
  *value = strtod(at, &end);
  if (memchr(at, '.', (size_t)(end - at))) return end;
  for (size_t i = 0; i < sizeof over / sizeof *over; i++) {
    size_t length = strlen(over[i]);
    if (strncmp(end, over[i], length) != 0 || !isdigit((unsigned char)end[length])) continue;
    *value /= strtod(end + length, &end);
    break;
  }
  return end;
}

/* Whether the prose goes on as the sentence does. Then its figures must be those of the cells. */
static bool reads(const char *prose, const char *phrase) {
  double said[FIGURES], wanted[FIGURES];
  int count = 0;
  const char *at = phrase;
  while (*at) {
    if (*at != '{') {
      if (*at++ != *prose++) return false;
      continue;
    }
    if (!isdigit((unsigned char)*prose)) return false;
    cr_assert_lt(count, FIGURES);
    prose = said_of(prose, &said[count]);
    at = wanted_of(at, &wanted[count++]);
  }
  for (int i = 0; i < count; i++)
    cr_expect_leq(fabs(said[i] - wanted[i]), 2e-4 * fabs(wanted[i]), "figure %d of \"%s\" is %g, its cell %g",
                  i + 1, phrase, said[i], wanted[i]);
  return true;
}

static bool stands_in(const char *prose, const char *phrase) {
  bool found = false;
  for (const char *at = prose; *at; at++)
    if (*at == *phrase && reads(at, phrase)) found = true;
  return found;
}

Test(tables, figures_in_the_prose_of_the_documents_are_those_of_their_cells) {
  char file[CASE_CELL_MAX], phrase[CASE_CELL_MAX], was[CASE_CELL_MAX] = "", line[CASE_LINE_MAX];
  char *prose = NULL;
  int phrases = 0;
  FILE *in = fopen("tests/tables/prose.csv", "r");
  cr_assert_not_null(in);
  cr_assert_not_null(fgets(line, sizeof line, in));
  for (; fgets(line, sizeof line, in); phrases++) {
    case_cell(case_cell(line, file), phrase);
    if (strcmp(file, was) != 0) {
      free(prose);
      prose = run_on(file);
      snprintf(was, sizeof was, "%s", file);
    }
    cr_expect(stands_in(prose, phrase), "%s does not say: %s", file, phrase);
  }
  fclose(in);
  free(prose);
  cr_expect_eq(phrases, PHRASES);
}
