/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/lowwall.h>
#include <math.h>

#include "../verdict/help.h"
#include "studies/fence_post.h"
#include "studies/fence_push.h"

/* The physics of a fence that carries soil, and of one whose posts push the ground behind a wall. */

static lw_fence_bed bed_of(double height_m) {
  return (lw_fence_bed){.height_m = height_m,
                        .coefficient = 0.5,
                        .unit_weight_kn_per_m3 = 18.0,
                        .saturated_unit_weight_kn_per_m3 = 20.0,
                        .water_unit_weight_kn_per_m3 = 9.81,
                        .water_depth_m = INFINITY,
                        .hole_m = 0.6};
}

static const lw_fence_gust gust = {0.6, 1.8, 0.6};

Test(checks, soil_at_its_equal_height_comes_to_the_wind) {
  lw_fence_push wind, soil;
  lw_fence_wind_push(&gust, &wind, NULL);
  for (int water = 0; water < 2; water++) {
    for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++) {
      lw_fence_bed bed = bed_of(1.0);
      bed.surcharge_kpa = water ? 0.4 : 0.0;
      if (water) bed.water_depth_m = 0.02;
      cr_assert_eq(lw_fence_equal_height(&bed, &wind, (lw_fence_measure)m, 0.7, &bed.height_m), LW_OK);
      lw_fence_soil_push(&bed, &soil, NULL);
      cr_expect_float_eq(soil.of[m], 0.7 * wind.of[m], 1e-7, "measure %d", m);
    }
  }
}

Test(checks, a_load_alone_may_come_to_the_wind_and_no_wind_is_met_by_nothing) {
  lw_fence_push wind, still = {{0.0, 0.0, 0.0, 0.0}};
  lw_fence_bed bed = bed_of(1.0);
  double height = 7.0;
  bed.surcharge_kpa = 5.0;
  lw_fence_wind_push(&gust, &wind, NULL);
  cr_assert_eq(lw_fence_equal_height(&bed, &wind, LW_FENCE_BOARD, 1.0, &height), LW_OK);
  cr_expect_float_eq(height, 0.0, 1e-12);
  height = 7.0;
  cr_expect_eq(lw_fence_equal_height(&bed, &still, LW_FENCE_SHEAR, 1.0, &height), LW_NO_SOLUTION);
  cr_expect_float_eq(height, 7.0, 0.0);
}

Test(checks, more_soil_water_and_load_push_more) {
  lw_fence_push before = {{0.0, 0.0, 0.0, 0.0}}, dry, wet, loaded;
  for (double h = 0.1; h < 1.5; h += 0.1) {
    lw_fence_bed bed = bed_of(h);
    lw_fence_soil_push(&bed, &dry, NULL);
    bed.water_depth_m = 0.05;
    lw_fence_soil_push(&bed, &wet, NULL);
    bed.surcharge_kpa = 2.5;
    lw_fence_soil_push(&bed, &loaded, NULL);
    for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++) {
      cr_expect(dry.of[m] > before.of[m] && wet.of[m] > dry.of[m] && loaded.of[m] > wet.of[m], "%g", h);
    }
    before = dry;
  }
}

Test(checks, a_hole_as_deep_as_asked_holds_what_it_was_asked_for) {
  lw_fence_hole hole = {0.6, 0.3, 0.5235987755982988, 18.0, 15.7};
  double depth;
  cr_assert_eq(lw_fence_broms_depth(&hole, 1.4, 0.9, 2.0, &depth), LW_OK);
  hole.depth_m = depth;
  cr_expect_float_eq(lw_fence_broms(&hole, 0.9, NULL), 2.8, 1e-6);
  cr_assert_eq(lw_fence_code_depth_of(&hole, 1.4, 0.9, &depth), LW_OK);
  hole.depth_m = depth;
  cr_expect_float_eq(lw_fence_code_push(&hole, 0.9, NULL), 1.4, 1e-6);
  cr_expect_float_eq(lw_fence_code_depth(1.4, 0.9, 0.3, 15.7 * depth / 3.0), depth, 1e-6);
}

static const lw_result *run_of(const char *changes) {
  static lw_result result;
  lw_case c;
  verdict_case(changes, &c);
  cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, &result, NULL), LW_OK, "%s", changes);
  return &result;
}

/* A fence without wind, or far away, leaves the wall as it is drained; nearer and windier is worse. */
Test(checks, wind_behind_fades_with_distance) {
  static const char *const near_first[] = {
      "fence height=1.8 m;fence place=behind;wind pressure=0.9 kPa;fence distance=0.3 m",
      "fence height=1.8 m;fence place=behind;wind pressure=0.6 kPa;fence distance=0.3 m",
      "fence height=1.8 m;fence place=behind;wind pressure=0.6 kPa;fence distance=0.6 m",
      "fence height=1.8 m;fence place=behind;wind pressure=0.6 kPa;fence distance=60 m"};
  double before = INFINITY;
  for (int i = 0; i < 4; i++) {
    const lw_result *r = run_of(near_first[i]);
    const lw_situation *drained = &r->situations.situation[0];
    const lw_situation *wind = &r->situations.situation[r->situations.count - 1];
    cr_assert_eq(wind->name, LW_SITUATION_WIND);
    double now = wind->base.thrust.total_kn_per_m;
    cr_expect(now < before + 1e-9, "%s: %g", near_first[i], now);
    cr_expect(now > drained->base.thrust.total_kn_per_m - 1e-9, "%s: %g", near_first[i], now);
    if (i == 3) cr_expect_float_eq(now, drained->base.thrust.total_kn_per_m, 1e-9);
    before = now;
  }
}

/* Every strip on the bed lies on all of it, beside what lies there anyway. What is kept of a fence for good
 * is less for its timber, and the same for the ground about its hole. */
Test(checks, a_fence_carries_every_strip_and_timber_tires) {
  static const char *const STRIPS[] = {"site back=fence;post depth=700 mm;load 1 kind=none",
                                       "site back=fence;post depth=700 mm;load 1 kind=strip;"
                                       "load 1 pressure=2 kPa;load 1 near edge=0.1 m;load 1 far edge=0.4 m;"
                                       "load 2 kind=strip;load 2 pressure=3 kPa;load 2 near edge=0.5 m;"
                                       "load 2 far edge=0.8 m"};
  for (int i = 0; i < 2; i++) {
    const lw_fence *fence = &run_of(STRIPS[i])->fence;
    cr_assert(fence->back && fence->status == LW_OK);
    cr_expect_float_eq(fence->bed.surcharge_kpa, i * 5.0, 1e-9, "%g", fence->bed.surcharge_kpa);
    cr_expect(fence->lasting > 0.0 && fence->lasting < 1.0);
    for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++) {
      double kept = m == LW_FENCE_HOLE ? 1.0 : fence->lasting;
      cr_expect_float_eq(fence->lasting_ratio[0][m] * kept, fence->ratio[0][m], 1e-9, "measure %d", m);
    }
  }
}

/* Wind on a fence that the wall carries turns about the toe with an arm of the wall and half the fence. */
Test(checks, wind_on_a_wall_turns_about_its_toe) {
  const lw_result *r = run_of("fence height=1.2 m;fence place=on wall;wind pressure=0.6 kPa");
  const lw_fence_wind *on = &r->fence.on;
  cr_assert(on->present);
  cr_expect_float_eq(on->foot_moment_knm_per_m, on->force_kn_per_m * 0.6, 1e-9);
  cr_expect_float_eq(on->toe_moment_knm_per_m, on->force_kn_per_m * (r->wall.section.height_m + 0.6), 1e-9);
}
