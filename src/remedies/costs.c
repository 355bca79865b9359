/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "costs.h"

#include <math.h>
#include <string.h>

#include "base/amount.h"
#include "load_cases/least.h"
#include "run/looks.h"
#include "sheet/entry.h"
#include "trial.h"

/* What each caution costs: the likely value of one quantity alone, all others cautious; and the favourable
 * answer of a choice by which the sums take strength away. */

static const double WORTH_SAYING = 0.005;

/* Neither depends on the other look's way of finding it: what a completing made of the items is compared. */
static bool differs(const lw_quantity *a, const lw_quantity *b) {
  if (a->origin == LW_ABSENT || b->origin == LW_ABSENT) return false;
  return a->kind != b->kind || fabs(a->si - b->si) > 1e-9 * fmax(fabs(a->si), fabs(b->si));
}

static void say(const lw_item *item, const lw_quantity *q, lw_units units, char *out, size_t size) {
  const lw_unit *unit = lw_unit_find(item->kind, item->unit, strlen(item->unit));
  if (lw_units_differ(units, q->kind))
    lw_print(out, size, "%s", lw_value_of(units, q->kind, q->si).text);
  else if (q->kind == LW_KIND_SHARE)
    lw_print(out, size, "%.2g of the soil's angle", q->si);
  else if (q->kind != item->kind && item->kind != LW_KIND_ANGLE_OR_SHARE)
    lw_print(out, size, "%.4g %s", q->si, lw_kind_unit(q->kind));
  else if (q->kind == LW_KIND_ANGLE)
    lw_print(out, size, "%.4g deg", q->si * LW_DEG_PER_RAD);
  else
    lw_print(out, size, "%.4g%s%s", unit ? q->si / unit->to_si : q->si, item->unit[0] ? " " : "", item->unit);
}

static double ratio_of(const lw_result *result) {
  lw_number ratio = lw_trial_ratio(result);
  return ratio.known ? ratio.value : 0.0;
}

static double least_of(const lw_number *least) {
  return least->known ? least->value : 0.0;
}

static const double SAME = 1e-9;

static bool greater(const lw_cost_gain *a, const lw_cost_gain *b) {
  if (fabs(a->first - b->first) > SAME) return a->first > b->first;
  return a->second > b->second;
}

bool lw_costs_in_times(const lw_result *result) {
  lw_number had = lw_situations_least(&result->situations).has;
  return result->verdict.falls == LW_SHORT_MOVES && had.known && had.value < 1.0;
}

static lw_cost_gain gain_of(const lw_result *now, const lw_result *then, const lw_cost *cost) {
  lw_number had = lw_situations_least(&now->situations).has;
  double least = least_of(&cost->least) - least_of(&had), ratio = ratio_of(then) - ratio_of(now);
  /* What governs then cannot be shown: that is no loss of what fell short before. */
  if (!lw_trial_ratio(then).known) ratio = 0.0;
  return lw_costs_in_times(now) ? (lw_cost_gain){least, ratio} : (lw_cost_gain){ratio, least};
}

/* Sorted; the least gain falls off a full list. */
static void insert(lw_result *result, lw_cost_gain *gains, const lw_cost *cost, const lw_cost_gain *gain) {
  int at = result->cost_count;
  while (at > 0 && greater(gain, &gains[at - 1])) at--;
  if (at >= LW_COST_MAX) return;
  int last = result->cost_count < LW_COST_MAX ? result->cost_count++ : LW_COST_MAX - 1;
  for (int i = last; i > at; i--) {
    result->cost[i] = result->cost[i - 1];
    gains[i] = gains[i - 1];
  }
  result->cost[at] = *cost;
  gains[at] = *gain;
}

static void note_check(const lw_result *then, lw_cost *cost) {
  lw_check check;
  cost->least = lw_situations_least(&then->situations).has; /* of a run to the verdict that holds, too */
  if (!lw_verdict_governing(then, &check)) return;
  cost->has = check.has;
  cost->ratio = check.ratio;
  cost->situation = then->situations.situation[then->verdict.governing_situation].name;
  cost->kind = check.kind;
  cost->at = check.at;
  cost->joint = check.joint;
}

