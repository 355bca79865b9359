/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/result.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "../checks/random_wall.h"

/* Whose passive pressure counts: a book's word gives the book's formula. */

static double passive_of(const char *by, double delta_share, dice d, double *closed) {
  static lw_tables tables;
  static lw_result r;
  static bool read;
  char items[6][64];
  double phi = dice_between(&d, 18.0, 38.0), c = dice_between(&d, 0.0, 20.0),
         deep = dice_between(&d, 0.1, 0.8), weight = dice_between(&d, 15.0, 20.0),
         kp = pow(tan((45.0 + 0.5 * phi) / 57.295779513082321), 2.0);
  if (!read) cr_assert_eq(lw_tables_read(NULL, &tables, NULL), LW_OK);
  read = true;
  snprintf(items[0], sizeof items[0], "wall embedment=%.9f m", deep);
  snprintf(items[1], sizeof items[1], "footing soil friction angle=%.9f deg", phi);
  snprintf(items[2], sizeof items[2], "footing soil cohesion=%.9f kPa", c);
  snprintf(items[3], sizeof items[3], "footing soil unit weight=%.9f kN/m3", weight);
  snprintf(items[4], sizeof items[4], "wall friction=%.9f deg", delta_share * phi);
  snprintf(items[5], sizeof items[5], "method passive by=%s", by);
  lw_case one =
      CASE("wall height=1.6 m", "base width=1.4 m", "top width=0.5 m", "soil 1 friction angle=32 deg",
           items[0], items[1], items[2], items[3], items[4], items[5], "method passive=100 %",
           "method pressure=coulomb", "base friction=0", "method slip=not");
  cr_assert_eq(lw_run(&one, &tables, LW_DETAIL_EVERYTHING, &r, NULL), LW_OK);
  *closed = 0.5 * kp * weight * deep * deep + 2.0 * c * sqrt(kp) * deep;
  return r.situations.situation[0].base.passive_kn_per_m;
}

Test(checks, passive_by_a_book) {
  dice d = {77};
  for (int i = 0; i < 60 / RANDOM_SHARE; i++) {
    double closed;
    (void)dice_between(&d, 0.0, 1.0);
    double rankine = passive_of("rankine", 0.6, d, &closed);
    cr_expect_lt(fabs(rankine / closed - 1.0), 1e-6, "%g and %g", rankine, closed);
    /* Up to a third of the angle Coulomb's own plane is what is counted anyway; beyond it is more. */
    double own = passive_of("own", 0.3, d, &closed), coulomb = passive_of("coulomb", 0.3, d, &closed);
    cr_expect_lt(fabs(coulomb / own - 1.0), 1e-9);
    own = passive_of("own", 0.6, d, &closed);
    coulomb = passive_of("coulomb", 0.6, d, &closed);
    cr_expect_lt(own, coulomb);
  }
}
