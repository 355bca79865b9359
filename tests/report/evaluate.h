/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_EVALUATE_H
#define TESTS_REPORT_EVALUATE_H

#include <stdbool.h>
#include <stddef.h>

/* What a student with a calculator makes of a line: numbers as they are printed, + - x / ^, brackets, bars,
 * sin, cos, tan, cot, atan, asin, sqrt, ln, exp, max, min; a factor may stand beside another without a sign.
 * Angles are in degrees; pi within sin, cos, tan and cot is 180 of them. A unit after a number is passed
 * over. */

/* A name and what is put in for it; half is how far rounding may have moved it. */
typedef struct evaluate_name {
  char name[12];
  double value, half;
} evaluate_name;

enum { EVALUATE_NAMES = 24 };
typedef struct evaluate_names {
  int count;
  evaluate_name of[EVALUATE_NAMES];
} evaluate_names;

/* A value, and how far the rounding of the numbers in the text may have moved it: the sum of what each makes
 * alone. */
typedef struct evaluated {
  double value, half;
} evaluated;

/* Half of the last digit of the number that a text begins with; 0 for a whole number of up to
 * four digits, which is exact. */
double evaluate_half_digit(const char *number);

/* The whole of a text of that length. A number that stands in formula as well is of the formula and exact.
 * names and formula may be NULL. gives false where the text is not such an expression. */
bool evaluate(const char *text, size_t length, const evaluate_names *names, const char *formula,
              evaluated *out);

/* Length of the unit that a text begins with; 0: none. */
size_t evaluate_unit(const char *text);

#endif
