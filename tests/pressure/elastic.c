/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/lateral.h>
#include <math.h>

#include "pressure/elastic_record.h"
#include "support.h"

static const double H = 2.385;

static bool near(double a, double b, double share) {
  return fabs(a - b) <= share * fmax(fabs(b), 1e-12);
}

static lw_plane loaded(lw_plane_load load) {
  lw_plane plane = pressure_plane(30);
  plane.load_count = 1;
  plane.load[0] = load;
  return plane;
}

static double push_on(const lw_plane *plane, lw_load_pressure by, double *height_m) {
  lw_elastic e = lw_elastic_push_on(plane, by);
  if (height_m) *height_m = e.height_m;
  return e.push_kn_per_m;
}

Test(elastic, a_narrow_strip_is_a_line_load) {
  for (int face = LW_ELASTIC_HALF_SPACE; face <= LW_ELASTIC_DOUBLED; face++) {
    for (double z = 0.05; z < 4.0; z *= 1.7) {
      lw_elastic_strip strip = {.pressure_kpa = 7.0 / 1e-3, .near_m = 0.8 - 5e-4, .far_m = 0.8 + 5e-4};
      double line = lw_elastic_line_kpa(7.0, 0.8, z, (lw_elastic_face)face);
      cr_expect(near(lw_elastic_strip_kpa(&strip, z, (lw_elastic_face)face), line, 1e-5), "z %g", z);
    }
  }
}

/* A line of points, each with the load of its stretch, is the line load. */
Test(elastic, points_along_a_line_are_a_line_load) {
  for (double z = 0.1; z < 3.0; z *= 2.0) {
    double sum = 0.0, step = 0.01;
    for (double y = -400.0; y <= 400.0; y += fabs(y) < 20.0 ? step : 1.0) {
      double part = fabs(y) < 20.0 ? step : 1.0;
      lw_elastic_place at = {.distance_m = 0.7, .along_m = y};
      sum += lw_elastic_point_kpa(5.0 * part, &at, z, LW_ELASTIC_DOUBLED);
    }
    cr_expect(near(sum, lw_elastic_line_kpa(5.0, 0.7, z, LW_ELASTIC_DOUBLED), 2e-3), "z %g", z);
  }
}

Test(elastic, the_metre_in_front_feels_the_mean_of_a_point) {
  for (double x = 0.1; x < 3.0; x *= 2.0) {
    for (double z = 0.07; z < 3.0; z *= 2.3) {
      double sum = 0.0;
      for (int i = 0; i < 2000; i++) {
        lw_elastic_place at = {.distance_m = x, .along_m = (i + 0.5) / 2000.0 - 0.5};
        sum += lw_elastic_point_kpa(3.0, &at, z, LW_ELASTIC_HALF_SPACE) / 2000.0;
      }
      double mean = lw_elastic_point_mean_kpa(3.0, x, z, LW_ELASTIC_HALF_SPACE);
      lw_elastic_place straight = {.distance_m = x};
      cr_expect(near(mean, sum, 1e-6), "x %g z %g", x, z);
      cr_expect_lt(mean, lw_elastic_point_kpa(3.0, &straight, z, LW_ELASTIC_HALF_SPACE));
    }
  }
}

/* Elastic soil that cannot change its volume passes a load on whole in all directions: q on a stiff face,
 * half of it on a plane at the edge of the load, and q again inside a load that covers the world. */
Test(elastic, a_strip_as_wide_as_the_world_is_a_uniform_load) {
  lw_elastic_strip half = {.pressure_kpa = 6.0, .near_m = 0.0, .far_m = INFINITY};
  lw_elastic_strip world = {.pressure_kpa = 6.0, .near_m = -INFINITY, .far_m = INFINITY};
  for (double z = 0.0; z < 9.0; z += 0.75) {
    cr_expect(near(lw_elastic_strip_kpa(&half, z, LW_ELASTIC_DOUBLED), 6.0, 1e-12), "z %g", z);
    cr_expect(near(lw_elastic_strip_kpa(&half, z, LW_ELASTIC_HALF_SPACE), 3.0, 1e-12), "z %g", z);
    cr_expect(near(lw_elastic_strip_kpa(&world, z, LW_ELASTIC_HALF_SPACE), 6.0, 1e-12), "z %g", z);
  }
  lw_elastic_push push = lw_elastic_strip_push(&half, H, LW_ELASTIC_DOUBLED);
  cr_expect(near(push.push_kn_per_m, 6.0 * H, 1e-12));
  cr_expect(near(push.height_m, 0.5 * H, 1e-12));
}

