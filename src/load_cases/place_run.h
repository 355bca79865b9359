/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_PLACE_RUN_H
#define LOWWALL_LOAD_CASES_PLACE_RUN_H

#include "load_cases.h"
#include "balance/place.h"

enum { LW_CHECK_OF_PLACE_MAX = LW_CHECK_KIND_COUNT };

/* Of each situation the gravest check so far, and the factors on what acts it came about with. */
typedef struct lw_gravest {
  bool any;
  lw_check check;
  lw_factors factors;
} lw_gravest;

/* The checks of one situation at one place, before they are kept. */
typedef struct lw_gathered {
  int count;
  lw_check check[LW_CHECK_OF_PLACE_MAX];
} lw_gathered;

/* A wall under one set of factors, place by place. */
typedef struct lw_place_run {
  const lw_wall *wall;
  const lw_factor_set *factor_set;
  const lw_load_cases *cases;
  lw_situation *situation; /* the first of the list */
  int situation_count;
  lw_gathered *gathered;          /* of each situation, at the place in hand */
  lw_trial_wedge_known *searched; /* of each load case whose push is found anew, at the place before */
  lw_gravest *gravest;            /* of each situation; NULL: nobody asks */
  int first;  /* number of the first check at the place in hand: the same in every situation */
  int checks; /* how many there are at this place */
} lw_place_run;

/* Push, load and check one place in every load case. Loads that may be absent are tried present and absent,
 * sources of load favourable and unfavourable, and the graver answer of each check stays. */
void lw_place_run_at(lw_place_run *run, const lw_place *place);

/* Without a block depth no check can be shown, and each says so. */
void lw_place_run_unknown(lw_place_run *run);

#endif
