/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <string.h>

#include <lowwall/lateral.h>
#include <lowwall/pressure.h>

#include "../checks/support.h"
#include "../report/told.h"
#include "pressure/elastic_record.h"
#include "support.h"

/* What formulas write of ways that no wall of the records goes: each line comes out from the numbers that it
 * prints, and the last of a symbol is the answer. */

static void expect_told(const told *t, const char *symbol, double answer, const char *where) {
  cr_expect_eq(t->wrong, 0, "%s: %s", where, t->first_wrong);
  cr_expect(checks_test_near(told_value(t, symbol), answer, 1e-9), "%s: %s is %g, told %g", where, symbol,
            answer, told_value(t, symbol));
}

/* Overconsolidated ground at rest, by either rule; ground that never bore more is Jaky's. */
Test(told_thrusts, at_rest_by_its_rule) {
  static const double RATIO[] = {0.0, 1.0, 3.0};
  static const lw_overconsolidation RULES[] = {LW_OCR_MAYNE_KULHAWY, LW_OCR_EN1997};
  for (int i = 0; i < 6; i++) {
    lw_plane plane = pressure_plane(28.0);
    lw_thrust thrust;
    told t;
    lw_working working = told_listen(&t);
    plane.overconsolidation = RULES[i % 2];
    plane.layer[0].overconsolidation = RATIO[i / 2];
    cr_assert_eq(lw_at_rest_thrust(LW_AT_REST, &plane, &thrust, NULL, &working), LW_OK);
    expect_told(&t, "K0", thrust.coefficient, "at rest");
    bool raised = RATIO[i / 2] > 1.0;
    cr_expect_eq(strstr(told_formula(&t, "K0"), "sqrt(OCR)") != NULL, raised && i % 2 == 1);
    cr_expect_eq(strstr(told_formula(&t, "K0"), "OCR^(sin phi)") != NULL, raised && i % 2 == 0);
  }
}

/* Ingold's diagram of fill as deep as its first line, its second and below both. */
Test(told_thrusts, compaction_at_every_depth) {
  static const lw_earth_state STATES[] = {LW_ACTIVE, LW_AT_REST};
  for (int s = 0; s < 2; s++) {
    lw_compaction plant = {30.0, 18.0, RAD(33.0), STATES[s]};
    lw_compaction_diagram d;
    told t;
    lw_working working = told_listen(&t);
    cr_assert_eq(lw_compaction_solve(&plant, &d, NULL, &working), LW_OK);
    expect_told(&t, s == 0 ? "Ka" : "K0", d.coefficient, "diagram");
    expect_told(&t, "hc", d.hc_m, "diagram");
    const double depth[] = {0.5 * d.zc_m, 0.5 * (d.zc_m + d.hc_m), 1.3 * d.hc_m};
    for (int i = 0; i < 3; i++) {
      working = told_listen(&t);
      lw_lateral push = lw_compaction_thrust(&d, depth[i], &working);
      expect_told(&t, "Pc", push.thrust_kn_per_m, "thrust");
      expect_told(&t, "yc", push.height_m, "thrust");
      cr_expect_eq(t.worked_out, 3);
    }
  }
}

/* A strip without end, a strip and a line, felt once and twice. */
Test(told_thrusts, loads_in_closed_form) {
  static const lw_load_pressure BY[] = {LW_LOAD_PRESSURE_HALF_SPACE, LW_LOAD_PRESSURE_DOUBLED};
  static const lw_plane_load LOADS[] = {{.near_m = 0.7, .far_m = INFINITY, .pressure_kpa = 8.0},
                                        {.near_m = 0.7, .far_m = 1.9, .pressure_kpa = 8.0},
                                        {.near_m = 0.7, .far_m = 0.7, .force_kn_per_m = 5.0}};
  for (int i = 0; i < 6; i++) {
    lw_plane plane = pressure_plane(33.0);
    told t;
    lw_working working = told_listen(&t);
    plane.load_count = 1;
    plane.load[0] = LOADS[i / 2];
    lw_elastic push = lw_elastic_push_on(&plane, BY[i % 2]);
    lw_elastic_record(&plane, BY[i % 2], &push, &working);
    expect_told(&t, "Pe", push.push_kn_per_m, "load");
    expect_told(&t, "he", push.height_m, "load");
  }
}

/* Cohesion under a slope, its crack taken as a triangle: the diagram is straight between its ends. */
Test(told_thrusts, a_triangle_for_a_crack_is_straight) {
  lw_plane plane = pressure_plane(30.0);
  lw_thrust thrust;
  told t;
  lw_working working = told_listen(&t);
  plane.slope_rad = RAD(15.0);
  plane.surcharge_kpa = 5.0;
  plane.layer[0].cohesion_kpa = 4.0;
  plane.crack = LW_CRACK_TRIANGLE;
  cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &thrust, NULL, &working), LW_OK);
  double deep = plane.height_m - thrust.crack_depth_m,
         foot = thrust.profile[thrust.profile_count - 1].soil_kpa;
  cr_expect(checks_test_near(thrust.total_kn_per_m, 0.5 * foot * deep, 1e-6), "%g", thrust.total_kn_per_m);
  expect_told(&t, "P", thrust.total_kn_per_m, "triangle");
}

