/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>

/* Small plans counted by hand, with blocks of 400 x 200 x 200 mm: half bond comes by itself at the
 * corners. */

typedef struct counted {
  int whole, half, closer;
} counted;

static void expect_course(const lw_order *order, int course, counted by_hand, const char *which) {
  const lw_course_count *c = &order->course[course - 1];
  cr_expect(c->whole == by_hand.whole && c->half == by_hand.half && c->closer == by_hand.closer,
            "%s, course %d: %d whole, %d half, %d cut; by hand %d, %d, %d", which, course, c->whole, c->half,
            c->closer, by_hand.whole, by_hand.half, by_hand.closer);
}

/* 2.4 m: six blocks; half, five, half; six. */
Test(order, a_straight_wall_by_hand) {
  const lw_order *order = order_of("run 1 length=2.4 m");
  expect_course(order, 1, (counted){6, 0, 0}, "straight");
  expect_course(order, 2, (counted){5, 2, 0}, "straight");
  expect_course(order, 3, (counted){6, 0, 0}, "straight");
  cr_expect(epsilon_eq(dbl, order->course[1].overlap_m, 0.2, 1e-9));
  cr_expect(eq(int, order->overlap_fails_at, 0));
}

/* 2.6 m: six and a half, the half at alternate ends. */
Test(order, a_straight_wall_of_half_a_unit_more) {
  const lw_order *order = order_of("run 1 length=2.6 m");
  for (int course = 1; course <= 3; course++) expect_course(order, course, (counted){6, 1, 0}, "2.6 m");
  cr_expect(epsilon_eq(dbl, order->course[1].overlap_m, 0.2, 1e-9));
}

/* L of 2.4 and 1.6 m. Course 1: run 1 runs through, 6; run 2 has 1.6 - 0.2 = 1.4 m, 3 and a half.
 * Course 2: run 1 has 2.2 m, a half and 5; run 2 runs through, 4. */
Test(order, an_l_by_hand) {
  const lw_order *order = order_of("run 1 length=2.4 m;run 2 length=1.6 m;turn 1 angle=90 deg");
  expect_course(order, 1, (counted){9, 1, 0}, "L");
  expect_course(order, 2, (counted){9, 1, 0}, "L");
  expect_course(order, 3, (counted){9, 1, 0}, "L");
  cr_expect(epsilon_eq(dbl, order->course[1].overlap_m, 0.2, 1e-9));
}

/* L turned away from the soil: the run that runs through goes on behind the other one's face by 0.2 m.
 * Course 1: 2.4 + 0.2 = 2.6 m, 6 and a half; run 2 has 1.6 m, 4. */
Test(order, an_inside_corner_by_hand) {
  const lw_order *order = order_of("run 1 length=2.4 m;run 2 length=1.6 m;turn 1 angle=-90 deg");
  order_pieces all = order_all(order);
  cr_expect(eq(int, all.closer, 0));
  expect_course(order, 1, (counted){10, 1, 0}, "inside");
  expect_course(order, 2, (counted){10, 1, 0}, "inside");
}

/* U of 1.6, 2.4 and 1.6 m: outer faces. The middle run has 2.4 m in one course and 2.0 m in the other when
 * it runs through at both ends or at none: 6 or 5. The sides then have 1.4 m, 3 and a half, or 1.6 m, 4.
 * So one course has 6 + 3 + 3 = 12 whole ones and 2 halves, the other 5 + 4 + 4 = 13. */
Test(order, a_u_by_hand) {
  const lw_order *order = order_of("run 1 length=1.6 m;run 2 length=2.4 m;run 3 length=1.6 m;"
                                   "turn 1 angle=90 deg;turn 2 angle=90 deg");
  order_pieces all = order_all(order);
  cr_expect(eq(int, all.closer, 0));
  bool through = order->course[0].half > 0;
  for (int course = 1; course <= 3; course++)
    expect_course(order, course, (course & 1) == through ? (counted){12, 2, 0} : (counted){13, 0, 0}, "U");
  double pieces = order->course[0].whole + order->course[0].half / 2.0;
  /* 5.6 m of face, less a head of 0.2 m at each of two corners: 5.2 m, 13 units. */
  cr_expect(epsilon_eq(dbl, pieces, 13.0, 1e-9));
  pieces = order->course[1].whole + order->course[1].half / 2.0;
  cr_expect(epsilon_eq(dbl, pieces, 13.0, 1e-9));
}

/* Closed, 2.4 by 1.6 m outside: (2 (2.4 + 1.6) - 4 x 0.2) / 0.4 = 18 in each course. [LOWWALL order] */
Test(order, a_closed_rectangle_by_hand) {
  const lw_order *order =
      order_of("run 1 length=2.4 m;run 2 length=1.6 m;run 3 length=2.4 m;run 4 length=1.6 m;"
               "turn 1 angle=90 deg;turn 2 angle=90 deg;turn 3 angle=90 deg");
  cr_expect(order->plan.closed);
  for (int course = 1; course <= 3; course++) expect_course(order, course, (counted){18, 0, 0}, "rectangle");
  cr_expect(epsilon_eq(dbl, order->course[2].overlap_m, 0.2, 1e-9));
}

