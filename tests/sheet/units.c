/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

#include <lowwall/sheet.h>

#include "sheet/schedule.h"

/* What the reader of a sheet measures in. */

static lw_units units_of(const char *sheet) {
  static lw_case c;
  static lw_faults faults;
  memset(&c, 0, sizeof c);
  faults.count = 0;
  cr_assert_eq(lw_sheet_read(sheet, strlen(sheet), &c, &faults), LW_OK, "%s", sheet);
  return lw_case_units(&c);
}

Test(units, they_are_what_most_measures_are_written_in) {
  cr_expect_eq(units_of("item,value\nwall height,2 ft\nblock depth,12 in\nboundary distance,3 m\n"),
               LW_UNITS_US);
  cr_expect_eq(units_of("item,value\nwall height,600 mm\nblock depth,12 in\nboundary distance,3 m\n"),
               LW_UNITS_METRIC);
  cr_expect_eq(units_of("item,value\nwall height,2 ft\nblock depth,300 mm\n"), LW_UNITS_METRIC,
               "as many in either");
  cr_expect_eq(units_of("item,value\nwall height,2 ft\nsetback,0 mm\nsoil 1 friction angle,30 deg\n"),
               LW_UNITS_US, "nothing, and an angle, are everybody's");
  cr_expect_eq(units_of("item,value,unit\nwall height,2,ft\nunits,metric,\n"), LW_UNITS_METRIC, "as told");
  cr_expect_eq(units_of("item,value\nmark,A\n"), LW_UNITS_METRIC);
}

typedef struct seen {
  lw_schedule *schedule;
  int rows;
} seen;

/* A row as it comes back from its packing counts its columns; the count of all its items is the same. */
static void hold_row(void *context, int row, const lw_case *c, const lw_faults *faults) {
  static const lw_units WANTED[] = {LW_UNITS_US, LW_UNITS_METRIC, LW_UNITS_US, LW_UNITS_METRIC};
  seen *s = context;
  static lw_case back;
  unsigned char *bytes = malloc(lw_schedule_row_size(s->schedule));
  cr_assert_eq(faults->count, 0, "row %d: %s", row, faults->fault[0].wanted);
  lw_schedule_pack(s->schedule, c, bytes);
  lw_schedule_unpack(s->schedule, bytes, &back);
  cr_expect_eq(lw_case_units(c), WANTED[s->rows], "row %d", row);
  cr_expect_eq(lw_case_units(&back), WANTED[s->rows], "row %d", row);
  s->rows++;
  free(bytes);
}

Test(units, a_row_of_a_schedule_has_those_of_its_columns) {
  static const char SHEET[] = "mark,wall height,block depth [in],boundary distance,units\n"
                              "A,2 ft,12,3 m,\n"
                              "B,600 mm,12,3 m,\n"
                              "C,600 mm,12,3 m,us\n"
                              "D,2 ft,12,10 ft,metric\n";
  static lw_faults faults;
  seen s = {0};
  faults.count = 0;
  s.schedule = lw_schedule_open(hold_row, &s, &faults);
  cr_assert_eq(lw_schedule_feed(s.schedule, SHEET, sizeof SHEET - 1), LW_OK);
  cr_assert_eq(lw_schedule_finish(s.schedule), LW_OK);
  lw_schedule_close(s.schedule);
  cr_expect_eq(s.rows, 4);
}
