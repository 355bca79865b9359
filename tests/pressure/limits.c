/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>

#include <lowwall/lateral.h>
#include <lowwall/pressure.h>

#include "../checks/support.h"
#include "pressure/given.h"
#include "pressure/profile.h"
#include "pressure/trial_wedge_scale.h"
#include "support.h"

/* Formulas at the ends of their ranges: where they come to another, to nothing, or to no answer. */

/* At a load itself, and beside a plane of no height, there is nothing to feel. */
Test(limits, nothing_is_felt_at_a_load_or_without_height) {
  const lw_elastic_strip strip = {20.0, 0.5, 1.5};
  const lw_elastic_place at = {0.0, 0.0}, far_along = {0.3, 9.0};
  const double z = 1e-200; /* its square is nothing */
  for (int face = 0; face < 2; face++) {
    lw_elastic_face f = face ? LW_ELASTIC_DOUBLED : LW_ELASTIC_HALF_SPACE;
    cr_expect(fabs(lw_elastic_line_kpa(5.0, 0.0, z, f)) <= 0.0);
    cr_expect(fabs(lw_elastic_point_kpa(5.0, &at, z, f)) <= 0.0);
    cr_expect(fabs(lw_elastic_point_mean_kpa(5.0, 0.0, z, f)) <= 0.0);
    for (double h = 0.0; h > -2.0; h -= 1.0) {
      cr_expect(fabs(lw_elastic_strip_push(&strip, h, f).push_kn_per_m) <= 0.0);
      cr_expect(fabs(lw_elastic_line_push(5.0, 0.5, h, f).push_kn_per_m) <= 0.0);
    }
  }
  /* The curve ends where 1.1 times the angle along the wall is a right one. [TERZAGHI1954 line and point] */
  cr_expect(fabs(lw_elastic_curve_point_kpa(5.0, &far_along, 1.0, 2.0)) <= 0.0);
}

/* Without plant there is the earth alone, K gamma H2/2 at a third; plant of no weight presses nothing. */
Test(limits, plant_of_no_weight_leaves_the_earth) {
  static const lw_earth_state STATES[] = {LW_ACTIVE, LW_AT_REST};
  for (int i = 0; i < 2; i++) {
    lw_compaction none = {0.0, 18.0, RAD(33.0), STATES[i]};
    lw_compaction_diagram d;
    double s = sin(RAD(33.0)), k = i == 0 ? (1.0 - s) / (1.0 + s) : 1.0 - s;
    cr_assert_eq(lw_compaction_solve(&none, &d, NULL, NULL), LW_OK);
    lw_lateral push = lw_compaction_thrust(&d, 1.3, NULL);
    cr_expect(checks_test_near(push.thrust_kn_per_m, k * 18.0 * 1.3 * 1.3 / 2.0, 1e-12));
    cr_expect(checks_test_near(push.height_m, 1.3 / 3.0, 1e-12));
    cr_expect(fabs(lw_compaction_thrust(&d, 0.0, NULL).height_m) <= 0.0, "no fill stands nowhere");
  }
  lw_foot foot = {0.0, 0.5};
  lw_lateral pressed = lw_foot_thrust(&foot, 0.4, 1.3, NULL);
  cr_expect(fabs(pressed.thrust_kn_per_m) + fabs(pressed.height_m) <= 0.0);
}

/* Passive friction beyond a third of the soil's is said of whichever layer it holds, of any method. */
Test(limits, one_layer_past_a_third_is_past_a_third) {
  for (int rough = 0; rough < 4; rough++)
    for (int by = 0; by < 2; by++) {
      lw_plane plane = pressure_plane(36.0);
      lw_thrust thrust;
      plane.wall_friction_rad = RAD(8.0);
      plane.layer_count = 2;
      plane.layer[1] = plane.layer[0];
      plane.layer[0].bottom_m = 1.0;
      plane.layer[0].friction_rad = RAD(rough & 1 ? 20.0 : 36.0);
      plane.layer[1].friction_rad = RAD(rough & 2 ? 20.0 : 36.0);
      lw_status status = by ? lw_trial_wedge_as_thrust(LW_PASSIVE, &plane, &thrust, NULL, NULL)
                            : lw_coulomb_thrust(LW_PASSIVE, &plane, &thrust, NULL, NULL);
      cr_assert_eq(status, LW_OK);
      cr_expect_eq(thrust.passive_unsafe, rough > 0, "%d, %d", rough, by);
    }
}

