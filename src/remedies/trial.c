/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial.h"

#include <math.h>

#include "same_job.h"

/* Two changes grow together in so many strides. */
enum { STRIDES = 6 };

static void keep_job(const lw_change *change, const lw_result *now, lw_range *range) {
  while (range->most > 0 && !change->same_job(now, range->from + range->most * range->step)) range->most--;
}

bool lw_trial_add(lw_trial *trial, const lw_change *change) {
  lw_range range = change->range(trial->now);
  if (change->same_job && !trial->other_jobs) keep_job(change, trial->now, &range);
  if (range.most < 1 || trial->count >= LW_TRIAL_CHANGES) return false;
  trial->part[trial->count].change = change;
  trial->part[trial->count].range = range;
  trial->part[trial->count++].steps = 0;
  return true;
}

double lw_trial_value(const lw_trial *trial, int part) {
  const lw_range *range = &trial->part[part].range;
  return range->from + trial->part[part].steps * range->step;
}

/* The second change sees a case in which the first is typed already. */
static bool type(lw_trial *trial, lw_case *c) {
  lw_changing wall = {.now = trial->now, .c = c};
  trial->typed.count = 0;
  trial->typed.units = trial->now->units;
  for (int i = 0; i < trial->count; i++) {
    if (trial->part[i].steps < 1) continue;
    if (!trial->part[i].change->type(&wall, lw_trial_value(trial, i), &trial->typed)) return false;
    if (!lw_typed_enter(&trial->typed, c)) return false;
  }
  return true;
}

static bool run(lw_trial *trial, bool slips) {
  lw_case c = trial->now->given;
  c.complete = false;
  if (!type(trial, &c)) return false;
  if (!slips) c.method.slip = (lw_choice){.value = LW_SLIP_NOT, .origin = LW_GIVEN};
  return lw_run(&c, trial->now->tables, LW_DETAIL_VERDICT, trial->scratch, NULL) == LW_OK;
}

static bool holds(const lw_trial *trial) {
  const lw_verdict *then = &trial->scratch->verdict;
  bool kept = trial->other_jobs || lw_change_kind(trial->now, trial->scratch) == LW_REMEDY_CURE;
  if (!kept) return false;
  return then->stands == LW_HOLDS && then->who <= trial->now->verdict.who;
}

int lw_trial_price(const lw_case *c) {
  enum { WITH_SLIPS = 10 };
  return c->method.slip.value == LW_SLIP_NOT ? 1 : WITH_SLIPS;
}

/* Every deciding check holds with its steps, and nobody graver must see it than the wall as it is. A search
 * for slips takes a hundred times as long as all other checks, and what fails those fails anyway. */
static bool stands_run(lw_trial *trial, int *price) {
  *price = 1;
  if (!run(trial, false) || !holds(trial)) return false;
  *price += lw_trial_price(&trial->now->given);
  return run(trial, true) && holds(trial);
}

/* As it was found before, or run as long as this slice has room. A full memory is no reason to stop. */
static bool stands(lw_trial *trial) {
  lw_trial_memory *m = trial->memory;
  int price;
  if (!m) return stands_run(trial, &price);
  if (m->stopped) return false;
  if (m->at < m->count) return m->stands[m->at++];
  m->stopped = m->left <= 0 && m->count < LW_TRIAL_MEMORY;
  if (m->stopped) return false;
  bool found = stands_run(trial, &price);
  m->left -= price;
  if (m->count < LW_TRIAL_MEMORY) m->stands[m->at++] = found, m->count = m->at;
  return found;
}

static bool stands_with(lw_trial *trial, int part, int steps) {
  trial->part[part].steps = steps;
  return stands(trial);
}

/* It stands with the steps that the part has: halve, until one less has been found too few. */
static void shrink(lw_trial *trial, int part) {
  int short_of = 0, enough = trial->part[part].steps;
  while (enough - short_of > 1) {
    int middle = (short_of + enough) / 2;
    if (stands_with(trial, part, middle))
      enough = middle;
    else
      short_of = middle;
  }
  trial->part[part].steps = enough;
}

/* More of some changes need not help all the way. */
static bool first_that_stands(lw_trial *trial) {
  for (int steps = 1; steps <= trial->part[0].range.most; steps++) {
    if (stands_with(trial, 0, steps)) return true;
  }
  return false;
}

bool lw_trial_alone(lw_trial *trial) {
  if (trial->part[0].change->wavers) return first_that_stands(trial);
  if (!stands_with(trial, 0, trial->part[0].range.most)) return false;
  shrink(trial, 0);
  return stands(trial);
}

bool lw_trial_together(lw_trial *trial) {
  bool enough = false;
  for (int stride = 1; stride <= STRIDES && !enough; stride++) {
    for (int i = 0; i < trial->count; i++) {
      double steps = (double)trial->part[i].range.most * stride / STRIDES;
      trial->part[i].steps = (int)ceil(steps);
    }
    enough = stands(trial);
  }
  for (int i = 0; i < trial->count && enough; i++) shrink(trial, i);
  return enough && stands(trial);
}

lw_number lw_trial_ratio(const lw_result *result) {
  lw_check check;
  return lw_verdict_governing(result, &check) ? check.ratio : (lw_number){0};
}

void lw_trial_governs(const lw_result *result, char *out, size_t size) {
  lw_check check;
  char at[24];
  if (!lw_verdict_governing(result, &check)) {
    lw_print(out, size, "nothing");
    return;
  }
  lw_check_print_at(&check, at, sizeof at);
  const lw_situation *s = &result->situations.situation[result->verdict.governing_situation];
  lw_print(out, size, "%s at %s, %s", lw_check_slug(check.kind), at, lw_situation_slug(s->name));
}

bool lw_trial_name(const lw_result *result, char *out, size_t size) {
  lw_check check;
  char words[48];
  if (!lw_verdict_governing(result, &check)) return false;
  lw_check_words(&check, words, sizeof words);
  const lw_situation *s = &result->situations.situation[result->verdict.governing_situation];
  lw_print(out, size, "%s (%s)", words, lw_situation_sentence(s->name));
  return true;
}
