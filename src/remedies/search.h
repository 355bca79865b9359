/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REMEDIES_SEARCH_H
#define LOWWALL_REMEDIES_SEARCH_H

#include <lowwall/result.h>

#include "asking.h"
#include "costs.h"
#include "trial.h"

/* All that lw_remedies_find finds, found in slices: a page that answers fingers cannot wait for all of it.
 * What comes out is the same, however it is sliced. */
enum { LW_REMEDY_CHANGES = 12 };

/* In this order; what the answers worth asking and the cautions cost is found before the first remedy. */
typedef enum lw_search_stage {
  LW_SEARCH_ASKING,
  LW_SEARCH_COSTS,
  LW_SEARCH_ALONE,
  LW_SEARCH_TOGETHER,
  LW_SEARCH_OTHER_JOBS,
  LW_SEARCH_DONE
} lw_search_stage;

typedef struct lw_remedies_search {
  lw_result *result, *scratch;
  lw_search_stage stage;
  int at, partner;              /* the change in hand, and the one beside it */
  int steps[LW_REMEDY_CHANGES]; /* with which each stands alone; 0: it does not, -1: nothing to change so */
  bool told[LW_REMEDY_CHANGES]; /* in a remedy already */
  lw_trial_memory memory;
  lw_asking_search asking;
  lw_costs_search costs;
} lw_remedies_search;

/* in    result    run to everything; remedies, questions and costs come into it
 *       scratch   a second result to run in; both are the search's own until it is done */
void lw_remedies_begin(lw_remedies_search *search, lw_result *result, lw_result *scratch);
/* Go on for so much of lw_trial_price, or a little more. gives whether all is found */
bool lw_remedies_go_on(lw_remedies_search *search, int price);

/* The reason for which no change of the wall is looked for; NULL: none. */
const lw_verdict_reason *lw_remedies_refusal(const lw_result *result);

#endif
