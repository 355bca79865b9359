/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "format.h"

#include <math.h>
#include <string.h>

static const char *const QUANTITY[LW_NEED_COUNT] = {
#define LW_NEED_NAME(name, quantity) [LW_NEED_##name] = quantity,
    LW_NEEDS(LW_NEED_NAME)
#undef LW_NEED_NAME
};

/* A row "includes-NAME" takes the set NAME in. */
static const char INCLUDES[] = "includes-";

static const char *included(const lw_format_row *row) {
  bool includes = strncmp(row->quantity, INCLUDES, sizeof INCLUDES - 1) == 0;
  return includes ? row->quantity + sizeof INCLUDES - 1 : NULL;
}

static void take_row(const lw_format_row *row, lw_format *set) {
  set->any = row;
  for (int i = 0; i < LW_NEED_COUNT; i++)
    if (row->quantity[0] == QUANTITY[i][0] && strcmp(row->quantity, QUANTITY[i]) == 0) set->row[i] = row;
}

static void read_set(const lw_tables *tables, const char *slug, lw_format *set) {
  *set = (lw_format){0};
  for (int i = 0; i < tables->format_count; i++) {
    const lw_format_row *row = &tables->format[i];
    const char *part = included(row);
    if (strcmp(row->format, slug) == 0) take_row(row, set);
    if (part && strcmp(part, slug) == 0) set->part = true;
  }
}

/* The name as the table writes it. */
static const char *slug_of(const lw_tables *tables, const char *name) {
  int i = lw_tables_format_index(tables, name);
  return i < 0 ? name : tables->format[i].format;
}

void lw_format_read(const lw_tables *tables, const char *name, lw_format_family *family) {
  const char *slug = slug_of(tables, name);
  family->count = 1;
  read_set(tables, slug, &family->set[0]);
  for (int i = 0; i < tables->format_count && family->count < LW_SETS_MAX; i++) {
    const lw_format_row *row = &tables->format[i];
    const char *part = included(row);
    if (!part || strcmp(row->format, slug) != 0) continue;
    lw_format *set = &family->set[family->count++];
    read_set(tables, part, set);
    set->part = false;
  }
}

void lw_format_read_of(const lw_tables *tables, const lw_format_row *row, lw_format *format) {
  read_set(tables, row ? row->format : "", format);
}

lw_number lw_format_value(const lw_format_row *row, lw_situation_kind kind) {
  if (!row) return (lw_number){0};
  /* A what-if is asked what an unusual situation is asked. */
  lw_situation_kind column = kind == LW_WHAT_IF ? LW_UNUSUAL : kind;
  double value = isnan(row->needs[column]) ? row->needs[LW_USUAL] : row->needs[column];
  return (lw_number){.value = value, .known = !isnan(value)};
}

bool lw_format_asks(const lw_format *format) {
  for (int i = 0; i < LW_NEED_PASSIVE_AS; i++)
    if (format->row[i]) return true;
  return false;
}

bool lw_format_passive_off_push(const lw_format *format, const lw_method *method) {
  if (method->passive_as_given) return method->passive_as == LW_PASSIVE_OFF_PUSH;
  lw_number as = lw_format_value(format->row[LW_NEED_PASSIVE_AS], LW_USUAL);
  return as.known && as.value > 0.5;
}

bool lw_format_decides(const lw_format *format) {
  lw_number decides = lw_format_value(format->row[LW_NEED_DECIDES], LW_USUAL);
  return !decides.known || decides.value > 0.5;
}

void lw_format_restrain(const lw_format *format, lw_check *check) {
  bool from_memory = !lw_format_decides(format);
  if (!check->counts || check->holds != LW_HOLDS || (!from_memory && !format->part)) return;
  check->holds = LW_CANNOT_SHOW;
  check->reason = from_memory ? LW_REASON_NOT_FOR_DECISIONS : LW_REASON_PART_OF_FORMAT;
}
