/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>

#include "support.h"

/* A level push on the ground behind the wall, such as a post's, taken in by the wedge. */

static lw_plane pushed(double near_m, double push_kn_per_m) {
  lw_plane plane = pressure_plane(31.2);
  plane.wall_friction_rad = RAD(9.0);
  plane.batter_rad = RAD(-4.0);
  plane.load_count = 1;
  plane.load[0] = (lw_plane_load){.near_m = near_m, .far_m = near_m, .push_kn_per_m = push_kn_per_m};
  return plane;
}

static lw_trial_wedge wedge_of(const lw_plane *plane) {
  lw_trial_wedge wedge;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, plane, &wedge, NULL, NULL), LW_OK);
  return wedge;
}

/* The three forces close: level and upright sums of the body, written out without the search's own terms. */
Test(push, the_body_is_in_equilibrium) {
  lw_plane plane = pushed(0.4, 2.3);
  lw_trial_wedge wedge = wedge_of(&plane);
  double lean = plane.wall_friction_rad + plane.batter_rad;
  double p = wedge.thrust_kn_per_m, turn = wedge.plane_angle_rad - plane.layer[0].friction_rad;
  double reaction = (wedge.weight_kn_per_m - p * sin(lean)) / cos(turn);
  cr_expect_lt(fabs(p * cos(lean) - 2.3 - reaction * sin(turn)), 1e-9);
}

Test(push, raises_the_thrust_and_its_height) {
  double before = 0.0, height = 0.0;
  for (double push = 0.0; push < 4.1; push += 0.5) {
    lw_plane plane = pushed(0.4, push);
    lw_trial_wedge wedge = wedge_of(&plane);
    cr_expect_lt(before, wedge.thrust_kn_per_m);
    cr_expect_lt(height, wedge.height_of_action_m);
    before = wedge.thrust_kn_per_m;
    height = wedge.height_of_action_m;
  }
}

Test(push, works_only_from_its_place_on) {
  lw_plane bare = pressure_plane(31.2), far = pushed(9.0, 0.2), near = pushed(0.1, 0.2);
  bare.wall_friction_rad = near.wall_friction_rad;
  bare.batter_rad = near.batter_rad;
  double alone = wedge_of(&bare).thrust_kn_per_m;
  cr_expect_lt(fabs(wedge_of(&far).thrust_kn_per_m - alone), 1e-7);
  cr_expect_lt(alone + 0.05, wedge_of(&near).thrust_kn_per_m);
  cr_expect_not(lw_plane_is_plain(&near));
}

/* A push that is next to nothing raises the thrust by next to nothing; its share of the height is its share
 * of the thrust. */
Test(push, raises_the_height_by_its_share) {
  lw_plane bare = pushed(0.4, 0.0), touched = pushed(0.4, 1e-6);
  double height = wedge_of(&bare).height_of_action_m;
  cr_expect_lt(fabs(wedge_of(&touched).height_of_action_m - height), 1e-5);
}
