/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/wall.h>
#include <math.h>
#include <stdio.h>

#include "../checks/random_wall.h"
#include "../sheet/support.h"
#include "wall/courses.h"
#include "wall/measure.h"
#include "wall/polygon.h"
#include "wall/section.h"

/* Areas, weights, moments and outlines of sections, against sums worked out by hand. */

static bool near(double a, double b) {
  return fabs(a - b) <= 1e-9 * (1.0 + fabs(b));
}

static double area_of(const lw_section *section) {
  double sum = 0.0;
  for (int i = 0; i < section->part_count; i++) sum += section->part[i].area_m2;
  return sum;
}

static lw_section built(const lw_case *c) {
  lw_section section;
  lw_section_build(c, sheet_test_tables(), &section);
  return section;
}

/* Four courses of 0.2 x 0.35 m, each 15 mm back, and a cap of 0.06 x 0.41 m that stands out 25 mm. */
Test(section, courses_and_cap) {
  lw_case c = CASE("course count=4", "block height=200 mm", "block depth=350 mm", "setback=15 mm",
                   "block unit weight=21.7 kN/m3", "wall embedment=110 mm", "cap height=60 mm",
                   "cap depth=410 mm", "cap overhang=25 mm", "cap unit weight=23.1 kN/m3");
  lw_section s = built(&c);
  double course = 0.2 * 0.35 * 21.7, cap = 0.06 * 0.41 * 23.1;
  double arms = 0.175 * 4.0 + 0.015 * (0.0 + 1.0 + 2.0 + 3.0), cap_arm = 3.0 * 0.015 - 0.025 + 0.205;
  cr_assert_eq(s.part_count, 5);
  cr_expect(near(s.height_m, 0.86));
  cr_expect(near(area_of(&s), 4.0 * 0.07 + 0.0246));
  cr_expect(near(lw_section_weight(&s), 4.0 * course + cap));
  cr_expect(near(lw_section_moment(&s), course * arms + cap * cap_arm));
  cr_expect(near(s.part[4].front_m, 0.02) && near(s.part[4].rear_m, 0.43));
  cr_expect(near(s.base_width_m, 0.35));
  /* What hangs over, in front and behind, holds no ground. */
  cr_expect(near(s.rear_m, 0.395) && near(s.crest.x_m, 0.395));
  cr_expect(near(s.back_rad, -atan(0.045 / 0.86)));
}

Test(section, deeper_base_courses) {
  lw_case c = CASE("course count=5", "block height=150 mm", "block depth=300 mm", "base course count=2",
                   "base course depth=520 mm", "setback=10 mm", "block unit weight=20.3 kN/m3",
                   "wall embedment=90 mm");
  lw_section s = built(&c);
  double base = 0.15 * 0.52 * 20.3, upper = 0.15 * 0.3 * 20.3;
  double base_arms = 2.0 * 0.26 + 0.01, upper_arms = 3.0 * 0.15 + 0.02 + 0.03 + 0.04;
  cr_expect(near(lw_section_weight(&s), 2.0 * base + 3.0 * upper));
  cr_expect(near(lw_section_moment(&s), base * base_arms + upper * upper_arms));
  cr_expect(near(s.base_width_m, 0.52));
  cr_expect(near(s.rear_m, 0.53));
  cr_expect(near(lw_section_rear(&s, 0.301), 0.34));
}

/* An average of 13 kN/m3 leaves 1 - 13/21 of the volume to fill; unfilled, only the shells bear. */
Test(section, hollow_and_filled_blocks) {
  lw_case hollow = CASE("course count=3", "block height=190 mm", "block depth=290 mm",
                        "wall embedment=100 mm", "block unit weight=13 kN/m3", "face shell thickness=32 mm");
  lw_case filled = CASE("course count=3", "block height=190 mm", "block depth=290 mm",
                        "wall embedment=100 mm", "block unit weight=13 kN/m3", "fill unit weight=15.5 kN/m3");
  lw_section h = built(&hollow), f = built(&filled);
  double volume = 3.0 * 0.19 * 0.29;
  cr_expect(near(lw_section_weight(&h), volume * 13.0));
  cr_expect(near(lw_section_weight(&f), volume * (13.0 + (1.0 - 13.0 / 21.0) * 15.5)));
  cr_expect(near(h.shell_m, 0.032) && near(f.shell_m, 0.0));
}

