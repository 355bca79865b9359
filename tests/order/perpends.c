/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "order/perpends.h"

#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

/* Joints of rows by hand: on a straight run of 4 m a lower row of whole blocks of 400 mm, so that its joints
 * stand every 0.4 m, and upper rows that begin in one way or another. 0.1 m of overlap is asked for. */

static double lack_of(const lw_laid *upper) {
  const lw_order *order = order_of("run 1 length=4 m;course count=2");
  const lw_laying laying = {.plan = &order->plan, .order = (lw_order *)(size_t)order};
  lw_laid lower = {.to_m = 4.0, .module_sum_m = 4.0, .first_m = 0.4, .before = 9};
  lw_laid above = *upper;
  above.to_m = above.module_sum_m = 4.0;
  lw_perpends low = lw_perpends_of(&laying, &lower), high = lw_perpends_of(&laying, &above);
  return lw_perpends_lack(&low, &high, 0.1);
}

Test(order, half_bond_lacks_nothing) {
  cr_expect(epsilon_eq(dbl, lack_of(&(lw_laid){.first_m = 0.2, .before = 9, .last_m = 0.2}), 0.0, 1e-12));
}

/* One joint over another, at 0.4 m, all others at half a block; or two, at 0.35 and 0.75 m, half so near. */
Test(order, one_joint_over_another_is_worse_than_two_half_so_near) {
  lw_laid over = {.first_m = 0.4, .closer_count = 1, .closer_m = {0.2}, .after = 8, .last_m = 0.2};
  lw_laid beside = {
      .first_m = 0.35, .before = 1, .closer_count = 1, .closer_m = {0.25}, .after = 7, .last_m = 0.2};
  double one = lack_of(&over), two = lack_of(&beside);
  cr_expect(lt(dbl, 0.0, two));
  cr_expect(lt(dbl, 1.5 * two, one), "%g and %g", one, two);
}

/* The nearest joint and its place: 0.05 m at 0.35 m, from joints at 0.35, 0.75 and 1.0 m. */
Test(order, least_overlap_by_hand) {
  const lw_order *order = order_of("run 1 length=4 m;course count=2");
  const lw_laying laying = {.plan = &order->plan, .order = (lw_order *)(size_t)order};
  lw_laid lower = {.to_m = 4.0, .module_sum_m = 4.0, .first_m = 0.4, .before = 9};
  lw_laid upper = {
      .to_m = 4.0, .first_m = 0.35, .before = 1, .closer_count = 1, .closer_m = {0.27}, .after = 7};
  lw_perpends low = lw_perpends_of(&laying, &lower), high = lw_perpends_of(&laying, &upper);
  double least = 0.0, at = 0.0;
  cr_assert(lw_perpends_overlap(&low, &high, &least, &at));
  cr_expect(epsilon_eq(dbl, least, 0.05, 1e-12));
  cr_expect(epsilon_eq(dbl, at, 0.35, 1e-12));
}
