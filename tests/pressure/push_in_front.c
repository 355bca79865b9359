/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdlib.h>

#include "../checks/support.h"

#define LEANING \
  "wall kind=section", "wall height=1 m", "top width=0.3 m", "base width=1 m", "back batter=20 deg", \
      "wall unit weight=23 kN/m3", "wall embedment=0 mm", "soil 1 friction angle=33 deg", \
      "site behind=ground", "ground slope=0 deg"

static const char *const METHODS[] = {"method pressure=rankine", "method pressure=coulomb",
                                      "method pressure=wedge"};

static double level_of(lw_result *r, lw_situation_name name) {
  double level = checks_test_situation(r, name)->base.contact.horizontal_kn_per_m;
  free(r);
  return level;
}

/* The nearer a fence stands to the wall the more of its wind the wall takes: over a back that leans, too,
 * where the posts stand in front of the plane that the soil is taken to push on. */
Test(push_in_front, wind_on_a_fence_is_never_less_nearer_by) {
  for (int m = 0; m < 3; m++) {
    double calm = level_of(RUN(LEANING, METHODS[m]), LW_SITUATION_DRAINED), before = 0.0;
    for (int i = 12; i > 0; i--) {
      char distance[40];
      lw_print(distance, sizeof distance, "fence distance=%d mm", 60 * i);
      double now = level_of(RUN(LEANING, METHODS[m], "fence place=behind", "fence height=1.8 m", distance),
                            LW_SITUATION_WIND);
      cr_expect(now > calm + 0.2, "%s, %s: %g, calm %g", METHODS[m], distance, now, calm);
      cr_expect(now >= before - 1e-9, "%s, %s: %g after %g", METHODS[m], distance, now, before);
      before = now;
    }
  }
}

/* A strip that ends where the plane stands adds nothing to it. */
Test(push_in_front, a_strip_in_front_of_the_plane_does_not_push) {
  double calm = level_of(RUN(LEANING, METHODS[0], "load 1 kind=none"), LW_SITUATION_DRAINED);
  double far = level_of(RUN(LEANING, METHODS[0], "load 1 kind=strip", "load 1 pressure=20 kPa",
                            "load 1 near edge=0.1 m", "load 1 far edge=0.36 m"),
                        LW_SITUATION_DRAINED);
  double over = level_of(RUN(LEANING, METHODS[0], "load 1 kind=strip", "load 1 pressure=20 kPa",
                             "load 1 near edge=0.1 m", "load 1 far edge=0.6 m"),
                         LW_SITUATION_DRAINED);
  cr_expect_float_eq(far, calm, 1e-9);
  cr_expect_lt(calm, over);
}
