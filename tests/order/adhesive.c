/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "order/pieces.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>

/* Two round beads along every cap, by hand: 2 x 6 m x pi (4 mm)2 is 0.6032 litres of a bead 8 mm thick. Twice
 * as thick it takes four times as much. */
Test(order, adhesive_of_bonded_caps_by_hand) {
  static const char caps[] = "run 1 length=6 m;cap height=50 mm;cap depth=230 mm;cap length=600 mm;"
                             "cap overhang=0 mm;cap fixing=bonded";
  char items[256];
  const double bead_mm[] = {8.0, 16.0}, litres[] = {0.603186, 2.412743};
  for (int i = 0; i < 2; i++) {
    lw_print(items, sizeof items, "%s;adhesive bead=%.0f mm", caps, bead_mm[i]);
    const lw_order_line *line = order_line(order_of(items), "adhesive");
    cr_assert(line != NULL);
    cr_expect(epsilon_eq(dbl, line->net, litres[i], 1e-5), "%.0f mm: %g", bead_mm[i], line->net);
  }
}

/* A ring is closed: its pieces and joints go once around, none before its beginning and none past its end. */
static int ring_of(double radius_m, double setback_mm, double gap_mm) {
  static lw_piece piece[LW_PIECE_MAX];
  char plan[160];
  int straddle = 0;
  lw_print(plan, sizeof plan,
           "run 1 length=%.12f m;run 1 radius=%.3f m;plan ends=closed;setback=%.0f mm;joint gap=%.0f mm",
           2.0 * acos(-1.0) * radius_m, radius_m, setback_mm, gap_mm);
  const lw_order *order = order_of(plan);
  for (int row = 0; row < order->row_count; row++) {
    double length = order->stretch[order->row[row].stretch].length_m, covered = 0.0;
    int count = lw_order_pieces(order, row, piece);
    cr_assert(count > 0 && order->stretch[order->row[row].stretch].ring);
    for (int k = 0; k < count; k++) {
      bool within = piece[k].from_m > -1e-9 && piece[k].to_m < length + 1e-9;
      cr_expect(within, "%s: row %d: %g to %g of %g", plan, row, piece[k].from_m, piece[k].to_m, length);
      covered += piece[k].to_m - piece[k].from_m;
      straddle += piece[k].from_m < 1e-9;
    }
    cr_expect(covered > 0.9 * length && covered < length + 1e-6, "%s: row %d: %g of %g", plan, row, covered,
              length);
  }
  return straddle;
}

Test(order_pieces, pieces_of_a_ring_go_once_around) {
  int straddle = 0;
  for (double radius = 1.3; radius < 2.6; radius += 0.13)
    for (int i = 0; i < 4; i++) straddle += ring_of(radius, i % 2 ? 10.0 : 0.0, i < 2 ? 0.0 : 7.0);
  cr_expect(straddle > 0, "no piece goes over the place where the ring begins");
}
