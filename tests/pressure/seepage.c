/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/lateral.h>
#include <math.h>

#include "pressure/seepage.h"

/* Rain that seeps to an upright drain: the head by its own equation and edges, the pore force by quadrature,
 * the push by its limits. No published number was at hand: all of this is derived. */

static const double PI = 3.14159265358979323846;
static const double H = 1.37;

Test(seepage, head_keeps_to_its_edges) {
  for (int i = 1; i < 20; i++) {
    double y = H * i / 20.0, x = 0.31 * i;
    cr_expect_lt(fabs(lw_seepage_head(H, 0.0, y) - y), 1e-3 * H, "open to the air on the drain");
    cr_expect_lt(fabs(lw_seepage_head(H, x, H) - H), 1e-9, "rain keeps the ground wet");
    double up = lw_seepage_head(H, x, 1e-4), floor = lw_seepage_head(H, x, 0.0);
    cr_expect_lt(fabs(up - floor) / 1e-4, 1e-3, "nothing passes the floor");
    cr_expect_lt(lw_seepage_head(H, x, y), H + 1e-12);
    cr_expect_gt(lw_seepage_head(H, x, y), y - 1e-9, "no suction");
  }
  cr_expect_lt(fabs(lw_seepage_head(H, 20.0 * H, 0.4) - H), 1e-9, "far away it stands");
}

/* Laplace's equation by differences. */
Test(seepage, head_is_harmonic) {
  const double d = 1e-3;
  for (int i = 1; i < 8; i++) {
    for (int j = 1; j < 8; j++) {
      double x = 0.2 * i, y = H * j / 8.0;
      double sum = lw_seepage_head(H, x + d, y) + lw_seepage_head(H, x - d, y) +
                   lw_seepage_head(H, x, y + d) + lw_seepage_head(H, x, y - d) -
                   4.0 * lw_seepage_head(H, x, y);
      cr_expect_lt(fabs(sum / (d * d)), 1e-4, "at %.2f, %.2f: %.3g", x, y, sum / (d * d));
    }
  }
}

/* By the middles of many short pieces: at the foot the pressure rises like x log x. */
static double summed(double angle_rad) {
  enum { PIECES = 4000 };
  double length = H / sin(angle_rad), sum = 0.0;
  for (int i = 0; i < PIECES; i++) {
    double along = length * (i + 0.5) / PIECES, y = along * sin(angle_rad);
    sum += lw_seepage_head(H, along * cos(angle_rad), y) - y;
  }
  return sum * length / PIECES;
}

Test(seepage, pore_force_is_the_integral_along_the_plane) {
  for (int degrees = 15; degrees <= 75; degrees += 10) {
    double angle = degrees * PI / 180.0, closed = lw_seepage_pore_area(H, angle), integral = summed(angle);
    cr_expect_lt(fabs(closed - integral), 1e-5 * H * H, "%d deg: %.8g, %.8g", degrees, closed, integral);
    cr_expect_lt(closed, 0.5 * H * H / sin(angle), "less than standing water");
  }
  cr_expect_lt(lw_seepage_pore_area(H, 0.5 * PI), 1e-7, "none on the drain itself");
  cr_expect_lt(fabs(lw_seepage_pore_area(H, 1e-3) * 1e-3 - 0.5 * H * H), 1e-2, "flat, it is standing water");
}

static lw_plane plane_of(double friction_deg, double delta_deg, double load_kpa) {
  return (lw_plane){.height_m = H,
                    .slope_run_m = INFINITY,
                    .wall_friction_rad = delta_deg * PI / 180.0,
                    .surcharge_kpa = load_kpa,
                    .layer_count = 1,
                    .layer = {{.bottom_m = INFINITY,
                               .friction_rad = friction_deg * PI / 180.0,
                               .unit_weight_kn_per_m3 = 18.4,
                               .saturated_unit_weight_kn_per_m3 = 20.3}},
                    .water_depth_m = INFINITY,
                    .water_unit_weight_kn_per_m3 = 9.81};
}

Test(seepage, between_dry_and_blocked) {
  for (int friction = 16; friction <= 44; friction += 4) {
    for (int delta = 0; delta <= friction; delta += friction / 2) {
      lw_plane plane = plane_of(friction, delta, 2.7);
      lw_seepage s;
      cr_assert_eq(lw_seepage_thrust(&plane, &s, NULL, NULL), LW_OK);
      cr_expect_lt(s.dry_kn_per_m, s.seeping_kn_per_m, "%d, %d", friction, delta);
      cr_expect_lt(s.seeping_kn_per_m, s.blocked_kn_per_m, "%d, %d: %g, %g", friction, delta,
                   s.seeping_kn_per_m, s.blocked_kn_per_m);
      cr_expect_lt(s.plane_angle_rad, 0.5 * PI);
    }
  }
}

/* Water without weight: Coulomb's wedge of saturated soil. No friction: a fluid as heavy as the soil, as
 * if blocked. Twice as high: four times the push. */
