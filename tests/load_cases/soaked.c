/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Rain that seeps through soil which does not drain: which walls are soaked, of what kind the case is, by
 * which form, and that it is never better than the wall as built. */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "../sheet/support.h"
#include "pressure/seepage.h"
#include "soil/site.h"

/* Base, 0.8 m below the top; the soil 40 mm below it. */
#define WALL \
  "wall height=600 mm", "wall embedment=200 mm", "block height=200 mm", "block depth=500 mm", \
      "soil below top=40 mm", "site behind=ground", "ground slope=0 deg", "load 1 kind=uniform", \
      "load 1 pressure=2.5 kPa", "wall friction=10 deg", "method slip=not"

static const lw_situation *find(const lw_result *result, lw_situation_name name) {
  for (int i = 0; i < result->situations.count; i++)
    if (result->situations.situation[i].name == name) return &result->situations.situation[i];
  return NULL;
}

/* Soil, ways out and ground: the kind, why, and where the water stands (0: it seeps to a drain). */
Test(soaked, which_walls_and_of_what_kind) {
  static const struct {
    const char *soil, *way, *other;
    bool there;
    lw_situation_kind kind;
    lw_situation_why why;
    double depth_m;
  } rows[] = {
      {"soil 1 name=loam", "wall joints=open", "title=x", true, LW_USUAL, LW_WHY_FINE_SOIL, 0.0},
      {"soil 1 name=sandy loam", "wall joints=open", "title=x", true, LW_UNUSUAL, LW_WHY_HEAVY_RAIN, 0.0},
      {"soil 1 name=road base", "wall joints=open", "title=x", true, LW_USUAL, LW_WHY_FINE_SOIL, 0.0},
      {"soil 1 friction angle=30 deg", "wall joints=open", "title=x", true, LW_USUAL, LW_WHY_UNNAMED_SOIL,
       0.0},
      {"soil 1 name=clean sand", "wall joints=open", "title=x", false, 0, 0, 0.0},
      {"soil 1 name=crushed rock", "wall joints=sealed", "title=x", false, 0, 0, 0.0},
      {"soil 1 name=loam", "wall joints=sealed", "title=x", false, 0, 0, 0.0},
      {"soil 1 name=sandy loam", "drain outlets=1", "stone width=300 mm", true, LW_UNUSUAL, LW_WHY_HEAVY_RAIN,
       0.0},
      {"soil 1 name=sandy loam", "drain outlets=1", "stone width=200 mm", false, 0, 0, 0.0},
      {"soil 1 name=sandy loam", "ground drains=yes", "stone width=300 mm", true, LW_UNUSUAL,
       LW_WHY_HEAVY_RAIN, 0.42},
      {"soil 1 name=sandy loam", "wall joints=open", "wall back=lined", false, 0, 0, 0.0},
      {"soil 1 name=sandy loam", "wall joints=open", "setback=10 mm", true, LW_UNUSUAL, LW_WHY_HEAVY_RAIN,
       0.42},
      {"soil 1 name=sandy loam", "wall joints=open", "soil 1 cohesion=1 kPa", true, LW_UNUSUAL,
       LW_WHY_HEAVY_RAIN, 0.42},
      {"soil 1 name=sandy loam", "wall joints=open", "method pressure=at rest", true, LW_UNUSUAL,
       LW_WHY_HEAVY_RAIN, 0.42},
      {"soil 1 name=sandy loam", "wall joints=open", "water held behind=yes", true, LW_USUAL,
       LW_WHY_KNOWN_SEEP, 0.42},
      {"soil 1 name=sandy loam", "wall joints=open", "water depth=300 mm", true, LW_USUAL, LW_WHY_KNOWN_SEEP,
       0.30},
      {"soil 1 name=sandy loam", "wall joints=open", "water depth=900 mm", true, LW_UNUSUAL,
       LW_WHY_HEAVY_RAIN, 0.0},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    lw_result *result = RUN(WALL, rows[i].soil, rows[i].way, rows[i].other);
    const lw_situation *s = find(result, LW_SITUATION_SOAKED);
    cr_expect_eq(s != NULL, rows[i].there, "row %zu", i);
    if (s && rows[i].there) {
      double depth = rows[i].depth_m > 0.0 ? rows[i].depth_m : 0.8 + result->wall.site.pad.thickness_m;
      cr_expect(s->kind == rows[i].kind && s->why == rows[i].why && s->decides, "row %zu: kind %d, why %d", i,
                (int)s->kind, (int)s->why);
      cr_expect_eq(s->seeping, rows[i].depth_m <= 0.0, "row %zu", i);
      cr_expect(fabs(s->water_depth_m - depth) < 1e-9, "row %zu: %g", i, s->water_depth_m);
      /* Water on its way out lifts nothing; what is known to stand there does. */
      bool stands = isfinite(result->wall.site.water_depth_m) && depth < 0.8;
      cr_expect_eq(s->base.contact.uplift_kn_per_m > 1e-9, stands, "row %zu", i);
    }
    free(result);
  }
}

