/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_GRADE_H
#define LOWWALL_VERDICT_GRADE_H

#include <lowwall/result.h>

/* What the grade follows from. */
typedef struct lw_graded {
  lw_holds stands;
  bool moves;             /* less than 1 by cautious values where something would move */
  bool looked;            /* the likely look was run */
  const lw_least *likely; /* of it */
  double margin;          /* from which on it may move rather than would */
} lw_graded;

lw_grade lw_verdict_grade(const lw_graded *of);

/** Grade the wall.
 *  in    verdict   stands and falls known */
void lw_verdict_choose_grade(const lw_tables *tables, const lw_looks *looks, lw_verdict *verdict);

#endif