Test(elastic, two_strips_side_by_side_are_one) {
  lw_elastic_strip whole = {9.0, 0.3, 2.1}, left = {9.0, 0.3, 1.4}, right = {9.0, 1.4, 2.1};
  for (double z = 0.0; z < 5.0; z += 0.25) {
    double sum = lw_elastic_strip_kpa(&left, z, LW_ELASTIC_DOUBLED) +
                 lw_elastic_strip_kpa(&right, z, LW_ELASTIC_DOUBLED);
    cr_expect(near(sum, lw_elastic_strip_kpa(&whole, z, LW_ELASTIC_DOUBLED), 1e-9), "z %g", z);
  }
  lw_plane one = loaded((lw_plane_load){.near_m = 0.3, .far_m = 2.1, .pressure_kpa = 9.0}), two = one;
  two.load_count = 2;
  two.load[0].far_m = two.load[1].near_m = 1.4;
  two.load[1].far_m = 2.1;
  two.load[1].pressure_kpa = 9.0;
  double h1, h2;
  cr_expect(near(push_on(&one, LW_LOAD_PRESSURE_HALF_SPACE, &h1),
                 push_on(&two, LW_LOAD_PRESSURE_HALF_SPACE, &h2), 1e-9));
  cr_expect(near(h1, h2, 1e-9));
}

/* Left and right of the plane, up and down along the wall. */
Test(elastic, pressure_is_the_same_on_both_sides) {
  lw_elastic_strip behind = {5.0, 0.4, 1.3}, before = {5.0, -1.3, -0.4};
  lw_elastic_place up = {0.6, 0.8}, down = {0.6, -0.8};
  for (double z = 0.1; z < 3.0; z += 0.3) {
    cr_expect(near(lw_elastic_strip_kpa(&behind, z, LW_ELASTIC_HALF_SPACE),
                   lw_elastic_strip_kpa(&before, z, LW_ELASTIC_HALF_SPACE), 1e-9));
    cr_expect(near(lw_elastic_line_kpa(5.0, 0.4, z, LW_ELASTIC_HALF_SPACE),
                   lw_elastic_line_kpa(5.0, -0.4, z, LW_ELASTIC_HALF_SPACE), 1e-12));
    cr_expect(near(lw_elastic_point_kpa(5.0, &up, z, LW_ELASTIC_HALF_SPACE),
                   lw_elastic_point_kpa(5.0, &down, z, LW_ELASTIC_HALF_SPACE), 1e-12));
    cr_expect(near(lw_elastic_curve_point_kpa(5.0, &up, z, H), lw_elastic_curve_point_kpa(5.0, &down, z, H),
                   1e-12));
  }
}

Test(elastic, nothing_presses_above_a_load_nor_without_one) {
  lw_elastic_strip strip = {.pressure_kpa = 0.0, .near_m = 0.2, .far_m = 1.0}, full = {5.0, 0.2, 1.0};
  lw_elastic_place at = {.distance_m = 0.5};
  for (double z = -2.0; z <= 0.0; z += 0.5) {
    cr_expect(near(1.0 + lw_elastic_line_kpa(5.0, 0.5, z, LW_ELASTIC_DOUBLED), 1.0, 1e-15));
    cr_expect(near(1.0 + lw_elastic_strip_kpa(&full, z, LW_ELASTIC_DOUBLED), 1.0, 1e-12));
    cr_expect(near(1.0 + lw_elastic_point_kpa(5.0, &at, z, LW_ELASTIC_DOUBLED), 1.0, 1e-15));
    cr_expect(near(1.0 + lw_elastic_point_mean_kpa(5.0, 0.5, z, LW_ELASTIC_DOUBLED), 1.0, 1e-15));
    cr_expect(near(1.0 + lw_elastic_curve_line_kpa(5.0, 0.5, z, H), 1.0, 1e-15));
    cr_expect(near(1.0 + lw_elastic_curve_point_kpa(5.0, &at, z, H), 1.0, 1e-15));
  }
  cr_expect(near(1.0 + lw_elastic_strip_kpa(&strip, 1.0, LW_ELASTIC_DOUBLED), 1.0, 1e-15));
  lw_plane none = pressure_plane(30);
  double height = 1.0;
  cr_expect(near(1.0 + push_on(&none, LW_LOAD_PRESSURE_DOUBLED, &height), 1.0, 1e-15));
  cr_expect(near(1.0 + height, 1.0, 1e-15));
}

