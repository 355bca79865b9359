/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/support.h"

#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>

/* Forces on a wall beside what they come from. */

#define WALL \
  "wall kind=section", "wall height=1.2 m", "top width=0.7 m", "base width=0.7 m", "wall embedment=0 mm", \
      "wall unit weight=23 kN/m3", "ground slope=0 deg", "load 1 kind=none", "people on cap=no"

/* By the earthquake that is kept, kv of it: what the soil is lightened by, the wall is as well. */
Test(earthquake, wall_and_soil_are_lightened_alike) {
  lw_result *result = RUN(WALL, "soil 1 friction angle=33 deg", "soil 1 unit weight=18 kN/m3",
                          "seismic horizontal=0.1", "seismic vertical=0.08");
  const lw_situation *s = checks_test_situation(result, LW_SITUATION_EARTHQUAKE);
  double kv = s->load_case.ground.seismic.vertical, weight = checks_test_vertical(&s->base, LW_FORCE_PART);
  cr_expect(checks_test_near(fabs(kv), 0.08, 1e-12));
  cr_expect(checks_test_near(weight, 1.2 * 0.7 * 23.0, 1e-9));
  cr_expect(checks_test_near(checks_test_vertical(&s->base, LW_FORCE_INERTIA), -kv * weight, 1e-9));
  free(result);
}

/* Water in a crack and water behind the wall, on the wall as in the thrust: one push at one height. */
Test(checks, water_in_a_crack_stands_over_that_behind) {
  lw_result *result =
      RUN(WALL, "soil 1 friction angle=25 deg", "soil 1 cohesion=3 kPa", "soil 1 unit weight=18 kN/m3",
          "soil 1 saturated unit weight=20 kN/m3", "method crack=wet", "water depth=0.9 m");
  const lw_free_body *base = &checks_test_situation(result, LW_SITUATION_DRAINED)->base;
  double push = 0.0, moment = 0.0;
  for (int i = 0; i < base->forces.count; i++) {
    const lw_force *f = &base->forces.force[i];
    if (f->kind != LW_FORCE_WATER) continue;
    push += f->horizontal_kn_per_m;
    moment += f->horizontal_kn_per_m * f->y_m;
  }
  double crack = base->thrust.crack_depth_m, high = 1.2 - crack;
  cr_assert(crack > 0.1 && crack < 0.9);
  /* A triangle down the crack; below its foot what stands behind, 0.3 m at the foot of the wall. */
  double in_crack = 0.5 * 9.81 * crack * crack, behind = 0.5 * 9.81 * 0.3 * 0.3;
  cr_expect(checks_test_near(push, in_crack + behind, 1e-9));
  cr_expect(checks_test_near(moment, in_crack * (high + crack / 3.0) + behind * 0.1, 1e-9));
  free(result);
}
