/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "rows.h"

#include <math.h>

#include "laying.h"
#include "plan.h"
#include "spans.h"
#include "steps.h"

/* The rows of a course: one on each stretch, or several where the base steps. What stands at their ends
 * follows from the corner or end, and from whether the course is an even one. */

static const double NEAR = 1e-6; /* [m] */

static bool odd(int course, int bit) {
  return ((course + bit) & 1) != 0;
}

/* A corner's run before it runs through in even courses when its bit is 0, the run after it in the others. */
static lw_row_end end_at(const lw_laying *laying, int corner, bool before_it, int course, int bit) {
  if (corner < 0) return LW_ROW_FREE;
  if (laying->order->corner[corner].made == LW_MADE_CUT) return LW_ROW_MITRED;
  bool through = odd(course, bit) != before_it;
  return through ? LW_ROW_THROUGH : LW_ROW_STOPPED;
}

static bool inward(const lw_laying *laying, int corner) {
  return laying->order->corner[corner].turn_rad < 0.0;
}

/* How far the row stays back from the corner of the face; negative where it runs on behind the other face. */
static double stays_back(const lw_laying *laying, int corner, lw_row_end end, int course) {
  if (end != LW_ROW_THROUGH && end != LW_ROW_STOPPED) return 0.0;
  double depth = lw_plan_depth(laying->plan, course), gap = laying->plan->gap_m;
  if (inward(laying, corner)) return end == LW_ROW_THROUGH ? -depth : gap;
  return end == LW_ROW_THROUGH ? 0.0 : depth + gap;
}

/* The module of a mitred unit. Outwards its long edge is at the face: a whole one, or half with a rear left.
 * Inwards its long edge is at the rear and no longer than a block. */
static double mitred_module(const lw_laying *laying, int corner, int course, int bit) {
  const lw_plan *plan = laying->plan;
  double lost = lw_plan_depth(plan, course) * tan(fabs(laying->order->corner[corner].turn_rad) / 2.0);
  double module = plan->module_m;
  if (!inward(laying, corner))
    return odd(course, bit) ? fmin(module, fmax(module / 2.0, lost + module / 4.0)) : module;
  double whole = module - lost;
  return odd(course, bit) ? fmin(whole, fmax(whole - module / 2.0, module / 4.0)) : whole;
}

static double end_module(const lw_laying *laying, int corner, lw_row_end end, int course, int bit) {
  double module = laying->plan->module_m;
  switch (end) {
  case LW_ROW_STEP: return 0.0;
  case LW_ROW_MITRED: return mitred_module(laying, corner, course, bit);
  case LW_ROW_THROUGH:
    return laying->order->corner[corner].made == LW_MADE_HANDED ? laying->corner_unit_m + laying->plan->gap_m
                                                                : module;
  case LW_ROW_RING:
  case LW_ROW_STOPPED: return module;
  case LW_ROW_FREE: break;
  }
  return odd(course, bit) ? module / 2.0 : module;
}

/* Fill in the end pieces and what the modules must add up to. A gap ends each module, so the row has one
 * gap more than it needs, except at a step and around a ring. */
static void finish_row(const lw_laying *laying, const lw_stretch *s, lw_laid *row) {
  double gap = laying->plan->gap_m;
  row->first_m = end_module(laying, s->corner_before, row->start, row->course, s->start_bit);
  row->last_m = end_module(laying, s->corner_after, row->end, row->course, s->end_bit);
  if (row->start == LW_ROW_STEP && row->end == LW_ROW_STEP)
    row->first_m = odd(row->course, 0) ? laying->plan->module_m / 2.0 : laying->plan->module_m;
  if (row->start == LW_ROW_RING) row->last_m = 0.0;
  int gaps = row->start == LW_ROW_RING || row->end == LW_ROW_STEP ? 0 : 1;
  gaps -= row->start == LW_ROW_STEP ? 1 : 0;
  row->module_sum_m = row->to_m - row->from_m + gaps * gap;
}

lw_laid lw_row_whole(const lw_laying *laying, const lw_stretch *stretch, int course) {
  lw_span span[LW_RUN_MAX];
  int count = lw_spans_of(laying->order, stretch, course, span);
  lw_laid row = {.course = course};
  row.start = row.end = LW_ROW_RING;
  if (!stretch->ring) {
    row.start = end_at(laying, stretch->corner_before, false, course, stretch->start_bit);
    row.end = end_at(laying, stretch->corner_after, true, course, stretch->end_bit);
  }
  row.from_m = stays_back(laying, stretch->corner_before, row.start, course);
  row.to_m = span[count - 1].u_to - stays_back(laying, stretch->corner_after, row.end, course);
  if (stretch->ring && odd(course, 0)) {
    row.from_m += laying->plan->module_m / 2.0;
    row.to_m += laying->plan->module_m / 2.0;
  }
  finish_row(laying, stretch, &row);
  return row;
}