/* Toe 0.7, heel 0.6, stem from 0.8 down to 0.3 with both faces leaning, all on a slab. */
Test(section, trapezoid_is_the_polygon_of_its_corners) {
  lw_case widths = CASE("wall height=2.5 m", "wall embedment=0.5 m", "top width=0.3 m", "base width=2.1 m",
                        "toe length=0.7 m", "heel length=0.6 m", "slab thickness=0.4 m",
                        "back batter=0.2:2.6", "wall unit weight=23.7 kN/m3");
  lw_case corners =
      CASE("wall embedment=0.5 m", "wall unit weight=23.7 kN/m3", "point 1 x=0 m", "point 1 y=0 m",
           "point 2 x=2.1 m", "point 2 y=0 m", "point 3 x=2.1 m", "point 3 y=0.4 m", "point 4 x=1.5 m",
           "point 4 y=0.4 m", "point 5 x=1.3 m", "point 5 y=3 m", "point 6 x=1.0 m", "point 6 y=3 m",
           "point 7 x=0.7 m", "point 7 y=0.4 m", "point 8 x=0 m", "point 8 y=0.4 m");
  lw_section a = built(&widths), b = built(&corners);
  double area = 2.1 * 0.4 + 2.6 * 0.5 * (0.8 + 0.3);
  cr_expect(near(area_of(&a), area) && near(area_of(&b), area));
  cr_expect(near(lw_section_weight(&a), area * 23.7));
  cr_expect(near(lw_section_moment(&a), lw_section_moment(&b)));
  cr_assert_eq(a.outline_count, b.outline_count);
  for (int i = 0; i < a.outline_count; i++)
    cr_expect(near(a.outline[i].x_m, b.outline[i].x_m) && near(a.outline[i].y_m, b.outline[i].y_m),
              "corner %d", i);
}

/* Points may run either way and start anywhere on the base. */
Test(section, sense_of_the_points_does_not_matter) {
  lw_case one =
      CASE("wall embedment=0 m", "point 1 x=0 m", "point 1 y=0 m", "point 2 x=1.3 m", "point 2 y=0 m",
           "point 3 x=1.1 m", "point 3 y=1.9 m", "point 4 x=0.5 m", "point 4 y=1.9 m");
  lw_case other =
      CASE("wall embedment=0 m", "point 1 x=1.3 m", "point 1 y=0 m", "point 2 x=0 m", "point 2 y=0 m",
           "point 3 x=0.5 m", "point 3 y=1.9 m", "point 4 x=1.1 m", "point 4 y=1.9 m");
  lw_section a = built(&one), b = built(&other);
  cr_expect(near(lw_section_weight(&a), lw_section_weight(&b)));
  for (int i = 0; i < 4; i++)
    cr_expect(near(a.outline[i].x_m, b.outline[i].x_m) && near(a.outline[i].y_m, b.outline[i].y_m),
              "corner %d", i);
}

/* A star-shaped polygon by chance: its mirror has the same area and the mirrored centroid, whole and cut. */
static int random_polygon(dice *d, lw_corner *corner) {
  int count = 3 + dice_pick(d, 8);
  for (int i = 0; i < count; i++) {
    double angle = 6.283185307179586 * (i + dice_between(d, 0.1, 0.9)) / count,
           reach = dice_between(d, 0.4, 2.0);
    corner[i] = (lw_corner){2.5 + reach * cos(angle), 2.2 + reach * sin(angle)};
  }
  return count;
}

Test(section, a_mirror_keeps_area_and_mirrors_the_centroid) {
  dice d = {77};
  for (int i = 0; i < 500; i++) {
    lw_corner corner[12], mirrored[12], a, b;
    double area, other, width = dice_between(&d, 1.0, 6.0);
    int count = random_polygon(&d, corner);
    lw_polygon_mirror(corner, count, width, mirrored);
    lw_polygon_area(corner, count, &area, &a);
    lw_polygon_area(mirrored, count, &other, &b);
    cr_expect(near(area, other) && near(a.x_m, width - b.x_m) && near(a.y_m, b.y_m), "polygon %d", i);
  }
}

