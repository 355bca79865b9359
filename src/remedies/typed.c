/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "typed.h"

#include <stdarg.h>
#include <string.h>

#include "base/amount.h"
#include "base/print.h"
#include "sheet/entry.h"

static bool is_of(const char *typed, const char *item) {
  size_t length = strlen(item);
  return strncmp(typed, item, length) == 0 && typed[length] == '=';
}

bool lw_typed_put(lw_typed *typed, const char *item, const char *format, ...) {
  int at = 0;
  while (at < typed->count && !is_of(typed->item[at], item)) at++;
  if (at >= LW_TYPED_MAX) return false;
  if (at == typed->count) typed->count++;
  char value[LW_TYPED_BYTES];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(value, sizeof value, format, arguments);
  va_end(arguments);
  lw_print(typed->item[at], LW_TYPED_BYTES, "%s=%s", item, value);
  return true;
}

bool lw_typed_put_mm(lw_typed *typed, const char *item, double metres) {
  if (typed->units == LW_UNITS_US) return lw_typed_put(typed, item, "%.9g in", metres / LW_INCH_M);
  return lw_typed_put(typed, item, "%.6g mm", metres * 1000.0);
}

bool lw_typed_put_amount(lw_typed *typed, const char *item, lw_kind kind, double si) {
  const char *unit = lw_units_name(typed->units, kind);
  bool us = lw_units_differ(typed->units, kind);
  return lw_typed_put(typed, item, us ? "%.9g %s" : "%.6g %s", lw_in_units(typed->units, kind, si), unit);
}

bool lw_typed_forget_part(lw_typed *typed, lw_item_part part, int number, const lw_case *c) {
  lw_case looked_at = *c; /* the items point into a case that may be changed */
  bool room = true;
  for (size_t i = 0; i < lw_item_count() && room; i++) {
    const lw_item *item = lw_item_at(i);
    char name[LW_ITEM_NAME_MAX];
    int row;
    if (item->part != part || !lw_entry_given(item, number, &looked_at, &row)) continue;
    lw_item_print_name(item, number, name, sizeof name);
    room = lw_typed_put(typed, name, "%s", "unknown");
  }
  return room;
}

/* What was typed before is gone first: twice on one command line would be a fault. */
bool lw_typed_enter(const lw_typed *typed, lw_case *c) {
  lw_faults faults = {.count = 0};
  for (int i = 0; i < typed->count; i++) {
    const char *text = typed->item[i];
    int number = 0;
    const lw_item *item = lw_item_find(text, strcspn(text, "="), &number);
    if (!item) return false;
    lw_entry_forget(item, number, c);
    if (lw_sheet_override(text, i + 1, c, &faults) != LW_OK) return false;
  }
  return true;
}
