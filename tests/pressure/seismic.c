/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>

#include "pressure/trial_wedge_scale.h"
#include "support.h"

/* Mononobe-Okabe against trial wedges with inertia, and in its limits. */

static bool same(double a, double b, double share) {
  return fabs(a - b) <= share * fmax(fabs(a), fabs(b));
}

static bool identical(double a, double b) {
  return !(a < b) && !(a > b);
}

static void hold(lw_earth_state state, const lw_plane *plane, int *held) {
  lw_thrust formula;
  lw_trial_wedge wedge;
  if (lw_coulomb_thrust(state, plane, &formula, NULL, NULL) != LW_OK || !lw_plane_is_plain(plane)) return;
  cr_assert_eq(lw_trial_wedge_thrust(state, plane, &wedge, NULL, NULL), LW_OK);
  (*held)++;
  cr_expect(same(formula.total_kn_per_m, wedge.thrust_kn_per_m, 1e-6),
            "state %d kh %g kv %g delta %g batter %g slope %g: %.9g and %.9g", (int)state,
            plane->seismic.horizontal, plane->seismic.vertical, plane->wall_friction_rad, plane->batter_rad,
            plane->slope_rad, formula.total_kn_per_m, wedge.thrust_kn_per_m);
}

static void over_a_grid(lw_earth_state state, double most_friction, int *held) {
  for (double kh = 0.0; kh < 0.31; kh += 0.1)
    for (double kv = -0.15; kv < 0.16; kv += 0.15)
      for (double wall = 0.0; wall <= most_friction; wall += 0.33)
        for (double batter = -12.0; batter < 13.0; batter += 8.0)
          for (double slope = -8.0; slope < 9.0; slope += 8.0) {
            lw_plane plane = pressure_plane(33.7);
            plane.wall_friction_rad = wall * RAD(33.7);
            plane.batter_rad = RAD(batter);
            plane.slope_rad = RAD(slope);
            plane.surcharge_kpa = 4.7;
            plane.seismic = (lw_seismic){kh, kv, 0.6, false};
            hold(state, &plane, held);
          }
}

Test(seismic, active_agrees_with_the_wedge) {
  int held = 0;
  over_a_grid(LW_ACTIVE, 0.7, &held);
  cr_expect_lt(400, held, "%d held", held);
}

Test(seismic, passive_agrees_with_the_wedge) {
  int held = 0;
  over_a_grid(LW_PASSIVE, 0.34, &held);
  cr_expect_lt(250, held, "%d held", held);
}

/* Under water, without a load, the weight is turned alike everywhere: moved with or without its water. */
Test(seismic, wet_ground_agrees_with_the_wedge) {
  int held = 0;
  for (int pervious = 0; pervious < 2; pervious++) {
    lw_plane plane = pressure_plane(33.7);
    plane.water_depth_m = 0.0;
    plane.wall_friction_rad = RAD(11.0);
    plane.seismic = (lw_seismic){0.12, 0.05, 0.6, pervious == 1};
    hold(LW_ACTIVE, &plane, &held);
    plane.surcharge_kpa = 3.0;
    cr_expect_not(lw_plane_is_plain(&plane));
  }
  cr_expect_eq(held, 2);
}

static lw_plane awkward(void) {
  lw_plane plane = pressure_plane(31.3);
  plane.surcharge_kpa = 2.6;
  plane.slope_rad = RAD(7.0);
  plane.layer[0].cohesion_kpa = 1.7;
  plane.water_depth_m = 1.4;
  plane.seismic.height_share = 0.6;
  return plane;
}

/* No acceleration: the static thrust to the last bit, whatever else is on the plane. */
Test(seismic, none_is_the_static_thrust) {
  lw_plane moving = awkward(), still = awkward();
  still.seismic = (lw_seismic){0};
  for (int method = LW_PRESSURE_RANKINE; method <= LW_PRESSURE_AT_REST; method++) {
    lw_thrust a, b;
    const lw_pressure_routine *routine = lw_pressure_routine_of((lw_pressure_method)method);
    lw_earth_state state = method == LW_PRESSURE_AT_REST ? LW_AT_REST : LW_ACTIVE;
    moving.along_ground = still.along_ground = method == LW_PRESSURE_RANKINE || method == LW_PRESSURE_AT_REST;
    moving.wall_friction_rad = still.wall_friction_rad = moving.along_ground ? RAD(7.0) : RAD(12.0);
    cr_assert_eq(routine->thrust(state, &moving, &a, NULL, NULL), LW_OK);
    cr_assert_eq(routine->thrust(state, &still, &b, NULL, NULL), LW_OK);
    cr_expect(identical(a.total_kn_per_m, b.total_kn_per_m), "%s", routine->slug);
    cr_expect(identical(a.height_of_action_m, b.height_of_action_m), "%s", routine->slug);
  }
}

static double thrust_at(lw_earth_state state, lw_pressure_method method, double kh, lw_thrust *thrust) {
  lw_plane plane = awkward();
  plane.along_ground = method == LW_PRESSURE_RANKINE || method == LW_PRESSURE_AT_REST;
  plane.wall_friction_rad = plane.along_ground ? plane.slope_rad : RAD(10.0);
  plane.seismic.horizontal = kh;
  const lw_pressure_routine *routine = lw_pressure_routine_of(method);
  cr_assert_eq(routine->thrust(state, &plane, thrust, NULL, NULL), LW_OK);
  return thrust->total_kn_per_m;
}

