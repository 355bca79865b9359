/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "../sheet/support.h"
#include "standards/factor_set.h"
#include "standards/factors.h"
#include "tables/known.h"
#include "wall/wall.h"

/* Cohesion that a table pairs with the low angle of the clay that is there: only in slips and in bearing by
 * theory, only deep down, and only where the ground is said to lie still. */

enum { WALLS = 12 / RANDOM_SHARE };
/* The worst circle is found to so much: two searches need not end at the same. */
static const double SEARCH = 1e-4;

/* Walls on a hillside of clay, buried deep enough at times for their bearing. */
static void make(dice *d, const char *soil, const char *more, random_wall *items) {
  items->count = 0;
  random_wall_add(items, "course count=%d", 2 + dice_pick(d, 6));
  random_wall_add(items, "block height=%.0f mm", dice_between(d, 150.0, 250.0));
  random_wall_add(items, "block depth=%.0f mm", dice_between(d, 400.0, 1100.0));
  random_wall_add(items, "wall embedment=%.0f mm", dice_between(d, 0.0, 300.0));
  random_wall_add(items, "pad thickness=%.0f mm", dice_between(d, 100.0, 500.0));
  random_wall_add(items, "site behind=ground");
  random_wall_add(items, "soil 1 name=clean sand");
  random_wall_add(items, "ground slope=1:%.1f", dice_between(d, 2.5, 12.0));
  if (dice_pick(d, 2)) random_wall_add(items, "front slope=1:%.1f", dice_between(d, 4.0, 20.0));
  if (dice_pick(d, 2)) random_wall_add(items, "method bearing=vesic");
  random_wall_add(items, "footing soil name=%s", soil);
  random_wall_add(items, "%s", more);
}

static void run_on(const lw_tables *tables, const random_wall *items, lw_result *result) {
  lw_case c = random_wall_case(items);
  lw_error error = {0};
  cr_assert_eq(lw_run(&c, tables, LW_DETAIL_EVERYTHING, result, &error), LW_OK, "%s", error.text);
}

static void expect_same(const lw_result *a, const lw_result *b, const char *name) {
  for (int s = 0; s < a->situations.count; s++) {
    const lw_situation *x = &a->situations.situation[s], *y = &b->situations.situation[s];
    cr_assert_eq(x->check_count, y->check_count);
    for (int k = 0; k < x->check_count; k++) {
      const lw_kept_check *p = &x->kept[k], *q = &y->kept[k];
      cr_expect(memcmp(&p->has, &q->has, sizeof p->has) == 0, "%s", name);
      cr_expect(memcmp(&p->resistance, &q->resistance, sizeof p->resistance) == 0, "%s", name);
    }
    if (x->slip_known)
      cr_expect(memcmp(&x->slip.circle, &y->slip.circle, sizeof x->slip.circle) == 0, "%s", name);
  }
}

/* A slip or a bearing by theory has no less, and its ratio is no lower; all else is the same number. */
static int expect_no_lower(const lw_result *off, const lw_result *on, const char *name) {
  int raised = 0;
  for (int s = 0; s < off->situations.count; s++) {
    const lw_situation *x = &off->situations.situation[s], *y = &on->situations.situation[s];
    cr_assert_eq(x->check_count, y->check_count);
    for (int k = 0; k < x->check_count; k++) {
      const lw_check *p = checks_test_check(x, k), *q = checks_test_check(y, k);
      bool may = p->kind == LW_CHECK_SLIP || p->kind == LW_CHECK_BEARING;
      if (!p->has.known) continue;
      cr_expect_leq(p->has.value, q->has.value * (1.0 + SEARCH), "%d %g %g %s", p->kind, p->has.value,
                    q->has.value, name);
      if (!may) cr_expect(checks_test_near(p->has.value, q->has.value, 1e-12), "%s", name);
      if (p->ratio.known) cr_expect_leq(p->ratio.value, q->ratio.value * (1.0 + SEARCH), "%s", name);
      raised += q->has.value > p->has.value * 1.001 ? 1 : 0;
      /* What a slip has with none of it is what the other has, and that has to be 1.1, or what is asked. */
      if (p->kind != LW_CHECK_SLIP || !y->slip_bare_has.known) continue;
      cr_expect(checks_test_near(y->slip_bare_has.value, p->has.value, 1e-12), "%s", name);
      if (q->holds == LW_HOLDS)
        cr_expect_leq(fmin(1.1, p->needs.value), p->has.value * (1.0 + 1e-9), "%s", name);
    }
  }
  return raised;
}