/* The integral over the plane and the closed forms, which the plane's own push uses where it stands upright:
 * a plane that leans by a hair is integrated. */
Test(elastic, integral_and_closed_form_agree) {
  for (double x = 0.001; x < 9.0; x *= 2.9) {
    lw_plane upright = loaded((lw_plane_load){.near_m = x, .far_m = x + 0.9, .pressure_kpa = 11.0});
    lw_plane line = loaded((lw_plane_load){.near_m = x, .far_m = x, .force_kn_per_m = 4.0});
    lw_plane *planes[] = {&upright, &line};
    for (int i = 0; i < 2; i++) {
      double closed_height, height, closed = push_on(planes[i], LW_LOAD_PRESSURE_DOUBLED, &closed_height);
      planes[i]->batter_rad = 1e-9;
      double integral = push_on(planes[i], LW_LOAD_PRESSURE_DOUBLED, &height);
      cr_expect(near(integral, closed, 2e-6), "x %g: %g, closed %g", x, integral, closed);
      cr_expect(near(height, closed_height, 2e-6), "x %g: at %g, closed %g", x, height, closed_height);
    }
  }
}

Test(elastic, the_push_of_a_load_falls_with_its_distance) {
  for (int by = LW_LOAD_PRESSURE_HALF_SPACE; by <= LW_LOAD_PRESSURE_CURVES; by++) {
    for (int kind = 0; kind < 3; kind++) {
      double before = INFINITY, height_before = INFINITY;
      for (double x = 0.05; x < 12.0; x *= 1.3) {
        lw_plane_load load = {.near_m = x, .far_m = x, .force_kn_per_m = 8.0, .point = kind == 2};
        if (kind == 0) load = (lw_plane_load){.near_m = x, .far_m = x + 0.5, .pressure_kpa = 16.0};
        lw_plane plane = loaded(load);
        double height, push = push_on(&plane, (lw_load_pressure)by, &height);
        cr_expect_leq(push, before * (1.0 + 1e-9), "by %d, kind %d, x %g: %g > %g", by, kind, x, push,
                      before);
        cr_expect_leq(height, height_before * (1.0 + 1e-6), "by %d, kind %d, x %g", by, kind, x);
        before = push;
        height_before = height;
      }
      cr_expect_lt(before, 0.6, "by %d, kind %d: %g left", by, kind, before);
    }
  }
}

/* Half-space, doubled and the curves: twice, and more again close to the wall. */
Test(elastic, a_face_that_cannot_yield_feels_twice_as_much) {
  lw_plane_load loads[] = {{.near_m = 0.3, .far_m = 1.5, .pressure_kpa = 12.0},
                           {.near_m = 0.6, .far_m = 0.6, .force_kn_per_m = 9.0},
                           {.near_m = 0.6, .far_m = 0.6, .force_kn_per_m = 9.0, .point = true}};
  for (int i = 0; i < 3; i++) {
    lw_plane plane = loaded(loads[i]);
    double h1, h2, half = push_on(&plane, LW_LOAD_PRESSURE_HALF_SPACE, &h1);
    cr_expect(near(push_on(&plane, LW_LOAD_PRESSURE_DOUBLED, &h2), 2.0 * half, 1e-9));
    cr_expect(near(h1, h2, 1e-9));
  }
}

/* A neighbour's footing sends nothing above its own level, and nothing at all from below the foot. */
Test(elastic, a_load_below_the_ground_is_felt_from_its_own_level_down) {
  lw_plane_load footing = {.near_m = 0.8, .far_m = 1.4, .pressure_kpa = 100.0, .below_m = 0.5};
  lw_plane plane = loaded(footing), low = plane;
  low.height_m = plane.height_m - 0.5;
  low.load[0].below_m = 0.0;
  double height, low_height, push = push_on(&plane, LW_LOAD_PRESSURE_HALF_SPACE, &height);
  cr_expect(near(push, push_on(&low, LW_LOAD_PRESSURE_HALF_SPACE, &low_height), 1e-9));
  cr_expect(near(height, low_height, 1e-9));
  double before = INFINITY;
  for (double depth = 0.0; depth < 3.0; depth += 0.1) {
    plane.load[0].below_m = depth;
    double here = push_on(&plane, LW_LOAD_PRESSURE_HALF_SPACE, NULL);
    cr_expect_leq(here, before);
    before = here;
  }
  cr_expect(near(1.0 + before, 1.0, 1e-15), "a load below the foot pushes %g", before);
}

