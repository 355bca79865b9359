/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheet/said.h"
#include "sheet/schedule.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <string.h>

/* Answers that are no value: `not known`, `more than 3 m`, `less than 3 m`; and 0, which needs no unit. */

static const char *const SHEETS[] = {"docs/demo/bed.csv", "docs/demo/terrace.csv", "docs/demo/bank.csv"};
enum { SHEETS_COUNT = sizeof SHEETS / sizeof *SHEETS };

static lw_case read_file(const char *path) {
  lw_text text = sheet_test_file(path);
  lw_case c;
  lw_faults faults = {.count = 0};
  cr_assert(lw_sheet_read(text.data, text.length, &c, &faults) == LW_OK, "%s", path);
  lw_text_free(&text);
  return c;
}

/* The faults of completing a case, without its rows, so that two can be compared. */
static int complete(lw_case *c) {
  lw_faults faults = {.count = 0};
  lw_case_complete(sheet_test_tables(), c, &faults);
  return faults.count;
}

static void type(const lw_named *named, const char *value, lw_case *c) {
  char name[LW_ITEM_NAME_MAX], argument[160];
  lw_faults faults = {.count = 0};
  lw_named_print(named, name, sizeof name);
  lw_print(argument, sizeof argument, "%s=%s", name, value);
  cr_assert(lw_sheet_override(argument, 1, c, &faults) == LW_OK, "%s: %s", argument, faults.fault[0].wanted);
}

static const lw_item *next_named(size_t *at, lw_named *named) {
  const lw_item *item = lw_item_at((*at)++);
  if (item) *named = (lw_named){.item = item, .number = item->repeats > 0 ? 1 : 0};
  return item;
}

Test(not_known, any_item_not_known_is_the_very_wall_without_it) {
  for (int s = 0; s < SHEETS_COUNT; s++) {
    const lw_case from = read_file(SHEETS[s]);
    lw_named named;
    for (size_t i = 0; next_named(&i, &named);) {
      static lw_case left_out, not_known;
      char difference[64], name[LW_ITEM_NAME_MAX];
      if (named.item->part == LW_ABOUT_OFFICER) continue;
      left_out = not_known = from;
      lw_named_print(&named, name, sizeof name);
      lw_named_forget(&named, &left_out);
      type(&named, i % 2 ? "not known" : "?", &not_known);
      cr_expect(lw_said_of(named.item, named.number, &not_known) != NULL, "%s", name);
      cr_expect(eq(int, complete(&left_out), complete(&not_known)), "%s in %s", name, SHEETS[s]);
      cr_expect(sheet_test_same(&left_out, &not_known, difference, sizeof difference), "%s in %s: %s", name,
                SHEETS[s], difference);
    }
  }
}

/* Of what an officer asks, nothing is taken where nobody was asked; who does not know leaves the gravest
 * open. */
Test(not_known, of_what_an_officer_asks_it_is_another_wall_than_without) {
  int items = 0;
  for (int s = 0; s < SHEETS_COUNT; s++) {
    const lw_case from = read_file(SHEETS[s]);
    lw_named named;
    for (size_t i = 0; next_named(&i, &named);) {
      static lw_case left_out, not_known, again;
      if (named.item->part != LW_ABOUT_OFFICER) continue;
      left_out = not_known = from;
      type(&named, i % 2 ? "not known" : "?", &not_known);
      again = not_known;
      type(&named, named.item->example, &again);
      complete(&left_out);
      complete(&not_known);
      complete(&again);
      cr_expect(lw_item_choice(named.item, 0, &left_out)->origin == LW_ABSENT, "%s", named.item->name);
      cr_expect(lw_item_choice(named.item, 0, &not_known)->origin == LW_ASSUMED, "%s", named.item->name);
      cr_expect(lw_item_choice(named.item, 0, &again)->origin == LW_GIVEN, "%s", named.item->name);
      items++;
    }
  }
  cr_expect(eq(int, items, 10 * SHEETS_COUNT));
}

/* One row of an upright sheet, its value quoted. */
static lw_status read_row(const lw_named *named, const char *value, lw_case *c, lw_faults *faults) {
  char name[LW_ITEM_NAME_MAX];
  lw_text sheet = {0};
  *faults = (lw_faults){.count = 0};
  lw_named_print(named, name, sizeof name);
  lw_text_addf(&sheet, "item,value\n%s,\"%s\"\n", name, value);
  lw_status status = lw_sheet_read(sheet.data, sheet.length, c, faults);
  lw_text_free(&sheet);
  return status;
}

