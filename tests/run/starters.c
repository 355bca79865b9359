/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/result.h>

#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"

/* The starter sheets are walls that a person may well build, and say that they are invented. */

static const char *const kinds[] = {"bed", "ground", "section"};
enum { KINDS = sizeof kinds / sizeof *kinds };

static lw_case started(const char *kind, const char *item) {
  lw_text sheet = {0};
  lw_faults faults = {.count = 0};
  lw_case c = {0};
  cr_assert_eq(lw_sheet_start(kind, &sheet), LW_OK);
  cr_expect_not_null(strstr(sheet.data, "invented"), "%s", kind);
  lw_sheet_read(sheet.data, sheet.length, &c, &faults);
  if (item) lw_sheet_override(item, 1, &c, &faults);
  cr_assert_eq(lw_case_complete(sheet_test_tables(), &c, &faults), LW_OK, "%s, %s", kind, item ? item : "");
  lw_text_free(&sheet);
  return c;
}

Test(starters, hold_and_go_to_no_engineer) {
  static const char *const cap[] = {NULL, "people on cap=no", "people on cap=yes"};
  lw_result *result = calloc(1, sizeof *result);
  cr_assert_not_null(result);
  for (int k = 0; k < KINDS; k++)
    for (int i = 0; i < 3; i++) {
      lw_case c = started(kinds[k], cap[i]);
      bool told = i == 0 || strcmp(kinds[k], "section") != 0;
      cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
      if (told) cr_expect_eq(result->verdict.stands, LW_HOLDS, "%s, %s", kinds[k], cap[i] ? cap[i] : "");
      cr_expect_neq(result->verdict.who, LW_WHO_ENGINEER, "%s", kinds[k]);
      if (k == 0) cr_expect_eq(result->verdict.who, LW_WHO_BUILDER);
    }
  free(result);
}

/* What a starter gives for its pad is what the table has for it: left out, nothing changes. */
Test(starters, have_the_friction_of_the_table) {
  for (int k = 0; k < 2; k++) {
    lw_case given = started(kinds[k], NULL), taken = started(kinds[k], "base friction=unknown");
    cr_expect_eq(given.ground.base_friction.origin, LW_GIVEN);
    cr_expect(fabs(given.ground.base_friction.si - taken.ground.base_friction.si) < 1e-12,
              "%s: %g, the table %g", kinds[k], given.ground.base_friction.si, taken.ground.base_friction.si);
  }
}
