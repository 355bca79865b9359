/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>

#include "pressure/trial_wedge_scale.h"
#include "support.h"

/* The wedge knows nothing of the closed formulas: where they must agree, they hold each other. */

static bool same(double a, double b, double share) {
  return fabs(a - b) <= share * fmax(fabs(a), fabs(b));
}

static void hold(lw_earth_state state, const lw_plane *plane, int *held) {
  lw_thrust formula;
  lw_trial_wedge wedge;
  if (lw_coulomb_thrust(state, plane, &formula, NULL, NULL) != LW_OK) return;
  lw_status status = lw_trial_wedge_thrust(state, plane, &wedge, NULL, NULL);
  cr_expect_eq(status, LW_OK, "no wedge at phi %g", plane->layer[0].friction_rad);
  if (status != LW_OK) return;
  (*held)++;
  cr_expect(same(formula.total_kn_per_m, wedge.thrust_kn_per_m, 1e-6),
            "state %d phi %g delta %g batter %g slope %g: %.9g and %.9g", (int)state,
            plane->layer[0].friction_rad, plane->wall_friction_rad, plane->batter_rad, plane->slope_rad,
            formula.total_kn_per_m, wedge.thrust_kn_per_m);
}

/* Friction, share of it on the wall, batter, share of it as slope, load: 5 x 4 x 7 x 5 x 2 cases. */
static void over_a_grid(lw_earth_state state, int *held) {
  for (double phi = 20.0; phi < 45.0; phi += 5.7)
    for (double wall = 0.0; wall < 0.34; wall += 0.11)
      for (double batter = -18.0; batter < 20.0; batter += 6.0)
        for (double slope = -0.5; slope < 0.9; slope += 0.33)
          for (int loaded = 0; loaded < 2; loaded++) {
            lw_plane plane = pressure_plane(phi);
            plane.wall_friction_rad = RAD(phi * wall);
            plane.batter_rad = RAD(batter);
            plane.slope_rad = RAD(phi * slope);
            plane.surcharge_kpa = loaded * 7.9;
            hold(state, &plane, held);
          }
}

Test(wedge, agrees_with_coulomb_active) {
  int held = 0;
  over_a_grid(LW_ACTIVE, &held);
  cr_expect_eq(held, 5 * 4 * 7 * 5 * 2, "%d held", held);
}

Test(wedge, agrees_with_coulomb_passive) {
  int held = 0;
  over_a_grid(LW_PASSIVE, &held);
  cr_expect_lt(1000, held, "%d held", held);
}

Test(wedge, agrees_with_rough_walls) {
  int held = 0;
  for (double wall = 0.5; wall < 1.01; wall += 0.25)
    for (double batter = -10.0; batter < 21.0; batter += 5.0) {
      lw_plane plane = pressure_plane(33.0);
      plane.wall_friction_rad = RAD(33.0 * wall);
      plane.batter_rad = RAD(batter);
      plane.slope_rad = RAD(11.0);
      hold(LW_ACTIVE, &plane, &held);
    }
  cr_expect_eq(held, 21);
}

Test(wedge, agrees_with_rankine_along_the_ground) {
  for (double beta = 0.0; beta < 28.0; beta += 2.6) {
    lw_plane plane = pressure_plane(29.3);
    lw_thrust rankine;
    lw_trial_wedge wedge;
    plane.slope_rad = plane.wall_friction_rad = RAD(beta);
    plane.along_ground = true;
    cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &rankine, NULL, NULL), LW_OK);
    cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL), LW_OK);
    cr_expect(same(rankine.total_kn_per_m, wedge.thrust_kn_per_m, 1e-6), "slope %g", beta);
  }
}

Test(wedge, smooth_upright_level_fails_at_45_and_half_the_friction) {
  lw_plane plane = pressure_plane(31.0);
  lw_trial_wedge wedge;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL), LW_OK);
  cr_expect(fabs(wedge.plane_angle_rad - RAD(45.0 + 15.5)) < 1e-5);
  cr_expect(same(wedge.reach_m, plane.height_m / tan(RAD(60.5)), 1e-4));
  cr_expect(same(wedge.weight_kn_per_m, 0.5 * 18.3 * plane.height_m * wedge.reach_m, 1e-9));
  cr_expect(same(wedge.height_of_action_m, plane.height_m / 3.0, 1e-9));
}