static bool written_as(const lw_case *c, const lw_named *named, const char *value) {
  char row[160], name[LW_ITEM_NAME_MAX];
  lw_text out = {0};
  lw_named_print(named, name, sizeof name);
  lw_print(row, sizeof row, "\n%s,%s,", name, value);
  lw_sheet_write(c, false, &out);
  bool found = strstr(out.data, row) != NULL;
  lw_text_free(&out);
  return found;
}

Test(not_known, it_is_written_back_whole_or_filled_in) {
  lw_named named;
  for (size_t i = 0; next_named(&i, &named);) {
    static lw_case c, again;
    static lw_faults faults;
    cr_assert(read_row(&named, "Not known", &c, &faults) == LW_OK, "%s", named.item->name);
    cr_expect(written_as(&c, &named, "not known"), "%s", named.item->name);
    again = c;
    type(&named, named.item->example, &again);
    cr_expect(not(written_as(&again, &named, "not known")), "%s was given since", named.item->name);
    type(&(lw_named){.item = lw_item_at(i > 1 ? 0 : 1)}, "T", &c);
    complete(&c);
    cr_expect(written_as(&c, &named, "not known"), "%s", named.item->name);
  }
}

Test(not_known, twice_or_beside_a_value_it_is_a_fault) {
  static const char *const sheets[] = {"item,value\nblock depth,not known\nblock depth,300 mm\n",
                                       "item,value\nblock depth,300 mm\nblock depth,not known\n",
                                       "item,value\nsite back,?\nsite back,?\n"};
  for (size_t i = 0; i < sizeof sheets / sizeof *sheets; i++) {
    lw_case c;
    lw_faults faults = {.count = 0};
    cr_expect(lw_sheet_read(sheets[i], strlen(sheets[i]), &c, &faults) == LW_FAULTS, "%s", sheets[i]);
    cr_expect(faults.count == 1 && faults.fault[0].slug == LW_FAULT_DUPLICATE_ITEM &&
              faults.fault[0].row == 3);
  }
}

Test(not_known, there_is_room_for_so_many_and_the_next_is_told) {
  lw_text sheet = {0};
  static lw_case c;
  static lw_faults faults;
  lw_text_add(&sheet, "item,value\n");
  for (int i = 0; i <= LW_SAID_MAX; i++) {
    char name[LW_ITEM_NAME_MAX];
    const lw_item *item = lw_item_at((size_t)i);
    lw_item_print_name(item, item->repeats > 0 ? 1 : 0, name, sizeof name);
    lw_text_addf(&sheet, "%s,not known\n", name);
  }
  cr_expect(lw_sheet_read(sheet.data, sheet.length, &c, &faults) == LW_FAULTS);
  cr_expect(faults.count == 1 && faults.fault[0].slug == LW_FAULT_TOO_MANY &&
            faults.fault[0].row == LW_SAID_MAX + 2);
  lw_text_free(&sheet);
}

/* --- distances --- */

Test(not_known, more_than_counts_as_the_near_end_of_each_distance_and_nowhere_else) {
  static const char *const ways[] = {"more than 3 m", "More Than 3 m", "over 3 m",
                                     "> 3 m",         ">3 m",          "more than 9 ft 10 in"};
  lw_named named;
  int distances = 0;
  for (size_t i = 0; next_named(&i, &named);)
    for (size_t w = 0; w < sizeof ways / sizeof *ways && named.item->type == LW_ITEM_QUANTITY; w++) {
      static lw_case c, plain;
      static lw_faults faults;
      lw_status status = read_row(&named, ways[w], &c, &faults);
      if (!named.item->near_is_grave) {
        cr_expect(status == LW_FAULTS && faults.fault[0].row == 2 && faults.fault[0].column == 2, "%s %s",
                  named.item->name, ways[w]);
        cr_expect(strstr(faults.fault[0].wanted, named.item->example) != NULL, "%s", faults.fault[0].wanted);
        continue;
      }
      distances++;
      bool feet = strstr(ways[w], "ft") != NULL;
      cr_expect(status == LW_OK, "%s %s", named.item->name, ways[w]);
      cr_assert(read_row(&named, feet ? "9 ft 10 in" : "3 m", &plain, &faults) == LW_OK);
      cr_expect(fabs(lw_item_quantity(named.item, 0, &c)->si - lw_item_quantity(named.item, 0, &plain)->si) <
                1e-15);
      cr_expect(feet || written_as(&c, &named, "more than 3"), "%s", named.item->name);
    }
  cr_expect(eq(int, distances, 7 * (int)(sizeof ways / sizeof *ways)));
}