/* 3.2 m with a step of one course up at 1.2 m: the lowest course is 3 blocks long, the others 8. */
Test(order, a_stepped_base_by_hand) {
  const lw_order *order = order_of("run 1 length=3.2 m;step 1 distance=1.2 m;step 1 courses=1");
  expect_course(order, 1, (counted){3, 0, 0}, "step");
  expect_course(order, 2, (counted){7, 2, 0}, "step");
  expect_course(order, 3, (counted){8, 0, 0}, "step");
}

/* Ground that falls 300 mm over 4 m from the beginning: with courses of 200 mm the base may rise once,
 * where the ground has risen by 200 mm over the low end, 2.667 m from it: moved up to 2.8 m, so 1.2 m from
 * the beginning. */
Test(order, falling_ground_steps_the_base_by_itself) {
  const lw_order *order = order_of("run 1 length=4 m;ground fall=300 mm");
  cr_assert(eq(int, order->plan.step_count, 1));
  cr_expect(epsilon_eq(dbl, order->plan.step[0].at_m, 1.2, 1e-9));
  cr_expect(eq(int, order->plan.step[0].rise, -1));
  expect_course(order, 1, (counted){7, 0, 0}, "fall");
  expect_course(order, 2, (counted){9, 2, 0}, "fall");
  order = order_of("run 1 length=4 m;ground fall=-300 mm");
  cr_expect(epsilon_eq(dbl, order->plan.step[0].at_m, 2.8, 1e-9));
  expect_course(order, 1, (counted){7, 0, 0}, "rise");
}

/* A quarter circle of 4 m radius, 6.283 m of face. Blocks tapered from 400 to 380 mm at 200 mm depth fit a
 * radius of 4 m: their rears stand on 3.8 m, and 380 x 4/3.8 = 400. So 15.708 units in each course: 15
 * whole ones and a cut piece of 0.708 at one end, at the other in the next course: joints 0.292 of a unit
 * apart, more than a quarter. */
Test(order, a_curve_by_hand) {
  const lw_order *order = order_of("run 1 length=6.283185307 m;run 1 radius=4 m;block tail length=380 mm");
  double cuts = 0.0;
  for (int i = 0; i < order->cut_count; i++)
    if (order->cut[i].kind == LW_CUT_CLOSER) cuts += order->cut[i].long_m * order->cut[i].count;
  double modules = cuts / 0.4;
  for (int course = 1; course <= 3; course++) {
    const lw_course_count *c = &order->course[course - 1];
    cr_expect(eq(int, c->half, 0));
    cr_expect(eq(int, c->whole, 15));
    cr_expect(eq(int, c->closer, 1));
    if (course > 1) cr_expect(le(dbl, 0.25 * 0.4, c->overlap_m));
    cr_expect(lt(dbl, fabs(c->face_m - 6.283185307), 1e-9));
    modules += c->whole + c->half / 2.0;
  }
  cr_expect(epsilon_eq(dbl, modules, 3 * 15.70796, 0.008));
}

/* Rectangular blocks of 300 x 200 mm on a radius of 6.2 m: each joint opens by 10 mm at the face, 310 mm a
 * unit. 3.1 m: ten; a half, nine and a half; ten. One metre less of radius asks for more than the gap. */
Test(order, a_curve_of_open_joints_by_hand) {
  const lw_order *order =
      order_of("block length=300 mm;run 1 length=3.1 m;run 1 radius=6.2 m;curve gap=10 mm");
  expect_course(order, 1, (counted){10, 0, 0}, "open joints");
  expect_course(order, 2, (counted){9, 2, 0}, "open joints");
  expect_course(order, 3, (counted){10, 0, 0}, "open joints");
  cr_expect(order->run[0].radius_kept);
  cr_expect(epsilon_eq(dbl, order->run[0].curve_gap_m, 0.01, 1e-9));
  cr_expect(order_note(order, "curve-too-sharp") == NULL);
  order = order_of("block length=300 mm;run 1 length=3.1 m;run 1 radius=5.2 m;curve gap=10 mm");
  cr_expect(order_note(order, "curve-too-sharp") != NULL);
}

/* Centre in front: the faces touch, the rears open by 300 x 200/4000 = 15 mm: 3 m is ten blocks. */
Test(order, a_curve_round_a_centre_in_front_by_hand) {
  const lw_order *order = order_of("block length=300 mm;run 1 length=3 m;run 1 radius=-4 m;curve gap=15 mm");
  expect_course(order, 1, (counted){10, 0, 0}, "concave");
  expect_course(order, 2, (counted){9, 2, 0}, "concave");
  cr_expect(order->run[0].radius_kept);
  cr_expect(epsilon_eq(dbl, order->run[0].curve_gap_m, 0.015, 1e-9));
}

