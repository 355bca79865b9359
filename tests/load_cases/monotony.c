/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "../checks/random_wall.h"
#include "../checks/support.h"

/* More load, a steeper slope or higher water behind a wall: the push never falls. Where no soil stands on
 * heel or steps no ratio rises either, as long as the thrust is level: the downward part of a thrust along
 * the ground, or of one with friction on the back, grows with the push and holds a low, deep wall down. */

enum { WALLS = 120 / LONG_SHARE };

/* How bad the site is; one of the three is raised at a time. */
typedef struct site {
  double load_kpa, slope_deg, water_m; /* water: below the top of the wall */
} site;

typedef struct pair {
  lw_result *mild, *harsh;
  char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  const char *raised;
} pair;

static void run_with(const random_wall *bare, const site *s, lw_result *result) {
  random_wall wall = *bare;
  random_wall_add(&wall, "load 1 pressure=%.6f kPa", s->load_kpa);
  random_wall_add(&wall, "ground slope=%.6f deg", s->slope_deg);
  random_wall_add(&wall, "water depth=%.6f m", s->water_m);
  lw_case c = random_wall_case(&wall);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
}

static double push_of(const lw_contact *contact) {
  return contact->horizontal_kn_per_m;
}

static void expect_no_less_push(const pair *p) {
  for (int s = 0; s < p->mild->situations.count; s++) {
    const lw_situation *a = &p->mild->situations.situation[s], *b = &p->harsh->situations.situation[s];
    if (a->base.status == LW_OK && b->base.status == LW_OK) {
      double before = push_of(&a->base.contact), after = push_of(&b->base.contact);
      cr_expect_leq(before, after + 1e-9 * (1.0 + before), "%s: push %.9g, then %.9g: %s", p->raised, before,
                    after, p->name);
    }
    for (int j = 0; j < a->joint_count; j++) {
      if (a->joint[j].status != LW_OK || b->joint[j].status != LW_OK) continue;
      double before = push_of(&a->joint[j].contact), after = push_of(&b->joint[j].contact);
      cr_expect_leq(before, after + 1e-9 * (1.0 + before), "%s: joint %d: %.9g, then %.9g: %s", p->raised,
                    j + 1, before, after, p->name);
    }
  }
}

static void expect_no_higher_ratio(const pair *p) {
  for (int s = 0; s < p->mild->situations.count; s++) {
    const lw_situation *a = &p->mild->situations.situation[s], *b = &p->harsh->situations.situation[s];
    cr_assert_eq(a->check_count, b->check_count);
    for (int i = 0; i < a->check_count; i++) {
      const lw_check *x = checks_test_check(a, i), *y = checks_test_check(b, i);
      char at[32];
      if (!x->ratio.known || !y->ratio.known || a->kind != b->kind) continue;
      /* More of a fill that is stronger than the ground below may hold a slip more than it drives it. */
      if (x->kind == LW_CHECK_SLIP && p->raised[0] == 's') continue;
      double slack = x->kind == LW_CHECK_SLIP ? 1e-2 : 1e-9; /* a search finds the least to 1 % */
      lw_check_print_at(x, at, sizeof at);
      cr_expect_leq(y->ratio.value, x->ratio.value * (1.0 + slack),
                    "%s: %s at %s, %s: ratio %.9g, then %.9g: %s", p->raised, lw_check_slug(x->kind), at,
                    lw_situation_slug(a->name), x->ratio.value, y->ratio.value, p->name);
    }
  }
}

static void try_pair(const random_wall *wall, const site *mild, const site *harsh, pair *p, bool ratios) {
  random_wall named = *wall;
  random_wall_add(&named, "load %.4f to %.4f kPa", mild->load_kpa, harsh->load_kpa);
  random_wall_add(&named, "slope %.4f to %.4f deg", mild->slope_deg, harsh->slope_deg);
  random_wall_add(&named, "water %.4f to %.4f m", mild->water_m, harsh->water_m);
  random_wall_name(&named, p->name, sizeof p->name);
  run_with(wall, mild, p->mild);
  run_with(wall, harsh, p->harsh);
  expect_no_less_push(p);
  if (ratios) expect_no_higher_ratio(p);
}

static void try_wall(dice *d, const random_wall *wall, double friction_deg, pair *p, bool ratios) {
  site mild = {dice_between(d, 0.0, 8.0), dice_between(d, 0.0, 0.6) * friction_deg,
               dice_between(d, 0.1, 1.5)};
  site harsh = mild;
  p->raised = "load";
  harsh.load_kpa += dice_between(d, 0.1, 6.0);
  try_pair(wall, &mild, &harsh, p, ratios);
  p->raised = "water";
  harsh = mild;
  harsh.water_m *= dice_between(d, 0.0, 0.95);
  try_pair(wall, &mild, &harsh, p, ratios);
  p->raised = "slope";
  harsh = mild;
  harsh.slope_deg += dice_between(d, 0.1, 0.35) * friction_deg;
  try_pair(wall, &mild, &harsh, p, ratios);
}

static void try_method(const char *method, const char *vertical, bool setback) {
  dice d = {421};
  pair p = {.mild = calloc(1, sizeof(lw_result)), .harsh = calloc(1, sizeof(lw_result))};
  cr_assert(p.mild != NULL && p.harsh != NULL);
  for (int i = 0; i < WALLS; i++) {
    random_wall wall;
    random_wall_plain(&d, &wall);
    double friction = dice_between(&d, 20.0, 42.0);
    random_wall_add(&wall, "soil 1 friction angle=%.4f deg", friction);
    random_wall_add(&wall, "%s", method);
    /* A slip is no push, is held by tests of its own, and its search costs more than all the rest. */
    random_wall_add(&wall, "method slip=not");
    if (vertical != NULL) random_wall_add(&wall, "%s", vertical);
    if (setback) random_wall_add(&wall, "setback=%.3f mm", dice_between(&d, 0.0, 60.0));
    try_wall(&d, &wall, friction, &p, vertical != NULL && !setback);
  }
  free(p.mild);
  free(p.harsh);
}

static const char *const METHODS[] = {"method pressure=rankine", "method pressure=coulomb",
                                      "method pressure=wedge", "method pressure=at rest"};

Test(monotony, push_of_upright_walls) {
  for (int i = 0; i < 4; i++) try_method(METHODS[i], NULL, false);
}

Test(monotony, push_of_walls_that_lean_back) {
  for (int i = 0; i < 4; i++) try_method(METHODS[i], NULL, true);
}

Test(monotony, ratios_under_a_level_thrust) {
  for (int i = 0; i < 4; i++) try_method(METHODS[i], "method thrust direction=level", false);
}

Test(monotony, ratios_without_the_vertical_part) {
  for (int i = 0; i < 4; i++) try_method(METHODS[i], "method thrust vertical=not", false);
}
