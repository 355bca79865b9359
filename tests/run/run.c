/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../verdict/help.h"

Test(run, refuses_what_a_sheet_may_not_hold_settled_or_not) {
  lw_result *result = calloc(1, sizeof *result);
  lw_error error = {0};
  lw_case c;
  verdict_case("", &c);
  c.ground.soil[0].friction = (lw_quantity){.si = 30.0, .origin = LW_GIVEN, .kind = LW_KIND_ANGLE};
  cr_expect_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, result, &error), LW_FAULTS,
               "degrees where radians are due");
  cr_expect_not_null(strstr(error.text, "out-of-range"), "%s", error.text);
  verdict_case("", &c);
  cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, result, &error), LW_OK);
  c = result->given;
  c.ground.soil[0].friction.si = NAN;
  cr_expect_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, result, &error), LW_FAULTS,
               "no number in a settled case");
  free(result);
}

Test(run, settles_a_case_and_leaves_it_as_it_was) {
  lw_case c;
  verdict_case("", &c);
  lw_result *result = calloc(1, sizeof *result);
  cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  cr_expect_not(c.complete);
  cr_expect(result->given.complete);
  cr_expect_eq(result->tables, verdict_tables());
  cr_expect_gt(result->situations.count, 0);
  lw_result *again = calloc(1, sizeof *again);
  cr_assert_eq(lw_run(&result->given, verdict_tables(), LW_DETAIL_EVERYTHING, again, NULL), LW_OK);
  cr_expect_eq(again->verdict.exit_status, result->verdict.exit_status);
  cr_expect_str_eq(again->verdict.headline, result->verdict.headline);
  free(again);
  free(result);
}

Test(run, in_place) {
  lw_result *result = verdict_run("");
  int exit_status = result->verdict.exit_status;
  cr_assert_eq(lw_run(&result->given, verdict_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  cr_expect_eq(result->verdict.exit_status, exit_status);
  free(result);
}

Test(run, of_a_contradiction_is_a_fault_and_changes_nothing) {
  lw_case c;
  lw_error error = {0};
  lw_result *result = calloc(1, sizeof *result);
  verdict_case("wall height=333 mm", &c);
  result->asking_count = 77;
  cr_expect_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, result, &error), LW_FAULTS);
  cr_expect_eq(error.status, LW_FAULTS);
  cr_expect_not_null(strstr(error.text, "contradiction"), "%s", error.text);
  cr_expect_eq(result->asking_count, 77);
  free(result);
}

Test(run, a_wall_of_unknown_depth_gets_the_rest_of_its_verdict) {
  lw_result *result = verdict_run("block depth=unknown;course count=12");
  cr_expect_eq(result->verdict.stands, LW_CANNOT_SHOW);
  cr_expect_eq(result->verdict.who, LW_WHO_ENGINEER);
  cr_expect_float_eq(result->verdict.height_m[LW_HEIGHT_TOTAL], 1.2, 1e-9);
  free(result);
}
