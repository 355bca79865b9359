/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "caps.h"

#include <math.h>

#include "base/angles.h"
#include "tables/known.h"
#include "cap_lay.h"
#include "laying.h"
#include "mitre.h"
#include "note.h"
#include "plan.h"

/* The caps: a line of them in front of the top course by the overhang, mitred where it turns. */

/* Round a lesser corner a butt joint stands at the end of the caps before it, not at their rear edge. */
static const double AT_REAR = LW_PI / 3.0;

static void butt(lw_order *order, lw_order_corner *corner, lw_butt why) {
  double angle = LW_DEG_PER_RAD * (LW_PI - fabs(corner->turn_rad)), saw = fabs(90.0 - angle);
  corner->mitred = false;
  corner->butt = why;
  corner->butt_cut = saw < 0.5                           ? LW_BUTT_SQUARE
                     : fabs(corner->turn_rad) >= AT_REAR ? LW_BUTT_REAR
                                                         : LW_BUTT_END;
  lw_order_note_add(order, &(lw_order_note){.kind = LW_NOTE_CAP_BUTT_JOINT, .number = corner->run + 1});
}

/* The material of a corner turned either way lies in the angle between its runs that is less than a half
 * turn. */
static void cut_corner(const lw_capping *k, lw_order_corner *corner) {
  const lw_plan *plan = k->laying->plan;
  double angle = LW_PI - fabs(corner->turn_rad);
  double before = plan->run[corner->run].cap_depth_m;
  double after = plan->run[lw_plan_at(plan, corner->run + 1)].cap_depth_m;
  lw_mitre mitre;
  if (lw_order_mitre(angle, before, after, &mitre) != LW_OK) {
    butt(k->laying->order, corner, LW_BUTT_NO_MITRE);
    return;
  }
  corner->mitred = true;
  corner->cap_mitre_m = mitre.cut_m;
  for (int i = 0; i < 2; i++) {
    corner->cap_angle_deg[i] = mitre.angle_rad[i] * LW_DEG_PER_RAD;
    corner->cap_saw_deg[i] = 90.0 - corner->cap_angle_deg[i];
    corner->cap_extra_m[i] = mitre.extra_m[i];
  }
  double sharp = fmin(corner->cap_angle_deg[0], corner->cap_angle_deg[1]);
  if (sharp < k->point_least_deg)
    butt(k->laying->order, corner, LW_BUTT_SHARP);
  else if (fmax(mitre.extra_m[0], mitre.extra_m[1]) >= k->length_m - LW_TAKEN_UP)
    butt(k->laying->order, corner, LW_BUTT_LONG);
}

static const lw_order_corner *corner_at(const lw_order *order, int run) {
  for (int i = 0; i < order->corner_count; i++)
    if (order->corner[i].run == run) return &order->corner[i];
  return NULL;
}

/* What an end adds to the laying line in front. At an inside mitre the long edge is at the rear, so the line
 * in front is short of it. At a butt joint the caps before run through and those after stop at their rear
 * edge, which the front edge meets the farther on the sharper the corner is. */
static double end_adds(const lw_capping *k, const lw_order_corner *corner, int side, double gap_m) {
  const lw_plan *plan = k->laying->plan;
  if (corner == NULL) return 0.0;
  bool inward = corner->turn_rad < 0.0;
  if (corner->mitred) return inward ? corner->cap_extra_m[side] : 0.0;
  double before = plan->run[corner->run].cap_depth_m;
  if (side == 1 && !inward && corner->turn_rad >= AT_REAR) return -before / sin(corner->turn_rad) - gap_m;
  bool square = fabs(fabs(corner->turn_rad) - LW_PI / 2.0) < 0.01;
  if (!square) return 0.0;
  if (side == 0) return inward ? plan->run[lw_plan_at(plan, corner->run + 1)].cap_depth_m : 0.0;
  return -gap_m;
}