Test(seismic, active_rises_and_passive_falls) {
  for (int method = LW_PRESSURE_RANKINE; method <= LW_PRESSURE_AT_REST; method++) {
    lw_thrust thrust;
    lw_earth_state state = method == LW_PRESSURE_AT_REST ? LW_AT_REST : LW_ACTIVE;
    double before = 0.0, height = 0.0;
    for (double kh = 0.0; kh < 0.17; kh += 0.04) {
      double now = thrust_at(state, (lw_pressure_method)method, kh, &thrust);
      cr_expect_lt(before, now, "method %d kh %g", method, kh);
      cr_expect_leq(height, thrust.height_of_action_m, "method %d kh %g", method, kh);
      before = now;
      height = thrust.height_of_action_m;
    }
  }
  lw_thrust thrust;
  double before = INFINITY;
  for (double kh = 0.0; kh < 0.17; kh += 0.04) {
    double now = thrust_at(LW_PASSIVE, LW_PRESSURE_COULOMB, kh, &thrust);
    cr_expect_lt(now, before);
    before = now;
  }
}

/* The part that is added acts at its share of the height, the rest where it acted. */
Test(seismic, each_part_has_its_own_height) {
  lw_thrust still, moving;
  (void)thrust_at(LW_ACTIVE, LW_PRESSURE_COULOMB, 0.0, &still);
  (void)thrust_at(LW_ACTIVE, LW_PRESSURE_COULOMB, 0.1, &moving);
  double added = moving.total_kn_per_m - still.total_kn_per_m;
  double moment = still.total_kn_per_m * still.height_of_action_m + added * 0.6 * 2.385;
  cr_expect(same(moving.seismic_kn_per_m, added, 1e-12));
  cr_expect(same(moving.total_kn_per_m * moving.height_of_action_m, moment, 1e-12));
}

/* kh = (1 - kv) tan(φ - β) is the last that has an answer, for the formula and for the wedge. */
Test(seismic, limit_of_the_formula) {
  lw_plane plane = pressure_plane(31.0);
  plane.slope_rad = RAD(9.0);
  plane.seismic = (lw_seismic){0.0, 0.1, 0.6, false};
  double limit = 0.9 * tan(RAD(22.0));
  for (int beyond = 0; beyond < 2; beyond++) {
    lw_thrust thrust;
    lw_trial_wedge wedge;
    lw_error error = {0}, wedge_error = {0};
    plane.seismic.horizontal = limit * (beyond ? 1.0001 : 0.9999);
    lw_status status = lw_coulomb_thrust(LW_ACTIVE, &plane, &thrust, &error, NULL);
    cr_expect_eq(status, beyond ? LW_NO_SOLUTION : LW_OK);
    if (!beyond) continue;
    cr_expect_eq(error.reason, LW_REASON_NO_SEISMIC_WEDGE);
    cr_expect_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, &wedge_error, NULL), LW_NO_SOLUTION);
    cr_expect_eq(wedge_error.reason, LW_REASON_NO_SEISMIC_WEDGE);
  }
  plane.slope_run_m = 3.0;
  plane.seismic.horizontal = 0.7;
  cr_expect_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &(lw_trial_wedge){0}, NULL, NULL), LW_NO_SOLUTION,
               "level ground behind a short slope slides too");
}

/* A wedge scaled to another height keeps what the earthquake adds. */
Test(seismic, a_scaled_wedge_keeps_what_is_added) {
  for (int wet = 0; wet < 2; wet++) {
    lw_plane from = pressure_plane(33.0), to, other;
    lw_trial_wedge wedge, scaled, searched;
    from.seismic = (lw_seismic){0.11, -0.04, 0.6, false};
    if (wet) from.water_depth_m = 0.0;
    to = other = from;
    to.height_m = 0.61;
    other.seismic.horizontal = 0.12;
    cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &from, &wedge, NULL, NULL), LW_OK);
    cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &to, &searched, NULL, NULL), LW_OK);
    cr_assert(lw_trial_wedge_scale(&from, &wedge, &to, &scaled));
    cr_expect(same(scaled.thrust_kn_per_m, searched.thrust_kn_per_m, 1e-9));
    cr_expect_not(lw_trial_wedge_scale(&from, &wedge, &other, &scaled));
    other = from;
    other.water_depth_m = wet ? INFINITY : 0.0;
    cr_expect_not(lw_trial_wedge_scale(&from, &wedge, &other, &scaled), "wet ground is turned further");
  }
}

Test(seismic, working_changes_nothing) {
  lw_plane plane = pressure_plane(30.0);
  heard h = {0};
  lw_working working = pressure_listener(&h);
  lw_thrust quiet, told;
  plane.seismic = (lw_seismic){0.1, 0.0, 0.6, false};
  cr_assert_eq(lw_coulomb_thrust(LW_ACTIVE, &plane, &quiet, NULL, NULL), LW_OK);
  cr_assert_eq(lw_coulomb_thrust(LW_ACTIVE, &plane, &told, NULL, &working), LW_OK);
  cr_expect(identical(quiet.total_kn_per_m, told.total_kn_per_m));
  cr_expect_lt(6, h.steps);
  cr_expect_eq(h.incomplete, 0);
}
