/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>

#include "support.h"

/* Cracks in soil with cohesion: what they take from the thrust, and the water that may stand in them. */

static bool same(double a, double b, double share) {
  return fabs(a - b) <= share * fmax(fabs(a), fabs(b)) + 1e-12;
}

static lw_plane cohesive(double friction_deg, double cohesion_kpa) {
  lw_plane plane = pressure_plane(friction_deg);
  plane.layer[0].cohesion_kpa = cohesion_kpa;
  return plane;
}

/* The wedge finds its crack from equilibrium alone; on a smooth upright wall it must be Rankine's. */
Test(crack, wedge_cracks_as_deep_as_rankine) {
  int held = 0;
  for (double phi = 12.3; phi < 40.0; phi += 6.1)
    for (double c = 0.7; c < 9.0; c += 1.9)
      for (double q = 0.0; q < 10.0; q += 4.3)
        for (double water = 0.41; water < 3.0; water += 0.9) {
          lw_plane plane = cohesive(phi, c);
          lw_thrust rankine;
          lw_trial_wedge wedge;
          plane.surcharge_kpa = q;
          plane.water_depth_m = water;
          cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &rankine, NULL, NULL), LW_OK);
          cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL), LW_OK);
          if (rankine.total_kn_per_m < 0.1) continue;
          held++;
          cr_expect(same(rankine.total_kn_per_m, wedge.thrust_kn_per_m, 1e-6), "phi %g c %g q %g: %.9g, %.9g",
                    phi, c, q, rankine.total_kn_per_m, wedge.thrust_kn_per_m);
          cr_expect(same(rankine.crack_depth_m, wedge.crack_depth_m, 1e-5), "phi %g c %g q %g: %g and %g",
                    phi, c, q, rankine.crack_depth_m, wedge.crack_depth_m);
        }
  cr_expect_lt(150, held, "%d held", held);
}

Test(crack, takes_away_pull_so_the_wedge_pushes_more) {
  lw_plane plane = cohesive(27.0, 4.0);
  lw_trial_wedge active, passive;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &active, NULL, NULL), LW_OK);
  cr_assert_eq(lw_trial_wedge_thrust(LW_PASSIVE, &plane, &passive, NULL, NULL), LW_OK);
  double h = plane.height_m, k = tan(RAD(45.0 - 13.5)),
         whole = 0.5 * 18.3 * h * h * k * k - 2.0 * 4.0 * h * k;
  cr_expect_lt(whole + 0.5, active.thrust_kn_per_m);
  cr_expect_lt(0.1, active.crack_depth_m);
  cr_expect(fabs(passive.crack_depth_m) < 1e-15);
  plane.layer[0].cohesion_kpa = 0.0;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &active, NULL, NULL), LW_OK);
  cr_expect(fabs(active.crack_depth_m) < 1e-15);
}

Test(crack, stiff_soil_does_not_push_by_wedge_either) {
  lw_plane plane = cohesive(28.0, 40.0);
  lw_thrust t;
  plane.crack = LW_CRACK_WET;
  cr_assert_eq(lw_trial_wedge_as_thrust(LW_ACTIVE, &plane, &t, NULL, NULL), LW_OK);
  cr_expect(fabs(t.total_kn_per_m) < 1e-12);
  cr_expect(same(t.crack_depth_m, plane.height_m, 1e-9));
  cr_expect(same(t.water_kn_per_m, 0.5 * 9.81 * plane.height_m * plane.height_m, 1e-9));
}

/* The water in a crack stays when more comes up from below. */
Test(crack, water_never_pushes_less_as_it_rises) {
  static const lw_crack cracks[] = {LW_CRACK_DRY, LW_CRACK_WET, LW_CRACK_TRIANGLE};
  for (int method = LW_PRESSURE_RANKINE; method <= LW_PRESSURE_WEDGE; method++)
    for (int i = 0; i < 3; i++) {
      double before = 0.0;
      for (int step = 0; step <= 40; step++) {
        lw_plane plane = cohesive(26.4, 5.3);
        lw_thrust t;
        plane.crack = cracks[i];
        plane.water_depth_m = plane.height_m * (1.0 - step / 40.0);
        const lw_pressure_routine *routine = lw_pressure_routine_of((lw_pressure_method)method);
        cr_assert_eq(routine->thrust(LW_ACTIVE, &plane, &t, NULL, NULL), LW_OK);
        double now = t.horizontal_kn_per_m + t.water_kn_per_m;
        cr_expect(now >= before - 1e-7, "%s, crack %d, water at %g: %g after %g", routine->slug, i,
                  plane.water_depth_m, now, before);
        before = now;
      }
    }
}