Test(not_known, less_than_is_as_left_out_and_is_remembered) {
  const lw_case from = read_file(SHEETS[0]);
  lw_named named;
  for (size_t i = 0; next_named(&i, &named);) {
    if (!named.item->near_is_grave) continue;
    static lw_case left_out, near, again;
    char difference[64];
    lw_text sheet = {0};
    lw_faults faults = {.count = 0};
    left_out = near = from;
    lw_named_forget(&named, &left_out);
    type(&named, "less than 3 m", &near);
    lw_sheet_write(&near, false, &sheet);
    cr_expect(written_as(&near, &named, "less than 3 m"), "%s", sheet.data);
    cr_assert(lw_sheet_read(sheet.data, sheet.length, &again, &faults) == LW_OK);
    cr_expect(written_as(&again, &named, "less than 3 m"), "%s", sheet.data);
    complete(&left_out);
    complete(&near);
    cr_expect(sheet_test_same(&left_out, &near, difference, sizeof difference), "%s: %s", named.item->name,
              difference);
    lw_text_free(&sheet);
  }
}

/* --- schedules --- */

typedef struct packed {
  lw_schedule *schedule;
  lw_case c;
  int rows;
} packed;

static void take_row(void *context, int row, const lw_case *c, const lw_faults *faults) {
  packed *to = context;
  unsigned char bytes[4096];
  (void)row;
  cr_assert(faults->count == 0, "%s", faults->fault[0].wanted);
  cr_assert(lw_schedule_row_size(to->schedule) <= sizeof bytes);
  lw_schedule_pack(to->schedule, c, bytes);
  lw_schedule_unpack(to->schedule, bytes, &to->c);
  to->rows++;
}

Test(not_known, a_row_of_a_schedule_keeps_each_of_them) {
  static const char sheet[] =
      "wall height [mm],boundary distance [m],building distance,site back,soil 1 name\n"
      "600,more than 3,less than 3 m,not known,?\n"
      "600,4,5 m,wall,loam\n";
  static lw_faults faults;
  static packed to;
  to.schedule = lw_schedule_open(take_row, &to, &faults);
  cr_assert(lw_schedule_feed(to.schedule, sheet, strlen(sheet) - strlen("600,4,5 m,wall,loam\n")) == LW_OK);
  cr_assert(to.rows == 1);
  const lw_named boundary = {.item = lw_item_find("boundary distance", 17, &(int){0})},
                 building = {.item = lw_item_find("building distance", 17, &(int){0})},
                 back = {.item = lw_item_find("site back", 9, &(int){0})},
                 soil = {.item = lw_item_find("soil 1 name", 11, &(int){0}), .number = 1};
  cr_expect(written_as(&to.c, &boundary, "more than 3"));
  cr_expect(written_as(&to.c, &building, "less than 3 m"));
  cr_expect(written_as(&to.c, &back, "not known") && written_as(&to.c, &soil, "not known"));
  const char *rest = strstr(sheet, "600,4");
  cr_assert(lw_schedule_feed(to.schedule, rest, strlen(rest)) == LW_OK);
  cr_assert(lw_schedule_finish(to.schedule) == LW_OK && to.rows == 2);
  cr_expect(to.c.told.count == 0 && to.c.site.boundary_distance.table_row == -1, "the next row has its own");
  lw_schedule_close(to.schedule);
}

/* --- nothing --- */

Test(not_known, nothing_needs_no_unit_and_is_the_same_in_any) {
  lw_named named;
  int zeros = 0;
  for (size_t i = 0; next_named(&i, &named);) {
    const lw_item *item = named.item;
    static lw_case bare, with;
    static lw_faults faults;
    char typed[64];
    if (item->type != LW_ITEM_QUANTITY || item->low > 0.0 || item->unit[0] == '\0') continue;
    lw_print(typed, sizeof typed, "0 %s", item->unit);
    cr_assert(read_row(&named, typed, &with, &faults) == LW_OK, "%s", item->name);
    cr_expect(read_row(&named, "0", &bare, &faults) == LW_OK, "%s", item->name);
    const lw_quantity *a = lw_item_quantity(item, named.number, &bare),
                      *b = lw_item_quantity(item, named.number, &with);
    cr_expect(fabs(a->si) + fabs(b->si) < 1e-300 && a->origin == LW_GIVEN, "%s", item->name);
    cr_expect(a->kind == b->kind || item->kind == LW_KIND_ANGLE_OR_SHARE, "%s", item->name);
    cr_expect(read_row(&named, "1", &bare, &faults) == LW_FAULTS || item->kind == LW_KIND_ANGLE_OR_SHARE,
              "%s", item->name);
    zeros++;
  }
  cr_expect(lt(int, 40, zeros));
}
