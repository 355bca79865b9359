/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "factor_set.h"

#include <assert.h>
#include <math.h>

#include "tables/find.h"

/* A factor that leaves everything as it is. */
static bool is_one(const lw_factor_row *row) {
  bool one = true;
  for (int i = LW_USUAL; i <= LW_EXTREME; i++) one = one && !(fabs(row->needs[i] - 1.0) > 0.0);
  return one;
}

/* The set that begins with a row. */
static void read_set(const lw_tables *tables, int first, lw_factor_set *set) {
  *set = (lw_factor_set){.part = tables->factor[first].taken_in};
  for (int i = first; i >= 0; i = tables->factor[i].next) {
    const lw_factor_row *row = &tables->factor[i];
    set->any = row;
    if (row->need < LW_FACTOR_COUNT) set->row[row->need] = row;
    if (row->need >= LW_FACTOR_FRICTION && row->need < LW_FACTOR_DECIDES && !is_one(row))
      set->has_factors = true;
  }
  lw_number decides = lw_factor_value(set->row[LW_FACTOR_DECIDES], LW_USUAL);
  set->not_for_decisions = decides.known && decides.value <= 0.5;
}

void lw_factor_set_read(const lw_tables *tables, const char *name, lw_factor_set_family *family) {
  int first = lw_tables_factor_set(tables, name);
  family->count = 1;
  family->set[0] = (lw_factor_set){0};
  if (first < 0) return;
  first = tables->factor[first].set;
  read_set(tables, first, &family->set[0]);
  for (int i = first; i >= 0; i = tables->factor[i].next) {
    if (tables->factor[i].includes < 0) continue;
    assert(family->count < LW_SETS_MAX);
    lw_factor_set *part = &family->set[family->count++];
    read_set(tables, tables->factor[i].includes, part);
    part->part = false;
  }
}

void lw_factor_set_read_of(const lw_tables *tables, const lw_factor_row *row, lw_factor_set *factor_set) {
  *factor_set = (lw_factor_set){0};
  if (row) read_set(tables, row->set, factor_set);
}

lw_number lw_factor_value(const lw_factor_row *row, lw_situation_kind kind) {
  if (!row) return (lw_number){0};
  /* A what-if is asked what an unusual situation is asked. */
  lw_situation_kind column = kind == LW_WHAT_IF ? LW_UNUSUAL : kind;
  double value = isnan(row->needs[column]) ? row->needs[LW_USUAL] : row->needs[column];
  return (lw_number){.value = value, .known = !isnan(value)};
}

const lw_factor_row *lw_factor_set_row(const lw_factor_set *factor_set, lw_factor need, lw_factor doubted,
                                       lw_doubt doubt, lw_situation_kind kind) {
  const lw_factor_row *usual = factor_set->row[need], *doubtful = factor_set->row[doubted];
  if (doubt == LW_DOUBT_NONE || !doubtful) return usual;
  lw_number more = lw_factor_value(doubtful, kind), asked = lw_factor_value(usual, kind);
  return more.known && (!asked.known || more.value > asked.value) ? doubtful : usual;
}

double lw_factor_set_or(const lw_factor_set *factor_set, lw_factor need, lw_situation_kind kind,
                        double otherwise) {
  lw_number value = lw_factor_value(factor_set->row[need], kind);
  return value.known ? value.value : otherwise;
}

bool lw_factor_set_asks(const lw_factor_set *factor_set) {
  for (int i = 0; i < LW_FACTOR_PASSIVE_AS; i++)
    if (factor_set->row[i]) return true;
  return false;
}

bool lw_factor_set_passive_off_push(const lw_factor_set *factor_set, const lw_method *method) {
  if (method->passive_as_given) return method->passive_as == LW_PASSIVE_OFF_PUSH;
  lw_number as = lw_factor_value(factor_set->row[LW_FACTOR_PASSIVE_AS], LW_USUAL);
  return as.known && as.value > 0.5;
}

/* Why it must not decide stands in its own row: nobody read its numbers, or they are somebody's proposal. */
static lw_reason why_restrained(const lw_factor_set *factor_set) {
  if (!factor_set->not_for_decisions) return LW_REASON_PART_OF_FACTOR_SET;
  bool proposed = factor_set->row[LW_FACTOR_DECIDES]->from.seen == LW_PROPOSAL;
  return proposed ? LW_REASON_PROPOSED_FACTORS : LW_REASON_NOT_FOR_DECISIONS;
}

void lw_factor_set_restrain(const lw_factor_set *factor_set, lw_check *check) {
  bool restrained = factor_set->not_for_decisions || factor_set->part;
  if (!check->counts || check->holds != LW_HOLDS || !restrained) return;
  check->holds = LW_CANNOT_SHOW;
  check->reason = why_restrained(factor_set);
}
