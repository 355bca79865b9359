/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_SLIP_CHECK_H
#define LOWWALL_LOAD_CASES_SLIP_CHECK_H

#include "balance/weigh.h"

/* A check of the ground as a whole in one load case, beside what the situations have so far. */
typedef struct lw_ground_try {
  const lw_check_context *context;
  lw_detail detail; /* at LW_DETAIL_VERDICT a slip is searched only as far as it may govern */
  double falls_short; /* the ratio of what governs so far, where it falls short; INFINITY: nothing does */
  lw_situation *situation; /* takes the check, if it is the gravest of its kind there */
} lw_ground_try;

/* check: begun */
typedef void (*lw_make_ground_check)(const lw_ground_try *try, lw_check *check);

/* A slip of wall and ground together. */
void lw_check_slip(const lw_ground_try *try, lw_check *check);
/* A bed sliding down the slope it stands on. */
void lw_check_bed(const lw_ground_try *try, lw_check *check);

bool lw_slip_looked_for(const lw_wall *wall);
/* Strengths and water of a situation, as slips take them. */
lw_load_case lw_slip_load_case(const lw_wall *wall, const lw_format *format, const lw_situation *situation);

#endif
