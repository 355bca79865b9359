/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdio.h>
#include <string.h>

#include "wall_rows.h"

/* Published gravity walls through whole sheets: weights, arms, moments, factors and pressures. */

/* Numbers that the collected examples hold, numbers held here beyond them (an arm beside its weight, a sum
 * in place of its parts), and those left out with a reason. */
enum { COLLECTED = 135, ADDED = 5, LEFT_OUT = 6 };

static void hold_row(void *context, const case_row *row, case_outcome outcome, double ours) {
  (void)context;
  case_check_marks(row);
  case_hold(row, outcome, ours);
}

Test(handbook, walls) {
  cr_assert_eq(wall_each("tests/handbook/walls.csv", hold_row, NULL), COLLECTED + ADDED - LEFT_OUT);
}

/* Each number left out says why, and is not held under the same name after all. */
Test(handbook, walls_left_out) {
  char line[CASE_LINE_MAX], cell[CASE_CELL_MAX];
  int count = 0;
  FILE *in = fopen("tests/handbook/walls_left_out.csv", "r");
  cr_assert_not_null(in);
  cr_assert_not_null(fgets(line, sizeof line, in));
  cr_assert_str_eq(line, "id,quantity,unit,published,reason\n");
  for (; fgets(line, sizeof line, in) != NULL; count++) {
    const char *at = line;
    for (int i = 0; i < 5; i++) {
      cr_assert_not_null(at, "too few cells in: %s", line);
      at = case_cell(at, cell);
    }
    cr_expect_gt(strlen(cell), (size_t)20, "no reason in: %s", line);
  }
  fclose(in);
  cr_assert_eq(count, LEFT_OUT);
}
