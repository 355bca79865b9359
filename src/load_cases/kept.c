/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "kept.h"

#include <assert.h>
#include <math.h>

#include "kinds.h"

/* Checks as a result keeps them. A wall of many courses has hundreds: what follows from the rest, as the
 * ratio, the unit and the factor that divides every strength, is not kept. */

static_assert(LW_REASON_COUNT <= UINT8_MAX, "a reason is a byte");
static_assert(sizeof(lw_kept_check) <= 48, "a kept check is small");

static int when(bool so, int mark) {
  return so ? mark : 0;
}

static uint8_t marks_of(const lw_check *c) {
  return (uint8_t)(when(c->demand.known, LW_KEPT_DEMAND) | when(c->resistance.known, LW_KEPT_RESISTANCE) |
                   when(c->has.known, LW_KEPT_HAS) | when(c->needs.known, LW_KEPT_NEEDS) |
                   when(c->ratio.known, LW_KEPT_RATIO) | when(c->counts, LW_KEPT_COUNTS) |
                   when(c->factored, LW_KEPT_FACTORED) | when(c->by != NULL, LW_KEPT_ASKED));
}

/* A factor that is searched on every strength is what the check has; where there is none to find, 1. */
static uint8_t loads_of(const lw_check *c) {
  const lw_load_case_name *in = &c->made_in;
  int there = when(in->people_down, LW_KEPT_PEOPLE_DOWN) | when(in->cap_load, LW_KEPT_CAP_LOAD);
  if (in->divided_by > 0.0) {
    bool found = c->has.known && fabs(c->has.value - in->divided_by) <= 1e-15 * c->has.value;
    there |= found ? LW_KEPT_BY_HAS : LW_KEPT_FULL_STRENGTH;
  }
  return (uint8_t)there;
}

void lw_check_keep(const lw_check *check, lw_kept_check *kept) {
  const lw_load_case_name *in = &check->made_in;
  assert(in->way >= 0 && in->way < 8 && in->leaning >= 0 && in->leaning < 32);
  kept->demand = check->demand.value;
  kept->resistance = check->resistance.value;
  kept->has = check->has.value;
  kept->needs = check->needs.value;
  kept->row = check->by ? check->by : in->set;
  kept->kind = (uint8_t)check->kind;
  kept->at = (uint8_t)check->at;
  kept->joint = (uint8_t)check->joint;
  kept->holds = (uint8_t)check->holds;
  kept->reason = (uint8_t)check->reason;
  kept->marks = marks_of(check);
  kept->way_and_leaning = (uint8_t)(32 * in->way + in->leaning);
  kept->loads = loads_of(check);
}

static lw_number number_of(const lw_kept_check *kept, double value, int mark) {
  return (lw_number){value, (kept->marks & mark) != 0};
}

/* Where the resultant is outside nothing is left, whatever the moments say. */
static lw_number ratio_of(const lw_kept_check *kept) {
  if (!(kept->marks & LW_KEPT_RATIO)) return (lw_number){0};
  return (lw_number){kept->reason == LW_REASON_OUTSIDE_BASE ? 0.0 : kept->has / kept->needs, true};
}

static const char *unit_of(const lw_kept_check *kept) {
  bool of_bed = kept->kind == LW_CHECK_SLIDING && kept->at == LW_AT_GROUND;
  return of_bed ? "kPa" : lw_check_about_of((lw_check_kind)kept->kind)->unit;
}

static lw_load_case_name made_in(const lw_kept_check *kept) {
  bool full = (kept->loads & LW_KEPT_FULL_STRENGTH) != 0, by_has = (kept->loads & LW_KEPT_BY_HAS) != 0;
  return (lw_load_case_name){.set = kept->row,
                             .way = (signed char)(kept->way_and_leaning / 32),
                             .leaning = (signed char)(kept->way_and_leaning % 32),
                             .people_down = (kept->loads & LW_KEPT_PEOPLE_DOWN) != 0,
                             .cap_load = (kept->loads & LW_KEPT_CAP_LOAD) != 0,
                             .divided_by = by_has ? kept->has
                                           : full ? 1.0
                                                  : 0.0};
}

static lw_check whole(const lw_kept_check *kept) {
  return (lw_check){.kind = (lw_check_kind)kept->kind,
                    .at = (lw_at)kept->at,
                    .joint = kept->joint,
                    .demand = number_of(kept, kept->demand, LW_KEPT_DEMAND),
                    .resistance = number_of(kept, kept->resistance, LW_KEPT_RESISTANCE),
                    .has = number_of(kept, kept->has, LW_KEPT_HAS),
                    .needs = number_of(kept, kept->needs, LW_KEPT_NEEDS),
                    .ratio = ratio_of(kept),
                    .unit = unit_of(kept),
                    .holds = (lw_holds)kept->holds,
                    .reason = (lw_reason)kept->reason,
                    .counts = (kept->marks & LW_KEPT_COUNTS) != 0,
                    .factored = (kept->marks & LW_KEPT_FACTORED) != 0,
                    .by = kept->marks & LW_KEPT_ASKED ? kept->row : NULL,
                    .made_in = made_in(kept)};
}

void lw_situation_keep(lw_situation *situation, const lw_check *check) {
  assert(situation->check_count < LW_CHECK_MAX);
  lw_check_keep(check, &situation->kept[situation->check_count++]);
}

lw_check lw_situation_check(const lw_situation *situation, int number) {
  return whole(&situation->kept[number]);
}
