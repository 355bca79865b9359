/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheet/likely.h"
#include "sheet/schedule.h"
#include "../checks/random_wall.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <string.h>

/* ` likely` behind the name of a quantity: on a sheet, in a schedule, on the command line; and what
 * completing makes of it. */

static int last_number(const lw_item *item) {
  return item->repeats;
}

/* One row, `name likely,example`, as a sheet has it. */
static lw_status read_row(const lw_item *item, const char *value, lw_case *c, lw_faults *faults) {
  char name[LW_ITEM_NAME_MAX + 8];
  lw_text sheet = {0};
  memset(faults, 0, sizeof *faults);
  lw_likely_print_name(item, last_number(item), name, sizeof name);
  lw_text_addf(&sheet, "item,value\n%s,\"%s\"\n", name, value);
  lw_status status = lw_sheet_read(sheet.data, sheet.length, c, faults);
  lw_text_free(&sheet);
  return status;
}

static void expect_only_likely(const lw_item *item, const lw_case *c, const lw_case *cautious) {
  lw_case copy = *c, other = *cautious;
  const lw_quantity *q = lw_item_likely(item, last_number(item), c),
                    *own = lw_item_quantity(item, last_number(item), &other);
  cr_assert(q != NULL, "%s", item->name);
  cr_expect(memcmp(&q->si, &own->si, sizeof q->si) == 0 && q->kind == own->kind, "%s", item->name);
  cr_expect(lw_item_quantity(item, last_number(item), &copy)->origin == LW_ABSENT, "%s", item->name);
}

Test(likely, every_quantity_takes_one_and_reads_it_as_the_item_does) {
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    char name[LW_ITEM_NAME_MAX], argument[160], wanted[2][200];
    static lw_faults faults;
    static lw_case c, line, plain;
    lw_item_print_name(item, last_number(item), name, sizeof name);
    if (!lw_likely_is_read(item)) {
      cr_expect(read_row(item, item->example, &c, &faults) == LW_FAULTS, "%s", item->name);
      cr_expect(faults.fault[0].slug == LW_FAULT_UNKNOWN_ITEM && faults.fault[0].row == 2, "%s", item->name);
      continue;
    }
    memset(&line, 0, sizeof line);
    memset(&plain, 0, sizeof plain);
    memset(&faults, 0, sizeof faults);
    lw_print(argument, sizeof argument, "%s=%s", name, item->example);
    cr_expect(lw_sheet_override(argument, 1, &plain, &faults) == LW_OK);
    lw_print(argument, sizeof argument, "%s_LIKELY =%s", name, item->example);
    cr_expect(lw_sheet_override(argument, 1, &line, &faults) == LW_OK, "%s", argument);
    cr_expect(read_row(item, item->example, &c, &faults) == LW_OK, "%s", item->name);
    expect_only_likely(item, &c, &plain);
    expect_only_likely(item, &line, &plain);
    cr_expect(lw_sheet_override(argument, 2, &line, &faults) == LW_FAULTS, "%s twice", argument);
    cr_expect(read_row(item, "1 furlong", &c, &faults) == LW_FAULTS && faults.fault[0].row == 2);
    cr_expect(strstr(faults.fault[0].item, " likely") != NULL, "%s", faults.fault[0].item);
    lw_print(wanted[0], sizeof wanted[0], "%s", faults.fault[0].wanted);
    lw_print(argument, sizeof argument, "%s=1 furlong", name);
    memset(&faults, 0, sizeof faults);
    memset(&plain, 0, sizeof plain);
    cr_expect(lw_sheet_override(argument, 1, &plain, &faults) == LW_FAULTS);
    lw_print(wanted[1], sizeof wanted[1], "%s", faults.fault[0].wanted);
    cr_expect(eq(str, wanted[0], wanted[1]), "%s", item->name);
  }
}

