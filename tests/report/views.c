/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Elevation and plan: every plan fits its page, no words stand on others, the SVG is well-formed, and what is
 * drawn is what the order counts. */
#include "../order/support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "on_paper.h"

static const double WIDTHS_MM[] = {95.0, 180.0};

/* Lengths in no round number, so that pieces are cut. */
static const char *const plans[] = {
    "run 1 length=2.4 m",
    "run 1 length=0.61 m;course count=1;wall embedment=0 mm",
    "run 1 length=37.3 m",
    "run 1 length=420 m;course count=6",
    "run 1 length=5.37 m;turn 1 angle=90 deg;run 2 length=3.21 m",
    "run 1 length=5.37 m;turn 1 angle=90 deg;run 2 length=3.21 m;setback=15 mm",
    "run 1 length=5.37 m;turn 1 angle=-90 deg;run 2 length=3.21 m;setback=25 mm",
    "run 1 length=5.37 m;turn 1 angle=35 deg;run 2 length=3.21 m;joint gap=10 mm",
    "run 1 length=5.37 m;turn 1 angle=-140 deg;run 2 length=4.21 m;block depth=100 mm",
    "run 1 length=5.37 m;turn 1 angle=140 deg;run 2 length=4.21 m;block depth=100 mm",
    "run 1 length=4.1 m;turn 1 angle=90 deg;run 2 length=2.3 m;turn 2 angle=90 deg;run 3 length=4.1 m;"
    "corner unit=handed",
    "run 1 length=4.1 m;turn 1 angle=90 deg;run 2 length=2.3 m;turn 2 angle=90 deg;run 3 length=4.1 m;"
    "turn 3 angle=90 deg;run 4 length=2.3 m;site behind=bed",
    "run 1 length=1.2 m;turn 1 angle=90 deg;run 2 length=1.2 m;turn 2 angle=90 deg;run 3 length=1.2 m;"
    "turn 3 angle=90 deg;run 4 length=1.2 m;corner unit=cut",
    "run 1 length=6 m;step 1 distance=2.4 m;step 1 courses=1",
    "run 1 length=9 m;step 1 distance=2.4 m;step 1 courses=1;step 2 distance=5.2 m;step 2 courses=-1",
    "run 1 length=12 m;ground fall=400 mm",
    "run 1 length=12 m;ground fall=-400 mm;pad thickness=150 mm;pad width=600 mm",
    "run 1 length=12 m;turn 1 angle=90 deg;run 2 length=4.4 m;ground fall=390 mm;pad thickness=100 mm;"
    "bedding thickness=30 mm",
    "run 1 length=6 m;run 1 radius=4 m",
    "run 1 length=6 m;run 1 radius=-3 m;joint gap=8 mm;curve gap=60 mm",
    "run 1 length=3 m;turn 1 angle=0 deg;run 2 length=4 m;run 2 radius=5 m;turn 2 angle=0 deg;run 3 "
    "length=2.7 m",
    "run 1 length=12.566 m;run 1 radius=2 m;turn 1 angle=0 deg;plan ends=closed",
    "run 1 length=3 m;turn 1 angle=20 deg;run 2 length=3 m;turn 2 angle=20 deg;run 3 length=3 m;"
    "turn 3 angle=20 deg;run 4 length=3 m;turn 4 angle=20 deg;run 5 length=3 m",
    "run 1 length=3 m;turn 1 angle=90 deg;run 2 length=1 m;turn 2 angle=-90 deg;run 3 length=3 m;"
    "turn 3 angle=90 deg;run 4 length=1 m;turn 4 angle=-90 deg;run 5 length=3 m",
    "run 1 length=8 m;run 1 radius=60 m;course count=5;setback=12 mm",
    "run 1 length=2.9 m;block length=230 mm;block height=76 mm;block depth=110 mm;joint gap=10 mm;"
    "course count=12",
    "run 1 length=22 m;block length=1200 mm;block height=500 mm;block depth=900 mm;course count=5",
    "run 1 length=4.7 m;cap height=60 mm;cap depth=240 mm;cap length=500 mm;turn 1 angle=60 deg;"
    "run 2 length=3.3 m",
    "run 1 length=4.7 m;cap height=40 mm;cap depth=240 mm;cap length=500 mm;pad thickness=150 mm;pad "
    "width=700 mm",
    "run 1 length=3.3 m;plan line=top;setback=20 mm;turn 1 angle=90 deg;run 2 length=2.2 m",
    "run 1 length=0.9 m;turn 1 angle=90 deg;run 2 length=30 m;turn 2 angle=90 deg;run 3 length=0.9 m",
    "run 1 length=7.7 m;base course count=1;base course depth=300 mm;turn 1 angle=90 deg;run 2 length=3.1 m;"
    "end setback=30 mm",
    "run 1 length=7.7 m;title=A very long name of a wall <that> goes & goes \"on\" beside the kitchen garden "
    "door",
};
enum { PLANS = sizeof plans / sizeof *plans };