/* Soil that rises above the plane's top stands above water that reaches up to there. */
Test(crack, water_up_to_the_top_under_a_slope_is_no_step) {
  lw_plane plane = pressure_plane(33.0);
  lw_trial_wedge just_below, at_the_top;
  plane.slope_rad = RAD(21.0);
  plane.water_depth_m = 1e-7;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &just_below, NULL, NULL), LW_OK);
  plane.water_depth_m = 0.0;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &at_the_top, NULL, NULL), LW_OK);
  cr_expect(same(just_below.thrust_kn_per_m, at_the_top.thrust_kn_per_m, 1e-5));
  cr_expect_not(lw_plane_is_plain(&plane));
  plane.slope_rad = 0.0;
  cr_expect(lw_plane_is_plain(&plane));
}

static void sum_profile(const lw_thrust *t, double *soil, double *water) {
  *soil = *water = 0.0;
  for (int i = 1; i < t->profile_count; i++) {
    const lw_profile_point *a = &t->profile[i - 1], *b = &t->profile[i];
    *soil += 0.5 * (a->soil_kpa + b->soil_kpa) * (b->depth_m - a->depth_m);
    *water += 0.5 * (a->water_kpa + b->water_kpa) * (b->depth_m - a->depth_m);
  }
}

Test(crack, profile_has_it_and_the_water_in_it) {
  for (double c = 2.3; c < 50.0; c *= 1.9)
    for (double depth = 0.0; depth < 2.6; depth += 0.37)
      for (int wet = 0; wet < 2; wet++) {
        lw_plane plane = cohesive(25.3, c);
        lw_thrust t;
        double soil, water;
        plane.crack = wet ? LW_CRACK_WET : LW_CRACK_DRY;
        plane.water_depth_m = depth;
        cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &t, NULL, NULL), LW_OK);
        sum_profile(&t, &soil, &water);
        cr_expect(same(soil, t.total_kn_per_m, 1e-9), "c %g water at %g: %g and %g", c, depth, soil,
                  t.total_kn_per_m);
        cr_expect(same(water, t.water_kn_per_m, 1e-9), "c %g water at %g: %g and %g", c, depth, water,
                  t.water_kn_per_m);
        cr_expect_eq(t.profile_count % 2, 0);
        cr_expect(fabs(t.profile[0].depth_m) < 1e-15);
        cr_expect(same(t.profile[t.profile_count - 1].depth_m, plane.height_m, 1e-12));
      }
}

/* As many stretches and cracks as there can be find room. */
Test(crack, the_profile_has_room) {
  lw_plane plane = cohesive(22.0, 1.0);
  lw_thrust t;
  plane.layer_count = LW_SOIL_MAX;
  for (int i = 0; i < LW_SOIL_MAX; i++) {
    plane.layer[i] = plane.layer[0];
    plane.layer[i].bottom_m = i < LW_SOIL_MAX - 1 ? 0.4 * (i + 1) : INFINITY;
    plane.layer[i].cohesion_kpa = 2.7 * (i + 1);
  }
  plane.water_depth_m = 0.95;
  cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &t, NULL, NULL), LW_OK);
  cr_expect_lt(2 * LW_SOIL_MAX - 1, t.profile_count);
  cr_expect_leq(t.profile_count, LW_PROFILE_MAX);
}

/* Soil that lies on a battered back, in front of a crack down to the foot, stands between back and crack and
 * rubs on both: W cos phi / sin(phi + delta + theta), however great the cohesion. On an upright back there is
 * no such soil. */
Test(crack, down_to_the_foot_leaves_what_lies_on_the_back) {
  for (double theta = 0.0; theta < 25.0; theta += 6.0)
    for (double delta = 0.0; delta < 21.0; delta += 10.0)
      for (double c = 60.0; c < 400.0; c *= 2.3) {
        lw_plane plane = cohesive(31.0, c);
        lw_trial_wedge wedge;
        double height = plane.height_m, lies = 0.5 * 18.3 * height * height * tan(RAD(theta));
        plane.batter_rad = RAD(theta);
        plane.wall_friction_rad = RAD(delta);
        cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL), LW_OK);
        double pushes = lies * cos(RAD(31.0)) / sin(RAD(31.0 + delta + theta));
        cr_expect(fabs(wedge.thrust_kn_per_m - pushes) < 1e-5 * (1.0 + pushes), "%g deg, %g: %g and %g",
                  theta, c, wedge.thrust_kn_per_m, pushes);
      }
}