/* On rising ground the load stands higher than the plane's top: what it sends out above that is missed. */
Test(elastic, a_load_on_a_slope_is_felt_from_the_top_of_the_plane) {
  lw_plane_load load = {.near_m = 1.0, .far_m = 2.0, .pressure_kpa = 10.0};
  lw_plane sloping = loaded(load), level = loaded(load), part = level;
  sloping.slope_rad = atan(0.25);
  level.height_m += 0.25;
  part.height_m = 0.25;
  double whole = push_on(&level, LW_LOAD_PRESSURE_DOUBLED, NULL);
  double above = push_on(&part, LW_LOAD_PRESSURE_DOUBLED, NULL);
  cr_expect(near(push_on(&sloping, LW_LOAD_PRESSURE_DOUBLED, NULL), whole - above, 2e-6));
}

Test(elastic, a_line_load_sends_no_more_than_two_thirds) {
  for (double x = 1e-4; x < 30.0; x *= 3.0) {
    lw_elastic_push push = lw_elastic_line_push(10.0, x, H, LW_ELASTIC_DOUBLED);
    cr_expect_leq(push.push_kn_per_m, 10.0 * 2.0 / 3.14159265358979323846 + 1e-12);
    cr_expect(0.0 < push.height_m && push.height_m < H);
  }
}

/* A footing stands on the wedge only where the failure plane passes below it, and from below the foot of the
 * plane it reaches nothing. */
Test(elastic, a_footing_weighs_on_the_wedge_that_passes_below_it) {
  lw_plane bare = pressure_plane(30), plane = loaded((lw_plane_load){.near_m = 0.5, .far_m = 1.1});
  lw_trial_wedge without, with;
  double before = INFINITY;
  plane.load[0].pressure_kpa = 80.0;
  cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &bare, &without, NULL, NULL), LW_OK);
  for (double depth = 0.0; depth < 3.5; depth += 0.05) {
    plane.load[0].below_m = depth;
    cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &with, NULL, NULL), LW_OK);
    cr_expect_leq(with.thrust_kn_per_m, before * (1.0 + 1e-6), "%g m deep", depth);
    cr_expect_leq(without.thrust_kn_per_m, with.thrust_kn_per_m * (1.0 + 1e-6), "%g m deep", depth);
    before = with.thrust_kn_per_m;
  }
  cr_expect(near(before, without.thrust_kn_per_m, 1e-6), "%g, bare %g", before, without.thrust_kn_per_m);
}

/* The working of each kind of load, by each theory, is whole. */
Test(elastic, the_working_is_whole) {
  lw_plane plane = loaded((lw_plane_load){.near_m = 0.3, .far_m = 0.9, .pressure_kpa = 9.0});
  plane.load_count = 3;
  plane.load[1] = (lw_plane_load){.near_m = 0.7, .far_m = 0.7, .force_kn_per_m = 2.0};
  plane.load[2] = (lw_plane_load){.near_m = 0.9, .far_m = 0.9, .force_kn_per_m = 3.0, .point = true};
  for (int by = LW_LOAD_PRESSURE_HALF_SPACE; by <= LW_LOAD_PRESSURE_CURVES; by++) {
    heard h = {0};
    lw_working working = pressure_listener(&h);
    lw_elastic push = lw_elastic_push_on(&plane, (lw_load_pressure)by);
    lw_elastic_record(&plane, (lw_load_pressure)by, &push, &working);
    /* A strip has five steps, a line three, what is integrated one; the sum two. */
    bool curves = by == LW_LOAD_PRESSURE_CURVES;
    cr_expect(h.headings == 1 && h.incomplete == 0, "by %d", by);
    cr_expect_eq(h.steps, curves ? 5 + 1 + 1 + 2 : 5 + 3 + 1 + 2, "by %d: %d steps", by, h.steps);
  }
}