static void expect_view(const char *view, lw_status status, lw_drawing *drawing, const char *plan) {
  char name[600];
  snprintf(name, sizeof name, "%s %.0f mm wide of %s", view, drawing->width_mm, plan);
  cr_expect_eq(status, LW_OK, "%s", name);
  if (status == LW_OK) expect_on_paper(drawing, name);
  lw_drawing_free(drawing);
}

Test(views, every_plan_fits_its_page_and_no_words_stand_on_others) {
  cr_assert(PLANS >= 30);
  for (int i = 0; i < PLANS; i++) {
    const lw_order *order = order_of(plans[i]);
    for (size_t w = 0; w < sizeof WIDTHS_MM / sizeof *WIDTHS_MM; w++) {
      lw_drawing elevation = {0}, plan = {0};
      lw_status status = lw_draw_elevation(order_result(), order, WIDTHS_MM[w], &elevation, NULL);
      expect_view("elevation", status, &elevation, plans[i]);
      status = lw_draw_plan(order_result(), order, WIDTHS_MM[w], &plan, NULL);
      expect_view("plan", status, &plan, plans[i]);
    }
  }
}

/* A wall without blocks has the same two views. */
Test(views, a_solid_wall_fits_its_page) {
  static const char *const SOLID[] = {
      "base width=700 mm;top width=400 mm;run 1 length=5.37 m;turn 1 angle=90 deg;run 2 length=3.21 m",
      "base width=500 mm;top width=500 mm;pad thickness=150 mm;run 1 length=24 m;turn 1 angle=-140 deg;run 2 "
      "length=9 m",
      "base width=600 mm;top width=300 mm;run 1 length=6 m;run 1 radius=4 m;stone width=300 mm;drain "
      "outlets=2"};
  for (size_t i = 0; i < sizeof SOLID / sizeof *SOLID; i++) {
    const lw_order *order = order_of_solid(SOLID[i]);
    for (size_t w = 0; w < sizeof WIDTHS_MM / sizeof *WIDTHS_MM; w++) {
      lw_drawing elevation = {0}, plan = {0};
      lw_status status = lw_draw_elevation(order_result(), order, WIDTHS_MM[w], &elevation, NULL);
      expect_view("elevation", status, &elevation, SOLID[i]);
      status = lw_draw_plan(order_result(), order, WIDTHS_MM[w], &plan, NULL);
      expect_view("plan", status, &plan, SOLID[i]);
    }
  }
}

static bool has_words(const lw_drawing *d, const char *words) {
  for (size_t i = 0; i < d->mark_count; i++)
    if (d->mark[i].kind == LW_MARK_WORDS && strcmp(d->words.data + d->mark[i].words, words) == 0) return true;
  return false;
}

Test(views, the_plan_names_pegs_runs_turns_and_sides) {
  static const char *const words[] = {"B1",          "B2",     "B3",   "S1",   "run 1: 5370",
                                      "run 2: 3210", "90 deg", "soil", "front"};
  const lw_order *order = order_of(
      "run 1 length=5.37 m;turn 1 angle=90 deg;run 2 length=3.21 m;step 1 distance=2 m;step 1 courses=1");
  for (size_t w = 0; w < sizeof WIDTHS_MM / sizeof *WIDTHS_MM; w++) {
    lw_drawing d = {0};
    cr_assert_eq(lw_draw_plan(order_result(), order, WIDTHS_MM[w], &d, NULL), LW_OK);
    for (size_t i = 0; i < sizeof words / sizeof *words; i++)
      cr_expect(has_words(&d, words[i]), "%s is not on the plan %.0f mm wide", words[i], WIDTHS_MM[w]);
    lw_drawing_free(&d);
  }
}

