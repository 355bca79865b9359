/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/result.h>

#include <limits.h>
#include <string.h>

#include "base/amount.h"
#include "same_job.h"
#include "search.h"
#include "tables/known.h"
#include "trial.h"

/* What would make every deciding check hold: each change by itself or, where it is not enough, with the first
 * of the others beside which it is. The order is that in which they are told, and in which partners are
 * looked for: what a person would do first comes first, water and fill, then loads, then the wall itself.
 * What leaves another job stands last, and only where that change is part of no cure. */
static const lw_change *const changes[] = {
    &lw_change_filter, &lw_change_drain,  &lw_change_wider_stone, &lw_change_stone,
    &lw_change_load,   &lw_change_filled, &lw_change_pad,         &lw_change_setback,
    &lw_change_deeper, &lw_change_wider,  &lw_change_soil,        &lw_change_lower,
};
_Static_assert(sizeof changes / sizeof *changes == LW_REMEDY_CHANGES, "a search has a place for each change");

/* This wall has nothing to change so. */
enum { NOTHING = -1 };

/* To 1/8 in down where the value is the most that may be, so that what is built holds. */
static lw_amount amount_of(const lw_change *change, lw_units units, double value, bool most) {
  static const double EIGHTH_M = LW_INCH_M / 8.0;
  bool length = change->kind == LW_KIND_LENGTH;
  if (length && most && units == LW_UNITS_US) value = lw_change_steps_below(value, EIGHTH_M);
  if (length && change->decimals > 2) return lw_millimetres(units, value);
  return lw_amount_of(units, change->kind, value, change->decimals);
}

static void tell_part(const lw_trial *trial, int i, lw_remedy *r) {
  const lw_change *change = trial->part[i].change;
  const lw_range *range = &trial->part[i].range;
  double told = range->told_from + range->told_sign * lw_trial_value(trial, i);
  size_t text = strlen(r->text), slug = strlen(r->slug);
  r->part[r->part_count++] = (lw_remedy_part){change->slug, lw_kind_unit(change->kind), told};
  lw_print(r->slug + slug, sizeof r->slug - slug, "%s%s", i > 0 ? "+" : "", change->slug);
  lw_print(r->text + text, sizeof r->text - text, "%s", i > 0 ? "; and " : "");
  text = strlen(r->text);
  lw_print(r->text + text, sizeof r->text - text, change->tells,
           amount_of(change, trial->now->units, told, range->told_sign < 0.0).text);
  if (i > 0 && r->text[text] >= 'A' && r->text[text] <= 'Z') r->text[text] = (char)(r->text[text] + 32);
}

/* Nobody is to take it for the wall that was asked for. */
static void tell_kind(const lw_trial *trial, lw_remedy *r) {
  double held = lw_change_held(trial->scratch), apart;
  size_t used = strlen(r->text);
  r->kind = lw_change_kind(trial->now, trial->scratch);
  if (r->kind == LW_REMEDY_OTHER_WALL)
    lw_print(r->text + used, sizeof r->text - used,
             ", deeper than hands lay them: another kind of wall, which an engineer designs");
  if (r->kind != LW_REMEDY_LOWER_JOB) return;
  lw_print(r->text + used, sizeof r->text - used, ", which is another job: it holds up %s of the %s",
           lw_millimetres(trial->now->units, held).text,
           lw_millimetres(trial->now->units, lw_change_held(trial->now)).text);
  if (trial->now->given.site.behind.value != LW_BEHIND_GROUND) return;
  used = strlen(r->text);
  apart = lw_known_value(trial->now->tables, LW_THRESHOLD_TIER_APART) *
          trial->scratch->verdict.height_m[LW_HEIGHT_EXPOSED];
  lw_print(r->text + used, sizeof r->text - used,
           "; the rest takes a wall with a sheet of its own, %s or more behind",
           lw_millimetres(trial->now->units, apart).text);
}

/* The nearest to its limit then, in the words of a headline. */
static void tell_nearest(const lw_result *then, char *out, size_t size) {
  char name[LW_TRIAL_NAME];
  lw_number ratio = lw_trial_ratio(then);
  lw_print(out, size, "nothing pushes on it");
  if (!lw_trial_name(then, name, sizeof name)) return;
  lw_print(out, size, "the nearest to its limit is %s", name);
  size_t used = strlen(out);
  if (ratio.known) lw_print(out + used, size - used, ", with %.2f times what is asked", ratio.value);
}

/* The trial has just been run as it is told. */
static void tell(const lw_trial *trial, lw_result *result) {
  if (result->remedy_count >= LW_REMEDY_MAX) return;
  lw_remedy *r = &result->remedy[result->remedy_count++];
  char nearest[LW_TRIAL_NAME + 64];
  *r = (lw_remedy){.items = trial->typed, .ratio = lw_trial_ratio(trial->scratch)};
  for (int i = 0; i < trial->count; i++) tell_part(trial, i, r);
  tell_kind(trial, r);
  lw_trial_governs(trial->scratch, r->governs, sizeof r->governs);
  tell_nearest(trial->scratch, nearest, sizeof nearest);
  size_t used = strlen(r->text);
  lw_print(r->text + used, sizeof r->text - used, ": then every deciding check holds; %s.%s", nearest,
           trial->scratch->verdict.who == LW_WHO_ENGINEER ? " The engineer decides all the same." : "");
}

