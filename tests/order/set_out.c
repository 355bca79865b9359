/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

/* Where the pegs of a stepped base stand, and plans of which nobody could make the corner or the piece. */

static const double DEGREE = 3.14159265358979323846 / 180.0;

static const lw_peg *peg_of(const lw_order *order, lw_peg_kind kind, int number) {
  for (int i = 0; i < order->setting_out.peg_count; i++)
    if (order->setting_out.peg[i].kind == kind && order->setting_out.peg[i].number == number)
      return &order->setting_out.peg[i];
  return NULL;
}

/* 20 mm of setback, two courses up at 2 m: the base at the other end lies 40 mm behind its beginning. */
Test(order, pegs_of_a_raised_base_stand_back) {
  const lw_order *order =
      order_of("run 1 length=4 m;setback=20 mm;course count=4;step 1 distance=2 m;step 1 courses=2");
  const lw_peg *b1 = peg_of(order, LW_PEG_BASE, 1), *b2 = peg_of(order, LW_PEG_BASE, 2),
               *s1 = peg_of(order, LW_PEG_STEP, 1);
  cr_expect(epsilon_eq(dbl, b1->at.y_m, 0.0, 1e-12));
  cr_expect(epsilon_eq(dbl, b2->at.y_m, 0.04, 1e-12));
  cr_expect(epsilon_eq(dbl, s1->at.y_m, 0.04, 1e-12));
  cr_expect(epsilon_eq(dbl, s1->at.x_m, 2.0, 1e-12));
  cr_expect(epsilon_eq(dbl, b2->level_m, 0.4, 1e-12));
}

/* Over random plans: from each base peg to the top peg at the same corner the face leans by one setback a
 * course on both runs that meet there, square to each. */
Test(order, base_and_top_pegs_lie_on_one_lean) {
  for (int i = 0; i < 60 / RANDOM_SHARE; i++) {
    char items[400];
    double setback = round(order_random(5, 30)) / 1000, turn = round(order_random(-80, 80));
    double a = round(order_random(2500, 5000)) / 1000, b = round(order_random(2500, 5000)) / 1000;
    int rise = 1 + (int)order_random(0, 2), courses = 5;
    if (fabs(turn) < 5) turn = 30;
    snprintf(items, sizeof items,
             "run 1 length=%.3f m;turn 1 angle=%.0f deg;run 2 length=%.3f m;setback=%.3f m;course count=%d;"
             "step 1 distance=%.3f m;step 1 courses=%d",
             a, turn, b, setback, courses, a - 0.8, rise);
    const lw_order *order = order_of(items);
    double heading[2] = {0.0, turn * DEGREE};
    for (int corner = 0; corner < 3; corner++) {
      const lw_peg *low = peg_of(order, LW_PEG_BASE, corner + 1),
                   *high = peg_of(order, LW_PEG_TOP, corner + 1);
      double lean = (courses - 1 - (corner > 0 ? rise : 0)) * setback;
      for (int run = corner > 1 ? 1 : 0; run < (corner == 0 ? 1 : 2); run++) {
        double back = (high->at.y_m - low->at.y_m) * cos(heading[run]) -
                      (high->at.x_m - low->at.x_m) * sin(heading[run]);
        cr_expect(epsilon_eq(dbl, back, lean, 1e-9), "B%d: %s", corner + 1, items);
      }
    }
  }
}

/* A fall of 1 m along 6 m in front of 0.6 m of blocks that are 0.1 m deep in the ground at the low end: 0.5 m
 * of face, gone after 3 m; at the other end the ground stands 0.5 m over the top. */
Test(order, ground_that_comes_up_to_the_top_is_told) {
  const lw_order_note *note = order_note(order_of("run 1 length=6 m;ground fall=1 m"), "ground-over-top");
  cr_assert(note != NULL);
  cr_expect(epsilon_eq(dbl, note->at_m, 3.0, 1e-9));
  cr_expect(epsilon_eq(dbl, note->length_m, 0.5, 1e-9));
  cr_expect(order_note(order_of("run 1 length=6 m;ground fall=0.3 m"), "ground-over-top") == NULL);
}

Test(order, a_sliver_beside_a_step_is_told) {
  const lw_order_note *note =
      order_note(order_of("run 1 length=4 m;step 1 distance=0.1 m;step 1 courses=1"), "step-sliver");
  cr_assert(note != NULL);
  cr_expect(eq(int, note->step, 1));
  cr_expect(epsilon_eq(dbl, note->length_m, 0.1, 1e-9));
  cr_expect(order_note(order_of("run 1 length=4 m;step 1 distance=0.8 m;step 1 courses=1"), "step-sliver") ==
            NULL);
}

/* No piece is longer than the block that it is sawn from, over random corners and depths; a corner too deep
 * for its mitre is a fault, or turned where it is square. */
Test(order, no_piece_is_longer_than_its_block) {
  int made = 0, refused = 0, turned = 0;
  for (int i = 0; i < 200 / RANDOM_SHARE; i++) {
    char items[400];
    double turn = i % 3 == 0 ? (i % 2 ? 90 : -90) : round(order_random(20, 130)) * (i % 2 ? 1 : -1);
    snprintf(
        items, sizeof items,
        "run 1 length=%.0f mm;turn 1 angle=%.0f deg;run 2 length=%.0f mm;corner unit=cut;block depth=%.0f mm",
        order_random(2000, 5000), turn, order_random(2000, 5000), order_random(150, 420));
    const lw_order *order = order_try(items);
    if (order == NULL) {
      cr_expect(order_faults(items)->fault[0].slug == LW_FAULT_CONTRADICTION);
      refused++;
      continue;
    }
    made++;
    turned += order_note(order, "corner-turned") != NULL ? 1 : 0;
    for (int k = 0; k < order->cut_count; k++) {
      const lw_cut *cut = &order->cut[k];
      cr_expect(le(dbl, cut->long_m, 0.4 + 1e-9), "%s", items);
      cr_expect(le(dbl, 0.0, cut->short_m), "%s", items);
      if (cut->kind != LW_CUT_MITRED) continue;
      double lost = cut->long_m - cut->short_m;
      cr_expect(epsilon_eq(dbl, lost, order->plan.depth_m * tan(fabs(turn) * DEGREE / 2.0), 1e-9), "%s",
                items);
    }
  }
  cr_expect(made > 80 / RANDOM_SHARE && refused > 10 / RANDOM_SHARE && turned > 3 / RANDOM_SHARE,
            "%d made, %d refused, %d turned", made, refused, turned);
}