/* A slope steeper than level brings water to any soil. */
Test(soaked, a_slope_behind_makes_it_usual) {
  static const char *const SLOPES[] = {"ground slope=1:20", "ground slope=1:19"};
  for (int i = 0; i < 2; i++) {
    lw_result *result =
        RUN("wall height=600 mm", "wall embedment=200 mm", "block height=200 mm", "block depth=500 mm",
            "site behind=ground", "soil 1 name=sandy loam", "wall joints=open", "method slip=not", SLOPES[i]);
    const lw_situation *s = find(result, LW_SITUATION_SOAKED);
    cr_assert_not_null(s);
    cr_expect_eq(s->kind, i == 0 ? LW_UNUSUAL : LW_USUAL);
    cr_expect_eq(s->why, i == 0 ? LW_WHY_HEAVY_RAIN : LW_WHY_FROM_SLOPE);
    cr_expect_not(s->seeping);
    free(result);
  }
}

/* The base and every joint are pushed as their own height of seeping soil is. */
Test(soaked, the_push_is_that_of_seeping_soil) {
  static const char *const METHODS[] = {"method pressure=coulomb", "method pressure=rankine",
                                        "method pressure=wedge"};
  for (size_t i = 0; i < sizeof METHODS / sizeof *METHODS; i++) {
    lw_result *result = RUN(WALL, "soil 1 name=loam", "wall joints=open", METHODS[i]);
    const lw_situation *s = find(result, LW_SITUATION_SOAKED), *dry = find(result, LW_SITUATION_DRAINED);
    double along = 0.0;
    cr_assert(s && s->seeping && s->base.status == LW_OK, "%s", METHODS[i]);
    cr_assert_eq(lw_seepage_along(&s->base.back.plane, &along, NULL, NULL), LW_OK);
    cr_expect(checks_test_near(s->base.thrust.total_kn_per_m, along, 1e-12));
    cr_expect(checks_test_near(s->base.formula_kn_per_m, dry->base.formula_kn_per_m, 1e-12));
    cr_expect(checks_test_near(s->base.formula_kn_per_m + s->base.rain_kn_per_m, along, 1e-12));
    cr_expect(
        checks_test_near(s->base.contact.horizontal_kn_per_m, along * cos(s->base.thrust.angle_rad), 1e-12));
    /* The soil's part at a third, the load's at a half: between the two. */
    double height = s->base.thrust.height_of_action_m / s->base.back.plane.height_m;
    cr_expect(height > 1.0 / 3.0 && height < dry->base.thrust.height_of_action_m / 0.76, "%g", height);
    cr_expect_eq(s->joint_count, 3);
    for (int k = 0; k < s->joint_count; k++)
      cr_expect_lt(dry->joint[k].thrust_kn_per_m, s->joint[k].thrust_kn_per_m, "joint %d", k + 1);
    free(result);
  }
}

