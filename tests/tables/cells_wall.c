/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cells.h"

#include <criterion/criterion.h>
#include <lowwall/order.h>
#include <lowwall/report.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* The same item stands there once more, further on. */
static bool is_outdone(const char *item, const char *rest) {
  char name[96];
  snprintf(name, sizeof name, ";%.*s=", (int)strcspn(item, "="), item);
  return strstr(rest, name) != NULL;
}

/* Of an item that stands there twice the last counts. */
static void give(const char *items, lw_case *c, lw_faults *faults) {
  char item[160];
  for (int number = 1; items[0] != '\0'; number++) {
    size_t length = strcspn(items, ";");
    snprintf(item, sizeof item, "%.*s", (int)length, items);
    if (length > 0 && !is_outdone(item, items + length))
      cr_assert_eq(lw_sheet_override(item, number, c, faults), LW_OK, "%s: %s", item,
                   faults->fault[0].wanted);
    items += length + (items[length] == ';' ? 1 : 0);
  }
}

static void show_number(const lw_number *number, lw_text *out) {
  lw_text_addf(out, " %d %.9g", number->known, number->known ? number->value : 0.0);
}

static void show_checks(const lw_result *r, lw_text *out) {
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    lw_text_addf(out, "%d %d %d\n", (int)s->name, (int)s->kind, s->decides);
    for (int k = 0; k < s->check_count; k++) {
      const lw_check whole = lw_situation_check(s, k), *check = &whole;
      lw_text_addf(out, "  %d %d %d %d %d", (int)check->kind, (int)check->at, check->joint, (int)check->holds,
                   check->counts);
      show_number(&check->demand, out);
      show_number(&check->resistance, out);
      show_number(&check->has, out);
      show_number(&check->needs, out);
      lw_text_add(out, "\n");
    }
  }
}

static void show_verdict(const lw_result *r, lw_text *out) {
  const lw_verdict *v = &r->verdict;
  lw_text_addf(out, "%d %d %d %d\n%s\n", (int)v->what, (int)v->stands, (int)v->who, v->exit_status,
               v->headline);
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *reason = &v->reasons.reason[i];
    lw_text_addf(out, "%d %d %d %s %s\n", (int)reason->answer, (int)reason->who, reason->assumed,
                 reason->source, reason->text);
  }
  for (int i = 0; i < v->limit_count; i++) {
    const lw_limit_hit *hit = &v->limit[i];
    lw_text_addf(out, "%s %.9g %d %d %d\n", hit->row->id, hit->height_m, hit->past, hit->clears, hit->kept);
  }
  for (int i = 0; i < v->reasons.caution_count; i++)
    lw_text_addf(out, "%s %s\n", v->reasons.caution[i]->id, v->reasons.caution[i]->caution);
}

static void show_order(const lw_result *r, lw_text *out) {
  static lw_order *order;
  lw_faults faults = {.count = 0};
  lw_plan_fault fault;
  const lw_text_style style = {0};
  if (!order) order = calloc(1, sizeof *order);
  cr_assert_not_null(order);
  if (lw_order_make(r, order, &fault) != LW_OK) {
    lw_report_plan_fault(&r->given.order, &fault, &faults);
    lw_text_addf(out, "%s\n", faults.fault[0].wanted);
    return;
  }
  lw_report_order_text(r, order, LW_PAGE_ORDER, &style, out);
  lw_report_order_text(r, order, LW_PAGE_PEGS, &style, out);
}

static void show(lw_result *r, unsigned shown, lw_text *out) {
  static lw_result *scratch;
  const lw_text_style style = {0};
  if (!scratch) scratch = calloc(1, sizeof *scratch);
  cr_assert_not_null(scratch);
  if (shown & CELLS_REMEDIES) lw_remedies_find(r, scratch);
  if (shown & CELLS_CHECKS) show_checks(r, out);
  if (shown & CELLS_VERDICT) show_verdict(r, out);
  if (shown & CELLS_TEXT) lw_report_text(r, &style, out);
  if (shown & CELLS_JSON) lw_report_json(r, 0, out);
  if (shown & CELLS_ORDER) show_order(r, out);
}

static void show_likely(const lw_tables *tables, const lw_case *given, lw_result *result, lw_text *out) {
  lw_case c = *given;
  lw_error error = {0};
  c.look = LW_LOOK_LIKELY;
  c.complete = false;
  if (lw_run(&c, tables, LW_DETAIL_CHECKS, result, &error) == LW_OK)
    show_checks(result, out);
  else
    lw_text_addf(out, "%s\n", error.text);
}

void cells_wall(const lw_tables *tables, const char *items, unsigned shown, lw_text *out) {
  static lw_result *result;
  static lw_faults faults;
  lw_case c = {0};
  if (!result) result = calloc(1, sizeof *result);
  cr_assert_not_null(result);
  faults.count = 0;
  give(items, &c, &faults);
  lw_status status = lw_case_complete(tables, &c, &faults);
  if (status == LW_OK && (shown & CELLS_ORDER)) status = lw_case_complete_order(tables, &c, &faults);
  for (int i = 0; i < faults.count; i++)
    lw_text_addf(out, "%s: %s\n", faults.fault[i].item, faults.fault[i].wanted);
  if (status != LW_OK) return;
  if (shown & CELLS_LIKELY) show_likely(tables, &c, result, out);
  if (shown == CELLS_LIKELY) return;
  lw_error error = {0};
  status = lw_run(&c, tables, LW_DETAIL_EVERYTHING, result, &error);
  if (status == LW_OK)
    show(result, shown, out);
  else
    lw_text_addf(out, "%s\n", error.text);
}
