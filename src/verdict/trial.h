/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_TRIAL_H
#define LOWWALL_VERDICT_TRIAL_H

#include <lowwall/result.h>

/* The same wall with one thing changed, run from its case to its verdict. */
typedef struct lw_trial lw_trial;

/* Change a case by one value: what it sets counts as given, and what follows from it is settled anew. */
typedef bool (*lw_change)(const lw_trial *trial, double value, lw_case *c);

struct lw_trial {
  const lw_result *now; /* the wall as it is */
  lw_result *scratch;   /* the wall as changed, after a run */
  lw_change change;
};

/* lw_run_governing with all reasons who must see the wall: what a question would change is told by them. */
lw_status lw_run_verdict(const lw_case *c, const lw_tables *tables, lw_result *result, lw_error *error);

/* Run with the change; false when the case cannot be so. */
bool lw_trial_run(const lw_trial *trial, double value);
bool lw_trial_stands(const lw_trial *trial, double value);
/* Values to be tried: from + step, from + 2 step ... from + most x step. */
typedef struct lw_steps {
  double from, step;
  int most;
} lw_steps;
/* The least number of steps with which the wall stands: a root of (ratio - 1) to begin with, then step by
 * step, so that one step less does not stand. 0: it does not with the most. */
int lw_trial_least(const lw_trial *trial, const lw_steps *steps);
/* The ratio of the check that governs a result; not known when nothing does or it has none. */
lw_number lw_trial_ratio(const lw_result *result);
/* "sliding at base, outlet-blocked" */
void lw_trial_governs(const lw_result *result, char *out, size_t size);
/* A length, angle or number as given. */
lw_quantity lw_trial_given(lw_kind kind, double si);

#endif