static lw_trial begin_trial(lw_remedies_search *search) {
  return (lw_trial){.now = search->result, .scratch = search->scratch, .memory = &search->memory};
}

static void try_alone(lw_remedies_search *search, int i) {
  lw_trial trial = begin_trial(search);
  if (!lw_trial_add(&trial, changes[i])) return;
  bool enough = lw_trial_alone(&trial);
  if (search->memory.stopped) return;
  search->steps[i] = enough ? trial.part[0].steps : 0;
  search->told[i] = enough;
  if (enough) tell(&trial, search->result);
}

/* One that stands alone gains nothing by a partner that leaves it as it was. */
static bool adds_something(const lw_remedies_search *search, const lw_trial *trial, int partner) {
  return search->steps[partner] == 0 || trial->part[1].steps < search->steps[partner];
}

static void try_together(lw_remedies_search *search, int i, int partner) {
  lw_trial trial = begin_trial(search);
  bool fits = partner != i && search->steps[partner] != NOTHING && lw_trial_add(&trial, changes[i]) &&
              lw_trial_add(&trial, changes[partner]);
  if (!fits || !lw_trial_together(&trial) || search->memory.stopped ||
      !adds_something(search, &trial, partner))
    return;
  search->told[i] = search->told[partner] = true;
  tell(&trial, search->result);
}

/* Where no cure has this change: what it would be with more of it. */
static void try_other_job(lw_remedies_search *search, int i) {
  lw_trial trial = begin_trial(search);
  trial.other_jobs = true;
  if (lw_trial_add(&trial, changes[i]) && lw_trial_alone(&trial) && !search->memory.stopped)
    tell(&trial, search->result);
}

/* What is refused as engineering has no remedy of this kind. */
const lw_verdict_reason *lw_remedies_refusal(const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    bool refusal = strcmp(r->slug, lw_reason_slug(LW_REASON_REFUSED_BACKFILL)) == 0 ||
                   strcmp(r->slug, lw_reason_slug(LW_REASON_BUILDING_BEHIND)) == 0 ||
                   strcmp(r->slug, lw_reason_slug(LW_REASON_FENCE_ON_WALL)) == 0;
    if (r->answer == LW_ANSWER_STANDS && refusal) return r;
  }
  return NULL;
}

/* Of a wall of no known depth only that is looked for. */
static bool may_change(const lw_result *result, int i) {
  return result->wall.section.known || changes[i] == &lw_change_deeper || changes[i] == &lw_change_wider;
}

/* One change, alone or with one partner, as the stage is. */
static void try(lw_remedies_search *search) {
  const lw_result *result = search->result;
  int i = search->at;
  switch (search->stage) {
  case LW_SEARCH_ALONE:
    if (may_change(result, i)) try_alone(search, i);
    break;
  case LW_SEARCH_TOGETHER:
    if (result->wall.section.known && search->steps[i] == 0 && !search->told[i])
      try_together(search, i, search->partner);
    break;
  case LW_SEARCH_OTHER_JOBS:
    if (may_change(result, i) && changes[i]->same_job && !search->told[i]) try_other_job(search, i);
    break;
  case LW_SEARCH_ASKING:
  case LW_SEARCH_COSTS:
  case LW_SEARCH_DONE: break;
  }
}

static void step_on(lw_remedies_search *search) {
  search->memory.count = 0;
  if (search->stage == LW_SEARCH_TOGETHER && ++search->partner < LW_REMEDY_CHANGES) return;
  search->partner = 0;
  if (++search->at < LW_REMEDY_CHANGES) return;
  search->at = 0;
  search->stage++;
}

static void step(lw_remedies_search *search) {
  bool tried = false;
  if (search->stage >= LW_SEARCH_ALONE) {
    search->memory.at = 0;
    try(search);
    if (!search->memory.stopped) step_on(search);
  } else if (search->stage == LW_SEARCH_ASKING) {
    if (!lw_asking_next(&search->asking, search->result, search->scratch, &tried))
      search->stage = LW_SEARCH_COSTS;
  } else if (!lw_costs_next(&search->costs, search->result, search->scratch, &tried)) {
    search->stage = search->result->remedies_sought ? LW_SEARCH_ALONE : LW_SEARCH_DONE;
  }
  if (tried) search->memory.left -= lw_trial_price(&search->result->given);
}

void lw_remedies_begin(lw_remedies_search *search, lw_result *result, lw_result *scratch) {
  search->result = result;
  search->scratch = scratch;
  search->stage = LW_SEARCH_ASKING;
  search->at = search->partner = 0;
  search->memory = (lw_trial_memory){.count = 0};
  for (int i = 0; i < LW_REMEDY_CHANGES; i++) {
    search->steps[i] = NOTHING;
    search->told[i] = false;
  }
  result->remedy_count = 0;
  result->remedies_sought = result->verdict.stands != LW_HOLDS && !lw_remedies_refusal(result);
  lw_asking_begin(&search->asking, result);
  lw_costs_begin(&search->costs, result);
}

bool lw_remedies_go_on(lw_remedies_search *search, int price) {
  search->memory.left = price;
  search->memory.stopped = false;
  while (search->stage != LW_SEARCH_DONE && search->memory.left > 0) step(search);
  return search->stage == LW_SEARCH_DONE;
}

void lw_remedies_find(lw_result *result, lw_result *scratch) {
  lw_remedies_search search;
  lw_remedies_begin(&search, result, scratch);
  while (!lw_remedies_go_on(&search, INT_MAX)) continue;
}
