/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "order/steps.h"
#include "soil/site.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

#define DRAIN ";stone width=300 mm;pad thickness=100 mm;bedding thickness=25 mm;drain outlet length=2 m"

static void expect_levels(const char *items, const double *level_m, int count) {
  const lw_setting_out *p = &order_of(items)->setting_out;
  cr_expect(eq(int, p->invert_count, count), "%s", items);
  for (int i = 0; i < count && i < p->invert_count; i++)
    cr_expect(epsilon_eq(dbl, p->invert[i].level_m, level_m[i], 1e-9), "%s: place %d %.4f, by hand %.4f",
              items, i, p->invert[i].level_m, level_m[i]);
}

/* Outlets so far below the ground in front, which lies 0.1 m above the blocks' underside, that the pad
 * decides. */
#define AT(level) ";outlet level=" level " mm"

/* 8 m, one outlet at the end: from the top of the pad, 25 mm under the blocks, 1 in 100 down: 80 mm along the
 * wall and 20 mm in the 2 m beyond it. */
Test(order, pipe_of_a_level_base_by_hand) {
  expect_levels("run 1 length=8 m;drain outlets=1" DRAIN AT("-225"), (double[]){-0.025, -0.105, -0.125}, 3);
  const lw_setting_out *p = &order_of("run 1 length=8 m;drain outlets=1" DRAIN AT("-225"))->setting_out;
  cr_expect(epsilon_eq(dbl, p->pipe_length_m, 10.0, 1e-9));
  cr_expect(epsilon_eq(dbl, p->pipe_below_front_m, 0.1 + 0.125, 1e-9));
  /* Two outlets: from the middle to both ends, 4 m and 2 m each. */
  expect_levels("run 1 length=8 m;drain outlets=2" DRAIN AT("-185"),
                (double[]){-0.025, -0.065, -0.085, -0.025, -0.065, -0.085}, 6);
}

/* 6 m with the base one course of 200 mm up from 2.4 m on: it begins on the upper pad at the end, has fallen
 * 36 mm at the step, goes down to the lower pad's top, and falls 24 mm more to the beginning. */
Test(order, pipe_of_a_stepped_base_by_hand) {
  expect_levels("run 1 length=6 m;step 1 distance=2.4 m;step 1 courses=1;drain outlets=1" DRAIN AT("-169"),
                (double[]){0.175, 0.139, -0.025, -0.049, -0.069}, 5);
}

/* A closed bed of 2.4 by 1.6 m with outlets at B1 and half way around: from the places between, 2 m each way;
 * the corners on the way are told. */
Test(order, pipe_around_a_bed_by_hand) {
  const lw_setting_out *p =
      &order_of("run 1 length=2.4 m;run 2 length=1.6 m;run 3 length=2.4 m;run 4 length=1.6 m;turn 1 angle=90 "
                "deg;turn 2 angle=90 deg;turn 3 angle=90 deg;drain outlets=2" DRAIN AT("-165"))
           ->setting_out;
  int outlets = 0;
  for (int i = 0; i < p->invert_count; i++) {
    if (p->invert[i].kind != LW_INVERT_OUTLET) continue;
    outlets++;
    cr_expect(epsilon_eq(dbl, p->invert[i].level_m, -0.025 - 0.02 - 0.02, 1e-9));
  }
  cr_expect(eq(int, outlets, 4));
  cr_expect(epsilon_eq(dbl, p->pipe_length_m, 4.0, 1e-9));
}

/* Left out, the pipe comes out at the ground in front, 100 mm up: 20 mm higher where it leaves the wall, 80
 * mm more at its high point. 50 mm above the ground all of it is 50 mm higher. Far below it the pipe along
 * the wall stays on the pad, and falls more steeply outside. */
Test(order, a_pipe_is_laid_to_come_out) {
  expect_levels("run 1 length=8 m;drain outlets=1" DRAIN, (double[]){0.2, 0.12, 0.1}, 3);
  expect_levels("run 1 length=8 m;drain outlets=1" DRAIN AT("50"), (double[]){0.25, 0.17, 0.15}, 3);
  expect_levels("run 1 length=8 m;drain outlets=1" DRAIN AT("-900"), (double[]){-0.025, -0.105, -0.8}, 3);
}

/* Check and pegs agree on outlets: all of the sheet have their place, at their level above the ground in
 * front of them. On one drain they are one way out; those below the ground are none. */
