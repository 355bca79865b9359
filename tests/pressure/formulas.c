/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>
#include <string.h>

#include "support.h"

/* What must be true of earth pressure whatever the book. */

static const lw_earth_state states[] = {LW_ACTIVE, LW_PASSIVE};

static bool same(double a, double b, double share) {
  return fabs(a - b) <= share * fmax(fabs(a), fabs(b)) + 1e-12;
}

Test(pressure, smooth_upright_level_coulomb_is_rankine) {
  for (int s = 0; s < 2; s++)
    for (double phi = 5.3; phi < 50.0; phi += 3.7) {
      lw_wall_angles angles = {.friction_rad = RAD(phi)};
      double coulomb, rankine;
      cr_assert_eq(lw_coulomb_coefficient(states[s], &angles, &coulomb, NULL), LW_OK);
      cr_assert_eq(lw_rankine_coefficient(states[s], RAD(phi), 0.0, &rankine, NULL), LW_OK);
      cr_expect(same(coulomb, rankine, 1e-12), "phi %g: %.12g and %.12g", phi, coulomb, rankine);
    }
}

/* Along the ground is a wall friction of β; passive: of -β, as friction counts upwards there. */
Test(pressure, rankine_on_a_slope_is_coulomb_along_the_ground) {
  for (int s = 0; s < 2; s++)
    for (double beta = -21.7; beta < 24.0; beta += 3.1) {
      double delta = states[s] == LW_PASSIVE ? -beta : beta, coulomb, rankine;
      lw_wall_angles angles = {
          .friction_rad = RAD(27.3), .wall_friction_rad = RAD(delta), .slope_rad = RAD(beta)};
      cr_assert_eq(lw_coulomb_coefficient(states[s], &angles, &coulomb, NULL), LW_OK);
      cr_assert_eq(lw_rankine_coefficient(states[s], RAD(27.3), RAD(beta), &rankine, NULL), LW_OK);
      cr_expect(same(coulomb, rankine, 1e-10), "slope %g: %.12g and %.12g", beta, coulomb, rankine);
    }
}

Test(pressure, twice_the_height_is_four_thrusts_and_eight_moments) {
  for (int method = LW_PRESSURE_RANKINE; method <= LW_PRESSURE_AT_REST; method++) {
    lw_plane low = pressure_plane(31.7), high;
    lw_thrust a, b;
    low.slope_rad = RAD(8.2);
    low.wall_friction_rad = RAD(8.2);
    high = low;
    high.height_m *= 2.0;
    const lw_pressure_routine *routine = lw_pressure_routine_of((lw_pressure_method)method);
    lw_earth_state state = method == LW_PRESSURE_AT_REST ? LW_AT_REST : LW_ACTIVE;
    cr_assert_eq(routine->thrust(state, &low, &a, NULL, NULL), LW_OK);
    cr_assert_eq(routine->thrust(state, &high, &b, NULL, NULL), LW_OK);
    cr_expect(same(4.0 * a.total_kn_per_m, b.total_kn_per_m, 1e-9), "%s: thrust", routine->slug);
    double moment = a.total_kn_per_m * a.height_of_action_m;
    cr_expect(same(8.0 * moment, b.total_kn_per_m * b.height_of_action_m, 1e-6), "%s: moment", routine->slug);
  }
}

Test(pressure, parts_make_the_whole) {
  lw_plane plane = pressure_plane(33.1);
  plane.batter_rad = RAD(7.7);
  plane.wall_friction_rad = RAD(19.9);
  plane.surcharge_kpa = 6.3;
  for (int s = 0; s < 2; s++) {
    lw_thrust t;
    cr_assert_eq(lw_coulomb_thrust(states[s], &plane, &t, NULL, NULL), LW_OK);
    cr_expect(same(hypot(t.horizontal_kn_per_m, t.vertical_kn_per_m), t.total_kn_per_m, 1e-12));
    cr_expect(same(atan2(t.vertical_kn_per_m, t.horizontal_kn_per_m), t.angle_rad, 1e-12));
    double soil = t.total_kn_per_m - t.surcharge_kn_per_m;
    double moment = soil * plane.height_m / 3.0 + t.surcharge_kn_per_m * plane.height_m / 2.0;
    cr_expect(same(moment, t.total_kn_per_m * t.height_of_action_m, 1e-12));
    cr_expect(same(soil, t.coefficient * 0.5 * 18.3 * plane.height_m * plane.height_m, 1e-12));
  }
}

