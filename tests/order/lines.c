/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

/* Common practice: 10 m of bedding, 0.5 m wide and 25 mm thick: 0.125 m3 in place, 0.156 of sand, 37.5 kg of
 * cement, 2 bags of 20 kg. */
Test(order, bedding_by_volume_ratio) {
  const lw_order *order =
      order_of("run 1 length=10 m;block depth=500 mm;pad thickness=100 mm;pad beyond=0 mm");
  const lw_order_line *sand = order_line(order, "bedding-sand"), *cement = order_line(order, "cement");
  cr_assert(sand != NULL && cement != NULL);
  cr_expect(epsilon_eq(dbl, sand->net, 0.15625, 1e-9));
  cr_expect(epsilon_eq(dbl, cement->net, 37.5 / 20.0, 1e-9));
  cr_expect(epsilon_eq(dbl, cement->order, 2.0, 1e-9));
}

/* Common practice: an inner bed of 3.0 x 1.2 m, 0.6 m deep, is 2.16 m3, and 2.6 m3 are ordered. */
Test(order, soil_of_a_bed_with_settlement) {
  const lw_order *order =
      order_of("site behind=bed;wall height=650 mm;wall embedment=150 mm;course count=4;soil below top=50 mm;"
               "run 1 length=3.4 m;run 2 length=1.6 m;run 3 length=3.4 m;run 4 length=1.6 m;"
               "turn 1 angle=90 deg;turn 2 angle=90 deg;turn 3 angle=90 deg");
  const lw_order_line *soil = order_line(order, "soil");
  cr_assert(soil != NULL);
  cr_expect(epsilon_eq(dbl, soil->net, 2.16, 1e-9));
  cr_expect(epsilon_eq(dbl, soil->order, 2.592, 1e-9));
}

/* 4.0 x 1.2 m: the diagonal is sqrt(17.44) m; 3-4-5 in the largest multiple of 50 mm that fits 1.2 and 4.0
 * m. */
Test(order, pegs_of_a_rectangle) {
  const lw_order *order =
      order_of("run 1 length=4 m;run 2 length=1.2 m;run 3 length=4 m;run 4 length=1.2 m;setback=20 mm;"
               "turn 1 angle=90 deg;turn 2 angle=90 deg;turn 3 angle=90 deg");
  const lw_setting_out *p = &order->setting_out;
  cr_assert(eq(int, p->check_count, 2));
  for (int i = 0; i < 2; i++) cr_expect(epsilon_eq(dbl, p->check[i].distance_m, sqrt(17.44), 1e-9));
  cr_expect(epsilon_eq(dbl, p->square[0].unit_m, 0.4, 1e-9));
  cr_expect(epsilon_eq(dbl, p->base_offset_m, 0.04, 1e-12));
  cr_expect(p->peg[4].kind == LW_PEG_TOP && p->peg[4].number == 1);
  cr_expect(epsilon_eq(dbl, p->peg[4].at.x_m, 0.04, 1e-9));
  cr_expect(epsilon_eq(dbl, p->peg[4].at.y_m, 0.04, 1e-9));
}

Test(order, what_is_not_known_is_a_fault) {
  const struct {
    const char *items;
    lw_fault_slug slug;
  } rows[] = {
      {"mark=x", LW_FAULT_MISSING_ITEM},
      {"run 1 length=4 m;run 2 length=2 m", LW_FAULT_MISSING_ITEM},
      {"run 1 length=4 m;plan ends=closed", LW_FAULT_CONTRADICTION},
      {"run 1 length=4 m;cap height=50 mm", LW_FAULT_MISSING_ITEM},
      {"run 1 length=4 m;step 1 distance=2 m", LW_FAULT_MISSING_ITEM},
      {"run 1 length=4 m;step 1 distance=2 m;step 1 courses=3", LW_FAULT_CONTRADICTION},
      {"run 1 length=4 m;step 1 distance=5 m;step 1 courses=1", LW_FAULT_CONTRADICTION},
      /* Run 4 comes down through run 1; 0.3 m between two blocks of 0.2 m; setback that eats a run. */
      {"run 1 length=6 m;turn 1 angle=90 deg;run 2 length=2 m;turn 2 angle=90 deg;run 3 length=3 m;"
       "turn 3 angle=90 deg;run 4 length=4 m",
       LW_FAULT_CONTRADICTION},
      {"run 1 length=2 m;turn 1 angle=90 deg;run 2 length=0.3 m;turn 2 angle=90 deg;run 3 length=2 m",
       LW_FAULT_CONTRADICTION},
      {"run 1 length=0.8 m;setback=100 mm;end setback=150 mm;course count=4", LW_FAULT_CONTRADICTION}};
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
    cr_expect(order_faults(rows[i].items)->fault[0].slug == rows[i].slug, "%s", rows[i].items);
  const lw_faults *crossed = order_faults(rows[7].items);
  cr_expect_str_eq(crossed->fault[0].item, "run 4 length");
  cr_expect(strstr(crossed->fault[0].wanted, "run 4 crosses run 1") != NULL);
  /* A cap higher than the wall: no count below one is proposed. */
  const lw_faults *low = order_faults("run 1 length=4 m;wall height=450 mm;cap height=1 m;cap length=600 mm");
  cr_expect(strstr(low->fault[0].wanted, "with 1 courses") != NULL, "%s", low->fault[0].wanted);
  cr_expect(strchr(low->fault[0].wanted, '-') == NULL, "%s", low->fault[0].wanted);
}

