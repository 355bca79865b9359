/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <string.h>

#include <lowwall/ground.h>

#include "../checks/support.h"
#include "slip/ground.h"
#include "slip/parts.h"

/* The cross-section that circles are drawn in: what it may hold, and what it is made of. */

static const double DEG = 57.295779513082320877;

static lw_slip_soil soil_of(double phi_deg) {
  return (lw_slip_soil){.friction_rad = phi_deg / DEG,
                        .unit_weight_kn_per_m3 = 18.0,
                        .saturated_unit_weight_kn_per_m3 = 20.0,
                        .bottom_y_m = -INFINITY};
}

/* A cut 1 m high without a wall, in one soil. */
static lw_slip_ground cut_of(void) {
  lw_slip_ground g;
  lw_slip_ground_init(&g);
  g.corner_count = 4;
  g.corner[0] = (lw_corner){-5.0, 0.0};
  g.corner[1] = (lw_corner){0.0, 0.0};
  g.corner[2] = (lw_corner){0.5, 1.0};
  g.corner[3] = (lw_corner){6.0, 1.0};
  g.below = soil_of(30.0);
  g.below.cohesion_kpa = 5.0;
  g.box = (lw_slip_box){-2.0, -1e-3, 0.6, 4.0, 0.0, 0.0};
  return g;
}

static lw_slip_circle circle_of(lw_corner exit, lw_corner entry, double sag) {
  double dx = entry.x_m - exit.x_m, dy = entry.y_m - exit.y_m, half = 0.5 * hypot(dx, dy);
  double up = (half * half - sag * sag) / (2.0 * sag);
  return (lw_slip_circle){0.5 * (exit.x_m + entry.x_m) - up * dy / (2.0 * half),
                          0.5 * (exit.y_m + entry.y_m) + up * dx / (2.0 * half),
                          up + sag,
                          exit.x_m,
                          exit.y_m,
                          entry.x_m,
                          entry.y_m};
}

static lw_status ask(const lw_slip_ground *g, int slices, lw_slip_slices *list) {
  lw_slip_circle c = circle_of((lw_corner){-0.2, 0.0}, (lw_corner){1.6, 1.0}, 0.35);
  lw_slip slip = {.bishop = 7.0};
  lw_status status = lw_slip_of_circle(g, &c, slices, &slip, list);
  cr_expect((status == LW_OK) == !(fabs(slip.bishop - 7.0) <= 0.0), "an answer, or unchanged");
  return status;
}

/* Every number of a cross-section in turn is none, or past all sense; then every list too long. */
Test(slip_section, one_bad_number_has_no_answer) {
  static lw_slip_ground g;
  g = cut_of();
  g.soil_count = 1;
  g.layer_x_m = 0.5;
  g.soil[0] = soil_of(32.0);
  cr_assert_eq(ask(&g, 16, NULL), LW_OK);
  static const struct {
    size_t at;
    double bad[4];
  } rows[] = {
#define AT(field) offsetof(lw_slip_ground, field)
      {AT(below.friction_rad), {NAN, -0.1, 1.6, 1e300}},
      {AT(below.cohesion_kpa), {NAN, INFINITY, 2e9, -2e9}},
      {AT(below.unit_weight_kn_per_m3), {NAN, INFINITY, 2e9, -2e9}},
      {AT(below.saturated_unit_weight_kn_per_m3), {NAN, INFINITY, 2e9, -2e9}},
      {AT(below.spare_kn_per_m3), {NAN, INFINITY, 2e9, -2e9}},
      {AT(soil[0].friction_rad), {NAN, -0.1, 1.6, 1e300}},
      {AT(soil[0].unit_weight_kn_per_m3), {NAN, INFINITY, 2e9, -2e9}},
      {AT(soil[0].bottom_y_m), {NAN, INFINITY, 2e9, 1e300}},
      {AT(water.front_y_m), {NAN, INFINITY, 2e9, 1e300}},
      {AT(water.rear_y_m), {NAN, INFINITY, 2e9, 1e300}},
      {AT(water.unit_weight_kn_per_m3), {NAN, INFINITY, 2e9, -2e9}},
      {AT(water.front_x_m), {NAN, NAN, NAN, NAN}},
      {AT(water.rear_x_m), {NAN, NAN, NAN, NAN}},
      {AT(seismic_horizontal), {NAN, -0.1, 1.0, INFINITY}},
      {AT(floor_y_m), {NAN, INFINITY, 2e9, 1e300}},
      {AT(pore_ratio), {NAN, -0.1, 1.1, INFINITY}},
      {AT(corner[1].x_m), {NAN, -5.1, INFINITY, 2e9}},
      {AT(corner[1].y_m), {NAN, INFINITY, 2e9, -2e9}},
#undef AT
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    double *value = (double *)(void *)((char *)&g + rows[i].at), was = *value;
    for (int k = 0; k < 4; k++) {
      *value = rows[i].bad[k];
      cr_expect_eq(ask(&g, 16, NULL), LW_NO_SOLUTION, "row %zu, %g", i, *value);
    }
    *value = was;
  }
  static const struct {
    size_t at;
    int bad[2];
  } counts[] = {{offsetof(lw_slip_ground, corner_count), {1, LW_SLIP_GROUND_MAX + 1}},
                {offsetof(lw_slip_ground, soil_count), {-1, LW_SOIL_MAX + 1}},
                {offsetof(lw_slip_ground, load_count), {-1, LW_SLIP_LOAD_MAX + 1}},
                {offsetof(lw_slip_ground, body_count), {-1, LW_OUTLINE_MAX + 1}}};
  for (size_t i = 0; i < sizeof counts / sizeof *counts; i++) {
    int *value = (int *)(void *)((char *)&g + counts[i].at), was = *value;
    for (int k = 0; k < 2; k++) {
      *value = counts[i].bad[k];
      cr_expect_eq(ask(&g, 16, NULL), LW_NO_SOLUTION, "count %zu, %d", i, *value);
    }
    *value = was;
  }
  cr_expect_eq(ask(&g, 16, NULL), LW_OK, "whole again");
  cr_expect_eq(ask(&g, LW_SLIP_SLICE_MAX + 1, NULL), LW_NO_SOLUTION, "more slices than there is room for");
}

