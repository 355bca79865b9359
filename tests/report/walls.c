/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "walls.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"

const char *const wall_sorts[] = {
    "wall height=317 mm;wall embedment=83 mm;block height=200 mm;block depth=413 mm;site behind=bed",
    "course count=5;block height=190 mm;block depth=433 mm;setback=17 mm;cap height=61 mm;cap depth=290 mm;"
    "cap overhang=31 mm;pad thickness=143 mm;pad width=790 mm;pad material=crushed rock;soil 1 name=clean "
    "sand;"
    "drain outlets=1;stone width=310 mm;ground slope=1:9",
    "course count=3;block height=210 mm;block depth=371 mm;cap height=50 mm;cap depth=280 mm;cap "
    "fixing=bonded;"
    "drain outlets=2;wall joints=open;stone width=300 mm",
    "wall kind=section;wall height=1130 mm;base width=870 mm;top width=410 mm;back batter=4 deg;"
    "wall unit weight=22.3 kN/m3;method pressure=coulomb;wall friction=19 deg;drain outlets=2;stone width=1 "
    "ft",
    "wall height=610 mm;block height=203 mm;wall embedment=202 mm;block depth=390 mm;soil 1 name=clay",
    "wall height=800 mm;block height=200 mm",
    "wall height=700 mm;wall embedment=100 mm;block height=200 mm;block depth=910 mm;method pressure=at rest;"
    "method bearing=vesic;method passive=50 %;footing soil friction angle=31 deg;place=new-south-wales",
    "wall height=900 mm;wall embedment=100 mm;block height=200 mm;block depth=700 mm;"
    "soil 1 friction angle=27 deg;soil 1 cohesion=3 kPa;soil 1 bottom=430 mm;soil 2 friction angle=33 deg;"
    "load 1 kind=strip;load 1 pressure=11 kPa;load 1 near edge=0.7 m;load 1 far edge=2.1 m",
    "wall height=813 mm;wall embedment=107 mm;block height=230 mm;block depth=343 mm;site behind=bed;"
    "bed width=311 mm;wall friction=17 deg;plant=trench rammer;plant distance=430 mm;layer thickness=130 mm",
    "wall height=1100 mm;wall embedment=100 mm;wall kind=section;base width=930 mm;top width=390 mm;"
    "wall unit weight=22.9 kN/m3;soil 1 friction angle=33 deg;ground slope=7 deg;method format=en1997-da1;"
    "method bearing=en1997;footing soil friction angle=29 deg;method passive=20 %",
    "wall height=570 mm;block height=190 mm;wall embedment=0 mm;block depth=311 mm;site behind=bed;"
    "site back=fence;"
    "fence height=1.7 m;fence place=behind;fence distance=0.43 m;wind exposure=ordinary;post section=90 mm",
    "wall height=570 mm;block height=190 mm;wall embedment=0 mm;block depth=311 mm;fence height=1.7 m;"
    "wind pressure=0.62 kPa",
    "wall height=600 mm;wall embedment=200 mm;block height=200 mm;block depth=310 mm;site behind=bed;"
    "bed use=planted;vehicle access=no;drain outlets=2;stone width=300 mm;soil 1 name=clean sand",
    NULL};

static void give(const char *items, lw_case *c, lw_faults *faults) {
  char item[160];
  for (int number = 1; items[0] != '\0'; number++) {
    size_t length = strcspn(items, ";");
    snprintf(item, sizeof item, "%.*s", (int)length, items);
    cr_assert_eq(lw_sheet_override(item, number, c, faults), LW_OK, "%s: %s", item, faults->fault[0].wanted);
    items += length + (items[length] == ';' ? 1 : 0);
  }
}

const lw_result *wall_of(const char *items) {
  static lw_result *two;
  static char made[1024]; /* the items of the wall that is there already */
  if (two != NULL && strcmp(made, items) == 0) return &two[0];
  cr_assert(strlen(items) < sizeof made);
  snprintf(made, sizeof made, "%s", items);
  if (two == NULL) two = calloc(2, sizeof *two);
  cr_assert_not_null(two);
  lw_case c = {0};
  lw_faults faults = {.count = 0};
  lw_error error = {0};
  give(items, &c, &faults);
  cr_assert_eq(lw_case_complete(sheet_test_tables(), &c, &faults), LW_OK, "%s: %s: %s", items,
               faults.fault[0].item, faults.fault[0].wanted);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &two[0], &error), LW_OK, "%s",
               error.text);
  lw_remedies_find(&two[0], &two[1]);
  lw_water_find(&two[0], &two[1]);
  lw_factor_sets_compare(&two[0].wall, sheet_test_tables(), &two[0].factor_sets, &two[1].situations);
  return &two[0];
}

static const lw_text_style plain = {.colour = false, .columns = 80};

lw_text wall_page(const lw_result *result) {
  lw_text text = {0};
  cr_assert_eq(lw_report_text(result, &plain, &text), LW_OK);
  return text;
}

lw_text wall_working(const lw_result *result) {
  lw_text text = {0};
  cr_assert_eq(lw_report_working(result, &plain, &text), LW_OK);
  return text;
}

lw_text wall_json(const lw_result *result) {
  lw_text text = {0};
  cr_assert_eq(lw_report_json(result, 2, &text), LW_OK);
  return text;
}
