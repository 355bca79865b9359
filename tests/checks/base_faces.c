/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"
#include "load_cases/basis.h"
#include "random_wall.h"
#include "soil/site.h"
#include "standards/factor_set.h"
#include "standards/factors.h"
#include "wall/wall.h"
#include "support.h"

/* Where the base friction is not given a wall slides on its bed, or bed and wall on the ground: the less of
 * the two, and of clay the less of drained and undrained. Everything is worked out here a second time. */

enum { WALLS = 80 / RANDOM_SHARE };
static const double DEGREE = 3.14159265358979323846 / 180.0;

/* Tables that a test may change. */
static lw_tables *own_tables(void) {
  static lw_tables *tables;
  if (!tables) tables = malloc(sizeof *tables);
  cr_assert_not_null(tables);
  *tables = *sheet_test_tables();
  return tables;
}

static bool is_about(const char *text, const char *item) {
  return strncmp(text, item, strlen(item)) == 0;
}

/* Without what the sheet says of the base and the ground below. */
static void make(dice *d, random_wall *items) {
  random_wall all;
  random_wall_make(d, &all);
  items->count = 0;
  for (int i = 0; i < all.count; i++) {
    const char *text = all.text[i];
    if (is_about(text, "base ") && !is_about(text, "base course") && !is_about(text, "base width")) continue;
    if (is_about(text, "footing soil") || is_about(text, "method base") || is_about(text, "method slip"))
      continue;
    if (is_about(text, "method passive") || is_about(text, "method conventions") ||
        is_about(text, "method format"))
      continue;
    random_wall_add(items, "%s", text);
  }
  random_wall_add(items, "method slip=not");
}

static void run_on(const lw_tables *tables, const random_wall *items, lw_look look, lw_result *result) {
  const char *arguments[RANDOM_ITEMS + 1] = {NULL};
  lw_case c = {0};
  lw_faults faults = {.count = 0};
  lw_error error = {0};
  for (int i = 0; i < items->count; i++)
    cr_assert_eq(lw_sheet_override(arguments[i] = items->text[i], i + 1, &c, &faults), LW_OK, "%s",
                 arguments[i]);
  c.look = look;
  cr_assert_eq(lw_case_complete(tables, &c, &faults), LW_OK, "%s", faults.fault[0].wanted);
  cr_assert_eq(lw_run(&c, tables, LW_DETAIL_EVERYTHING, result, &error), LW_OK, "%s", error.text);
}

/* By hand: the angles and the strengths of the table. What nothing may stand on holds nothing. */
static double ground_of(const lw_soil_row *row) {
  return isnan(row->critical_rad) ? 0.0 : tan(row->critical_rad);
}

static void expect_sliding(const lw_result *result, const lw_situation *situation, const lw_check *check,
                           const lw_soil_row *row, const char *name) {
  lw_basis by;
  if (!check->has.known || !lw_check_basis(&result->wall, result->tables, situation, check, &by)) return;
  const lw_contact *contact = &by.body.contact;
  bool between = result->wall.site.pad.thickness_m > 0.0;
  double ground = ground_of(row), bed = 0.5,
         tangent = check->at == LW_AT_PAD ? ground
                   : between              ? bed
                                          : fmin(bed, ground);
  double friction = tangent * by.on_friction * fmax(contact->vertical_kn_per_m, 0.0);
  double cu = check->at == LW_AT_BASE && between ? NAN : row->undrained_kpa;
  /* Nothing bears more than pi + 2 times its undrained strength: so much of it bears at least. */
  double bears = fmax(contact->vertical_kn_per_m, 0.0) / (3.14159265358979323846 + 2.0);
  double width = fmax(contact->inside ? contact->effective_width_m : 0.0, bears / cu);
  double expected = by.on_sliding * fmin(friction, isnan(cu) ? INFINITY : cu * width);
  cr_expect(checks_test_near(check->resistance.value, expected, 1e-9), "%s: %g, by hand %g", name,
            check->resistance.value, expected);
}

/* The default set weakens nothing, and nothing in front is counted: the less of the two faces, whatever the
 * wall and the ground. */
