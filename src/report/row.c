/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <math.h>
#include <string.h>

/* A schedule's results, a row a wall. Printing costs more than checking: only a fault goes through printf. */

enum { DECIMALS = 3, CELL_MAX = 1024, EMPTY_AFTER_HEADLINE = 9 };

static void put(lw_text *out, const char *words) {
  lw_text_add_bytes(out, words, strlen(words));
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

/* A cell and the comma after it. Control characters and what is not UTF-8 become `?` before. */
static void add_cell(lw_text *out, const char *words) {
  char cell[CELL_MAX];
  lw_text_clean(words, cell, sizeof cell);
  size_t length = strlen(cell);
  bool blank_at_an_end = length > 0 && (cell[0] == ' ' || cell[length - 1] == ' ');
  if (blank_at_an_end || strpbrk(cell, ",\"") != NULL)
    put_quoted(out, cell);
  else
    lw_text_add_bytes(out, cell, length);
  put(out, ",");
}

/* Our own words never need quotes. */
static void add_slug(lw_text *out, const char *slug) {
  put(out, slug);
  put(out, ",");
}

static void add_number(lw_text *out, lw_number number) {
  char digits[400];
  if (number.known && isfinite(number.value)) {
    lw_text_add_bytes(out, digits, lw_number_print(digits, sizeof digits, number.value, DECIMALS));
  }
  put(out, ",");
}

static void add_governing(const lw_result *result, lw_text *out) {
  const lw_situation *situation = NULL;
  const lw_check *check = lw_result_governing(result, &situation);
  if (!check) {
    put(out, ",,,,,,");
    return;
  }
  char at[24];
  lw_check_print_at(check, at, sizeof at);
  add_slug(out, lw_situation_slug(situation->name));
  add_slug(out, lw_check_slug(check->kind));
  add_slug(out, at);
  add_number(out, check->has);
  add_number(out, check->needs);
  add_number(out, check->ratio);
}

void lw_report_row_header(lw_text *out) {
  put(out, "mark,headline,what,stands,who,governing situation,check,at,has,needs,ratio,exit\n");
}

void lw_report_row(const lw_result *result, lw_text *out) {
  const lw_verdict *v = &result->verdict;
  char status[16];
  add_cell(out, result->given.mark.text);
  add_cell(out, v->headline);
  add_slug(out, lw_what_slug(v->what));
  add_slug(out, lw_holds_slug(v->stands));
  add_slug(out, lw_who_slug(v->who));
  add_governing(result, out);
  lw_text_add_bytes(out, status, lw_number_print(status, sizeof status, v->exit_status, 0));
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

void lw_report_row_faults(const lw_case *c, const lw_faults *faults, lw_text *out) {
  char words[CELL_MAX];
  fault_words(faults, words, sizeof words);
  add_cell(out, c->mark.text);
  add_cell(out, words);
  for (int i = 0; i < EMPTY_AFTER_HEADLINE; i++) put(out, ",");
  put(out, "2\n");
}