/* A coefficient that is given: K gamma H2/2 still, and no answer where it stands for none of a formula's. */
Test(limits, a_given_number_answers_only_what_it_is_for) {
  const lw_pressure_routine *given = lw_given_routine();
  lw_plane plane = pressure_plane(33.0), shaken;
  lw_thrust thrust = {.total_kn_per_m = -1.0};
  lw_error error = {0};
  plane.coefficient = 0.31;
  cr_assert_eq(given->thrust(LW_ACTIVE, &plane, &thrust, &error, NULL), LW_OK);
  cr_expect(checks_test_near(thrust.total_kn_per_m, 0.31 * 18.3 * 2.385 * 2.385 / 2.0, 1e-12));
  thrust.total_kn_per_m = -1.0;
  for (int i = 0; i < 5; i++) {
    lw_earth_state state = i == 0 ? LW_PASSIVE : LW_ACTIVE;
    shaken = plane;
    if (i == 1) shaken.coefficient = 0.0;
    if (i == 2) shaken.seismic.horizontal = 0.1;
    if (i == 3) shaken.seismic.vertical = 0.1;
    if (i == 4) shaken.height_m = -1.0;
    error.reason = LW_REASON_NONE;
    cr_expect_eq(given->thrust(state, &shaken, &thrust, &error, NULL), LW_NO_SOLUTION, "%d", i);
    cr_expect_eq(error.reason, i < 4 ? LW_REASON_GIVEN_NUMBER : LW_REASON_OUT_OF_RANGE, "%d", i);
  }
  /* Past all numbers: no thrust without end comes of it, told or not. */
  heard h = {0};
  lw_working working = pressure_listener(&h);
  plane.coefficient = 1e308;
  for (int told = 0; told < 2; told++)
    for (double c = 0.0; c < 10.0; c += 5.0) {
      plane.layer[0].cohesion_kpa = c;
      cr_expect_eq(given->thrust(LW_ACTIVE, &plane, &thrust, &error, told ? &working : NULL), LW_NO_SOLUTION);
      cr_expect_eq(error.reason, LW_REASON_OUT_OF_RANGE);
    }
  cr_expect_lt(thrust.total_kn_per_m, 0.0, "unchanged on failure");
}

/* An earthquake that turns the weight so far that no plane resists, and what is not a friction at all. */
Test(limits, no_answer_where_no_plane_is) {
  double k = -1.0, turned = -1.0;
  lw_error error = {0};
  lw_wall_angles rough = {RAD(40.0), RAD(40.0), 0.0, RAD(30.0)};
  cr_expect_eq(lw_coulomb_coefficient(LW_PASSIVE, &rough, &k, &error), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_NO_WEDGE);
  lw_wall_angles nearly = {RAD(40.0), RAD(36.0), 0.0, RAD(12.0)};
  lw_status still = lw_coulomb_coefficient(LW_PASSIVE, &nearly, &k, &error);
  lw_status shaken = lw_mononobe_okabe_coefficient(LW_PASSIVE, &nearly, RAD(1.0), &turned, &error);
  cr_expect_eq(still, LW_OK);
  cr_expect(shaken == LW_OK && turned < k, "an earthquake takes off what resists");
  cr_expect_eq(lw_rankine_battered(0.0, 0.0, 0.1, &k, &turned, &error), LW_NO_SOLUTION);
  cr_expect_eq(lw_rankine_battered(RAD(30.0), 0.0, RAD(90.0), &k, &turned, &error), LW_NO_SOLUTION);
}

/* The log spiral of a back that lies as flat as the ground has no chord between them: the plane is left. */
Test(limits, a_spiral_without_room_is_the_plane) {
  lw_wall_angles flat = {RAD(34.99), 0.0, RAD(-55.0), RAD(34.985)};
  double spiral, plane;
  cr_assert_eq(lw_coulomb_coefficient(LW_ACTIVE, &flat, &plane, NULL), LW_OK);
  cr_assert_eq(lw_log_spiral_coefficient(LW_ACTIVE, &flat, &spiral, NULL, NULL), LW_OK);
  cr_expect(checks_test_near(spiral, plane, 1e-12));
}

