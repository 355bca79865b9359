/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdlib.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "../sheet/support.h"
#include "balance/weigh.h"
#include "load_cases/governing.h"
#include "load_cases/kept.h"

/* Checks as a result keeps them, and which of them governs. */

enum { WALLS = 40 / RANDOM_SHARE };

/* What is left out when a check is kept is there again when it is read: each way with each leaning, and a
 * ratio of nothing where the resultant is outside, whatever the moments say. */
Test(kept, a_check_is_read_as_it_was_kept) {
  lw_situation *s = calloc(1, sizeof *s);
  lw_factor_row row = {.needs = {1.5, 1.5, 1.5}};
  cr_assert_not_null(s);
  for (int way = 0; way < 4; way++)
    for (int leaning = 0; leaning < 32; leaning++)
      for (int outside = 0; outside < 2; outside++) {
        lw_check one = {.kind = LW_CHECK_OVERTURNING,
                        .at = LW_AT_BASE,
                        .has = {1.2, true},
                        .needs = {1.5, true},
                        .ratio = {outside ? 0.0 : 1.2 / 1.5, true},
                        .holds = LW_FALLS_SHORT,
                        .reason = outside ? LW_REASON_OUTSIDE_BASE : LW_REASON_NONE,
                        .by = &row,
                        .made_in = {.way = (signed char)way, .leaning = (signed char)leaning}};
        s->check_count = 0;
        lw_situation_keep(s, &one);
        lw_check read = lw_situation_check(s, 0);
        cr_expect(read.made_in.way == way && read.made_in.leaning == leaning, "way %d, leaning %d", way,
                  leaning);
        cr_expect_float_eq(read.ratio.value, one.ratio.value, 1e-15, "outside %d", outside);
      }
  free(s);
}

/* A stack that stands by itself more often than not. */
static void stout(dice *d, random_wall *wall) {
  wall->count = 0;
  random_wall_add(wall, "course count=%d", 2 + dice_pick(d, 3));
  random_wall_add(wall, "block height=150 mm");
  random_wall_add(wall, "wall embedment=50 mm");
  random_wall_add(wall, "block depth=%.3f mm", dice_between(d, 500.0, 1500.0));
  random_wall_add(wall, "soil 1 friction angle=%.3f deg", dice_between(d, 34.0, 40.0));
  random_wall_add(wall, "base friction=0.6");
  random_wall_add(wall, "allowable bearing=%.1f kPa", dice_between(d, 100.0, 300.0));
  random_wall_add(wall, "people on cap=no");
  random_wall_add(wall, "ground slope=0 deg");
  random_wall_add(wall, "site behind=bed");
  random_wall_add(wall, "method slip=not");
}

/* No check that counts, in a situation that decides, is graver than the one that governs. */
Test(kept, nothing_is_graver_than_what_governs) {
  dice d = {.state = 77};
  lw_result *r = malloc(sizeof *r);
  int held = 0;
  for (int n = 0; n < WALLS; n++) {
    random_wall wall;
    stout(&d, &wall);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, r, NULL), LW_OK);
    const lw_situations *all = &r->situations;
    if (!all->governed) continue;
    lw_check worst = lw_situation_check(&all->situation[all->governing_situation], all->governing_check);
    held += worst.holds == LW_HOLDS ? 1 : 0;
    for (int i = 0; i < all->count; i++)
      for (int k = 0; all->situation[i].decides && k < all->situation[i].check_count; k++) {
        lw_check check = lw_situation_check(&all->situation[i], k);
        if (!check.counts || !check.ratio.known) continue;
        cr_expect_not(lw_check_graver(&check, &worst), "wall %d: %g beside %g", n, check.ratio.value,
                      worst.ratio.value);
      }
  }
  free(r);
  cr_expect_lt(2, held, "only %d hold: two that hold are never set side by side", held);
}

/* Where nothing counts nothing is shown; where all that counts is asked for nothing, it stands. */
Test(kept, nothing_that_counts_shows_nothing) {
  lw_situations *all = calloc(1, sizeof *all);
  lw_check one = {
      .kind = LW_CHECK_SLIDING, .at = LW_AT_BASE, .holds = LW_HOLDS, .reason = LW_REASON_NO_DEMAND};
  cr_assert_not_null(all);
  all->count = 1;
  all->situation[0].decides = true;
  lw_situations_weigh(all);
  cr_expect_eq(all->stands, LW_CANNOT_SHOW);
  lw_situation_keep(&all->situation[0], &one);
  lw_situations_weigh(all);
  cr_expect_eq(all->stands, LW_CANNOT_SHOW);
  one.counts = true;
  lw_situation_keep(&all->situation[0], &one);
  lw_situations_weigh(all);
  cr_expect(all->stands == LW_HOLDS && !all->governed);
  free(all);
}

/* Whether a bonded cap stays on relies on a glue that nobody tested: no verdict waits for it. */
Test(kept, a_bonded_cap_is_told_and_does_not_count) {
  static const char *const FIXED[] = {"cap fixing=dry", "cap fixing=bonded"};
  int told = 0;
  lw_holds stands[2];
  for (int i = 0; i < 2; i++) {
    lw_result *r = RUN("course count=3", "block height=150 mm", "block depth=900 mm", "wall embedment=50 mm",
                       "cap height=50 mm", "soil 1 friction angle=36 deg", "base friction=0.6",
                       "allowable bearing=200 kPa", "ground slope=0 deg", "site behind=bed",
                       "drain outlets=2", "ground drains=yes", "stone filter=cloth", "stone width=300 mm",
                       "people on cap=no", "method slip=not", FIXED[i]);
    for (int k = 0; k < r->situations.count; k++)
      for (int n = 0; n < r->situations.situation[k].check_count; n++) {
        lw_check check = lw_situation_check(&r->situations.situation[k], n);
        bool bonded = check.at == LW_AT_CAP && i == 1;
        cr_expect_eq(check.reason == LW_REASON_RELIES_ON_BOND, bonded);
        cr_expect(!bonded || !check.counts);
        told += bonded ? 1 : 0;
      }
    stands[i] = r->situations.stands;
    free(r);
  }
  cr_expect_lt(0, told);
  cr_expect_eq(stands[0], LW_HOLDS);
  cr_expect_eq(stands[1], LW_HOLDS);
}