Test(views, the_elevation_names_cuts_steps_and_corners) {
  static const char *const words[] = {"B1",          "B2, turns 90 deg", "B3", "S1",
                                      "run 1: 5370", "run 2: 3210",      "a",  "b"};
  const lw_order *order = order_of(
      "run 1 length=5.37 m;turn 1 angle=90 deg;run 2 length=3.21 m;step 1 distance=2 m;step 1 courses=1");
  lw_drawing d = {0};
  cr_assert_eq(lw_draw_elevation(order_result(), order, 250.0, &d, NULL), LW_OK);
  for (size_t i = 0; i < sizeof words / sizeof *words; i++)
    cr_expect(has_words(&d, words[i]), "%s is not on the elevation", words[i]);
  lw_drawing_free(&d);
}

/* Areas of blocks are drawn twice, filled and edged: what is counted are the edges. */
static int edges(const lw_drawing *d, double least_high_mm) {
  int count = 0;
  for (size_t i = 0; i < d->mark_count; i++) {
    const lw_mark *m = &d->mark[i];
    const lw_xy_mm *s = &d->spot[m->first];
    bool box = m->kind == LW_MARK_AREA && m->pen == LW_PEN_SEEN && m->fill == LW_FILL_NONE && m->count == 4;
    count += box && s[0].y_mm - s[2].y_mm > least_high_mm ? 1 : 0;
  }
  return count;
}

Test(views, as_many_blocks_are_drawn_as_are_counted) {
  static const char straight[] = "run 1 length=4.93 m;course count=5";
  const lw_order *order = order_of(straight);
  order_pieces all = order_all(order);
  lw_drawing d = {0};
  cr_assert_eq(lw_draw_elevation(order_result(), order, 400.0, &d, NULL), LW_OK);
  /* Samples of the legend are lower than the blocks at this scale. */
  cr_expect_eq(edges(&d, 5.0), all.whole + all.half + all.closer);
  lw_drawing_free(&d);
}

/* The words of a run stand below the middle of each part of it, and each part begins at the left. */
Test(views, a_long_run_is_broken_off_into_equal_parts) {
  for (int i = 0; i < 40 / RANDOM_SHARE; i++) {
    char wall[60];
    double first = 0.0;
    int parts = 0;
    snprintf(wall, sizeof wall, "run 1 length=%.2f m", order_random(5.0, 30.0));
    const lw_order *order = order_of(wall);
    lw_drawing d = {0};
    cr_assert_eq(lw_draw_elevation(order_result(), order, WIDTHS_MM[i % 2], &d, NULL), LW_OK);
    for (size_t k = 0; k < d.mark_count; k++) {
      if (d.mark[k].kind != LW_MARK_WORDS || !strstr(d.words.data + d.mark[k].words, "(in parts)")) continue;
      double middle = d.spot[d.mark[k].first].x_mm;
      if (parts++ == 0) first = middle;
      cr_expect(fabs(middle - first) < 1e-6, "%g and %g: %s", first, middle, wall);
    }
    lw_drawing_free(&d);
  }
}

Test(views, a_wall_too_long_for_the_paper_is_no_drawing) {
  const lw_order *order = order_of(
      "block length=2500 mm;course count=1;wall embedment=0 mm;run 1 length=1000 m;turn 1 angle=1 deg;run 2 "
      "length=1000 m;"
      "turn 2 angle=1 deg;run 3 length=1000 m;turn 3 angle=1 deg;run 4 length=1000 m;turn 4 angle=1 deg;"
      "run 5 length=1000 m");
  lw_drawing d = {0};
  lw_error error = {0};
  cr_expect_eq(lw_draw_elevation(order_result(), order, 90.0, &d, &error), LW_NO_SOLUTION);
  cr_expect(strstr(error.text, "too long") != NULL, "%s", error.text);
  lw_drawing_free(&d);
}
