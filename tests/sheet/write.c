/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <string.h>

static void expect_round_trip(const lw_case *c, bool assumed) {
  lw_text sheet = {0};
  lw_case again;
  lw_faults faults = {0};
  char difference[64];
  lw_sheet_write(c, assumed, &sheet);
  cr_expect(lw_sheet_read(sheet.data, sheet.length, &again, &faults) == LW_OK, "%s: %s",
            faults.fault[0].stood, faults.fault[0].wanted);
  cr_expect(sheet_test_same(c, &again, difference, sizeof difference), "%s\n%s", difference, sheet.data);
  lw_text_free(&sheet);
}

/* A complete case comes back as it was once the sheet is completed too. */
static void expect_settled_round_trip(const lw_case *c) {
  lw_text sheet = {0};
  lw_case again;
  lw_faults faults = {0};
  char difference[64];
  lw_sheet_write(c, true, &sheet);
  cr_expect(sheet_test_settled(sheet.data, &again, &faults) == LW_OK, "%s", faults.fault[0].wanted);
  cr_expect(sheet_test_same(c, &again, difference, sizeof difference), "%s\n%s", difference, sheet.data);
  lw_text_free(&sheet);
}

Test(sheet, a_written_sheet_is_read_as_the_same_case) {
  static const char *const kinds[] = {"bed", "ground", "section"};
  for (size_t i = 0; i < 3; i++) {
    lw_text sheet = {0};
    lw_case c;
    lw_faults faults = {0};
    lw_sheet_start(kinds[i], &sheet);
    cr_assert(lw_sheet_read(sheet.data, sheet.length, &c, &faults) == LW_OK);
    expect_round_trip(&c, false);
    expect_round_trip(&c, true);
    cr_assert(lw_case_complete(sheet_test_tables(), &c, &faults) == LW_OK);
    expect_settled_round_trip(&c);
    lw_text_free(&sheet);
  }
}

Test(sheet, awkward_words_and_numbers_come_back) {
  lw_case c = {0};
  lw_faults faults = {0};
  static const char *const arguments[] = {"title=A \"low\" wall, by the; pond\t(old)",
                                          "note=Garten f\xC3\xBCr Kinder",
                                          "mark= W-1 ",
                                          "wall height=3' 7 1\"",
                                          "wall height=3.3333333333333335 ft",
                                          "block depth=11.7 in",
                                          "ground slope=2:7",
                                          "wall friction=2/3",
                                          "wall friction=66.7 %",
                                          "back batter=-7.3 deg",
                                          "face batter=0.1 rad",
                                          "load 1 force=123.4 lb",
                                          "load 2 force=77.7 lb/ft",
                                          "soil 3 unit weight=117.3 pcf",
                                          "soil 6 saturated unit weight=2.07 t/m3",
                                          "base friction=27.3 deg",
                                          "drain outlets=2",
                                          "point 32 x=1.1 ft",
                                          "joint shear=31 plf",
                                          "method uplift=33.3 %"};
  for (size_t i = 0; i < sizeof arguments / sizeof *arguments; i++) {
    lw_sheet_override(arguments[i], (int)i + 1, &c, &faults);
  }
  cr_expect(eq(int, faults.count, 2), "the two that are no numbers");
  cr_expect(fabs(c.wall.height.si - 1.016) < 1e-12);
  expect_round_trip(&c, false);
}

Test(sheet, random_values_come_back_to_the_last_bit) {
  unsigned state = 77;
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    for (int k = 0; item->type == LW_ITEM_QUANTITY && item->kind != LW_KIND_COUNT && k < 20; k++) {
      lw_case c = {0};
      state = state * 1664525u + 1013904223u;
      double share = (double)state / 4294967296.0;
      lw_kind kind = item->kind == LW_KIND_ANGLE_OR_SHARE ? LW_KIND_ANGLE : item->kind;
      *lw_item_quantity(item, item->repeats, &c) = (lw_quantity){
          item->low + (item->high - item->low) * share, LW_GIVEN, kind, 2, 2, -1, LW_UNITS_METRIC};
      expect_round_trip(&c, false);
    }
  }
}

Test(sheet, what_was_assumed_is_a_remark_and_no_value) {
  lw_case c = CASE("wall height=1.05 m");
  lw_text plain = {0};
  lw_text told = {0};
  lw_sheet_write(&c, false, &plain);
  lw_sheet_write(&c, true, &told);
  cr_expect(eq(str, plain.data, "item,value,unit,note\nwall height,1050,mm,\n"));
  cr_expect(strstr(told.data, "\n,,,assumed: soil 1 friction angle = 24 deg\n") != NULL, "%s", told.data);
  lw_text_free(&plain);
  lw_text_free(&told);
}
