/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/ground.h>
#include <math.h>

#include "slip/search.h"

/* Slips along a circle: limits, equilibrium, and a search against a far denser one. */

#define DEG 57.295779513082320877

static lw_slip_soil soil_of(double phi_deg, double c_kpa) {
  return (lw_slip_soil){phi_deg / DEG, c_kpa, 18.35, 20.15, -INFINITY, 0.0};
}

static lw_slip_ground plain(lw_slip_soil soil) {
  return (lw_slip_ground){.below = soil,
                          .floor_y_m = -INFINITY,
                          .raised_x_m = INFINITY,
                          .water = {0.0, -INFINITY, 0.0, -INFINITY, 9.81}};
}

/* A block wall 0.95 m high and `depth` deep, bedded 0.15 m, sand behind and loam below. */
static lw_slip_ground wall_of(double depth, double front_water, double rear_water) {
  lw_slip_ground g = plain(soil_of(24.5, 0.0));
  double top = 0.9;
  g.corner_count = 4;
  g.corner[0] = (lw_corner){-8.0, 0.15};
  g.corner[1] = (lw_corner){depth, 0.15};
  g.corner[2] = (lw_corner){depth, top};
  g.corner[3] = (lw_corner){9.0, top};
  g.soil_count = 1;
  g.soil[0] = soil_of(31.0, 0.0);
  g.soil[0].bottom_y_m = 0.0;
  g.body_count = 4;
  g.body[1] = (lw_corner){depth, 0.0};
  g.body[2] = (lw_corner){depth, 0.95};
  g.body[3] = (lw_corner){0.0, 0.95};
  g.body_kn_per_m3 = 22.5;
  g.pad_rear_m = depth;
  g.load_count = 1;
  g.load[0] = (lw_slip_load){depth, 9.0, 2.5, 0.0, 0.0};
  g.water = (lw_slip_water){0.0, front_water, depth, rear_water, 9.81};
  g.box = (lw_slip_box){-4.0, -1e-3, depth + 1e-3, 6.0, 0.0, 0.0};
  return g;
}

static double searched(const lw_slip_ground *ground, lw_slip_method method) {
  lw_slip slip;
  lw_slip_search(ground, method, &slip);
  cr_assert_eq(slip.status, LW_OK);
  cr_expect_lt(slip.circles, 1500, "%d circles", slip.circles);
  return method == LW_SLIP_BISHOP ? slip.bishop : slip.ordinary;
}

static lw_slip_circle circle_through(double exit_x, double exit_y, double entry_x, double entry_y,
                                     double sag) {
  double dx = entry_x - exit_x, dy = entry_y - exit_y, half = 0.5 * hypot(dx, dy);
  double up = (half * half - sag * sag) / (2.0 * sag);
  return (lw_slip_circle){0.5 * (exit_x + entry_x) - up * dy / (2.0 * half),
                          0.5 * (exit_y + entry_y) + up * dx / (2.0 * half),
                          up + sag,
                          exit_x,
                          exit_y,
                          entry_x,
                          entry_y};
}

/* A great circle that hardly dips into a long slope without cohesion is the plane along it. */
Test(checks, slip_infinite_slope_limit) {
  for (double beta = 8.0; beta <= 29.0; beta += 7.0) {
    lw_slip_ground g = plain(soil_of(30.5, 0.0));
    double t = tan(beta / DEG);
    g.corner_count = 2;
    g.corner[0] = (lw_corner){-50.0, -50.0 * t};
    g.corner[1] = (lw_corner){50.0, 50.0 * t};
    g.box = (lw_slip_box){-20.0, -1.0, 1.0, 20.0, 0.0, 0.0};
    double plane = lw_slip_infinite(&g.below, beta / DEG, 0.4, 0.0, NULL);
    lw_slip_circle flat = circle_through(-10.0, -10.0 * t, 10.0, 10.0 * t, 0.02);
    lw_slip slip;
    cr_assert_eq(lw_slip_of_circle(&g, &flat, 40, &slip, NULL), LW_OK);
    cr_expect_lt(fabs(slip.bishop / plane - 1.0), 2e-4, "%g: %g and %g", beta, slip.bishop, plane);
    cr_expect_lt(fabs(slip.ordinary / plane - 1.0), 2e-4);
    double found = searched(&g, LW_SLIP_BISHOP);
    cr_expect_lt(plane * (1.0 - 1e-6), found);
    cr_expect_lt(found, plane * 1.005, "%g: %g and %g", beta, found, plane);
  }
}

