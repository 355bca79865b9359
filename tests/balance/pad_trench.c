/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"

/* A pad in its trench: the ground in front of it holds what pushes on its rear side, and nothing more. */

static double held(const lw_situation *situation) {
  return -checks_test_horizontal(&situation->pad, LW_FORCE_TRENCH);
}

static const lw_check *slides_under_pad(const lw_situation *situation) {
  for (int i = 0; i < situation->check_count; i++) {
    const lw_check *check = checks_test_check(situation, i);
    if (check->kind == LW_CHECK_SLIDING && check->at == LW_AT_PAD) return check;
  }
  return NULL;
}

#define ON_PAD \
  "site behind=bed", "wall height=300 mm", "wall embedment=100 mm", "block height=200 mm", \
      "block depth=200 mm", "block unit weight=21 kN/m3", "soil 1 friction angle=30 deg", \
      "soil 1 unit weight=18 kN/m3", "wall friction=0", "soil below top=0 mm", "pad thickness=100 mm", \
      "pad width=400 mm", "pad material=crushed rock", "ground slope=0 deg", "front slope=0 deg", \
      "drain outlets=2", "wall joints=open"

/* By hand, without a load and dry: D = 0.5 m and P = 18 x 0.25/6 = 0.75 kN/m, of which 1 - 0.8^2 = 0.36
 * is on the rear side: 0.27. In front phi = 20 deg, K = 2.0396 and 18.5 kN/m3: 2.0396 x 18.5 (0.04 -
 * 0.01)/2 = 0.566, which is more. With 2 kPa behind, 2 x 0.5/3 x 0.1/0.5 = 0.0667 besides. */
Test(pad_trench, holds_what_pushes_on_its_rear_side) {
  lw_result *dry = RUN(ON_PAD, "footing soil name=stiff clay", "load 1 kind=none"),
            *loaded =
                RUN(ON_PAD, "footing soil name=stiff clay", "load 1 kind=uniform", "load 1 pressure=2 kPa");
  cr_expect_float_eq(held(checks_test_situation(dry, LW_SITUATION_DRAINED)), 0.27, 1e-6);
  cr_expect_float_eq(held(checks_test_situation(loaded, LW_SITUATION_DRAINED)), 0.27 + 0.2 / 3.0, 1e-6);
  free(dry);
  free(loaded);
}

/* By hand: with nothing over the pad, and water behind, 2.0396 (20 - 9.81) 0.01/2 = 0.104 is all there
 * is. */
Test(pad_trench, holds_no_more_than_the_ground_can) {
  lw_result *wet = RUN(ON_PAD, "footing soil name=stiff clay", "load 1 kind=none", "trench depth=100 mm",
                       "trench distance=250 mm", "water depth=100 mm");
  double kp = pow(tan(0.78539816339744831 + 10.0 * 0.017453292519943295), 2.0);
  cr_expect_float_eq(held(checks_test_situation(wet, LW_SITUATION_TRENCH)), kp * (20.0 - 9.81) * 0.005, 1e-9);
  free(wet);
}

/* Where nobody has named the ground, where the method says so, or counts all of the ground in front
 * anyway. */
Test(pad_trench, is_not_counted_twice_nor_in_unknown_ground) {
  static const char *const rows[][2] = {{"note=unnamed", "note=unnamed"},
                                        {"footing soil name=stiff clay", "method pad in trench=not"},
                                        {"footing soil name=stiff clay", "method passive=0.5"},
                                        {"footing soil name=stiff clay", "pad thickness=0.1 m"}};
  for (int i = 0; i < 4; i++) {
    lw_result *r = i == 0   ? RUN(ON_PAD, rows[i][0])
                   : i == 3 ? RUN(ON_PAD, rows[i][0])
                            : RUN(ON_PAD, rows[i][0], rows[i][1]);
    double counted = held(checks_test_situation(r, LW_SITUATION_DRAINED));
    cr_expect_eq(counted > 0.0, i == 3, "row %d: %g", i, counted);
    free(r);
  }
}

/* A trench that somebody digs close in front takes it away. */
Test(pad_trench, goes_with_a_trench_in_front) {
  lw_result *r = RUN(ON_PAD, "footing soil name=stiff clay", "trench depth=200 mm", "trench distance=1 m"),
            *close =
                RUN(ON_PAD, "footing soil name=stiff clay", "trench depth=200 mm", "trench distance=200 mm");
  cr_expect_gt(held(checks_test_situation(r, LW_SITUATION_TRENCH)), 0.1);
  cr_expect_float_eq(held(checks_test_situation(close, LW_SITUATION_TRENCH)), 0.0, 1e-12);
  free(r);
  free(close);
}

static const char *const SETS[] = {"lowwall", "en1997-da1-2", "en1997-da2", "aashto-lrfd-strength-1"};

/* Over walls by chance, under sets that divide strengths and sets that multiply loads: it never lowers
 * what a wall has against sliding, and what is left of the push under the pad is no less than the push on
 * the base. */
Test(pad_trench, helps_the_pad_and_never_the_wall) {
  dice d = {29};
  int counted = 0;
  for (int i = 0; i < 240 / RANDOM_SHARE; i++) {
    random_wall wall, without;
    char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
    random_wall_plain(&d, &wall);
    random_wall_add(&wall, "soil 1 friction angle=%.2f deg", dice_between(&d, 24.0, 38.0));
    random_wall_add(&wall, "footing soil name=%s", dice_pick(&d, 2) ? "stiff clay" : "clean sand");
    random_wall_add(&wall, "pad thickness=%.1f mm", dice_between(&d, 50.0, 300.0));
    random_wall_add(&wall, "pad material=crushed rock");
    random_wall_add(&wall, "load 1 kind=uniform");
    random_wall_add(&wall, "load 1 pressure=%.2f kPa", dice_between(&d, 0.5, 8.0));
    random_wall_add(&wall, "method format=%s", SETS[dice_pick(&d, 4)]);
    random_wall_add(&wall, "method slip=not");
    without = wall;
    random_wall_add(&without, "method pad in trench=not");
    random_wall_name(&wall, name, sizeof name);
    lw_result *a = random_wall_run(&without), *b = random_wall_run(&wall);
    for (int s = 0; s < b->situations.count; s++) {
      const lw_situation *bare = &a->situations.situation[s], *in = &b->situations.situation[s];
      const lw_check *low = slides_under_pad(bare), *high = slides_under_pad(in);
      if (!low || !high || in->pad.status != LW_OK || in->base.status != LW_OK) continue;
      /* Where it tips off the pad no spread is known, and none of its stone is left out. */
      if (low->has.known && high->has.known && bare->pad.contact.inside)
        cr_expect_leq(low->has.value, high->has.value * (1.0 + 1e-9), "%d: %.6g, with it %.6g: %s", s,
                      low->has.value, high->has.value, name);
      counted += held(in) > 0.0;
      cr_expect_geq(in->pad.contact.horizontal_kn_per_m, in->base.contact.horizontal_kn_per_m * (1.0 - 1e-6),
                    "situation %d, under the pad %.9g, on the base %.9g: %s", s,
                    in->pad.contact.horizontal_kn_per_m, in->base.contact.horizontal_kn_per_m, name);
    }
    free(a);
    free(b);
  }
  cr_expect_gt(counted, 240 / RANDOM_SHARE);
}
