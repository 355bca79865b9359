/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/lateral.h>

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>

#include "support.h"

/* Soil between two faces. */

static double share_of(double k, double wall_friction_deg, double width_per_height) {
  lw_slot slot = {.width_m = 0.6 * width_per_height,
                  .unit_weight_kn_per_m3 = 18.0,
                  .wall_friction_rad = RAD(wall_friction_deg)};
  lw_lateral lateral;
  cr_assert_eq(lw_slot_thrust(&slot, k, 0.6, &lateral, NULL, NULL), LW_OK);
  return lateral.thrust_kn_per_m / (k * 18.0 * 0.36 / 2.0);
}

/* [LOWWALL narrow beds]: shares of the triangle with the same K, φ 30, δ 20, by another program. */
Test(pressure, narrow_shares) {
  static const double width[] = {0.25, 0.33, 0.5, 0.75, 1.0, 2.0};
  static const double at_rest[] = {0.65, 0.72, 0.80, 0.86, 0.89, 0.94};
  static const double active[] = {0.74, 0.79, 0.86, 0.90, 0.92, 0.96};
  for (int i = 0; i < 6; i++) {
    cr_expect(epsilon_eq(dbl, share_of(0.5, 20.0, width[i]), at_rest[i], 0.006), "B/H %g", width[i]);
    cr_expect(epsilon_eq(dbl, share_of(1.0 / 3.0, 20.0, width[i]), active[i], 0.006), "B/H %g", width[i]);
    cr_expect(epsilon_eq(dbl, share_of(0.5, 0.0, width[i]), 1.0, 1e-9), "B/H %g", width[i]);
  }
}

/* The closed form of the sum: K γ/r [H - (1 - exp(-rH))/r], r = 2 K tan δ/B. */
Test(pressure, narrow_sum_is_its_closed_form) {
  for (double width = 0.11; width < 50.0; width *= 2.3) {
    lw_slot slot = {.width_m = width, .unit_weight_kn_per_m3 = 17.3, .wall_friction_rad = RAD(21.0)};
    double k = 0.43, h = 1.27, rate = 2.0 * k * tan(RAD(21.0)) / width;
    double closed = k * 17.3 / rate * (h + expm1(-rate * h) / rate);
    lw_lateral lateral;
    cr_assert_eq(lw_slot_thrust(&slot, k, h, &lateral, NULL, NULL), LW_OK);
    cr_expect(epsilon_eq(dbl, lateral.thrust_kn_per_m, closed, 1e-6 * closed), "width %g", width);
    cr_expect(le(dbl, h / 3.0, lateral.height_m + 1e-9), "width %g", width);
    cr_expect(lt(dbl, lateral.height_m, h / 2.0), "width %g", width);
  }
}

Test(pressure, far_faces_and_smooth_faces_give_the_triangle) {
  lw_slot far = {1e7, 17.3, RAD(25.0), 3.1}, smooth = {0.2, 17.3, 0.0, 3.1};
  for (double z = 0.0; z < 4.0; z += 0.37) {
    cr_expect(epsilon_eq(dbl, lw_slot_kpa(&far, 0.41, z), 0.41 * (17.3 * z + 3.1), 1e-5));
    cr_expect(epsilon_eq(dbl, lw_slot_kpa(&smooth, 0.41, z), 0.41 * (17.3 * z + 3.1), 1e-12));
  }
  /* A load hangs on the faces as well, and the pressure tends to B γ/(2 tan δ). */
  lw_slot rough = {0.5, 17.3, RAD(25.0), 3.1};
  cr_expect(lt(dbl, lw_slot_kpa(&rough, 0.41, 1.0), 0.41 * (17.3 + 3.1)));
  cr_expect(epsilon_eq(dbl, lw_slot_kpa(&rough, 0.41, 50.0), 0.5 * 17.3 / (2.0 * tan(RAD(25.0))), 1e-6));
}

/* [FRYDMAN1987 stress at a rough face] between its limits, and [HANDY1985 the arch in soil arching] at
 * 30 deg, both from memory. */
Test(pressure, coefficients_of_rough_faces) {
  double k, before = 0.0, s = sin(RAD(30.0)) * sin(RAD(30.0));
  for (double delta = 0.0; delta < 30.5; delta += 5.0) {
    cr_assert_eq(lw_frydman_keissar_coefficient(RAD(30.0), RAD(delta), &k, NULL, NULL), LW_OK);
    cr_expect(lt(dbl, before, k));
    before = k;
    if (delta < 1.0) cr_expect(epsilon_eq(dbl, k, 1.0 / 3.0, 1e-12));
  }
  cr_expect(epsilon_eq(dbl, k, (1.0 - s) / (1.0 + s), 1e-7));
  cr_assert_eq(lw_handy_coefficient(RAD(30.0), &k, NULL, NULL), LW_OK);
  cr_expect(epsilon_eq(dbl, k, 0.53, 0.005));
}

Test(pressure, rough_faces_refuse) {
  double k = 7.0;
  lw_error error = {0};
  cr_expect_eq(lw_frydman_keissar_coefficient(RAD(30.0), RAD(31.0), &k, &error, NULL), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
  cr_expect_eq(lw_frydman_keissar_coefficient(0.0, 0.0, &k, &error, NULL), LW_NO_SOLUTION);
  cr_expect_eq(lw_handy_coefficient(0.0, &k, &error, NULL), LW_NO_SOLUTION);
  cr_expect_eq(lw_handy_coefficient(RAD(90.0), &k, &error, NULL), LW_NO_SOLUTION);
  lw_slot broken = {NAN, 18.0, RAD(20.0), 0.0};
  lw_lateral lateral = {3.0, 4.0};
  cr_expect_eq(lw_slot_thrust(&broken, 0.4, 1.0, &lateral, &error, NULL), LW_NO_SOLUTION);
  cr_expect(epsilon_eq(dbl, lateral.thrust_kn_per_m, 3.0, 0.0));
  cr_expect(epsilon_eq(dbl, k, 7.0, 0.0));
}