/* Soil below ground that was cut off is the first layer that counts, and its wedge is Coulomb's still. */
Test(limits, a_layer_that_ends_at_the_top_is_none) {
  lw_plane whole = pressure_plane(33.0), cut = whole;
  lw_trial_wedge wedge;
  lw_thrust thrust;
  cut.layer_count = 2;
  cut.layer[1] = whole.layer[0];
  cut.layer[0].bottom_m = 0.0;
  cut.layer[0].friction_rad = RAD(20.0);
  cr_expect(lw_plane_is_plain(&cut));
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &cut, &wedge, NULL, NULL), LW_OK);
  cr_assert_eq(lw_coulomb_thrust(LW_ACTIVE, &whole, &thrust, NULL, NULL), LW_OK);
  cr_expect(checks_test_near(wedge.thrust_kn_per_m, thrust.total_kn_per_m, 1e-6));
}

/* Ground as light as water weighs nothing below it, and no wedge of dry ground is a figure of it. */
Test(limits, a_wedge_is_not_scaled_to_ground_that_floats) {
  lw_plane dry = pressure_plane(33.0), wet;
  lw_trial_wedge wedge, scaled;
  dry.layer[0].saturated_unit_weight_kn_per_m3 = dry.water_unit_weight_kn_per_m3;
  wet = dry;
  wet.water_depth_m = 0.0;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &dry, &wedge, NULL, NULL), LW_OK);
  cr_expect_not(lw_trial_wedge_scale(&dry, &wedge, &wet, &scaled));
  cr_expect(lw_trial_wedge_scale(&dry, &wedge, &dry, &scaled));
}

/* A fill lighter than water rises in it: below the water its stress falls, and where it would be none the
 * water alone pushes. By hand: 12 kN/m3 moist, 8 in water, 9.81 of water, K 1/3. */
Test(limits, a_fill_that_floats_is_lighter_with_depth) {
  lw_plane plane = pressure_plane(30.0);
  lw_thrust thrust;
  plane.height_m = 3.0;
  plane.water_depth_m = 1.0;
  plane.surcharge_kpa = 4.0;
  plane.layer[0].unit_weight_kn_per_m3 = 12.0;
  plane.layer[0].saturated_unit_weight_kn_per_m3 = 8.0;
  double above = (4.0 + 0.5 * 12.0) * 1.0 / 3.0, below = (4.0 + 12.0 - 0.5 * 1.81 * 2.0) * 2.0 / 3.0;
  cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &thrust, NULL, NULL), LW_OK);
  cr_expect(checks_test_near(thrust.total_kn_per_m, above + below, 1e-9), "%g, by hand %g",
            thrust.total_kn_per_m, above + below);
  cr_expect(checks_test_near(thrust.surcharge_kn_per_m, 4.0, 1e-9), "%g", thrust.surcharge_kn_per_m);
  cr_expect(checks_test_near(thrust.water_kn_per_m, 9.81 * 2.0, 1e-12));
  /* Deep enough nothing of it is left: pressures are not below 0. */
  plane.height_m = 20.0;
  plane.surcharge_kpa = 0.0;
  double zero = 1.0 + 12.0 / 1.81;
  cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &thrust, NULL, NULL), LW_OK);
  cr_expect(checks_test_near(thrust.total_kn_per_m, (6.0 + 6.0 * (zero - 1.0)) / 3.0, 1e-9), "%g",
            thrust.total_kn_per_m);
}

/* A footing in falling ground that is pushed against weighs on what lifts it: the ground resists no less. */
Test(limits, a_buried_load_on_falling_ground_resists_no_less) {
  lw_plane bare = pressure_plane(35.0), loaded;
  lw_trial_wedge without, with;
  bare.slope_rad = RAD(-15.0);
  loaded = bare;
  loaded.load_count = 1;
  loaded.load[0] = (lw_plane_load){.near_m = 0.6, .far_m = 1.2, .pressure_kpa = 12.0, .below_m = 0.3};
  cr_assert_eq(lw_trial_wedge_thrust(LW_PASSIVE, &bare, &without, NULL, NULL), LW_OK);
  cr_assert_eq(lw_trial_wedge_thrust(LW_PASSIVE, &loaded, &with, NULL, NULL), LW_OK);
  cr_expect(with.thrust_kn_per_m >= without.thrust_kn_per_m - 1e-9, "%g, without %g", with.thrust_kn_per_m,
            without.thrust_kn_per_m);
}