Test(likely, its_range_is_that_of_the_item) {
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    static lw_faults faults;
    static lw_case c;
    if (!lw_likely_is_read(item) || item->kind == LW_KIND_COUNT) continue;
    lw_quantity q = {item->high * 1.5 + 1.0, LW_GIVEN, item->kind, 7, 3, -1, LW_UNITS_METRIC};
    if (item->kind == LW_KIND_ANGLE_OR_SHARE) q.kind = LW_KIND_ANGLE;
    memset(&c, 0, sizeof c);
    memset(&faults, 0, sizeof faults);
    cr_assert(lw_item_set_likely(item, last_number(item), &q, &c) == LW_OK);
    cr_expect(lw_case_complete(sheet_test_tables(), &c, &faults) == LW_FAULTS);
    bool told = false;
    for (int k = 0; k < faults.count; k++)
      told = told || (faults.fault[k].slug == LW_FAULT_OUT_OF_RANGE && faults.fault[k].row == 7 &&
                      faults.fault[k].column == 3 && strstr(faults.fault[k].item, " likely"));
    cr_expect(told, "%s", item->name);
  }
}

Test(likely, a_name_means_it_in_any_capitals_and_blanks_and_only_at_its_end) {
  static const char *const names[] = {"wall height likely", "Wall Height LIKELY ", "wall_height_likely",
                                      "wall-height-Likely", "wall height\tlikely\t"};
  for (size_t i = 0; i < sizeof names / sizeof *names; i++)
    cr_expect(eq(sz, lw_likely_stem(names[i], strlen(names[i])), 11), "%s", names[i]);
  static const char *const none[] = {
      "likely", " likely", "wall height", "unlikely", "wall likely height", "heightlikely", ""};
  for (size_t i = 0; i < sizeof none / sizeof *none; i++) {
    size_t stem = lw_likely_stem(none[i], strlen(none[i]));
    cr_expect(stem == strlen(none[i]) || stem == 0, "%s", none[i]);
  }
}

Test(likely, there_is_room_for_so_many_and_the_next_is_told) {
  lw_case c = {0};
  static lw_faults faults;
  char argument[80];
  for (int i = 1; i <= LW_LIKELY_MAX + 1; i++) {
    lw_print(argument, sizeof argument, "point %d x likely=%d mm", i, i);
    lw_status status = lw_sheet_override(argument, i, &c, &faults);
    cr_expect(status == (i <= LW_LIKELY_MAX ? LW_OK : LW_FAULTS), "%d", i);
  }
  cr_expect(faults.count == 1 && faults.fault[0].slug == LW_FAULT_TOO_MANY);
  cr_expect(eq(str, faults.fault[0].item, "point 25 x likely"));
}

Test(likely, a_written_sheet_has_them_to_the_last_bit) {
  unsigned state = 4711;
  static lw_faults faults;
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    static lw_case c, again;
    char difference[64];
    lw_text sheet = {0};
    if (!lw_likely_is_read(item) || item->kind == LW_KIND_COUNT) continue;
    state = state * 1664525u + 1013904223u;
    double share = (double)state / 4294967296.0;
    lw_quantity q = {
        item->low + (item->high - item->low) * share, LW_GIVEN, item->kind, 2, 2, -1, LW_UNITS_METRIC};
    if (item->kind == LW_KIND_ANGLE_OR_SHARE)
      q = (lw_quantity){share, LW_GIVEN, LW_KIND_SHARE, 2, 2, -1, LW_UNITS_METRIC};
    memset(&c, 0, sizeof c);
    memset(&faults, 0, sizeof faults);
    (void)lw_sheet_override("wall height=900 mm", 1, &c, &faults);
    cr_assert(lw_item_set_likely(item, last_number(item), &q, &c) == LW_OK);
    lw_sheet_write(&c, false, &sheet);
    cr_expect(lw_sheet_read(sheet.data, sheet.length, &again, &faults) == LW_OK, "%s", sheet.data);
    cr_expect(sheet_test_same(&c, &again, difference, sizeof difference), "%s\n%s", difference, sheet.data);
    lw_text_free(&sheet);
  }
}

/* The rows of a schedule, read, packed and unpacked. */
typedef struct rows {
  const lw_schedule *schedule;
  int count;
  lw_case row[3], unpacked[3];
} rows;

static void take_row(void *context, int row, const lw_case *c, const lw_faults *faults) {
  rows *r = context;
  unsigned char bytes[1024];
  (void)row;
  cr_assert(faults->count == 0 && r->count < 3, "%s", faults->fault[0].wanted);
  r->row[r->count] = *c;
  cr_assert(lw_schedule_row_size(r->schedule) <= sizeof bytes);
  lw_schedule_pack(r->schedule, c, bytes);
  lw_schedule_unpack(r->schedule, bytes, &r->unpacked[r->count++]);
}

