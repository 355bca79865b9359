/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <string.h>

#include "base/bound.h"
#include "base/tell.h"
#include "base/working.h"

/* Factors by hand: a foot is 0.3048 m, a pound 4.4482216152605 N or 0.45359237 kg, by definition. */
static const double FOOT_M = 0.3048, POUND_KN = 4.4482216152605e-3, POUND_KG = 0.45359237;

Test(tell, each_unit_has_its_own_in_feet_and_pounds) {
  const struct {
    const char *metric, *us;
    double times;
  } ROWS[] = {{"m", "ft", 1.0 / FOOT_M},
              {"mm", "in", 0.012 / FOOT_M},
              {"m2", "ft2", 1.0 / (FOOT_M * FOOT_M)},
              {"m3", "ft3", 1.0 / (FOOT_M * FOOT_M * FOOT_M)},
              {"m2/m", "ft2/ft", 1.0 / FOOT_M},
              {"m3/m", "ft3/ft", 1.0 / (FOOT_M * FOOT_M)},
              {"m4/m", "ft4/ft", 1.0 / (FOOT_M * FOOT_M * FOOT_M)},
              {"m2 a metre", "ft2 a foot", 1.0 / FOOT_M},
              {"1/m", "1/ft", FOOT_M},
              {"kN", "lb", 1.0 / POUND_KN},
              {"kN/m", "lb/ft", FOOT_M / POUND_KN},
              {"kPa", "psf", FOOT_M * FOOT_M / POUND_KN},
              {"kPa/m", "psf/ft", FOOT_M * FOOT_M * FOOT_M / POUND_KN},
              {"kN/m3", "pcf", FOOT_M * FOOT_M * FOOT_M / POUND_KN},
              {"kN m/m", "ft-lb/ft", 1.0 / POUND_KN},
              {"kNm/m", "ft-lb/ft", 1.0 / POUND_KN},
              {"kNm", "ft-lb", 1.0 / (POUND_KN * FOOT_M)},
              {"kg", "lb", 1.0 / POUND_KG},
              {"m from the front edge", "ft from the front edge", 1.0 / FOOT_M},
              {"kPa, evenly", "psf, evenly", FOOT_M * FOOT_M / POUND_KN},
              {"deg", "deg", 1.0},
              {"", "", 1.0}};
  for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
    double told = lw_tell_in(LW_UNITS_US, ROWS[i].metric, 2.385);
    cr_expect(fabs(told / (2.385 * ROWS[i].times) - 1.0) < 1e-12, "%s: %g", ROWS[i].metric, told);
    cr_expect_str_eq(lw_tell_unit(LW_UNITS_US, ROWS[i].metric).text, ROWS[i].us);
    cr_expect_float_eq(lw_tell_in(LW_UNITS_METRIC, ROWS[i].metric, 2.385), 2.385, 0.0);
    cr_expect_str_eq(lw_tell_unit(LW_UNITS_METRIC, ROWS[i].metric).text, ROWS[i].metric);
  }
  cr_expect_str_eq(lw_tell_amount(LW_UNITS_US, "m", 0.35, 3).text, "1.148 ft");
  cr_expect_str_eq(lw_tell_amount(LW_UNITS_METRIC, "m", 0.35, 3).text, "0.350 m");
}

/* Formulas stay as they are: so what is told must multiply as its units do. */
Test(tell, units_that_are_told_go_together) {
  static const char *const TIMES[][3] = {
      {"m", "m", "m2"},        {"m2", "kN/m3", "kN/m"}, {"m", "kN/m3", "kPa"}, {"kPa", "m", "kN/m"},
      {"kN/m", "m", "kN m/m"}, {"kN m/m", "m", "kNm"},  {"kN/m", "m", "kN"},   {"kPa/m", "m", "kPa"},
      {"m2/m", "m", "m3/m"},   {"m3/m", "m", "m4/m"},   {"1/m", "m", ""},      {"m2", "m", "m3"}};
  for (size_t i = 0; i < sizeof TIMES / sizeof *TIMES; i++) {
    double made = lw_tell_in(LW_UNITS_US, TIMES[i][0], 1.7) * lw_tell_in(LW_UNITS_US, TIMES[i][1], 2.3);
    double told = lw_tell_in(LW_UNITS_US, TIMES[i][2], 1.7 * 2.3);
    cr_expect(fabs(made / told - 1.0) < 1e-12, "%s x %s = %s", TIMES[i][0], TIMES[i][1], TIMES[i][2]);
  }
}

Test(tell, many_pounds_are_written_out) {
  cr_expect_str_eq(lw_tell_result(LW_UNITS_US, 123456.7).text, "123457");
  cr_expect_str_eq(lw_tell_result(LW_UNITS_US, 99999.4).text, "99999");
  cr_expect_str_eq(lw_tell_result(LW_UNITS_METRIC, 123456.7).text, "1.2346e+05");
  cr_expect_str_eq(lw_tell_result(LW_UNITS_US, 0.0123456).text, "0.012346");
}

typedef struct heard {
  double value;
  char unit[40], inserted[80];
} heard;

static void hear(void *context, const lw_step *step) {
  heard *h = context;
  h->value = step->value;
  lw_print(h->unit, sizeof h->unit, "%s", step->unit);
  lw_print(h->inserted, sizeof h->inserted, "%s", step->inserted);
}

Test(tell, a_recorder_hears_each_step_in_the_units_that_it_asks_for) {
  heard h;
  lw_working working = {.context = &h, .step = hear, .units = LW_UNITS_US};
  const lw_bound bound[] = {{"q", 4.7880258980336, "kPa"}, {"H", FOOT_M * 3.0, "m"}};
  lw_working_bound(&working, &(lw_step){"P", "q H", NULL, 4.7880258980336 * FOOT_M * 3.0, "kN/m", ""}, bound,
                   2);
  cr_expect_str_eq(h.inserted, "q = 100.00 psf, H = 3.0000 ft");
  cr_expect_str_eq(h.unit, "lb/ft");
  cr_expect_float_eq(h.value, 300.0, 1e-9);
}
