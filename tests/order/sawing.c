/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>

static const lw_blank *find_blank(const lw_order *order, int pieces) {
  for (int i = 0; i < order->blank_count; i++)
    if (order->blank[i].pieces == pieces) return &order->blank[i];
  return NULL;
}

/* One course of an L, runs of 2.54 and 2.74 m: the first runs through, 6 blocks and 140 mm; the second has
 * 2.74 - 0.2 = 2.54 m, the same. Two pieces of 140 mm from two blocks, or from one: 400 - 280 - 2 x 4 = 112
 * mm are left of it. */
Test(order, two_short_pieces_come_from_one_block) {
  static const char plan[] = "course count=1;run 1 length=2.54 m;turn 1 angle=90 deg;run 2 length=2.74 m";
  char items[160];
  const lw_order *order = order_of(plan);
  cr_expect(eq(int, order->course[0].closer, 2));
  cr_expect(eq(int, order->sawn[LW_STOCK_BLOCK], 2));
  cr_expect(eq(int, order->sawn_again[LW_STOCK_BLOCK], 1));
  cr_expect(epsilon_eq(dbl, order_line(order, "blocks")->net, 14.0, 1e-9));
  snprintf(items, sizeof items, "%s;offcuts used=yes", plan);
  order = order_of(items);
  cr_expect(epsilon_eq(dbl, order_line(order, "blocks")->net, 13.0, 1e-9));
  const lw_blank *blank = find_blank(order, 2);
  cr_assert(blank != NULL);
  cr_expect(epsilon_eq(dbl, blank->rest_m, 0.112, 1e-9));
}

/* 2.4 m in three courses: two halves in the second. They are one block, cut in the middle; where halves are
 * sold they are ordered with two to spare. */
Test(order, halves_are_cut_or_bought) {
  const lw_order *order = order_of("run 1 length=2.4 m");
  cr_expect(eq(int, order->sawn[LW_STOCK_BLOCK], 1));
  cr_expect(epsilon_eq(dbl, order_line(order, "blocks")->net, 6 + 5 + 1 + 6, 1e-9));
  cr_expect(order_line(order, "half-blocks") == NULL);
  order = order_of("run 1 length=2.4 m;half unit=sold");
  cr_expect(epsilon_eq(dbl, order_line(order, "blocks")->net, 6 + 5 + 6, 1e-9));
  cr_assert(order_line(order, "half-blocks") != NULL);
  cr_expect(epsilon_eq(dbl, order_line(order, "half-blocks")->order, 4.0, 1e-9));
}

/* A hexagon of six runs of 1.2 m, blocks of 400 by 200 mm, cut at 30 degrees: long edges are 200 tan 30, that
 * is 115.5 mm longer. In every other course pieces of 215.5 and 100 mm stand at the corners. One leaves,
 * beyond a saw of 4/cos 30 mm, 400 - 100 - 4.6 = 295.4 mm by its long edge: turned round that is the next
 * one, and 75.9 mm are over. */
Test(order, mitred_pieces_nest_in_one_block) {
  static const char hexagon[] =
      "course count=2;block depth=200 mm;plan ends=closed;run 1 length=1.2 m;turn 1 angle=60 deg;"
      "run 2 length=1.2 m;turn 2 angle=60 deg;run 3 length=1.2 m;turn 3 angle=60 deg;run 4 length=1.2 m;"
      "turn 4 angle=60 deg;run 5 length=1.2 m;turn 5 angle=60 deg;run 6 length=1.2 m;turn 6 angle=60 deg";
  char items[500];
  snprintf(items, sizeof items, "%s;offcuts used=yes", hexagon);
  const lw_order *order = order_of(items);
  const lw_blank *nested = find_blank(order, 2);
  cr_assert(nested != NULL);
  cr_expect(eq(int, nested->count, 6));
  cr_expect(epsilon_eq(dbl, nested->piece_m[0], 0.2155, 1e-3));
  cr_expect(epsilon_eq(dbl, nested->piece_m[1], 0.2155, 1e-3));
  cr_expect(epsilon_eq(dbl, nested->rest_m, 0.0759, 1e-3));
  cr_expect(epsilon_eq(dbl, nested->far_m, nested->rest_m, 1e-12), "sawn square");
  cr_expect(eq(int, order->sawn[LW_STOCK_BLOCK] - order->sawn_again[LW_STOCK_BLOCK], 6));
}

static int blanks_of(const lw_order *order, lw_stock stock, int *pieces) {
  int sum = 0;
  for (int i = 0; i < order->blank_count; i++) {
    const lw_blank *b = &order->blank[i];
    if (b->stock != stock) continue;
    sum += b->count;
    *pieces += b->count * b->pieces;
    double gone = 0.5 * (b->rest_m + b->far_m), lost = 0.0041;
    for (int k = 0; k < b->pieces; k++) {
      gone += 0.5 * (b->piece_m[k] + b->short_m[k]);
      lost += 0.004 * sqrt(2.0) + 0.5 * (b->piece_m[k] - b->short_m[k]);
    }
    /* Areas: pieces, rest and saw make the whole one, and what is trimmed off a mitre before a square piece;
     * in halves the saw takes from the pieces. */
    cr_expect(le(dbl, gone, order->plan.unit_m + 0.0041));
    cr_expect(le(dbl, order->plan.unit_m - lost, gone));
  }
  return sum;
}

