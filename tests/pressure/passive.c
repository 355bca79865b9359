/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>

#include "support.h"

/* Curved surfaces: one bounds the other, and they meet where the soil slides on a plane. */

static double spiral_of(lw_earth_state state, const lw_wall_angles *angles) {
  double k = NAN;
  cr_assert_eq(lw_log_spiral_coefficient(state, angles, &k, NULL, NULL), LW_OK);
  return k;
}

/* Annex C from below, the spiral above it, the plane above all. */
Test(passive, order_of_the_three) {
  for (double phi = 20.0; phi < 44.0; phi += 5.7)
    for (double share = 0.0; share < 1.01; share += 0.25)
      for (double slope = -0.3; slope < 0.31; slope += 0.3) {
        lw_wall_angles angles = {RAD(phi), share * RAD(phi), 0.0, slope * RAD(phi)};
        double spiral = spiral_of(LW_PASSIVE, &angles), plane = INFINITY;
        lw_annex_c annex;
        (void)lw_coulomb_coefficient(LW_PASSIVE, &angles, &plane, NULL);
        cr_assert_eq(lw_annex_c_coefficients(LW_PASSIVE, &angles, &annex, NULL, NULL), LW_OK);
        cr_expect_leq(spiral, plane, "phi %g share %g slope %g", phi, share, slope);
        if (slope > -0.1)
          cr_expect_leq(annex.k, spiral * (1.0 + 1e-9), "phi %g share %g slope %g: %g over %g", phi, share,
                        slope, annex.k, spiral);
      }
}

Test(passive, smooth_wall_on_level_ground_is_rankine) {
  for (double phi = 15.0; phi < 45.0; phi += 7.3) {
    lw_wall_angles angles = {RAD(phi), 0.0, 0.0, 0.0};
    double rankine, fit, lancellotta;
    lw_annex_c annex;
    cr_assert_eq(lw_rankine_coefficient(LW_PASSIVE, RAD(phi), 0.0, &rankine, NULL), LW_OK);
    cr_assert_eq(lw_annex_c_coefficients(LW_PASSIVE, &angles, &annex, NULL, NULL), LW_OK);
    cr_assert_eq(lw_ufc_passive_coefficient(RAD(phi), 0.0, &fit, NULL), LW_OK);
    cr_assert_eq(lw_lancellotta_coefficient(RAD(phi), 0.0, &lancellotta, NULL), LW_OK);
    cr_expect_lt(fabs(spiral_of(LW_PASSIVE, &angles) / rankine - 1.0), 1e-9);
    cr_expect_lt(fabs(annex.k / rankine - 1.0), 1e-12);
    cr_expect_lt(fabs(annex.kc / (2.0 * sqrt(rankine)) - 1.0), 1e-12, "cohesion as Rankine has it");
    cr_expect_lt(fabs(fit / rankine - 1.0), 1e-12);
    cr_expect_lt(fabs(lancellotta / rankine - 1.0), 1e-12);
  }
}

Test(passive, annex_c_upright_and_level_is_lancellotta) {
  for (double share = 0.1; share < 1.01; share += 0.3) {
    lw_wall_angles angles = {RAD(34.3), share * RAD(34.3), 0.0, 0.0};
    lw_annex_c annex;
    double k;
    cr_assert_eq(lw_annex_c_coefficients(LW_PASSIVE, &angles, &annex, NULL, NULL), LW_OK);
    cr_assert_eq(lw_lancellotta_coefficient(RAD(34.3), share * RAD(34.3), &k, NULL), LW_OK);
    cr_expect_lt(fabs(annex.kg / k - 1.0), 1e-12);
  }
}

/* Active curves differ little from planes, and never ask for less. */
Test(passive, active_spiral_is_near_the_plane) {
  for (double share = 0.0; share < 1.01; share += 0.25)
    for (double batter = -10.0; batter < 11.0; batter += 10.0) {
      lw_wall_angles angles = {RAD(32.0), share * RAD(32.0), RAD(batter), RAD(6.0)};
      double plane, spiral = spiral_of(LW_ACTIVE, &angles);
      cr_assert_eq(lw_coulomb_coefficient(LW_ACTIVE, &angles, &plane, NULL), LW_OK);
      cr_expect_leq(plane, spiral);
      cr_expect_lt(spiral, 1.12 * plane, "share %g batter %g: %g and %g", share, batter, spiral, plane);
    }
}

