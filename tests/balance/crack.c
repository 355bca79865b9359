/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "../checks/support.h"

/* A wall of one metre in a soil with cohesion: cracked to 2c/(γ √Ka). */
static lw_result *cracked(const char *crack) {
  return RUN("course count=5", "block height=200 mm", "block depth=500 mm", "wall embedment=0 m",
             "soil 1 friction angle=25 deg", "soil 1 cohesion=3 kPa", "soil 1 unit weight=18 kN/m3",
             "ground slope=0 deg", "load 1 kind=none", "wall friction=0 deg", crack);
}

/* Water in a crack of depth z pushes γw z²/2, two thirds of z below the top. */
Test(checks, a_wet_crack_pushes_with_its_water) {
  lw_result *dry = cracked("method crack=dry"), *wet = cracked("method crack=wet");
  const lw_free_body *a = &checks_test_situation(dry, LW_SITUATION_DRAINED)->base;
  const lw_free_body *b = &checks_test_situation(wet, LW_SITUATION_DRAINED)->base;
  double half = atan(1.0) * (1.0 - 25.0 / 90.0), ka = tan(half), z = 2.0 * 3.0 / (18.0 * ka),
         water = 9.81 * z * z / 2.0;
  cr_expect(checks_test_near(b->thrust.crack_depth_m, z, 1e-9));
  cr_expect(checks_test_near(checks_test_horizontal(b, LW_FORCE_WATER), water, 1e-9));
  double push = b->contact.horizontal_kn_per_m - a->contact.horizontal_kn_per_m;
  double moment = b->contact.overturning_knm_per_m - a->contact.overturning_knm_per_m;
  cr_expect(checks_test_near(push, water, 1e-9), "%g %g", push, water);
  cr_expect(checks_test_near(moment, water * (1.0 - 2.0 * z / 3.0), 1e-9), "%g", moment);
  free(dry);
  free(wet);
}

/* Under a slope the soil cracks as deep as on level ground: by hand from the circle in docs/theory.md. */
Test(checks, a_crack_is_as_deep_under_a_slope) {
  for (int phi = 22; phi <= 38; phi += 8) {
    for (int slope = 0; slope < phi; slope += 7) {
      char friction[64], ground[64];
      snprintf(friction, sizeof friction, "soil 1 friction angle=%d deg", phi);
      snprintf(ground, sizeof ground, "ground slope=%d deg", slope);
      lw_result *result =
          RUN("course count=5", "block height=200 mm", "block depth=500 mm", "wall embedment=0 m", friction,
              "soil 1 cohesion=2.4 kPa", "soil 1 unit weight=18.5 kN/m3", ground, "load 1 kind=none",
              "method slip=not", "method pressure=rankine");
      double half = (45.0 - phi / 2.0) * atan(1.0) / 45.0, z = 2.0 * 2.4 / (18.5 * tan(half));
      const lw_free_body *base = &checks_test_situation(result, LW_SITUATION_DRAINED)->base;
      cr_expect(checks_test_near(base->thrust.crack_depth_m, z, 1e-6), "%d under %d: %.9f, by hand %.9f", phi,
                slope, base->thrust.crack_depth_m, z);
      free(result);
    }
  }
}