static lw_cap_end end_of(const lw_capping *k, const lw_order_corner *corner, int side) {
  const lw_plan *plan = k->laying->plan;
  double offset = lw_plan_offset(plan, plan->courses - 1) - k->overhang_m;
  lw_cap_end end = {.adds_m = end_adds(k, corner, side, plan->gap_m)};
  if (corner == NULL) {
    end.base_m = (plan->courses - 1) * plan->end_setback_m;
    return end;
  }
  end.base_m = offset * tan(corner->turn_rad / 2.0);
  end.mitred = corner->mitred;
  end.inward = corner->turn_rad < 0.0;
  end.extra_m = corner->mitred ? corner->cap_extra_m[side] : 0.0;
  end.saw_deg = corner->mitred ? corner->cap_saw_deg[side] : 0.0;
  return end;
}

/* On a curve the long edges make the line: the front where the centre is behind, else the rear. */
static lw_cap_line line_of(const lw_capping *k, int run) {
  const lw_plan *plan = k->laying->plan;
  const lw_plan_run *r = &plan->run[run];
  const lw_order *order = k->laying->order;
  bool first = run == 0 && !plan->closed, last = run == plan->run_count - 1 && !plan->closed;
  bool straight_before = first ? false : fabs(plan->run[lw_plan_at(plan, run - 1)].turn_rad) > 0.0;
  double offset = lw_plan_offset(plan, plan->courses - 1) - k->overhang_m;
  lw_cap_line line = {.run = run, .ratio = 1.0};
  line.begin = end_of(k, first ? NULL : corner_at(order, lw_plan_at(plan, run - 1)), 1);
  line.end = end_of(k, last ? NULL : corner_at(order, run), 0);
  if (!first && !straight_before) line.begin = (lw_cap_end){0};
  if (!last && !(fabs(r->turn_rad) > 0.0)) line.end = (lw_cap_end){0};
  line.base_m = r->length_m - line.begin.base_m - line.end.base_m;
  line.front_m = line.base_m;
  line.long_m = line.front_m;
  if (!(fabs(r->radius_m) > 0.0)) return line;
  double front = fabs(r->radius_m - offset), deep = r->cap_depth_m;
  bool convex = r->radius_m > 0.0;
  line.front_m *= front / fabs(r->radius_m);
  line.ratio = convex ? fmax(0.0, front - deep) / front : front / (front + deep);
  line.long_m = convex ? line.front_m : line.front_m / line.ratio;
  return line;
}

static lw_capping begin(const lw_laying *laying) {
  const lw_tables *tables = laying->tables;
  return (lw_capping){.laying = laying,
                      .length_m = laying->items->cap_length.si,
                      .overhang_m = laying->courses->cap_overhang.si,
                      .point_least_deg = lw_known_value(tables, LW_ORDERING_MITRE_POINT_LEAST),
                      .piece_least_m = lw_known_value(tables, LW_ORDERING_CAP_PIECE_LEAST),
                      .joint_least_m = lw_known_value(tables, LW_ORDERING_CAP_JOINT_LEAST)};
}

static void warn_of_joints(const lw_capping *k) {
  lw_order *order = k->laying->order;
  for (int i = 0; i < k->laying->plan->run_count; i++) {
    const lw_order_run *r = &order->run[i];
    if (!r->cap_joint_known || r->cap_joint_m >= k->joint_least_m - LW_TAKEN_UP) continue;
    lw_order_note_add(order, &(lw_order_note){.kind = LW_NOTE_CAP_JOINT_NEAR, .number = i + 1});
  }
}

void lw_order_caps(const lw_laying *laying) {
  lw_order *order = laying->order;
  order->has_cap = laying->cap_m > 0.0;
  if (!order->has_cap) return;
  lw_capping k = begin(laying);
  order->cap_overhang_m = k.overhang_m;
  order->cap_joint_needs_m = k.joint_least_m;
  order->cap_gap_m = laying->plan->gap_m;
  for (int i = 0; i < order->corner_count; i++) cut_corner(&k, &order->corner[i]);
  for (int i = 0; i < laying->plan->run_count; i++) {
    lw_cap_line line = line_of(&k, i);
    order->cap_line_m += line.front_m;
    lw_caps_lay(&k, &line);
  }
  warn_of_joints(&k);
}