Test(base_faces, are_the_less_of_both_worked_out_again) {
  const lw_tables *tables = sheet_test_tables();
  lw_result *result = calloc(1, sizeof *result);
  char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
  dice d = {11};
  int checked = 0;
  for (int i = 0; i < WALLS; i++) {
    random_wall items;
    make(&d, &items);
    const lw_soil_row *row = &tables->soil[dice_pick(&d, tables->soil_count)];
    random_wall_add(&items, "footing soil name=%s", row->name);
    random_wall_name(&items, name, sizeof name);
    run_on(tables, &items, LW_LOOK_CAUTIOUS, result);
    for (int s = 0; s < result->situations.count; s++) {
      const lw_situation *situation = &result->situations.situation[s];
      for (int k = 0; k < situation->check_count; k++) {
        const lw_check *check = checks_test_check(situation, k);
        if (check->kind != LW_CHECK_SLIDING || (check->at != LW_AT_BASE && check->at != LW_AT_PAD)) continue;
        expect_sliding(result, situation, check, row, name);
        checked++;
      }
    }
  }
  cr_expect_lt(3 * WALLS, checked);
  free(result);
}

/* What changes in the ground's row must not lower what any check has; the other checks do not move. */
static void expect_no_lower(const lw_result *before, const lw_result *after, const char *name) {
  for (int s = 0; s < before->situations.count; s++) {
    const lw_situation *a = &before->situations.situation[s], *b = &after->situations.situation[s];
    cr_assert_eq(a->check_count, b->check_count);
    for (int k = 0; k < a->check_count; k++) {
      const lw_check *x = checks_test_check(a, k), *y = checks_test_check(b, k);
      if (!x->has.known || !y->has.known) continue;
      double least = x->kind == LW_CHECK_SLIDING ? y->has.value : x->has.value;
      cr_expect_leq(x->has.value, y->has.value * (1.0 + 1e-9), "%s", name);
      cr_expect(checks_test_near(least, y->has.value, 1e-12), "%s", name);
    }
  }
}

/* A greater critical angle never lowers what a wall has; an undrained strength never raises it, and a greater
 * one lowers it no more; neither touches tipping, bearing or the joints. Under every set of factors. */
Test(base_faces, rise_with_the_ground_and_fall_with_its_undrained_strength) {
  lw_tables *tables = own_tables();
  lw_result *result[4];
  char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
  lw_soil_row *row = &tables->soil[lw_tables_soil(tables, "firm clay") - tables->soil];
  dice d = {23};
  for (int r = 0; r < 4; r++) cr_assert_not_null(result[r] = calloc(1, sizeof *result[r]));
  for (int i = 0; i < WALLS / 2; i++) {
    random_wall items;
    make(&d, &items);
    random_wall_add(&items, "footing soil name=firm clay");
    random_wall_add(&items, "method format=%s",
                    tables->factor[dice_pick(&d, tables->factor_count)].factor_set);
    random_wall_name(&items, name, sizeof name);
    const double angle[] = {16.0, 16.0, 23.0, 23.0}, strength[] = {3.0, 15.0, 15.0, NAN};
    for (int r = 0; r < 4; r++) {
      row->critical_rad = angle[r] * DEGREE;
      row->undrained_kpa = strength[r];
      run_on(tables, &items, LW_LOOK_CAUTIOUS, result[r]);
      if (r > 0) expect_no_lower(result[r - 1], result[r], name);
    }
  }
  for (int r = 0; r < 4; r++) free(result[r]);
}

/* Every set divides both tangents as it divides that of the soil, and cu as the cohesion of soil without
 * friction. */
