/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A day is written one way, and is one of the calendar: by hand, from the Gregorian rule of leap years. */
#include <string.h>

#include <lowwall/sheet.h>

#include <criterion/criterion.h>

static bool is_taken(const char *date) {
  static lw_tables tables;
  static lw_faults faults;
  static lw_case c;
  char item[64];
  if (tables.soil_count == 0) cr_assert_eq(lw_tables_read(NULL, &tables, NULL), LW_OK);
  memset(&c, 0, sizeof c);
  memset(&faults, 0, sizeof faults);
  cr_assert_eq(lw_sheet_override("wall height=600 mm", 1, &c, &faults), LW_OK);
  lw_print(item, sizeof item, "date=%s", date);
  cr_assert_eq(lw_sheet_override(item, 2, &c, &faults), LW_OK);
  lw_status status = lw_case_complete(&tables, &c, &faults);
  cr_expect_eq(status == LW_OK, faults.count == 0);
  if (status != LW_OK) {
    cr_expect_eq(faults.fault[0].slug, LW_FAULT_OUT_OF_RANGE);
    cr_expect_eq(faults.fault[0].column, 2);
  }
  return status == LW_OK;
}

Test(date, only_days_of_the_calendar_are_taken) {
  static const char *const DAYS[] = {"2027-03-01", "2028-02-29", "2000-02-29", "1999-12-31", "0001-01-01"};
  static const char *const NONE[] = {"2027-02-29", "1900-02-29", "2027-13-01", "2027-00-10",  "2027-04-31",
                                     "2027-01-00", "2027-1-1",   "01/03/2027", "2027-03-01x", "tomorrow",
                                     "2027/03/01", "20270301",   "2027-03- 1", "0000-01-01"};
  for (size_t i = 0; i < sizeof DAYS / sizeof *DAYS; i++) cr_expect(is_taken(DAYS[i]), "%s", DAYS[i]);
  for (size_t i = 0; i < sizeof NONE / sizeof *NONE; i++) cr_expect_not(is_taken(NONE[i]), "%s", NONE[i]);
}
