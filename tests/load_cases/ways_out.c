/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What the ways out for water make of the blocked outlet: none, the usual state; one, an unusual one that
 * still decides, half as high behind open joints; two or more, printed only. Water must be able to reach
 * them, and without a filter all of them are one. */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "../sheet/support.h"

#define WALL \
  "wall height=600 mm", "wall embedment=200 mm", "block height=200 mm", "block depth=400 mm", \
      "soil below top=40 mm", "site behind=ground", "method slip=not"

enum { OUTLETS = 4, LEVELS = 3, JOINTS = 3, GROUNDS = 3, FILTERS = 4, BACKS = 4, SOILS = 4 };
static const char *const OUTLET[OUTLETS] = {"drain outlets=0", "drain outlets=1", "drain outlets=2",
                                            "drain outlets=unknown"};
static const char *const LEVEL[LEVELS] = {"outlet level=0 mm", "outlet level=-1 mm", "outlet level=unknown"};
static const char *const JOINT[JOINTS] = {"wall joints=open", "wall joints=sealed", "wall joints=unknown"};
static const char *const GROUND[GROUNDS] = {"ground drains=yes", "ground drains=no", "ground drains=unknown"};
static const char *const FILTER[FILTERS] = {"stone filter=cloth", "stone filter=graded", "stone filter=none",
                                            "stone filter=unknown"};
static const char *const BACK[BACKS] = {"wall back=rough", "wall back=smooth", "wall back=lined",
                                        "wall back=unknown"};
/* Silt with stone that leads, silt with none, silt with too little, and rock all through. */
static const char *const SOIL[SOILS] = {"soil 1 name=silt", "soil 1 name=silt", "soil 1 name=silt",
                                        "soil 1 name=crushed rock"};
static const char *const STONE[SOILS] = {"stone width=300 mm", "stone width=0 mm", "stone width=299 mm",
                                         "stone width=0 mm"};

/* One of each; its digits, in the order above. */
enum { KINDS = 7, ALL = OUTLETS * LEVELS * JOINTS * GROUNDS * FILTERS * BACKS * SOILS };
typedef struct ways {
  int outlet, level, joint, ground, filter, back, soil;
} ways;

static ways ways_of(int number) {
  static const int COUNT[KINDS] = {OUTLETS, LEVELS, JOINTS, GROUNDS, FILTERS, BACKS, SOILS};
  int digit[KINDS];
  for (int i = 0; i < KINDS; i++) {
    digit[i] = number % COUNT[i];
    number /= COUNT[i];
  }
  return (ways){digit[0], digit[1], digit[2], digit[3], digit[4], digit[5], digit[6]};
}

/* The rule, a second time. */
typedef struct answer {
  lw_situation_kind kind;
  lw_situation_why why;
  double depth_m;
  int ways;
} answer;

static answer answer_of(const ways *w) {
  const double full = 0.04, half = 0.42; /* of 0.8 m, of which 0.76 m hold water */
  bool led = w->soil == 0 || w->soil == 3, outlets = w->outlet == 1 || w->outlet == 2;
  bool buried = outlets && w->level == 1, drain = outlets && !buried;
  bool face = w->joint == 0 && w->back != 2, below = w->ground == 0, filtered = w->filter < 2;
  int found = (face ? 1 : 0) + (led && drain ? 1 : 0) + (led && below ? 1 : 0);
  int count = found > 1 && !filtered ? 1 : found;
  if (count == 0 && (drain || below)) return (answer){LW_USUAL, LW_WHY_NOT_REACHED, full, 0};
  if (count == 0) return (answer){LW_USUAL, buried ? LW_WHY_BURIED : LW_WHY_NO_WAY_OUT, full, 0};
  if (count > 1) return (answer){LW_WHAT_IF, LW_WHY_WAYS_OUT, full, count};
  if (face) return (answer){LW_UNUSUAL, LW_WHY_OPEN_JOINTS, half, 1};
  return (answer){LW_UNUSUAL, found > 1 ? LW_WHY_AS_ONE : LW_WHY_ONE_WAY_OUT, full, 1};
}

