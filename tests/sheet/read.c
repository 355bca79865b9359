/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

static const char upright[] = "item,value,unit,note\n"
                              "mark,W1,,\n"
                              "wall height,900,mm,\n"
                              "block depth,300,mm,as sold\n"
                              "wall friction,0.67,,\n"
                              "ground slope,1:8,,\n"
                              "soil 1 friction angle,30.5,deg,\n"
                              "soil 2 unit weight,18.25,kN/m3,\n"
                              "load 1 kind,strip,,\n"
                              "load 1 pressure,2.5,kPa,\n"
                              "people on cap,no,,\n";

static const char schedule[] = "mark,wall height [mm],block depth [mm],wall friction,ground slope,"
                               "soil 1 friction angle [deg],soil 2 unit weight [kN/m3],load 1 kind,"
                               "load 1 pressure [kPa],people on cap\n"
                               "W1,900,300,0.67,1:8,30.5,18.25,strip,2.5,no\n";

static lw_case read_upright(const char *sheet) {
  lw_case c;
  lw_faults faults = {0};
  lw_status status = lw_sheet_read(sheet, strlen(sheet), &c, &faults);
  cr_assert(status == LW_OK, "%s: %s, %s", lw_fault_slug_name(faults.fault[0].slug), faults.fault[0].stood,
            faults.fault[0].wanted);
  return c;
}

typedef struct seen {
  int rows, faulty, last_row;
  lw_case c;
} seen;

static void see_row(void *context, int row, const lw_case *c, const lw_faults *faults) {
  seen *s = context;
  s->rows++;
  s->faulty += faults->count > 0;
  s->last_row = row;
  s->c = *c;
}

/* Feed a schedule in pieces of the given size. */
static seen read_schedule(const char *sheet, size_t length, size_t piece) {
  seen s = {0};
  lw_faults faults = {0};
  lw_schedule *reader = lw_schedule_open(see_row, &s, &faults);
  for (size_t i = 0; i < length; i += piece) {
    lw_schedule_feed(reader, sheet + i, length - i < piece ? length - i : piece);
  }
  lw_schedule_finish(reader);
  lw_schedule_close(reader);
  cr_expect(faults.count == 0, "%s", faults.fault[0].wanted);
  return s;
}

static void expect_same(const lw_case *a, const lw_case *b, const char *what) {
  char difference[64];
  cr_expect(sheet_test_same(a, b, difference, sizeof difference), "%s: they differ in %s", what, difference);
}

Test(sheet, both_shapes_give_the_same_case) {
  lw_case one = read_upright(upright);
  cr_expect(not(lw_sheet_is_schedule(upright, strlen(upright))));
  cr_expect(lw_sheet_is_schedule(schedule, strlen(schedule)));
  seen many = read_schedule(schedule, strlen(schedule), 7);
  cr_expect(eq(int, many.rows, 1));
  expect_same(&one, &many.c, "upright and schedule");
  cr_expect(fabs(one.ground.slope.si - atan(0.125)) < 1e-15);
  cr_expect(one.wall.friction.kind == LW_KIND_SHARE);
  cr_expect(one.courses.block_depth.row == 4 && one.courses.block_depth.column == 2);
  cr_expect(many.c.courses.block_depth.row == 2 && many.c.courses.block_depth.column == 3);
}

Test(sheet, a_schedule_may_come_byte_by_byte) {
  for (size_t piece = 1; piece < 40; piece++) {
    seen whole = read_schedule(schedule, strlen(schedule), strlen(schedule));
    seen pieces = read_schedule(schedule, strlen(schedule), piece);
    expect_same(&whole.c, &pieces.c, "pieces");
  }
}

/* Put other separators and line ends into the upright sheet. */
static lw_text respell(const char *sheet, char separator, const char *end, const char *head) {
  lw_text text = {0};
  lw_text_add(&text, head);
  for (const char *c = sheet; *c != '\0'; c++) {
    if (*c == '\n') {
      lw_text_add(&text, end);
    } else {
      lw_text_add_bytes(&text, *c == ',' ? &separator : c, 1);
    }
  }
  return text;
}

