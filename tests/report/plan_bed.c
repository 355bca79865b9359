/* SPDX-License-Identifier: GPL-3.0-or-later */
/* In a bed the drawings tell what soil the drainage stone leaves. Expected values computed by hand: the
 * inside width less twice the depth of the blocks, 200 mm, and twice the stone. */
#include "../order/support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>

#include "on_paper.h"

enum { BEDS = 60 / RANDOM_SHARE };

static void expect_told(const lw_drawing *d, double left_mm, const char *bed) {
  char words[80] = "at depth no soil is left";
  if (left_mm > 0.5) snprintf(words, sizeof words, "%.0f mm of soil is left at depth", left_mm);
  cr_expect(on_paper_says(d, words), "\"%s\" is not told: %s", words, bed);
}

/* Rectangles, long and short the one way or the other, with courses that step back or not. */
Test(plan_bed, the_strip_of_soil_that_is_left_is_told) {
  int none = 0;
  for (int i = 0; i < BEDS; i++) {
    char bed[500];
    /* Every third is too narrow for its stone. */
    double most = i % 3 ? 2500.0 : 1000.0, a = round(order_random(850.0, most));
    double b = round(order_random(850.0, 2500.0));
    double stone = 10.0 * round(order_random(i % 3 ? 15.0 : 33.0, 40.0)), setback = i % 3 != 1 ? 0.0 : 15.0;
    snprintf(bed, sizeof bed,
             "run 1 length=%.0f mm;turn 1 angle=90 deg;run 2 length=%.0f mm;turn 2 angle=90 deg;run 3 "
             "length=%.0f mm;turn 3 angle=90 deg;run 4 length=%.0f mm;site behind=bed;stone width=%.0f mm;"
             "stone filter=cloth;setback=%.0f mm",
             a, b, a, b, stone, setback);
    const lw_order *o = order_of(bed);
    double left = fmin(a, b) - 2.0 * (200.0 + stone + (o->plan.courses - 1) * setback);
    lw_drawing d = {0};
    cr_assert_eq(lw_draw_plan(order_result(), o, i % 2 ? 90.0 : 180.0, &d, NULL), LW_OK, "%s", bed);
    expect_told(&d, left, bed);
    expect_on_paper(&d, bed);
    none += left <= 0.5 ? 1 : 0;
    lw_drawing_free(&d);
  }
  cr_expect(lt(int, 0, none));
  cr_expect(lt(int, none, BEDS));
}

/* A ring of 2 m inside its face: 4 m less 2 (200 + 250) mm; its face is drawn as a polygon. */
Test(plan_bed, a_round_bed_has_its_strip_across_the_middle) {
  const lw_order *o = order_of("run 1 length=12.566 m;run 1 radius=2 m;turn 1 angle=0 deg;plan ends=closed;"
                               "site behind=bed;stone width=250 mm;stone filter=cloth");
  lw_drawing d = {0};
  cr_assert_eq(lw_draw_plan(order_result(), o, 180.0, &d, NULL), LW_OK);
  cr_expect(on_paper_says(&d, "3100 mm of soil is left at depth"));
  lw_drawing_free(&d);
}

Test(plan_bed, ground_behind_a_wall_is_no_strip) {
  const lw_order *o = order_of("run 1 length=6 m;stone width=250 mm;stone filter=cloth");
  lw_drawing d = {0};
  cr_assert_eq(lw_draw_plan(order_result(), o, 180.0, &d, NULL), LW_OK);
  cr_expect_not(on_paper_says(&d, "soil is left"));
  lw_drawing_free(&d);
}

/* The section knows only the width that is given: 700 mm less twice 250 mm; 450 mm less the same. */
Test(plan_bed, the_section_tells_it_by_the_bed_width) {
  static const char *const BEDS_OF[] = {"700 mm", "450 mm"};
  static const char *const SAID[] = {"200 mm of soil is left between it and the other side's",
                                     "no soil is left between the sides"};
  for (int i = 0; i < 2; i++) {
    char bed[200];
    snprintf(bed, sizeof bed,
             "site behind=bed;bed width=%s;run 1 length=4 m;stone width=250 mm;stone filter=cloth",
             BEDS_OF[i]);
    order_of(bed);
    lw_drawing d = {0};
    cr_assert_eq(lw_draw_section(order_result(), 180.0, &d, NULL), LW_OK);
    cr_expect(on_paper_says(&d, SAID[i]), "%s: %s", SAID[i], bed);
    lw_drawing_free(&d);
  }
}
