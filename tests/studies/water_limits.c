/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "studies/water_limits.h"
#include "tables/known.h"

/* The level at which each check falls short, held against the wall run again with the water there. */

static const lw_check *find(const lw_situation *s, const lw_water_limit *limit) {
  for (int i = 0; i < s->check_count; i++) {
    const lw_check *c = checks_test_check(s, i);
    if (c->kind == limit->kind && c->at == limit->at && c->joint == limit->joint) return c;
  }
  cr_assert_fail("no such check");
  return NULL;
}

/* The same wall with its way out at that level, so that blocked water stands there and no higher; behind open
 * joints too, by tables that let them hold it. */
static void run_at(const lw_result *result, double depth_m, lw_result *again) {
  static lw_tables holding;
  lw_case c = result->given;
  holding = *result->tables;
  holding.threshold[holding.known[LW_THRESHOLD_OPEN_JOINTS_HOLD]].value = 1.0;
  c.complete = false;
  c.water.overflow_below_top =
      (lw_quantity){.si = depth_m, .origin = LW_GIVEN, .kind = LW_KIND_LENGTH, .table_row = -1};
  cr_assert_eq(lw_run(&c, &holding, LW_DETAIL_EVERYTHING, again, NULL), LW_OK);
}

static void expect_limit(const lw_result *result, const lw_water_limit *limit, lw_result *again) {
  const lw_check *full = find(checks_test_situation(result, LW_SITUATION_OUTLET_BLOCKED), limit);
  const double step = 1e-5;
  if (limit->state == LW_WATER_STANDS_FULL) cr_expect_eq(full->holds, LW_HOLDS);
  if (limit->state != LW_WATER_FALLS_AT) return;
  run_at(result, limit->depth_m.value, again);
  const lw_check *there = find(checks_test_situation(again, LW_SITUATION_OUTLET_BLOCKED), limit);
  cr_expect(limit->jumps || fabs(there->ratio.value - 1.0) < 1e-6, "ratio %.9g", there->ratio.value);
  /* Water that only just reaches the foot has no level below. */
  bool at_foot = limit->jumps && limit->depth_m.value > result->wall.section.height_m - step;
  run_at(result, limit->depth_m.value + step, again);
  cr_expect(at_foot ||
            find(checks_test_situation(again, LW_SITUATION_OUTLET_BLOCKED), limit)->holds == LW_HOLDS);
  run_at(result, limit->depth_m.value - step, again);
  cr_expect_neq(find(checks_test_situation(again, LW_SITUATION_OUTLET_BLOCKED), limit)->holds, LW_HOLDS);
}

static int expect_limits(lw_result *result, lw_result *again) {
  int reached = 0;
  lw_water_find(result, again);
  cr_expect(result->water_limits.found);
  for (int i = 0; i < result->water_limits.count; i++) {
    expect_limit(result, &result->water_limits.limit[i], again);
    reached += result->water_limits.limit[i].state == LW_WATER_FALLS_AT ? 1 : 0;
  }
  return reached;
}

Test(water_limits, run_again_at_that_level_the_ratio_is_one) {
  static const char *const OTHER[] = {"drain outlets=0",      "drain outlets=1",
                                      "drain outlets=2",      "method pressure=coulomb",
                                      "method bearing=vesic", "method uplift as=off resistance",
                                      "wall joints=open"};
  /* Water half as high asks for less. */
  const size_t OPEN = sizeof OTHER / sizeof *OTHER - 1;
  lw_result *again = calloc(1, sizeof *again);
  cr_assert_not_null(again);
  for (size_t i = 0; i < sizeof OTHER / sizeof *OTHER; i++) {
    lw_result *result =
        RUN("wall height=600 mm", "wall embedment=200 mm", "block height=200 mm",
            i == OPEN ? "block depth=380 mm" : "block depth=700 mm", "soil 1 name=clean sand",
            "ground slope=0 deg", "soil below top=40 mm", "load 1 kind=none", "people on cap=no",
            "base friction=0.5", "joint friction=0.6", "stone width=300 mm", "pad thickness=100 mm",
            "footing soil friction angle=24 deg", "allowable bearing=45 kPa", OTHER[i]);
    int reached = expect_limits(result, again);
    cr_expect_gt(reached, 1, "%s: %d checks fall short somewhere", OTHER[i], reached);
    free(result);
  }
  free(again);
}

Test(water_limits, of_any_wall) {
  lw_result *again = calloc(1, sizeof *again), *result = calloc(1, sizeof *result);
  cr_assert(again != NULL && result != NULL);
  int reached = 0;
  dice d = {900};
  for (int i = 0; i < 25; i++) {
    random_wall wall;
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
    reached += expect_limits(result, again);
  }
  cr_expect_gt(reached, 10, "%d", reached);
  free(result);
  free(again);
}

/* Sliding of a block, water of depth d behind: needs times push is mu (W - gw B d/2). */
Test(water_limits, sliding_by_hand) {
  lw_result *result =
      RUN("wall height=1 m", "wall embedment=0 mm", "top width=1 m", "base width=1 m",
          "wall unit weight=22 kN/m3", "soil 1 friction angle=60 deg", "soil 1 unit weight=9.81 kN/m3",
          "soil 1 saturated unit weight=9.81 kN/m3", "ground slope=0 deg", "load 1 kind=none",
          "base friction=0.4", "people on cap=no", "wall friction=0 deg");
  lw_result *scratch = calloc(1, sizeof *scratch);
  cr_assert_not_null(scratch);
  lw_water_find(result, scratch);
  const lw_water_limit *slides = &result->water_limits.limit[0];
  cr_assert_eq(slides->kind, LW_CHECK_SLIDING);
  cr_assert_eq(slides->state, LW_WATER_FALLS_AT);
  /* Moist soil as heavy as water, u = 1 - d deep above it, pushes K gw (u d + u^2/2); below it none. */
  double d = 1.0 - slides->depth_m.value, u = 1.0 - d,
         k = (1.0 - sin(1.0471975511966)) / (1.0 + sin(1.0471975511966));
  double push = 9.81 * (d * d / 2.0 + k * (u * u / 2.0 + u * d));
  double hold = 0.4 * (22.0 - 9.81 * d / 2.0);
  cr_expect(checks_test_near(hold, 1.5 * push, 1e-6), "%.9g, %.9g at %.6g m", hold, push, d);
  free(result);
  free(scratch);
}

/* Of two checks that water makes fall short the graver falls short sooner, with the water lower. */
Test(water_limits, the_one_that_falls_short_sooner_is_graver) {
  const lw_water_limit low = {.state = LW_WATER_FALLS_AT, .depth_m = {0.8, true}},
                       high = {.state = LW_WATER_FALLS_AT, .depth_m = {0.3, true}};
  cr_expect(lw_water_limit_graver(&low, &high));
  cr_expect_not(lw_water_limit_graver(&high, &low));
  cr_expect_not(lw_water_limit_graver(&low, &low));
}