/* A strip that never ends is a load everywhere. */
Test(wedge, strip_as_wide_as_the_world_is_a_uniform_load) {
  lw_plane strip = pressure_plane(30.3), uniform;
  strip.wall_friction_rad = RAD(12.0);
  uniform = strip;
  uniform.surcharge_kpa = 8.7;
  strip.load_count = 1;
  strip.load[0] = (lw_plane_load){.near_m = 0.0, .far_m = 1e6, .pressure_kpa = 8.7};
  lw_trial_wedge a, b;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &strip, &a, NULL, NULL), LW_OK);
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &uniform, &b, NULL, NULL), LW_OK);
  cr_expect(same(a.thrust_kn_per_m, b.thrust_kn_per_m, 1e-6), "%.9g and %.9g", a.thrust_kn_per_m,
            b.thrust_kn_per_m);
}

Test(wedge, a_load_counts_less_the_farther_it_stands) {
  double before = INFINITY, alone;
  lw_plane plane = pressure_plane(30.3);
  lw_trial_wedge wedge;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL), LW_OK);
  alone = wedge.thrust_kn_per_m;
  plane.load_count = 1;
  for (double x = 0.1; x < 9.0; x += 0.35) {
    plane.load[0] = (lw_plane_load){.near_m = x, .far_m = x, .force_kn_per_m = 6.0};
    cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL), LW_OK);
    double now = wedge.thrust_kn_per_m;
    cr_expect(now <= before + 1e-7, "at %g m: %g after %g", x, now, before);
    before = now;
  }
  cr_expect(same(before, alone, 1e-6), "far away: %.9g, alone %.9g", before, alone);
}

/* Ground that rises for a while and then lies level stands between level ground and an endless slope. */
Test(wedge, broken_ground_stands_between_level_and_endless) {
  double before = 0.0;
  lw_plane plane = pressure_plane(32.4);
  lw_trial_wedge wedge, level, endless;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &level, NULL, NULL), LW_OK);
  plane.slope_rad = RAD(22.0);
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &endless, NULL, NULL), LW_OK);
  for (double run = 0.0; run < 30.0; run = run * 1.6 + 0.1) {
    plane.slope_run_m = run;
    cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL), LW_OK);
    cr_expect(wedge.thrust_kn_per_m >= before - 1e-7, "run %g", run);
    if (run < 1e-9) cr_expect(same(wedge.thrust_kn_per_m, level.thrust_kn_per_m, 1e-6));
    before = wedge.thrust_kn_per_m;
  }
  cr_expect(same(before, endless.thrust_kn_per_m, 1e-6), "%.9g and %.9g", before, endless.thrust_kn_per_m);
}

/* With the run's end in sight even ground steeper than its friction has an answer. */
Test(wedge, steep_but_short_ground_has_an_answer) {
  lw_plane plane = pressure_plane(30.0);
  lw_trial_wedge wedge;
  lw_error error = {0};
  plane.slope_rad = RAD(34.0);
  cr_expect_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, &error, NULL), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_STEEPER_THAN_FRICTION);
  plane.slope_run_m = 1.1;
  cr_expect_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, &error, NULL), LW_OK);
  cr_expect_lt(0.0, wedge.thrust_kn_per_m);
}

Test(wedge, knows_when_it_must_agree) {
  lw_plane plane = pressure_plane(30.0);
  cr_expect(lw_plane_is_plain(&plane));
  lw_plane other = plane;
  other.layer[0].cohesion_kpa = 2.0;
  cr_expect_not(lw_plane_is_plain(&other));
  other = plane;
  other.water_depth_m = 1.0;
  cr_expect_not(lw_plane_is_plain(&other));
  other = plane;
  other.slope_rad = RAD(10.0);
  other.slope_run_m = 2.0;
  cr_expect_not(lw_plane_is_plain(&other));
  other = plane;
  other.load_count = 1;
  cr_expect_not(lw_plane_is_plain(&other));
}

Test(wedge, recorder_changes_nothing) {
  lw_plane plane = pressure_plane(30.0);
  heard h = {0};
  lw_working working = pressure_listener(&h);
  lw_trial_wedge quiet, told;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &quiet, NULL, NULL), LW_OK);
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &told, NULL, &working), LW_OK);
  cr_expect(!(quiet.thrust_kn_per_m < told.thrust_kn_per_m));
  cr_expect(!(quiet.thrust_kn_per_m > told.thrust_kn_per_m));
  cr_expect_lt(2, h.steps);
  cr_expect_eq(h.incomplete, 0);
}

