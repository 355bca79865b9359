/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_LOAD_CASES_H
#define LOWWALL_LOAD_CASES_LOAD_CASES_H

#include "load_case.h"

enum { LW_LOAD_CASES_MAX = LW_SITUATION_COUNT + LW_WAYS - 1 };

/* One load case of the list: the usual factors on what acts, all loads there. */
typedef struct lw_listed_case {
  lw_load_case load_case;
  int situation;   /* its number among the situations */
  signed char way; /* of an earthquake; 0 is shown */
  bool same_push;  /* as the one before: the same ground, water and earthquake */
} lw_listed_case;

/* The load cases of a wall under one set of factors: those with the same push follow one another. */
typedef struct lw_load_cases {
  int count;
  lw_listed_case at[LW_LOAD_CASES_MAX];
} lw_load_cases;

/* deciding: only those that decide are listed. */
void lw_load_cases_list(const lw_wall *wall, const lw_factor_set *factor_set, const lw_situation *situation,
                        int count, bool deciding, lw_load_cases *cases);

/* Whether two situations push the wall alike under a set. */
bool lw_load_cases_push_alike(const lw_factor_set *factor_set, const lw_situation *a, const lw_situation *b);

#endif
