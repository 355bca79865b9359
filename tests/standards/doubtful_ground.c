/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "sets_by_definition.h"
#include "../checks/support.h"

/* The project's own set asks more where the ground is not named or tested, bears little, or carries a
 * building; no other set does. What is asked stands in the table of the design: [LOWWALL formats]. */

#define WALL \
  "course count=4", "block height=150 mm", "block depth=400 mm", "wall embedment=150 mm", "drain outlets=1", \
      "ground slope=0 deg"
#define NAMED "soil 1 name=clean sand", "footing soil name=stiff clay"

typedef struct told {
  const char *what, *items[8];
  lw_doubt base, slip;
} told;

static const told TOLD[] = {
    {"nothing", {NULL}, LW_DOUBT_NOT_NAMED, LW_DOUBT_NOT_NAMED},
    {"the ground by name", {"footing soil name=gravel"}, LW_DOUBT_NONE, LW_DOUBT_FILL_NOT_NAMED},
    {"by what the hand test showed",
     {"footing soil name=thumb dents"},
     LW_DOUBT_WEAK,
     LW_DOUBT_FILL_NOT_NAMED},
    {"by an angle", {"footing soil friction angle=30 deg"}, LW_DOUBT_WEAK, LW_DOUBT_FILL_NOT_NAMED},
    {"what it bears", {"allowable bearing=75 kPa"}, LW_DOUBT_NONE, LW_DOUBT_NOT_NAMED},
    {"that it bears less", {"allowable bearing=74.9 kPa"}, LW_DOUBT_WEAK, LW_DOUBT_NOT_NAMED},
    {"both, no building", {NAMED, "building distance=9 m"}, LW_DOUBT_WEAK, LW_DOUBT_NONE},
    {"both, of buildings nothing", {NAMED}, LW_DOUBT_WEAK, LW_DOUBT_BUILDING_NOT_TOLD},
    {"a building near", {NAMED, "building distance=1.1 m"}, LW_DOUBT_WEAK, LW_DOUBT_BUILDING},
    {"a building beyond twice the height", {NAMED, "building distance=1.3 m"}, LW_DOUBT_WEAK, LW_DOUBT_NONE},
    {"a second soil without a name",
     {"soil 1 name=clean sand", "soil 1 bottom=0.4 m", "soil 2 unit weight=18 kN/m3",
      "footing soil name=gravel", "building distance=9 m"},
     LW_DOUBT_NONE,
     LW_DOUBT_FILL_NOT_NAMED},
};

static double asked(const lw_check *check, lw_situation_kind kind, lw_doubt base, lw_doubt slip) {
  static const double COMPRESSION[] = {0.5, 0.5, 0.0, 0.5}, WEAK[] = {0.75, 0.5, 0.0, 0.5},
                      SLIP[] = {1.3, 1.2, 1.0, 1.2}, DOUBTFUL[] = {1.5, 1.2, 1.0, 1.2};
  if (check->kind == LW_CHECK_SLIP) return (slip != LW_DOUBT_NONE ? DOUBTFUL : SLIP)[kind];
  bool more = check->at == LW_AT_BASE && base != LW_DOUBT_NONE;
  return (more ? WEAK : COMPRESSION)[kind];
}

/* Every check of the two kinds; the doubt is named where more is asked for its sake, and nowhere else. */
static int expect_asked(const lw_result *r, lw_doubt base, lw_doubt slip, const char *name) {
  int seen = 0;
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    for (int k = 0; k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      bool of_slip = check.kind == LW_CHECK_SLIP;
      if ((!of_slip && check.kind != LW_CHECK_COMPRESSION) || !check.has.known) continue;
      double needs = asked(&check, s->kind, base, slip);
      lw_doubt doubt = of_slip ? slip : check.at == LW_AT_BASE ? base : LW_DOUBT_NONE;
      bool more = needs > asked(&check, s->kind, LW_DOUBT_NONE, LW_DOUBT_NONE);
      cr_expect(check.needs.known && fabs(check.needs.value - needs) < 1e-12, "%s: %s is asked %g", name,
                lw_check_slug(check.kind), check.needs.value);
      cr_expect_eq(lw_check_doubt(&r->wall, &check), more ? doubt : LW_DOUBT_NONE, "%s", name);
      seen += of_slip;
    }
  }
  return seen;
}

Test(sets, what_was_told_of_the_ground_decides_what_is_asked) {
  for (size_t i = 0; i < sizeof TOLD / sizeof *TOLD; i++) {
    const char *items[24] = {WALL};
    size_t count = 0;
    while (items[count]) count++;
    for (const char *const *more = TOLD[i].items; *more; more++) items[count++] = *more;
    lw_result *r = checks_test_run(items);
    cr_expect_eq(r->wall.base_doubt, TOLD[i].base, "%s: base", TOLD[i].what);
    cr_expect_eq(r->wall.slip_doubt, TOLD[i].slip, "%s: slip", TOLD[i].what);
    cr_expect(expect_asked(r, TOLD[i].base, TOLD[i].slip, TOLD[i].what) > 0, "%s: no slip", TOLD[i].what);
    free(r);
  }
}

/* A building that closes the back is in the slip, whatever distance is told. */
Test(sets, a_building_at_the_back_stands_in_a_slip) {
  lw_result *r = RUN(WALL, NAMED, "building distance=9 m", "site behind=ground", "site back=building");
  cr_expect_eq(r->wall.slip_doubt, LW_DOUBT_BUILDING);
  free(r);
}

/* Walls by chance under every set: where the set has no such row nothing is asked for a doubt's sake. */
enum { WALLS = 24 / RANDOM_SHARE };

static void expect_plain(const lw_result *r, const char *name) {
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    for (int k = 0; k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      cr_expect_eq(lw_check_doubt(&r->wall, &check), LW_DOUBT_NONE, "%s", name);
    }
  }
}

Test(sets, no_other_set_asks_more_on_doubtful_ground) {
  static const char *const SETS[] = {"ibc", "navfac-dm7", "em-1110-2-2502", "cp2", "gb-50007", "en1997-da1"};
  dice d = {.state = 4711};
  for (int w = 0; w < WALLS; w++) {
    random_wall wall;
    char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
    random_wall_make(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    random_wall_name(&wall, name, sizeof name);
    lw_result *own = code_run(&wall, "lowwall"), *other = code_run(&wall, SETS[w % 6]);
    bool weak = own->wall.site.allowable_bearing_kpa < 75.0;
    (void)expect_asked(own, weak ? LW_DOUBT_WEAK : LW_DOUBT_NONE, LW_DOUBT_FILL_NOT_NAMED, name);
    expect_plain(other, name);
    free(own);
    free(other);
  }
}
