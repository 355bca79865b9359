/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "order/cap_pieces.h"
#include "order/plan.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

#define CAPS ";cap height=50 mm;cap depth=230 mm;cap length=600 mm;cap overhang=0 mm"

static double long_edges_m(const lw_order *order, double whole_m) {
  double sum = order->cap_whole * whole_m;
  for (int i = 0; i < order->cut_count; i++) {
    const lw_cut *c = &order->cut[i];
    if (c->kind == LW_CUT_CAP || c->kind == LW_CUT_CAP_MITRED || c->kind == LW_CUT_CAP_WEDGE)
      sum += c->count * c->long_m;
  }
  return sum;
}

static const lw_cut *find_cut(const lw_order *order, lw_cut_kind kind) {
  for (int i = 0; i < order->cut_count; i++)
    if (order->cut[i].kind == kind) return &order->cut[i];
  return NULL;
}

/* 6 m of top course in blocks of 400 mm: joints at every 0.4 m. Ten whole caps of 600 mm would put every
 * second joint on one of the blocks (1.2, 2.4 m ...). With half a cap at both ends the joints stand at 0.3,
 * 0.9, 1.5 m ...: always 100 mm from 0.4, 0.8, 1.6 m. Nine whole ones and two pieces of 300 mm. */
Test(order, caps_of_a_straight_wall_by_hand) {
  const lw_order *order = order_of("run 1 length=6 m" CAPS);
  cr_expect(order->run[0].cap_joint_known);
  cr_expect(epsilon_eq(dbl, order->run[0].cap_joint_m, 0.1, 1e-9));
  cr_expect(eq(int, order->cap_whole, 9));
  const lw_cut *cut = find_cut(order, LW_CUT_CAP);
  cr_assert(cut != NULL);
  cr_expect(eq(int, cut->count, 2));
  cr_expect(epsilon_eq(dbl, cut->long_m, 0.3, 1e-9));
  /* 600 - 300 and 4 mm of the saw: not a second one of 300. */
  cr_expect(epsilon_eq(dbl, cut->waste_long_m, 0.296, 1e-9));
  cr_expect(eq(int, order->cap_count, 11));
  cr_expect(eq(int, order_of("run 1 length=6 m;saw kerf=0 mm;offcuts used=yes" CAPS)->cap_count, 10));
}

/* A square corner of 230 mm caps: each mitred piece is 230 mm shorter at its short edge, and what falls off a
 * whole one is a triangle with a leg of 230 mm less the saw, which takes 4 mm / cos 45 deg of the edge. */
Test(order, the_waste_of_a_mitre_by_hand) {
  const lw_order *order = order_of("run 1 length=3.6 m;turn 1 angle=90 deg;run 2 length=2.4 m" CAPS);
  const lw_cut *cut = find_cut(order, LW_CUT_CAP_MITRED);
  cr_assert(cut != NULL);
  cr_expect(epsilon_eq(dbl, cut->long_m - cut->short_m, 0.23, 1e-9));
  cr_expect(epsilon_eq(dbl, cut->saw_deg, 45.0, 1e-9));
  cr_expect(epsilon_eq(dbl, cut->waste_long_m, 0.6 - cut->short_m - 0.004 * sqrt(2.0), 1e-9));
  cr_expect(order->corner[0].mitred);
  cr_expect(epsilon_eq(dbl, order->corner[0].cap_mitre_m, 0.23 * sqrt(2.0), 1e-9));
  cr_expect(epsilon_eq(dbl, long_edges_m(order, 0.6), 6.0, 1e-6));
}

/* Round a curve with its centre behind, R = 3 m at the front edge: a cap of 600 mm is
 * 600 (3 - 0.23)/3 = 554 mm at its rear, each end cut by half of 0.6/3 rad: atan(23/230) = 5.71 degrees. */
Test(order, caps_on_a_curve_are_wedges) {
  const lw_order *order =
      order_of("run 1 length=3.6 m;run 1 radius=3 m;block tail length=370 mm;curve gap=10 mm" CAPS);
  const lw_cut *cut = find_cut(order, LW_CUT_CAP_WEDGE);
  cr_assert(cut != NULL);
  cr_expect(epsilon_eq(dbl, order->cap_wedge_deg, 5.7106, 1e-4));
  cr_expect(epsilon_eq(dbl, cut->short_m / cut->long_m, 2.77 / 3.0, 1e-9));
  cr_expect(eq(int, order->cap_whole, 0));
  cr_expect(epsilon_eq(dbl, long_edges_m(order, 0.6), 3.6, 1e-6));
  /* Centre in front: the rear edge is the long one, 3.6 (3 + 0.23)/3 m of it. */
  order = order_of("run 1 length=3.6 m;run 1 radius=-3 m;curve gap=30 mm" CAPS);
  cr_expect(epsilon_eq(dbl, long_edges_m(order, 0.6), 3.6 * 3.23 / 3.0, 1e-6));
}