static void run(const ways *w, lw_result *result) {
  lw_case c = CASE(WALL, OUTLET[w->outlet], LEVEL[w->level], JOINT[w->joint], GROUND[w->ground],
                   FILTER[w->filter], BACK[w->back], SOIL[w->soil], STONE[w->soil]);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_CHECKS, result, NULL), LW_OK);
}

Test(ways_out, every_combination_is_what_the_rule_says) {
  lw_result *result = malloc(sizeof *result);
  cr_assert_not_null(result);
  /* A step that shares no factor with any count goes through them all. */
  for (int i = 0; i<ALL; i += RANDOM_SHARE> 1 ? 5 : 1) {
    ways w = ways_of(i);
    answer a = answer_of(&w);
    run(&w, result);
    const lw_situation *blocked = checks_test_situation(result, LW_SITUATION_OUTLET_BLOCKED);
    cr_expect(blocked->kind == a.kind && blocked->why == a.why && result->wall.site.ways_out == a.ways &&
                  blocked->decides == (a.kind != LW_WHAT_IF) &&
                  fabs(blocked->water_depth_m - a.depth_m) < 1e-12,
              "%s, %s, %s, %s, %s, %s, %s, %s: %d ways, water at %g, %d", OUTLET[w.outlet], LEVEL[w.level],
              JOINT[w.joint], GROUND[w.ground], FILTER[w.filter], BACK[w.back], SOIL[w.soil], STONE[w.soil],
              result->wall.site.ways_out, blocked->water_depth_m, (int)blocked->why);
  }
  free(result);
}

/* An outlet below the ground in front lets nothing out, unless the ground falls away as far. */
Test(ways_out, a_buried_outlet_is_none) {
  static const struct {
    const char *level, *slope;
    lw_situation_kind kind;
    lw_situation_why why;
  } rows[] = {
      {"outlet level=0 mm", "front slope=0 deg", LW_UNUSUAL, LW_WHY_ONE_WAY_OUT},
      {"outlet level=30 mm", "front slope=0 deg", LW_UNUSUAL, LW_WHY_ONE_WAY_OUT},
      {"outlet level=-1 mm", "front slope=0 deg", LW_USUAL, LW_WHY_BURIED},
      {"outlet level=-199 mm", "front slope=1:10", LW_UNUSUAL, LW_WHY_ONE_WAY_OUT},
      {"outlet level=-201 mm", "front slope=1:10", LW_USUAL, LW_WHY_BURIED},
      {"outlet level=unknown", "front slope=0 deg", LW_UNUSUAL, LW_WHY_ONE_WAY_OUT},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    lw_result *result = RUN(WALL, "drain outlets=2", "drain outlet length=2 m", "wall joints=sealed",
                            "ground drains=no", "stone width=300 mm", rows[i].level, rows[i].slope);
    const lw_situation *blocked = checks_test_situation(result, LW_SITUATION_OUTLET_BLOCKED);
    cr_expect_eq(blocked->kind, rows[i].kind, "row %zu", i);
    cr_expect_eq(blocked->why, rows[i].why, "row %zu: %d", i, (int)blocked->why);
    free(result);
  }
}

/* Open joints let nothing out below the ground in front; water that stands there anyway, or an overflow, is
 * kept to. The base lies 0.8 m below the top. */
Test(ways_out, half_the_height_has_its_limits) {
  static const struct {
    const char *item, *other;
    double depth_m;
  } rows[] = {{"title=half of all", "mark=W", 0.40},
              {"soil below top=200 mm", "mark=W", 0.50},
              {"overflow below top=200 mm", "mark=W", 0.50},
              {"wall embedment=600 mm", "mark=W", 0.20},
              {"wall embedment=600 mm", "soil below top=350 mm", 0.35},
              {"water depth=300 mm", "mark=W", 0.30},
              {"water depth=500 mm", "mark=W", 0.40},
              {"water depth=300 mm", "overflow below top=400 mm", 0.30}};
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    const char *embedment = i == 3 || i == 4 ? "note=deep" : "wall embedment=200 mm";
    lw_result *result = RUN("course count=4", "block height=200 mm", "block depth=400 mm", "site behind=bed",
                            "wall joints=open", embedment, rows[i].item, rows[i].other);
    const lw_situation *blocked = checks_test_situation(result, LW_SITUATION_OUTLET_BLOCKED);
    cr_expect(fabs(blocked->water_depth_m - rows[i].depth_m) < 1e-12, "row %zu: %g", i,
              blocked->water_depth_m);
    free(result);
  }
}

