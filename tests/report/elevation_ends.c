/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Heights on the elevation stand at the end that they belong to: held against the levels of the pegs. */
#include "../order/support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "on_paper.h"

enum { WALLS = 120 / RANDOM_SHARE };
static const double WIDTHS_MM[] = {90.0, 180.0};

/* The base's level at the wall's beginning or end, as its peg has it. */
static double base_level(const lw_order *o, bool end) {
  for (int i = 0; i < o->setting_out.peg_count; i++) {
    const lw_peg *p = &o->setting_out.peg[i];
    if (p->kind == LW_PEG_BASE && p->number == (end ? o->plan.run_count + 1 : 1)) return p->level_m;
  }
  return NAN;
}

/* Values of chains stand left of one at the beginning, right of one at the end. */
static bool has_height(const lw_drawing *d, lw_anchor anchor, double value_m) {
  char words[40];
  snprintf(words, sizeof words, "%.0f", value_m * 1000.0);
  for (size_t i = 0; i < d->mark_count; i++) {
    const lw_mark *m = &d->mark[i];
    if (m->kind == LW_MARK_WORDS && m->anchor == anchor && strcmp(d->words.data + m->words, words) == 0)
      return true;
  }
  return false;
}

static void expect_end(const lw_drawing *d, const lw_order *o, bool end, double ground_m, const char *wall) {
  lw_anchor anchor = end ? LW_ANCHOR_START : LW_ANCHOR_END;
  double top = o->plan.courses * o->plan.course_m, base = base_level(o, end);
  bool hidden = ground_m <= base + 0.001 || ground_m >= top - 0.001;
  cr_expect(has_height(d, anchor, top - base), "no height of %.3f m at the %s: %s", top - base,
            end ? "end" : "beginning", wall);
  cr_expect(hidden || has_height(d, anchor, ground_m - base), "no depth of %.3f m at the %s: %s",
            ground_m - base, end ? "end" : "beginning", wall);
  cr_expect(hidden || has_height(d, anchor, top - ground_m), "no height of %.3f m over the ground: %s",
            top - ground_m, wall);
}

/* Falls of every size to either side; the ground given is that at the low end. */
Test(elevation_ends, on_falling_ground_each_end_has_its_own_heights) {
  static const double EMBEDMENT_M = 0.1;
  for (int i = 0; i < WALLS; i++) {
    char wall[300];
    double fall = order_random(-0.55, 0.55);
    if (fabs(fall) < 0.02) continue;
    snprintf(wall, sizeof wall,
             "course count=5;run 1 length=%.2f m;turn 1 angle=40 deg;"
             "run 2 length=%.2f m;ground fall=%.0f mm",
             order_random(4.0, 9.0), order_random(3.0, 6.0), fall * 1000.0);
    fall = round(fall * 1000.0) / 1000.0;
    const lw_order *o = order_of(wall);
    double width = WIDTHS_MM[i % 2];
    lw_drawing d = {0};
    cr_assert_eq(lw_draw_elevation(order_result(), o, width, &d, NULL), LW_OK, "%s", wall);
    expect_end(&d, o, false, EMBEDMENT_M + fmax(fall, 0.0), wall);
    expect_end(&d, o, true, EMBEDMENT_M + fmax(-fall, 0.0), wall);
    if (i < WALLS / 8) expect_on_paper(&d, wall);
    lw_drawing_free(&d);
  }
}

/* A step up leaves the lowest base at the beginning, a step down at the end: 600 mm there, 400 mm over it. */
Test(elevation_ends, where_the_base_steps_the_heights_step_with_it) {
  for (int up = 0; up < 2; up++) {
    char wall[120];
    snprintf(wall, sizeof wall, "run 1 length=6 m;step 1 distance=2.4 m;step 1 courses=%d", up ? 1 : -1);
    const lw_order *o = order_of(wall);
    lw_drawing d = {0};
    cr_assert_eq(lw_draw_elevation(order_result(), o, 180.0, &d, NULL), LW_OK);
    cr_expect(has_height(&d, LW_ANCHOR_END, up ? 0.6 : 0.4), "at the beginning: %s", wall);
    cr_expect(has_height(&d, LW_ANCHOR_START, up ? 0.4 : 0.6), "at the end: %s", wall);
    cr_expect_not(has_height(&d, LW_ANCHOR_END, up ? 0.4 : 0.6), "at the beginning: %s", wall);
    lw_drawing_free(&d);
  }
}

Test(elevation_ends, a_level_wall_has_its_heights_once) {
  const lw_order *o = order_of("run 1 length=6 m");
  lw_drawing d = {0};
  cr_assert_eq(lw_draw_elevation(order_result(), o, 180.0, &d, NULL), LW_OK);
  cr_expect(has_height(&d, LW_ANCHOR_END, 0.6));
  cr_expect_not(has_height(&d, LW_ANCHOR_START, 0.6));
  lw_drawing_free(&d);
}
