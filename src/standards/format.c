/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "format.h"

#include <assert.h>
#include <math.h>

#include "tables/find.h"

/* A factor that leaves everything as it is. */
static bool is_one(const lw_format_row *row) {
  bool one = true;
  for (int i = LW_USUAL; i <= LW_EXTREME; i++) one = one && !(fabs(row->needs[i] - 1.0) > 0.0);
  return one;
}

/* The set that begins with a row. */
static void read_set(const lw_tables *tables, int first, lw_format *set) {
  *set = (lw_format){.part = tables->format[first].taken_in};
  for (int i = first; i >= 0; i = tables->format[i].next) {
    const lw_format_row *row = &tables->format[i];
    set->any = row;
    if (row->need < LW_NEED_COUNT) set->row[row->need] = row;
    if (row->need >= LW_NEED_FRICTION && row->need < LW_NEED_DECIDES && !is_one(row)) set->has_factors = true;
  }
  lw_number decides = lw_format_value(set->row[LW_NEED_DECIDES], LW_USUAL);
  set->from_memory = decides.known && decides.value <= 0.5;
}

void lw_format_read(const lw_tables *tables, const char *name, lw_format_family *family) {
  int first = lw_tables_format_index(tables, name);
  family->count = 1;
  family->set[0] = (lw_format){0};
  if (first < 0) return;
  first = tables->format[first].set;
  read_set(tables, first, &family->set[0]);
  for (int i = first; i >= 0; i = tables->format[i].next) {
    if (tables->format[i].includes < 0) continue;
    assert(family->count < LW_SETS_MAX);
    lw_format *part = &family->set[family->count++];
    read_set(tables, tables->format[i].includes, part);
    part->part = false;
  }
}

void lw_format_read_of(const lw_tables *tables, const lw_format_row *row, lw_format *format) {
  *format = (lw_format){0};
  if (row) read_set(tables, row->set, format);
}

lw_number lw_format_value(const lw_format_row *row, lw_situation_kind kind) {
  if (!row) return (lw_number){0};
  /* A what-if is asked what an unusual situation is asked. */
  lw_situation_kind column = kind == LW_WHAT_IF ? LW_UNUSUAL : kind;
  double value = isnan(row->needs[column]) ? row->needs[LW_USUAL] : row->needs[column];
  return (lw_number){.value = value, .known = !isnan(value)};
}

double lw_format_or(const lw_format *format, lw_need need, lw_situation_kind kind, double otherwise) {
  lw_number value = lw_format_value(format->row[need], kind);
  return value.known ? value.value : otherwise;
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

void lw_format_restrain(const lw_format *format, lw_check *check) {
  bool restrained = format->from_memory || format->part;
  if (!check->counts || check->holds != LW_HOLDS || !restrained) return;
  check->holds = LW_CANNOT_SHOW;
  check->reason = format->from_memory ? LW_REASON_NOT_FOR_DECISIONS : LW_REASON_PART_OF_FORMAT;
}
