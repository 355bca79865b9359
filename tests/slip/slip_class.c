/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../sheet/support.h"
#include "../checks/random_wall.h"
#include "slip_dense.h"

#include <criterion/criterion.h>
#include <lowwall/result.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

/* The search for slips against a second program, on walls of the kinds that have circles where a search may
 * not look or a cross-section where a sum may go wrong. */

enum { OF_A_KIND = 5 / (RANDOM_SHARE > 1 ? 5 : 1) };

static void ground_behind(dice *d, random_wall *w) {
  double weight = dice_between(d, 16.0, 20.0);
  random_wall_add(w, "site behind=ground");
  random_wall_add(w, "course count=%d", 2 + dice_pick(d, 6));
  random_wall_add(w, "block height=%.3f m", dice_between(d, 0.12, 0.22));
  random_wall_add(w, "block depth=%.3f m", dice_between(d, 0.25, 0.6));
  random_wall_add(w, "block unit weight=%.2f kN/m3", dice_between(d, 18.0, 24.0));
  random_wall_add(w, "wall embedment=%.3f m", dice_between(d, 0.0, 0.12));
  random_wall_add(w, "soil 1 friction angle=%.2f deg", dice_between(d, 26.0, 36.0));
  random_wall_add(w, "soil 1 unit weight=%.2f kN/m3", weight);
  random_wall_add(w, "soil 1 saturated unit weight=%.2f kN/m3", weight + 2.0);
  random_wall_add(w, "people on cap=no");
  random_wall_add(w, "load 1 kind=none");
}

static void weak_below(dice *d, random_wall *w) {
  random_wall_add(w, "footing soil friction angle=%.2f deg", dice_between(d, 20.0, 34.0));
  random_wall_add(w, "footing soil cohesion=%.2f kPa", dice_pick(d, 2) ? dice_between(d, 0.0, 6.0) : 0.0);
  random_wall_add(w, "footing soil unit weight=%.2f kN/m3", dice_between(d, 15.0, 20.0));
}

static void set_back(dice *d, random_wall *w) {
  weak_below(d, w);
  random_wall_add(w, "setback=%.3f m", dice_between(d, 0.02, 0.1));
  random_wall_add(w, "ground slope=0 deg");
  if (dice_pick(d, 2)) random_wall_add(w, "soil below top=%.3f m", dice_between(d, 0.0, 0.06));
}

static void long_slope(dice *d, random_wall *w) {
  weak_below(d, w);
  random_wall_add(w, "ground slope=%.2f deg", dice_between(d, 12.0, 25.0));
  random_wall_add(w, "soil 1 cohesion=%.2f kPa", dice_between(d, 0.0, 4.0));
  if (dice_pick(d, 3)) random_wall_add(w, "ground slope run=%.2f m", dice_between(d, 3.0, 30.0));
  if (dice_pick(d, 2)) random_wall_add(w, "setback=%.3f m", dice_between(d, 0.0, 0.05));
}

static void named_soil(dice *d, random_wall *w) {
  static const char *const NAMES[] = {"clean sand", "road base", "loose sand", "crushed rock"};
  random_wall_add(w, "footing soil name=%s", NAMES[dice_pick(d, 4)]);
  random_wall_add(w, "ground slope=0 deg");
  if (dice_pick(d, 2)) random_wall_add(w, "front slope=%.2f deg", dice_between(d, 0.0, 15.0));
}

static void fallen_front(dice *d, random_wall *w) {
  weak_below(d, w);
  random_wall_add(w, "ground slope=0 deg");
  random_wall_add(w, "front slope=%.2f deg", dice_between(d, 6.0, 18.0));
  random_wall_add(w, "water depth=%.3f m", dice_between(d, 0.2, 0.4));
}

static void free_water(dice *d, random_wall *w) {
  weak_below(d, w);
  random_wall_add(w, "ground slope=0 deg");
  random_wall_add(w, "water depth=%.3f m", dice_between(d, 0.0, 0.15));
  random_wall_add(w, "front water depth=%.3f m", dice_between(d, 0.05, 0.35));
  if (dice_pick(d, 2)) random_wall_add(w, "front slope=%.2f deg", dice_between(d, 3.0, 15.0));
}

static void footing_behind(dice *d, random_wall *w) {
  double near = dice_between(d, 0.3, 3.5);
  weak_below(d, w);
  random_wall_add(w, "ground slope=0 deg");
  random_wall_add(w, "load 2 kind=strip");
  random_wall_add(w, "load 2 pressure=%.2f kPa", dice_between(d, 20.0, 80.0));
  random_wall_add(w, "load 2 near edge=%.3f m", near);
  random_wall_add(w, "load 2 far edge=%.3f m", near + dice_between(d, 0.3, 0.8));
  random_wall_add(w, "load 2 below ground=%.3f m", dice_between(d, 0.1, 0.6));
}

