/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "count.h"

#include <math.h>

#include "cuts.h"
#include "laying.h"
#include "note.h"
#include "plan.h"
#include "rows.h"
#include "spans.h"

/* The pieces of all rows, course by course, and the cuts among them. */

static void count_square(const lw_laying *laying, int course, double module_m) {
  const lw_plan *plan = laying->plan;
  lw_course_count *c = &laying->order->course[course];
  if (lw_laid_same(module_m, plan->module_m)) {
    c->whole++;
  } else if (lw_laid_half(plan, module_m)) {
    /* Two halves come from one block: the saw takes half its width from each. */
    double length = fmin(module_m - plan->gap_m, (plan->unit_m - laying->kerf_m) / 2.0);
    lw_cut cut = {.kind = LW_CUT_HALF,
                  .base_unit = course < plan->base_courses,
                  .long_m = length,
                  .short_m = length,
                  .count = 1};
    c->half++;
    if (laying->half_cut) lw_cuts_add(laying->order, &cut);
  } else {
    double length = module_m - plan->gap_m;
    lw_cut cut = {.kind = LW_CUT_CLOSER,
                  .base_unit = course < plan->base_courses,
                  .long_m = length,
                  .short_m = length,
                  .count = 1};
    c->closer++;
    lw_cuts_add(laying->order, &cut);
  }
}

/* Outwards the face is the long edge, inwards the short one. */
static void count_mitred(const lw_laying *laying, int course, const lw_order_corner *corner,
                         double module_m) {
  const lw_plan *plan = laying->plan;
  double half_turn = corner->turn_rad / 2.0, face = module_m - plan->gap_m;
  double rear = face - lw_plan_depth(plan, course) * tan(half_turn);
  lw_cut cut = {.kind = LW_CUT_MITRED,
                .base_unit = course < plan->base_courses,
                .long_m = fmax(face, rear),
                .short_m = fmax(0.0, fmin(face, rear)),
                .saw_deg = fabs(half_turn) * LW_DEG_PER_RAD,
                .count = 1};
  laying->order->course[course].mitred++;
  lw_cuts_add(laying->order, &cut);
}

static void count_end(const lw_laying *laying, const lw_laid *row, bool at_end) {
  const lw_stretch *s = &laying->order->stretch[row->stretch];
  double module = at_end ? row->last_m : row->first_m;
  int index = at_end ? s->corner_after : s->corner_before;
  lw_row_end end = at_end ? row->end : row->start;
  if (!(module > 0.0)) return;
  lw_course_count *c = &laying->order->course[row->course];
  lw_order_corner *corner = index >= 0 ? &laying->order->corner[index] : NULL;
  if (corner != NULL && end == LW_ROW_MITRED) {
    count_mitred(laying, row->course, corner, module);
  } else if (corner != NULL && end == LW_ROW_THROUGH && corner->made == LW_MADE_HANDED) {
    /* Seen from the front the end of a stretch is at its right. */
    c->left += at_end ? 0 : 1;
    c->right += at_end ? 1 : 0;
    corner->left += at_end ? 0 : 1;
    corner->right += at_end ? 1 : 0;
  } else {
    count_square(laying, row->course, module);
  }
}

/* What of the face a row and the heads at its ends cover. */
static double covers(const lw_laying *laying, const lw_laid *row) {
  const lw_stretch *s = &laying->order->stretch[row->stretch];
  double covered = row->to_m - row->from_m;
  double depth = lw_plan_depth(laying->plan, row->course), gap = laying->plan->gap_m;
  for (int at_end = 0; at_end < 2; at_end++) {
    int index = at_end ? s->corner_after : s->corner_before;
    lw_row_end end = at_end ? row->end : row->start;
    if (index < 0 || (end != LW_ROW_THROUGH && end != LW_ROW_STOPPED)) continue;
    bool inward = laying->order->corner[index].turn_rad < 0.0;
    if (end == LW_ROW_STOPPED)
      covered += inward ? gap : depth + gap;
    else
      covered -= inward ? depth : 0.0;
  }
  return covered;
}