Test(order, notes_say_what_is_wrong_with_a_plan) {
  cr_expect(order_note(order_of("run 1 length=4 m;run 1 radius=3 m"), "curve-too-sharp") != NULL);
  cr_expect(order_note(order_of("run 1 length=4 m"), "no-pad") != NULL);
  cr_expect(order_note(order_of("run 1 length=4 m;cap height=50 mm;cap length=600 mm;cap depth=150 mm"),
                       "cap-narrow") != NULL);
  cr_expect(order_note(order_of("run 1 length=4 m;cap height=50 mm;cap length=600 mm;cap depth=240 mm;"
                                "cap overhang=40 mm"),
                       "cap-narrow") == NULL);
  cr_expect(order_note(order_of("run 1 length=4 m;run 2 length=3 m;turn 1 angle=90 deg;block depth=60 mm"),
                       "overlap-short") != NULL);
}

/* Figures that everybody in the trade uses and no standard gives are marked so, and are what they are. */
Test(order, trade_facts_are_marked_common_practice) {
  const struct {
    const char *slug;
    double value;
  } facts[] = {{"bedding-ratio", 6.0},    {"pad-low-wall", 0.1},    {"cut-least", 1.0 / 3.0},
               {"overlap-least", 0.25},   {"peg-tolerance", 0.005}, {"drain-pipe-fall", 0.01},
               {"stone-compaction", 1.3}, {"settlement", 0.2},      {"barrow-mass", 80.0},
               {"block-allowance", 0.05}};
  for (size_t i = 0; i < sizeof facts / sizeof facts[0]; i++) {
    const lw_ordering_row *row = lw_tables_ordering(order_tables(), facts[i].slug);
    cr_assert(row != NULL, "%s", facts[i].slug);
    cr_expect(epsilon_eq(dbl, row->value, facts[i].value, 1e-9), "%s", facts[i].slug);
    cr_expect_str_eq(row->from.source, "common practice, no source");
  }
}

/* Every allowance left out is the row of its name, and says so. */
Test(order, allowances_come_from_the_table) {
  const lw_order *order =
      order_of("run 1 length=4 m;stone width=300 mm;stone filter=cloth;drain outlets=1;pad thickness=100 mm");
  static const char *const lines[] = {"blocks", "drainage-stone", "geotextile", "drain-pipe", "pad-stone"};
  for (size_t i = 0; i < sizeof lines / sizeof lines[0]; i++) {
    const lw_order_line *l = order_line(order, lines[i]);
    cr_assert(l != NULL && l->allowance_known, "%s", lines[i]);
    cr_expect_str_eq(l->source, "common practice, no source");
  }
  const lw_order_line *l = order_line(order_of("run 1 length=4 m;block allowance=20 %"), "blocks");
  cr_expect_str_eq(l->source, "given");
  cr_expect(epsilon_eq(dbl, l->order, ceil(l->net * 1.2), 1e-9));
}

/* 10 m x 0.2 m of dig, 0.1 m deep, is 0.2 m3: 400 kg at 2000 kg/m3, five barrows of 80 kg; loose 0.318 m3 is
 * six of 60 L. */