Test(order, check_and_pegs_agree_on_the_outlets) {
  int buried = 0, stepped = 0;
  for (int i = 0; i < 200 / RANDOM_SHARE; i++) {
    char items[400];
    int outlets = 1 + (int)order_random(0, 6), up = i % 3 == 0 ? 0 : i % 3 == 1 ? 1 : -1;
    double level = i % 4 == 0 ? 0.0 : round(order_random(-200, 200)), slope = i % 5 == 0 ? 5.0 : 0.0;
    int used = snprintf(
        items, sizeof items,
        "run 1 length=%.0f mm;turn 1 angle=90 deg;run 2 length=3 m;course count=5;wall "
        "joints=sealed;ground drains=no;front slope=%.0f deg;drain outlets=%d;outlet level=%.0f mm" DRAIN,
        round(order_random(2500, 6000)), slope, outlets, level);
    if (up != 0)
      snprintf(items + used, sizeof items - (size_t)used, ";step 1 distance=%.0f mm;step 1 courses=%d",
               round(order_random(700, 1800)), up);
    const lw_order *order = order_of(items);
    const lw_setting_out *p = &order->setting_out;
    const lw_site *site = &order_result()->wall.site;
    bool comes_out = level / 1000.0 >= -tan(slope * 3.14159265358979 / 180.0) * 2.0;
    cr_expect(eq(int, p->outlet_count, outlets), "%s", items);
    cr_expect(eq(int, site->ways_out, comes_out ? 1 : 0), "%s", items);
    cr_expect(site->outlets_buried == !comes_out, "%s", items);
    for (int k = 0; k < p->invert_count; k++) {
      double above = p->invert[k].level_m - 0.1 - level / 1000.0;
      bool outlet = p->invert[k].kind == LW_INVERT_OUTLET;
      if (outlet) cr_expect(lt(dbl, fabs(remainder(above, order->plan.course_m)), 1e-9), "%s", items);
    }
    cr_expect(epsilon_eq(dbl, p->pipe_below_front_m, -level / 1000.0, 1e-9), "%s", items);
    buried += comes_out ? 0 : 1;
    stepped += up != 0 ? 1 : 0;
  }
  cr_expect(buried > 20 / RANDOM_SHARE && stepped > 100 / RANDOM_SHARE);
}

/* One stand-off of plant, in the check and in the order of work. */
Test(order, plant_keeps_the_distance_that_the_check_has) {
  static const char *const walls[] = {"run 1 length=4 m",
                                      "run 1 length=4 m;course count=6;block depth=300 mm",
                                      "run 1 length=4 m;block depth=390 mm;plant=hand rammer"};
  for (size_t i = 0; i < sizeof walls / sizeof *walls; i++) {
    const lw_order *order = order_of(walls[i]);
    const lw_stand_off *s = &order_result()->construction.stand_off;
    lw_work_kind kind = s->keep_m.known ? LW_WORK_PLANT : LW_WORK_NO_PLANT;
    double keep_m = s->keep_m.known ? s->keep_m.value : 0.0;
    bool said = false;
    for (int k = 0; k < order->work_count; k++)
      said = said || (order->work[k].kind == kind && order->work[k].length_m == keep_m);
    cr_expect(said || (s->keep_m.known && keep_m <= 0.0), "%s: %g m", walls[i], keep_m);
  }
}

/* Nowhere uphill, nowhere less than the fall, nowhere above the pad where the outlet lies deep enough. */
Test(order, water_finds_its_way_whatever_the_steps) {
  for (int i = 0; i < 200 / RANDOM_SHARE; i++) {
    char items[320];
    int up = order_random(0, 1) < 0.5 ? 1 : -1, back = order_random(0, 1) < 0.5 ? up : -up;
    snprintf(
        items, sizeof items,
        "run 1 length=%.0f mm;turn 1 angle=90 deg;run 2 length=3 m;course count=5;step 1 distance=%.0f "
        "mm;step 1 courses=%d;step 2 distance=%.0f mm;step 2 courses=%d;drain outlets=%d" DRAIN AT("-600"),
        round(order_random(2000, 5000)), round(order_random(700, 1800)), up, round(order_random(2500, 4500)),
        back, 1 + i % 2);
    const lw_order *order = order_of(items);
    const lw_setting_out *p = &order->setting_out;
    cr_assert(lt(int, 1, p->invert_count));
    for (int k = 1; k < p->invert_count; k++) {
      const lw_invert *a = &p->invert[k - 1], *b = &p->invert[k];
      if (b->kind == LW_INVERT_HIGH) continue;
      double along = fabs(a->along_m - b->along_m);
      cr_expect(le(dbl, b->level_m, a->level_m - 0.01 * along + 1e-9), "%s", items);
      int raised = lw_plan_raised(&order->plan, b->along_m, true);
      int other = lw_plan_raised(&order->plan, b->along_m, false);
      int most = raised > other ? raised : other;
      cr_expect(le(dbl, b->level_m, most * 0.2 - 0.025 + 1e-9), "%s", items);
    }
  }
}

/* 1 % of the height that stands at each third of the wall is an alarm; a raised base leaves less of it, and
 * less setback. */
