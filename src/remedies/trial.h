/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REMEDIES_TRIAL_H
#define LOWWALL_REMEDIES_TRIAL_H

#include "changes.h"

/* What a trial has found so far, where it is made in slices: it begins anew each time, and what was found
 * before is not run again. */
enum { LW_TRIAL_MEMORY = 256 };
typedef struct lw_trial_memory {
  int count, at; /* found; of those taken up again */
  bool stands[LW_TRIAL_MEMORY];
  int left;     /* what may still be run in this slice: see lw_trial_price */
  bool stopped; /* nothing was left: what the trial gives says nothing */
} lw_trial_memory;

/* What it takes to run a case: 1, or more where slips are searched. */
int lw_trial_price(const lw_case *c);

/* The same wall with one or two things changed, typed in and run from its case to its verdict. */
enum { LW_TRIAL_CHANGES = 2 };
typedef struct lw_trial {
  const lw_result *now;    /* the wall as it is */
  lw_result *scratch;      /* the wall as changed, after a run */
  bool other_jobs;         /* looked for as well */
  lw_trial_memory *memory; /* NULL: all of it at once */
  int count;
  struct {
    const lw_change *change;
    lw_range range;
    int steps;
  } part[LW_TRIAL_CHANGES];
  lw_typed typed; /* what was typed for the last run */
} lw_trial;

/* Add a change, with no step of it yet; false when this wall has nothing to change so. */
bool lw_trial_add(lw_trial *trial, const lw_change *change);
/* The value that a part has with its steps. */
double lw_trial_value(const lw_trial *trial, int part);
/* The fewest steps of a trial of one change with which it stands: so set and run, or false. */
bool lw_trial_alone(lw_trial *trial);
/* The same of two: both grow together until it stands, then each shrinks as far as it may. */
bool lw_trial_together(lw_trial *trial);
/* The ratio of the check that governs a result; not known when nothing does or it has none. */
lw_number lw_trial_ratio(const lw_result *result);
/* "sliding at base, outlet-blocked", for programs. */
void lw_trial_governs(const lw_result *result, char *out, size_t size);
/* "sliding on its base (people sitting along the top)", for people.
 * gives false, out unchanged: nothing governs */
enum { LW_TRIAL_NAME = 120 };
bool lw_trial_name(const lw_result *result, char *out, size_t size);

#endif