/* The profile is the thrust: straight from point to point. */
Test(pressure, profile_sums_to_the_thrust) {
  lw_plane plane = pressure_plane(28.4);
  plane.surcharge_kpa = 3.7;
  plane.water_depth_m = 1.13;
  plane.layer_count = 2;
  plane.layer[1] = plane.layer[0];
  plane.layer[0].bottom_m = 0.77;
  plane.layer[1].friction_rad = RAD(34.2);
  lw_thrust t;
  cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &t, NULL, NULL), LW_OK);
  double soil = 0.0, water = 0.0;
  for (int i = 1; i < t.profile_count; i++) {
    const lw_profile_point *a = &t.profile[i - 1], *b = &t.profile[i];
    soil += 0.5 * (a->soil_kpa + b->soil_kpa) * (b->depth_m - a->depth_m);
    water += 0.5 * (a->water_kpa + b->water_kpa) * (b->depth_m - a->depth_m);
  }
  cr_expect(same(soil, t.total_kn_per_m, 1e-12), "%g and %g", soil, t.total_kn_per_m);
  cr_expect(same(water, t.water_kn_per_m, 1e-12), "%g and %g", water, t.water_kn_per_m);
}

Test(pressure, a_soil_cut_in_two_is_the_same_soil) {
  for (int method = LW_PRESSURE_RANKINE; method <= LW_PRESSURE_AT_REST; method++) {
    lw_plane whole = pressure_plane(29.6);
    whole.surcharge_kpa = 4.1;
    whole.layer[0].cohesion_kpa = method == LW_PRESSURE_AT_REST ? 0.0 : 1.3;
    lw_plane cut = whole;
    cut.layer_count = 2;
    cut.layer[1] = cut.layer[0];
    cut.layer[0].bottom_m = 0.83;
    lw_thrust a, b;
    const lw_pressure_routine *routine = lw_pressure_routine_of((lw_pressure_method)method);
    lw_earth_state state = method == LW_PRESSURE_AT_REST ? LW_AT_REST : LW_ACTIVE;
    cr_assert_eq(routine->thrust(state, &whole, &a, NULL, NULL), LW_OK);
    cr_assert_eq(routine->thrust(state, &cut, &b, NULL, NULL), LW_OK);
    cr_expect(same(a.total_kn_per_m, b.total_kn_per_m, 1e-9), "%s: %.10g and %.10g", routine->slug,
              a.total_kn_per_m, b.total_kn_per_m);
    cr_expect(same(a.height_of_action_m, b.height_of_action_m, 1e-6), "%s: %g and %g", routine->slug,
              a.height_of_action_m, b.height_of_action_m);
  }
}

/* Total push, water in it. */
static double push(lw_pressure_method method, const lw_plane *plane) {
  lw_thrust t;
  lw_earth_state state = method == LW_PRESSURE_AT_REST ? LW_AT_REST : LW_ACTIVE;
  cr_assert_eq(lw_pressure_routine_of(method)->thrust(state, plane, &t, NULL, NULL), LW_OK);
  return t.horizontal_kn_per_m + t.water_kn_per_m;
}

Test(pressure, never_less_with_more_load_or_water) {
  for (int method = LW_PRESSURE_RANKINE; method <= LW_PRESSURE_AT_REST; method++) {
    lw_plane plane = pressure_plane(30.9);
    double before = push((lw_pressure_method)method, &plane);
    for (int i = 1; i <= 20; i++) {
      plane.surcharge_kpa = 0.37 * i;
      double now = push((lw_pressure_method)method, &plane);
      cr_expect_lt(before, now, "load %g", plane.surcharge_kpa);
      before = now;
    }
    for (int i = 1; i <= 20; i++) {
      plane.water_depth_m = plane.height_m * (1.0 - i / 20.0);
      double now = push((lw_pressure_method)method, &plane);
      cr_expect_lt(before, now, "%d: water at %g: %g after %g", method, plane.water_depth_m, now, before);
      before = now;
    }
  }
}

