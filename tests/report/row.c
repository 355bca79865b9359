/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <csv.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "sheet/faults.h"
#include "every_wall.h"
#include "support.h"

enum { COLUMNS = 21, ROW = 7 };

/* The first row of a CSV text as libcsv reads it. */
typedef struct cells {
  int count, rows;
  char cell[COLUMNS][1400];
} cells;

static void take_cell(void *text, size_t length, void *context) {
  cells *c = context;
  if (c->rows == 0 && c->count < COLUMNS)
    snprintf(c->cell[c->count], sizeof c->cell[0], "%.*s", (int)length, (char *)text);
  c->count += c->rows == 0 ? 1 : 0;
}

static void take_row(int end, void *context) {
  (void)end;
  ((cells *)context)->rows++;
}

static cells read_row(const lw_text *text) {
  static cells c;
  struct csv_parser parser;
  memset(&c, 0, sizeof c);
  cr_assert(eq(int, csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL), 0));
  cr_assert(eq(sz, csv_parse(&parser, text->data, text->length, take_cell, take_row, &c), text->length));
  csv_fini(&parser, take_cell, take_row, &c);
  csv_free(&parser);
  cr_expect(eq(int, c.rows, 1));
  cr_expect(eq(int, c.count, COLUMNS));
  return c;
}

static cells row_of(const lw_result *result) {
  lw_text text = {0};
  lw_report_row(result, ROW, &text);
  cells c = read_row(&text);
  lw_text_free(&text);
  return c;
}

Test(report, the_header_row_has_its_columns) {
  static const char *const names[COLUMNS] = {"mark",      "headline",     "what",
                                             "stands",    "who",          "governing situation",
                                             "check",     "at",           "has",
                                             "needs",     "ratio",        "exit",
                                             "row",       "place",        "greatest height [m]",
                                             "limit [m]", "limit source", "rests on",
                                             "grade",     "likely",       "least by likely values"};
  lw_text text = {0};
  lw_report_row_header(&text);
  cells c = read_row(&text);
  for (int i = 0; i < COLUMNS; i++) cr_expect(eq(str, c.cell[i], (char *)(size_t)names[i]));
  lw_text_free(&text);
}

/* Printed digits against the value, half a unit of the third decimal allowed. */
static void same_number(const char *printed, lw_number number) {
  const char *dot = strchr(printed, '.');
  if (!number.known) {
    cr_expect(eq(str, (char *)(size_t)printed, ""));
    return;
  }
  cr_expect(dot != NULL && strlen(dot) == 4, "%s has not three decimals", printed);
  cr_expect(epsilon_eq(dbl, strtod(printed, NULL), number.value, 0.00050001));
}

int every_row_says_what_the_verdict_says(const every_wall *wall) {
  const lw_result *result = wall->result;
  const lw_verdict *v = &result->verdict;
  cells c = row_of(result);
  cr_expect(eq(str, c.cell[0], (char *)(size_t)result->given.about.mark.text));
  cr_expect(eq(str, c.cell[1], (char *)(size_t)v->headline));
  cr_expect(eq(str, c.cell[2], (char *)(size_t)lw_what_slug(v->what)));
  cr_expect(eq(str, c.cell[3], (char *)(size_t)lw_holds_slug(v->stands)));
  cr_expect(eq(str, c.cell[4], (char *)(size_t)lw_who_slug(v->who)));
  cr_expect(eq(int, (int)strtol(c.cell[11], NULL, 10), v->exit_status));
  cr_expect(eq(str, c.cell[12], "7"));
  same_number(c.cell[14], (lw_number){v->height_m[LW_HEIGHT_GREATEST], true});
  const lw_limit_hit *limit = lw_verdict_limit(v);
  same_number(c.cell[15], (lw_number){limit ? limit->row->height_m : 0.0, limit != NULL});
  cr_expect(eq(str, c.cell[16], (char *)(size_t)(limit ? limit->row->from.source : "")));
  bool certain = v->who == LW_WHO_BUILDER;
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    certain = certain || (r->answer == LW_ANSWER_WHO && r->who == v->who && !r->assumed && !r->left_out);
  }
  cr_expect(eq(int, c.cell[17][0] == '\0', certain), "%s: %s", wall->name, c.cell[17]);
  cr_expect(eq(str, c.cell[18], (char *)(size_t)lw_grade_slug(v->grade)));
  same_number(c.cell[20], result->looks.looked ? result->looks.likely.has : (lw_number){0});
  if (!v->governed) return 1;
  const lw_situation *s = &result->situations.situation[v->governing_situation];
  const lw_check whole = lw_situation_check(s, v->governing_check), *check = &whole;
  cr_expect(eq(str, c.cell[5], (char *)(size_t)lw_situation_slug(s->name)));
  cr_expect(eq(str, c.cell[6], (char *)(size_t)lw_check_slug(check->kind)));
  same_number(c.cell[8], check->has);
  same_number(c.cell[9], check->needs);
  same_number(c.cell[10], check->ratio);
  same_number(c.cell[19], result->looks.looked ? lw_looks_has(result, s, check) : (lw_number){0});
  return 1;
}

