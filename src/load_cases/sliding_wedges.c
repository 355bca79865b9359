/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sliding_wedges.h"

#include "base/solve.h"
#include "standards/factors.h"
#include "load_case.h"

/* Sliding by a factor on the strength of every wedge, as manuals for hydraulic works define it: the soil that
 * pushes, what the wall stands on and the ground in front all keep the same share of their strength, and the
 * factor is the greatest that still lets them balance. The less is left the more pushes, so it is nearer to 1
 * than resistance over push at full strength. */

static const double LOW = 0.02, HIGH = 1000.0, CLOSE = 1e-11;

typedef struct wedges {
  lw_make_check make;
  const lw_check_context *at;
} wedges;

/* The contact with every strength divided by a factor. */
static lw_check at_factor(const wedges *w, double factor, bool found) {
  const lw_check_context *at = w->at;
  const lw_wall *wall = at->wall;
  lw_factor_set factor_set = *at->factor_set;
  lw_load_case divided = *at->load_case;
  lw_push push;
  lw_free_body body;
  factor_set.on_every_wedge = factor;
  lw_load_case_mobilized(wall, &factor_set, &divided, NULL);
  if (!found) factor_set.on_every_wedge = 0.0;
  lw_push_find(wall, &divided.ground, &at->place->stack, NULL, &push, NULL);
  lw_place_load(wall, &divided, at->place, &push, &body, NULL);
  lw_check_context context = {wall, &factor_set, &divided, at->place};
  lw_check check = w->make(&context, &body, NULL);
  check.made_in.divided_by = factor;
  return check;
}

/* What is left over at a factor: less than 0 where it is too great, also where ground slides by itself. */
static double left_over(double factor, const void *context) {
  lw_check check = at_factor(context, factor, false);
  if (check.holds == LW_CANNOT_SHOW) return -1.0;
  return check.has.known ? check.has.value - 1.0 : 1.0;
}

/* The factor, on the side where there is an answer; 0: none, however much strength were there. */
static double factor_of(const wedges *w) {
  double low = 1.0, high = 1.0;
  while (low > LOW && left_over(low, w) < 0.0) {
    high = low;
    low *= 0.6;
  }
  if (left_over(low, w) < 0.0) return 0.0;
  if (low >= 1.0)
    for (high = 2.0; high < HIGH && left_over(high, w) >= 0.0; high *= 2.0) low = high;
  if (high >= HIGH) return HIGH;
  double root = low;
  (void)lw_solve_root(left_over, w, low, high, CLOSE, &root);
  for (double back = CLOSE; back < 1e-3 && left_over(root, w) <= -1.0 + CLOSE; back *= 10.0) root -= back;
  return root;
}

static lw_check of_wedges(const wedges *w) {
  lw_check full = at_factor(w, 1.0, false);
  double factor = factor_of(w);
  if (factor <= 0.0 || (factor >= HIGH && !full.has.known)) return full;
  return at_factor(w, factor, true);
}

lw_check lw_check_of_strengths(lw_make_check make, const lw_check_context *context,
                               const lw_free_body *body) {
  wedges w = {make, context};
  bool searched = lw_factor_set_on_every_wedge(context->factor_set, context->load_case->kind);
  return body->status == LW_OK && searched ? of_wedges(&w) : make(context, body, NULL);
}
