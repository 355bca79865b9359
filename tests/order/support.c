/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char block_wall[] =
    "item,value\nblock height,200 mm\nblock depth,200 mm\nblock length,400 mm\ncourse count,3\n"
    "wall embedment,100 mm\nblock unit weight,21 kN/m3\n";

static const char solid_wall[] =
    "item,value\nwall kind,section\nwall height,1000 mm\nwall embedment,200 mm\nwall unit weight,18 kN/m3\n";

static lw_order order;
static lw_result result;
static lw_faults faults;

const lw_tables *order_tables(void) {
  static lw_tables *tables;
  lw_error error = {0};
  if (tables) return tables;
  tables = calloc(1, sizeof *tables);
  cr_assert_not_null(tables);
  cr_assert_eq(lw_tables_read(NULL, tables, &error), LW_OK, "%s", error.text);
  return tables;
}

static void take(const char *items, lw_case *c) {
  char argument[160];
  for (int number = 1; items[0] != '\0'; number++) {
    size_t length = strcspn(items, ";");
    snprintf(argument, sizeof argument, "%.*s", (int)length, items);
    lw_sheet_override(argument, number, c, &faults);
    items += length + (items[length] == ';' ? 1 : 0);
  }
}

static lw_status make_from(const char *sheet, size_t length, const char *items) {
  static lw_case c;
  lw_error error = {0};
  faults.count = 0;
  c = (lw_case){0};
  lw_sheet_read(sheet, length, &c, &faults);
  take(items, &c);
  if (faults.count > 0) return LW_FAULTS;
  if (lw_case_complete(order_tables(), &c, &faults) != LW_OK) return LW_FAULTS;
  if (lw_case_complete_order(order_tables(), &c, &faults) != LW_OK) return LW_FAULTS;
  cr_assert_eq(lw_run(&c, order_tables(), LW_DETAIL_EVERYTHING, &result, &error), LW_OK, "%s: %s", items,
               error.text);
  lw_plan_fault fault;
  lw_status status = lw_order_make(&result, &order, &fault);
  if (status != LW_OK) lw_report_plan_fault(&result.given.order, &fault, &faults);
  return status;
}

static lw_status make(const char *items) {
  return make_from(block_wall, sizeof block_wall - 1, items);
}

const lw_order *order_of_solid(const char *items) {
  lw_status status = make_from(solid_wall, sizeof solid_wall - 1, items);
  cr_assert_eq(status, LW_OK, "%s: %s: %s", items, faults.fault[0].item, faults.fault[0].wanted);
  return &order;
}

const lw_order *order_of(const char *items) {
  cr_assert_eq(make(items), LW_OK, "%s: %s: %s", items, faults.fault[0].item, faults.fault[0].wanted);
  return &order;
}

const lw_order *order_try(const char *items) {
  return make(items) == LW_OK ? &order : NULL;
}

const lw_result *order_result(void) {
  return &result;
}

const lw_faults *order_faults(const char *items) {
  cr_assert_eq(make(items), LW_FAULTS, "%s", items);
  cr_assert(faults.count > 0);
  return &faults;
}

const lw_order_line *order_line(const lw_order *o, const char *slug) {
  for (int i = 0; i < o->line_count; i++)
    if (strcmp(lw_order_line_slug(o->line[i].kind), slug) == 0) return &o->line[i];
  return NULL;
}

const lw_order_note *order_note(const lw_order *o, const char *slug) {
  for (int i = 0; i < o->note_count; i++)
    if (strcmp(lw_order_note_slug(o->note[i].kind), slug) == 0) return &o->note[i];
  return NULL;
}

order_pieces order_all(const lw_order *o) {
  order_pieces all = {0};
  for (int i = 0; i < o->plan.courses; i++) {
    const lw_course_count *c = &o->course[i];
    all.whole += c->whole;
    all.half += c->half;
    all.closer += c->closer;
    all.left += c->left;
    all.right += c->right;
    all.mitred += c->mitred;
  }
  return all;
}

double order_random(double low, double high) {
  static unsigned long state = 20251;
  state = (state * 1103515245UL + 12345UL) & 0x7fffffffUL;
  return low + (high - low) * (double)state / 2147483648.0;
}