static bool is_worse(const lw_cost_gain *gain) {
  return gain->first < -SAME || (gain->first < SAME && gain->second < -SAME);
}

/* A quantity that the sheet gives both values of is told of even where the likely one is the worse. */
static bool worth_saying(const lw_cost_gain *gain, bool given) {
  bool better = gain->first > WORTH_SAYING || (gain->first > -SAME && gain->second > WORTH_SAYING);
  return better || (given && is_worse(gain));
}

/* Run the case of scratch, with one value exchanged, and keep what it shows. */
static void try(lw_cost *cost, bool given, lw_result *result, lw_result *scratch, lw_cost_gain *gains) {
  if (lw_run(&scratch->given, result->tables, LW_DETAIL_VERDICT, scratch, NULL) != LW_OK) return;
  note_check(scratch, cost);
  lw_cost_gain gain = gain_of(result, scratch, cost);
  cost->worse = is_worse(&gain);
  if (worth_saying(&gain, given)) insert(result, gains, cost, &gain);
}

static const char *question_of(const char *name) {
  int number;
  const lw_item *item = lw_item_find(name, strlen(name), &number);
  return item ? item->question : "";
}

/* Of the load that stands for the use of the ground, that use is asked for. */
static const char *question(const lw_item *item, const lw_quantity *q, const lw_case *c) {
  bool by_use = q == &c->load[0].pressure && q->origin != LW_GIVEN && c->ground.bed_use.origin != LW_GIVEN;
  return by_use ? question_of("bed use") : item->question;
}

/* gives whether the wall was run */
static bool try_quantity(lw_costs_search *search, lw_result *result, lw_result *scratch) {
  const lw_item *item = search->item;
  int number = search->number;
  lw_case *c = &scratch->given;
  *c = result->given;
  lw_quantity *q = lw_item_quantity(item, number, c);
  const lw_quantity *other = lw_item_quantity(item, number, &search->likely);
  lw_cost cost = {.question = question(item, q, c)};
  if (!differs(q, other)) return false;
  lw_item_print_name(item, number, cost.item, sizeof cost.item);
  say(item, q, result->units, cost.cautious, sizeof cost.cautious);
  say(item, other, result->units, cost.likely, sizeof cost.likely);
  *q = *other;
  try(&cost, lw_item_likely(item, number, &result->given) != NULL, result, scratch, search->gain);
  return true;
}

/* Clay keeps its cohesion where it is told not to crack. gives whether the wall was run */
static bool try_still_clay(lw_costs_search *search, lw_result *result, lw_result *scratch) {
  lw_faults faults = {.count = 0};
  lw_cost cost = {
      .item = "reactive soil", .question = question_of("reactive soil"), .cautious = "yes", .likely = "no"};
  if (result->given.site.reactive_soil.origin == LW_GIVEN) return false;
  scratch->given = result->given;
  if (lw_sheet_override("reactive soil=no", 1, &scratch->given, &faults) != LW_OK) return false;
  try(&cost, false, result, scratch, search->gain);
  return true;
}

static void next_item(lw_costs_search *search) {
  do {
    search->item = lw_item_next(&search->walk);
  } while (search->item && (search->item->type != LW_ITEM_QUANTITY || lw_item_is_of_order(search->item)));
  search->number = search->item && search->item->repeats > 0 ? 1 : 0;
}

void lw_costs_begin(lw_costs_search *search, lw_result *result) {
  search->likely = result->given;
  search->walk = (lw_item_walk){0};
  search->item = NULL;
  result->cost_count = 0;
  bool none = result->given.look == LW_LOOK_LIKELY || !result->wall.section.known ||
              !lw_looks_complete(&search->likely, LW_LOOK_LIKELY, result->tables);
  search->clay_tried = none;
  if (!none) next_item(search);
}

bool lw_costs_next(lw_costs_search *search, lw_result *result, lw_result *scratch, bool *tried) {
  *tried = false;
  if (!search->item && search->clay_tried) return false;
  if (search->item) {
    *tried = try_quantity(search, result, scratch);
    if (search->number++ >= search->item->repeats) next_item(search);
    return true;
  }
  *tried = try_still_clay(search, result, scratch);
  search->clay_tried = true;
  return true;
}