static const struct {
  const char *name;
  void (*add)(dice *d, random_wall *w);
} KINDS[] = {{"set back", set_back},         {"long slope", long_slope}, {"named soil", named_soil},
             {"fallen front", fallen_front}, {"free water", free_water}, {"footing", footing_behind}};

/* Where no rise or fall is endless nothing may lie further off than circles are looked for. */
static void look_further(lw_slip_box *box) {
  if (box->exit_to_m - box->exit_from_m > 900.0 * box->exit_half_m) return;
  box->exit_from_m *= 2.0;
  box->entry_to_m *= 2.0;
}

static void hold(const char *kind, const random_wall *wall, lw_result *r) {
  char name[1024];
  lw_case c = random_wall_case(wall);
  lw_slip_ground ground;
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, r, NULL), LW_OK);
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    if (!s->slip_known || s->slip.status != LW_OK) continue;
    lw_situation_slip_ground(&r->wall, sheet_test_tables(), s, &ground);
    look_further(&ground.box);
    double same = dense_factor(&ground, &s->slip.circle, 500), least = dense_least(&ground, 1.6);
    random_wall_name(wall, name, sizeof name);
    /* Finer slices may leave a circle without an answer whose exit is as steep as it may be. */
    if (isfinite(same))
      cr_expect_lt(fabs(s->slip.bishop / same - 1.0), 0.01, "%s: %.4f, and its circle alone %.4f: %s", kind,
                   s->slip.bishop, same, name);
    cr_expect_lt(s->slip.bishop, 1.015 * least, "%s: %.4f, and %.4f is there: %s", kind, s->slip.bishop,
                 least, name);
  }
}

Test(checks, slip_search_against_a_second_program) {
  lw_result *r = malloc(sizeof *r);
  dice d = {20261128};
  cr_assert_not_null(r);
  for (size_t k = 0; k < sizeof KINDS / sizeof *KINDS; k++)
    for (int i = 0; i < OF_A_KIND; i++) {
      random_wall wall = {.count = 0};
      ground_behind(&d, &wall);
      KINDS[k].add(&d, &wall);
      hold(KINDS[k].name, &wall, r);
    }
  free(r);
}

/* A neighbour's footing that begins four heights behind a low wall is looked at too. */
Test(checks, slip_of_a_footing_far_behind_a_low_wall) {
  lw_result *r = malloc(sizeof *r);
  random_wall wall = {.count = 0};
  cr_assert_not_null(r);
  const char *const ITEMS[] = {"site behind=ground",
                               "course count=2",
                               "block height=0.121 m",
                               "block depth=0.3 m",
                               "wall embedment=0 m",
                               "soil 1 friction angle=28 deg",
                               "footing soil friction angle=24 deg",
                               "ground slope=0 deg",
                               "people on cap=no",
                               "load 1 kind=none",
                               "load 2 kind=strip",
                               "load 2 pressure=70 kPa",
                               "load 2 near edge=1.1 m",
                               "load 2 far edge=1.9 m",
                               "load 2 below ground=0.4 m"};
  for (size_t i = 0; i < sizeof ITEMS / sizeof *ITEMS; i++) random_wall_add(&wall, "%s", ITEMS[i]);
  hold("far footing", &wall, r);
  free(r);
}

static double slip_of(const lw_case *c, lw_situation *drained) {
  static lw_result r;
  cr_assert_eq(lw_run(c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &r, NULL), LW_OK);
  *drained = r.situations.situation[0];
  cr_assert(drained->slip_known && drained->slip.status == LW_OK);
  return drained->slip.bishop;
}

/* A low wall at the foot of the slope of [ACADS-1989 example 1(a)], whose own factor is 1.00, does not hold
 * it up; the tolerance is the one of tests/handbook/slip.csv. */
Test(checks, slip_of_a_slope_behind_a_low_wall) {
  lw_situation drained;
  lw_case c = CASE("site behind=ground", "wall height=0.6 m", "wall embedment=0 m", "course count=3",
                   "block height=0.2 m", "block depth=0.4 m", "block unit weight=20 kN/m3",
                   "ground slope=1:2", "ground slope run=20 m", "soil 1 friction angle=19.6 deg",
                   "soil 1 cohesion=3 kPa", "soil 1 unit weight=20 kN/m3",
                   "footing soil friction angle=19.6 deg", "footing soil cohesion=3 kPa",
                   "footing soil unit weight=20 kN/m3", "load 1 kind=none", "people on cap=no");
  cr_expect_lt(slip_of(&c, &drained), 1.02);
}