/* Is the course there at a distance of the plan, on this or that side of it? */
static bool laid_at(const lw_plan *plan, double at_m, bool after, int course) {
  double at = at_m;
  if (plan->closed && at >= plan->length_m - NEAR && after) at -= plan->length_m;
  if (plan->closed && at <= NEAR && !after) at += plan->length_m;
  return lw_plan_raised(plan, at, after) <= course;
}

static double wrapped(const lw_plan *plan, double at_m) {
  return plan->closed && at_m > plan->length_m + NEAR ? at_m - plan->length_m : at_m;
}

/* Next place where the course begins or ends within the stretch, from its beginning; its length when none. */
static double next_change(const lw_laying *laying, const lw_stretch *s, double from_m, int course) {
  const lw_plan *plan = laying->plan;
  double nearest = s->length_m;
  for (int i = 0; i < plan->step_count; i++) {
    double at = plan->step[i].at_m - s->from_m;
    if (at < -NEAR) at += plan->closed ? plan->length_m : 0.0;
    bool before = laid_at(plan, plan->step[i].at_m, false, course);
    bool after = laid_at(plan, plan->step[i].at_m, true, course);
    if (before != after && at > from_m + NEAR && at < nearest - NEAR) nearest = at;
  }
  return nearest;
}

static lw_status add_row(const lw_laying *laying, const lw_stretch *s, int course, double from_m,
                         double to_m) {
  const lw_plan *plan = laying->plan;
  lw_order *order = laying->order;
  if (order->row_count >= LW_ROW_MAX) return LW_TOO_MANY;
  lw_span span[LW_RUN_MAX];
  int count = lw_spans_of(laying->order, s, course, span);
  lw_laid row = lw_row_whole(laying, s, course);
  row.stretch = (int)(s - order->stretch);
  bool begins = from_m<NEAR, ends = to_m> s->length_m - NEAR;
  bool other = !begins || (s->corner_before >= 0 && !laid_at(plan, s->from_m, false, course));
  if (other) {
    row.start = LW_ROW_STEP;
    row.from_m = begins ? 0.0 : lw_spans_lay(span, count, from_m);
  }
  double at = wrapped(plan, s->from_m + s->length_m);
  other = !ends || (s->corner_after >= 0 && !laid_at(plan, at, true, course));
  if (other) {
    row.end = LW_ROW_STEP;
    row.to_m = ends ? span[count - 1].u_to : lw_spans_lay(span, count, to_m);
  }
  finish_row(laying, s, &row);
  order->row[order->row_count++] = row;
  return LW_OK;
}

lw_status lw_rows_build(const lw_laying *laying) {
  for (int i = 0; i < laying->order->stretch_count; i++) {
    const lw_stretch *s = &laying->order->stretch[i];
    for (int course = 0; course < laying->plan->courses; course++) {
      double from = 0.0;
      while (from < s->length_m - NEAR) {
        double to = next_change(laying, s, from, course);
        bool there = laid_at(laying->plan, wrapped(laying->plan, s->from_m + from), true, course);
        if (there && add_row(laying, s, course, from, to) != LW_OK) return LW_TOO_MANY;
        from = to;
      }
    }
  }
  return LW_OK;
}

/* The face of a course that stands clear of the ground at steps, in units of laying. */
double lw_rows_face(const lw_laying *laying, int course) {
  double face = 0.0;
  for (int i = 0; i < laying->order->stretch_count; i++) {
    const lw_stretch *s = &laying->order->stretch[i];
    lw_span span[LW_RUN_MAX];
    int count = lw_spans_of(laying->order, s, course, span);
    double from = 0.0;
    while (from < s->length_m - NEAR) {
      double to = next_change(laying, s, from, course);
      bool there = laid_at(laying->plan, wrapped(laying->plan, s->from_m + from), true, course);
      double end = to > s->length_m - NEAR ? span[count - 1].u_to : lw_spans_lay(span, count, to);
      if (there) face += end - (from < NEAR ? 0.0 : lw_spans_lay(span, count, from));
      from = to;
    }
  }
  return face;
}