/* A pore ratio on a great flat circle is one on the plane: u = ru γ z, which is γw m z cos²β there. */
Test(checks, slip_pore_ratio_on_a_long_slope) {
  double before = INFINITY;
  for (double ru = 0.0; ru < 0.5; ru += 0.1) {
    double beta = 14.0 / DEG, t = tan(beta);
    lw_slip_ground g = plain(soil_of(30.5, 1.5));
    lw_slip slip;
    g.corner_count = 2;
    g.corner[0] = (lw_corner){-500.0, -500.0 * t};
    g.corner[1] = (lw_corner){500.0, 500.0 * t};
    g.pore_ratio = ru;
    lw_slip_circle flat = circle_through(-100.0, -100.0 * t, 100.0, 100.0 * t, 1.5);
    cr_assert_eq(lw_slip_of_circle(&g, &flat, 64, &slip, NULL), LW_OK);
    /* The mean depth of a segment of a parabola is two thirds of its sag, along the upright 1/cos of it. */
    double z = 1.5 / cos(beta) * 2.0 / 3.0, weight = g.below.unit_weight_kn_per_m3 * z;
    double lifted = ru * weight / pow(cos(beta), 2.0);
    double plane = lw_slip_infinite(&g.below, beta, z, lifted, NULL);
    cr_expect_lt(fabs(slip.bishop / plane - 1.0), 2e-3, "%g: %g and %g", ru, slip.bishop, plane);
    cr_expect_lt(slip.bishop, before);
    before = slip.bishop;
  }
}

/* Without friction both methods are cu La R/(W d), here with the segment of the circle as a body. */
Test(checks, slip_undrained) {
  double cu = 17.3, half = 6.0, sag = 2.5, t = tan(21.0 / DEG);
  lw_slip_ground g = plain(soil_of(0.0, cu));
  g.corner_count = 2;
  g.corner[0] = (lw_corner){-50.0, -50.0 * t};
  g.corner[1] = (lw_corner){50.0, 50.0 * t};
  lw_slip_circle c = circle_through(-half, -half * t, half, half * t, sag);
  double chord = 2.0 * hypot(half, half * t), turn = 2.0 * asin(0.5 * chord / c.radius_m);
  double area = 0.5 * c.radius_m * c.radius_m * (turn - sin(turn));
  double from_centre = pow(chord, 3.0) / (12.0 * area);
  double arm = from_centre * sin(21.0 / DEG);
  double expected = cu * turn * c.radius_m / (area * 18.35 * arm / c.radius_m);
  lw_slip slip;
  cr_assert_eq(lw_slip_of_circle(&g, &c, 64, &slip, NULL), LW_OK);
  cr_expect_lt(fabs(slip.ordinary / expected - 1.0), 1e-3, "%.8g and %.8g", slip.ordinary, expected);
  cr_expect_lt(fabs(slip.bishop / slip.ordinary - 1.0), 1e-9);
}

/* More slices change little, and what is sliced weighs what it should. */
Test(checks, slip_slices_converge) {
  lw_slip_ground g = wall_of(0.62, 0.0, 0.5);
  lw_slip slip, fine;
  lw_slip_slices list;
  lw_slip_search(&g, LW_SLIP_BISHOP, &slip);
  cr_assert_eq(slip.status, LW_OK);
  cr_assert_eq(lw_slip_of_circle(&g, &slip.circle, 64, &fine, &list), LW_OK);
  cr_expect_lt(fabs(fine.bishop / slip.bishop - 1.0), 2e-3);
  cr_expect_lt(fabs(fine.ordinary / slip.ordinary - 1.0), 3e-3);
  double width = 0.0, weight = 0.0;
  for (int i = 0; i < list.count; i++) {
    width += list.slice[i].width_m;
    weight += list.slice[i].weight_kn_per_m;
  }
  cr_expect_lt(fabs(width - (slip.circle.entry_x_m - slip.circle.exit_x_m)), 1e-9);
  cr_expect_lt(0.62 * 0.95 * 22.5, weight);
}