Test(section, a_mirrored_wall_weighs_the_same) {
  lw_case one = CASE("wall embedment=0 m", "wall unit weight=22.9 kN/m3", "point 1 x=0 m", "point 1 y=0 m",
                     "point 2 x=1.6 m", "point 2 y=0 m", "point 3 x=1.2 m", "point 3 y=2.1 m",
                     "point 4 x=0.9 m", "point 4 y=2.1 m", "point 5 x=0.2 m", "point 5 y=0.7 m");
  lw_case mirror = CASE("wall embedment=0 m", "wall unit weight=22.9 kN/m3", "point 1 x=0 m", "point 1 y=0 m",
                        "point 2 x=1.6 m", "point 2 y=0 m", "point 3 x=1.4 m", "point 3 y=0.7 m",
                        "point 4 x=0.7 m", "point 4 y=2.1 m", "point 5 x=0.4 m", "point 5 y=2.1 m");
  lw_section a = built(&one), b = built(&mirror);
  double weight = lw_section_weight(&a);
  cr_expect(near(weight, lw_section_weight(&b)));
  cr_expect(near(lw_section_moment(&a), 1.6 * weight - lw_section_moment(&b)));
  cr_expect(near(a.part[0].y_m, b.part[0].y_m));
}

/* Cut at a level, the two parts are the whole, and their moments too. */
Test(section, a_cut_loses_nothing) {
  dice d = {78};
  for (int i = 0; i < 500; i++) {
    double w = dice_between(&d, 0.5, 2.0), level = dice_between(&d, 0.05, 1.95);
    lw_corner whole[4] = {
        {0.0, 0.0}, {w, 0.0}, {w + dice_between(&d, -0.3, 0.3), 2.0}, {dice_between(&d, 0.0, 0.15), 2.0}};
    lw_corner above[6], below[6], all, high, low;
    double area, upper, lower;
    int n = lw_polygon_cut(whole, 4, level, true, above), m = lw_polygon_cut(whole, 4, level, false, below);
    lw_polygon_area(whole, 4, &area, &all);
    lw_polygon_area(above, n, &upper, &high);
    lw_polygon_area(below, m, &lower, &low);
    cr_expect(near(area, upper + lower), "cut %d", i);
    cr_expect(near(area * all.x_m, upper * high.x_m + lower * low.x_m), "cut %d", i);
    cr_expect(near(area * all.y_m, upper * high.y_m + lower * low.y_m), "cut %d", i);
  }
}

/* Moments about the foot of the front of what stands above a joint: a change of axes, nothing else. */
static void expect_same_moments(const lw_section *s, int joint, const lw_section *above) {
  const lw_part *foot = &s->part[joint];
  double about_x = 0.0, about_y = 0.0, made_x = 0.0, made_y = 0.0;
  for (int i = joint; i < s->part_count; i++) {
    about_x += s->part[i].weight_kn_per_m * (s->part[i].x_m - foot->front_m);
    about_y += s->part[i].weight_kn_per_m * (s->part[i].y_m - foot->bottom_m);
  }
  for (int i = 0; i < above->part_count; i++) {
    made_x += above->part[i].weight_kn_per_m * above->part[i].x_m;
    made_y += above->part[i].weight_kn_per_m * above->part[i].y_m;
  }
  cr_expect(near(made_x, about_x) && near(made_y, about_y), "joint %d", joint);
  cr_expect(near(lw_section_moment(above), about_x), "joint %d", joint);
}

/* The courses above a joint keep their weights; the joint is what the two courses share. */
Test(section, above_a_joint) {
  lw_case c =
      CASE("course count=4", "block height=200 mm", "block depth=350 mm", "setback=15 mm",
           "base course count=1", "base course depth=500 mm", "wall embedment=50 mm", "cap height=50 mm");
  lw_section s = built(&c), above;
  double weight = lw_section_weight(&s);
  for (int joint = 1; joint < 4; joint++) {
    weight -= s.part[joint - 1].weight_kn_per_m;
    lw_section_above(&s, joint, &above);
    cr_expect(near(lw_section_weight(&above), weight), "joint %d", joint);
    expect_same_moments(&s, joint, &above);
    cr_expect(near(above.height_m, 0.85 - 0.2 * joint) && near(above.part[0].front_m, 0.0), "joint %d",
              joint);
    cr_expect(near(above.contact_rear_m, joint == 1 ? 0.35 : 0.335), "joint %d", joint);
    /* Its base is the whole underside of its lowest course, whatever of it bears. */
    cr_expect(near(above.base_width_m, 0.35), "joint %d: %g", joint, above.base_width_m);
  }
}

Test(section, without_a_depth_nothing_is_known) {
  lw_case c = CASE("wall height=0.8 m");
  lw_section s = built(&c);
  cr_expect_not(s.known);
  cr_expect_eq(s.part_count, 0);
}

/* However a stem leans, its parts are its outline again, and none of them weighs less than nothing: that
 * would be told as overturning. */
