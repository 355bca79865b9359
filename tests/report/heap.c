/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <string.h>

#include <lowwall/report.h>
#include <lowwall/result.h>
#include <lowwall/ground.h>

Test(heap, a_struct_by_name_is_as_large_as_in_c_and_begun) {
  cr_expect(eq(sz, lw_size_of("lw_case"), sizeof(lw_case)));
  cr_expect(eq(sz, lw_size_of("lw_result"), sizeof(lw_result)));
  cr_expect(eq(sz, lw_size_of("lw_nonsense"), 0));
  cr_expect(lw_new("lw_nonsense") == NULL);
  lw_plane *plane = lw_new("lw_plane");
  lw_slip_ground *ground = lw_new("lw_slip_ground");
  lw_text *text = lw_new("lw_text");
  cr_assert(plane != NULL && ground != NULL && text != NULL);
  cr_expect(isinf(plane->water_depth_m) && isinf(plane->slope_run_m) && isinf(plane->layer[0].bottom_m));
  cr_expect(isinf(ground->floor_y_m) && isinf(ground->water.rear_y_m) && isinf(ground->layer_x_m));
  cr_expect(strcmp(lw_text_says(text), "") == 0);
  lw_text_add(text, "said");
  cr_expect(strcmp(lw_text_says(text), "said") == 0);
  lw_text_free(text);
  lw_delete(text);
  lw_delete(ground);
  lw_delete(plane);
}

/* K 0.2973 for friction 30 and wall friction 20 degrees: [THAI-FE table 6.3 p.278]; half K g H2 by hand. */
Test(heap, a_plane_that_was_begun_wants_only_its_soil_and_height) {
  lw_plane plane;
  lw_thrust thrust;
  lw_plane_init(&plane);
  cr_expect(eq(int, lw_coulomb_thrust(LW_ACTIVE, &plane, &thrust, NULL, NULL), LW_NO_SOLUTION));
  plane.height_m = 2.0;
  plane.wall_friction_rad = 20.0 / LW_DEG_PER_RAD;
  plane.layer[0].friction_rad = 30.0 / LW_DEG_PER_RAD;
  plane.layer[0].unit_weight_kn_per_m3 = 18.0;
  cr_assert(eq(int, lw_coulomb_thrust(LW_ACTIVE, &plane, &thrust, NULL, NULL), LW_OK));
  cr_expect(fabs(thrust.coefficient - 0.2973) < 5e-5);
  cr_expect(fabs(thrust.total_kn_per_m - 0.5 * thrust.coefficient * 18.0 * 4.0) < 1e-9);
  cr_expect(thrust.water_kn_per_m <= 0.0, "no water stands there by accident");
}