Test(base_faces, are_weakened_by_every_set_of_factors) {
  const lw_tables *tables = sheet_test_tables();
  static lw_wall wall;
  int divided = 0;
  lw_case c = CASE("course count=3", "block depth=400 mm", "footing soil name=firm clay");
  lw_wall_build(&c, tables, &wall);
  for (int k = 0; k < tables->factor_count; k++) {
    lw_factor_set set;
    lw_factor_set_read_of(tables, &tables->factor[k], &set);
    for (int kind = LW_USUAL; kind <= LW_EXTREME; kind++) {
      lw_ground drained = {.design = {.footing = {21.0 * DEGREE, 0.0}, .base_friction = tan(21.0 * DEGREE)}};
      lw_ground undrained = {.design = {.footing = {0.0, 40.0}, .undrained_kpa = 40.0}};
      drained.design.pad_friction = drained.design.base_friction;
      lw_factor_set_weaken(&set, (lw_situation_kind)kind, &wall, &drained, NULL);
      lw_factor_set_weaken(&set, (lw_situation_kind)kind, &wall, &undrained, NULL);
      double tangent = tan(drained.design.footing.friction_rad);
      cr_expect(checks_test_near(drained.design.base_friction, tangent, 1e-9));
      cr_expect(checks_test_near(drained.design.pad_friction, tangent, 1e-9));
      cr_expect(
          checks_test_near(undrained.design.undrained_kpa, undrained.design.footing.cohesion_kpa, 1e-12));
      divided += tangent < tan(21.0 * DEGREE) * 0.99 && undrained.design.undrained_kpa < 39.0 ? 1 : 0;
    }
  }
  cr_expect_lt(3, divided);
}

static lw_site site_of(lw_look look, const char *ground, const char *pad, const char *more) {
  static lw_wall wall;
  lw_faults faults = {.count = 0};
  lw_case c = {0};
  const char *items[] = {
      "wall kind=section", "wall height=1 m", "base width=0.6 m", "top width=0.4 m", ground, pad, more};
  for (int i = 0; i < (int)(sizeof items / sizeof *items); i++)
    cr_assert_eq(lw_sheet_override(items[i], i + 1, &c, &faults), LW_OK);
  c.look = look;
  cr_assert_eq(lw_case_complete(sheet_test_tables(), &c, &faults), LW_OK, "%s", faults.fault[0].wanted);
  lw_wall_build(&c, sheet_test_tables(), &wall);
  return wall.site;
}

/* The rows, one by one. [BS8002-2015 T.2] 42 - 12.5 log10(PI), to the whole degree; by hand what follows. */
Test(base_faces, take_the_rows_that_fit) {
  const struct {
    const char *ground, *pad, *more;
    lw_look look;
    double bed, on_ground, base;
  } rows[] = {
      {"title=-", "note=-", "mark=-", LW_LOOK_CAUTIOUS, 0.30, 0.30, 0.30},
      {"title=-", "note=-", "mark=-", LW_LOOK_LIKELY, 0.45, 0.45, 0.45},
      {"title=-", "pad thickness=100 mm", "mark=-", LW_LOOK_CAUTIOUS, 0.50, 0.30, 0.50},
      {"title=-", "pad thickness=100 mm", "pad material=dry sand", LW_LOOK_CAUTIOUS, 0.40, 0.30, 0.40},
      {"title=-", "pad thickness=100 mm", "bedding thickness=25 mm", LW_LOOK_CAUTIOUS, 0.40, 0.30, 0.40},
      {"title=-", "pad thickness=100 mm", "mark=-", LW_LOOK_LIKELY, 0.625, 0.45, 0.625},
      {"footing soil name=firm clay", "note=-", "mark=-", LW_LOOK_CAUTIOUS, 0.50, 0.383864, 0.383864},
      {"footing soil name=firm clay", "note=-", "mark=-", LW_LOOK_LIKELY, 0.625, 0.479830, 0.479830},
      {"footing soil name=firm clay", "pad thickness=100 mm", "mark=-", LW_LOOK_CAUTIOUS, 0.50, 0.383864,
       0.50},
      {"footing soil name=clay loam", "note=-", "mark=-", LW_LOOK_CAUTIOUS, 0.50, 0.445229, 0.445229},
      {"footing soil name=road base", "note=-", "mark=-", LW_LOOK_CAUTIOUS, 0.50, 0.700208, 0.50},
      {"footing soil friction angle=20 deg", "note=-", "mark=-", LW_LOOK_CAUTIOUS, 0.50, 0.363970, 0.363970},
      {"footing soil friction angle=20 deg", "note=-", "mark=-", LW_LOOK_LIKELY, 0.625, 0.363970, 0.363970},
      {"footing soil name=firm clay", "note=-", "base friction=0.35", LW_LOOK_CAUTIOUS, 0.35, 0.383864, 0.35},
      {"footing soil name=firm clay", "note=-", "base friction=0.35", LW_LOOK_LIKELY, 0.35, 0.479830, 0.35},
      {"title=-", "note=-", "base friction=0.35", LW_LOOK_CAUTIOUS, 0.35, 0.30, 0.35},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    lw_site site = site_of(rows[i].look, rows[i].ground, rows[i].pad, rows[i].more);
    cr_expect(checks_test_near(site.bed_friction, rows[i].bed, 1e-5), "%zu: %g", i, site.bed_friction);
    cr_expect(checks_test_near(site.pad_friction, rows[i].on_ground, 1e-5), "%zu: %g", i, site.pad_friction);
    cr_expect(checks_test_near(site.base_friction, rows[i].base, 1e-5), "%zu: %g", i, site.base_friction);
  }
}