Test(paired, counts_in_slips_and_bearing_alone_and_never_lowers) {
  const lw_tables *tables = sheet_test_tables();
  lw_tables *without = malloc(sizeof *without);
  lw_result *r[3];
  char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
  dice d = {77};
  int raised = 0;
  cr_assert_not_null(without);
  *without = *tables;
  for (int i = 0; i < without->soil_count; i++) without->soil[i].paired_cohesion_kpa = NAN;
  for (int k = 0; k < 3; k++) cr_assert_not_null(r[k] = calloc(1, sizeof *r[k]));
  for (int i = 0; i < WALLS; i++) {
    random_wall on;
    make(&d, i % 2 ? "firm clay" : "stiff clay", "reactive soil=no", &on);
    random_wall_add(&on, "method format=%s",
                    i % 3 ? "lowwall" : tables->factor[dice_pick(&d, tables->factor_count)].factor_set);
    random_wall off = on;
    random_wall_add(&off, "footing soil cohesion=0 kPa");
    random_wall_name(&on, name, sizeof name);
    run_on(tables, &on, r[0]);
    run_on(tables, &off, r[1]);
    run_on(without, &on, r[2]);
    expect_same(r[1], r[2], name);
    raised += expect_no_lower(r[1], r[0], name);
  }
  cr_expect_lt(WALLS / 4, raised);
  for (int k = 0; k < 3; k++) free(r[k]);
  free(without);
}

static lw_paired pair_of(const char *soil, const char *reactive, const char *more, lw_look look) {
  static lw_wall wall;
  lw_faults faults = {.count = 0};
  lw_case c = {0};
  const char *items[] = {"course count=3", "block depth=400 mm", soil, reactive, more};
  for (int i = 0; i < 5; i++)
    cr_assert_eq(lw_sheet_override(items[i], i + 1, &c, &faults), LW_OK, "%s", items[i]);
  c.look = look;
  cr_assert_eq(lw_case_complete(sheet_test_tables(), &c, &faults), LW_OK);
  lw_wall_build(&c, sheet_test_tables(), &wall);
  return wall.site.paired;
}

static double counts(const char *soil, const char *reactive, const char *more, lw_look look) {
  return pair_of(soil, reactive, more, look).cohesion_kpa;
}

/* [KANY T.2-3] 20 kPa with 20 degrees, 10 with 17.5: the lesser of half and 2. */
Test(paired, counts_only_where_the_clay_is_known_to_be_there_and_to_lie_still) {
  cr_expect(
      checks_test_near(counts("footing soil name=stiff clay", "reactive soil=no", "mark=-", 0), 2.0, 1e-12));
  cr_expect(
      checks_test_near(counts("footing soil name=firm clay", "reactive soil=no", "mark=-", 0), 2.0, 1e-12));
  cr_expect(checks_test_near(
      counts("footing soil name=firm clay", "reactive soil=no", "mark=-", LW_LOOK_LIKELY), 10.0, 1e-12));
  cr_expect_eq(counts("footing soil name=firm clay", "reactive soil=yes", "mark=-", 0), 0.0);
  cr_expect_eq(counts("footing soil name=firm clay", "note=-", "mark=-", 0), 0.0);
  cr_expect_eq(counts("footing soil name=firm clay", "note=-", "mark=-", LW_LOOK_LIKELY), 0.0);
  cr_expect_eq(counts("footing soil name=firm clay", "reactive soil=no", "footing soil cohesion=0 kPa", 0),
               0.0);
  cr_expect_eq(
      counts("footing soil name=firm clay", "reactive soil=no", "footing soil friction angle=25 deg", 0),
      0.0);
  cr_expect_eq(counts("footing soil name=soft clay", "reactive soil=no", "mark=-", 0), 0.0);
  cr_expect_eq(counts("footing soil name=low-plasticity clay", "reactive soil=no", "mark=-", 0), 0.0);
  cr_expect_eq(counts("title=-", "reactive soil=no", "mark=-", 0), 0.0);
}

