/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "base/text.h"
#include "report/page.h"

/* A schedule's results, a row a wall. Printing costs more than checking: only a fault goes through printf. */

enum { DECIMALS = 3, CELL_MAX = 1536, EMPTY_AFTER_HEADLINE = 9, EMPTY_AFTER_PLACE = 6 };

static void put(lw_text *out, const char *words) {
  lw_text_add_bytes(out, words, strlen(words));
}

static void end_cell(lw_text *out) {
  lw_text_add_bytes(out, ",", 1);
}

static void put_quoted(lw_text *out, const char *cell) {
  put(out, "\"");
  for (const char *at = cell; *at;) {
    size_t length = strcspn(at, "\"");
    lw_text_add_bytes(out, at, length);
    at += length;
    if (*at == '"') {
      put(out, "\"\"");
      at++;
    }
  }
  put(out, "\"");
}

/* A cell and the comma after it. Control characters and what is not UTF-8 become `?` before, and what a
 * spreadsheet would run becomes text. */
static void add_cell(lw_text *out, const char *words) {
  char cell[CELL_MAX + 1];
  bool runs = lw_cell_runs(words);
  cell[0] = '\'';
  lw_text_clean(words, cell + (runs ? 1 : 0), CELL_MAX);
  size_t length = strlen(cell);
  bool blank_at_an_end = length > 0 && (cell[0] == ' ' || cell[length - 1] == ' ');
  if (blank_at_an_end || strpbrk(cell, ",\"") != NULL)
    put_quoted(out, cell);
  else
    lw_text_add_bytes(out, cell, length);
  end_cell(out);
}

/* Our own words never need quotes. */
static void add_slug(lw_text *out, const char *slug) {
  put(out, slug);
  end_cell(out);
}

static void put_number(lw_text *out, lw_number number) {
  char digits[400];
  if (number.known && isfinite(number.value)) {
    lw_text_add_bytes(out, digits, lw_number_print(digits, sizeof digits, number.value, DECIMALS));
  }
}

static void add_number(lw_text *out, lw_number number) {
  put_number(out, number);
  end_cell(out);
}

/* The check that governs; its situation is NULL where none does. */
typedef struct governing {
  const lw_situation *situation;
  lw_check check;
} governing;

static void add_governing(const governing *g, lw_text *out) {
  char at[24];
  if (g->situation == NULL) {
    put(out, ",,,,,,");
    return;
  }
  lw_check_print_at(&g->check, at, sizeof at);
  add_slug(out, lw_situation_slug(g->situation->name));
  add_slug(out, lw_check_slug(g->check.kind));
  add_slug(out, at);
  add_number(out, g->check.has);
  add_number(out, g->check.needs);
  add_number(out, g->check.ratio);
}

void lw_report_row_header(lw_text *out) {
  put(out, "mark,headline,what,stands,who,governing situation,check,at,has,needs,ratio,exit,row,place,"
           "greatest height [m],limit [m],limit source,rests on,grade,likely,least by likely values\n");
}

static void add_count(lw_text *out, int count) {
  char digits[16];
  lw_text_add_bytes(out, digits, lw_number_print(digits, sizeof digits, count, 0));
}

/* Where the wall stands in the schedule and in the law, and whether an answer would change who sees it. */
static void add_law(const lw_result *result, int row, lw_text *out) {
  const lw_verdict *v = &result->verdict;
  const lw_limit_hit *limit = lw_verdict_limit(v);
  const char *unknown = v->called_for_certain || !v->rests_on ? "" : v->rests_on[0] ? v->rests_on : "unknown";
  end_cell(out);
  add_count(out, row);
  end_cell(out);
  add_cell(out, result->given.about.place.text);
  add_number(out, (lw_number){v->height_m[LW_HEIGHT_GREATEST], true});
  add_number(out, (lw_number){limit ? limit->row->height_m : 0.0, limit != NULL});
  add_cell(out, limit ? limit->row->from.source : "");
  add_slug(out, unknown);
}

/* By likely values, where they were looked at: what the check beside `has` has, and the least of all, by
 * which the grade goes. */
static void put_grade(const lw_result *result, const governing *g, lw_text *out) {
  lw_number none = {0}, likely = g->situation ? lw_looks_has(result, g->situation, &g->check) : none;
  add_slug(out, lw_grade_slug(result->verdict.grade));
  add_number(out, result->looks.looked ? likely : none);
  put_number(out, result->looks.looked ? result->looks.likely.has : none);
}

void lw_report_row(const lw_result *result, int row, lw_text *out) {
  const lw_verdict *v = &result->verdict;
  governing g = {.situation = NULL};
  if (lw_verdict_governing(result, &g.check))
    g.situation = &result->situations.situation[v->governing_situation];
  add_cell(out, result->given.about.mark.text);
  add_cell(out, v->headline);
  add_slug(out, lw_what_slug(v->what));
  add_slug(out, lw_holds_slug(v->stands));
  add_slug(out, lw_who_slug(v->who));
  add_governing(&g, out);
  add_count(out, v->exit_status);
  add_law(result, row, out);
  put_grade(result, &g, out);
  put(out, "\n");
}

/* The first fault in words, and how many more there are. */
static void fault_words(const lw_faults *faults, char *out, size_t size) {
  const lw_fault *f = &faults->fault[0];
  char more[40] = "";
  if (faults->count > 1) lw_print(more, sizeof more, " (and %d more)", faults->count - 1);
  if (faults->count < 1) {
    lw_print(out, size, "fault: the row cannot be read");
    return;
  }
  lw_print(out, size, "fault: %s%s%s; stood: \"%s\"; wanted: %s%s", f->item, f->item[0] ? ": " : "",
           lw_fault_slug_sentence(f->slug), f->stood, f->wanted, more);
}

void lw_report_row_faults(const lw_case *c, const lw_faults *faults, int row, lw_text *out) {
  char words[CELL_MAX];
  fault_words(faults, words, sizeof words);
  add_cell(out, c->about.mark.text);
  add_cell(out, words);
  for (int i = 0; i < EMPTY_AFTER_HEADLINE; i++) put(out, ",");
  put(out, "2,");
  add_count(out, row);
  end_cell(out);
  add_cell(out, c->about.place.text);
  for (int i = 0; i < EMPTY_AFTER_PLACE; i++) put(out, ",");
  put(out, "\n");
}