/* A longer rise is never better, and from some length on hardly worse. */
Test(checks, slip_of_longer_and_longer_slopes) {
  static const char *const RUNS[] = {"0.3 m", "1 m", "3 m", "6 m", "12 m", "25 m", "50 m", "200 m", "1000 m"};
  lw_situation drained;
  double before = INFINITY, now = INFINITY;
  for (size_t i = 0; i < sizeof RUNS / sizeof *RUNS; i++) {
    char run[48];
    snprintf(run, sizeof run, "ground slope run=%s", RUNS[i]);
    lw_case c = CASE("site behind=ground", "course count=4", "block height=0.2 m", "block depth=0.5 m",
                     "ground slope=24 deg", run, "soil 1 friction angle=30 deg", "soil 1 cohesion=2 kPa",
                     "footing soil friction angle=28 deg", "footing soil cohesion=2 kPa", "load 1 kind=none",
                     "people on cap=no");
    before = now;
    now = slip_of(&c, &drained);
    cr_expect_lt(now, 1.005 * before, "%s: %.4f after %.4f", RUNS[i], now, before);
  }
  cr_expect_lt(fabs(now / before - 1.0), 0.02, "%.4f after %.4f", now, before);
}

/* Ground in front whose weight is known as a range counts as its light end where it helps: never better than
 * with either end given, and no better than the light end in front of a level wall. */
Test(checks, slip_weighs_a_named_soil_by_its_light_end_in_front) {
  static const char *const SOILS[] = {"clean sand", "loose sand", "road base", "crushed rock"};
  lw_situation drained;
  for (int i = 0; i < 4; i++) {
    char named[48], heavy[64], light[64];
    snprintf(named, sizeof named, "footing soil name=%s", SOILS[i]);
    lw_case c = CASE("site behind=ground", "course count=4", "block height=0.2 m", "block depth=0.4 m",
                     "wall embedment=0.2 m", "ground slope=0 deg", "soil 1 friction angle=31 deg", named,
                     "load 1 kind=none", "people on cap=no");
    double by_range = slip_of(&c, &drained);
    snprintf(heavy, sizeof heavy, "footing soil unit weight=%.3f kN/m3", c.ground.footing.unit_weight.si);
    snprintf(light, sizeof light, "footing soil unit weight=%.3f kN/m3",
             c.ground.footing.light_unit_weight.si);
    cr_assert_lt(c.ground.footing.light_unit_weight.si, c.ground.footing.unit_weight.si);
    const char *given[] = {heavy, light};
    for (int k = 0; k < 2; k++) {
      lw_case one = CASE("site behind=ground", "course count=4", "block height=0.2 m", "block depth=0.4 m",
                         "wall embedment=0.2 m", "ground slope=0 deg", "soil 1 friction angle=31 deg", named,
                         given[k], "load 1 kind=none", "people on cap=no");
      double by_one = slip_of(&one, &drained);
      cr_expect_lt(by_range, (k == 0 ? 0.999 : 1.005) * by_one, "%s, %s: %.4f and %.4f", SOILS[i], given[k],
                   by_range, by_one);
    }
  }
}

/* Under a base that is pressed all over, the water of the slip is that of the uplift. */
Test(checks, slip_has_the_uplifts_water_under_the_wall) {
  static const char *const FRONTS[] = {"0.7 m", "0.45 m", "0.1 m"};
  for (int i = 0; i < 3; i++) {
    char front[48];
    lw_situation drained;
    lw_slip_ground ground;
    static lw_result r;
    snprintf(front, sizeof front, "front water depth=%s", FRONTS[i]);
    lw_case c = CASE("site behind=ground", "course count=4", "block height=0.2 m", "block depth=0.9 m",
                     "wall embedment=0.2 m", "water depth=0.05 m", front, "ground slope=0 deg",
                     "load 1 kind=none", "people on cap=no");
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &r, NULL), LW_OK);
    drained = r.situations.situation[0];
    lw_situation_slip_ground(&r.wall, sheet_test_tables(), &drained, &ground);
    double uplift = 0.0;
    for (int k = 0; k < drained.base.forces.count; k++)
      if (drained.base.forces.force[k].kind == LW_FORCE_UPLIFT)
        uplift -= drained.base.forces.force[k].vertical_kn_per_m;
    const lw_slip_water *w = &ground.water;
    double under =
        0.5 * (w->front_y_m + w->rear_y_m) * (w->rear_x_m - w->front_x_m) * w->unit_weight_kn_per_m3;
    cr_expect_lt(fabs(under / uplift - 1.0), 1e-9, "%s: %.5f and %.5f", front, under, uplift);
  }
}