/* A slice lies in one layer, so few slices across strong soil above weak tell what many tell. */
Test(checks, slip_slices_follow_the_layers) {
  lw_slip_ground g = wall_of(0.4, -INFINITY, -INFINITY);
  g.soil[0] = soil_of(39.5, 5.0);
  g.soil[0].bottom_y_m = 0.0;
  g.below = soil_of(10.0, 0.0);
  for (double entry = 1.6; entry < 1.7; entry += 0.01) {
    lw_slip_circle c = circle_through(-2.5, 0.15, entry, 0.9, 1.1);
    lw_slip few, many;
    cr_assert_eq(lw_slip_of_circle(&g, &c, 16, &few, NULL), LW_OK);
    cr_assert_eq(lw_slip_of_circle(&g, &c, 64, &many, NULL), LW_OK);
    cr_expect_lt(fabs(few.bishop / many.bishop - 1.0), 8e-3, "%g: %g and %g", entry, few.bishop, many.bishop);
  }
}

/* A line load acts on the slope under it, wherever the edges of slices fall. */
Test(checks, slip_line_load_is_smooth) {
  lw_slip_ground g = wall_of(0.4, -INFINITY, -INFINITY);
  lw_slip before, slip;
  g.load_count = 2;
  g.load[1] = (lw_slip_load){1.5, 1.5, 0.0, 30.0, 0.0};
  for (int i = 0; i < 30; i++) {
    lw_slip_circle c = circle_through(-1.5, 0.15, 1.55 + 0.002 * i, 0.9, 0.75);
    cr_assert_eq(lw_slip_of_circle(&g, &c, 20, &slip, NULL), LW_OK);
    if (i > 0) cr_expect_lt(fabs(slip.bishop / before.bishop - 1.0), 4e-3, "%d", i);
    before = slip;
  }
}

/* The wall is heavier than its soil by so much, and no circle cuts it. */
Test(checks, slip_circles_pass_below_the_wall) {
  lw_slip_ground g = wall_of(0.5, -INFINITY, -INFINITY);
  lw_slip slip, cut;
  lw_slip_search(&g, LW_SLIP_BISHOP, &slip);
  cr_assert_eq(slip.status, LW_OK);
  for (int i = 0; i < 2; i++) {
    double r = hypot(g.body[i].x_m - slip.circle.centre_x_m, g.body[i].y_m - slip.circle.centre_y_m);
    cr_expect_lt(r, slip.circle.radius_m + 1e-6);
  }
  lw_slip_circle through = circle_through(-0.2, 0.15, 1.4, 0.9, 0.05);
  cr_expect_eq(lw_slip_of_circle(&g, &through, 20, &cut, NULL), LW_NO_SOLUTION);
}

/* Brute force over a grid forty times as dense finds nothing much worse. */
static double brute(const lw_slip_ground *g) {
  double least = INFINITY;
  lw_slip slip;
  for (double exit = 0.001; exit < 4.0; exit *= 1.25)
    for (double entry = 0.002; entry < 5.0; entry *= 1.25)
      for (double sag = 0.02; sag < 4.0; sag *= 1.06) {
        double ex = g->box.exit_to_m - exit, en = g->box.entry_from_m + entry;
        lw_slip_circle c = circle_through(ex, 0.15, en, 0.9, sag);
        if (lw_slip_of_circle(g, &c, 16, &slip, NULL) == LW_OK) least = fmin(least, slip.bishop);
      }
  return least;
}

Test(checks, slip_search_finds_the_least) {
  double depth[] = {0.3, 0.62, 0.9};
  for (int i = 0; i < 3; i++) {
    lw_slip_ground g = wall_of(depth[i], i == 1 ? 0.0 : -INFINITY, i == 1 ? 0.9 : -INFINITY);
    double found = searched(&g, LW_SLIP_BISHOP), grid = brute(&g);
    cr_expect_lt(found, grid * 1.01, "depth %g: %g, and by brute force %g", depth[i], found, grid);
  }
}