/* A spiral that pushes more than any plane does, with its insides. */
Test(told_thrusts, an_active_spiral) {
  for (double delta = 0.0; delta < 31.0; delta += 5.0)
    for (double slope = -15.0; slope < 16.0; slope += 15.0) {
      lw_wall_angles angles = {RAD(30.0), RAD(delta), RAD(8.0), RAD(slope)};
      double k, plane;
      told t;
      lw_working working = told_listen(&t);
      cr_assert_eq(lw_log_spiral_coefficient(LW_ACTIVE, &angles, &k, NULL, &working), LW_OK);
      cr_assert_eq(lw_coulomb_coefficient(LW_ACTIVE, &angles, &plane, NULL), LW_OK);
      cr_expect(k >= plane - 1e-12, "a curve is one more wedge to choose from");
      expect_told(&t, "Ka", k, "spiral");
    }
}

/* Ground in front, shaken: by the formula and by the wedge, whose lines turn their signs. */
Test(told_thrusts, shaken_ground_that_resists) {
  static const lw_seismic SHAKES[] = {
      {0.1, 0.0, 0.5, false}, {0.0, 0.05, 0.5, false}, {0.1, -0.05, 0.5, true}};
  for (int i = 0; i < 12; i++) {
    lw_plane plane = pressure_plane(33.0);
    lw_thrust thrust;
    lw_trial_wedge wedge;
    told t;
    lw_working working = told_listen(&t);
    plane.seismic = SHAKES[i % 3];
    plane.water_depth_m = i / 6 ? 1.0 : INFINITY;
    plane.layer_count = 3; /* the last is never met */
    plane.layer[1] = plane.layer[2] = plane.layer[0];
    plane.layer[0].bottom_m = 0.8;
    plane.layer[1].bottom_m = 3.0;
    lw_earth_state state = i / 3 % 2 ? LW_PASSIVE : LW_ACTIVE;
    cr_assert_eq(lw_coulomb_thrust(state, &plane, &thrust, NULL, &working), LW_OK);
    expect_told(&t, "Pt", thrust.total_kn_per_m, "formula");
    working = told_listen(&t);
    cr_assert_eq(lw_trial_wedge_thrust(state, &plane, &wedge, NULL, &working), LW_OK);
    expect_told(&t, "P", wedge.thrust_kn_per_m, "wedge");
    cr_assert_eq(lw_trial_wedge_as_thrust(state, &plane, &thrust, NULL, NULL), LW_OK);
    cr_expect(checks_test_near(thrust.total_kn_per_m, wedge.thrust_kn_per_m, 1e-9));
  }
}

/* Weight that an earthquake lifts off takes no more of a thrust than is there. */
Test(told_thrusts, what_an_earthquake_takes_is_no_more_than_all) {
  lw_plane plane = pressure_plane(33.0);
  lw_thrust thrust;
  told t;
  lw_working working = told_listen(&t);
  plane.layer[0].cohesion_kpa = 9.0;
  plane.seismic.vertical = 0.9;
  cr_assert_eq(lw_coulomb_thrust(LW_ACTIVE, &plane, &thrust, NULL, &working), LW_OK);
  cr_expect_float_eq(thrust.total_kn_per_m, 0.0, 1e-12);
  expect_told(&t, "Pt", 0.0, "lifted off");
}

/* As many layers and loads as there is room for, each of a size that no wall has: lines end where their room
 * does, and say nothing past it. */
Test(told_thrusts, room_for_every_layer_and_load) {
  for (int i = 0; i < 4; i++) {
    lw_plane plane = pressure_plane(33.0);
    lw_thrust thrust;
    lw_trial_wedge wedge;
    heard h = {0};
    lw_working working = pressure_listener(&h);
    working.row = NULL;
    double size = i < 2 ? 1.0 : 1e6;
    plane.height_m = 2.385 * size;
    plane.seismic.horizontal = 0.05;
    plane.water_depth_m = 1.3 * size;
    plane.surcharge_kpa = 3.0 * size;
    plane.layer_count = LW_SOIL_MAX;
    for (int k = 1; k < LW_SOIL_MAX; k++) plane.layer[k] = plane.layer[0];
    for (int k = 0; k < LW_SOIL_MAX; k++) {
      plane.layer[k].cohesion_kpa = k * 0.1 * size;
      plane.layer[k].bottom_m = k == LW_SOIL_MAX - 1 ? INFINITY : 0.3 * (k + 1) * size;
    }
    plane.load_count = LW_SITE_LOAD_MAX;
    for (int k = 0; k < LW_SITE_LOAD_MAX; k++)
      plane.load[k] = (lw_plane_load){
          .near_m = 0.1 * k * size, .far_m = (0.1 * k + 0.07) * size, .pressure_kpa = 2.0 * size};
    lw_earth_state state = i % 2 ? LW_PASSIVE : LW_ACTIVE;
    cr_expect_eq(lw_trial_wedge_thrust(state, &plane, &wedge, NULL, &working), LW_OK);
    lw_elastic push = lw_elastic_push_on(&plane, LW_LOAD_PRESSURE_DOUBLED);
    lw_elastic_record(&plane, LW_LOAD_PRESSURE_DOUBLED, &push, &working);
    cr_expect_eq(lw_at_rest_thrust(LW_AT_REST, &plane, &thrust, NULL, &working), LW_OK);
    cr_expect_eq(lw_coulomb_thrust(state, &plane, &thrust, NULL, &working), LW_OK);
    cr_expect(h.steps > 30 && h.incomplete == 0, "%d steps", h.steps);
  }
}
