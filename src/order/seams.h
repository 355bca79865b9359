/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_SEAMS_H
#define LOWWALL_ORDER_SEAMS_H

#include "laying.h"

/* Where the upright joints of a row stand on the lowest face, from the beginning of its stretch, in order. */
typedef struct lw_seams {
  int count;
  double from_m, to_m; /* of the row itself */
  double at_m[LW_ROW_UNITS + 8];
} lw_seams;

void lw_seams_of(const lw_laying *laying, const lw_laid *row, lw_seams *joints);

/* The least distance of an upper joint to a lower one, and where; false when no two stand over each other. */
bool lw_seams_overlap(const lw_seams *lower, const lw_seams *upper, double *least_m, double *at_m);

/* The sum of what the overlaps lack of `needs`. */
double lw_seams_lack(const lw_seams *lower, const lw_seams *upper, double needs_m);

#endif