Test(likely, a_column_of_a_schedule_holds_it) {
  static const char sheet[] =
      "mark,wall height [mm],soil 1 friction angle likely [deg],soil 1 friction angle "
      "[deg],block unit weight likely [kN/m3]\n"
      "A,600,32.5,30,22\nB,600,,30,\nC,600,,,21.5\n";
  static rows r;
  static lw_faults faults;
  char difference[64];
  cr_expect(lw_sheet_is_schedule(sheet, strlen(sheet)));
  lw_schedule *schedule = lw_schedule_open(take_row, &r, &faults);
  r.schedule = schedule;
  cr_expect(lw_schedule_feed(schedule, sheet, strlen(sheet)) == LW_OK, "%s", faults.fault[0].wanted);
  cr_expect(lw_schedule_finish(schedule) == LW_OK);
  lw_schedule_close(schedule);
  cr_assert(eq(int, r.count, 3));
  static const int counts[] = {2, 0, 1};
  for (int i = 0; i < 3; i++) {
    cr_expect(eq(int, r.row[i].likely.count, counts[i]), "row %d", i);
    cr_expect(sheet_test_same(&r.row[i], &r.unpacked[i], difference, sizeof difference), "%s", difference);
  }
  cr_expect(fabs(r.row[0].likely.value[0].value.si * LW_DEG_PER_RAD - 32.5) < 1e-9);
  cr_expect(eq(int, r.row[0].likely.value[0].value.row, 2));
  cr_expect(eq(int, r.row[0].likely.value[0].value.column, 3));
}

static lw_case looked(lw_case c, lw_look look) {
  static lw_faults faults;
  faults.count = 0;
  c.look = look;
  c.complete = false;
  cr_assert(lw_case_complete(sheet_test_tables(), &c, &faults) == LW_OK, "%s: %s", faults.fault[0].item,
            faults.fault[0].wanted);
  return c;
}

static double degrees(double rad) {
  return rad * LW_DEG_PER_RAD;
}

Test(likely, what_is_given_is_the_same_in_both_looks_unless_its_likely_value_is_given_too) {
  lw_case c =
      CASE("wall height=600 mm", "block depth=300 mm", "soil 1 friction angle=31 deg",
           "block unit weight=20 kN/m3", "block unit weight likely=21.5 kN/m3", "joint friction likely=0.55");
  lw_case likely = looked(c, LW_LOOK_LIKELY);
  cr_expect(fabs(degrees(likely.ground.soil[0].friction.si) - 31.0) < 1e-9);
  cr_expect(fabs(c.courses.block_unit_weight.si - 20.0) < 1e-12);
  cr_expect(fabs(likely.courses.block_unit_weight.si - 21.5) < 1e-12);
  cr_expect(fabs(likely.courses.joint_friction.si - 0.55) < 1e-12, "in place of the table's likely one");
  cr_expect(c.courses.joint_friction.origin == LW_ASSUMED &&
            likely.courses.joint_friction.origin == LW_GIVEN);
}

Test(likely, what_nobody_gives_has_its_likely_value_from_the_tables) {
  const lw_tables *tables = sheet_test_tables();
  lw_case c = looked(CASE("wall height=600 mm", "block depth=300 mm"), LW_LOOK_LIKELY);
  cr_expect(fabs(degrees(c.ground.soil[0].friction.si) - 30.0) < 1e-9);
  cr_expect(fabs(c.ground.soil[0].unit_weight.si - 18.0) < 1e-12);
  cr_expect(fabs(c.ground.soil[0].light_unit_weight.si - 18.0) < 1e-12);
  cr_expect(fabs(c.courses.block_unit_weight.si - 22.0) < 1e-12);
  for (int i = 0; i < tables->soil_count; i++) {
    const lw_soil_row *row = &tables->soil[i];
    char argument[160];
    lw_print(argument, sizeof argument, "soil 1 name=%s", row->name);
    lw_case low = CASE("wall height=600 mm", "block depth=300 mm", argument),
            high = looked(low, LW_LOOK_LIKELY);
    double typical = isnan(row->friction_typical_rad) ? row->friction_rad : row->friction_typical_rad;
    const lw_case_soil *soil = &high.ground.soil[0];
    if (!isnan(row->friction_rad)) cr_expect(fabs(soil->friction.si - typical) < 1e-12, "%s", row->name);
    cr_expect(fabs(soil->unit_weight.si - row->unit_weight_typical_kn_per_m3) < 1e-12, "%s", row->name);
    cr_expect(fabs(soil->light_unit_weight.si - soil->unit_weight.si) < 1e-12, "%s", row->name);
    cr_expect(soil->saturated_unit_weight.si >= soil->unit_weight.si, "%s", row->name);
  }
}

