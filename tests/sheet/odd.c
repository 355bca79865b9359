/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <string.h>
#include <time.h>

/* Text as copied from a page, and text that means harm. */

Test(sheet, a_blank_at_which_no_line_may_end_is_a_blank) {
  static const char *const blanks[] = {"\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x87"};
  for (size_t i = 0; i < sizeof blanks / sizeof *blanks; i++) {
    char argument[64], sheet[128];
    lw_case c;
    lw_faults faults = {0};
    lw_print(argument, sizeof argument, "wall height=900%smm", blanks[i]);
    cr_expect(fabs(CASE(argument).wall.height.si - 0.9) < 1e-12, "blank %zu on the command line", i);
    lw_print(sheet, sizeof sheet, "item,value\nwall%sheight,900%smm\n", blanks[i], blanks[i]);
    cr_expect(eq(int, lw_sheet_read(sheet, strlen(sheet), &c, &faults), LW_OK), "blank %zu in a sheet", i);
    cr_expect(fabs(c.wall.height.si - 0.9) < 1e-12);
  }
}

Test(sheet, words_are_tamed_whether_typed_or_read) {
  static const char wild[] = "title=a\xEF\xBF\xBE\xEF\xBF\xBF\xC2\x9B\xE2\x80\xAE z\xE2\x81\xA6\xFF";
  static const char sheet[] = "item,value\ntitle,\"a\xEF\xBF\xBE\xC2\x9B\xE2\x80\xAE\tz\"\nwall height,1 m\n";
  lw_case c;
  lw_faults faults = {0};
  cr_expect(eq(str, CASE("wall height=1 m", wild).about.title.text, "a??? z?"));
  cr_assert(eq(int, lw_sheet_read(sheet, sizeof sheet - 1, &c, &faults), LW_OK));
  cr_expect(eq(str, c.about.title.text, "a?? z"));
}

Test(sheet, fifty_thousand_unknown_items_are_refused_in_a_second) {
  lw_text sheet = {0};
  lw_case c;
  lw_faults faults = {0};
  lw_text_add(&sheet, "item,value\n");
  for (int i = 0; i < 50000; i++) lw_text_addf(&sheet, "nonsense item %d,5 mm\n", i);
  clock_t from = clock();
  cr_expect(eq(int, lw_sheet_read(sheet.data, sheet.length, &c, &faults), LW_FAULTS));
  double seconds = (double)(clock() - from) / CLOCKS_PER_SEC;
  cr_expect(eq(int, faults.count, LW_FAULT_MAX));
  cr_expect(seconds < 1.0, "%.2f s", seconds);
  lw_text_free(&sheet);
}
