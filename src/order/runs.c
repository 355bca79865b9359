/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "runs.h"

#include <math.h>

#include "laying.h"
#include "mitre.h"
#include "note.h"
#include "plan.h"
#include "rows.h"

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
  if (!r->radius_kept)
    lw_order_note_add(laying->order, &(lw_order_note){.kind = LW_NOTE_CURVE_TOO_SHARP, .number = r->run + 1});
}

/* How much too long the run is for whole units in a course, in either way of beginning and ending. */
static double too_long(const lw_laying *laying, int stretch, int course, int start, int end) {
  lw_stretch tried = laying->order->stretch[stretch];
  tried.start_bit = start;
  tried.end_bit = end;
  lw_laid row = lw_row_whole(laying, &tried, course);
  double module = laying->plan->module_m, room = row.module_sum_m - row.first_m - row.last_m;
  double over = room - module * floor(room / module);
  return over > module - LW_TAKEN_UP ? over - module : over;
}

/* Does what stands at the corners in the lowest course agree with this way of beginning and ending? */
static bool as_laid(const lw_stretch *s, int bits) {
  bool start = s->corner_before < 0 || s->start_bit == (bits & 1);
  return start && (s->corner_after < 0 || s->end_bit == bits >> 1);
}

static bool has_halves(const lw_laying *laying, int stretch) {
  bool any = false;
  for (int i = 0; i < laying->order->row_count; i++) {
    const lw_laid *row = &laying->order->row[i];
    if (row->stretch != stretch) continue;
    any = any || lw_laid_half(laying->plan, row->first_m) || lw_laid_half(laying->plan, row->last_m);
    for (int k = 0; k < row->closer_count; k++) any = any || lw_laid_half(laying->plan, row->closer_m[k]);
  }
  return any;
}

/* The nearest lengths are those that leave nothing over in both kinds of course; of a run that fits, the
 * next ones on both sides. */
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
    bool laid = as_laid(&laying->order->stretch[stretch], bits);
    if (!agree || (plan->courses == 1 && !laid)) continue;
    bool fits = fabs(first) <= LW_TAKEN_UP;
    r->fits = r->fits || (fits && laid);
    shorter = fmin(shorter, fits ? module : first);
    longer = fmin(longer, fits ? module : module - first);
  }
  if (!isfinite(shorter)) {
    bool steps_back = plan->setback_m > 0.0 || plan->end_setback_m > 0.0;
    r->no_fit = steps_back ? LW_NO_FIT_SETBACK : LW_NO_FIT_CORNERS;
    return;
  }
  r->half_blocks = r->fits && has_halves(laying, stretch);
  r->shorter_known = r->length_m - shorter > module / 2.0;
  r->longer_known = true;
  r->shorter_m = r->shorter_known ? r->length_m - shorter : 0.0;
  r->longer_m = r->length_m + longer;
}

void lw_order_runs(const lw_laying *laying) {
  const lw_plan *plan = laying->plan;
  double top = lw_plan_offset(plan, plan->courses - 1);
  for (int i = 0; i < plan->run_count; i++) {
    lw_order_run *r = &laying->order->run[i];
    *r = (lw_order_run){.run = i, .length_m = plan->run[i].length_m};
    r->top_length_m = lw_plan_run_length(plan, i, top) - lw_plan_end_back(plan, i, plan->courses - 1);
    if (fabs(plan->run[i].radius_m) > 0.0) curve(laying, r);
  }
  for (int i = 0; i < laying->order->stretch_count; i++) {
    const lw_stretch *s = &laying->order->stretch[i];
    int run = lw_plan_at(plan, s->first_run);
    bool straight = s->run_count == 1 && !s->ring && !(fabs(plan->run[run].radius_m) > 0.0);
    if (straight)
      lengths(laying, i, &laying->order->run[run]);
    else
      for (int n = 0; n < s->run_count; n++)
        laying->order->run[lw_plan_at(plan, s->first_run + n)].no_fit = LW_NO_FIT_RUNS_ON;
  }
}
