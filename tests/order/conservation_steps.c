/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>

/* A stepped base under a plan with a corner and a setback: each course covers its own face exactly, which is
 * what stands on its base, course by course, by plane geometry of its own. */

static const double PI = 3.14159265358979323846;

typedef struct ground {
  double first_m, second_m, turn_rad, setback_m;
  double step_m[2];
  int rise[2];
} ground;

static int level_at(const ground *g, double at_m) {
  int low = 0, level = 0, here = 0;
  for (int i = 0; i < 2; i++) {
    level += g->rise[i];
    low = level < low ? level : low;
    if (at_m > g->step_m[i]) here = level;
  }
  return here - low;
}

/* Of both runs the part between their ends in this course, cut where the base stands higher than it. */
static double stands_m(const ground *g, int course) {
  double back = course * g->setback_m * tan(g->turn_rad / 2.0), sum = 0.0;
  double from[2] = {0.0, g->first_m + back}, to[2] = {g->first_m - back, g->first_m + g->second_m};
  double edge[4] = {0.0, g->step_m[0], g->step_m[1], g->first_m + g->second_m};
  for (int run = 0; run < 2; run++)
    for (int i = 0; i < 3; i++) {
      double low = fmax(from[run], edge[i]), high = fmin(to[run], edge[i + 1]);
      if (high > low && level_at(g, (edge[i] + edge[i + 1]) / 2.0) <= course) sum += high - low;
    }
  return sum;
}

static double pieces_m(const lw_order *order, int course) {
  const lw_course_count *c = &order->course[course];
  return (c->whole + c->half / 2.0) * order->plan.module_m;
}

Test(order, units_cover_a_stepped_face_exactly) {
  for (int i = 0; i < 300 / RANDOM_SHARE; i++) {
    char items[360];
    ground g = {.first_m = round(order_random(2000, 5000)) / 1000,
                .second_m = round(order_random(2000, 5000)) / 1000};
    double turn = i % 3 == 0 ? -90 : i % 3 == 1 ? 90 : round(order_random(-50, 50));
    double setback = i % 2 ? round(order_random(1, 15)) : 0.0;
    g.turn_rad = turn * PI / 180;
    g.setback_m = setback / 1000;
    /* Steps keep half a metre from the corner, whose ends would hide them. */
    g.step_m[0] = round(order_random(500, g.first_m * 1000 - 500)) / 1000;
    g.step_m[1] = round(order_random(g.first_m * 1000 + 500, (g.first_m + g.second_m) * 1000 - 500)) / 1000;
    g.rise[0] = order_random(0, 1) < 0.5 ? 1 : -1;
    g.rise[1] = order_random(0, 1) < 0.5 ? 1 : -1;
    snprintf(
        items, sizeof items,
        "run 1 length=%.3f m;turn 1 angle=%.0f deg;run 2 length=%.3f m;setback=%.0f mm;course count=4;step 1 "
        "distance=%.3f m;step 1 courses=%d;step 2 distance=%.3f m;step 2 courses=%d",
        g.first_m, turn, g.second_m, setback, g.step_m[0], g.rise[0], g.step_m[1], g.rise[1]);
    const lw_order *order = order_of(items);
    for (int course = 0; course < 4; course++) {
      double wanted = stands_m(&g, course);
      cr_expect(epsilon_eq(dbl, order->course[course].face_m, wanted, 1e-9), "%s, course %d", items,
                course + 1);
      cr_expect(epsilon_eq(dbl, order->course[course].covered_m, wanted, 1e-9), "%s, course %d", items,
                course + 1);
      cr_expect(le(dbl, pieces_m(order, course), wanted + 0.2 + 0.001), "%s, course %d", items, course + 1);
    }
  }
}
