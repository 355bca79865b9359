/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

/* The caps: a line of them in front of the top course by the overhang, mitred where it turns. */

typedef struct capping {
  lw_laying *laying;
  double length_m, overhang_m, point_least_deg, piece_least_m;
} capping;

static void butt(lw_order_corner *corner, const char *reason) {
  corner->mitred = false;
  corner->butt_reason = reason;
}

/* The material of a corner turned either way lies in the angle between its runs that is less than a half
 * turn. */
static void cut_corner(const capping *k, lw_order_corner *corner) {
  const lw_plan *plan = k->laying->plan;
  double angle = 3.14159265358979323846 - fabs(corner->turn_rad);
  double before = plan->run[corner->run].cap_depth_m;
  double after = plan->run[lw_plan_at(plan, corner->run + 1)].cap_depth_m;
  lw_mitre mitre;
  if (lw_order_mitre(angle, before, after, &mitre) != LW_OK) {
    butt(corner, "the two widths do not meet in a mitre at this angle");
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
    butt(corner, "the points of the mitre would be too sharp and break");
  else if (fmax(mitre.extra_m[0], mitre.extra_m[1]) >= k->length_m)
    butt(corner, "the mitre is longer than a cap");
}

/* The line of caps on a run: the face of the top course moved out by the overhang, 0 at free ends. */
static double cap_line(const capping *k, int run) {
  const lw_plan *plan = k->laying->plan;
  return lw_plan_run_length(plan, run, lw_plan_offset(plan, plan->courses - 1) - k->overhang_m);
}

static const lw_order_corner *corner_at(const lw_order *order, int run) {
  for (int i = 0; i < order->corner_count; i++)
    if (order->corner[i].run == run) return &order->corner[i];
  return NULL;
}

static void add_mitred(const capping *k, const lw_order_corner *corner, int side) {
  if (corner == NULL || !corner->mitred) return;
  double extra = corner->cap_extra_m[side];
  lw_cut cut = {LW_CUT_CAP_MITRED, false, k->length_m, k->length_m - extra, corner->cap_saw_deg[side], 1};
  lw_order_cut_add(k->laying->order, &cut);
}

/* Whole caps from both ends; what is left is one cut, or two of half and more where it would be a sliver.
 * At an inside mitre the long edge is at the rear, so the line in front is short of it. */
static void lay_run(const capping *k, int run) {
  const lw_plan *plan = k->laying->plan;
  lw_order *order = k->laying->order;
  const lw_order_corner *end = corner_at(order, run);
  const lw_order_corner *begin = run > 0 || plan->closed ? corner_at(order, lw_plan_at(plan, run - 1)) : NULL;
  double line = cap_line(k, run), module = k->length_m + plan->gap_m;
  double laid = line + plan->gap_m;
  if (begin != NULL && begin->mitred && begin->turn_rad < 0.0) laid += begin->cap_extra_m[1];
  if (end != NULL && end->mitred && end->turn_rad < 0.0) laid += end->cap_extra_m[0];
  int whole = (int)floor((laid + LW_TAKEN_UP) / module);
  double left = laid - whole * module;
  add_mitred(k, begin, 1);
  add_mitred(k, end, 0);
  order->cap_line_m += line;
  order->cap_count += whole;
  if (left > LW_TAKEN_UP) {
    bool two = left - plan->gap_m < k->piece_least_m && whole > 0;
    double piece = (two ? (left + module) / 2.0 : left) - plan->gap_m;
    lw_cut cut = {LW_CUT_CAP, false, piece, piece, 0.0, two ? 2 : 1};
    lw_order_cut_add(order, &cut);
    order->cap_count++;
    whole -= two ? 1 : 0;
  }
  int mitred = (begin != NULL && begin->mitred ? 1 : 0) + (end != NULL && end->mitred ? 1 : 0);
  order->cap_whole += whole > mitred ? whole - mitred : 0;
}

void lw_order_caps(lw_laying *laying, const lw_result *result) {
  const lw_case *c = &result->given;
  lw_order *order = laying->order;
  order->has_cap = c->cap_height.origin != LW_ABSENT && c->cap_height.si > 0.0;
  if (!order->has_cap) return;
  capping k = {.laying = laying,
               .length_m = c->order.cap_length.si,
               .overhang_m = c->cap_overhang.si,
               .point_least_deg = lw_ordering_value(laying->tables, "mitre-point-least", 32.0),
               .piece_least_m = lw_ordering_value(laying->tables, "cap-piece-least", 0.3)};
  order->cap_overhang_m = k.overhang_m;
  for (int i = 0; i < order->corner_count; i++) {
    cut_corner(&k, &order->corner[i]);
    if (order->corner[i].mitred) continue;
    lw_order_note_add(order, "cap-butt-joint", "The caps at the end of run %d: a butt joint, because %s.",
                      order->corner[i].run + 1, order->corner[i].butt_reason);
  }
  for (int i = 0; i < laying->plan->run_count; i++) {
    double radius = laying->plan->run[i].radius_m;
    if (fabs(radius) > 0.0)
      order->cap_wedge_deg = fmax(order->cap_wedge_deg, LW_DEG_PER_RAD * k.length_m / 2.0 / fabs(radius));
    lay_run(&k, i);
  }
}