/* Ending early tells only that it is not below: never of a wall that is, and of a wall far above always. */
Test(checks, slip_search_ends_early_when_far_above) {
  for (double depth = 0.3; depth < 0.95; depth += 0.1) {
    lw_slip_ground g = wall_of(depth, -INFINITY, -INFINITY);
    double least = searched(&g, LW_SLIP_BISHOP), at_least;
    lw_slip slip = {.circles = -1};
    lw_slip_aim aim = {.enough = least / 4.0};
    cr_expect(!lw_slip_search_below(&g, LW_SLIP_BISHOP, &aim, &at_least, &slip));
    cr_expect_eq(slip.circles, -1);
    cr_expect(at_least >= aim.enough && at_least <= least, "%g of %g", at_least, least);
    aim.enough = least;
    cr_expect(lw_slip_search_below(&g, LW_SLIP_BISHOP, &aim, &at_least, &slip));
    cr_expect_eq(slip.bishop, least);
    cr_expect(at_least > 0.5 * least && at_least <= least, "%g of %g", at_least, least);
    /* Outdone it is only asked whether it has a circle: ground that has none still says so. */
    aim = (lw_slip_aim){.enough = INFINITY, .outdone = true};
    cr_expect(!lw_slip_search_below(&g, LW_SLIP_BISHOP, &aim, &at_least, &slip));
    g.floor_y_m = 10.0;
    cr_expect(lw_slip_search_below(&g, LW_SLIP_BISHOP, &aim, &at_least, &slip));
    cr_expect(slip.status != LW_OK && at_least <= 0.0);
  }
}

/* Water, load and earthquake make it worse; friction, cohesion and depth better. */
Test(checks, slip_monotony) {
  lw_slip_ground g = wall_of(0.5, -INFINITY, -INFINITY);
  double now = searched(&g, LW_SLIP_BISHOP), ordinary = searched(&g, LW_SLIP_ORDINARY);
  cr_expect_lt(ordinary, now);
  lw_slip_ground wet = wall_of(0.5, 0.0, 0.9), shaken = g, loaded = g, rough = g, stiff = g;
  shaken.seismic_horizontal = 0.15;
  loaded.load[0].pressure_kpa = 12.0;
  rough.below.friction_rad *= 1.2;
  stiff.below.cohesion_kpa = 3.0;
  cr_expect_lt(searched(&wet, LW_SLIP_BISHOP), now * 0.95);
  cr_expect_lt(searched(&shaken, LW_SLIP_BISHOP), now * 0.95);
  cr_expect_lt(searched(&loaded, LW_SLIP_BISHOP), now * 0.99);
  cr_expect_lt(now * 1.02, searched(&rough, LW_SLIP_BISHOP));
  cr_expect_lt(now * 1.05, searched(&stiff, LW_SLIP_BISHOP));
}

/* Water level with the toe does not stand above a slope that falls away from it. */
Test(checks, slip_water_runs_off_a_falling_front) {
  lw_slip_ground g = wall_of(0.6, -0.5, -0.5), wet = wall_of(0.6, 0.0, 0.0);
  g.corner[0].y_m = wet.corner[0].y_m = -1.2;
  double dry = searched(&g, LW_SLIP_BISHOP), level = searched(&wet, LW_SLIP_BISHOP);
  cr_expect_lt(level, dry);
  cr_expect_lt(0.5 * dry, level, "%g and %g", level, dry);
}

/* Scaled in length with cohesion alike, the factor stays. */
Test(checks, slip_scale) {
  lw_slip_ground g = wall_of(0.5, 0.0, 0.6), big = g;
  double k = 7.3;
  for (int i = 0; i < g.corner_count; i++)
    big.corner[i] = (lw_corner){k * g.corner[i].x_m, k * g.corner[i].y_m};
  for (int i = 0; i < g.body_count; i++) big.body[i] = (lw_corner){k * g.body[i].x_m, k * g.body[i].y_m};
  big.pad_rear_m *= k;
  big.load[0] = (lw_slip_load){k * g.load[0].from_x_m, k * g.load[0].to_x_m, k * 2.5, 0.0, 0.0};
  big.water = (lw_slip_water){0.0, 0.0, k * 0.5, k * 0.6, 9.81};
  big.box = (lw_slip_box){-4.0 * k, -1e-3 * k, k * g.box.entry_from_m, 6.0 * k, 0.0, 0.0};
  double a = searched(&g, LW_SLIP_BISHOP), b = searched(&big, LW_SLIP_BISHOP);
  cr_expect_lt(fabs(a / b - 1.0), 1e-6, "%.9g and %.9g", a, b);
}

