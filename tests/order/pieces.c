/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The pieces that are seen of each row are those that the order counts, and they lie side by side. */
#include "order/pieces.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>

static const char *const plans[] = {
    "run 1 length=2.4 m",
    "run 1 length=4.93 m;course count=5;joint gap=7 mm",
    "run 1 length=5.37 m;turn 1 angle=90 deg;run 2 length=3.21 m;setback=15 mm",
    "run 1 length=5.37 m;turn 1 angle=-90 deg;run 2 length=3.21 m",
    "run 1 length=5.37 m;turn 1 angle=35 deg;run 2 length=3.21 m;joint gap=10 mm",
    "run 1 length=4.1 m;turn 1 angle=90 deg;run 2 length=2.3 m;turn 2 angle=90 deg;run 3 length=4.1 m;"
    "corner unit=handed",
    "run 1 length=9 m;step 1 distance=2.4 m;step 1 courses=1;step 2 distance=5.2 m;step 2 courses=-1",
    "run 1 length=12 m;ground fall=-400 mm",
    "run 1 length=6 m;run 1 radius=4 m",
    "run 1 length=4 m;turn 1 angle=90 deg;run 2 length=2.3 m;turn 2 angle=90 deg;run 3 length=4 m;"
    "turn 3 angle=90 deg;run 4 length=2.3 m",
};

static lw_piece piece[LW_PIECE_MAX];

/* Pieces of a row stand from left to right; a joint lies between two, a ring's two ends aside. */
static void expect_side_by_side(const lw_piece *p, int count, double gap_m, const char *plan) {
  for (int i = 1; i < count; i++) {
    double open = p[i].from_m - p[i - 1].to_m;
    cr_expect(open > -1e-6 && open < 2.0 * gap_m + 0.03, "%s: piece %d begins %.4f m after the one before",
              plan, i, open);
    cr_expect(p[i].to_m > p[i].from_m, "%s", plan);
  }
}

Test(order_pieces, pieces_are_those_that_are_counted) {
  for (size_t i = 0; i < sizeof plans / sizeof *plans; i++) {
    const lw_order *order = order_of(plans[i]);
    order_pieces all = order_all(order);
    int seen[LW_PIECE_HEAD + 1] = {0};
    for (int row = 0; row < order->row_count; row++) {
      int count = lw_order_pieces(order, row, piece);
      expect_side_by_side(piece, count, order->plan.gap_m, plans[i]);
      for (int k = 0; k < count; k++) seen[piece[k].kind]++;
    }
    cr_expect_eq(seen[LW_PIECE_WHOLE], all.whole, "%s", plans[i]);
    cr_expect_eq(seen[LW_PIECE_HALF], all.half, "%s", plans[i]);
    cr_expect_eq(seen[LW_PIECE_CUT], all.closer, "%s", plans[i]);
    cr_expect_eq(seen[LW_PIECE_MITRED], all.mitred, "%s", plans[i]);
    cr_expect_eq(seen[LW_PIECE_HANDED], all.left + all.right, "%s", plans[i]);
  }
}

/* From end to end of a stretch without setback nothing is left open but joints. */
Test(order_pieces, pieces_and_joints_fill_the_face) {
  const lw_order *order =
      order_of("run 1 length=5.37 m;turn 1 angle=90 deg;run 2 length=3.21 m;joint gap=5 mm");
  for (int row = 0; row < order->row_count; row++) {
    double length = order->stretch[order->row[row].stretch].length_m, covered = 0.0;
    int count = lw_order_pieces(order, row, piece);
    for (int i = 0; i < count; i++) covered += piece[i].to_m - piece[i].from_m;
    covered += (count - 1) * order->plan.gap_m;
    cr_expect(fabs(covered - length) <= 0.0011, "row %d covers %.4f m of %.4f m", row, covered, length);
  }
}

/* The heads at a corner are as wide as a block is deep, and stand where the other run passes through. */
Test(order_pieces, heads_stand_in_alternate_courses) {
  const lw_order *order = order_of("run 1 length=4 m;turn 1 angle=90 deg;run 2 length=2.4 m;course count=4");
  for (int row = 0; row < order->row_count; row++) {
    const lw_laid *r = &order->row[row];
    int count = lw_order_pieces(order, row, piece), heads = 0;
    for (int i = 0; i < count; i++) {
      if (piece[i].kind != LW_PIECE_HEAD) continue;
      heads++;
      cr_expect(fabs(piece[i].length_m - 0.2) < 1e-9);
    }
    cr_expect_eq(heads, (r->start == LW_ROW_STOPPED ? 1 : 0) + (r->end == LW_ROW_STOPPED ? 1 : 0));
  }
}
