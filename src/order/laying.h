/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_LAYING_H
#define LOWWALL_ORDER_LAYING_H

#include <math.h>

#include <lowwall/order.h>

/* One millimetre over a whole row is taken up in its joints. */
#define LW_TAKEN_UP 0.001

/* What the stages of an order share: the plan, what the sheet and the tables ask of the blocks, and the order
 * that each stage fills its part of. */
typedef struct lw_laying {
  const lw_plan *plan;
  lw_order *order;
  const lw_tables *tables;
  lw_corner_unit asked;
  double corner_unit_m;
  double overlap_share, cut_share, mitre_share, kerf_m;
  bool half_cut; /* half units are cut from whole ones */
} lw_laying;

#endif
