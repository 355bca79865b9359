/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <lowwall/base.h>

static double read_or_nan(const char *text) {
  double value = NAN;
  return lw_number_read(text, strlen(text), &value) ? value : NAN;
}

Test(base, numbers_read_as_the_standard_rounds_them) {
  static const char *const texts[] = {
      "0",
      "-0.5",
      "2.385",
      "900",
      "1e3",
      "+4.25E-2",
      ".5",
      "7.",
      "0.1",
      "0.3",
      "123456789012345",
      "1234567890123456789",
      "9007199254740993",
      "1e-320",
      "2.2250738585072011e-308",
      "1.7976931348623157e308",
      "0.000000000000000000000000001",
      "3.14159265358979323846264338327950288419716939937510582097494459",
      "100000000000000000000000",
      "8.98846567431158e307",
      "0.00000000000000000000000000000000000000000001234567890123456789e60",
  };
  for (size_t i = 0; i < sizeof texts / sizeof *texts; i++) {
    double read = read_or_nan(texts[i]);
    double standard = strtod(texts[i], NULL);
    cr_expect(memcmp(&read, &standard, sizeof read) == 0, "%s: %.17g, not %.17g", texts[i], read, standard);
  }
}

Test(base, numbers_agree_with_strtod_on_many_random_texts) {
  unsigned state = 2385;
  for (int i = 0; i < 20000; i++) {
    state = state * 1664525u + 1013904223u;
    char text[64];
    unsigned fraction = state >> 7;
    snprintf(text, sizeof text, "%u.%0*u", state % 1000, 1 + (int)(state % 7), fraction % 10000000);
    double read = read_or_nan(text);
    double standard = strtod(text, NULL);
    cr_assert(memcmp(&read, &standard, sizeof read) == 0, "%s", text);
  }
}

Test(base, what_is_not_one_whole_number_is_refused) {
  static const char *const texts[] = {"",    "-",   ".",  "1.2.3", "1,5", "0x10",  "nan", "inf", "1e",
                                      "1e+", "1 2", " 1", "1 ",    "--1", "1e999", "mm",  "e5",  "1d3"};
  for (size_t i = 0; i < sizeof texts / sizeof *texts; i++) {
    double value = 42.5;
    cr_expect(not(lw_number_read(texts[i], strlen(texts[i]), &value)), "'%s' was taken", texts[i]);
    cr_expect(value >= 42.5 && value <= 42.5, "'%s' changed the output", texts[i]);
  }
}

Test(base, a_number_of_thousands_of_digits_is_read) {
  char text[5001];
  memset(text, '3', sizeof text - 1);
  text[0] = '0';
  text[1] = '.';
  double value = 0.0;
  cr_assert(lw_number_read(text, sizeof text - 1, &value));
  cr_expect(fabs(value - 1.0 / 3.0) < 1e-16);
}

Test(base, printed_numbers_match_printf) {
  static const double values[] = {0.0,        0.5,      1.5,  2.5,   0.125,    2.385,     1.005, 99.995,
                                  123456.789, -3.14159, 1e15, 1e300, 0.000001, 7.0 / 3.0, 0.045, 1e-12};
  for (size_t i = 0; i < sizeof values / sizeof *values; i++) {
    for (int decimals = 0; decimals <= 9; decimals++) {
      char ours[400];
      char standard[400];
      size_t length = lw_number_print(ours, sizeof ours, values[i], decimals);
      snprintf(standard, sizeof standard, "%.*f", decimals, values[i]);
      cr_expect(eq(str, ours, standard), "%g to %d", values[i], decimals);
      cr_expect(eq(sz, length, strlen(ours)));
    }
  }
}

Test(base, a_printed_zero_has_no_sign_and_no_number_is_not_nan) {
  char out[32];
  lw_number_print(out, sizeof out, -0.001, 2);
  cr_expect(eq(str, out, "0.00"));
  lw_number_print(out, sizeof out, -1e-13, 9);
  cr_expect(eq(str, out, "0.000000000"));
  lw_number_print(out, sizeof out, NAN, 2);
  cr_expect(eq(str, out, "n/a"));
}

Test(base, a_short_buffer_is_not_overrun) {
  char out[8] = "XXXXXXX";
  size_t length = lw_number_print(out, 4, 123.456, 2);
  cr_expect(eq(sz, length, 3));
  cr_expect(eq(str, out, "123"));
  cr_expect(out[4] == 'X');
}
