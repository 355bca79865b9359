/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <string.h>

#include <lowwall/sheet.h>

#include "base/amount.h"
#include "report/draw/sketch.h"
#include "sheet/items.h"
#include "../checks/random_wall.h"

/* What is typed into an item, in metres. */
static double read_back(const char *item, const char *said) {
  static lw_case c;
  static lw_faults faults;
  char typed[96];
  int number;
  memset(&c, 0, sizeof c);
  faults.count = 0;
  lw_print(typed, sizeof typed, "%s=%s", item, said);
  cr_assert_eq(lw_sheet_override(typed, 1, &c, &faults), LW_OK, "%s", typed);
  return lw_item_quantity(lw_item_find(item, strlen(item), &number), 0, &c)->si;
}

/* Lengths of whole eighths of an inch, some below nothing, as sentences, tables and drawings tell them: each
 * is typed back as the same length, to the last bits of a double. */
Test(tape, every_length_that_is_printed_is_read_back) {
  static lw_result in_feet;
  in_feet.units = LW_UNITS_US;
  const lw_sketch sketch = {.result = &in_feet};
  dice d = {.state = 12};
  for (int k = 0; k < 1500; k++) {
    int eighths = k < 400 ? k - 200 : (int)dice_between(&d, -2400.0, 3800.0);
    double length_m = 0.0254 / 8.0 * eighths;
    const lw_amount said[] = {lw_metres(LW_UNITS_US, length_m, 2), lw_millimetres(LW_UNITS_US, length_m),
                              lw_value_of(LW_UNITS_US, LW_KIND_LENGTH, length_m),
                              lw_exactly(LW_UNITS_US, LW_KIND_LENGTH, length_m, "mm"),
                              lw_sketch_dimension(&sketch, length_m)};
    for (size_t i = 0; i < sizeof said / sizeof *said; i++)
      cr_expect(fabs(read_back("level difference", said[i].text) - length_m) < 1e-12, "%d/8 in: %s", eighths,
                said[i].text);
  }
}

/* As a tape is read out: feet are never followed by a part alone. By hand: an inch is 25.4 mm. */
Test(tape, a_part_of_an_inch_behind_feet_has_its_nothing) {
  static const struct {
    int eighths;
    const char *words, *drawn;
  } ROWS[] = {{0, "0 in", "0\""},           {6, "3/4 in", "3/4\""},
              {8, "1 in", "1\""},           {95, "11-7/8 in", "11 7/8\""},
              {96, "1 ft", "1'-0\""},       {102, "1 ft 0-3/4 in", "1'-0 3/4\""},
              {104, "1 ft 1 in", "1'-1\""}, {-102, "-1 ft 0-3/4 in", "-1'-0 3/4\""},
              {-6, "-3/4 in", "-3/4\""},    {378, "3 ft 11-1/4 in", "3'-11 1/4\""}};
  static lw_result in_feet;
  in_feet.units = LW_UNITS_US;
  const lw_sketch sketch = {.result = &in_feet};
  for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
    double length_m = 0.0254 / 8.0 * ROWS[i].eighths;
    cr_expect_str_eq(lw_metres(LW_UNITS_US, length_m, 2).text, ROWS[i].words);
    cr_expect_str_eq(lw_sketch_dimension(&sketch, length_m).text, ROWS[i].drawn);
  }
}