/* Softened clay keeps 1 kPa beside 20 degrees [SKEMPTON-1977 p.261], by likely values alone. */
Test(paired, counts_near_the_surface_by_likely_values_alone) {
  const char *clays[] = {"footing soil name=stiff clay", "footing soil name=firm clay"};
  for (int i = 0; i < 2; i++) {
    lw_paired cautious = pair_of(clays[i], "reactive soil=no", "mark=-", LW_LOOK_CAUTIOUS);
    lw_paired likely = pair_of(clays[i], "reactive soil=no", "mark=-", LW_LOOK_LIKELY);
    cr_expect_eq(cautious.shallow_kpa, 0.0);
    cr_expect(checks_test_near(likely.shallow_kpa, 1.0, 1e-12));
    cr_expect_leq(likely.shallow_kpa, likely.cohesion_kpa);
    cr_expect_eq(pair_of(clays[i], "reactive soil=yes", "mark=-", LW_LOOK_LIKELY).shallow_kpa, 0.0);
    cr_expect_eq(pair_of(clays[i], "note=-", "mark=-", LW_LOOK_LIKELY).shallow_kpa, 0.0);
    cr_expect_eq(
        pair_of(clays[i], "reactive soil=no", "footing soil cohesion=0 kPa", LW_LOOK_LIKELY).shallow_kpa,
        0.0);
  }
  cr_expect_eq(pair_of("title=-", "reactive soil=no", "mark=-", LW_LOOK_LIKELY).shallow_kpa, 0.0);
}

static void run_likely(const lw_tables *tables, const random_wall *items, lw_result *result) {
  lw_case c = random_wall_case(items);
  lw_error error = {0};
  c.look = LW_LOOK_LIKELY;
  cr_assert_eq(lw_run(&c, tables, LW_DETAIL_CHECKS, result, &error), LW_OK, "%s", error.text);
}

/* Where cohesion jumps half a metre down a search may end a little above the worst circle: docs/theory.md. */
static const double OF_JUMPS = 0.01;

static void expect_none_lower(const lw_result *less, const lw_result *more, const char *name, int *raised) {
  for (int s = 0; s < less->situations.count; s++) {
    const lw_situation *x = &less->situations.situation[s], *y = &more->situations.situation[s];
    cr_assert_eq(x->check_count, y->check_count);
    for (int k = 0; k < x->check_count; k++) {
      const lw_check *p = checks_test_check(x, k), *q = checks_test_check(y, k);
      bool may = p->kind == LW_CHECK_SLIP || p->kind == LW_CHECK_BEARING;
      if (!p->has.known || !q->has.known) continue;
      cr_expect_leq(p->has.value, q->has.value * (1.0 + OF_JUMPS), "%d %g %g %s", p->kind, p->has.value,
                    q->has.value, name);
      if (!may) cr_expect(checks_test_near(p->has.value, q->has.value, 1e-12), "%s", name);
      *raised += q->has.value > p->has.value * 1.001 ? 1 : 0;
    }
  }
}

/* Cautious to likely, and the likely look as more and more counts near the surface. */
Test(paired, what_counts_near_the_surface_never_lowers) {
  lw_tables *tables[4];
  lw_result *r = calloc(2, sizeof *r), *cautious = calloc(1, sizeof *cautious);
  char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
  dice d = {78};
  int raised = 0;
  cr_assert(r && cautious);
  for (int k = 0; k < 4; k++) {
    cr_assert_not_null(tables[k] = malloc(sizeof *tables[k]));
    *tables[k] = *sheet_test_tables();
    tables[k]->threshold[tables[k]->known[LW_THRESHOLD_PAIRED_SHALLOW]].value = 0.7 * k;
  }
  for (int i = 0; i < WALLS; i++) {
    random_wall items;
    make(&d, i % 2 ? "firm clay" : "stiff clay", "reactive soil=no", &items);
    random_wall_name(&items, name, sizeof name);
    run_on(tables[2], &items, cautious);
    for (int s = 0; s < cautious->situations.count; s++) {
      const lw_situation *situation = &cautious->situations.situation[s];
      for (int k = 0; k < situation->check_count; k++) {
        const lw_check *check = checks_test_check(situation, k);
        lw_number likely = lw_looks_has(cautious, situation, check);
        if (check->kind == LW_CHECK_SLIP && check->has.known && likely.known)
          cr_expect_leq(check->has.value, likely.value * (1.0 + SEARCH), "%s", name);
      }
    }
    run_likely(tables[0], &items, &r[0]);
    for (int k = 1; k < 4; k++) {
      run_likely(tables[k], &items, &r[k % 2]);
      expect_none_lower(&r[(k + 1) % 2], &r[k % 2], name, &raised);
    }
  }
  cr_expect_lt(WALLS / 2, raised);
  for (int k = 0; k < 4; k++) free(tables[k]);
  free(cautious);
  free(r);
}

/* The ground's own line, of its corners. */
static double ground_at(const lw_slip_ground *ground, double x_m) {
  for (int i = 0; i + 1 < ground->corner_count; i++) {
    const lw_corner *p = &ground->corner[i], *q = p + 1;
    if (q->x_m > p->x_m && x_m >= p->x_m && x_m <= q->x_m)
      return p->y_m + (q->y_m - p->y_m) * (x_m - p->x_m) / (q->x_m - p->x_m);
  }
  return ground->corner[x_m < 0.0 ? 0 : ground->corner_count - 1].y_m;
}

