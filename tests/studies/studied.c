/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/support.h"
#include "../sheet/support.h"

/* What is not studied says why, and what is said in part keeps what else was said. */

#define BLOCKS \
  "wall kind=courses", "wall height=1 m", "wall embedment=0 mm", "block height=200 mm", \
      "block depth=300 mm", "block mass=30 kg", "block length=400 mm", "site behind=bed"

/* Soil without friction has no coefficient by which plant presses it: the wall being built is not studied. */
Test(studied, soil_without_friction_is_not_compacted) {
  lw_result *r = RUN(BLOCKS, "soil 1 friction angle=0 deg", "soil 1 cohesion=20 kPa");
  cr_expect_not(r->construction.studied);
  cr_expect_eq(r->construction.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
  free(r);
}

/* Plant that is named keeps its name and what is not given beside it; numbers alone have no name. */
Test(studied, numbers_go_before_the_name_of_plant) {
  lw_result *named = RUN(BLOCKS, "soil 1 friction angle=33 deg", "plant=small plate compactor"),
            *both = RUN(BLOCKS, "soil 1 friction angle=33 deg", "plant=small plate compactor",
                        "plant mass=95 kg"),
            *bare = RUN(BLOCKS, "soil 1 friction angle=33 deg", "plant mass=95 kg");
  cr_expect_str_eq(both->construction.plant.name, named->construction.plant.name);
  cr_expect_float_eq(both->construction.plant.mass_kg, 95.0, 1e-9);
  cr_expect_float_eq(both->construction.plant.force_kn, named->construction.plant.force_kn, 1e-12);
  cr_expect_lt(named->construction.plant.line_load_kn_per_m, both->construction.plant.line_load_kn_per_m);
  cr_expect_str_eq(bare->construction.plant.name, "");
  free(named);
  free(both);
  free(bare);
}

/* Water limits under a code whose own head asks nothing: at the level that is told the ratio is 1, or jumps
 * over it. */
Test(studied, a_level_under_a_code_of_parts_has_ratio_1) {
  lw_result *r = RUN("wall kind=section", "wall height=1 m", "top width=0.55 m", "base width=0.55 m",
                     "wall unit weight=23 kN/m3", "wall embedment=0 mm", "soil 1 friction angle=36 deg",
                     "site behind=bed", "load 1 kind=none", "method format=aashto-lrfd"),
            *scratch = malloc(sizeof *scratch);
  int found = 0;
  lw_water_find(r, scratch);
  for (int i = 0; i < r->water_limits.count; i++) {
    const lw_water_limit *limit = &r->water_limits.limit[i];
    if (limit->state != LW_WATER_FALLS_AT) continue;
    found++;
    cr_expect(limit->jumps || checks_test_near(limit->ratio.value, 1.0, 1e-6), "%g", limit->ratio.value);
  }
  cr_expect_lt(0, found);
  free(r);
  free(scratch);
}
