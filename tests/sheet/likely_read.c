/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "load_cases/situations.h"
#include "sheet/likely.h"
#include "wall/wall.h"
#include "support.h"

#include <lowwall/result.h>

#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

/* A likely value is taken only where something can come of it: of every quantity that takes one the checks by
 * likely values of some wall change with it, and those of none with a quantity that is refused. */

#define BARE "method slip=not;course count=3;block height=200 mm;block depth=300 mm;wall embedment=100 mm;"

static const char *const WALLS[] = {
    "method slip=not;course count=3;block height=200 mm;block depth=600 mm;wall embedment=150 mm;site "
    "behind=bed;"
    "method bearing=hansen;method passive=0.5;footing soil name=clean sand;soil 1 name=clean sand;"
    "pad thickness=150 mm;pad width=740 mm;wall joints=open;stone filter=cloth",
    BARE
    "site behind=bed;soil 1 name=loam;stone width=300 mm;drain outlets=1;stone filter=cloth;cap height=60 mm;"
    "cap depth=300 mm;block length=400 mm;block tail length=300 mm;people on cap=yes;pad thickness=150 mm;"
    "pad width=420 mm;storm rain=50 mm",
    BARE
    "site behind=ground;ground slope=1:5;ground slope run=2 m;soil 1 bottom=300 mm;soil 2 name=clean sand;"
    "soil 1 friction angle=25 deg;soil 1 cohesion=0.2 kPa;load 1 kind=strip;load 1 pressure=5 kPa;"
    "load 1 near edge=0.4 m;load 1 far edge=1.2 m;load 1 below ground=100 mm;load 2 kind=line;load 2 force=3 "
    "kN/m;load 2 distance=0.5 m;"
    "water depth=0.3 m;front water depth=0.4 m;seismic horizontal=0.1;front slope=1:10;"
    "trench depth=250 mm;trench distance=0.14 m",
    BARE
    "site behind=ground;method bearing=hansen;method n gamma=own;method passive=0.5;footing soil name=stiff "
    "clay;footing soil friction angle=25 deg;footing soil cohesion=2 kPa;method base friction=0.6;"
    "method base cohesion=0.5;base course count=1;base course depth=500 mm;key strength=2 kN/m;"
    "joint shear=1 kN/m;method uplift=1;water depth=0.3 m;front water depth=0.7 m;load 1 kind=point;"
    "load 1 force=2 kN;load 1 distance=0.4 m;cap height=60 mm;cap depth=350 mm;cap overhang=20 mm",
    BARE "site behind=ground;method pressure=at rest;soil 1 overconsolidation=2;soil 1 friction angle=30 deg;"
         "load 1 name=heap;load 1 height=0.5 m;load 1 near edge=0.3 m;load 1 far edge=1.3 m;seismic "
         "horizontal=0.1;seismic vertical=0.05",
    BARE "site behind=ground;drain outlets=1;outlet level=-100 mm;front slope=1:10;drain outlet length=1.1 m;"
         "stone width=300 mm;stone filter=cloth;wall joints=sealed;ground drains=no",
    BARE "site behind=ground;other wall distance=0.5 m;other wall height=0.4 m;other wall side=above",
    BARE
    "site behind=ground;fence height=1.5 m;fence place=behind;fence distance=0.3 m;wind pressure=0.4 kPa",
    BARE "site behind=ground;fence height=1.5 m;fence place=on the wall;wind pressure=0.4 kPa",
    BARE "site behind=ground;block length=400 mm;face shell thickness=30 mm;"
         "block unit weight=10 kN/m3;fill unit weight=14 kN/m3;method coefficient=0.35",
    "method slip=not;wall kind=section;wall height=1 m;wall embedment=200 mm;top width=300 mm;base width=900 "
    "mm;"
    "toe length=100 mm;heel length=200 mm;slab thickness=200 mm;site behind=ground;method pressure=rankine",
    "method slip=not;wall kind=section;wall height=1 m;wall embedment=200 mm;top width=300 mm;face batter=5 "
    "deg;"
    "back batter=3 deg;site behind=ground",
    "method slip=not;wall kind=section;point 1 x=0 m;point 1 y=0 m;point 2 x=0.6 m;point 2 y=0 m;point 3 "
    "x=0.3 m;"
    "point 3 y=1 m;point 4 x=0 m;point 4 y=1 m;wall embedment=100 mm;site behind=ground",
};
enum { WALL_COUNT = sizeof WALLS / sizeof *WALLS };

static void take(const char *items, lw_case *c) {
  for (int number = 1; items[0] != '\0'; number++) {
    char argument[160];
    lw_faults faults = {.count = 0};
    size_t length = strcspn(items, ";");
    lw_print(argument, sizeof argument, "%.*s", (int)length, items);
    cr_assert_eq(lw_sheet_override(argument, number, c, &faults), LW_OK, "%s: %s", argument,
                 faults.count ? faults.fault[0].wanted : "");
    items += length + (items[length] == ';' ? 1 : 0);
  }
}

