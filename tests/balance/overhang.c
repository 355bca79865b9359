/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/support.h"

/* Walls of courses that lean back over their soil. */

#define LEANING \
  "course count=5", "block height=200 mm", "block depth=400 mm", "setback=50 mm", "wall embedment=0 mm", \
      "soil 1 friction angle=32 deg", "soil 1 unit weight=18 kN/m3", "load 1 kind=none", "people on cap=no"

static const lw_free_body *base_of(const lw_result *result, lw_situation_name name) {
  return &checks_test_situation(result, name)->base;
}

/* The line from the rear of the base to the rear of the top: 4 setbacks over 5 heights. */
Test(overhang, coulomb_lifts_where_friction_is_less_than_the_lean) {
  lw_result *smooth = RUN(LEANING, "ground slope=0 deg", "method pressure=coulomb", "wall friction=0 deg");
  lw_result *rough = RUN(LEANING, "ground slope=0 deg", "method pressure=coulomb", "wall friction=20 deg");
  const lw_free_body *lifts = base_of(smooth, LW_SITUATION_DRAINED),
                     *presses = base_of(rough, LW_SITUATION_DRAINED);
  double lean = atan(4.0 * 0.05 / 1.0);
  cr_expect(checks_test_near(lifts->back.plane.batter_rad, -lean, 1e-9));
  cr_expect(checks_test_near(lifts->thrust.angle_rad, -lean, 1e-9));
  cr_expect_lt(checks_test_vertical(lifts, LW_FORCE_THRUST), 0.0);
  cr_expect(checks_test_near(checks_test_vertical(lifts, LW_FORCE_THRUST),
                             -lifts->thrust.total_kn_per_m * sin(lean), 1e-9));
  cr_expect_lt(0.0, checks_test_vertical(presses, LW_FORCE_THRUST));
  cr_expect_lt(lifts->contact.vertical_kn_per_m, presses->contact.vertical_kn_per_m);
  free(smooth);
  free(rough);
}

/* Rankine's plane stands behind the lean: what points down on it ends in the soil below the overhang. */
Test(overhang, rankine_down_does_not_reach_the_wall) {
  lw_result *leaning = RUN(LEANING, "ground slope=15 deg", "method pressure=rankine");
  lw_result *upright =
      RUN("course count=5", "block height=200 mm", "block depth=400 mm", "setback=0 mm",
          "wall embedment=0 mm", "soil 1 friction angle=32 deg", "soil 1 unit weight=18 kN/m3",
          "load 1 kind=none", "ground slope=15 deg", "method pressure=rankine");
  const lw_free_body *a = base_of(leaning, LW_SITUATION_DRAINED), *b = base_of(upright, LW_SITUATION_DRAINED);
  cr_expect_lt(fabs(checks_test_vertical(a, LW_FORCE_THRUST)), 1e-12);
  cr_expect_lt(fabs(checks_test_vertical(a, LW_FORCE_SOIL_ON_WALL)), 1e-12);
  cr_expect_lt(0.0, checks_test_vertical(b, LW_FORCE_THRUST));
  cr_expect(checks_test_near(a->back.foot_x_m, 0.4 + 4.0 * 0.05, 1e-12));
  free(leaning);
  free(upright);
}

/* Each of the four undersides, 50 mm wide, at its own depth below water that stands to the top. */
Test(overhang, water_lifts_each_underside) {
  lw_result *result = RUN(LEANING, "ground slope=0 deg");
  const lw_free_body *wet = base_of(result, LW_SITUATION_OUTLET_BLOCKED);
  double lift = 0.0, level = 0.5 * 9.81 * 1.0 * 1.0;
  for (int i = 1; i < 5; i++) lift += 9.81 * 0.05 * (1.0 - 0.2 * i);
  cr_expect(checks_test_near(checks_test_vertical(wet, LW_FORCE_WATER), -lift, 1e-9));
  cr_expect(checks_test_near(checks_test_horizontal(wet, LW_FORCE_WATER), level, 1e-9));
  free(result);
}

/* Under Rankine's upright plane steps carry soil and water alike. */
Test(overhang, steps_behind_carry_soil_and_water) {
  lw_result *result =
      RUN("course count=5", "block height=200 mm", "block depth=400 mm", "base course count=2",
          "base course depth=700 mm", "wall embedment=0 mm", "soil 1 friction angle=32 deg",
          "soil 1 unit weight=18 kN/m3", "soil 1 saturated unit weight=20 kN/m3", "load 1 kind=none",
          "ground slope=0 deg", "method pressure=rankine");
  const lw_free_body *dry = base_of(result, LW_SITUATION_DRAINED),
                     *wet = base_of(result, LW_SITUATION_OUTLET_BLOCKED);
  cr_expect(checks_test_near(checks_test_vertical(dry, LW_FORCE_SOIL_ON_WALL), 0.3 * 0.6 * 18.0, 1e-9));
  cr_expect(
      checks_test_near(checks_test_vertical(wet, LW_FORCE_SOIL_ON_WALL), 0.3 * 0.6 * (20.0 - 9.81), 1e-9));
  cr_expect(checks_test_near(checks_test_vertical(wet, LW_FORCE_WATER), 0.3 * 0.6 * 9.81, 1e-9));
  free(result);
}