/* No ground is stronger right under a base than as soil, but where a table pairs its low angle with a
 * cohesion; the softer a clay the less it holds undrained. */
Test(base_faces, stand_in_the_table_as_soils_are) {
  const lw_tables *t = sheet_test_tables();
  for (int i = 0; i < t->soil_count; i++) {
    const lw_soil_row *row = &t->soil[i];
    bool clay = !isnan(row->undrained_kpa);
    if (!clay && !isnan(row->critical_rad))
      cr_expect_leq(row->critical_rad, row->friction_rad + 1e-12, "%s", row->name);
    if (clay) cr_expect(!isnan(row->critical_rad), "%s", row->name);
    cr_expect_eq(isnan(row->critical_rad), row->critical_from.source[0] == '\0', "%s", row->name);
    cr_expect_eq(clay, row->undrained_from.source[0] != '\0', "%s", row->name);
  }
  cr_expect_lt(lw_tables_soil(t, "soft clay")->undrained_kpa, lw_tables_soil(t, "firm clay")->undrained_kpa);
  cr_expect_lt(lw_tables_soil(t, "firm clay")->undrained_kpa, lw_tables_soil(t, "stiff clay")->undrained_kpa);
}

/* Silt gets into joints that soil lies against, or stone without a filter. */
Test(base_faces, joints_are_clean_where_only_stone_lies_against_them) {
  const struct {
    const char *soil, *stone, *filter;
    double cautious;
  } rows[] = {
      {"title=-", "note=-", "mark=-", 0.40},
      {"soil 1 name=clean sand", "note=-", "mark=-", 0.40},
      {"soil 1 name=crushed rock", "note=-", "mark=-", 0.50},
      {"soil 1 name=gravel", "note=-", "mark=-", 0.50},
      {"title=-", "stone width=300 mm", "mark=-", 0.40},
      {"title=-", "stone width=300 mm", "stone filter=none", 0.40},
      {"title=-", "stone width=300 mm", "stone filter=cloth", 0.50},
      {"title=-", "stone width=300 mm", "stone filter=graded", 0.50},
      {"title=-", "note=-", "stone filter=cloth", 0.40},
      {"title=-", "stone width=0 mm", "stone filter=cloth", 0.40},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    lw_case c = CASE("course count=3", "block depth=300 mm", rows[i].soil, rows[i].stone, rows[i].filter);
    cr_expect(checks_test_near(c.courses.joint_friction.si, rows[i].cautious, 1e-12), "%zu: %g", i,
              c.courses.joint_friction.si);
    cr_expect_eq(c.courses.joint_friction.origin, LW_ASSUMED);
  }
  lw_case given = CASE("course count=3", "block depth=300 mm", "joint friction=0.7");
  cr_expect(checks_test_near(given.courses.joint_friction.si, 0.7, 1e-12));
}
