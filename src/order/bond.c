/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bond.h"

#include <math.h>

#include "fill.h"
#include "laying.h"
#include "seams.h"

/* Which way each row is filled: the one with the best overlap over the whole stretch. A course lies over
 * rows of the course below, so the rows of a stretch make a tree with its root at the top: the best is
 * found from the leaves up, and taken from the root down. */

typedef struct bonding {
  const lw_laying *laying;
  double needs_m;
  int parent[LW_ROW_MAX];
  int count[LW_ROW_MAX];
  double cost[LW_ROW_MAX][LW_CHOICE_MAX];
} bonding;

static bool over(const lw_laid *upper, const lw_laid *lower, const lw_seams *a, const lw_seams *b) {
  return upper->stretch == lower->stretch && upper->course == lower->course + 1 && a->from_m < b->to_m &&
         b->from_m < a->to_m;
}

/* The row above that reaches over the middle of this one. */
static int find_parent(const lw_laying *laying, int row) {
  const lw_order *order = laying->order;
  lw_seams mine, other;
  lw_seams_of(laying, &order->row[row], &mine);
  for (int i = 0; i < order->row_count; i++) {
    const lw_laid *upper = &order->row[i];
    if (upper->stretch != order->row[row].stretch || upper->course != order->row[row].course + 1) continue;
    lw_seams_of(laying, upper, &other);
    if (over(upper, &order->row[row], &other, &mine)) return i;
  }
  return -1;
}

/* The best way to fill a lower row below one way of filling the upper one, and what both cost. */
static int best_below(const bonding *b, int row, const lw_laid *lower, const lw_seams *upper, double *cost) {
  int best = 0;
  *cost = INFINITY;
  for (int k = 0; k < b->count[row]; k++) {
    lw_seams joints;
    lw_seams_of(b->laying, &lower[k], &joints);
    double all = b->cost[row][k] + lw_seams_lack(&joints, upper, b->needs_m);
    if (all >= *cost - 1e-9) continue;
    *cost = all;
    best = k;
  }
  return best;
}

/* Of cuts: one a piece, half a one a half unit, for two come from one cut; none where halves are sold. */
static double cuts_of(const bonding *b, double module_m, bool at_free_end) {
  double whole = b->laying->plan->module_m;
  if (!(module_m > 0.0) || fabs(module_m - whole) <= LW_TAKEN_UP) return 0.0;
  bool half = fabs(module_m - whole / 2.0) <= LW_TAKEN_UP;
  if (half) return b->laying->half_cut ? 0.5 : 0.0;
  return at_free_end ? 1.0 : 0.0; /* at a corner the end is as the corner asks */
}

/* Fewer cuts are better where the overlap is the same: a cut weighs less than a millimetre that lacks. */
static double own_cost(const bonding *b, const lw_laid *row) {
  double cuts =
      cuts_of(b, row->first_m, row->start == LW_ROW_FREE) + cuts_of(b, row->last_m, row->end == LW_ROW_FREE);
  for (int i = 0; i < row->closer_count; i++) cuts += cuts_of(b, row->closer_m[i], true);
  return cuts * 1e-5 * b->needs_m;
}

static void add_up(bonding *b, int row) {
  const lw_order *order = b->laying->order;
  lw_laid choice[LW_CHOICE_MAX], below[LW_CHOICE_MAX];
  b->count[row] = lw_row_choices(b->laying, &order->row[row], choice);
  for (int k = 0; k < b->count[row]; k++) {
    lw_seams joints;
    lw_seams_of(b->laying, &choice[k], &joints);
    b->cost[row][k] = own_cost(b, &choice[k]);
    for (int i = 0; i < row; i++) {
      if (b->parent[i] != row) continue;
      double cost;
      lw_row_choices(b->laying, &order->row[i], below);
      best_below(b, i, below, &joints, &cost);
      b->cost[row][k] += cost;
    }
  }
}

/* What was chosen for the row above is known; choose for this one. */
static void take(bonding *b, int row) {
  lw_order *order = b->laying->order;
  lw_laid choice[LW_CHOICE_MAX];
  int count = lw_row_choices(b->laying, &order->row[row], choice), best = 0;
  if (b->parent[row] >= 0) {
    lw_seams upper;
    double cost;
    lw_seams_of(b->laying, &order->row[b->parent[row]], &upper);
    best = best_below(b, row, choice, &upper, &cost);
  } else {
    for (int k = 1; k < count; k++)
      if (b->cost[row][k] < b->cost[row][best] - 1e-9) best = k;
  }
  order->row[row] = choice[best];
}

static void measure(const lw_laying *laying, int row) {
  lw_order *order = laying->order;
  lw_laid *upper = &order->row[row];
  lw_seams mine, other;
  lw_seams_of(laying, upper, &mine);
  for (int i = 0; i < row; i++) {
    double least, at;
    if (order->row[i].stretch != upper->stretch || order->row[i].course + 1 != upper->course) continue;
    lw_seams_of(laying, &order->row[i], &other);
    if (!lw_seams_overlap(&other, &mine, &least, &at)) continue;
    if (upper->below_known && least >= upper->overlap_m) continue;
    upper->below_known = true;
    upper->overlap_m = least;
    upper->overlap_at_m = at;
  }
}

/* Rows stand in the order of their stretches, and in each from the lowest course up. */
void lw_bond_choose(const lw_laying *laying) {
  lw_order *order = laying->order;
  bonding b = {.laying = laying, .needs_m = laying->overlap_share * laying->plan->module_m};
  for (int i = 0; i < order->row_count; i++) b.parent[i] = find_parent(laying, i);
  for (int i = 0; i < order->row_count; i++) add_up(&b, i);
  for (int i = order->row_count - 1; i >= 0; i--) take(&b, i);
  for (int i = 0; i < order->row_count; i++) measure(laying, i);
}
