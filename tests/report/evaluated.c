/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "evaluate.h"

#include <criterion/criterion.h>

#include <math.h>
#include <string.h>

/* The evaluator that reads the working back, on lines worked out by hand. */

static evaluated of(const char *text, const evaluate_names *names) {
  evaluated made = {NAN, NAN};
  cr_expect(evaluate(text, strlen(text), names, NULL, &made), "%s", text);
  return made;
}

static void comes_to(const char *text, double value) {
  cr_expect(fabs(of(text, NULL).value - value) < 1e-9, "%s comes to %.12g, not %.12g", text,
            of(text, NULL).value, value);
}

Test(evaluate, sums_products_and_powers) {
  comes_to("2 + 3 x 4 - 6/2", 11.0);
  comes_to("12/2/3", 2.0);
  comes_to("6/8 x 4 x 3^2/2^2", 6.75);
  comes_to("2 (3 + 1) [4 - 2]", 16.0);
  comes_to("-2^2 + 3 x -1", -7.0);
  comes_to("|2 - 5| + 1", 4.0);
  comes_to("max(1, 3, 2) min(4, 5)", 12.0);
  comes_to("sqrt(2 x 8/(4)) sqrt 9", 6.0);
  comes_to("ln(exp(2)) + pi - pi", 2.0);
}

Test(evaluate, angles_are_degrees) {
  comes_to("2 sin 30.00 deg cos 60.00", 0.5);
  comes_to("4 sin^2 30 + cos^2(60)", 1.25);
  comes_to("tan(pi/4)", 1.0);
  comes_to("atan(1.0) + 3 cot 45", 48.0);
  comes_to("(1 + sin 30)/(1 - sin 30)", 3.0);
  comes_to("tan^2(45 + 30.00/2)", 3.0);
}

Test(evaluate, units_after_numbers_are_passed_over) {
  comes_to("0.7 kN m/m / 3.5 kN/m + 2 m", 2.2);
  comes_to("19.5 kN/m3 x 2.0 m", 39.0);
  comes_to("90 kg x 2", 180.0);
}

Test(evaluate, names_stand_for_what_is_put_in) {
  const evaluate_names names = {4,
                                {{"phi", 30.0, 0.005}, {"B'", 2.0, 0.0}, {"x", 3.0, 0.0}, {"A", 15.0, 0.0}}};
  cr_expect_float_eq(of("2 sin phi x^2 / B'", &names).value, 4.5, 1e-12);
  cr_expect_float_eq(of("6 B'/4 sin 2A", &names).value, 1.5, 1e-12);
  /* A name moves wherever it stands: 0.005 deg of d(tan^2)/d phi = 2 tan phi / cos^2 phi. */
  double slope = 2.0 * tan(3.14159265358979 / 6.0) / 0.75 * 0.005 * 3.14159265358979 / 180.0;
  cr_expect_float_eq(of("tan phi tan phi", &names).half, slope, 1e-7);
}

Test(evaluate, each_printed_number_allows_half_its_last_digit) {
  cr_expect_float_eq(of("2.00 x 3.0", NULL).half, 3.0 * 0.005 + 2.0 * 0.05, 1e-12);
  cr_expect_float_eq(of("12 x 3", NULL).half, 0.0, 1e-12);
  cr_expect_float_eq(evaluate_half_digit("1.5e-3"), 0.5e-4, 1e-18);
  evaluated made;
  cr_assert(evaluate("0.5 x 3.0", 9, NULL, "0.5 g", &made));
  cr_expect_float_eq(made.half, 0.5 * 0.05, 1e-12, "a half of the formula is a half");
}

Test(evaluate, words_are_not_worked_out) {
  static const char *const WORDS[] = {
      "area of the diagram", "3 x (2", "2 +", "P cos a", "1.0, above the foot", "4 of 5",
      "sqrt -1.0",           "1/0",    "",    "2 x phi"};
  for (size_t i = 0; i < sizeof WORDS / sizeof *WORDS; i++) {
    evaluated made = {7.0, 7.0};
    cr_expect(!evaluate(WORDS[i], strlen(WORDS[i]), NULL, NULL, &made), "%s", WORDS[i]);
    cr_expect_eq(made.value, 7.0);
  }
}
