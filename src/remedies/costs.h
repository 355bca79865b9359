/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REMEDIES_COSTS_H
#define LOWWALL_REMEDIES_COSTS_H

#include <lowwall/result.h>

#include "sheet/items.h"

/* Of a wall that moves how much more the least of its checks has, of another how much more of its need; and
 * where that stays as it is, the other one. */
typedef struct lw_cost_gain {
  double first, second;
} lw_cost_gain;

/* Each quantity that differs between the two looks tried by itself, into result->cost. */
typedef struct lw_costs_search {
  lw_case likely;
  lw_item_walk walk;
  const lw_item *item; /* NULL: none is left */
  int number;
  bool clay_tried;
  lw_cost_gain gain[LW_COST_MAX];
} lw_costs_search;

void lw_costs_begin(lw_costs_search *search, lw_result *result);
/* Try one more. gives false when all were tried; tried: whether the wall was run for it. */
bool lw_costs_next(lw_costs_search *search, lw_result *result, lw_result *scratch, bool *tried);

/* Whether what a caution costs is told in times what just holds the wall: it has less than that. Of another
 * the check that governs tells. */
bool lw_costs_in_times(const lw_result *result);

#endif