Test(passive, refused_outside_its_range) {
  lw_wall_angles rough = {RAD(30.0), RAD(31.0), 0.0, 0.0}, steep = {RAD(30.0), 0.0, 0.0, RAD(31.0)};
  lw_annex_c annex;
  double k;
  lw_error error = {0};
  cr_expect_eq(lw_annex_c_coefficients(LW_PASSIVE, &rough, &annex, &error, NULL), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
  cr_expect_eq(lw_annex_c_coefficients(LW_PASSIVE, &steep, &annex, &error, NULL), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_STEEPER_THAN_FRICTION);
  cr_expect_eq(lw_lancellotta_coefficient(RAD(30.0), RAD(31.0), &k, &error), LW_NO_SOLUTION);
  cr_expect_eq(lw_ufc_passive_coefficient(0.0, 0.0, &k, &error), LW_NO_SOLUTION);
  steep.slope_rad = RAD(-31.0);
  cr_expect_eq(lw_log_spiral_coefficient(LW_PASSIVE, &steep, &k, &error, NULL), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_STEEPER_THAN_FRICTION);
}

Test(passive, thrusts_follow_their_coefficients) {
  lw_plane plane = pressure_plane(33.0);
  lw_wall_angles angles = {RAD(33.0), RAD(16.0), 0.0, 0.0};
  lw_thrust thrust;
  heard h = {0};
  lw_working working = pressure_listener(&h);
  plane.wall_friction_rad = RAD(16.0);
  double weight = 0.5 * 18.3 * 2.385 * 2.385;
  cr_assert_eq(lw_log_spiral_thrust(LW_PASSIVE, &plane, &thrust, NULL, &working), LW_OK);
  cr_expect_lt(fabs(thrust.total_kn_per_m / weight - spiral_of(LW_PASSIVE, &angles)), 1e-9);
  cr_expect_lt(fabs(thrust.vertical_kn_per_m + thrust.total_kn_per_m * sin(RAD(16.0))), 1e-9);
  lw_annex_c annex;
  cr_assert_eq(lw_annex_c_coefficients(LW_PASSIVE, &angles, &annex, NULL, NULL), LW_OK);
  cr_assert_eq(lw_annex_c_thrust(LW_PASSIVE, &plane, &thrust, NULL, &working), LW_OK);
  cr_expect_lt(fabs(thrust.total_kn_per_m / weight - annex.k), 1e-9);
  cr_expect_eq(h.incomplete, 0);
  cr_expect_null(lw_passive_routine_of(LW_PASSIVE_OWN));
  plane.seismic.horizontal = 0.1;
  cr_expect_eq(lw_annex_c_thrust(LW_PASSIVE, &plane, &thrust, NULL, NULL), LW_NO_SOLUTION);
}

/* In Rankine's own state the fan has no width: annex C, Coulomb and the spiral say what his stresses say. */
Test(passive, all_meet_in_rankines_state) {
  for (double slope = -6.0; slope < 13.0; slope += 9.0)
    for (double batter = -8.0; batter < 21.0; batter += 7.0) {
      double rankine, obliquity, plane;
      lw_status status = lw_rankine_battered(RAD(31.0), RAD(slope), RAD(batter), &rankine, &obliquity, NULL);
      cr_assert_eq(status, LW_OK);
      lw_wall_angles angles = {RAD(31.0), obliquity, RAD(batter), RAD(slope)};
      lw_annex_c annex;
      cr_assert_eq(lw_annex_c_coefficients(LW_ACTIVE, &angles, &annex, NULL, NULL), LW_OK);
      cr_assert_eq(lw_coulomb_coefficient(LW_ACTIVE, &angles, &plane, NULL), LW_OK);
      cr_expect_lt(fabs(annex.fan_rad), 1e-9);
      cr_expect_lt(fabs(annex.k / rankine - 1.0), 1e-9, "slope %g batter %g", slope, batter);
      cr_expect_lt(fabs(plane / rankine - 1.0), 1e-9, "slope %g batter %g", slope, batter);
      cr_expect_lt(fabs(spiral_of(LW_ACTIVE, &angles) / rankine - 1.0), 1e-6);
    }
}

/* Load and cohesion as Rankine has them, on both sides. */
Test(passive, annex_c_with_load_and_cohesion_is_rankine_where_smooth) {
  for (int passive = 0; passive < 2; passive++) {
    lw_earth_state state = passive ? LW_PASSIVE : LW_ACTIVE;
    lw_plane plane = pressure_plane(29.0);
    lw_thrust annex, rankine;
    plane.surcharge_kpa = 7.0;
    plane.layer[0].cohesion_kpa = 3.0;
    cr_assert_eq(lw_annex_c_thrust(state, &plane, &annex, NULL, NULL), LW_OK);
    cr_assert_eq(lw_rankine_thrust(state, &plane, &rankine, NULL, NULL), LW_OK);
    cr_expect_lt(fabs(annex.total_kn_per_m / rankine.total_kn_per_m - 1.0), 1e-9);
    cr_expect_lt(fabs(annex.height_of_action_m - rankine.height_of_action_m), 1e-9);
  }
}
