/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <string.h>

#include <lowwall/sheet.h>

#include "base/amount.h"
#include "../checks/random_wall.h"

/* Values by hand: an inch is 25.4 mm, a pound 4.4482216 N, by definition. */
Test(amount, lengths_are_said_in_feet_and_inches_to_an_eighth) {
  static const struct {
    double length_m;
    int decimals;
    const char *said;
  } ROWS[] = {{0.0, 2, "0 in"},
              {0.0127, 2, "1/2 in"},
              {0.2032, 3, "8 in"},
              {0.3048, 2, "1 ft"},
              {0.3046, 2, "1 ft"},
              {0.8001, 2, "2 ft 7-1/2 in"},
              {0.3143, 2, "1 ft 0-3/8 in"},
              {0.0095, 2, "3/8 in"},
              {-0.0095, 2, "-3/8 in"},
              {-0.0762, 2, "-3 in"},
              {-0.001, 2, "0 in"},
              {1.0, 1, "3 ft 3 in"},
              {30.0, 0, "98 ft"},
              {0.6096, 2, "2 ft"},
              {NAN, 2, "n/a ft"},
              {0.79375, 2, "2 ft 7-1/4 in"}};
  for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++)
    cr_expect_str_eq(lw_metres(LW_UNITS_US, ROWS[i].length_m, ROWS[i].decimals).text, ROWS[i].said, "%g",
                     ROWS[i].length_m);
  cr_expect_str_eq(lw_metres(LW_UNITS_METRIC, 0.8, 2).text, "0.80 m");
  cr_expect_str_eq(lw_millimetres(LW_UNITS_METRIC, 0.0126).text, "13 mm");
  cr_expect_str_eq(lw_millimetres(LW_UNITS_US, 0.0126).text, "1/2 in");
}

Test(amount, loads_and_weights_are_said_in_pounds) {
  static const struct {
    lw_kind kind;
    double si;
    const char *metric, *us;
  } ROWS[] = {{LW_KIND_PRESSURE, 96.0, "96.00 kPa", "2005 psf"},
              {LW_KIND_LINE_LOAD, 2.01, "2.01 kN/m", "138 lb/ft"},
              {LW_KIND_LINE_LOAD, 0.05, "0.05 kN/m", "3.4 lb/ft"},
              {LW_KIND_PRESSURE, 0.0, "0.00 kPa", "0 psf"},
              {LW_KIND_LINE_LOAD, 200.0, "200.00 kN/m", "13.7 kip/ft"},
              {LW_KIND_UNIT_WEIGHT, 19.5, "19.50 kN/m3", "124 pcf"},
              {LW_KIND_FORCE, 0.8, "0.80 kN", "180 lb"},
              {LW_KIND_MASS, 40.0, "40.00 kg", "88 lb"},
              {LW_KIND_MOMENT, 1.0, "1.00 kNm/m", "225 ft-lb/ft"},
              {LW_KIND_POST_MOMENT, 1.0, "1.00 kNm", "738 ft-lb"},
              {LW_KIND_VOLUME, 1.0, "1.00 m3", "1.31 yd3"},
              {LW_KIND_AREA, 1.0, "1.00 m2", "10.76 ft2"}};
  for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
    cr_expect_str_eq(lw_amount_of(LW_UNITS_METRIC, ROWS[i].kind, ROWS[i].si, 2).text, ROWS[i].metric);
    cr_expect_str_eq(lw_amount_of(LW_UNITS_US, ROWS[i].kind, ROWS[i].si, 2).text, ROWS[i].us);
  }
}

/* A cubic foot is 0.028317 m3 and 27 of them a yard; water weighs 62.4 pcf, and light things are told so. */
Test(amount, values_of_a_sheet_are_said_as_they_are_known) {
  static const struct {
    lw_kind kind;
    double si;
    const char *us;
  } ROWS[] = {{LW_KIND_VOLUME, 0.028316846592, "1.0 ft3"},
              {LW_KIND_VOLUME, 0.3, "10.6 ft3"},
              {LW_KIND_VOLUME, 0.5, "0.65 yd3"},
              {LW_KIND_UNIT_WEIGHT, 9.81, "62.4 pcf"},
              {LW_KIND_UNIT_WEIGHT, 13.0, "82.8 pcf"},
              {LW_KIND_UNIT_WEIGHT, 19.5, "124 pcf"},
              {LW_KIND_LENGTH, 0.3048, "1 ft"}};
  for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++)
    cr_expect_str_eq(lw_value_of(LW_UNITS_US, ROWS[i].kind, ROWS[i].si).text, ROWS[i].us);
}