Test(pressure, never_less_on_a_steeper_slope) {
  for (int method = LW_PRESSURE_RANKINE; method <= LW_PRESSURE_AT_REST; method++) {
    double before = 0.0;
    for (double beta = 0.0; beta < 30.0; beta += 1.9) {
      lw_plane plane = pressure_plane(30.9);
      lw_thrust t;
      lw_earth_state state = method == LW_PRESSURE_AT_REST ? LW_AT_REST : LW_ACTIVE;
      plane.slope_rad = RAD(beta);
      plane.wall_friction_rad = method == LW_PRESSURE_RANKINE ? RAD(beta) : RAD(15.0);
      const lw_pressure_routine *routine = lw_pressure_routine_of((lw_pressure_method)method);
      cr_assert_eq(routine->thrust(state, &plane, &t, NULL, NULL), LW_OK);
      cr_expect_lt(before, t.total_kn_per_m, "method %d, slope %g", method, beta);
      before = t.total_kn_per_m;
    }
  }
}

Test(pressure, no_answer_leaves_its_reason_and_nothing_else) {
  double k = 0.123;
  lw_error error = {0};
  cr_expect_eq(lw_rankine_coefficient(LW_ACTIVE, RAD(30), RAD(31), &k, &error), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_STEEPER_THAN_FRICTION);
  cr_expect_eq(lw_rankine_coefficient(LW_ACTIVE, RAD(95), 0.0, &k, &error), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
  cr_expect_eq(lw_rankine_coefficient(LW_ACTIVE, NAN, 0.0, &k, &error), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
  cr_expect_eq(lw_at_rest_coefficient(RAD(30), RAD(31), &k, &error), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_STEEPER_THAN_FRICTION);
  cr_expect_eq(lw_at_rest_coefficient(RAD(-1), 0.0, &k, &error), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
  lw_wall_angles steep = {.friction_rad = RAD(30), .slope_rad = RAD(31)};
  cr_expect_eq(lw_coulomb_coefficient(LW_ACTIVE, &steep, &k, &error), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_STEEPER_THAN_FRICTION);
  lw_wall_angles flat = {.friction_rad = RAD(30), .wall_friction_rad = RAD(50), .batter_rad = RAD(45)};
  cr_expect_eq(lw_coulomb_coefficient(LW_ACTIVE, &flat, &k, &error), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
  lw_wall_angles endless = {.friction_rad = RAD(45), .wall_friction_rad = RAD(45), .slope_rad = RAD(40)};
  cr_expect_eq(lw_coulomb_coefficient(LW_PASSIVE, &endless, &k, &error), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_NO_WEDGE);
  cr_expect(fabs(k - 0.123) < 1e-15);
}

Test(pressure, thrusts_refuse_with_the_same_reasons) {
  for (int method = LW_PRESSURE_RANKINE; method <= LW_PRESSURE_AT_REST; method++) {
    lw_plane plane = pressure_plane(30.0);
    lw_thrust t = {.total_kn_per_m = 0.123};
    lw_error error = {0};
    lw_earth_state state = method == LW_PRESSURE_AT_REST ? LW_AT_REST : LW_ACTIVE;
    plane.slope_rad = RAD(31.0);
    const lw_pressure_routine *routine = lw_pressure_routine_of((lw_pressure_method)method);
    lw_status status = routine->thrust(state, &plane, &t, &error, NULL);
    cr_expect_eq(status, LW_NO_SOLUTION, "method %d", method);
    cr_expect_eq(error.reason, LW_REASON_STEEPER_THAN_FRICTION, "method %d: %d", method, (int)error.reason);
    cr_expect(fabs(t.total_kn_per_m - 0.123) < 1e-15, "method %d changed its output", method);
  }
  lw_plane plane = pressure_plane(30.0);
  lw_trial_wedge wedge = {.thrust_kn_per_m = 0.123};
  lw_error error = {0};
  cr_expect_eq(lw_trial_wedge_thrust(LW_AT_REST, &plane, &wedge, &error, NULL), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_NO_WEDGE_AT_REST);
  cr_expect(fabs(wedge.thrust_kn_per_m - 0.123) < 1e-15);
}

Test(pressure, the_recorder_changes_nothing) {
  for (int method = LW_PRESSURE_RANKINE; method <= LW_PRESSURE_AT_REST; method++) {
    lw_plane plane = pressure_plane(29.2);
    heard h = {0};
    lw_working working = pressure_listener(&h);
    lw_thrust quiet, told;
    memset(&quiet, 0, sizeof quiet);
    memset(&told, 0, sizeof told);
    plane.surcharge_kpa = 5.5;
    const lw_pressure_routine *routine = lw_pressure_routine_of((lw_pressure_method)method);
    lw_earth_state state = method == LW_PRESSURE_AT_REST ? LW_AT_REST : LW_ACTIVE;
    cr_assert_eq(routine->thrust(state, &plane, &quiet, NULL, NULL), LW_OK);
    cr_assert_eq(routine->thrust(state, &plane, &told, NULL, &working), LW_OK);
    cr_expect_lt(0, h.headings, "%s", routine->slug);
    cr_expect_lt(1, h.steps, "%s", routine->slug);
    cr_expect_eq(h.incomplete, 0, "%s", routine->slug);
    cr_expect(!(quiet.total_kn_per_m < told.total_kn_per_m) && !(quiet.total_kn_per_m > told.total_kn_per_m));
    cr_expect(!(quiet.height_of_action_m < told.height_of_action_m));
    cr_expect_eq(quiet.profile_count, told.profile_count);
  }
}

Test(pressure, passive_is_flagged_past_a_third_of_the_friction) {
  lw_plane plane = pressure_plane(30.0);
  lw_thrust t;
  plane.wall_friction_rad = RAD(10.0);
  cr_assert_eq(lw_coulomb_thrust(LW_PASSIVE, &plane, &t, NULL, NULL), LW_OK);
  cr_expect_not(t.passive_unsafe);
  plane.wall_friction_rad = RAD(10.2);
  cr_assert_eq(lw_coulomb_thrust(LW_PASSIVE, &plane, &t, NULL, NULL), LW_OK);
  cr_expect(t.passive_unsafe);
  cr_assert_eq(lw_coulomb_thrust(LW_ACTIVE, &plane, &t, NULL, NULL), LW_OK);
  cr_expect_not(t.passive_unsafe);
}

Test(pressure, cohesion_cracks_and_water_fills_the_crack) {
  lw_plane plane = pressure_plane(25.3);
  plane.layer[0].cohesion_kpa = 6.1;
  lw_thrust dry, wet;
  cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &dry, NULL, NULL), LW_OK);
  double k = dry.coefficient, crack = 2.0 * 6.1 / (18.3 * sqrt(k)), left = plane.height_m - crack;
  cr_expect(same(dry.crack_depth_m, crack, 1e-9), "%g and %g", dry.crack_depth_m, crack);
  cr_expect(same(dry.total_kn_per_m, 0.5 * k * 18.3 * left * left, 1e-9));
  cr_expect(same(dry.height_of_action_m, left / 3.0, 1e-9));
  plane.crack = LW_CRACK_WET;
  cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &wet, NULL, NULL), LW_OK);
  cr_expect(same(wet.water_kn_per_m, 0.5 * 9.81 * crack * crack, 1e-9));
  cr_expect(same(wet.water_height_m, plane.height_m - 2.0 * crack / 3.0, 1e-9));
}

Test(pressure, stiff_soil_that_stands_by_itself_does_not_push) {
  lw_plane plane = pressure_plane(28.0);
  plane.layer[0].cohesion_kpa = 40.0;
  lw_thrust t;
  cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &t, NULL, NULL), LW_OK);
  cr_expect(fabs(t.total_kn_per_m) < 1e-12);
  cr_expect(isfinite(t.height_of_action_m));
}
