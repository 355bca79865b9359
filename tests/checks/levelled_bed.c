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

/* Blocks are laid on a levelled bed, and the bed on the ground: where the sheet has no pad, the wall slides
 * on the weaker of the two right under it. */

enum { WALLS = 60 / RANDOM_SHARE };

static bool has_item(const random_wall *wall, const char *name) {
  for (int i = 0; i < wall->count; i++)
    if (strncmp(wall->text[i], name, strlen(name)) == 0) return true;
  return false;
}

static const lw_check *sliding_on_base(const lw_situation *s) {
  for (int i = 0; i < s->check_count; i++) {
    const lw_check *check = checks_test_check(s, i);
    if (check->kind == LW_CHECK_SLIDING && check->at == LW_AT_BASE) return check;
  }
  return NULL;
}

/* On its base it slides no later than with a pad below, whose own underside is then checked as well. */
static void expect_no_better(const lw_situation *left_out, const lw_situation *told, const char *name) {
  const lw_check *a = sliding_on_base(left_out), *b = sliding_on_base(told);
  cr_assert(a && b, "%s", name);
  if (b->holds == LW_FALLS_SHORT) cr_expect_neq(a->holds, LW_HOLDS, "%s", name);
  if (!a->has.known || !b->has.known) return;
  cr_expect_leq(a->has.value, b->has.value * (1.0 + 1e-9), "%g without, %g with: %s", a->has.value,
                b->has.value, name);
}

static void expect_weaker_face(random_wall *items) {
  char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
  lw_result *left_out = random_wall_run(items);
  const lw_site *site = &left_out->wall.site;
  random_wall_name(items, name, sizeof name);
  cr_expect_eq(left_out->given.pad.thickness.origin, LW_ABSENT, "%s", name);
  bool told = left_out->given.ground.footing.friction.origin != LW_ASSUMED;
  double weaker = told ? fmin(site->bed_friction, site->pad_friction) : site->bed_friction;
  cr_expect(checks_test_near(site->base_friction, weaker, 1e-12), "%s", name);
  random_wall_add(items, "pad thickness=100 mm");
  lw_result *with = random_wall_run(items);
  cr_assert_eq(left_out->situations.count, with->situations.count);
  for (int s = 0; s < with->situations.count; s++)
    expect_no_better(&left_out->situations.situation[s], &with->situations.situation[s], name);
  free(left_out);
  free(with);
}

Test(levelled_bed, without_a_pad_a_wall_slides_on_the_weaker_face) {
  dice d = {7};
  int tried = 0;
  for (int i = 0; i < WALLS; i++) {
    random_wall items;
    random_wall_make(&d, &items);
    random_wall_add(&items, "method slip=not");
    if (!has_item(&items, "course count") || has_item(&items, "pad thickness")) continue;
    /* What lifts in front takes friction from under the wall, more of it on a better bed. */
    if (has_item(&items, "method passive=")) continue;
    expect_weaker_face(&items);
    tried++;
  }
  cr_expect_lt(WALLS / 5, tried);
}

/* Every soil of the table as the ground, under blocks on gravel. */
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
    expect_weaker_face(&items);
  }
}

static double friction_of(const char *ground, const char *pad) {
  lw_case c = CASE("wall kind=section", "wall height=1 m", "base width=0.6 m", "top width=0.4 m",
                   "base friction=0.5", ground, pad);
  static lw_wall wall;
  lw_wall_build(&c, sheet_test_tables(), &wall);
  return wall.site.base_friction;
}

/* By hand, of a section: it slides on the weaker of the two where both are told. Of
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