/* Where the circle comes out of the ground in front. */
static void find_exit(const lw_slip_ground *ground, lw_slip_circle *circle) {
  double in = circle->centre_x_m, out = circle->centre_x_m - circle->radius_m + 1e-9;
  for (int i = 0; i < 60; i++) {
    double x = 0.5 * (in + out), dx = x - circle->centre_x_m;
    bool below =
        circle->centre_y_m - sqrt(circle->radius_m * circle->radius_m - dx * dx) < ground_at(ground, x);
    *(below ? &in : &out) = x;
  }
  circle->exit_x_m = in;
  circle->exit_y_m = ground_at(ground, in);
}

/* Slice by slice: all of it from half a metre below the ground in front, where that falls away below the
 * ground right above; behind the toe below its level there. Above that only what counts there. */
static void expect_slices(const double shallow_kpa, const char *falls) {
  lw_result *result =
      RUN("course count=6", "block height=200 mm", "block depth=900 mm", "wall embedment=200 mm",
          "site behind=ground", "ground slope=1:4", "soil 1 name=clean sand", "footing soil name=stiff clay",
          "reactive soil=no", falls);
  lw_slip_ground ground;
  lw_slip_slices *list = calloc(1, sizeof *list);
  const lw_situation *drained = checks_test_situation(result, LW_SITUATION_DRAINED);
  lw_situation shown = *drained;
  int with = 0, above = 0;
  cr_assert_not_null(list);
  shown.slip_bare = false;
  result->wall.site.paired.shallow_kpa = shallow_kpa;
  lw_situation_slip_ground(&result->wall, result->tables, &shown, &ground);
  for (int deep = 1; deep < 8; deep++) {
    lw_slip_circle circle = {.centre_x_m = -0.2, .centre_y_m = 2.5};
    circle.radius_m = 2.5 + 0.2 + 0.15 * deep;
    find_exit(&ground, &circle);
    circle.entry_x_m = fmin(circle.centre_x_m + circle.radius_m - 0.05, 3.0);
    lw_slip slip;
    if (lw_slip_of_circle(&ground, &circle, 24, &slip, list) != LW_OK) continue;
    for (int i = 0; i < list->count; i++) {
      const lw_slip_slice *slice = &list->slice[i];
      double top = slice->x_m < 0.0 ? fmin(ground_at(&ground, slice->x_m), 0.2) : 0.2;
      bool below = slice->base_y_m < top - 0.5, clay = slice->base_y_m < 0.0 || slice->x_m < 0.0;
      if (fabs(slice->base_y_m - top + 0.5) < 1e-6) continue;
      double there = below ? 2.0 : clay ? shallow_kpa : 0.0;
      cr_expect(checks_test_near(slice->cohesion_kpa + 1.0, there + 1.0, 1e-12), "%g at %g, %g, %s",
                slice->cohesion_kpa, slice->x_m, slice->base_y_m, falls);
      with += below ? 1 : 0;
      above += clay && !below ? 1 : 0;
    }
  }
  cr_expect_lt(5, with);
  cr_expect_lt(5, above);
  free(list);
  free(result);
}

Test(paired, counts_from_half_a_metre_down) {
  static const char *const FALLS[] = {"front slope=0 deg", "front slope=1:8", "front slope=1:3"};
  for (int i = 0; i < 3; i++) {
    expect_slices(0.0, FALLS[i]);
    expect_slices(0.7, FALLS[i]);
  }
}

/* Every set divides it as it divides cohesion. */
Test(paired, is_divided_as_cohesion_is) {
  const lw_tables *tables = sheet_test_tables();
  static lw_wall wall;
  lw_case c = CASE("course count=3", "block depth=400 mm");
  lw_wall_build(&c, tables, &wall);
  for (int k = 0; k < tables->factor_count; k++) {
    lw_factor_set set;
    lw_factor_set_read_of(tables, &tables->factor[k], &set);
    for (int kind = LW_USUAL; kind <= LW_EXTREME; kind++) {
      lw_ground ground = {.design = {.footing = {0.3, 2.0}, .paired_kpa = 2.0, .shallow_kpa = 2.0}};
      lw_factor_set_weaken(&set, (lw_situation_kind)kind, &wall, &ground, NULL);
      cr_expect(checks_test_near(ground.design.paired_kpa, ground.design.footing.cohesion_kpa, 1e-12));
      cr_expect(checks_test_near(ground.design.shallow_kpa, ground.design.footing.cohesion_kpa, 1e-12));
    }
  }
}