Test(order, trips_by_mass_or_by_volume) {
  const lw_order *order = order_of("run 1 length=10 m;spoil bulking=1.59");
  cr_expect(epsilon_eq(dbl, order->spoil_kg, 400.0, 1e-6));
  cr_expect(eq(int, order->spoil_barrows, 6));
  cr_expect(eq(int, order->skips, 1));
  order = order_of("run 1 length=10 m;barrow mass=50 kg;skip volume=0.1 m3");
  cr_expect(eq(int, order->spoil_barrows, 8));
  cr_expect(eq(int, order->skips, 4));
}

Test(order, stone_past_the_centre_of_a_curve_is_not_less_than_none) {
  const lw_order *order =
      order_of("run 1 length=300 mm;run 1 radius=0.45 m;stone width=400 mm;curve gap=200 mm;drain outlets=1");
  cr_expect(order_note(order, "stone-past-centre") != NULL);
  for (int i = 0; i < order->line_count; i++) cr_expect(le(dbl, 0.0, order->line[i].net));
}

/* 8 m with steps of a 200 mm course at 3 m and 5 m: 3 m at 0, 2 m at 200 and 3 m at 400 mm, 200 mm on the
 * mean. Of 4 courses, the soil 50 mm below the top and 150 mm of it over the stone: 600, 400 and 200 mm of
 * stone, 300 mm wide. Behind the pad, 150 mm beyond the 200 mm of the blocks, the dig is 150 mm wider, with
 * its ends 8.3 m long and 125 mm deep; and 300 mm of it run under each step of 200 mm. The cloth: floor and
 * top with its lap, both sides, of the pocket too; 0.19875 and 0.07875 m2 at the ends, 0.06 m2 at a step. */
Test(order, drainage_stone_by_hand) {
  const lw_order *order = order_of(
      "course count=4;run 1 length=8 m;step 1 distance=3 m;step 1 courses=1;step 2 distance=5 m;"
      "step 2 courses=1;stone width=300 mm;stone filter=cloth;soil below top=50 mm;pad thickness=100 mm");
  cr_expect(epsilon_eq(dbl, order_line(order, "drainage-stone")->net,
                       0.3 * 0.4 * 8.0 + 0.15 * 0.125 * 8.3 + 2.0 * 0.3 * 0.2 * 0.15, 1e-9));
  cr_expect(epsilon_eq(dbl, order_line(order, "geotextile")->net,
                       (2.0 * (0.3 + 0.4) + 0.3) * 8.0 + 2.0 * 0.125 * 8.0 + 0.19875 + 0.07875 + 2.0 * 0.06,
                       1e-9));
  /* Bedding lies under the blocks only, the pad goes beyond them: 8 x 0.2 x 0.025 m, 1.25 times that. */
  cr_expect(epsilon_eq(dbl, order_line(order, "bedding-sand")->net, 0.05, 1e-9));
}

/* Inside the walls 3.0 x 1.2 m, inside the stone 2.4 x 0.6 m: 1.44 m2 of soil 600 mm deep, and 150 mm of it
 * over the 2.16 m2 of stone. */
Test(order, soil_over_the_stone_of_a_bed) {
  const lw_order *order =
      order_of("site behind=bed;wall height=650 mm;wall embedment=150 mm;course count=4;soil below top=50 mm;"
               "run 1 length=3.4 m;run 2 length=1.6 m;run 3 length=3.4 m;run 4 length=1.6 m;"
               "turn 1 angle=90 deg;turn 2 angle=90 deg;turn 3 angle=90 deg;stone width=300 mm");
  cr_expect(epsilon_eq(dbl, order_line(order, "soil")->net, 1.44 * 0.6 + 2.16 * 0.15, 1e-9));
}

/* A mitred corner has a straight joint; one course has no joint over another, and a turned corner is
 * bonded. */
Test(order, a_mitred_corner_is_told_of) {
  static const char mitred[] = "run 1 length=3 m;turn 1 angle=60 deg;run 2 length=3 m";
  char one_course[120];
  snprintf(one_course, sizeof one_course, "%s;course count=1", mitred);
  cr_expect(order_note(order_of(mitred), "corner-mitre") != NULL);
  cr_expect(order_note(order_of(one_course), "corner-mitre") == NULL);
  cr_expect(order_note(order_of("run 1 length=3 m;turn 1 angle=90 deg;run 2 length=3 m"), "corner-mitre") ==
            NULL);
  cr_expect(order_note(order_of("run 1 length=3 m;turn 1 angle=90 deg;run 2 length=3 m;corner unit=cut"),
                       "corner-mitre") != NULL);
}
