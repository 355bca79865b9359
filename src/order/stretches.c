/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "stretches.h"

#include <math.h>

#include "laying.h"
#include "note.h"
#include "plan.h"
#include "base/angles.h"

/* Corners, and the chains of runs between them. */

static const double HALF_DEGREE = 0.0087266;
static double deepest(const lw_plan *plan) {
  return fmax(plan->base_courses > 0 ? plan->base_depth_m : 0.0, plan->depth_m);
}

/* What is left of a block at the shorter edge of a mitre. */
static bool mitre_fits(const lw_laying *laying, double turn_rad) {
  double lost = deepest(laying->plan) * tan(fabs(turn_rad) / 2.0);
  return lost <= (1.0 - laying->mitre_share) * laying->plan->unit_m + LW_TAKEN_UP;
}

lw_status lw_corners_hold(const lw_laying *laying, lw_plan_fault *fault) {
  const lw_plan *plan = laying->plan;
  int corners = plan->closed ? plan->run_count : plan->run_count - 1;
  for (int i = 0; i < corners; i++) {
    double turn = plan->run[i].turn_rad, room = (1.0 - laying->mitre_share) * plan->unit_m;
    if (fabs(fabs(turn) - LW_HALF_PI) < HALF_DEGREE || mitre_fits(laying, turn)) continue;
    *fault = (lw_plan_fault){.kind = LW_PLAN_MITRE,
                             .at = i,
                             .angle_rad = 2.0 * atan(room / deepest(plan)),
                             .length_m = plan->unit_m,
                             .share = laying->mitre_share};
    return LW_FAULTS;
  }
  return LW_OK;
}

static lw_corner_made made_of(const lw_laying *laying, double turn_rad) {
  bool square = fabs(fabs(turn_rad) - LW_HALF_PI) < HALF_DEGREE;
  bool asked = laying->asked == LW_CORNER_CUT && mitre_fits(laying, turn_rad);
  if (!square || asked) return LW_MADE_CUT;
  bool outward = turn_rad > 0.0;
  return laying->asked == LW_CORNER_HANDED && outward ? LW_MADE_HANDED : LW_MADE_TURNED;
}

static void note_turned(const lw_laying *laying, const lw_order_corner *corner) {
  double deep = deepest(laying->plan);
  lw_order_note_add(laying->order, &(lw_order_note){.kind = LW_NOTE_CORNER_TURNED,
                                                    .number = corner->run + 1,
                                                    .depth_m = deep,
                                                    .length_m = deep * tan(fabs(corner->turn_rad) / 2.0)});
}

static void find_corners(const lw_laying *laying) {
  const lw_plan *plan = laying->plan;
  lw_order *order = laying->order;
  int runs = plan->closed ? plan->run_count : plan->run_count - 1;
  for (int i = 0; i < runs; i++) {
    if (!(fabs(plan->run[i].turn_rad) > 0.0)) continue;
    lw_order_corner *corner = &order->corner[order->corner_count++];
    *corner = (lw_order_corner){.run = i, .turn_rad = plan->run[i].turn_rad};
    corner->made = made_of(laying, corner->turn_rad);
    if (laying->asked == LW_CORNER_CUT && corner->made != LW_MADE_CUT) note_turned(laying, corner);
  }
}

/* The corner at the end of a run, or -1. */
static int corner_after(const lw_order *order, int run) {
  for (int i = 0; i < order->corner_count; i++)
    if (order->corner[i].run == run) return i;
  return -1;
}

static lw_stretch begin_stretch(const lw_laying *laying, int run, int before) {
  return (lw_stretch){.first_run = run,
                      .corner_before = before,
                      .corner_after = -1,
                      .from_m = laying->plan->run[lw_plan_at(laying->plan, run)].from_m};
}

void lw_stretches_build(const lw_laying *laying) {
  const lw_plan *plan = laying->plan;
  lw_order *order = laying->order;
  find_corners(laying);
  bool ring = plan->closed && order->corner_count == 0;
  int first = plan->closed && !ring ? order->corner[0].run + 1 : 0;
  int before = plan->closed && !ring ? 0 : -1;
  lw_stretch open = begin_stretch(laying, first, before);
  open.ring = ring;
  for (int i = 0; i < plan->run_count; i++) {
    int run = lw_plan_at(plan, first + i);
    int after = ring ? -1 : corner_after(order, run);
    open.run_count++;
    open.length_m += plan->run[run].length_m;
    if (after < 0 && i + 1 < plan->run_count) continue;
    open.corner_after = after;
    laying->order->stretch[laying->order->stretch_count++] = open;
    open = begin_stretch(laying, first + i + 1, after);
  }
}