/* An inch is 25.4 mm: what was measured in eighths of it is told so, what was not as exactly as it is. */
Test(amount, a_length_is_told_exactly) {
  static const double EIGHTH_M = 0.0254 / 8.0;
  char told[32];
  for (int eighths = 1; eighths < 200; eighths += 7) {
    double length_m = eighths * EIGHTH_M, between_m = length_m + 0.3 * EIGHTH_M;
    cr_expect_str_eq(lw_exactly(LW_UNITS_US, LW_KIND_LENGTH, length_m, "mm").text,
                     lw_metres(LW_UNITS_US, length_m, 3).text);
    lw_print(told, sizeof told, "%.6g in", between_m / 0.0254);
    cr_expect_str_eq(lw_exactly(LW_UNITS_US, LW_KIND_LENGTH, between_m, "mm").text, told);
  }
}

/* What is said can be typed: the sheet reads it back, to half of what it is rounded to. */
Test(amount, what_is_said_reads_back) {
  static const struct {
    const char *item;
    lw_kind kind;
    double low, high, half;
  } ROWS[] = {{"wall height", LW_KIND_LENGTH, 0.05, 5.0, 0.0016},
              {"block unit weight", LW_KIND_UNIT_WEIGHT, 12.0, 27.0, 0.08},
              {"block mass", LW_KIND_MASS, 5.0, 80.0, 0.23},
              {"allowable bearing", LW_KIND_PRESSURE, 20.0, 400.0, 0.03}};
  dice d = {.state = 7};
  for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
    for (int k = 0; k < 200; k++) {
      double si = dice_between(&d, ROWS[i].low, ROWS[i].high);
      char typed[96];
      int number;
      static lw_case c;
      static lw_faults faults;
      memset(&c, 0, sizeof c);
      faults.count = 0;
      lw_print(typed, sizeof typed, "%s=%s", ROWS[i].item,
               lw_amount_of(LW_UNITS_US, ROWS[i].kind, si, 2).text);
      cr_assert(lw_sheet_override(typed, 1, &c, &faults) == LW_OK, "%s", typed);
      const lw_item *item = lw_item_find(ROWS[i].item, strlen(ROWS[i].item), &number);
      const lw_quantity *q = lw_item_quantity(item, 0, &c);
      cr_assert(fabs(q->si - si) <= ROWS[i].half, "%s: %g", typed, si);
      cr_assert(q->in == LW_UNITS_US && lw_case_units(&c) == LW_UNITS_US, "%s", typed);
    }
  }
}

/* Whatever two lengths are compared, a reader sees that they differ; equal ones read the same. */
Test(amounts, lengths_that_are_compared_read_apart) {
  for (int units = LW_UNITS_METRIC; units <= LW_UNITS_US; units++) {
    for (double gap_m = 1e-4; gap_m < 0.1; gap_m *= 1.5) {
      for (double m = 0.0; m < 5.0; m += 0.0381) {
        lw_apart apart = lw_metres_apart((lw_units)units, m, m + 2.0 * gap_m, 2);
        cr_expect_str_neq(apart.one.text, apart.other.text, "%g and %g more", m, 2.0 * gap_m);
      }
    }
    lw_apart sums = lw_metres_apart((lw_units)units, 0.45 + 0.15, 0.6 - 1e-16, 2);
    lw_apart in_mm = lw_millimetres_apart((lw_units)units, 0.45 + 0.15, 0.6 - 1e-16);
    cr_expect_str_eq(sums.one.text, lw_metres((lw_units)units, 0.6, 2).text, "rounding is no difference");
    cr_expect_str_eq(in_mm.one.text, lw_millimetres((lw_units)units, 0.6).text);
    lw_apart same = lw_metres_apart((lw_units)units, 0.6, 0.6, 2);
    cr_expect_str_eq(same.one.text, same.other.text);
    cr_expect_str_eq(same.one.text, lw_metres((lw_units)units, 0.6, 2).text);
  }
}
