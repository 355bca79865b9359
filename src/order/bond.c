/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bond.h"

#include <assert.h>
#include <math.h>

#include "fill.h"
#include "perpends.h"

/* Which way each row is filled: the one with the best overlap over the whole stretch. A course lies over
 * rows of the course below, so the rows of a stretch make a tree with its root at the top: the best is
 * found from the leaves up, and taken from the root down. */

/* Rows stand in the order of their stretches, and in each from the lowest course up: a row's costs are asked
 * for until the one above it is done, and there are fewer rows in two courses of a stretch. */
enum { LIVE_ROWS = 32 };

typedef struct bonding {
  const lw_laying *laying;
  double needs_m;
  int parent[LW_ROW_MAX];
  int count[LIVE_ROWS];
  double cost[LIVE_ROWS][LW_CHOICE_MAX];
  unsigned char best[LW_ROW_MAX][LW_CHOICE_MAX]; /* under each way to fill the row above; a root's first */
} bonding;

static bool over(const lw_perpends *upper, const lw_perpends *lower) {
  return upper->from_m < lower->to_m && lower->from_m < upper->to_m;
}

/* The row above that reaches over the middle of this one. */
static int find_parent(const lw_laying *laying, int row) {
  const lw_order *order = laying->order;
  const lw_laid *lower = &order->row[row];
  lw_perpends mine = lw_perpends_of(laying, lower);
  for (int i = row + 1; i < order->row_count; i++) {
    const lw_laid *upper = &order->row[i];
    if (upper->stretch != lower->stretch || upper->course != lower->course + 1) continue;
    lw_perpends other = lw_perpends_of(laying, upper);
    if (over(&other, &mine)) return i;
  }
  return -1;
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

/* The best way to fill a lower row below one way of filling the upper one; what both cost is added. */
static int best_below(const bonding *b, int row, const lw_laid *lower, const lw_perpends *upper,
                      double *cost) {
  int best = 0;
  double least = INFINITY;
  for (int k = 0; k < b->count[row % LIVE_ROWS]; k++) {
    lw_perpends joints = lw_perpends_of(b->laying, &lower[k]);
    double all = b->cost[row % LIVE_ROWS][k] + lw_perpends_lack(&joints, upper, b->needs_m);
    if (all >= least - 1e-9) continue;
    least = all;
    best = k;
  }
  *cost += least;
  return best;
}

/* What each way to fill a row costs with the best of all that lies below it. */
static void add_up(bonding *b, int row) {
  const lw_order *order = b->laying->order;
  lw_laid choice[LW_CHOICE_MAX], below[LW_CHOICE_MAX];
  double *cost = b->cost[row % LIVE_ROWS];
  int count = b->count[row % LIVE_ROWS] = lw_row_choices(b->laying, &order->row[row], choice);
  for (int k = 0; k < count; k++) cost[k] = own_cost(b, &choice[k]);
  for (int i = 0; i < row; i++) {
    if (b->parent[i] != row) continue;
    assert(row - i < LIVE_ROWS);
    lw_row_choices(b->laying, &order->row[i], below);
    for (int k = 0; k < count; k++) {
      lw_perpends joints = lw_perpends_of(b->laying, &choice[k]);
      b->best[i][k] = (unsigned char)best_below(b, i, below, &joints, &cost[k]);
    }
  }
  if (b->parent[row] >= 0) return;
  int best = 0;
  for (int k = 1; k < count; k++)
    if (cost[k] < cost[best] - 1e-9) best = k;
  b->best[row][0] = (unsigned char)best;
}

/* What was chosen for the row above is known; choose for this one. */
static int take(bonding *b, int row, const int taken[LW_ROW_MAX]) {
  lw_order *order = b->laying->order;
  lw_laid choice[LW_CHOICE_MAX];
  int parent = b->parent[row], best = b->best[row][parent >= 0 ? taken[parent] : 0];
  lw_row_choices(b->laying, &order->row[row], choice);
  order->row[row] = choice[best];
  return best;
}

static void measure(const lw_laying *laying, int row) {
  lw_order *order = laying->order;
  lw_laid *upper = &order->row[row];
  lw_perpends mine = lw_perpends_of(laying, upper);
  for (int i = 0; i < row; i++) {
    double least, at;
    if (order->row[i].stretch != upper->stretch || order->row[i].course + 1 != upper->course) continue;
    lw_perpends other = lw_perpends_of(laying, &order->row[i]);
    if (!lw_perpends_overlap(&other, &mine, &least, &at)) continue;
    if (upper->below_known && least >= upper->overlap_m) continue;
    upper->below_known = true;
    upper->overlap_m = least;
    upper->overlap_at_m = at;
  }
}

void lw_bond_choose(const lw_laying *laying) {
  lw_order *order = laying->order;
  bonding b = {.laying = laying, .needs_m = laying->overlap_share * laying->plan->module_m};
  int taken[LW_ROW_MAX];
  for (int i = 0; i < order->row_count; i++) b.parent[i] = find_parent(laying, i);
  for (int i = 0; i < order->row_count; i++) add_up(&b, i);
  for (int i = order->row_count - 1; i >= 0; i--) taken[i] = take(&b, i, taken);
  for (int i = 0; i < order->row_count; i++) measure(laying, i);
}