/* Straight into a bend of tapered blocks, 2 m and 2 m: they run on, 10 blocks in all, without a break. */
Test(order, a_bend_runs_on_from_the_straight) {
  const lw_order *order =
      order_of("run 1 length=2 m;turn 1 angle=0 deg;run 2 length=2 m;run 2 radius=4 m;block "
               "tail length=380 mm");
  expect_course(order, 1, (counted){10, 0, 0}, "bend");
  expect_course(order, 2, (counted){9, 2, 0}, "bend");
}

/* A step inside the second run of an L: 2.4 and 3.2 m, up by a course 1.2 m after the corner.
 * Course 1 lies on
 * 3.6 m and runs through at the corner in one of the two: 6 + (1.2 - 0.2)/0.4 = 8.5, or 5.5 + 3. */
Test(order, a_step_behind_a_corner_by_hand) {
  const lw_order *order =
      order_of("run 1 length=2.4 m;turn 1 angle=90 deg;run 2 length=3.2 m;step 1 distance=3.6 "
               "m;step 1 courses=1");
  const lw_course_count *c = &order->course[0];
  cr_expect(epsilon_eq(dbl, c->covered_m, 3.6, 1e-9));
  cr_expect(epsilon_eq(dbl, c->whole + c->half / 2.0, 8.5, 1e-9));
  cr_expect(eq(int, c->closer, 0));
  for (int i = 1; i < 3; i++) {
    c = &order->course[i];
    cr_expect(epsilon_eq(dbl, c->covered_m, 5.6, 1e-9));
    cr_expect(epsilon_eq(dbl, c->whole + c->half / 2.0, (5.6 - 0.2) / 0.4, 1e-9));
    cr_expect(eq(int, c->closer, 0));
  }
}

/* Handed: a rectangle of n courses has 4 n corner units; each corner one hand, then the other. */
Test(order, handed_corners_are_counted_at_each_corner) {
  const lw_order *order =
      order_of("run 1 length=2.4 m;run 2 length=1.6 m;run 3 length=2.4 m;run 4 length=1.6 m;"
               "turn 1 angle=90 deg;turn 2 angle=90 deg;turn 3 angle=90 deg;corner unit=handed");
  order_pieces all = order_all(order);
  cr_expect(eq(int, all.left + all.right, 12));
  cr_assert(eq(int, order->corner_count, 4));
  for (int i = 0; i < 4; i++) {
    const lw_order_corner *corner = &order->corner[i];
    cr_expect(eq(int, corner->left + corner->right, 3));
    cr_expect(eq(int, corner->right, corner->first_through ? 2 : 1));
  }
  cr_expect(eq(int, all.whole, 3 * 18 - 12));
}

/* Runs of an even number of half units between two corners want both ends alike, runs of an odd number
 * want them to turn like a pinwheel: which hand stands where follows from the run lengths. */
Test(order, hands_follow_the_parity_of_the_runs) {
  const lw_order *order =
      order_of("run 1 length=2.6 m;run 2 length=1.8 m;run 3 length=2.6 m;run 4 length=1.8 m;"
               "turn 1 angle=90 deg;turn 2 angle=90 deg;turn 3 angle=90 deg;corner unit=handed");
  cr_expect(eq(int, order_all(order).closer, 0));
  for (int i = 1; i < 4; i++) cr_expect(order->corner[i].first_through == order->corner[0].first_through);
  order = order_of("run 1 length=2.4 m;run 2 length=1.6 m;run 3 length=2.4 m;run 4 length=1.6 m;"
                   "turn 1 angle=90 deg;turn 2 angle=90 deg;turn 3 angle=90 deg;corner unit=handed");
  cr_expect(eq(int, order_all(order).closer, 0));
  for (int i = 0; i < 4; i++)
    cr_expect(order->corner[i].first_through != order->corner[(i + 1) % 4].first_through);
}

/* A circle of 40 units: the courses are turned by half a unit against each other. */
Test(order, a_ring_has_no_end) {
  const lw_order *order = order_of("run 1 length=16 m;run 1 radius=2.546479089 m;block tail length=360 mm");
  cr_expect(order->plan.closed);
  for (int course = 1; course <= 3; course++) expect_course(order, course, (counted){40, 0, 0}, "ring");
  cr_expect(epsilon_eq(dbl, order->course[1].overlap_m, 0.2, 1e-6));
  /* With joints of 10 mm 40 of them and no more: 16.4 m. */
  order = order_of("run 1 length=16.4 m;run 1 radius=2.610141066 m;block tail length=360 mm;joint gap=10 mm");
  for (int course = 1; course <= 3; course++) expect_course(order, course, (counted){40, 0, 0}, "open ring");
}

/* 1.63 m are three blocks of 400 mm and 430 mm: a half and a piece of 230 mm, for the other half serves as
 * well; two pieces that are no halves would be two cuts. */
Test(order, a_half_is_half_a_cut) {
  const lw_order *order = order_of("run 1 length=1.63 m;course count=1");
  expect_course(order, 1, (counted){3, 1, 1}, "1.63 m");
}