/* The points of a mitre of 60 degrees are 30 degrees sharp: a butt joint, with its reason. */
Test(order, past_what_a_mitre_can_do_a_butt_joint) {
  const lw_order *order = order_of("run 1 length=3.6 m;turn 1 angle=120 deg;run 2 length=2.4 m" CAPS);
  cr_expect(eq(int, order->corner[0].mitred, 0));
  cr_expect(order->corner[0].butt == LW_BUTT_SHARP && order->corner[0].butt_cut == LW_BUTT_REAR);
  cr_expect(order_note(order, "cap-butt-joint") != NULL);
  order = order_of("run 1 length=3.6 m;turn 1 angle=10 deg;run 2 length=2.4 m;run 2 cap depth=90 mm" CAPS);
  cr_expect(eq(int, order->corner[0].mitred, 0));
  order = order_of("run 1 length=3.6 m;turn 1 angle=90 deg;run 2 length=2.4 m;cap height=50 mm;cap depth=230 "
                   "mm;cap length=220 mm;cap overhang=0 mm");
  cr_expect(order->corner[0].butt == LW_BUTT_LONG && order->corner[0].butt_cut == LW_BUTT_SQUARE);
  /* Square and butt: the caps after the corner stop at those before it, 230 mm on. */
  cr_expect(epsilon_eq(dbl, long_edges_m(order, 0.22), 6.0 - 0.23, 1e-6));
}

/* Long edges add up to the line in front, at inside corners to what the rear is longer by. */
Test(order, caps_cover_their_line) {
  for (int i = 0; i < 150 / RANDOM_SHARE; i++) {
    char items[400];
    double turn = round(order_random(-95, 95)), a = round(order_random(1500, 6000)),
           b = round(order_random(1500, 6000)), over = round(order_random(0, 40));
    snprintf(
        items, sizeof items,
        "run 1 length=%.0f mm;turn 1 angle=%.0f deg;run 2 length=%.0f mm;setback=%.0f mm;cap height=50 mm;"
        "cap depth=230 mm;cap length=600 mm;cap overhang=%.0f mm",
        a, turn, b, round(order_random(0, 20)), over);
    const lw_order *order = order_of(items);
    double wanted = order->cap_line_m;
    if (order->corner_count > 0 && order->corner[0].mitred && turn < 0)
      wanted += order->corner[0].cap_extra_m[0] + order->corner[0].cap_extra_m[1];
    if (order->corner_count > 0 && !order->corner[0].mitred) continue;
    cr_expect(epsilon_eq(dbl, long_edges_m(order, 0.6), wanted, 0.0041), "%s", items);
    double face = order->plan.length_m - 2.0 * (lw_plan_offset(&order->plan, 2) - over / 1000.0) *
                                             tan(turn / 2.0 * 3.14159265358979 / 180.0);
    cr_expect(epsilon_eq(dbl, order->cap_line_m, face, 1e-9), "%s", items);
  }
}

/* What is drawn cap by cap is what is counted: end to end along the lowest face, each whole one a whole cap,
 * and as many sawn as the cutting list has. */
Test(order, caps_one_by_one_are_those_that_are_counted) {
  static const char *const plans[] = {
      "run 1 length=6 m" CAPS, "run 1 length=4.7 m;turn 1 angle=60 deg;run 2 length=3.3 m;setback=10 mm" CAPS,
      "run 1 length=4.2 m;turn 1 angle=-90 deg;run 2 length=3.1 m" CAPS,
      "run 1 length=2.4 m;turn 1 angle=0 deg;run 2 length=3 m;run 2 radius=4 m;curve gap=60 mm" CAPS};
  static lw_piece piece[LW_PIECE_MAX];
  for (size_t i = 0; i < sizeof plans / sizeof *plans; i++) {
    const lw_order *order = order_of(plans[i]);
    int whole = 0, sawn = 0, listed = 0;
    for (int run = 0; run < order->plan.run_count; run++) {
      int count = lw_order_cap_pieces(order, run, piece);
      cr_assert(lt(int, 0, count), "%s", plans[i]);
      cr_expect(epsilon_eq(dbl, piece[0].from_m, order->run[run].caps.base_from_m, 1e-9));
      cr_expect(epsilon_eq(dbl, piece[count - 1].to_m, order->run[run].caps.base_to_m, 1e-9));
      for (int k = 0; k < count; k++) {
        whole += piece[k].kind == LW_PIECE_WHOLE ? 1 : 0;
        sawn += piece[k].kind == LW_PIECE_WHOLE ? 0 : 1;
        cr_expect(lt(dbl, piece[k].from_m, piece[k].to_m), "%s", plans[i]);
        if (k > 0) cr_expect(epsilon_eq(dbl, piece[k].from_m, piece[k - 1].to_m, 1e-9));
      }
    }
    for (int k = 0; k < order->cut_count; k++)
      if (order->cut[k].kind == LW_CUT_CAP || order->cut[k].kind == LW_CUT_CAP_MITRED)
        listed += order->cut[k].count;
    if (order->cap_wedge_deg > 0.0) continue; /* all of a curve are sawn, at both ends */
    cr_expect(eq(int, whole, order->cap_whole), "%s", plans[i]);
    cr_expect(eq(int, sawn, listed), "%s", plans[i]);
  }
}