/* A sheet without thickness is cut by what passes above its foot, as any wall is, and by what comes out
 * behind it or goes in before it. */
Test(slip_section, circles_pass_below_a_sheet) {
  static const double ABOVE_CIRCLE[] = {0.3, 0.01, -0.01, -0.3};
  lw_slip_ground g = cut_of();
  lw_slip_circle c = circle_of((lw_corner){-0.2, 0.0}, (lw_corner){1.6, 1.0}, 0.55);
  lw_slip_circle behind = circle_of((lw_corner){0.25, 0.5}, (lw_corner){1.6, 1.0}, 0.3),
                 before = circle_of((lw_corner){-2.0, 0.0}, (lw_corner){0.1, 0.2}, 0.3);
  double dx = 0.2 - c.centre_x_m, passes_m = c.centre_y_m - sqrt(c.radius_m * c.radius_m - dx * dx);
  lw_slip slip;
  g.body_count = 2;
  g.body_kn_per_m3 = 24.0;
  for (int i = 0; i < 4; i++) {
    double foot = passes_m + ABOVE_CIRCLE[i];
    g.body[0] = (lw_corner){0.2, foot};
    g.body[1] = (lw_corner){0.2, 0.4};
    g.pad_front_m = g.pad_rear_m = 0.2;
    g.pad_y_m = foot;
    cr_expect_eq(lw_slip_of_circle(&g, &c, 16, &slip, NULL) == LW_OK, i < 2, "foot at %g", foot);
    cr_expect_eq(lw_slip_of_circle(&g, &behind, 16, &slip, NULL), LW_NO_SOLUTION);
    cr_expect_eq(lw_slip_of_circle(&g, &before, 16, &slip, NULL), LW_NO_SOLUTION);
  }
}

/* Circles that would go in where they come out, or before: there is none. */
Test(slip_section, a_box_turned_round_holds_no_circle) {
  lw_slip_ground g = cut_of();
  lw_slip slip;
  g.box = (lw_slip_box){0.6, 4.0, -2.0, -1e-3, 0.0, 0.0};
  lw_slip_search(&g, LW_SLIP_BISHOP, &slip);
  cr_expect_eq(slip.status, LW_NO_SOLUTION);
  cr_expect_eq(slip.reason, LW_REASON_NO_CIRCLE);
}

/* Water on the front's side alone stands level up to where the rear's begins. */
Test(slip_section, water_in_front_alone_stands_level_to_the_rear) {
  static lw_slip_slices list;
  lw_slip_ground g = cut_of();
  g.water = (lw_slip_water){0.5, 0.3, 1.2, -INFINITY, 9.81};
  cr_assert_eq(ask(&g, 16, &list), LW_OK);
  for (int i = 0; i < list.count; i++) {
    const lw_slip_slice *s = &list.slice[i];
    double surface = fmin(0.3, s->x_m < 0.0 ? 0.0 : 2.0 * s->x_m);
    double deep = s->x_m < 1.2 ? fmax(surface - s->base_y_m, 0.0) : 0.0;
    cr_expect_float_eq(s->pore_kpa, 9.81 * deep, 1e-9, "at %g: %g", s->x_m, s->pore_kpa);
  }
}

