/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <jansson.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>

#include "../checks/random_wall.h"
#include "../sheet/support.h"

/* What is told as a remedy is done by people: each is typed in as the JSON prints it, through the reader of
 * sheets, and the whole check must say that it holds. */

enum { WALLS = 56 / RANDOM_SHARE };

typedef struct tally {
  int remedies, pairs;
} tally;

/* The wall as its user has it: what was worked out or assumed is not on the sheet. */
static lw_text sheet_of(const random_wall *wall) {
  lw_text text = {0};
  lw_case c = random_wall_case(wall);
  lw_sheet_write(&c, false, &text);
  return text;
}

static void type_in(const json_t *items, const lw_text *sheet, lw_case *c) {
  lw_faults faults = {.count = 0};
  size_t i;
  json_t *item;
  cr_assert_eq(lw_sheet_read(sheet->data, sheet->length, c, &faults), LW_OK, "%s", faults.fault[0].wanted);
  cr_assert(json_array_size(items) > 0);
  json_array_foreach(items, i, item) {
    cr_assert_eq(lw_sheet_override(json_string_value(item), (int)i + 1, c, &faults), LW_OK, "%s: %s",
                 json_string_value(item), faults.fault[0].wanted);
  }
}

/* Of a sheet in millimetres, or in inches. */
static void expect_multiple(const char *item, const char *name, double step_mm, double step_in) {
  size_t length = strlen(name);
  if (strncmp(item, name, length) != 0 || item[length] != '=') return;
  char *unit;
  double value = strtod(item + length + 1, &unit);
  bool us = step_in > 0.0;
  double steps = value / (us ? step_in : step_mm), least = us ? 0.5 : 10.0;
  cr_expect(strcmp(unit, us ? " in" : " mm") == 0, "%s", item);
  cr_expect(fabs(steps - round(steps)) < 1e-6 && value >= least, "%s is not to be had", item);
}

static void expect_to_be_had(const json_t *items, lw_units units) {
  double two = units == LW_UNITS_US ? 2.0 : 0.0;
  size_t i;
  json_t *item;
  json_array_foreach(items, i, item) {
    const char *text = json_string_value(item);
    expect_multiple(text, "block depth", 50.0, two);
    expect_multiple(text, "base width", 50.0, two);
    expect_multiple(text, "base course depth", 50.0, two);
    expect_multiple(text, "pad width", 50.0, two);
    expect_multiple(text, "setback", 5.0, two / 8.0);
  }
}

static void hold(const json_t *remedy, const lw_text *sheet, lw_result *then, tally *all) {
  const json_t *items = json_object_get(remedy, "items");
  lw_case c;
  lw_error error = {0};
  type_in(items, sheet, &c);
  expect_to_be_had(items, (lw_units)c.about.units.value);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, then, &error), LW_OK, "%s", error.text);
  cr_expect_eq(then->verdict.stands, LW_HOLDS, "%s\n%s\n%s",
               json_string_value(json_object_get(remedy, "text")), sheet->data, then->verdict.headline);
  all->remedies++;
  all->pairs += json_array_size(json_object_get(remedy, "parts")) == 2 ? 1 : 0;
}

static void hold_remedies_of(const random_wall *wall, lw_result two[2], tally *all) {
  lw_text sheet = sheet_of(wall), report = {0};
  lw_case c = random_wall_case(wall);
  size_t i;
  json_t *remedy;
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &two[0], NULL), LW_OK);
  lw_who who = two[0].verdict.who;
  lw_remedies_find(&two[0], &two[1]);
  cr_assert_eq(lw_report_json(&two[0], 0, &report), LW_OK);
  json_t *root = json_loadb(report.data, report.length, 0, NULL);
  json_array_foreach(json_object_get(root, "remedies"), i, remedy) {
    hold(remedy, &sheet, &two[1], all);
    cr_expect(two[1].verdict.who <= who, "%s", sheet.data);
  }
  json_decref(root);
  lw_text_free(&report);
  lw_text_free(&sheet);
}

/* Hollow blocks on a pad with a cap of given depth and a mass: what a change must take along. */
static void add_what_follows(dice *d, random_wall *wall) {
  bool courses = strncmp(wall->text[0], "course", 6) == 0;
  random_wall_add(wall, "site behind=ground");
  if (dice_pick(d, 2)) random_wall_add(wall, "level difference=%.3f m", dice_between(d, 0.3, 2.0));
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "overflow below top=%.3f m", dice_between(d, 0.0, 0.2));
  if (courses && dice_pick(d, 3) == 0) random_wall_add(wall, "bed width=%.3f m", dice_between(d, 0.9, 3.0));
}

Test(remedies, every_remedy_typed_in_as_printed_holds) {
  lw_result *two = calloc(2, sizeof *two);
  tally all = {0};
  cr_assert_not_null(two);
  dice d = {22};
  for (int i = 0; i < WALLS; i++) {
    random_wall wall;
    random_wall_make(&d, &wall);
    if (i % 14 != 0) random_wall_add(&wall, "method slip=not");
    add_what_follows(&d, &wall);
    if (i % 2 == 1) random_wall_add(&wall, "units=us");
    hold_remedies_of(&wall, two, &all);
  }
  cr_expect(all.remedies > WALLS / 2 && all.pairs > WALLS / 40, "%d remedies, %d of two changes",
            all.remedies, all.pairs);
  free(two);
}