Test(report, where_nothing_governs_six_cells_are_empty) {
  cells c = row_of(report_test_named("nothing governs"));
  for (int i = 5; i < 11; i++) cr_expect(eq(str, c.cell[i], ""));
}

Test(report, only_cells_that_need_quotes_have_them) {
  static lw_result result;
  result = *report_test_named("bed");
  snprintf(result.verdict.headline, sizeof result.verdict.headline, "plain words; no quotes");
  snprintf(result.given.about.mark.text, sizeof result.given.about.mark.text, "W1");
  lw_text text = {0};
  lw_report_row(&result, ROW, &text);
  cr_expect(eq(ptr, strchr(text.data, '"'), NULL));
  lw_text_clear(&text);
  snprintf(result.given.about.mark.text, sizeof result.given.about.mark.text, "W\"1\", \xff\n");
  lw_report_row(&result, ROW, &text);
  const char begins[] = "\"W\"\"1\"\", ??\",plain";
  cr_expect(eq(int, strncmp(text.data, begins, sizeof begins - 1), 0), "%s", text.data);
  cells c = read_row(&text);
  cr_expect(eq(str, c.cell[0], "W\"1\", ??"));
  lw_text_free(&text);
}

Test(report, a_faulty_row_carries_its_mark_and_the_fault_in_words) {
  lw_case c = {0};
  lw_faults faults = {.file = "walls.csv"};
  lw_text text = {0};
  snprintf(c.about.mark.text, sizeof c.about.mark.text, "W7");
  lw_faults_add(&faults, LW_FAULT_NOT_A_NUMBER, (lw_cell_place){8, 2}, "wall height", "n,ine",
                "a number, as in %s", "9");
  lw_faults_add(&faults, LW_FAULT_NO_UNIT, (lw_cell_place){8, 3}, "block depth", "3", "a unit");
  lw_report_row_faults(&c, &faults, ROW, &text);
  cells row = read_row(&text);
  cr_expect(eq(str, row.cell[0], "W7"));
  cr_expect(eq(int, strncmp(row.cell[1], "fault: wall height: ", 20), 0), "%s", row.cell[1]);
  cr_expect(strstr(row.cell[1], "n,ine") != NULL && strstr(row.cell[1], "and 1 more") != NULL);
  for (int i = 2; i < 11; i++) cr_expect(eq(str, row.cell[i], ""));
  cr_expect(eq(str, row.cell[11], "2"));
  lw_text_free(&text);
}

/* What begins as a formula does is text, whatever stands around it; a number, and what only holds such a
 * sign, is left as it is. */
Test(report, a_cell_that_a_spreadsheet_would_run_is_text) {
  static const char *const runs[] = {"=1+1", "+SUM(A1)", "-2+3", "@A1", "=", "-", "+x", "=cmd|' /C x'!A0"};
  static const char *const stays[] = {"-5", "+5", "-1.5e3", "W-1", "a=b", "", "1+1", "'=1"};
  static lw_result result;
  result = *report_test_named("bed");
  lw_text text = {0};
  for (size_t i = 0; i < sizeof runs / sizeof *runs; i++) {
    char expected[64];
    snprintf(expected, sizeof expected, "'%s", runs[i]);
    snprintf(result.given.about.mark.text, sizeof result.given.about.mark.text, "%s", runs[i]);
    snprintf(result.given.about.place.text, sizeof result.given.about.place.text, "%s", runs[i]);
    cells c = row_of(&result);
    cr_expect(eq(str, c.cell[0], expected));
    cr_expect(eq(str, c.cell[13], expected));
  }
  for (size_t i = 0; i < sizeof stays / sizeof *stays; i++) {
    snprintf(result.given.about.mark.text, sizeof result.given.about.mark.text, "%s", stays[i]);
    cr_expect(eq(str, row_of(&result).cell[0], (char *)(size_t)stays[i]));
  }
  lw_text_free(&text);
}