/* A wedge scaled from another height, weight and load is the wedge that a search finds there. */
Test(pressure, a_scaled_wedge_is_the_searched_one) {
  const lw_plane from = {.height_m = 1.3,
                         .batter_rad = -0.09,
                         .wall_friction_rad = 0.21,
                         .slope_rad = 0.12,
                         .slope_run_m = INFINITY,
                         .surcharge_kpa = 2.7,
                         .layer_count = 1,
                         .layer = {{.bottom_m = INFINITY,
                                    .friction_rad = 0.53,
                                    .unit_weight_kn_per_m3 = 18.7,
                                    .saturated_unit_weight_kn_per_m3 = 20.9}},
                         .water_depth_m = INFINITY,
                         .water_unit_weight_kn_per_m3 = 9.81};
  lw_plane to = from, other = from;
  lw_trial_wedge wedge, scaled, searched;
  to.height_m = 0.37;
  to.surcharge_kpa = 7.9;
  to.layer[0].unit_weight_kn_per_m3 = 16.1;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &from, &wedge, NULL, NULL), LW_OK);
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &to, &searched, NULL, NULL), LW_OK);
  cr_assert(lw_trial_wedge_scale(&from, &wedge, &to, &scaled));
  cr_expect(fabs(scaled.thrust_kn_per_m / searched.thrust_kn_per_m - 1.0) < 1e-9);
  cr_expect(fabs(scaled.height_of_action_m - searched.height_of_action_m) < 1e-6);
  cr_expect(fabs(scaled.reach_m - searched.reach_m) < 1e-6);
  other.slope_rad = 0.13;
  cr_expect_not(lw_trial_wedge_scale(&from, &wedge, &other, &scaled), "another slope is another figure");
  other = from;
  other.water_depth_m = 0.4;
  cr_expect_not(lw_trial_wedge_scale(&from, &wedge, &other, &scaled),
                "the water's level cuts another figure off");
}

/* Behind level ground the water's level cuts off a wedge of the same figure: it may stand at any depth. */
Test(pressure, a_wedge_behind_level_ground_is_scaled_to_any_water) {
  const double depths[] = {INFINITY, 0.9, 0.55, 0.0};
  lw_plane from = pressure_plane(31.0), to, other;
  lw_trial_wedge wedge, scaled, searched;
  from.batter_rad = 0.07;
  from.wall_friction_rad = 0.3;
  from.surcharge_kpa = 3.1;
  for (size_t i = 0; i < sizeof depths / sizeof *depths; i++) {
    from.water_depth_m = depths[i];
    cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &from, &wedge, NULL, NULL), LW_OK);
    for (size_t k = 0; k < sizeof depths / sizeof *depths; k++) {
      to = from;
      to.height_m = 1.1;
      to.water_depth_m = depths[k];
      cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &to, &searched, NULL, NULL), LW_OK);
      cr_assert(lw_trial_wedge_scale(&from, &wedge, &to, &scaled));
      cr_expect(fabs(scaled.thrust_kn_per_m / searched.thrust_kn_per_m - 1.0) < 1e-9);
      cr_expect(fabs(scaled.weight_kn_per_m / searched.weight_kn_per_m - 1.0) < 1e-6);
      cr_expect(fabs(scaled.height_of_action_m - searched.height_of_action_m) < 1e-6);
    }
  }
  other = to;
  other.layer[0].saturated_unit_weight_kn_per_m3 = 9.81;
  cr_expect_not(lw_trial_wedge_scale(&from, &wedge, &other, &scaled),
                "nothing weighs that is as light as water");
  other = to;
  other.seismic.horizontal = 0.1;
  cr_expect_not(lw_trial_wedge_scale(&from, &wedge, &other, &scaled),
                "an earthquake turns wet ground further");
  other = to;
  other.layer[0].cohesion_kpa = 1.0;
  cr_expect_not(lw_trial_wedge_scale(&from, &wedge, &other, &scaled), "cohesion keeps its size");
}

/* By wedge as by formula the thrust leans to the same side of the normal: soil that settles draws the wall
 * down, soil that is pushed up lifts it. */
Test(wedge, leans_as_the_formula_does) {
  static const lw_earth_state states[] = {LW_ACTIVE, LW_PASSIVE};
  for (int i = 0; i < 2; i++) {
    lw_plane plane = pressure_plane(31.0);
    lw_thrust formula, wedge;
    plane.wall_friction_rad = RAD(9.0);
    plane.batter_rad = RAD(4.0);
    cr_assert_eq(lw_coulomb_thrust(states[i], &plane, &formula, NULL, NULL), LW_OK);
    cr_assert_eq(lw_trial_wedge_as_thrust(states[i], &plane, &wedge, NULL, NULL), LW_OK);
    cr_expect(same(formula.angle_rad, wedge.angle_rad, 1e-9), "%g and %g", formula.angle_rad,
              wedge.angle_rad);
    cr_expect(same(formula.vertical_kn_per_m, wedge.vertical_kn_per_m, 1e-6));
    cr_expect(same(formula.horizontal_kn_per_m, wedge.horizontal_kn_per_m, 1e-6));
  }
}
