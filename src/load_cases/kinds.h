/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_KINDS_H
#define LOWWALL_LOAD_CASES_KINDS_H

#include "tables/known.h"
#include "slip_check.h"

/* What is to be known of a kind of check without making one. */
typedef struct lw_check_about {
  const char *slug;
  const char *title;               /* in a few words, whichever the place: "share in compression" */
  const char *unit;                /* of demand and resistance on a contact */
  const char *demand, *resistance; /* what they are, for the documents */
  lw_factor needs, or_needs;       /* what a set of factors asks of it: the one or, at times, the other */
  const char *at[LW_AT_COUNT]; /* what it is called there, %d: number of the joint; NULL: not made there */
  const char *below_one; /* what it means that it has less than 1, no partial factor in it; NULL: nothing
                                 moves yet */
  bool of_pressure;      /* of what is in compression: none is where the resultant is outside */
  const char *theory;    /* its heading in docs/theory.md */
} lw_check_about;

/** The row of a kind.
 *  in    kind   below LW_CHECK_KIND_COUNT */
const lw_check_about *lw_check_about_of(lw_check_kind kind);

/* A kind of check with the functions that make it. */
typedef struct lw_check_row {
  lw_check_about about;
  lw_make_check make;                 /* on a contact; NULL: it is made on none */
  lw_make_ground_check make_ground;   /* in the ground as a whole; NULL: not there */
  bool (*asked)(const lw_wall *wall); /* NULL: of every wall */
  bool of_strengths; /* where a set's factor of sliding is on every strength, so is what this asks */
} lw_check_row;

const lw_check_row *lw_check_row_of(lw_check_kind kind);
/** Whether a check tells of movement: a share in compression does not, until none is left. */
bool lw_check_tells_of_movement(const lw_check *check);
/** How many times over what is allowed would have to be there before anything moves: 1 but for a bearing
 *  value that holds a reserve. What a check has times this is what it has of what just holds it. */
double lw_check_reserve(const lw_check *check);
/** Whether it does not stand by the values that it was made with, design values or others. */
bool lw_check_is_lost(const lw_check *check);
/** What a check has of what just holds it; not known where it does not tell of movement. */
lw_number lw_check_times(const lw_check *check);

#endif
