/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "remedies/costs.h"

/* What each caution costs. */

static lw_result *run_of(const random_wall *wall) {
  const char *arguments[RANDOM_ITEMS + 1] = {NULL};
  for (int i = 0; i < wall->count; i++) arguments[i] = wall->text[i];
  return checks_test_run(arguments);
}

static lw_result *with_costs(const random_wall *wall) {
  lw_result *r = run_of(wall), *scratch = calloc(1, sizeof *scratch);
  cr_assert_not_null(scratch);
  lw_remedies_find(r, scratch);
  free(scratch);
  return r;
}

static const struct {
  const char *item, *cautious, *likely;
} values[] = {{"soil 1 friction angle", "28 deg", "32 deg"},
              {"wall friction", "14 deg", "21.3 deg"},
              {"soil 1 unit weight", "20 kN/m3", "18 kN/m3"},
              {"load 1 pressure", "2 kPa", "1 kPa"},
              {"base friction", "0.35", "0.45"},
              {"wall unit weight", "21 kN/m3", "22 kN/m3"}};
enum { VALUES = sizeof values / sizeof *values };

/* A wall of which everything is given, each value with a likely one beside it, but for those left out; `put`
 * is given by its likely value. */
static void given_wall(double width_m, int put, random_wall *wall) {
  static const char *const RUBRIC[] = {
      "wall kind=section",  "wall height=0.75 m", "overflow below top=0.75 m", "wall embedment=0 m",
      "site behind=ground", "ground slope=0 deg", "front slope=0 deg",         "soil below top=0 m",
      "drain outlets=2",    "people on cap=no",   "method slip=not",           "allowable bearing=200 kPa",
      "load 1 kind=uniform"};
  wall->count = 0;
  for (size_t i = 0; i < sizeof RUBRIC / sizeof *RUBRIC; i++) random_wall_add(wall, "%s", RUBRIC[i]);
  random_wall_add(wall, "top width=%.3f m", width_m);
  random_wall_add(wall, "base width=%.3f m", width_m);
  for (int i = 0; i < VALUES; i++) {
    random_wall_add(wall, "%s=%s", values[i].item, i == put ? values[i].likely : values[i].cautious);
    random_wall_add(wall, "%s likely=%s", values[i].item, values[i].likely);
  }
}

static int value_of(const lw_cost *cost) {
  for (int i = 0; i < VALUES; i++)
    if (strcmp(values[i].item, cost->item) == 0) return i;
  return -1;
}

static bool same(lw_number a, lw_number b) {
  return a.known == b.known && fabs(a.value - b.value) < 1e-9;
}

/* Each is what the wall has where the sheet gives that value in place of the cautious one. */
Test(costs, each_is_what_the_wall_has_with_that_value_alone) {
  for (double width = 0.2; width < 0.6; width += 0.1) {
    random_wall wall;
    given_wall(width, -1, &wall);
    lw_result *r = with_costs(&wall);
    int told = 0;
    for (int i = 0; i < r->cost_count; i++) {
      lw_check check;
      int value = value_of(&r->cost[i]);
      if (value < 0) continue;
      told++;
      cr_expect_str_eq(r->cost[i].cautious, values[value].cautious);
      cr_expect_str_eq(r->cost[i].likely, values[value].likely);
      given_wall(width, value, &wall);
      lw_result *then = run_of(&wall);
      cr_assert(lw_verdict_governing(then, &check));
      cr_expect(same(r->cost[i].has, check.has) && same(r->cost[i].ratio, check.ratio), "%s: %.6f, %.6f",
                r->cost[i].item, r->cost[i].has.value, check.has.value);
      cr_expect(same(r->cost[i].least, then->looks.cautious.has), "%s", r->cost[i].item);
      free(then);
    }
    cr_expect_gt(told, 3, "of a wall %.1f m wide only %d are told", width, told);
    free(r);
  }
}