/* Whatever was filled in before, from one look or the other. */
Test(likely, a_case_completed_anew_forgets_the_other_look) {
  dice d = {2027};
  char difference[64];
  for (int i = 0; i < 200 / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    static lw_faults faults;
    lw_case raw = {0};
    random_wall_make(&d, &wall);
    for (int k = 0; k < wall.count; k++) lw_sheet_override(wall.text[k], k + 1, &raw, &faults);
    (void)lw_sheet_override("soil 1 friction angle likely=60 deg", wall.count + 1, &raw, &faults);
    lw_case first = looked(raw, LW_LOOK_LIKELY),
            second = looked(looked(raw, LW_LOOK_CAUTIOUS), LW_LOOK_LIKELY);
    cr_expect(sheet_test_same(&first, &second, difference, sizeof difference), "%d: %s", i, difference);
  }
}

/* Values that are sound each by itself and cannot be together: told where the case is read, with the cell of
 * the likely value, and once. */
Test(likely, likely_values_that_contradict_each_other_are_faults_of_their_cells) {
  static const struct {
    const char *sheet, *item;
    lw_fault_slug slug;
    int row;
  } faulty[] = {
      {"wall height,600,mm\nsoil 2 friction angle likely,30,deg\n", "soil 2 friction angle likely",
       LW_FAULT_GAP_IN_NUMBERING, 3},
      {"wall height,600,mm\nsoil 1 name,loam,\nsoil 2 friction angle likely,30,deg\n", "soil 1 bottom",
       LW_FAULT_MISSING_ITEM, 0},
      {"wall height,600,mm\nload 2 pressure likely,3,kPa\n", "load 2 pressure likely",
       LW_FAULT_GAP_IN_NUMBERING, 3},
      {"wall height,600,mm\ncourse count,3,\nblock height,200,mm\nwall embedment,0,m\nblock height "
       "likely,150,mm\n",
       "", LW_FAULT_CONTRADICTION, 0},
      {"wall height,600,mm\nsoil 1 bottom,0.3,m\nsoil 2 bottom,0.5,m\nsoil 3 name,loam,\nsoil 2 bottom "
       "likely,0.2,m\n",
       "soil 2 bottom likely", LW_FAULT_CONTRADICTION, 6},
  };
  for (size_t i = 0; i < sizeof faulty / sizeof *faulty; i++) {
    static lw_faults faults;
    static lw_case c;
    lw_text sheet = {0};
    memset(&faults, 0, sizeof faults);
    lw_text_addf(&sheet, "item,value,unit\n%s", faulty[i].sheet);
    cr_expect(lw_sheet_read(sheet.data, sheet.length, &c, &faults) == LW_OK);
    cr_expect(lw_case_complete(sheet_test_tables(), &c, &faults) == LW_FAULTS, "%s", sheet.data);
    const lw_fault *fault = &faults.fault[0];
    cr_expect(eq(int, faults.count, 1), "%s%s; %s", sheet.data, faults.fault[1].item, faults.fault[1].wanted);
    cr_expect(fault->slug == faulty[i].slug, "%s%s: %s", sheet.data, fault->item, fault->wanted);
    if (faulty[i].item[0]) cr_expect(strcmp(fault->item, faulty[i].item) == 0, "%s", fault->item);
    if (faulty[i].row > 0) cr_expect(eq(int, fault->row, faulty[i].row));
    lw_text_free(&sheet);
  }
}

Test(likely, the_load_that_nobody_gave_may_have_its_likely_value_alone) {
  lw_case c = CASE("wall height=600 mm", "block depth=300 mm", "load 1 pressure likely=0.8 kPa");
  lw_case likely = looked(c, LW_LOOK_LIKELY);
  cr_expect(c.load[0].pressure.origin == LW_ASSUMED && c.load[1].kind.origin == LW_ABSENT);
  cr_expect(fabs(likely.load[0].pressure.si - 0.8) < 1e-12 && likely.load[0].kind.value == LW_LOAD_UNIFORM);
  cr_expect(likely.load[1].kind.origin == LW_ABSENT);
}