Test(sheet, separators_line_ends_and_byte_order_mark_do_not_matter) {
  static const char separators[] = {',', ';', '\t'};
  static const char *const ends[] = {"\n", "\r\n", "\r"};
  static const char *const heads[] = {"", "\xEF\xBB\xBF"};
  lw_case plain = read_upright(upright);
  for (int i = 0; i < 18; i++) {
    lw_text text = respell(upright, separators[i % 3], ends[i / 3 % 3], heads[i / 9]);
    lw_case c = read_upright(text.data);
    expect_same(&plain, &c, "respelt");
    cr_expect(eq(int, c.courses.block_depth.row, 4));
    lw_text_free(&text);
    text = respell(schedule, separators[i % 3], ends[i / 3 % 3], heads[i / 9]);
    cr_expect(lw_sheet_is_schedule(text.data, text.length));
    seen s = read_schedule(text.data, text.length, 5);
    expect_same(&plain, &s.c, "respelt schedule");
    lw_text_free(&text);
  }
}

Test(sheet, a_decimal_comma_is_read_in_semicolon_and_tab_files) {
  lw_case c = read_upright("item;value;unit\nblock depth;0,305;m\nwall friction;0,5;\nsetback;1.5 mm;\n");
  cr_expect(fabs(c.courses.block_depth.si - 0.305) < 1e-15);
  cr_expect(fabs(c.wall.friction.si - 0.5) < 1e-15);
  cr_expect(fabs(c.courses.setback.si - 0.0015) < 1e-15);
  c = read_upright("item\tvalue\tunit\nground slope\t1:2,5\t\n");
  cr_expect(fabs(c.ground.slope.si - atan(0.4)) < 1e-15);
}

Test(sheet, blank_rows_and_remarks_are_no_items_but_count_as_rows) {
  lw_case c = read_upright("\r\nitem,value\r\n\r\n,,\r\nwall height,900 mm\r\n\"\",\"\"\r\n");
  cr_expect(eq(int, c.wall.height.row, 5));
  c = read_upright("item,value,unit,note\nwall height,900 mm,,\"two\nlines, of "
                   "\"\"note\"\"\"\n,,,remark\nblock depth,1 ft\n");
  cr_expect(eq(int, c.courses.block_depth.row, 4));
}

Test(sheet, names_fold_case_blanks_hyphens_and_underscores) {
  static const char *const names[] = {"wall height", "Wall  Height", "WALL-HEIGHT", "wall_height",
                                      " wall\theight "};
  for (size_t i = 0; i < sizeof names / sizeof *names; i++) {
    int number;
    const lw_item *item = lw_item_find(names[i], strlen(names[i]), &number);
    cr_expect(item != NULL && strcmp(item->name, "wall height") == 0, "%s", names[i]);
  }
}

typedef struct written {
  const char *argument;
  double si;
} written;

Test(sheet, measures_are_read_as_people_write_them) {
  static const written lengths[] = {
      {"block depth=300 mm", 0.3},       {"block depth=30cm", 0.3},           {"block depth=0.3 m", 0.3},
      {"block depth=12 in", 0.3048},     {"block depth=1 ft 6 in", 0.4572},   {"block depth=1'6\"", 0.4572},
      {"block depth=1' 6.5\"", 0.46990}, {"block depth=1 ft 6.5 in", 0.4699}, {"block depth=1.5 ft", 0.4572},
      {"block depth=3e2 mm", 0.3},       {"block-depth = 0.5 yd ", 0.4572},   {"block depth=1ft 6in", 0.4572},
  };
  for (size_t i = 0; i < sizeof lengths / sizeof *lengths; i++) {
    lw_case c = CASE("wall height=900 mm", lengths[i].argument);
    cr_expect(fabs(c.courses.block_depth.si - lengths[i].si) < 1e-12, "%s: %.17g", lengths[i].argument,
              c.courses.block_depth.si);
  }
  static const written coefficients[] = {{"base friction=0.35", 0.35},
                                         {"base friction=30 deg", 0.57735026918962576},
                                         {"base friction=1:2", 0.5}};
  for (size_t i = 0; i < sizeof coefficients / sizeof *coefficients; i++) {
    lw_case c = CASE("wall height=900 mm", coefficients[i].argument);
    cr_expect(fabs(c.ground.base_friction.si - coefficients[i].si) < 1e-12, "%s", coefficients[i].argument);
    cr_expect(c.ground.base_friction.kind == LW_KIND_NUMBER);
  }
}