/* Every piece of the cutting list comes from a whole one, and none gives more than it has. */
Test(order, what_is_sawn_is_all_there) {
  for (int i = 0; i < 150 / RANDOM_SHARE; i++) {
    char items[400];
    snprintf(items, sizeof items,
             "run 1 length=%.0f mm;turn 1 angle=%.0f deg;run 2 length=%.0f mm;setback=%.0f mm;joint gap=%.0f "
             "mm;offcuts used=%s",
             round(order_random(1200, 6000)), round(order_random(-60, 90)), round(order_random(1200, 6000)),
             round(order_random(0, 20)), round(order_random(0, 5)), i % 2 ? "yes" : "no");
    const lw_order *order = order_of(items);
    int listed = 0, sawn = 0;
    for (int k = 0; k < order->cut_count; k++) listed += order->cut[k].count;
    int whole = blanks_of(order, LW_STOCK_BLOCK, &sawn);
    cr_expect(eq(int, sawn, listed), "%s", items);
    cr_expect(eq(int, whole, (i % 2 ? order->sawn_again : order->sawn)[LW_STOCK_BLOCK]), "%s", items);
    cr_expect(le(int, order->sawn_again[LW_STOCK_BLOCK], order->sawn[LW_STOCK_BLOCK]), "%s", items);
  }
}

/* Two halves of a block of 400 mm and a saw of 4 mm: 198 mm each. Sold halves are whole. */
Test(order, two_halves_leave_room_for_the_saw) {
  const lw_order *order = order_of("run 1 length=4 m");
  for (int i = 0; i < order->cut_count; i++)
    if (order->cut[i].kind == LW_CUT_HALF) cr_expect(epsilon_eq(dbl, order->cut[i].long_m, 0.198, 1e-9));
  for (int i = 0; i < order->blank_count; i++) {
    const lw_blank *b = &order->blank[i];
    double all = (b->pieces - 1) * 0.004;
    for (int k = 0; k < b->pieces; k++) all += b->piece_m[k];
    cr_expect(le(dbl, all, 0.4 + 1e-9));
  }
}

/* Whatever is sawn, a piece and what is left of its block are that block less the saw: one figure. */
Test(order, waste_and_offcut_are_one_figure) {
  for (int i = 0; i < 60 / RANDOM_SHARE; i++) {
    char items[200];
    snprintf(items, sizeof items,
             "run 1 length=%.0f mm;turn 1 angle=%.0f deg;run 2 length=%.0f mm;cap height=50 mm;"
             "cap length=600 mm;cap depth=%.0f mm",
             order_random(2000, 5000), order_random(20, 80), order_random(2000, 5000),
             order_random(200, 300));
    const lw_order *order = order_of(items);
    for (int k = 0; k < order->blank_count; k++) {
      const lw_blank *b = &order->blank[k];
      for (int n = 0; n < order->cut_count && b->pieces == 1; n++) {
        const lw_cut *cut = &order->cut[n];
        bool cap = cut->cap_depth_m > 0.0, of = cap == (b->stock == LW_STOCK_CAP) && cut->kind != LW_CUT_HALF;
        if (!of || fabs(cut->long_m - b->piece_m[0]) > 1e-9 || fabs(cut->short_m - b->short_m[0]) > 1e-9)
          continue;
        cr_expect(epsilon_eq(dbl, cut->waste_short_m, b->rest_m, 1e-9), "%s", items);
        cr_expect(epsilon_eq(dbl, cut->waste_long_m, b->far_m, 1e-9), "%s", items);
      }
    }
  }
}

/* A corner of 60 degrees has units cut on the mitre, long and short ones at both sides of it: two spare of
 * each kind, bought as blocks, beside the share for breakage. */
Test(order, mitred_units_have_spares) {
  const lw_order *order = order_of("run 1 length=4 m;turn 1 angle=60 deg;run 2 length=3 m");
  int kinds = 0;
  for (int i = 0; i < order->cut_count; i++) kinds += order->cut[i].kind == LW_CUT_MITRED ? 1 : 0;
  const lw_order_line *spares = order_line(order, "mitred-spares");
  cr_assert(spares != NULL && kinds > 0);
  cr_expect(epsilon_eq(dbl, spares->order, 2.0 * kinds, 1e-9));
  cr_expect(order_line(order_of("run 1 length=4 m;turn 1 angle=90 deg;run 2 length=3 m"), "mitred-spares") ==
            NULL);
}