Test(costs, the_greatest_gain_stands_first_and_none_is_a_loss) {
  dice d = {12};
  int seen = 0;
  char name[600];
  for (int i = 0; i < 16 / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    random_wall_add(&wall, "course count=%d", 2 + dice_pick(&d, 3));
    random_wall_add(&wall, "block height=%d mm", 100 + 50 * dice_pick(&d, 3));
    random_wall_add(&wall, "block depth=%d mm", 200 + 50 * dice_pick(&d, 10));
    random_wall_add(&wall, "wall embedment=0 mm");
    random_wall_add(&wall, "site behind=%s", dice_pick(&d, 2) ? "bed" : "ground");
    random_wall_add(&wall, "method slip=not");
    lw_result *r = with_costs(&wall);
    bool moves = lw_costs_in_times(r);
    lw_check now;
    random_wall_name(&wall, name, sizeof name);
    cr_assert(lw_verdict_governing(r, &now), "%s", name);
    double before = INFINITY, from = moves ? r->looks.cautious.has.value : now.ratio.value;
    for (int k = 0; k < r->cost_count; k++) {
      const lw_cost *cost = &r->cost[k];
      double value = moves ? cost->least.value : cost->ratio.value;
      cr_expect(value <= before + 1e-9 && value >= from - 1e-9 && !cost->worse, "%s: %s", name, cost->item);
      before = value;
      seen++;
    }
    free(r);
  }
  cr_expect_gt(seen, 8 / RANDOM_SHARE);
}

Test(costs, a_likely_value_that_is_worse_is_taken_and_told) {
  random_wall wall;
  given_wall(0.3, -1, &wall);
  for (int i = 0; i < wall.count; i++)
    if (strncmp(wall.text[i], "wall unit weight likely", 23) == 0)
      lw_print(wall.text[i], sizeof wall.text[i], "wall unit weight likely=19 kN/m3");
  lw_result *r = with_costs(&wall);
  bool told = false;
  for (int i = 0; i < r->cost_count; i++)
    told = told ||
           (strcmp(r->cost[i].item, "wall unit weight") == 0 && r->cost[i].worse && i == r->cost_count - 1);
  cr_expect(told);
  free(r);
}

static const lw_cost *cost_of(const lw_result *r, const char *item) {
  for (int i = 0; i < r->cost_count; i++)
    if (strcmp(r->cost[i].item, item) == 0) return &r->cost[i];
  return NULL;
}

/* On a slope of clay, deep enough for a slip to reach what does not soften. */
static const char *const TERRACE[] = {
    "course count=4",          "block depth=500 mm",       "block height=200 mm",  "wall embedment=200 mm",
    "front slope=10 deg",      "soil 1 name=clean sand",   "wall joints=open",     "stone width=300 mm",
    "stone filter=cloth",      "drain outlets=2",          "vehicle access=no",    "load 1 kind=uniform",
    "load 1 pressure=2.5 kPa", "building distance=30 m",   "pad thickness=150 mm", "pad width=1200 mm",
    "setback=20 mm",           "pad material=crushed rock"};

/* Clay of which nobody said whether it cracks: what the answer no gives stands in the list; given, it does
 * not. */
Test(costs, clay_that_may_crack_is_told_of_where_nobody_answered) {
  static const char *const CLAYS[] = {"firm clay", "stiff clay"};
  for (int i = 0; i < 2; i++) {
    random_wall wall = {0};
    for (size_t k = 0; k < sizeof TERRACE / sizeof *TERRACE; k++) random_wall_add(&wall, "%s", TERRACE[k]);
    random_wall_add(&wall, "footing soil name=%s", CLAYS[i]);
    lw_result *r = with_costs(&wall);
    const lw_cost *cost = cost_of(r, "reactive soil");
    random_wall_add(&wall, "reactive soil=no");
    lw_result *then = with_costs(&wall);
    cr_expect_null(cost_of(then, "reactive soil"));
    cr_assert_not_null(cost, "%s", CLAYS[i]);
    cr_expect(same(cost->least, then->looks.cautious.has), "%s: %.4f", CLAYS[i], cost->least.value);
    cr_expect(cost->question[0] != '\0' && !cost->worse);
    free(r);
    free(then);
  }
}

/* The load that stands for the use of the ground asks for that use, until it is told. */
Test(costs, the_load_by_use_is_settled_by_the_use) {
  for (int given = 0; given < 2; given++) {
    random_wall wall = {0};
    random_wall_add(&wall, "course count=4");
    random_wall_add(&wall, "block depth=250 mm");
    random_wall_add(&wall, "vehicle access=no");
    random_wall_add(&wall, "footing soil name=clean sand");
    if (given) random_wall_add(&wall, "bed use=walked");
    lw_result *r = with_costs(&wall);
    const lw_cost *cost = cost_of(r, "load 1 pressure");
    cr_assert_not_null(cost);
    cr_expect_eq(strstr(cost->question, "plants only") != NULL, given == 0, "%s", cost->question);
    free(r);
  }
}
