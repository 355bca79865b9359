/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/support.h"
#include "report/fluid.h"

/* The push as a fluid's beside that of [IBC T.1610.1], 30, 45 and 60 psf/ft, from memory. */

static double coulomb(double phi, double delta) {
  double root = sqrt(sin(phi + delta) * sin(phi) / cos(delta));
  return cos(phi) * cos(phi) / (cos(delta) * (1.0 + root) * (1.0 + root));
}

/* Angle, weight and group's figure as they are printed for each soil; half the angle on the back. */
Test(fluid, of_every_soil_by_hand) {
  static const struct {
    const char *soil;
    double phi_deg, weight, psf_per_ft;
  } rows[] = {{"crushed rock", 34.0, 18.0, 30.0}, {"clean sand", 30.0, 19.5, 30.0},
              {"silty sand", 28.0, 20.0, 45.0},   {"silt", 27.0, 19.5, 45.0},
              {"loam", 26.0, 20.0, 45.0},         {"clayey sand", 26.0, 20.0, 60.0},
              {"clay loam", 24.0, 20.0, 60.0},    {"low-plasticity clay", 22.5, 21.0, 60.0}};
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    char soil[64];
    snprintf(soil, sizeof soil, "soil 1 name=%s", rows[i].soil);
    lw_result *r = RUN("course count=4", "block height=200 mm", "block depth=500 mm", "site behind=bed", soil,
                       "footing soil name=clean sand", "ground slope=0 deg", "method slip=not");
    double phi = rows[i].phi_deg * atan(1.0) / 45.0, delta = 0.5 * phi;
    double ours = coulomb(phi, delta) * rows[i].weight * cos(delta);
    double code = rows[i].psf_per_ft * 0.04788025898 / 0.3048;
    lw_fluid f = lw_fluid_of(r);
    cr_assert(f.known && f.row, "%s", rows[i].soil);
    cr_expect(checks_test_near(f.weight_kn_per_m3, ours, 1e-9), "%s: %g, by hand %g", rows[i].soil,
              f.weight_kn_per_m3, ours);
    cr_expect(checks_test_near(f.row->code_fluid_kn_per_m3, code, 1e-3), "%s", rows[i].soil);
    bool fine = rows[i].psf_per_ft > 30.0;
    cr_expect(!fine || (f.share > 0.70 && f.share < 1.0), "%s has %g of the code's", rows[i].soil, f.share);
    free(r);
  }
}

/* Layers have no one fluid; of soil by its numbers, or at rest, the code's group is not known. */
Test(fluid, is_left_out_where_there_is_none) {
  lw_result *layers =
      RUN("course count=4", "block height=200 mm", "block depth=500 mm", "site behind=bed",
          "soil 1 name=loam", "soil 1 bottom=0.3 m", "soil 2 name=clean sand", "method slip=not");
  lw_result *numbers = RUN("course count=4", "block height=200 mm", "block depth=500 mm",
                           "soil 1 friction angle=30 deg", "method slip=not");
  lw_result *at_rest = RUN("course count=4", "block height=200 mm", "block depth=500 mm",
                           "soil 1 name=clean sand", "method pressure=at rest", "method slip=not");
  cr_expect(!lw_fluid_of(layers).known);
  cr_expect(lw_fluid_of(numbers).known && !lw_fluid_of(numbers).row);
  cr_expect(lw_fluid_of(at_rest).known && !lw_fluid_of(at_rest).row);
  free(layers);
  free(numbers);
  free(at_rest);
}
