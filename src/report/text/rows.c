/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "rows.h"

#include <assert.h>
#include <math.h>
#include <string.h>

#include "said.h"
#include "load_cases/kinds.h"
#include "verdict/moves.h"

static void keep_worst(lw_rows *rows, const lw_check *check, const lw_situation *s) {
  for (int i = 0; i < rows->count; i++) {
    lw_row *row = &rows->row[i];
    if (row->check.kind != check->kind || row->check.at != check->at) continue;
    if (lw_check_told_before(check, &row->check)) *row = (lw_row){.check = *check, .situation = s};
    return;
  }
  assert(rows->count < LW_ROWS_MAX);
  rows->row[rows->count++] = (lw_row){.check = *check, .situation = s};
}

static void add_likely(const lw_result *result, lw_rows *rows, lw_row *row) {
  row->likely = lw_looks_has(result, row->situation, &row->check);
  row->grade = lw_check_grade(result, row->situation, &row->check);
  rows->likely = rows->likely || row->likely.known;
}

void lw_rows_collect(const lw_result *result, lw_rows *rows) {
  *rows = (lw_rows){.count = 0};
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      keep_worst(rows, &check, s);
    }
  }
  for (int i = 0; i < rows->count; i++) add_likely(result, rows, &rows->row[i]);
}

lw_row_says lw_row_says_of(const lw_row *row) {
  static const lw_row_says of_grade[] = {[LW_GRADE_HOLDS] = LW_ROW_HOLDS,
                                         [LW_GRADE_LESS_MARGIN] = LW_ROW_LESS_MARGIN,
                                         [LW_GRADE_MAY_MOVE] = LW_ROW_MAY_MOVE,
                                         [LW_GRADE_WOULD_MOVE] = LW_ROW_WOULD_MOVE,
                                         [LW_GRADE_CANNOT_BE_SHOWN] = LW_ROW_NOT_SHOWN};
  const lw_check *check = &row->check;
  bool below = check->factored && lw_check_is_lost(check);
  if (row->grade == LW_GRADE_COUNT) return check->has.known ? LW_ROW_NOT_ASKED : LW_ROW_NOT_CHECKED;
  if (row->grade == LW_GRADE_LESS_MARGIN && below) return LW_ROW_BY_DESIGN;
  return of_grade[row->grade];
}

/* In a word or two: the numbers stand beside it. */
const char *lw_row_outcome(const lw_row *row) {
  static const char *const words[] = {
      [LW_ROW_HOLDS] = "holds",           [LW_ROW_LESS_MARGIN] = "less margin",
      [LW_ROW_MAY_MOVE] = "may move",     [LW_ROW_WOULD_MOVE] = "would move",
      [LW_ROW_BY_DESIGN] = "falls short", [LW_ROW_NOT_SHOWN] = "not shown",
      [LW_ROW_NOT_ASKED] = "not asked",   [LW_ROW_NOT_CHECKED] = "not checked"};
  lw_row_says says = lw_row_says_of(row);
  bool tips = says == LW_ROW_WOULD_MOVE && row->check.reason == LW_REASON_OUTSIDE_BASE &&
              row->check.kind != LW_CHECK_SLIDING;
  return tips ? "would tip" : words[says];
}

/* Marks what is asked for from memory (m) or as this project's proposal (p). */
static char mark_of(const lw_row *row) {
  lw_seen seen = lw_check_seen(&row->check, row->situation->kind);
  if (!row->check.needs.known) return ' ';
  return seen == LW_MEMORY ? 'm' : seen == LW_PROPOSAL ? 'p' : ' ';
}

void lw_row_print_has(const lw_check *check, char *out, size_t size) {
  lw_page_number(check->has, out, size);
  if (!check->has.known || check->holds != LW_FALLS_SHORT || check->has.value >= 1000.0) return;
  double needs = check->needs.known ? check->needs.value : 1.0;
  for (int decimals = 2; decimals < 5; decimals++) {
    double unit = pow(10.0, -decimals), printed = round(check->has.value / unit) * unit;
    bool crosses = check->has.value < 1.0 && printed > 1.0 - 0.5 * unit;
    lw_number_print(out, size, check->has.value, decimals);
    if (!crosses && printed < needs - 0.5 * unit) return;
  }
}

void lw_row_print_needs(const lw_row *row, char *out, size_t size) {
  lw_page_number(row->check.needs, out, size);
  size_t used = strlen(out);
  if (mark_of(row) != ' ') lw_print(out + used, size - used, "%c", mark_of(row));
}

void lw_rows_put_head(const lw_page *page, const char *title, const lw_rows *rows) {
  lw_page_titledf(page, rows->likely ? "|%-29s|%7s|%6s|%7s |%-11s |%s" : "|%-29s|%7s|%6s|%s |%-11s |%s",
                  title, "has", "needs", rows->likely ? "likely" : " ", "", "case");
}

void lw_row_put(const lw_page *page, const lw_rows *rows, int index) {
  const lw_row *row = &rows->row[index];
  char words[40], has[24], needs[24], likely[24] = "";
  lw_check_words(&row->check, words, sizeof words);
  lw_row_print_has(&row->check, has, sizeof has);
  lw_page_number(row->check.needs, needs, sizeof needs);
  lw_page_number(row->likely, likely, sizeof likely);
  bool bad = row->check.counts && row->check.holds != LW_HOLDS;
  lw_page_rowf(page, bad ? LW_TONE_BAD : LW_TONE_PLAIN,
               rows->likely ? "  |%-27s|%7s|%6s%c|%6s |%-11s |%s" : "  |%-27s|%7s|%6s%c|%.0s |%-11s |%s",
               words, has, needs, mark_of(row), likely, lw_row_outcome(row),
               lw_situation_short(row->situation->name));
}

void lw_rows_put_unshown(const lw_page *page, const lw_result *result, const lw_rows *rows) {
  bool moves = result->verdict.grade == LW_GRADE_WOULD_MOVE && result->looks.likely.not_shown;
  for (int i = 0; i < rows->count; i++) moves = moves && rows->row[i].grade != LW_GRADE_WOULD_MOVE;
  if (moves)
    lw_page_say(page, "  ",
                "By likely values that cannot be shown either, so it counts as a wall that would move.");
}

static int count_marked(const lw_rows *rows, char mark) {
  int count = 0;
  for (int i = 0; i < rows->count; i++) count += mark_of(&rows->row[i]) == mark ? 1 : 0;
  return count;
}

void lw_rows_put_legend(const lw_page *page, const lw_rows *rows) {
  if (rows->likely)
    lw_page_say(page, "  ", "has: by cautious values, which decide; likely: as soil and loads usually are.");
  int memory = count_marked(rows, 'm'), proposal = count_marked(rows, 'p');
  char said[120] = "";
  if (memory > 0) lw_print(said, sizeof said, "m: from memory of its source, not read in print (%d)", memory);
  size_t used = strlen(said);
  if (proposal > 0)
    lw_print(said + used, sizeof said - used, "%sp: our own proposal (%d)", memory > 0 ? "; " : "", proposal);
  if (said[0]) lw_page_sayf(page, "  ", "%s.", said);
}
