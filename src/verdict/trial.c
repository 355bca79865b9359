/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial.h"

#include <math.h>

/* What a check without a ratio counts for in the search: it holds, by far. */
static const double BY_FAR = 9.0;

lw_quantity lw_trial_given(lw_kind kind, double si) {
  return (lw_quantity){.si = si, .origin = LW_GIVEN, .kind = kind, .table_row = -1};
}

bool lw_trial_run(const lw_trial *trial, double value) {
  lw_case c = trial->now->given;
  c.settled = false;
  if (!trial->change(trial, value, &c)) return false;
  return lw_run_governing(&c, trial->now->tables, trial->scratch, NULL) == LW_OK;
}

bool lw_trial_stands(const lw_trial *trial, double value) {
  return lw_trial_run(trial, value) && trial->scratch->verdict.stands == LW_HOLDS;
}

static const lw_check *governing(const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  if (!v->governed) return NULL;
  return &result->situations.situation[v->governing_situation].check[v->governing_check];
}

lw_number lw_trial_ratio(const lw_result *result) {
  const lw_check *check = governing(result);
  return check ? check->ratio : (lw_number){0};
}

void lw_trial_governs(const lw_result *result, char *out, size_t size) {
  const lw_check *check = governing(result);
  char at[24];
  if (!check) {
    lw_print(out, size, "nothing");
    return;
  }
  lw_check_print_at(check, at, sizeof at);
  const lw_situation *s = &result->situations.situation[result->verdict.governing_situation];
  lw_print(out, size, "%s at %s, %s", lw_check_slug(check->kind), at, lw_situation_slug(s->name));
}

/* Below zero: falls short. What cannot be run or shown has no value, and the root search gives up there. */
static double margin(double value, const void *context) {
  const lw_trial *trial = context;
  if (!lw_trial_run(trial, value)) return NAN;
  const lw_check *check = governing(trial->scratch);
  if (!check || check->holds == LW_CANNOT_SHOW) return NAN;
  if (check->ratio.known) return check->ratio.value - 1.0;
  return check->holds == LW_HOLDS ? BY_FAR : -1.0;
}

static bool enough_with(const lw_trial *trial, const lw_steps *steps, int count) {
  return lw_trial_stands(trial, steps->from + count * steps->step);
}

/* Halving, where the ratio jumps or has gaps. */
static int halve(const lw_trial *trial, const lw_steps *steps) {
  int short_of = 0, enough = steps->most;
  while (enough - short_of > 1) {
    int middle = (short_of + enough) / 2;
    if (enough_with(trial, steps, middle)) {
      enough = middle;
    } else {
      short_of = middle;
    }
  }
  return enough;
}

int lw_trial_least(const lw_trial *trial, const lw_steps *steps) {
  int most = steps->most;
  if (most < 1 || !enough_with(trial, steps, most)) return 0;
  if (most == 1) return 1;
  double root, high = steps->from + most * steps->step;
  int count;
  if (lw_solve_root(margin, trial, steps->from, high, steps->step / 8.0, &root) == LW_OK) {
    count = (int)fmin(fmax(ceil((root - steps->from) / steps->step), 1.0), most);
    while (count < most && !enough_with(trial, steps, count)) count++;
  } else {
    count = halve(trial, steps);
  }
  while (count > 1 && enough_with(trial, steps, count - 1)) count--;
  return count;
}
