/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "base/utf8.h"
#include "cells.h"
#include "entry.h"
#include "faults.h"

/* The value behind the `=`, without the blanks around it; false when it does not fit. */
static bool copy_value(const char *value, char *out, size_t size, size_t *length) {
  value += strspn(value, " \t");
  size_t used = strlen(value);
  while (used > 0 && (value[used - 1] == ' ' || value[used - 1] == '\t')) {
    used--;
  }
  if (used >= size) {
    return false;
  }
  memcpy(out, value, used);
  out[used] = '\0';
  lw_utf8_tame(out);
  *length = strlen(out);
  return true;
}

/* The item in front of the `=`; false after noting a fault. */
static bool find_item(const char *argument, int number, lw_named *named, lw_faults *faults) {
  const char *equals = strchr(argument, '=');
  if (equals == NULL) {
    lw_faults_add(faults, LW_FAULT_NO_VALUE, (lw_cell_place){0, number}, "", argument,
                  "item=value, as in 'wall height=900 mm'");
    return false;
  }
  return lw_entry_item(argument, (size_t)(equals - argument), (lw_cell_place){0, number}, named, faults);
}

lw_status lw_sheet_override(const char *argument, int number, lw_case *c, lw_faults *faults) {
  int before = faults->count;
  int earlier;
  lw_named named;
  char value[LW_CELL_MAX + 1];
  lw_entry entry = {.value = value, .column = number};
  if (!find_item(argument, number, &named, faults)) {
    return LW_FAULTS;
  }
  entry.item = named.item;
  entry.number = named.number;
  entry.likely = named.likely;
  if (lw_named_given(&named, c, &earlier) && earlier == 0) {
    lw_faults_add(faults, LW_FAULT_DUPLICATE_ITEM, (lw_cell_place){0, number}, "", argument,
                  "the item once on the command line");
    return LW_FAULTS;
  }
  if (!copy_value(strchr(argument, '=') + 1, value, sizeof value, &entry.length)) {
    lw_faults_add(faults, LW_FAULT_CELL_TOO_LONG, (lw_cell_place){0, number}, entry.item->name, "",
                  "at most %d bytes", LW_CELL_MAX);
    return LW_FAULTS;
  }
  lw_case changed = *c;
  lw_named_forget(&named, &changed);
  changed.complete = false;
  lw_entry_store(&entry, &changed, faults);
  if (lw_faults_more(faults, before)) return LW_FAULTS;
  *c = changed;
  return LW_OK;
}
