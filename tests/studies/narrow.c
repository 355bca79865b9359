/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>
#include <stdlib.h>

/* A bed narrower than its wedge: what is printed beside, and that it never counts. */

#define BED \
  "site behind=bed", "site back=wall", "course count=4", "block height=200 mm", "block depth=300 mm", \
      "soil 1 friction angle=30 deg", "soil 1 unit weight=18 kN/m3", "vehicle access=no"

Test(checks, narrow_bed_is_shown) {
  lw_result *r = RUN(BED, "bed width=0.4 m", "wall friction=20 deg");
  const lw_narrow *n = &r->narrow;
  cr_assert(n->shown);
  cr_expect(epsilon_eq(dbl, n->wedge_width_m, 0.8 / sqrt(3.0), 1e-9));
  /* B/H 0.5, φ 30, δ 20: 0.80 of the triangle at rest, 0.86 active. */
  cr_expect(epsilon_eq(dbl, n->value[LW_NARROW_AT_REST].share, 0.80, 0.006));
  cr_expect(epsilon_eq(dbl, n->value[LW_NARROW_ACTIVE].share, 0.86, 0.006));
  cr_expect(epsilon_eq(dbl, n->value[LW_NARROW_HANDY].coefficient, 0.53, 0.005));
  for (int i = 0; i < LW_NARROW_COUNT; i++) {
    cr_expect(n->value[i].known);
    cr_expect(lt(dbl, 1.0 / 3.0, n->value[i].height_share));
    cr_expect(lt(dbl, n->value[i].height_share, 0.42));
  }
  free(r);
}

Test(checks, narrow_bed_is_never_counted) {
  lw_result *with = RUN(BED, "bed width=0.3 m", "wall friction=20 deg"),
            *without = RUN(BED, "wall friction=20 deg");
  const lw_situation *a = checks_test_situation(with, LW_SITUATION_DRAINED);
  const lw_situation *b = checks_test_situation(without, LW_SITUATION_DRAINED);
  cr_expect(epsilon_eq(dbl, a->base.thrust.total_kn_per_m, b->base.thrust.total_kn_per_m, 0.0));
  for (int i = 0; i < a->check_count; i++)
    cr_expect(epsilon_eq(dbl, lw_situation_check(a, i).has.value, lw_situation_check(b, i).has.value, 0.0));
  cr_expect_eq(with->verdict.exit_status, without->verdict.exit_status);
  cr_expect_not(without->narrow.shown);
  free(with);
  free(without);
}

Test(checks, smooth_faces_give_no_relief) {
  lw_result *r = RUN(BED, "bed width=0.2 m");
  cr_assert(r->narrow.shown);
  for (int i = 0; i < LW_NARROW_COUNT; i++) {
    cr_expect(epsilon_eq(dbl, r->narrow.value[i].share, 1.0, 1e-6));
    cr_expect(epsilon_eq(dbl, r->narrow.value[i].height_share, 1.0 / 3.0, 1e-6));
  }
  free(r);
}

/* By hand: without a load the moment grows by 0.42 x 3 = 1.26, and the ratio falls by as much. */
Test(checks, raised_resultant_by_hand) {
  lw_result *r = RUN(BED, "bed width=0.2 m", "load 1 kind=none");
  const lw_narrow *n = &r->narrow;
  cr_assert(n->raised_known);
  cr_expect(epsilon_eq(dbl, n->raised_height_m, 0.42 * 0.8, 1e-9));
  cr_expect(epsilon_eq(dbl, n->raised.has.value, n->overturning.has.value / 1.26, 1e-6));
  cr_expect(epsilon_eq(dbl, n->raised.needs.value, n->overturning.needs.value, 0.0));
  free(r);
}

Test(checks, narrow_bed_not_shown) {
  const char *const wide[] = {BED, "bed width=0.5 m", NULL};
  const char *const ground[] = {"course count=4", "block depth=300 mm", "bed width=0.2 m", NULL};
  lw_result *a = checks_test_run(wide), *b = checks_test_run(ground);
  cr_expect_not(a->narrow.shown, "wider than the wedge");
  cr_expect_not(b->narrow.shown, "not a bed");
  free(a);
  free(b);
}