/* All that a wall has by likely values. gives false where these values cannot be together */
typedef struct likely_look {
  int count;
  double has[LW_SITUATION_COUNT * LW_CHECK_MAX];
} likely_look;

static bool look_at(lw_case c, lw_result *result, likely_look *look) {
  lw_faults faults = {.count = 0};
  c.look = LW_LOOK_LIKELY;
  *look = (likely_look){0};
  if (lw_case_complete(sheet_test_tables(), &c, &faults) != LW_OK) return false;
  lw_wall_build(&c, sheet_test_tables(), &result->wall);
  lw_situations_run(&result->wall, sheet_test_tables(), LW_DETAIL_CHECKS, &result->situations);
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    for (int k = 0; k < s->check_count; k++) look->has[look->count++] = s->kept[k].has;
  }
  return true;
}

static bool same(const likely_look *a, const likely_look *b) {
  if (a->count != b->count) return false;
  for (int i = 0; i < a->count; i++)
    if (fabs(a->has[i] - b->has[i]) > 1e-9 * fabs(a->has[i])) return false;
  return true;
}

/* The number of the part whose value is tried: of a section by points a corner that is free to move. */
static int number_of(const lw_item *item) {
  return item->repeats == 0 ? 0 : strncmp(item->name, "point", 5) == 0 ? 3 : 1;
}

/* What the item might be, from what the sheet has of it or from its example. */
static lw_quantity tried(const lw_item *item, const lw_quantity *own, double share) {
  lw_case example = {0};
  char argument[160], name[LW_ITEM_NAME_MAX];
  lw_faults faults = {.count = 0};
  lw_item_print_name(item, number_of(item), name, sizeof name);
  lw_print(argument, sizeof argument, "%s=%s", name, item->example);
  cr_assert_eq(lw_sheet_override(argument, 99, &example, &faults), LW_OK, "%s", argument);
  lw_quantity q = *lw_item_quantity(item, number_of(item), &example);
  if (own->origin != LW_ABSENT && fabs(own->si) > 0.0) q = *own;
  q.si *= share;
  if (item->kind == LW_KIND_COUNT) q.si = share < 1.0 ? floor(q.si) : ceil(q.si);
  return q;
}

/* Does anything come of this item in one of the walls? */
static bool anything_comes_of(const lw_item *item, const lw_case *raw, const likely_look *before,
                              lw_result *result) {
  static const double SHARES[] = {0.75, 1.02, 1.25};
  static likely_look after;
  /* Of what nothing comes one value is enough. */
  size_t count = lw_likely_is_read(item) ? sizeof SHARES / sizeof *SHARES : 1;
  for (int i = 0; i < WALL_COUNT; i++)
    for (size_t k = 0; k < count; k++) {
      lw_case c = raw[i];
      lw_quantity *own = lw_item_quantity(item, number_of(item), &c);
      *own = tried(item, own, SHARES[k]);
      if (look_at(c, result, &after) && !same(&before[i], &after)) return true;
    }
  return false;
}

static void expect_refused(const lw_item *item) {
  char argument[200], name[LW_ITEM_NAME_MAX + 8];
  lw_faults faults = {.count = 0};
  lw_case c = {0};
  lw_likely_print_name(item, number_of(item), name, sizeof name);
  lw_print(argument, sizeof argument, "%s=%s", name, item->example);
  bool taken = lw_sheet_override(argument, 7, &c, &faults) == LW_OK;
  cr_expect_eq(taken, lw_likely_is_read(item), "%s", argument);
  if (taken || item->type != LW_ITEM_QUANTITY) return;
  cr_expect(faults.count == 1 && faults.fault[0].slug == LW_FAULT_UNKNOWN_ITEM &&
            faults.fault[0].column == 7);
  cr_expect_not_null(strstr(faults.fault[0].wanted, "without `likely`"), "%s", faults.fault[0].wanted);
}

Test(likely, an_item_that_takes_one_changes_the_look_of_some_wall) {
  static lw_case raw[WALL_COUNT];
  static likely_look before[WALL_COUNT];
  lw_result *result = malloc(sizeof *result);
  cr_assert_not_null(result);
  for (int i = 0; i < WALL_COUNT; i++) {
    take(WALLS[i], &raw[i]);
    cr_assert(look_at(raw[i], result, &before[i]), "%s", WALLS[i]);
  }
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    expect_refused(item);
    if (item->type != LW_ITEM_QUANTITY) continue;
    cr_expect_eq(anything_comes_of(item, raw, before, result), lw_likely_is_read(item), "%s", item->name);
  }
  free(result);
}
