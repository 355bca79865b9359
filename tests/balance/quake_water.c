/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/support.h"

/* Open water in an earthquake: 7/12 kh gw h2 at 0.4 h above the foot, h the depth of the water
 * [WESTERGAARD1933 parabola]; [EN1998-5 annex E]. By hand for water 0.7 m deep in front and as deep as the
 * situation says behind, kh 0.15. */
Test(earthquake, open_water_pushes_at_four_tenths_of_its_depth) {
  lw_result *r =
      RUN("wall kind=section", "wall height=1.2 m", "top width=0.7 m", "base width=0.7 m",
          "wall unit weight=23 kN/m3", "soil 1 friction angle=33 deg", "soil 1 unit weight=18.5 kN/m3",
          "ground slope=0 deg", "load 1 kind=none", "people on cap=no", "wall embedment=0 mm",
          "site behind=bed", "front water depth=0.5 m", "seismic horizontal=0.15");
  const lw_situation *s = checks_test_situation(r, LW_SITUATION_EARTHQUAKE);
  const double depth[2] = {1.2 - s->water_depth_m, 0.7};
  int found[2] = {0, 0};
  for (int i = 0; i < s->base.forces.count; i++) {
    const lw_force *f = &s->base.forces.force[i];
    if (f->kind != LW_FORCE_SEISMIC_WATER) continue;
    double h = depth[f->index];
    found[f->index]++;
    cr_expect_float_eq(f->horizontal_kn_per_m, 7.0 / 12.0 * 0.15 * 9.81 * h * h, 1e-9);
    cr_expect_float_eq(f->y_m, 0.4 * h, 1e-9);
  }
  cr_expect_eq(found[0], 1);
  cr_expect_eq(found[1], 1);
  free(r);
}