/* A wall above in layered soil: what stands over the step is at least as heavy as it was told, what lies
 * below it weighs what its layer does. Column by column, by hand. */
Test(slip_section, a_raised_bed_weighs_by_its_layers) {
  static lw_slip_slices list;
  lw_slip_ground g = cut_of();
  g.layer_x_m = 0.5;
  g.corner_count = 6;
  g.corner[3] = (lw_corner){1.0, 1.0};
  g.corner[4] = (lw_corner){1.0, 1.4};
  g.corner[5] = (lw_corner){6.0, 1.4};
  g.soil_count = 3;
  for (int i = 0; i < 3; i++) g.soil[i] = soil_of(30.0);
  g.soil[0].bottom_y_m = 1.2, g.soil[0].unit_weight_kn_per_m3 = 17.0;
  g.soil[1].bottom_y_m = 0.7, g.soil[1].unit_weight_kn_per_m3 = 19.5;
  g.soil[2].bottom_y_m = 0.2, g.soil[2].unit_weight_kn_per_m3 = 16.0;
  g.raised_x_m = 1.0, g.raised_y_m = 1.0, g.raised_kn_per_m3 = 23.0;
  lw_slip_circle c = circle_of((lw_corner){-0.2, 0.0}, (lw_corner){2.2, 1.4}, 0.6);
  lw_slip slip;
  cr_assert_eq(lw_slip_of_circle(&g, &c, 24, &slip, &list), LW_OK);
  static const double LEVEL[] = {1.4, 1.2, 1.0, 0.7, 0.2, -9.0}, WEIGHT[] = {23.0, 23.0, 19.5, 16.0, 18.0};
  for (int i = 0; i < list.count; i++) {
    const lw_slip_slice *s = &list.slice[i];
    if (s->x_m < 0.5) continue;
    double by_hand = 0.0, top = s->x_m > 1.0 ? 1.4 : 1.0;
    for (int k = 0; k < 5; k++)
      by_hand += WEIGHT[k] * fmax(fmin(LEVEL[k], top) - fmax(LEVEL[k + 1], s->base_y_m), 0.0);
    cr_expect_float_eq(s->weight_kn_per_m / s->width_m, by_hand, 1e-9, "at %g: %g, by hand %g", s->x_m,
                       s->weight_kn_per_m / s->width_m, by_hand);
  }
}

static lw_wall wall_between(double lower_m, double trench_m) {
  lw_wall wall = {.section = {.known = true, .height_m = 1.0, .outline_count = 4, .base_width_m = 0.4}};
  const lw_corner outline[] = {{0.0, 0.0}, {0.4, 0.0}, {0.4, 1.0}, {0.0, 1.0}};
  memcpy(wall.section.outline, outline, sizeof outline);
  wall.section.crest = outline[2];
  wall.site.soil_count = 1;
  wall.site.soil[0] = (lw_soil){.bottom_m = INFINITY, .friction_rad = 0.55, .unit_weight_kn_per_m3 = 18.0};
  wall.site.footing = wall.site.soil[0];
  wall.site.slope_run_m = wall.site.water_depth_m = wall.site.front_water_depth_m = INFINITY;
  wall.tier = (lw_tier){.band = LW_TIER_TOGETHER, .distance_m = lower_m, .height_m = 0.8};
  wall.site.trench_distance_m = trench_m;
  wall.site.trench_depth_m = 0.5;
  return wall;
}

/* A wall below and a trench, whichever of them is nearer: the ground falls by both, each at its place. */
Test(slip_section, a_wall_below_and_a_trench_are_each_a_step) {
  static const double LOWER[] = {1.2, 2.6}, TRENCH[] = {2.0, 1.5};
  for (int i = 0; i < 4; i++) {
    double lower = LOWER[i / 2], trench = TRENCH[i % 2];
    lw_wall wall = wall_between(lower, trench);
    lw_ground state = {.water_depth_m = INFINITY, .front = {.open = true, .bearing_embedment_m = 0.2}};
    static lw_slip_ground g;
    lw_slip_ground_build(&wall, &state, &g);
    for (double x = -3.0; x < 0.0; x += 0.07) {
      double by_hand = 0.2 - (x < -lower ? 0.8 : 0.0) - (x < -trench ? 0.5 : 0.0);
      cr_expect_float_eq(lw_slip_surface(&g, x, true), by_hand, 1e-9, "walls %g, trench %g, at %g", lower,
                         trench, x);
    }
  }
}

/* A slope that ends before, on top of or beyond the wall above, or nowhere: the ground behind is the slope
 * and the step, whichever comes first. */
