/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cuts.h"

#include <math.h>

#include "laying.h"

/* The list of cuts. */

static bool same(double a, double b) {
  return fabs(a - b) <= LW_TAKEN_UP;
}

static bool same_cut(const lw_cut *a, const lw_cut *b) {
  return a->kind == b->kind && a->base_unit == b->base_unit && same(a->cap_depth_m, b->cap_depth_m) &&
         same(a->long_m, b->long_m) && same(a->short_m, b->short_m) && fabs(a->saw_deg - b->saw_deg) < 0.05 &&
         fabs(a->saw_other_deg - b->saw_other_deg) < 0.05;
}

/* Pieces of a kind and length stand together; when the list is full, with the last of it. */
void lw_cuts_add(lw_order *order, const lw_cut *cut) {
  int i = 0;
  while (i < order->cut_count && !same_cut(&order->cut[i], cut)) i++;
  if (i == LW_CUT_MAX) i = LW_CUT_MAX - 1;
  if (i == order->cut_count) {
    order->cut[order->cut_count++] = *cut;
    order->cut[i].count = 0;
  }
  order->cut[i].count += cut->count;
}