Test(order, batter_is_read_at_three_stations) {
  const lw_setting_out *p =
      &order_of("run 1 length=6 m;step 1 distance=2.4 m;step 1 courses=1;setback=10 mm;course count=4")
           ->setting_out;
  cr_assert(eq(int, p->station_count, 3));
  cr_expect(epsilon_eq(dbl, p->station[0].along_m, 1.0, 1e-9));
  cr_expect(epsilon_eq(dbl, p->station[0].reading_m, 0.03, 1e-9));
  cr_expect(epsilon_eq(dbl, p->station[0].lean_alarm_m, 0.008, 1e-9));
  cr_expect(epsilon_eq(dbl, p->station[2].reading_m, 0.02, 1e-9));
  cr_expect(epsilon_eq(dbl, p->station[2].lean_alarm_m, 0.006, 1e-9));
  /* Behind is positive: a wall that comes out reads less. */
  cr_expect(epsilon_eq(dbl, p->batter_reading_m, 0.03, 1e-9));
  cr_expect(epsilon_eq(dbl, p->batter_alarm_m, 0.03 - 0.008, 1e-9));
}

/* Each diagonal of a rectangle once; its tolerance as an angle is d e / (a b): of 4.0 x 1.2 m 5 mm are 0.25
 * degrees, so that 20 mm in each, 40 mm between the two, are 1 degree. Common practice, recomputed. */
Test(order, a_diagonal_is_told_once) {
  const lw_setting_out *p =
      &order_of("run 1 length=4 m;run 2 length=1.2 m;run 3 length=4 m;run 4 length=1.2 m;turn 1 "
                "angle=90 deg;turn 2 angle=90 deg;turn 3 angle=90 deg")
           ->setting_out;
  cr_assert(eq(int, p->check_count, 2));
  cr_expect(epsilon_eq(dbl, p->check[0].angle_deg, 0.005 * sqrt(17.44) / 4.8 * 180.0 / 3.14159265, 1e-6));
  cr_expect(p->check[0].from != p->check[1].from && p->check[0].from != p->check[1].to);
  p = &order_of("run 1 length=4 m;run 1 radius=5 m;curve gap=20 mm")->setting_out;
  cr_assert(eq(int, p->check_count, 2));
  cr_expect(epsilon_eq(dbl, p->check[0].distance_m, 10.0 * sin(0.4), 1e-9));
  cr_expect(epsilon_eq(dbl, p->check[1].distance_m, 5.0, 1e-9));
}

/* Three outlets on 8 m: at both ends and in the middle, the high points between, 2 m and the 2 m outlets from
 * each. Around a bed of 9 m: every 3 m, 1.5 m each way. */
Test(order, every_outlet_has_its_level) {
  expect_levels("run 1 length=8 m;drain outlets=3" DRAIN AT("-165"),
                (double[]){-0.025, -0.045, -0.065, -0.025, -0.045, -0.065, -0.025, -0.045, -0.065, -0.025,
                           -0.045, -0.065},
                12);
  const lw_setting_out *p =
      &order_of("run 1 length=3 m;run 2 length=1.5 m;run 3 length=3 m;run 4 length=1.5 m;turn 1 angle=90 "
                "deg;turn 2 angle=90 deg;turn 3 angle=90 deg;drain outlets=3" DRAIN AT("-160"))
           ->setting_out;
  cr_expect(epsilon_eq(dbl, p->pipe_outlet_m, -0.025 - 0.015 - 0.02, 1e-9));
}

/* Five courses that step back 20 mm, at the free ends as well: the top line of 8 m and 2.4 m is 80 mm shorter
 * at the corner and at each end; measured at the top the lengths are those asked for. */
Test(order, free_ends_step_back_on_the_top_line) {
  const char *items = "run 1 length=8 m;run 2 length=2.4 m;turn 1 angle=90 deg;course count=5;setback=20 mm;"
                      "end setback=20 mm";
  const lw_order *order = order_of(items);
  cr_expect(epsilon_eq(dbl, order->run[0].top_length_m, 7.84, 1e-9));
  cr_expect(epsilon_eq(dbl, order->run[1].top_length_m, 2.24, 1e-9));
  const lw_peg *t1 = &order->setting_out.peg[3], *t3 = &order->setting_out.peg[5];
  cr_expect(t1->kind == LW_PEG_TOP && t1->number == 1);
  cr_expect(epsilon_eq(dbl, t1->at.x_m, 0.08, 1e-9));
  cr_expect(epsilon_eq(dbl, t1->at.y_m, 0.08, 1e-9));
  cr_expect(epsilon_eq(dbl, t3->at.x_m, 7.92, 1e-9));
  cr_expect(epsilon_eq(dbl, t3->at.y_m, 2.32, 1e-9));
  char top[256];
  snprintf(top, sizeof top, "%s;plan line=top", items);
  order = order_of(top);
  cr_expect(epsilon_eq(dbl, order->run[0].top_length_m, 8.0, 1e-9));
  cr_expect(epsilon_eq(dbl, order->run[0].length_m, 8.16, 1e-9));
}
