/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>

/* The lengths that need no cut are tried out: a plan made of them has no cut piece, halves at free
 * ends aside,
 * and no length between them is without. */

static const lw_order *of_lengths(const double *length_m, const double *turn_deg, int runs) {
  char items[400];
  int used = 0;
  for (int i = 0; i < runs; i++) {
    used += snprintf(items + used, sizeof items - (size_t)used, "%srun %d length=%.4f m", i ? ";" : "", i + 1,
                     length_m[i]);
    if (i + 1 < runs)
      used +=
          snprintf(items + used, sizeof items - (size_t)used, ";turn %d angle=%.0f deg", i + 1, turn_deg[i]);
  }
  return order_of(items);
}

Test(order, lengths_without_cuts_are_without_cuts) {
  for (int i = 0; i < 60 / RANDOM_SHARE; i++) {
    int runs = 1 + i % 3;
    double length[3], turn[3], shorter[3], longer[3];
    for (int k = 0; k < runs; k++) {
      length[k] = round(order_random(1500, 5000)) / 1000;
      turn[k] = order_random(0, 1) < 0.7 ? 90 : -90;
    }
    const lw_order *order = of_lengths(length, turn, runs);
    for (int k = 0; k < runs; k++) {
      const lw_order_run *r = &order->run[k];
      cr_assert(r->shorter_known && r->longer_known);
      shorter[k] = r->shorter_m;
      longer[k] = r->longer_m;
      cr_expect(lt(dbl, shorter[k], length[k]));
      cr_expect(lt(dbl, length[k], longer[k]));
      /* Half bond by itself: such lengths are half a block apart. */
      cr_expect(epsilon_eq(dbl, longer[k] - shorter[k], r->fits ? 0.4 : 0.2, 1e-6));
    }
    cr_expect(eq(int, order_all(of_lengths(shorter, turn, runs)).closer, 0));
    cr_expect(eq(int, order_all(of_lengths(longer, turn, runs)).closer, 0));
  }
}

/* 2.5 m of blocks of 400 mm: 2.4 or 2.6 m. 2.4 m fits: the next are 2.2 and 2.6 m. */
Test(order, nearest_lengths_by_hand) {
  const lw_order_run *r = &order_of("run 1 length=2.5 m")->run[0];
  cr_expect(epsilon_eq(dbl, r->shorter_m, 2.4, 1e-9));
  cr_expect(epsilon_eq(dbl, r->longer_m, 2.6, 1e-9));
  cr_expect(eq(int, r->fits, 0));
  r = &order_of("run 1 length=2.4 m")->run[0];
  cr_expect(r->fits);
  cr_expect(epsilon_eq(dbl, r->shorter_m, 2.2, 1e-9));
  r = &order_of("run 1 length=2.4 m;turn 1 angle=90 deg;run 2 length=2 m;setback=10 mm")->run[0];
  cr_expect(eq(int, r->longer_known, 0));
  cr_expect(r->no_fit == LW_NO_FIT_SETBACK);
}
