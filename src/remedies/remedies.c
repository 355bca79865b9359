/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/result.h>

#include <string.h>

#include "base/amount.h"
#include "asking.h"
#include "costs.h"
#include "same_job.h"
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
enum { CHANGES = sizeof changes / sizeof *changes };

/* Steps with which each stands alone; 0: it does not, NOTHING: this wall has nothing to change so. */
enum { NOTHING = -1 };
typedef struct lw_alone {
  int steps[CHANGES];
  bool told[CHANGES]; /* in a remedy already */
} lw_alone;

/* To 1/8 in down where the value is the most that may be, so that what is built holds. */
static lw_amount amount_of(const lw_change *change, lw_units units, double value, bool most) {
  static const double EIGHTH_M = 0.0254 / 8.0;
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

/* The trial has just been run as it is told. */
static void tell(const lw_trial *trial, lw_result *result) {
  if (result->remedy_count >= LW_REMEDY_MAX) return;
  lw_remedy *r = &result->remedy[result->remedy_count++];
  char ratio[40] = "";
  *r = (lw_remedy){.items = trial->typed, .ratio = lw_trial_ratio(trial->scratch)};
  for (int i = 0; i < trial->count; i++) tell_part(trial, i, r);
  tell_kind(trial, r);
  lw_trial_governs(trial->scratch, r->governs, sizeof r->governs);
  if (r->ratio.known) lw_print(ratio, sizeof ratio, " with %.2f times what is asked", r->ratio.value);
  size_t used = strlen(r->text);
  lw_print(r->text + used, sizeof r->text - used, ": then every deciding check holds; %s governs%s.%s",
           r->governs, ratio,
           trial->scratch->verdict.who == LW_WHO_ENGINEER ? " The engineer decides all the same." : "");
}

static void try_alone(int i, lw_result *result, lw_result *scratch, lw_alone *alone) {
  lw_trial trial = {.now = result, .scratch = scratch};
  alone->steps[i] = NOTHING;
  alone->told[i] = false;
  if (!lw_trial_add(&trial, changes[i])) return;
  bool enough = lw_trial_alone(&trial);
  alone->steps[i] = enough ? trial.part[0].steps : 0;
  alone->told[i] = enough;
  if (enough) tell(&trial, result);
}

/* One that stands alone gains nothing by a partner that leaves it as it was. */
static bool adds_something(const lw_trial *trial, int partner, const lw_alone *alone) {
  return alone->steps[partner] == 0 || trial->part[1].steps < alone->steps[partner];
}

static void try_together(int i, lw_result *result, lw_result *scratch, lw_alone *alone) {
  for (int partner = 0; partner < CHANGES && !alone->told[i]; partner++) {
    lw_trial trial = {.now = result, .scratch = scratch};
    bool fits = partner != i && alone->steps[partner] != NOTHING && lw_trial_add(&trial, changes[i]) &&
                lw_trial_add(&trial, changes[partner]);
    if (!fits || !lw_trial_together(&trial) || !adds_something(&trial, partner, alone)) continue;
    alone->told[i] = alone->told[partner] = true;
    tell(&trial, result);
  }
}

/* Where no cure has this change: what it would be with more of it. */
static void try_other_job(int i, lw_result *result, lw_result *scratch) {
  lw_trial trial = {.now = result, .scratch = scratch, .other_jobs = true};
  if (lw_trial_add(&trial, changes[i]) && lw_trial_alone(&trial)) tell(&trial, result);
}

/* What is refused as engineering has no remedy of this kind. */
static bool is_refused(const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    bool refusal = strcmp(r->slug, lw_reason_slug(LW_REASON_REFUSED_BACKFILL)) == 0 ||
                   strcmp(r->slug, lw_reason_slug(LW_REASON_BUILDING_BEHIND)) == 0 ||
                   strcmp(r->slug, lw_reason_slug(LW_REASON_FENCE_ON_WALL)) == 0;
    if (r->answer == LW_ANSWER_STANDS && refusal) return true;
  }
  return false;
}

/* Of a wall of no known depth only that is looked for. */
static bool may_change(const lw_result *result, int i) {
  return result->wall.section.known || changes[i] == &lw_change_deeper || changes[i] == &lw_change_wider;
}

void lw_remedies_find(lw_result *result, lw_result *scratch) {
  lw_alone alone;
  result->remedy_count = 0;
  lw_asking_find(result, scratch);
  lw_costs_find(result, scratch);
  result->remedies_sought = result->verdict.stands != LW_HOLDS && !is_refused(result);
  if (!result->remedies_sought) return;
  for (int i = 0; i < CHANGES; i++) {
    if (may_change(result, i)) try_alone(i, result, scratch, &alone);
  }
  for (int i = 0; i < CHANGES && result->wall.section.known; i++) {
    if (alone.steps[i] == 0) try_together(i, result, scratch, &alone);
  }
  for (int i = 0; i < CHANGES; i++) {
    if (may_change(result, i) && changes[i]->same_job && !alone.told[i]) try_other_job(i, result, scratch);
  }
}