/* A wall without setback, with its resultant in front of the middle and no soil on steps or a heel, which is
 * heavier when it is wet. Bearing by theory may gain by a resultant that moves. */
static bool only_loses(const lw_result *result, const lw_situation *dry) {
  const lw_back_plane *back = &dry->base.back;
  return fabs(result->wall.section.back_rad) < 1e-9 && dry->base.contact.eccentricity_m > 0.0 &&
         back->foot_x_m < back->ground_x_m + 1e-9;
}

static void expect_no_better(const lw_result *result, const lw_situation *s, const char *name) {
  const lw_situation *dry = find(result, LW_SITUATION_DRAINED);
  cr_expect_leq(dry->base.contact.horizontal_kn_per_m, s->base.contact.horizontal_kn_per_m + 1e-9, "%s",
                name);
  for (int k = 0; k < s->check_count && only_loses(result, dry); k++) {
    const lw_check *a = checks_test_check(dry, k), *b = checks_test_check(s, k);
    if (a->kind == LW_CHECK_BEARING || !a->has.known || !b->has.known) continue;
    cr_expect_leq(b->has.value, a->has.value + 1e-9, "%s at %d.%d: %g, then %g: %s", lw_check_slug(a->kind),
                  (int)a->at, a->joint, a->has.value, b->has.value, name);
  }
}

/* Nothing that rain does helps a wall whose thrust is level; the downward part of a thrust on a rough back
 * grows with it, and may hold a low, deep wall. Every other wall is one that water seeps away behind. */
Test(soaked, never_better_than_as_built) {
  lw_result *result = malloc(sizeof *result);
  cr_assert_not_null(result);
  dice d = {41};
  int seeping = 0, standing = 0;
  for (int i = 0; i < 240 / RANDOM_SHARE; i++) {
    random_wall wall;
    char name[4200];
    bool plain = i % 2 == 0;
    (plain ? random_wall_plain : random_wall_make)(&d, &wall);
    if (plain) random_wall_add(&wall, "soil 1 friction angle=%.3f deg", dice_between(&d, 15.0, 44.0));
    if (plain) random_wall_add(&wall, "ground slope=0 deg");
    if (plain) random_wall_add(&wall, "wall joints=%s", dice_pick(&d, 2) ? "open" : "sealed");
    if (plain) random_wall_add(&wall, "drain outlets=1");
    random_wall_add(&wall, "method slip=not");
    random_wall_add(&wall, "method thrust vertical=not");
    random_wall_add(&wall, "stone width=300 mm");
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
    const lw_situation *s = find(result, LW_SITUATION_SOAKED);
    if (!s || s->base.status != LW_OK) continue;
    seeping += s->seeping ? 1 : 0;
    standing += s->seeping ? 0 : 1;
    expect_no_better(result, s, random_wall_name(&wall, name, sizeof name));
  }
  cr_expect(seeping > 80 / RANDOM_SHARE && standing > 40 / RANDOM_SHARE, "%d, %d", seeping, standing);
  free(result);
}

/* Whether a wall stands is the same in a schedule's row, where what does not decide is not run. */
Test(soaked, a_row_says_the_same) {
  lw_result *row = malloc(sizeof *row), *whole = malloc(sizeof *whole);
  cr_assert(row && whole);
  dice d = {43};
  for (int i = 0; i < 120 / RANDOM_SHARE; i++) {
    random_wall wall;
    char name[4200];
    random_wall_make(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    random_wall_add(&wall, "stone width=300 mm");
    random_wall_add(&wall, "stone filter=%s", dice_pick(&d, 2) ? "cloth" : "none");
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_VERDICT, row, NULL), LW_OK);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_CHECKS, whole, NULL), LW_OK);
    cr_expect(row->verdict.stands == whole->verdict.stands &&
                  row->verdict.governing_situation == whole->verdict.governing_situation &&
                  row->verdict.governing_check == whole->verdict.governing_check,
              "%s", random_wall_name(&wall, name, sizeof name));
  }
  free(row);
  free(whole);
}