/* Whether it stands, then the least ratio of what decides. */
static double worth(const lw_result *r) {
  double least = 1e9;
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      const lw_check *check = checks_test_check(s, k);
      if (check->counts && check->ratio.known) least = fmin(least, check->ratio.value);
      if (check->counts && check->holds == LW_CANNOT_SHOW) least = -1.0;
    }
  }
  return least;
}

/* In the place of what is said of it already. */
static void say(random_wall *wall, const char *item) {
  size_t name = strcspn(item, "=") + 1;
  for (int i = 0; i < wall->count; i++) {
    if (strncmp(wall->text[i], item, name) != 0) continue;
    snprintf(wall->text[i], sizeof wall->text[i], "%s", item);
    return;
  }
  random_wall_add(wall, "%s", item);
}

static void try_with(random_wall wall, const char *item, lw_result *result) {
  say(&wall, item);
  lw_case c = random_wall_case(&wall);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_CHECKS, result, NULL), LW_OK);
}

/* Worse and better of one thing about the water. */
static const char *const BETTER[][2] = {
    {"stone filter=none", "stone filter=cloth"}, {"stone filter=none", "stone filter=graded"},
    {"drain outlets=0", "drain outlets=1"},      {"ground drains=no", "ground drains=yes"},
    {"wall joints=sealed", "wall joints=open"},  {"wall back=lined", "wall back=rough"},
    {"stone width=0 mm", "stone width=300 mm"}};

Test(ways_out, no_way_out_and_no_filter_makes_it_worse) {
  lw_result *result = malloc(sizeof *result);
  cr_assert_not_null(result);
  dice d = {1300};
  int moved = 0;
  for (int i = 0; i < 120 / RANDOM_SHARE; i++) {
    random_wall wall;
    char name[4200];
    random_wall_make(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    random_wall_add(&wall, "stone width=%d mm", dice_pick(&d, 3) ? 300 : 0);
    random_wall_add(&wall, "stone filter=%s", dice_pick(&d, 2) ? "cloth" : "none");
    for (size_t k = 0; k < sizeof BETTER / sizeof *BETTER; k++) {
      try_with(wall, BETTER[k][0], result);
      double before = worth(result);
      try_with(wall, BETTER[k][1], result);
      double after = worth(result);
      moved += after > before + 1e-9 ? 1 : 0;
      cr_expect(after >= before - 1e-9, "%s: %g to %g by %s", random_wall_name(&wall, name, sizeof name),
                before, after, BETTER[k][1]);
    }
  }
  cr_expect_lt(20 / RANDOM_SHARE, moved, "%d", moved);
  free(result);
}

/* The outlets of one drain block together. */
Test(ways_out, outlets_on_one_drain_count_once) {
  lw_result *one = malloc(sizeof *one), *many = malloc(sizeof *many);
  cr_assert(one && many);
  dice d = {77};
  for (int i = 0; i < 100 / RANDOM_SHARE; i++) {
    random_wall wall;
    char name[4200];
    random_wall_make(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    random_wall_add(&wall, "stone width=300 mm");
    if (dice_pick(&d, 2)) random_wall_add(&wall, "stone filter=cloth");
    try_with(wall, "drain outlets=1", one);
    try_with(wall, "drain outlets=5", many);
    const lw_situation *a = checks_test_situation(one, LW_SITUATION_OUTLET_BLOCKED);
    const lw_situation *b = checks_test_situation(many, LW_SITUATION_OUTLET_BLOCKED);
    cr_expect(a->kind == b->kind && a->why == b->why && a->decides == b->decides &&
                  fabs(worth(one) - worth(many)) <= 0.0,
              "%s", random_wall_name(&wall, name, sizeof name));
  }
  free(one);
  free(many);
}