Test(seepage, limits) {
  lw_plane light = plane_of(31.0, 11.0, 0.0), fluid = plane_of(1e-6, 0.0, 0.0),
           high = plane_of(31.0, 11.0, 0.0);
  lw_seepage s, t;
  double k;
  lw_wall_angles angles = {.friction_rad = 31.0 * PI / 180.0, .wall_friction_rad = 11.0 * PI / 180.0};
  light.water_unit_weight_kn_per_m3 = 1e-9;
  cr_assert_eq(lw_seepage_thrust(&light, &s, NULL, NULL), LW_OK);
  cr_assert_eq(lw_coulomb_coefficient(LW_ACTIVE, &angles, &k, NULL), LW_OK);
  double expected = k * cos(angles.wall_friction_rad) * 20.3 * H * H / 2.0;
  cr_expect_lt(fabs(s.seeping_kn_per_m / expected - 1.0), 1e-7);
  cr_assert_eq(lw_seepage_thrust(&fluid, &s, NULL, NULL), LW_OK);
  cr_expect_lt(fabs(s.seeping_kn_per_m / (20.3 * H * H / 2.0) - 1.0), 1e-4);
  cr_expect_lt(fabs(s.seeping_kn_per_m / s.blocked_kn_per_m - 1.0), 1e-4);
  cr_assert_eq(lw_seepage_thrust(&high, &s, NULL, NULL), LW_OK);
  high.height_m *= 2.0;
  cr_assert_eq(lw_seepage_thrust(&high, &t, NULL, NULL), LW_OK);
  cr_expect_lt(fabs(t.seeping_kn_per_m / s.seeping_kn_per_m - 4.0), 1e-6);
  cr_expect_lt(fabs(t.seeping_k - s.seeping_k), 1e-7);
}

Test(seepage, only_where_there_is_a_form) {
  lw_plane sloping = plane_of(30.0, 0.0, 0.0), sticky = sloping, leaning = sloping, layered = sloping;
  sloping.slope_rad = 0.1;
  sticky.layer[0].cohesion_kpa = 1.0;
  leaning.batter_rad = -0.05;
  layered.layer[1] = layered.layer[0];
  layered.layer[0].bottom_m = 0.5;
  layered.layer_count = 2;
  const lw_plane *const planes[] = {&sloping, &sticky, &leaning, &layered};
  for (size_t i = 0; i < sizeof planes / sizeof *planes; i++) {
    lw_seepage s = {.dry_k = -1.0};
    lw_error error = {0};
    cr_expect_eq(lw_seepage_thrust(planes[i], &s, &error, NULL), LW_NO_SOLUTION, "plane %zu", i);
    cr_expect_eq(error.reason, LW_REASON_NO_SEEPAGE_FORM);
    cr_expect_lt(s.dry_k, 0.0, "unchanged on failure");
  }
}

/* The greatest of many wedges, each by its angle: the solver knows the cotangent only. */
static double greatest_by_angles(const lw_plane *plane) {
  enum { ANGLES = 20000 };
  const lw_layer *soil = &plane->layer[0];
  double phi = soil->friction_rad, delta = plane->wall_friction_rad, most = 0.0;
  double whole = 0.5 * soil->saturated_unit_weight_kn_per_m3 * plane->height_m * plane->height_m +
                 plane->surcharge_kpa * plane->height_m;
  for (int i = 1; i < ANGLES; i++) {
    double angle = 0.5 * PI * i / ANGLES, closing = cos(angle - phi - delta);
    double pores = plane->water_unit_weight_kn_per_m3 * lw_seepage_pore_area(plane->height_m, angle);
    double thrust = (whole / tan(angle) * sin(angle - phi) + pores * sin(phi)) / closing;
    if (closing > 1e-9) most = fmax(most, thrust);
  }
  return most;
}

/* Any soil, load and height, soil hardly heavier than water and a back rougher than 45 degrees included. */
Test(seepage, no_wedge_pushes_more) {
  for (int i = 0; i < 60; i++) {
    lw_plane plane = plane_of(8.0 + 38.0 * ((i * 37) % 60) / 60.0, 0.0, 12.0 * ((i * 11) % 7) / 7.0);
    plane.wall_friction_rad = plane.layer[0].friction_rad * ((i * 7) % 9) / 8.0;
    plane.height_m = 0.05 + 3.0 * ((i * 13) % 20) / 20.0;
    plane.layer[0].saturated_unit_weight_kn_per_m3 = i % 10 == 0 ? 9.9 : 11.0 + 12.0 * ((i * 17) % 11) / 11.0;
    plane.layer[0].unit_weight_kn_per_m3 = plane.layer[0].saturated_unit_weight_kn_per_m3 - 0.5;
    lw_seepage s;
    double along = 0.0, most = greatest_by_angles(&plane);
    cr_assert_eq(lw_seepage_along(&plane, &along, NULL, NULL), LW_OK, "plane %d", i);
    cr_expect(along > most * (1.0 - 1e-12) && along < most * (1.0 + 1e-6), "plane %d: %.9g, %.9g", i, along,
              most);
    cr_assert_eq(lw_seepage_thrust(&plane, &s, NULL, NULL), LW_OK);
    cr_expect_lt(fabs(s.seeping_kn_per_m - along * cos(plane.wall_friction_rad)), 1e-12 * along);
  }
}
