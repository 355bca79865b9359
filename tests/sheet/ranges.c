/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheet/entry.h"
#include "sheet/items.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

/* A case may be filled in by a program. It is held against the table of items as a sheet is. */

static bool refused(lw_case *c, bool order) {
  static lw_faults faults;
  memset(&faults, 0, sizeof faults);
  lw_status status = lw_case_complete(sheet_test_tables(), c, &faults);
  if (status == LW_OK && order) status = lw_case_complete_order(sheet_test_tables(), c, &faults);
  for (int i = 0; i < faults.count; i++)
    if (faults.fault[i].slug == LW_FAULT_OUT_OF_RANGE) return status == LW_FAULTS;
  return false;
}

/* The smallest sheet that has the parts in front of this one. */
static lw_case before(const lw_item *item, int number) {
  lw_case c = CASE("wall height=600 mm", "block depth=300 mm");
  c.complete = false;
  for (int n = 1; n < number; n++) {
    lw_quantity *q = item->type == LW_ITEM_QUANTITY ? lw_item_quantity(item, n, &c) : NULL;
    if (q != NULL) *q = (lw_quantity){item->low, LW_GIVEN, item->kind, 0, 0, -1, LW_UNITS_METRIC};
    if (item->type == LW_ITEM_CHOICE) *lw_item_choice(item, n, &c) = (lw_choice){0, LW_GIVEN, 0, 0};
    if (item->type == LW_ITEM_WORDS)
      *lw_item_words(item, n, &c) = (lw_words){.text = "w", .origin = LW_GIVEN};
  }
  return c;
}

static void no_quantity_beyond(const lw_item *item, int number) {
  const double values[] = {NAN,
                           INFINITY,
                           -INFINITY,
                           1e300,
                           -1e300,
                           nextafter(item->high, INFINITY),
                           nextafter(item->low, -INFINITY)};
  for (size_t i = 0; i < sizeof values / sizeof *values; i++) {
    lw_case c = before(item, number);
    lw_kind kind = item->kind == LW_KIND_ANGLE_OR_SHARE ? LW_KIND_ANGLE : item->kind;
    *lw_item_quantity(item, number, &c) = (lw_quantity){values[i], LW_GIVEN, kind, 3, 2, -1, LW_UNITS_METRIC};
    bool well = refused(&c, lw_item_is_of_order(item));
    cr_expect(well, "%s %d: %g is taken", item->name, number, values[i]);
  }
}

static void no_choice_beyond(const lw_item *item, int number) {
  const int values[] = {-1, lw_item_word_count(item), 1 << 30};
  for (size_t i = 0; i < sizeof values / sizeof *values; i++) {
    lw_case c = before(item, number);
    *lw_item_choice(item, number, &c) = (lw_choice){values[i], LW_GIVEN, 3, 2};
    bool well = refused(&c, lw_item_is_of_order(item));
    cr_expect(well, "%s %d: word %d is taken", item->name, number, values[i]);
  }
}

static void no_words_without_end(const lw_item *item, int number) {
  lw_case c = before(item, number);
  lw_words *words = lw_item_words(item, number, &c);
  memset(words->text, 'w', sizeof words->text);
  words->origin = LW_GIVEN;
  bool well = refused(&c, lw_item_is_of_order(item));
  cr_expect(well, "%s %d: words without an end are taken", item->name, number);
}

Test(sheet, what_a_sheet_may_not_hold_no_case_may_hold) {
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    for (int n = item->repeats > 0 ? 1 : 0; n <= item->repeats; n++) {
      if (item->type == LW_ITEM_QUANTITY)
        no_quantity_beyond(item, n);
      else if (item->type == LW_ITEM_CHOICE)
        no_choice_beyond(item, n);
      else
        no_words_without_end(item, n);
    }
  }
}

Test(sheet, a_count_is_whole_and_an_angle_or_share_says_which_it_is) {
  lw_case c = CASE("wall height=600 mm", "block depth=300 mm"), half = c, neither = c;
  half.complete = neither.complete = false;
  half.water.drain_outlets = (lw_quantity){1.5, LW_GIVEN, LW_KIND_COUNT, 0, 0, -1, LW_UNITS_METRIC};
  neither.wall.friction = (lw_quantity){0.5, LW_GIVEN, LW_KIND_NUMBER, 0, 0, -1, LW_UNITS_METRIC};
  cr_expect(refused(&half, false));
  cr_expect(refused(&neither, false));
}

Test(sheet, a_settled_case_that_was_changed_is_held_again) {
  lw_case c = CASE("wall height=600 mm", "block depth=300 mm");
  c.courses.block_depth.si = 1e300;
  cr_expect(refused(&c, false));
  c.courses.block_depth.si = 0.3;
  c.ground.soil[0].friction.si = NAN;
  cr_expect(refused(&c, false), "what was assumed too");
}

static void count_faults(void *faults, int row, const lw_case *c, const lw_faults *of_row) {
  (void)row, (void)c;
  *(int *)faults += of_row->count;
}

/* The faults of a row whose one cell stands under the item. */
static int faults_of_cell(const lw_item *item, int number, const char *cell) {
  static lw_faults header;
  char name[64], sheet[512];
  int found = 0;
  lw_item_print_name(item, number, name, sizeof name);
  int length = snprintf(sheet, sizeof sheet, "%s\n%s\n", name, cell);
  memset(&header, 0, sizeof header);
  lw_schedule *schedule = lw_schedule_open(count_faults, &found, &header);
  lw_schedule_feed(schedule, sheet, (size_t)length);
  cr_expect_eq(lw_schedule_finish(schedule), LW_OK, "%s", name);
  lw_schedule_close(schedule);
  return found;
}

static void no_cell_beyond(const lw_item *item, int number) {
  double wide = fmax(1.0, item->high - item->low);
  double values[] = {item->high + 0.01 * wide, item->low - 0.01 * wide, 1e9, -1e9};
  char cell[128];
  for (size_t i = 0; i < sizeof values / sizeof *values; i++) {
    lw_item_say(item, item->kind == LW_KIND_COUNT ? ceil(values[i]) + (i == 1 ? -1.0 : 1.0) : values[i], cell,
                sizeof cell);
    cr_expect(faults_of_cell(item, number, cell) > 0, "%s %d: %s is taken", item->name, number, cell);
  }
  if (item->kind == LW_KIND_ANGLE_OR_SHARE)
    cr_expect(faults_of_cell(item, number, "2") > 0, "%s %d: a share of 2 is taken", item->name, number);
}

/* What a row's cells hold is not held again once it is in the case, so that no cell may let it by. */
Test(sheet, a_cell_of_a_schedule_is_held_when_it_is_read) {
  char long_words[LW_WORDS_MAX + 1];
  memset(long_words, 'w', LW_WORDS_MAX);
  long_words[LW_WORDS_MAX] = '\0';
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    for (int n = item->repeats > 0 ? 1 : 0; n <= item->repeats; n++) {
      if (item->type == LW_ITEM_QUANTITY)
        no_cell_beyond(item, n);
      else
        cr_expect(faults_of_cell(item, n, long_words) > 0, "%s %d: long words are taken", item->name, n);
    }
  }
}
