/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_CAP_LAY_H
#define LOWWALL_ORDER_CAP_LAY_H

#include "laying.h"

typedef struct lw_capping {
  const lw_laying *laying;
  double length_m, overhang_m, point_least_deg, piece_least_m, joint_least_m;
} lw_capping;

/* Where the caps of a run begin or end. */
typedef struct lw_cap_end {
  double base_m; /* behind the run's own end on the lowest face */
  double adds_m; /* to the sum of long edges, beside the line itself */
  bool mitred, inward;
  double extra_m, saw_deg;
} lw_cap_end;

typedef struct lw_cap_line {
  int run;
  double base_m;  /* its length taken back to the lowest face */
  double front_m; /* its front edge */
  double long_m;  /* the long edges: the front, or on a curve round a centre in front the rear */
  double ratio;   /* short edge over long edge of one cap, 1 on a straight run */
  lw_cap_end begin, end;
} lw_cap_line;

/* Lay the caps of one run: cuts, whole ones, the joint nearest to one of the blocks below. */
void lw_caps_lay(const lw_capping *k, const lw_cap_line *line);

#endif
