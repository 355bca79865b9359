/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>

#include "support.h"

/* Ground that was once loaded more heavily pushes harder, up to what it could ever bear. */

static double at_rest(lw_overconsolidation rule, double friction_deg, double ratio) {
  double k = NAN;
  cr_assert_eq(lw_at_rest_overconsolidated(rule, RAD(friction_deg), 0.0, ratio, &k, NULL), LW_OK);
  return k;
}

Test(at_rest, rises_with_the_ratio_up_to_passive) {
  for (int rule = 0; rule < 2; rule++)
    for (double phi = 15.0; phi < 45.0; phi += 6.7) {
      double before = 0.0, once, most;
      cr_assert_eq(lw_at_rest_coefficient(RAD(phi), 0.0, &once, NULL), LW_OK);
      cr_assert_eq(lw_rankine_coefficient(LW_PASSIVE, RAD(phi), 0.0, &most, NULL), LW_OK);
      cr_expect_lt(fabs(at_rest((lw_overconsolidation)rule, phi, 1.0) - once), 1e-15);
      for (double ratio = 1.0; ratio < 400.0; ratio *= 1.9) {
        double now = at_rest((lw_overconsolidation)rule, phi, ratio);
        cr_expect_leq(before, now);
        cr_expect_leq(now, most + 1e-12);
        before = now;
      }
      cr_expect_lt(fabs(at_rest((lw_overconsolidation)rule, phi, 1e6) - most), 1e-12);
    }
}

/* The two powers are the same at 30 degrees. */
Test(at_rest, rules_meet_at_thirty_degrees) {
  cr_expect_lt(fabs(at_rest(LW_OCR_MAYNE_KULHAWY, 30.0, 3.3) - at_rest(LW_OCR_EN1997, 30.0, 3.3)), 1e-12);
  cr_expect_lt(at_rest(LW_OCR_MAYNE_KULHAWY, 27.0, 3.3), at_rest(LW_OCR_EN1997, 27.0, 3.3));
  cr_expect_lt(at_rest(LW_OCR_EN1997, 34.0, 3.3), at_rest(LW_OCR_MAYNE_KULHAWY, 34.0, 3.3));
}

Test(at_rest, thrust_takes_each_layers_ratio) {
  lw_plane plane = pressure_plane(31.0);
  lw_thrust once, loaded;
  lw_error error = {0};
  cr_assert_eq(lw_at_rest_thrust(LW_AT_REST, &plane, &once, NULL, NULL), LW_OK);
  plane.layer[0].overconsolidation = 2.7;
  cr_assert_eq(lw_at_rest_thrust(LW_AT_REST, &plane, &loaded, NULL, NULL), LW_OK);
  cr_expect_lt(fabs(loaded.total_kn_per_m / once.total_kn_per_m - pow(2.7, sin(RAD(31.0)))), 1e-12);
  plane.layer[0].overconsolidation = 0.5;
  cr_expect_eq(lw_at_rest_thrust(LW_AT_REST, &plane, &loaded, &error, NULL), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
}
