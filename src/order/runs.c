/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

/* Each run for itself: is its curve one that the blocks can follow, and which lengths near it need no cut. */

static void curve(const lw_laying *laying, lw_order_run *r) {
  const lw_plan *plan = laying->plan;
  double radius = plan->run[r->run].radius_m, least;
  bool convex = radius > 0.0;
  int sharpest = convex ? plan->courses - 1 : 0;
  double here = fabs(radius - lw_plan_offset(plan, sharpest)), depth = lw_plan_depth(plan, sharpest);
  r->radius_m = here;
  r->radius_known =
      lw_order_least_radius(plan->unit_m, plan->tail_m, depth, plan->curve_gap_m, convex, &least) == LW_OK;
  r->least_radius_m = r->radius_known ? least : 0.0;
  r->radius_kept = r->radius_known && here >= least - LW_TAKEN_UP;
  double asked = convex ? plan->tail_m * here / (here - depth) - plan->unit_m
                        : plan->unit_m * (here + depth) / here - plan->tail_m;
  r->curve_gap_m = fmax(0.0, asked);
  if (r->radius_kept) return;
  lw_order_note_add(
      laying->order, "curve-too-sharp",
      "Run %d: at %.2f m of radius the blocks gape by %.0f mm at the %s, and %.0f mm is allowed: a "
      "wider curve, tapered blocks, or every block cut.",
      r->run + 1, here, r->curve_gap_m * 1000.0, convex ? "face" : "rear", plan->curve_gap_m * 1000.0);
}

/* How much too long the run is for whole units in a course, in either way of beginning and ending. */
static double too_long(const lw_laying *laying, int stretch, int course, int start, int end) {
  lw_stretch tried = laying->stretch[stretch];
  tried.start_bit = start;
  tried.end_bit = end;
  lw_laid row = lw_row_whole(laying, &tried, course);
  double module = laying->plan->module_m, room = row.module_sum_m - row.first_m - row.last_m;
  double over = room - module * floor(room / module);
  return over > module - LW_TAKEN_UP ? over - module : over;
}

/* The nearest lengths are those that leave nothing over in both kinds of course. */
static void lengths(const lw_laying *laying, int stretch, lw_order_run *r) {
  const lw_plan *plan = laying->plan;
  double shorter = INFINITY, longer = INFINITY, module = plan->module_m;
  for (int bits = 0; bits < 4; bits++) {
    double first = too_long(laying, stretch, 0, bits & 1, bits >> 1);
    bool agree = true;
    for (int course = 1; course < plan->courses; course++) {
      double other = too_long(laying, stretch, course, bits & 1, bits >> 1);
      agree = agree && fabs(remainder(other - first, module)) <= LW_TAKEN_UP;
    }
    if (!agree) continue;
    shorter = fmin(shorter, fmax(0.0, first));
    longer = fmin(longer, first <= LW_TAKEN_UP ? 0.0 : module - first);
  }
  r->shorter_known = isfinite(shorter) && r->length_m - shorter > module / 2.0;
  r->longer_known = isfinite(longer);
  r->shorter_m = r->shorter_known ? r->length_m - shorter : 0.0;
  r->longer_m = r->longer_known ? r->length_m + longer : 0.0;
}

void lw_order_runs(lw_laying *laying) {
  const lw_plan *plan = laying->plan;
  double top = lw_plan_offset(plan, plan->courses - 1);
  for (int i = 0; i < plan->run_count; i++) {
    lw_order_run *r = &laying->order->run[i];
    *r = (lw_order_run){
        .run = i, .length_m = plan->run[i].length_m, .top_length_m = lw_plan_run_length(plan, i, top)};
    if (fabs(plan->run[i].radius_m) > 0.0) curve(laying, r);
  }
  for (int i = 0; i < laying->stretch_count; i++) {
    const lw_stretch *s = &laying->stretch[i];
    int run = lw_plan_at(plan, s->first_run);
    if (s->run_count == 1 && !s->ring && !(fabs(plan->run[run].radius_m) > 0.0))
      lengths(laying, i, &laying->order->run[run]);
  }
}
