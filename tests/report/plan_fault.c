/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <lowwall/report.h>
#include <string.h>

/* Whatever keeps a plan from being one points at the cell that has it and says what would be right. */
Test(report, every_reason_against_a_plan_has_its_words) {
  static lw_case_order items;
  static lw_faults faults;
  for (int i = 0; i < LW_RUN_MAX; i++)
    items.run[i].length = items.turn[i] = (lw_quantity){.origin = LW_GIVEN, .row = 10 + i, .column = 2};
  for (int i = 0; i < LW_STEP_MAX; i++)
    items.step[i].distance = items.step[i].courses =
        (lw_quantity){.origin = LW_GIVEN, .row = 10 + i, .column = 2};
  items.ground_fall = items.step[0].distance;
  for (int kind = 0; kind <= LW_PLAN_ROWS; kind++) {
    for (int falls = 0; falls < 2; falls++) {
      const lw_plan_fault fault = {(lw_plan_fault_kind)kind, 1, 0, 1.0, 0.4, 0.2, falls != 0,
                                   LW_UNITS_METRIC};
      faults.count = 0;
      lw_report_plan_fault(&items, &fault, &faults);
      cr_assert_eq(faults.count, 1, "%d", kind);
      const lw_fault *told = &faults.fault[0];
      bool large = kind == LW_PLAN_LONG || kind == LW_PLAN_ROWS;
      cr_expect(strlen(told->wanted) > 20 && strlen(told->item) > 8, "%d: %s", kind, told->wanted);
      cr_expect(told->slug == (large ? LW_FAULT_TOO_MANY : LW_FAULT_CONTRADICTION), "%d", kind);
      cr_expect(kind == LW_PLAN_ROWS ? told->row == 0 : told->row >= 10, "%d: row %d", kind, told->row);
    }
  }
}