Test(slip_section, a_slope_goes_on_above_the_wall_behind) {
  static const double RUN[] = {0.0, 0.6, 3.0, 500.0, INFINITY};
  for (int i = 0; i < 5; i++) {
    lw_wall wall = wall_between(1.5, INFINITY);
    lw_ground state = {.water_depth_m = INFINITY};
    static lw_slip_ground g;
    wall.tier.above = true;
    wall.site.trench_depth_m = 0.0;
    wall.site.slope_rad = 0.2;
    wall.site.slope_run_m = RUN[i];
    lw_slip_ground_build(&wall, &state, &g);
    for (double x = 0.05; x < 5.0; x += 0.11) {
      double by_hand = 1.0 + fmin(x, RUN[i]) * tan(0.2) + (x > 1.5 ? 0.8 : 0.0);
      cr_expect_float_eq(lw_slip_surface(&g, 0.4 + x, true), by_hand, 1e-9, "run %g, at %g: %g", RUN[i], x,
                         lw_slip_surface(&g, 0.4 + x, true));
    }
  }
}

/* What stands behind a wall, each in its place and with its weight: of water that is told behind alone none
 * stands in front higher than the base; a line load is as far behind the crest as a strip that begins there;
 * the wall above weighs, over its own height, what it presses with. */
Test(slip_section, what_stands_behind_is_put_behind) {
  static const double WATER_M[] = {0.3, 1.4};
  for (int i = 0; i < 2; i++) {
    lw_wall wall = wall_between(1.5, 500.0);
    lw_ground state = {.water_depth_m = WATER_M[i], .front = {.open = true, .bearing_embedment_m = 0.2}};
    static lw_slip_ground g;
    wall.tier.above = true;
    wall.tier.pressure_kpa = 14.0;
    wall.site.load_count = 2;
    wall.site.load[0] = (lw_site_load){.kind = LW_LOAD_LINE, .near_m = 0.7, .far_m = 0.7, .force = 3.0};
    wall.site.load[1] =
        (lw_site_load){.kind = LW_LOAD_STRIP, .near_m = 0.7, .far_m = 0.9, .pressure_kpa = 5.0};
    lw_slip_ground_build(&wall, &state, &g);
    cr_expect_float_eq(g.water.rear_y_m, 1.0 - WATER_M[i], 1e-12);
    cr_expect_float_eq(g.water.front_y_m, fmin(1.0 - WATER_M[i], 0.0), 1e-12);
    cr_assert_eq(g.load_count, 2);
    cr_expect_float_eq(g.load[0].from_x_m, 0.4 + 0.7, 1e-12);
    cr_expect_float_eq(g.load[0].to_x_m, g.load[0].from_x_m, 0.0);
    cr_expect_float_eq(g.load[1].from_x_m, g.load[0].from_x_m, 1e-12);
    cr_expect_float_eq(g.raised_kn_per_m3 * wall.tier.height_m, 14.0, 1e-12);
  }
}

/* An arc that is steeper than upright where it comes out behind is none that ground slides on. */
Test(slip_section, no_circle_overhangs_where_it_begins) {
  static lw_slip_strips strips;
  lw_slip_ground g = cut_of();
  lw_slip_circle c = circle_of((lw_corner){-0.2, 0.0}, (lw_corner){2.0, 1.0}, 0.5);
  strips.ground = &g;
  lw_slip_hull_of(&g, &strips);
  cr_assert(lw_slip_clear(&strips, &c));
  for (double up = -0.4; up < 0.5; up += 0.1) {
    lw_slip_circle moved = c;
    moved.centre_y_m = c.entry_y_m + up;
    moved.radius_m = 3.0;
    cr_expect_eq(lw_slip_clear(&strips, &moved), up > -1e-9, "centre %g above", up);
  }
}

/* Layers are told by their depth below the top of the wall, and are drawn by their level above its foot; none
 * but the ground below reaches under it. */
Test(slip_section, layers_lie_where_their_depth_says) {
  static const double BOTTOM[] = {0.4, 0.9, 1.3};
  lw_wall wall = wall_between(500.0, 500.0);
  lw_ground state = {.water_depth_m = INFINITY, .front = {.open = true, .bearing_embedment_m = 0.2}};
  static lw_slip_ground g;
  wall.site.soil_count = 4;
  for (int i = 1; i < 4; i++) wall.site.soil[i] = wall.site.soil[0];
  for (int i = 0; i < 3; i++) wall.site.soil[i].bottom_m = BOTTOM[i];
  lw_slip_ground_build(&wall, &state, &g);
  cr_assert_eq(g.soil_count, 4);
  for (int i = 0; i < 3; i++) cr_expect_float_eq(g.soil[i].bottom_y_m, fmax(1.0 - BOTTOM[i], 0.0), 1e-12);
  cr_expect_float_eq(g.soil[3].bottom_y_m, 0.0, 0.0);
}
