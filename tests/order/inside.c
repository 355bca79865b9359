/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "order/plan_area.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>

/* What lies inside a closed plan, and along a curve, against figures whose area and length are known. */

static const double PI = 3.14159265358979323846;

/* A circle, and the circle inside it by each offset. */
Test(order, inside_of_a_round_bed) {
  char items[160];
  snprintf(items, sizeof items, "run 1 length=%.6f m;run 1 radius=2.5 m;curve gap=60 mm", 2.0 * PI * 2.5);
  const lw_plan *plan = &order_of(items)->plan;
  for (double offset = 0.0; offset < 1.0; offset += 0.2) {
    double radius = 2.5 - offset;
    cr_expect(epsilon_eq(dbl, lw_plan_inside(plan, offset), PI * radius * radius, 1e-4));
    cr_expect(epsilon_eq(dbl, lw_plan_strip(plan, 0.0, offset), PI * (6.25 - radius * radius), 1e-4));
  }
}

/* Two straight runs of 3 m between two half circles of 1.5 m: 3 x 3 m and one circle. */
Test(order, inside_of_a_bed_with_round_ends) {
  char items[320];
  snprintf(items, sizeof items,
           "run 1 length=3 m;run 2 length=%.6f m;run 2 radius=1.5 m;run 3 length=3 m;run 4 length=%.6f m;"
           "run 4 radius=1.5 m;turn 1 angle=0 deg;turn 2 angle=0 deg;turn 3 angle=0 deg;curve gap=120 mm",
           PI * 1.5, PI * 1.5);
  const lw_plan *plan = &order_of(items)->plan;
  for (double offset = 0.0; offset < 1.0; offset += 0.25) {
    double radius = 1.5 - offset;
    cr_expect(epsilon_eq(dbl, lw_plan_inside(plan, offset), 6.0 * radius + PI * radius * radius, 1e-4));
  }
}

/* A bite out of a square: a run that bends away from the soil takes its segment off. */
Test(order, inside_of_a_bed_with_a_bite) {
  char items[480];
  double radius = 4.0, half_turn = asin(1.5 / radius);
  double segment = radius * radius * (half_turn - sin(half_turn) * cos(half_turn));
  snprintf(items, sizeof items,
           "run 1 length=%.6f m;run 1 radius=-4 m;run 2 length=3 m;run 3 length=3 m;run 4 length=3 m;"
           "turn 1 angle=%.6f deg;turn 2 angle=90 deg;turn 3 angle=90 deg;curve gap=60 mm;plan ends=closed",
           2.0 * half_turn * radius, (PI / 2.0 + half_turn) * 180.0 / PI);
  const lw_plan *plan = &order_of(items)->plan;
  cr_expect(epsilon_eq(dbl, lw_plan_inside(plan, 0.0), 9.0 - segment, 1e-4), "%.5f", 9.0 - segment);
}

/* Each course of a curve has stepped back: round a centre behind, it is shorter by its share of the radius,
 * round one in front longer. */
Test(order, courses_of_a_curve_that_steps_back) {
  for (int side = -1; side <= 1; side += 2) {
    char items[200];
    snprintf(items, sizeof items,
             "run 1 length=4 m;run 1 radius=%d m;setback=20 mm;course count=6;block tail length=300 mm;"
             "curve gap=120 mm",
             side * 3);
    const lw_order *order = order_of(items);
    for (int course = 0; course < 6; course++)
      cr_expect(epsilon_eq(dbl, order->course[course].face_m, 4.0 * (1.0 - side * 0.02 * course / 3.0), 1e-9),
                "%s: course %d", items, course + 1);
  }
}