/* 120 degrees of turn: 60 between the runs, a mitre of 30 is too sharp. The caps of run 2 begin where their
 * front edge meets the rear edge of those of run 1, 230 / sin 60 = 265.6 mm from the corner. */
Test(order, caps_after_a_sharp_butt_joint_begin_at_the_rear_edge) {
  static lw_piece piece[LW_PIECE_MAX];
  const lw_order *order = order_of("run 1 length=3 m;turn 1 angle=120 deg;run 2 length=3 m" CAPS);
  double hidden = 0.23 / sin(60.0 * 3.14159265358979323846 / 180.0), sum = 0.0;
  int count = lw_order_cap_pieces(order, 1, piece);
  cr_expect_not(order->corner[0].mitred);
  for (int i = 0; i < count; i++) sum += piece[i].length_m;
  cr_expect(epsilon_eq(dbl, sum, 3.0 - hidden, 1e-9));
  cr_expect(epsilon_eq(dbl, piece[0].from_m, hidden, 1e-9));
  cr_expect(epsilon_eq(dbl, piece[0].to_m, hidden + piece[0].length_m, 1e-9));
  cr_expect(epsilon_eq(dbl, piece[count - 1].to_m, 3.0, 1e-9));
  /* Round 10 degrees they begin where those of run 1 end. */
  order = order_of("run 1 length=3.6 m;turn 1 angle=10 deg;run 2 length=2.4 m;run 2 cap depth=90 mm" CAPS);
  cr_expect_not(order->corner[0].mitred);
  lw_order_cap_pieces(order, 1, piece);
  cr_expect(epsilon_eq(dbl, piece[0].from_m, 0.0, 1e-9));
}

/* Two runs of caps, 300 and 400 mm deep, each bought for itself: whole ones, cuts and mass. */
Test(order, caps_of_two_depths_are_two_lines) {
  const lw_order *order =
      order_of("run 1 length=3.6 m;turn 1 angle=90 deg;run 2 length=2.4 m;run 2 cap depth=400 mm;"
               "cap height=50 mm;cap length=600 mm;cap depth=300 mm;cap overhang=30 mm;"
               "cap unit weight=24 kN/m3");
  cr_assert(eq(int, order->cap_sort_count, 2));
  double net[2] = {0};
  for (int i = 0, n = 0; i < order->line_count; i++)
    if (order->line[i].kind == LW_LINE_CAPS) {
      const lw_cap_sort *sort = &order->cap_sort[n];
      cr_expect(epsilon_eq(dbl, order->line[i].cap_depth_m, sort->depth_m, 1e-12));
      cr_expect(epsilon_eq(dbl, order->line[i].mass_kg, order->line[i].order * sort->mass_kg, 1e-9));
      net[n++] = order->line[i].net;
    }
  cr_expect(epsilon_eq(dbl, order->cap_sort[1].mass_kg / order->cap_sort[0].mass_kg, 4.0 / 3.0, 1e-9));
  cr_expect(epsilon_eq(dbl, net[0] + net[1], order->cap_count, 1e-9));
  /* The long edges of each sort are the front edge of its run, longer at the corner by the overhang. */
  for (int n = 0; n < 2; n++) {
    double edge = 0.6 * order->cap_sort[n].whole;
    for (int i = 0; i < order->cut_count; i++)
      if (fabs(order->cut[i].cap_depth_m - order->cap_sort[n].depth_m) < 1e-9)
        edge += order->cut[i].count * order->cut[i].long_m;
    cr_expect(epsilon_eq(dbl, edge, (n ? 2.4 : 3.6) + 0.03, 1e-3));
  }
}