/* A row too short for whole end pieces has cut ones in their place, at its corners as well. */
static void note_short(const lw_laying *laying, const lw_laid *row) {
  bool ends = row->first_m > 0.0 || row->last_m > 0.0 || row->before + row->after > 0;
  if (ends || row->start == LW_ROW_STEP || row->end == LW_ROW_STEP) return;
  int run = lw_plan_at(laying->plan, laying->order->stretch[row->stretch].first_run) + 1;
  for (int i = 0; i < laying->order->note_count; i++) {
    const lw_order_note *told = &laying->order->note[i];
    if (told->kind == LW_NOTE_SHORT_RUN && told->number == run) return;
  }
  lw_order_note_add(laying->order, &(lw_order_note){.kind = LW_NOTE_SHORT_RUN, .number = run});
}

/* The step of the base where a row begins or ends. */
static const lw_plan_step *step_beside(const lw_laying *laying, const lw_laid *row, int *number) {
  const lw_plan *plan = laying->plan;
  const lw_stretch *s = &laying->order->stretch[row->stretch];
  lw_span span[LW_RUN_MAX];
  int spans = lw_spans_of(laying->order, s, row->course, span);
  double end = lw_spans_base(span, spans, row->start == LW_ROW_STEP ? row->from_m : row->to_m);
  for (int i = 0; i < plan->step_count; i++) {
    double at = plan->step[i].at_m - s->from_m;
    if (at < 0.0 && plan->closed) at += plan->length_m;
    *number = i + 1;
    if (fabs(at - end) < LW_TAKEN_UP) return &plan->step[i];
  }
  return NULL;
}

/* A step so near to an end, a corner or another step that only a sliver of a block has room. */
static void note_sliver(const lw_laying *laying, const lw_laid *row) {
  const lw_plan *plan = laying->plan;
  double shortest = INFINITY, all[] = {row->first_m, row->last_m, row->closer_m[0], row->closer_m[1]};
  int count = 2 + row->closer_count, number = 0;
  for (int i = 0; i < count; i++)
    if (all[i] > 0.0) shortest = fmin(shortest, all[i]);
  if (shortest >= laying->cut_share * plan->module_m - LW_TAKEN_UP) return;
  const lw_plan_step *step = step_beside(laying, row, &number);
  if (step == NULL) return;
  lw_order_note_add(laying->order, &(lw_order_note){.kind = LW_NOTE_STEP_SLIVER,
                                                    .number = row->course + 1,
                                                    .step = number,
                                                    .at_m = step->at_m,
                                                    .length_m = shortest - plan->gap_m});
}

static void count_row(const lw_laying *laying, const lw_laid *row) {
  lw_course_count *c = &laying->order->course[row->course];
  count_end(laying, row, false);
  c->whole += row->before + row->after;
  for (int i = 0; i < row->closer_count; i++) count_square(laying, row->course, row->closer_m[i]);
  count_end(laying, row, true);
  note_short(laying, row);
  note_sliver(laying, row);
  c->covered_m += covers(laying, row);
  if (!row->below_known || (c->overlap_known && c->overlap_m <= row->overlap_m)) return;
  const lw_stretch *s = &laying->order->stretch[row->stretch];
  int run = 0;
  double at = row->overlap_at_m;
  while (run + 1 < s->run_count) {
    double length = laying->plan->run[lw_plan_at(laying->plan, s->first_run + run)].length_m;
    if (at <= length) break;
    at -= length;
    run++;
  }
  c->overlap_known = true;
  c->overlap_m = row->overlap_m;
  c->overlap_at_m = at;
  c->overlap_run = lw_plan_at(laying->plan, s->first_run + run) + 1;
}

void lw_order_count(const lw_laying *laying) {
  lw_order *order = laying->order;
  for (int course = 0; course < laying->plan->courses; course++) {
    order->course[course].offset_m = lw_plan_offset(laying->plan, course);
    order->course[course].face_m = lw_rows_face(laying, course);
  }
  for (int i = 0; i < order->row_count; i++) count_row(laying, &order->row[i]);
  order->overlap_needs_m = laying->overlap_share * laying->plan->module_m;
  for (int course = 1; course < laying->plan->courses && order->overlap_fails_at == 0; course++) {
    const lw_course_count *c = &order->course[course];
    if (c->overlap_known && c->overlap_m < order->overlap_needs_m - LW_TAKEN_UP)
      order->overlap_fails_at = course + 1;
  }
}