Test(sheet, a_wall_in_feet_and_pounds_is_the_same_wall) {
  lw_case metric = CASE("wall height=914.4 mm", "wall embedment=152.4 mm", "block height=152.4 mm",
                        "block depth=304.8 mm", "load 1 pressure=2.394012949016792 kPa", "setback=25.4 mm",
                        "soil 1 unit weight=18.84 kN/m3", "boundary distance=3.048 m");
  lw_case customary = CASE("wall height=3 ft", "wall embedment=6 in", "block height=0.5 ft",
                           "block depth=12 in", "load 1 pressure=50 psf", "setback=1 in",
                           "soil 1 unit weight=119.93 pcf", "boundary distance=10 ft");
  cr_expect(fabs(metric.wall.height.si - customary.wall.height.si) < 1e-12);
  cr_expect(fabs(metric.courses.block_depth.si - customary.courses.block_depth.si) < 1e-12);
  cr_expect(fabs(metric.courses.count.si - customary.courses.count.si) < 1e-12);
  cr_expect(fabs(metric.load[0].pressure.si - customary.load[0].pressure.si) < 1e-12);
  cr_expect(fabs(metric.courses.setback.si - customary.courses.setback.si) < 1e-12);
  cr_expect(fabs(metric.site.boundary_distance.si - customary.site.boundary_distance.si) < 1e-12);
  cr_expect(fabs(metric.ground.soil[0].unit_weight.si - customary.ground.soil[0].unit_weight.si) < 1e-3);
}

Test(sheet, a_load_takes_the_force_of_its_kind) {
  lw_case line =
      CASE("wall height=900 mm", "load 1 kind=line", "load 1 force=100 lb/ft", "load 1 distance=1 m");
  cr_expect(line.load[0].force.kind == LW_KIND_LINE_LOAD);
  lw_case point =
      CASE("wall height=900 mm", "load 1 kind=point", "load 1 force=1000 lb", "load 1 distance=1 m");
  cr_expect(point.load[0].force.kind == LW_KIND_FORCE);
  cr_expect(fabs(point.load[0].force.si - 4.4482216152605) < 1e-12);
}

Test(sheet, unknown_answers_are_as_if_left_out) {
  static const char *const ways[] = {"block height=unknown", "block height=?", "block height=Don't know",
                                     "people on cap=unknown", "soil 1 name=unknown"};
  lw_case plain = CASE("wall height=900 mm");
  for (size_t i = 0; i < sizeof ways / sizeof *ways; i++) {
    lw_case c = CASE("wall height=900 mm", ways[i]);
    expect_same(&plain, &c, ways[i]);
  }
}

