/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <string.h>

#include <lowwall/base.h>

#include "base/least.h"
#include "base/solve.h"

static double cubic(double x, const void *context) {
  return x * x * x - *(const double *)context;
}

static double never_finite(double x, const void *context) {
  (void)context;
  return x * NAN;
}

static double hole_in_the_middle(double x, const void *context) {
  (void)context;
  return x > 0.4 && x < 0.6 ? NAN : x - 0.5;
}

static double bowl(double x, const void *context) {
  double from = x - *(const double *)context;
  return 2.385 + from * from;
}

static double bowl_with_cliffs(double x, const void *context) {
  return x < 0.9 || x > 1.3 ? INFINITY : bowl(x, context);
}

static double level(double x, const void *context) {
  (void)context;
  return x * 0.0 + 3.7;
}

Test(base, a_root_is_found) {
  double eight = 8.0;
  double root = 0.0;
  cr_expect(lw_solve_root(cubic, &eight, 0.1, 7.3, 1e-12, &root) == LW_OK);
  cr_expect(fabs(root - 2.0) < 1e-11);
  cr_expect(lw_solve_root(cubic, &eight, 2.0, 7.3, 1e-12, &root) == LW_OK);
  cr_expect(fabs(root - 2.0) < 1e-12);
}

Test(base, no_change_of_sign_is_no_root_and_leaves_the_output) {
  double eight = 8.0;
  double root = 77.5;
  cr_expect(lw_solve_root(cubic, &eight, 2.5, 7.3, 1e-12, &root) == LW_NO_SOLUTION);
  cr_expect(lw_solve_root(cubic, &eight, 7.3, 0.1, 1e-12, &root) == LW_NO_SOLUTION);
  cr_expect(lw_solve_root(never_finite, NULL, 0.1, 7.3, 1e-12, &root) == LW_NO_SOLUTION);
  cr_expect(lw_solve_root(hole_in_the_middle, NULL, 0.0, 1.0, 1e-12, &root) == LW_NO_SOLUTION);
  cr_expect(lw_solve_root(cubic, &eight, 0.1, INFINITY, 1e-12, &root) == LW_NO_SOLUTION);
  cr_expect(fabs(root - 77.5) < 1e-12);
}

Test(base, a_minimum_is_found_inside_at_an_end_and_between_cliffs) {
  double at = 1.0937;
  lw_minimum found = {0.0, 0.0};
  cr_expect(lw_solve_minimum(bowl, &at, 0.0, 3.0, 37, &found) == LW_OK);
  cr_expect(fabs(found.x - at) < 1e-6 && fabs(found.value - 2.385) < 1e-12);
  cr_expect(lw_solve_minimum(bowl_with_cliffs, &at, 0.0, 3.0, 37, &found) == LW_OK);
  cr_expect(fabs(found.x - at) < 1e-6 && fabs(found.value - 2.385) < 1e-12);
  at = -0.25;
  cr_expect(lw_solve_minimum(bowl, &at, 0.0, 3.0, 37, &found) == LW_OK);
  cr_expect(fabs(found.x) < 1e-12 && fabs(found.value - (2.385 + 0.0625)) < 1e-12);
  at = 4.25;
  cr_expect(lw_solve_minimum(bowl, &at, 0.0, 3.0, 37, &found) == LW_OK);
  cr_expect(fabs(found.x - 3.0) < 1e-12);
}

Test(base, a_minimum_close_to_an_end_is_found) {
  double at = 0.0031;
  lw_minimum found = {0.0, 0.0};
  cr_expect(lw_solve_minimum(bowl, &at, 0.0, 3.0, 20, &found) == LW_OK);
  cr_expect(fabs(found.x - at) < 1e-6);
}

Test(base, a_level_function_has_some_minimum_and_a_broken_one_none) {
  lw_minimum found = {77.5, 0.0};
  cr_expect(lw_solve_minimum(never_finite, NULL, 0.0, 3.0, 37, &found) == LW_NO_SOLUTION);
  cr_expect(fabs(found.x - 77.5) < 1e-12);
  cr_expect(lw_solve_minimum(level, NULL, 0.0, 3.0, 37, &found) == LW_OK);
  cr_expect(fabs(found.value - 3.7) < 1e-12);
  cr_expect(lw_solve_minimum(level, NULL, 3.0, 0.0, 37, &found) == LW_NO_SOLUTION);
}

/* Whether a value that is only compared is given all the same. */
static bool told_whole = true;

/* A narrow valley that runs across the axes, with a bound across it and no answer beyond a line. */
static double valley(const double *x, double wanted, const void *context) {
  (void)context;
  double along = x[0] + x[1] - 1.3, across = x[0] - x[1] - 0.21, up = x[2] - 0.37;
  double value = x[0] > 0.9 ? INFINITY : 2.5 + along * along + 40.0 * across * across + up * up;
  return told_whole || value <= wanted ? value : INFINITY;
}

Test(base, a_lower_place_is_found_across_a_valley) {
  lw_least at = {
      .count = 3, .high = {1.0, 1.0, 1.0}, .step = 0.1, .line_steps = 7, .worth = 1e-9, .x = {0.1, 0.9, 1.0}};
  cr_assert_eq(lw_solve_least(valley, NULL, 40, &at), LW_OK);
  cr_expect_lt(at.value, 2.5 + 1e-5);
  cr_expect(fabs(at.x[0] - 0.755) < 0.01 && fabs(at.x[1] - 0.545) < 0.01 && fabs(at.x[2] - 0.37) < 0.01);
  lw_least less = {
      .count = 3, .high = {1.0, 1.0, 1.0}, .step = 0.1, .line_steps = 7, .worth = 1e-9, .x = {0.1, 0.9, 1.0}};
  told_whole = false;
  cr_assert_eq(lw_solve_least(valley, NULL, 40, &less), LW_OK);
  cr_expect(memcmp(less.x, at.x, sizeof at.x) == 0 && memcmp(&less.value, &at.value, sizeof at.value) == 0,
            "%.17g, where all is told %.17g", less.value, at.value);
  lw_least nowhere = {
      .count = 3, .high = {1.0, 1.0, 1.0}, .step = 0.1, .line_steps = 7, .x = {0.95, 0.5, 0.5}};
  cr_expect_eq(lw_solve_least(valley, NULL, 5, &nowhere), LW_NO_SOLUTION);
  cr_expect(nowhere.x[0] > 0.94);
}
