/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The plan shows the drain pipe behind the wall, and an arrow at every place where it comes out. */
#include "../order/support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>

#include "on_paper.h"

enum { WALLS = 80 / RANDOM_SHARE };
static const double WIDTHS_MM[] = {90.0, 180.0};

/* Places where the pipe comes out, each once. */
static int places(const lw_setting_out *p, double *along_m) {
  int count = 0;
  for (int i = 0; i < p->invert_count; i++) {
    bool again = p->invert[i].kind != LW_INVERT_OUTLET;
    for (int k = 0; k < count; k++) again = again || fabs(along_m[k] - p->invert[i].along_m) < 1e-6;
    if (!again) along_m[count++] = p->invert[i].along_m;
  }
  return count;
}

/* Heads of arrows are areas of three corners in ink. */
static int arrows(const lw_drawing *d) {
  int count = 0;
  for (size_t i = 0; i < d->mark_count; i++) {
    const lw_mark *m = &d->mark[i];
    count += m->kind == LW_MARK_AREA && m->fill == LW_FILL_INK && m->count == 3 ? 1 : 0;
  }
  return count;
}

static void expect_outlets(const lw_drawing *d, const lw_setting_out *p, const char *wall) {
  double along[LW_INVERT_MAX];
  int count = places(p, along);
  cr_expect(lt(int, 0, count), "%s", wall);
  cr_expect_eq(arrows(d), count, "%d arrows for %d outlets: %s", arrows(d), count, wall);
  for (int i = 0; i < count; i++) {
    char words[40];
    snprintf(words, sizeof words, " %.2f m (level", along[i]);
    cr_expect(on_paper_says(d, words), "\"%s\" is not told: %s", words, wall);
  }
}

static void make(char *wall, size_t size, int number) {
  static const char *const SHAPES[] = {
      "run 1 length=%.2f m;turn 1 angle=55 deg;run 2 length=%.2f m;ground fall=300 mm",
      "run 1 length=%.2f m;run 1 radius=9 m;turn 1 angle=0 deg;run 2 length=%.2f m",
      "run 1 length=%.2f m;turn 1 angle=-90 deg;run 2 length=%.2f m;ground fall=-500 mm",
      "run 1 length=%.2f m;turn 1 angle=90 deg;run 2 length=%.2f m"};
  char shape[200];
  double first = order_random(4.0, 12.0), second = order_random(4.0, 12.0);
  snprintf(shape, sizeof shape, SHAPES[number % 4], first, second);
  snprintf(wall, size, "%s;course count=5;stone width=%.0f mm;stone filter=cloth;drain outlets=%d", shape,
           order_random(200.0, 400.0), 1 + number % 5);
}

Test(plan_pipe, every_outlet_has_its_arrow_and_is_told) {
  for (int i = 0; i < WALLS; i++) {
    char wall[400];
    make(wall, sizeof wall, i);
    const lw_order *o = order_of(wall);
    lw_drawing d = {0};
    cr_assert(o->setting_out.pipe_known, "%s", wall);
    cr_assert_eq(lw_draw_plan(order_result(), o, WIDTHS_MM[i / 4 % 2], &d, NULL), LW_OK, "%s", wall);
    expect_outlets(&d, &o->setting_out, wall);
    expect_on_paper(&d, wall);
    lw_drawing_free(&d);
  }
}

/* Around a bed, and around a ring: the same. */
Test(plan_pipe, around_a_closed_plan_too) {
  static const char *const CLOSED[] = {
      "run 1 length=4.8 m;turn 1 angle=90 deg;run 2 length=2.4 m;turn 2 angle=90 deg;run 3 length=4.8 m;"
      "turn 3 angle=90 deg;run 4 length=2.4 m;site behind=bed",
      "run 1 length=12.566 m;run 1 radius=2 m;turn 1 angle=0 deg;plan ends=closed"};
  for (int i = 0; i < 2; i++)
    for (int outlets = 1; outlets < 6; outlets++) {
      char wall[400];
      snprintf(wall, sizeof wall, "%s;stone width=250 mm;stone filter=cloth;drain outlets=%d", CLOSED[i],
               outlets);
      const lw_order *o = order_of(wall);
      lw_drawing d = {0};
      cr_assert_eq(lw_draw_plan(order_result(), o, WIDTHS_MM[outlets % 2], &d, NULL), LW_OK, "%s", wall);
      expect_outlets(&d, &o->setting_out, wall);
      expect_on_paper(&d, wall);
      lw_drawing_free(&d);
    }
}

Test(plan_pipe, without_an_outlet_there_is_no_pipe) {
  const lw_order *o = order_of("run 1 length=6 m;stone width=250 mm;stone filter=cloth;drain outlets=0");
  lw_drawing d = {0};
  cr_assert_eq(lw_draw_plan(order_result(), o, 180.0, &d, NULL), LW_OK);
  cr_expect_eq(arrows(&d), 0);
  cr_expect_not(on_paper_says(&d, "pipe"));
  lw_drawing_free(&d);
}
