/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <string.h>

/* A schedule's results, a row a wall. */

static void add_cell(lw_text *out, const char *cell) {
  if (strpbrk(cell, ",\"\r\n") == NULL) {
    lw_text_add(out, cell);
    return;
  }
  lw_text_add(out, "\"");
  for (const char *at = cell; *at;) {
    size_t length = strcspn(at, "\"");
    lw_text_add_bytes(out, at, length);
    at += length;
    if (*at == '"') {
      lw_text_add(out, "\"\"");
      at++;
    }
  }
  lw_text_add(out, "\"");
}

static void add_words(lw_text *out, const char *words) {
  char clean[LW_WORDS_MAX + 1];
  lw_text_clean(words, clean, sizeof clean);
  add_cell(out, clean);
  lw_text_add(out, ",");
}

static void add_number(lw_text *out, lw_number number) {
  char digits[40];
  if (number.known) {
    lw_print(digits, sizeof digits, "%.6g", number.value);
    lw_text_add(out, digits);
  }
  lw_text_add(out, ",");
}

static void add_governing(const lw_result *result, lw_text *out) {
  const lw_situation *situation = NULL;
  const lw_check *check = lw_result_governing(result, &situation);
  if (!check) {
    lw_text_add(out, ",,,,,,");
    return;
  }
  char at[24];
  lw_check_print_at(check, at, sizeof at);
  lw_text_addf(out, "%s,%s,%s,", lw_situation_slug(situation->name), lw_check_slug(check->kind), at);
  add_number(out, check->has);
  add_number(out, check->needs);
  add_number(out, check->ratio);
}

void lw_report_row_header(lw_text *out) {
  lw_text_add(out, "mark,headline,what,stands,who,situation,check,at,has,needs,ratio,exit\n");
}

void lw_report_row(const lw_result *result, lw_text *out) {
  const lw_verdict *v = &result->verdict;
  add_words(out, result->given.mark.text);
  add_cell(out, v->headline);
  lw_text_addf(out, ",%s,%s,%s,", lw_what_slug(v->what), lw_holds_slug(v->stands), lw_who_slug(v->who));
  add_governing(result, out);
  lw_text_addf(out, "%d\n", v->exit_status);
}

void lw_report_row_faults(const lw_case *c, const lw_faults *faults, lw_text *out) {
  char text[512] = "faults in this row", more[48] = "";
  if (faults->count > 1) lw_print(more, sizeof more, " (and %d more)", faults->count - 1);
  if (faults->count > 0) {
    const lw_fault *f = &faults->fault[0];
    lw_print(text, sizeof text, "%s: %s%s%s; stood: \"%s\"; wanted: %s%s", lw_fault_slug_name(f->slug), f->item,
             f->item[0] ? ": " : "", lw_fault_slug_sentence(f->slug), f->stood, f->wanted, more);
  }
  add_words(out, c->mark.text);
  add_cell(out, text);
  lw_text_add(out, ",,,,,,,,,,2\n");
}