Test(section, no_part_weighs_less_than_nothing) {
  dice d = {604};
  int leaning = 0;
  for (int i = 0; i < 600; i++) {
    double base = dice_between(&d, 0.3, 1.0), slab = dice_pick(&d, 2) ? 0.15 : 0.0;
    char width[40], top[40], batter[40], thick[40];
    snprintf(width, sizeof width, "base width=%.4f m", base);
    snprintf(top, sizeof top, "top width=%.4f m", dice_between(&d, 0.05, 1.5) * base);
    snprintf(batter, sizeof batter, "back batter=%.4f deg", dice_between(&d, -44.0, 44.0));
    snprintf(thick, sizeof thick, "slab thickness=%.3f m", slab);
    lw_case c = CASE("wall height=1.4 m", "wall embedment=0 m", width, top, batter, thick);
    lw_section s = built(&c);
    double area, sum = 0.0, mx = 0.0, my = 0.0;
    lw_corner centroid;
    lw_polygon_area(s.outline, s.outline_count, &area, &centroid);
    for (int k = 0; k < s.part_count; k++) {
      cr_expect_leq(0.0, s.part[k].weight_kn_per_m, "%s %s %s", width, top, batter);
      sum += s.part[k].area_m2;
      mx += s.part[k].area_m2 * s.part[k].x_m;
      my += s.part[k].area_m2 * s.part[k].y_m;
    }
    leaning += s.part_count == (slab > 0.0 ? 2 : 1);
    cr_expect(near(sum, area), "%.9g of %.9g: %s %s %s %s", sum, area, width, top, batter, thick);
    cr_expect(near(mx, area * centroid.x_m) && near(my, area * centroid.y_m), "%s %s %s", width, top, batter);
  }
  cr_expect_lt(50, leaning);
}

/* A block of 12.6 kN/m3 is 60 % concrete of 21: its voids are 40 %, and gravel of 16 kN/m3 in them adds 6.4
 * to its weight, not 16. A block of 21 and more has no room for any. */
Test(section, fill_weighs_in_the_voids) {
  lw_case hollow = CASE("course count=2", "block height=200 mm", "block depth=400 mm", "wall embedment=0 m",
                        "block unit weight=12.6 kN/m3", "fill unit weight=16 kN/m3");
  lw_case solid = CASE("course count=2", "block height=200 mm", "block depth=400 mm", "wall embedment=0 m",
                       "block unit weight=22 kN/m3", "fill unit weight=16 kN/m3");
  lw_section a = built(&hollow), b = built(&solid);
  cr_expect(near(lw_section_weight(&a), 0.4 * 0.4 * (12.6 + 0.4 * 16.0)));
  cr_expect(near(lw_section_weight(&b), 0.4 * 0.4 * 22.0));
}

/* Blocks that taper, with fill as heavy as the block between their tails: nothing tells where one ends, and
 * the course weighs as a full box about its middle. Without fill what is lost lies at the rear. */
Test(section, fill_as_heavy_as_the_block_makes_the_course_whole) {
  lw_case c = CASE("course count=3", "block height=200 mm", "block depth=300 mm", "block length=400 mm",
                   "block tail length=240 mm", "block unit weight=21 kN/m3", "fill unit weight=21 kN/m3",
                   "setback=20 mm");
  lw_section s = built(&c);
  for (int i = 0; i < 3; i++) {
    cr_expect(near(s.part[i].weight_kn_per_m, 0.2 * 0.3 * 21.0), "course %d", i + 1);
    cr_expect(near(s.part[i].x_m, 0.02 * i + 0.15), "course %d: %.6f", i + 1, s.part[i].x_m);
  }
  c.courses.fill_unit_weight.origin = LW_ABSENT;
  s = built(&c);
  cr_expect(near(s.part[0].weight_kn_per_m, 0.8 * 0.2 * 0.3 * 21.0));
  cr_expect_lt(s.part[0].x_m, 0.15);
}

/* The back of a stem on a slab goes on to the base in the line of its batter. */
Test(section, back_leans_by_its_batter_whatever_it_stands_on) {
  for (int thick = 0; thick <= 300; thick += 150) {
    char slab[40];
    snprintf(slab, sizeof slab, "slab thickness=%d mm", thick);
    lw_case c = CASE("wall kind=section", "wall height=1.2 m", "wall embedment=300 mm", "base width=1 m",
                     "back batter=9 deg", "top width=300 mm", slab);
    lw_section s = built(&c);
    cr_expect(near(s.back_lean, tan(9.0 * 3.14159265358979323846 / 180.0)), "%s: %.6f", slab, s.back_lean);
  }
}