/* Where cohesion holds all of it a level push on the ground makes no thrust; its height is the wedge's. */
Test(limits, a_push_that_cohesion_holds_is_none) {
  lw_plane plane = pressure_plane(30.0);
  lw_trial_wedge wedge;
  plane.layer[0].cohesion_kpa = 60.0;
  plane.load_count = 1;
  plane.load[0] = (lw_plane_load){.near_m = 0.4, .far_m = 0.4, .push_kn_per_m = 0.5};
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL), LW_OK);
  cr_expect(wedge.thrust_kn_per_m <= 1e-12 && isfinite(wedge.height_of_action_m));
}

/* A good plane with one number in turn that is none, or past all sense, has no answer and changes nothing. */
Test(limits, a_plane_with_one_bad_number_has_no_answer) {
  static lw_plane p;
  p = pressure_plane(33.0);
  p.layer_count = 2;
  p.layer[1] = p.layer[0];
  p.layer[0].bottom_m = 1.0;
  p.load_count = 1;
  p.load[0] = (lw_plane_load){.near_m = 0.5, .far_m = 0.9, .pressure_kpa = 3.0};
  double *const each[] = {&p.layer[0].overconsolidation,
                          &p.layer[0].cohesion_kpa,
                          &p.layer[0].unit_weight_kn_per_m3,
                          &p.load[0].near_m,
                          &p.load[0].far_m,
                          &p.load[0].below_m,
                          &p.load[0].pressure_kpa,
                          &p.load[0].force_kn_per_m,
                          &p.load[0].push_kn_per_m,
                          &p.slope_run_m,
                          &p.seismic.horizontal,
                          &p.seismic.vertical,
                          &p.surcharge_kpa,
                          &p.coefficient};
  lw_thrust thrust = {.total_kn_per_m = -1.0};
  cr_assert_eq(lw_plane_hold(&p, NULL), LW_OK);
  for (size_t i = 0; i < sizeof each / sizeof *each; i++) {
    double was = *each[i];
    *each[i] = NAN;
    cr_expect_eq(lw_coulomb_thrust(LW_ACTIVE, &p, &thrust, NULL, NULL), LW_NO_SOLUTION, "%zu", i);
    *each[i] = -2e9;
    bool run = each[i] == &p.slope_run_m; /* any number is one */
    cr_expect(run || lw_plane_hold(&p, NULL) == LW_NO_SOLUTION, "%zu", i);
    *each[i] = was;
  }
  p.load[0].far_m = 0.4;
  cr_expect_eq(lw_plane_hold(&p, NULL), LW_NO_SOLUTION, "it ends before it begins");
  p.load_count = -1;
  cr_expect_eq(lw_plane_hold(&p, NULL), LW_NO_SOLUTION);
  cr_expect_lt(thrust.total_kn_per_m, 0.0, "unchanged on failure");
}

/* As Coulomb's form, the wedge has no answer for a back that turns its thrust to the upright or past it. */
Test(limits, a_thrust_past_the_upright_is_no_answer) {
  for (double batter = 20.0; batter <= 60.0; batter += 5.0) {
    for (double rough = 5.0; rough <= 40.0; rough += 5.0) {
      lw_plane plane = pressure_plane(40.0);
      lw_thrust by_wedge, by_coulomb;
      lw_error error = {0};
      plane.batter_rad = RAD(batter);
      plane.wall_friction_rad = RAD(rough);
      lw_status wedge = lw_trial_wedge_as_thrust(LW_ACTIVE, &plane, &by_wedge, &error, NULL);
      bool past = batter + rough > 89.9;
      cr_expect_eq(wedge, past ? LW_NO_SOLUTION : LW_OK, "%g + %g deg", batter, rough);
      if (past) cr_expect_eq(error.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
      lw_status formula = lw_coulomb_thrust(LW_ACTIVE, &plane, &by_coulomb, NULL, NULL);
      if (past) cr_expect_eq(formula, LW_NO_SOLUTION, "%g + %g deg", batter, rough);
    }
  }
}
