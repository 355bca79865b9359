/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_PERPENDS_H
#define LOWWALL_ORDER_PERPENDS_H

#include "laying.h"
#include "spans.h"

/* A walk over the upright joints of a row, in order, as they stand on the lowest face from the beginning of
 * its stretch. Joints are found as they are asked for: a row may have some thousands. */
typedef struct lw_perpends {
  const lw_laid *row;
  double module_m, from_m, to_m; /* of a unit; where the row itself begins and ends */
  bool head_before, head_after;  /* a joint stands at its very beginning or end */
  double ring_m;                 /* the way around a ring; 0: the row has two ends */
  int spans;
  lw_span span[LW_RUN_MAX];
  int index;   /* of the next joint, the one at the very beginning being the first */
  double u_m;  /* of the joint before it */
  bool around; /* on the joints of a ring that lie past its beginning */
} lw_perpends;

/* The row must outlive the walk. */
lw_perpends lw_perpends_of(const lw_laying *laying, const lw_laid *row);
/* false at the end */
bool lw_perpends_next(lw_perpends *perpends, double *at_m);

/* The joint of a row nearest to a place, for places that come in order. */
typedef struct lw_nearest {
  bool any, more;
  double here_m, next_m;
  lw_perpends rest;
} lw_nearest;
lw_nearest lw_nearest_of(const lw_perpends *perpends);
/* Its distance; infinite for a row without joints. */
double lw_nearest_to(lw_nearest *nearest, double at_m);

/* The least distance of an upper joint to a lower one, and where; false when no two stand over each other. */
bool lw_perpends_overlap(const lw_perpends *lower, const lw_perpends *upper, double *least_m, double *at_m);

/* The sum of what the overlaps lack of `needs`. */
double lw_perpends_lack(const lw_perpends *lower, const lw_perpends *upper, double needs_m);

#endif
