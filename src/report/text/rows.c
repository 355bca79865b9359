/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "rows.h"

#include <assert.h>
#include <math.h>
#include <string.h>

#include "said.h"
#include "balance/weigh.h"
#include "load_cases/kinds.h"

static void keep_worst(lw_rows *rows, const lw_check *check, const lw_situation *s) {
  for (int i = 0; i < rows->count; i++) {
    lw_row *row = &rows->row[i];
    if (row->check.kind != check->kind || row->check.at != check->at) continue;
    if (lw_check_graver(check, &row->check)) *row = (lw_row){*check, s};
    return;
  }
  assert(rows->count < LW_ROWS_MAX);
  rows->row[rows->count++] = (lw_row){*check, s};
}

void lw_rows_collect(const lw_result *result, lw_rows *rows) {
  rows->count = 0;
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      keep_worst(rows, &check, s);
    }
  }
}

lw_shortfall lw_shortfall_of(const lw_check *check) {
  if (lw_check_would_move(check)) return LW_FALLS_MOVES;
  bool below = check->factored && lw_check_about_of(check->kind)->below_one && check->has.value < 1.0;
  return below ? LW_FALLS_BY_DESIGN : LW_FALLS_MARGIN;
}

/* In a word or two: the numbers stand beside it. */
static const char *outcome_of(const lw_check *check) {
  static const char *const shorts[] = {[LW_FALLS_MOVES] = "would move",
                                       [LW_FALLS_BY_DESIGN] = "falls short",
                                       [LW_FALLS_MARGIN] = "less margin"};
  if (!check->counts) return check->has.known ? "not asked" : "not checked";
  if (check->holds == LW_HOLDS) return "holds";
  if (check->holds == LW_CANNOT_SHOW) return "not shown";
  if (check->reason == LW_REASON_OUTSIDE_BASE && !check->factored) return "would tip";
  return shorts[lw_shortfall_of(check)];
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

void lw_rows_put_head(const lw_page *page, const char *title) {
  lw_page_linef(page, LW_TONE_STRONG, "%-29s%7s%6s%18s", title, "has", "needs", "case");
}

void lw_row_put(const lw_page *page, const lw_row *row) {
  char words[40], has[24], needs[24];
  lw_check_words(&row->check, words, sizeof words);
  lw_row_print_has(&row->check, has, sizeof has);
  lw_page_number(row->check.needs, needs, sizeof needs);
  bool bad = row->check.counts && row->check.holds != LW_HOLDS;
  lw_page_linef(page, bad ? LW_TONE_BAD : LW_TONE_PLAIN, "  %-27s%7s%6s%c %-11s %s", words, has, needs,
                mark_of(row), outcome_of(&row->check), lw_situation_short(row->situation->name));
}

static int count_marked(const lw_rows *rows, char mark) {
  int count = 0;
  for (int i = 0; i < rows->count; i++) count += mark_of(&rows->row[i]) == mark ? 1 : 0;
  return count;
}

void lw_rows_put_legend(const lw_page *page, const lw_rows *rows) {
  int memory = count_marked(rows, 'm'), proposal = count_marked(rows, 'p');
  char said[120] = "";
  if (memory > 0) lw_print(said, sizeof said, "m: from memory of its source, not read in print (%d)", memory);
  size_t used = strlen(said);
  if (proposal > 0)
    lw_print(said + used, sizeof said - used, "%sp: our own proposal (%d)", memory > 0 ? "; " : "", proposal);
  if (said[0]) lw_page_sayf(page, "  ", "%s.", said);
}