/* A footing in the ground loads what slips below it, and nothing that slips above. */
Test(checks, slip_load_in_the_ground) {
  lw_slip_ground g = wall_of(0.5, -INFINITY, -INFINITY);
  lw_slip_circle c = circle_through(-0.7, 0.15, 1.5, 0.9, 0.62);
  double centre = c.centre_x_m, at = 1.2, dx = at - centre;
  double depth = 0.9 - (c.centre_y_m - sqrt(c.radius_m * c.radius_m - dx * dx));
  const lw_slip_load strip = {at, at + 1e-3, 9000.0, 0.0, 0.0}, line = {at, at, 0.0, 9.0, 0.0};
  double bare, on[2], above[2], below[2];
  lw_slip slip;
  cr_assert_eq(lw_slip_of_circle(&g, &c, 40, &slip, NULL), LW_OK);
  bare = slip.bishop;
  g.load_count = 2;
  for (int i = 0; i < 2; i++) {
    double *out[] = {&on[i], &above[i], &below[i]}, deep[] = {0.0, depth - 0.05, depth + 0.05};
    for (int k = 0; k < 3; k++) {
      g.load[1] = i == 0 ? strip : line;
      g.load[1].below_m = deep[k];
      cr_assert_eq(lw_slip_of_circle(&g, &c, 40, &slip, NULL), LW_OK);
      *out[k] = slip.bishop;
    }
    cr_expect_lt(on[i], 0.9 * bare, "%g and %g", on[i], bare);
    cr_expect_lt(fabs(above[i] - on[i]), 1e-9);
    cr_expect_lt(fabs(below[i] / bare - 1.0), 5e-3, "%g and %g", below[i], bare);
  }
}

/* Of a footing that a circle cuts counts the part whose ground slides: a little deeper changes a little. */
Test(checks, slip_cuts_a_footing_by_its_share) {
  lw_slip_ground g = wall_of(0.5, -INFINITY, -INFINITY);
  lw_slip_circle c = circle_through(-0.7, 0.15, 1.9, 0.9, 0.75);
  lw_slip slip, before = {.bishop = 0.0}, bare;
  cr_assert_eq(lw_slip_of_circle(&g, &c, 16, &bare, NULL), LW_OK);
  g.load_count = 2;
  for (double deep = 0.02; deep < 1.6; deep += 0.002) {
    g.load[1] = (lw_slip_load){0.8, 1.7, 30.0, 0.0, deep};
    cr_assert_eq(lw_slip_of_circle(&g, &c, 16, &slip, NULL), LW_OK);
    if (before.bishop > 0.0)
      cr_expect_lt(fabs(slip.bishop / before.bishop - 1.0), 0.004, "%g: %g after %g", deep, slip.bishop,
                   before.bishop);
    before = slip;
  }
  cr_expect_lt(fabs(before.bishop / bare.bishop - 1.0), 2e-3);
}

Test(checks, slip_no_answer) {
  lw_slip_ground g = wall_of(0.5, -INFINITY, -INFINITY);
  lw_slip slip = {.bishop = 7.0};
  g.floor_y_m = 0.0;
  lw_slip_search(&g, LW_SLIP_BISHOP, &slip);
  cr_expect_eq(slip.status, LW_NO_SOLUTION);
  cr_expect_eq(slip.reason, LW_REASON_NO_CIRCLE);
  lw_slip_soil soil = soil_of(30.0, 4.0);
  double height = 5.5;
  lw_error error = {0};
  cr_expect_eq(lw_free_face_height(&soil, 29.0 / DEG, 1.0, &height, &error), LW_NO_SOLUTION);
  cr_expect_eq(error.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
  cr_expect(height > 5.4 && height < 5.6);
}