Test(sheet, the_command_line_overrides_the_sheet_once) {
  lw_case c = read_upright(upright);
  lw_faults faults = {0};
  cr_expect(lw_sheet_override("wall height=1.2 m", 1, &c, &faults) == LW_OK);
  cr_expect(fabs(c.wall.height.si - 1.2) < 1e-15);
  cr_expect(c.wall.height.row == 0 && c.wall.height.column == 1);
  cr_expect(lw_sheet_override("wall height=1.3 m", 2, &c, &faults) == LW_FAULTS);
  cr_expect(faults.fault[0].slug == LW_FAULT_DUPLICATE_ITEM);
  cr_expect(lw_sheet_override("wall height", 3, &c, &faults) == LW_FAULTS);
  cr_expect(faults.fault[1].slug == LW_FAULT_NO_VALUE);
  cr_expect(lw_sheet_override("block depth=", 4, &c, &faults) == LW_FAULTS);
  cr_expect(faults.fault[2].slug == LW_FAULT_NO_VALUE && faults.fault[2].column == 4 &&
            faults.fault[2].row == 0);
  cr_expect(fabs(c.wall.height.si - 1.2) < 1e-15 && fabs(c.courses.block_depth.si - 0.3) < 1e-15,
            "a fault leaves the case as it was");
  cr_expect(lw_sheet_override("block depth=unknown", 5, &c, &faults) == LW_OK);
  cr_expect(c.courses.block_depth.origin == LW_ABSENT);
}

Test(sheet, an_override_of_a_settled_case_is_settled_anew) {
  lw_case c = CASE("course count=5", "block height=200 mm", "wall embedment=200 mm");
  lw_faults faults = {0};
  cr_expect(fabs(c.wall.height.si - 0.8) < 1e-12);
  cr_expect(lw_sheet_override("block height=150 mm", 4, &c, &faults) == LW_FAULTS, "given twice");
  c.courses.count.si = 6.0;
  c.complete = false;
  faults.count = 0;
  cr_expect(lw_case_complete(sheet_test_tables(), &c, &faults) == LW_OK);
  cr_expect(fabs(c.wall.height.si - 1.0) < 1e-12);
}

Test(sheet, a_schedule_goes_on_after_a_faulty_row) {
  const char *rows = "mark,wall height [mm]\nW1,900\nW2,high\n\nW3,800\n";
  seen s = read_schedule(rows, strlen(rows), 3);
  cr_expect(eq(int, s.rows, 3));
  cr_expect(eq(int, s.faulty, 1));
  cr_expect(eq(int, s.last_row, 5));
  cr_expect(eq(str, s.c.about.mark.text, "W3"));
  cr_expect(fabs(s.c.wall.height.si - 0.8) < 1e-15);
}

Test(sheet, what_is_a_schedule) {
  static const char *const no[] = {"",
                                   "\n",
                                   "item,value\n",
                                   "wall height,900,mm\n",
                                   "Dear builder\n",
                                   "\"never closed",
                                   "\xEF\xBB\xBFitem;value\n"};
  static const char *const yes[] = {"mark;wall height [mm]\n", "wall height\n", "\n\nmark,block depth [mm]",
                                    "wall hight,mark"};
  for (size_t i = 0; i < sizeof no / sizeof *no; i++) {
    cr_expect(not(lw_sheet_is_schedule(no[i], strlen(no[i]))), "%zu", i);
  }
  for (size_t i = 0; i < sizeof yes / sizeof *yes; i++) {
    cr_expect(lw_sheet_is_schedule(yes[i], strlen(yes[i])), "%zu", i);
  }
}

/* Every text that comes from cutting and mangling a good sheet is read or refused, never worse. */
Test(sheet, mangled_sheets_are_survived) {
  unsigned state = 2385;
  size_t length = strlen(upright);
  char mangled[sizeof upright];
  for (int i = 0; i < 3000; i++) {
    memcpy(mangled, upright, sizeof upright);
    for (int k = 0; k < 4; k++) {
      state = state * 1664525u + 1013904223u;
      mangled[(state >> 8) % length] = (char)(state >> 24);
    }
    size_t cut = (state >> 4) % (length + 1);
    lw_case c;
    lw_faults *faults = calloc(1, sizeof *faults);
    lw_status status = lw_sheet_read(mangled, cut, &c, faults);
    cr_expect(status == (faults->count == 0 ? LW_OK : LW_FAULTS));
    lw_case_complete(sheet_test_tables(), &c, faults);
    lw_sheet_is_schedule(mangled, cut);
    free(faults);
  }
}
