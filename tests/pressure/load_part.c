/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>

#include "../checks/random_wall.h"
#include "support.h"

/* What a uniform load adds to a thrust is what the thrust has more with it than without: also where cohesion
 * holds soil that only the load makes push. */

enum { PLANES = 3000 / RANDOM_SHARE };

static lw_plane random_plane(dice *d) {
  lw_plane plane = pressure_plane(dice_between(d, 15.0, 44.0));
  double bottom = 0.0;
  plane.height_m = dice_between(d, 0.2, 3.0);
  plane.layer_count = 1 + dice_pick(d, 3);
  for (int i = 0; i < plane.layer_count; i++) {
    bottom += dice_between(d, 0.05, 1.2);
    plane.layer[i] = plane.layer[0];
    plane.layer[i].bottom_m = i + 1 < plane.layer_count ? bottom : INFINITY;
    plane.layer[i].friction_rad = RAD(dice_between(d, 15.0, 44.0));
    plane.layer[i].cohesion_kpa = dice_pick(d, 3) ? dice_between(d, 0.0, 12.0) : 0.0;
    plane.layer[i].unit_weight_kn_per_m3 = dice_between(d, 14.0, 20.0);
    plane.layer[i].saturated_unit_weight_kn_per_m3 = plane.layer[i].unit_weight_kn_per_m3 + 1.5;
  }
  if (dice_pick(d, 2)) plane.water_depth_m = dice_between(d, 0.0, 2.0);
  if (dice_pick(d, 2)) plane.slope_rad = RAD(dice_between(d, 0.0, 14.0));
  if (dice_pick(d, 2)) plane.wall_friction_rad = RAD(dice_between(d, 0.0, 15.0));
  plane.surcharge_kpa = dice_between(d, 0.5, 30.0);
  return plane;
}

/* Of the profile: the load's part of the soil's pressure, where both are straight between the points. */
static double area_of_load(const lw_thrust *t) {
  double sum = 0.0;
  for (int i = 0; i + 1 < t->profile_count; i += 2) {
    const lw_profile_point *a = &t->profile[i], *b = a + 1;
    cr_expect_leq(a->surcharge_kpa, a->soil_kpa + 1e-9);
    cr_expect_leq(b->surcharge_kpa, b->soil_kpa + 1e-9);
    sum += 0.5 * (a->surcharge_kpa + b->surcharge_kpa) * (b->depth_m - a->depth_m);
  }
  return sum;
}

static double moment_of(const lw_thrust *t) {
  return t->total_kn_per_m * t->height_of_action_m;
}

/* A curved diagram is integrated by ten points a piece, whose last digits are not those of another piece. */
static bool near(double a, double b, double whole) {
  return fabs(a - b) <= 1e-7 * (1.0 + whole);
}

static int expect_difference(lw_pressure_method method, const lw_plane *plane) {
  const lw_pressure_routine *routine = lw_pressure_routine_of(method);
  lw_plane bare = *plane, more = *plane;
  lw_thrust with, without, heavier;
  bare.surcharge_kpa = 0.0;
  more.surcharge_kpa *= 1.1;
  if (routine->thrust(LW_ACTIVE, plane, &with, NULL, NULL) != LW_OK) return 0;
  cr_assert_eq(routine->thrust(LW_ACTIVE, &bare, &without, NULL, NULL), LW_OK);
  cr_assert_eq(routine->thrust(LW_ACTIVE, &more, &heavier, NULL, NULL), LW_OK);
  double load = with.surcharge_kn_per_m, turn = load * with.surcharge_height_m;
  cr_expect(near(load, with.total_kn_per_m - without.total_kn_per_m, with.total_kn_per_m),
            "%s: %.9g of %.9g and %.9g", routine->slug, load, with.total_kn_per_m, without.total_kn_per_m);
  cr_expect(near(turn, moment_of(&with) - moment_of(&without), moment_of(&with)),
            "%s: moment %.9g of %.9g and %.9g", routine->slug, turn, moment_of(&with), moment_of(&without));
  cr_expect(with.surcharge_height_m >= 0.0 && with.surcharge_height_m <= plane->height_m);
  cr_expect_leq(moment_of(&with), moment_of(&heavier) + 1e-12, "%s: more load turns less", routine->slug);
  bool straight = fabs(plane->slope_rad) < 1e-12 || method == LW_PRESSURE_COULOMB;
  if (straight) cr_expect(near(area_of_load(&with), load, load), "%s", routine->slug);
  return 1;
}

Test(load_part, is_what_the_load_adds) {
  dice d = {905};
  int tried = 0;
  for (int i = 0; i < PLANES; i++) {
    lw_plane plane = random_plane(&d);
    tried += expect_difference(LW_PRESSURE_RANKINE, &plane);
    tried += expect_difference(LW_PRESSURE_COULOMB, &plane);
  }
  cr_expect_lt(PLANES, tried);
}

/* By hand: Ka 0.2432 of 37.5 deg, 2c sqrt Ka 5.7602 kPa. Soil alone: 0.1801 x 20 x 0.12^2/2 = 0.0259 kN/m in
 * the upper layer at 0.331 m, none below. With 17.39 kPa the upper layer has 0.4019 kN/m, and what stands
 * below begins to push by less than nothing until its weight helps: 0.4165 kN/m in all, 0.1410 kN m/m. */
Test(load_part, of_sand_over_soil_with_cohesion) {
  lw_plane plane = pressure_plane(44.0);
  lw_thrust t;
  plane.height_m = 0.411;
  plane.layer_count = 2;
  plane.layer[1] = plane.layer[0];
  plane.layer[0].bottom_m = 0.12;
  plane.layer[0].unit_weight_kn_per_m3 = 20.0;
  plane.layer[1].friction_rad = RAD(37.5);
  plane.layer[1].cohesion_kpa = 5.84;
  plane.layer[1].unit_weight_kn_per_m3 = 18.5;
  plane.surcharge_kpa = 17.39;
  cr_assert_eq(lw_rankine_thrust(LW_ACTIVE, &plane, &t, NULL, NULL), LW_OK);
  cr_expect(fabs(t.total_kn_per_m - 0.41651) < 1e-5);
  cr_expect(fabs(moment_of(&t) - 0.1410) < 5e-5);
  cr_expect(fabs(t.surcharge_kn_per_m - (0.41651 - 0.02595)) < 2e-5);
}
