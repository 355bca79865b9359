/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"
#include "soil/site.h"
#include "wall/wall.h"
#include "random_wall.h"
#include "support.h"

/* Blocks are laid on a levelled bed, and the bed on the ground: a sheet that leaves the bed out never passes
 * what the same sheet with the bed on it fails. */

enum { WALLS = 60 / RANDOM_SHARE };

static lw_result *run(const random_wall *wall) {
  lw_result *result = calloc(1, sizeof *result);
  lw_error error = {0};
  lw_case c = random_wall_case(wall);
  cr_assert_not_null(result);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, &error), LW_OK, "%s",
               error.text);
  return result;
}

static bool has_item(const random_wall *wall, const char *name) {
  for (int i = 0; i < wall->count; i++)
    if (strncmp(wall->text[i], name, strlen(name)) == 0) return true;
  return false;
}

static void expect_no_better(const lw_situation *left_out, const lw_situation *told, const char *name) {
  cr_assert_eq(left_out->check_count, told->check_count, "%s", name);
  for (int i = 0; i < told->check_count; i++) {
    const lw_check *a = checks_test_check(left_out, i), *b = checks_test_check(told, i);
    cr_assert(a->kind == b->kind && a->at == b->at && a->joint == b->joint, "%s", name);
    if (b->holds == LW_FALLS_SHORT) cr_expect_neq(a->holds, LW_HOLDS, "check %d: %s", i, name);
    if (!a->has.known || !b->has.known) continue;
    cr_expect_leq(a->has.value, b->has.value * (1.0 + 1e-9), "check %d: %g without, %g with: %s", i,
                  a->has.value, b->has.value, name);
  }
}

static void expect_taken(random_wall *items, int courses) {
  char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
  lw_result *left_out = run(items);
  random_wall_add(items, "pad thickness=%d mm", courses <= 3 ? 100 : 150);
  lw_result *told = run(items);
  random_wall_name(items, name, sizeof name);
  cr_assert_eq(left_out->situations.count, told->situations.count);
  for (int s = 0; s < told->situations.count; s++)
    expect_no_better(&left_out->situations.situation[s], &told->situations.situation[s], name);
  free(left_out);
  free(told);
}

Test(levelled_bed, left_out_never_passes_what_it_fails) {
  dice d = {7};
  int tried = 0;
  for (int i = 0; i < WALLS; i++) {
    random_wall items;
    random_wall_make(&d, &items);
    random_wall_add(&items, "method slip=not");
    if (!has_item(&items, "course count") || has_item(&items, "pad thickness")) continue;
    lw_case c = random_wall_case(&items);
    expect_taken(&items, (int)lround(c.courses.count.si));
    tried++;
  }
  cr_expect_lt(WALLS / 5, tried);
}

/* Every soil of the table as the ground, under blocks on gravel: what it has no value for is not shown. */
Test(levelled_bed, on_every_named_ground) {
  const lw_tables *tables = sheet_test_tables();
  for (int i = 0; i < tables->soil_count; i++) {
    random_wall items = {.count = 0};
    random_wall_add(&items, "course count=3");
    random_wall_add(&items, "block height=150 mm");
    random_wall_add(&items, "block depth=400 mm");
    random_wall_add(&items, "base friction=0.5");
    random_wall_add(&items, "method slip=not");
    random_wall_add(&items, "footing soil name=%.40s", tables->soil[i].name);
    expect_taken(&items, 3);
  }
}

static double friction_of(const char *ground, const char *pad) {
  lw_case c = CASE("wall kind=section", "wall height=1 m", "base width=0.6 m", "top width=0.4 m",
                   "base friction=0.5", ground, pad);
  static lw_wall wall;
  lw_wall_build(&c, sheet_test_tables(), &wall);
  return wall.site.base_friction;
}

/* A section has no bed that is not on its sheet: it slides on the weaker of the two where both are told. Of
 * ground by its name that is the critical angle, of an angle that is given this one. */
Test(levelled_bed, a_section_slides_on_the_weaker_of_two) {
  const double DEGREE = 3.14159265358979323846 / 180.0;
  cr_expect(
      checks_test_near(friction_of("footing soil name=firm clay", "title=none"), tan(21.0 * DEGREE), 1e-9));
  cr_expect(checks_test_near(friction_of("footing soil friction angle=17.5 deg", "title=none"),
                             tan(17.5 * DEGREE), 1e-9));
  cr_expect(checks_test_near(friction_of("footing soil name=firm clay", "pad thickness=90 mm"), 0.5, 1e-9));
  cr_expect(checks_test_near(friction_of("footing soil name=road base", "title=none"), 0.5, 1e-9));
  cr_expect(checks_test_near(friction_of("title=not known", "title=none"), 0.5, 1e-9));
}

/* By hand: what a law measures is to the underside of what is there. */
Test(levelled_bed, is_not_measured_where_it_is_only_taken) {
  lw_result *result = RUN("course count=3", "block height=150 mm", "block depth=400 mm",
                          "footing soil name=firm clay", "method slip=not");
  cr_expect_eq(result->given.pad.thickness.origin, LW_ASSUMED);
  cr_expect(checks_test_near(lw_site_under(&result->wall.site), 0.1, 1e-12));
  cr_expect(checks_test_near(result->verdict.height_m[LW_HEIGHT_GREATEST], 0.45, 1e-9), "%g",
            result->verdict.height_m[LW_HEIGHT_GREATEST]);
  free(result);
}
