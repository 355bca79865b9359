/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"

lw_result *checks_test_run(const char *const *arguments) {
  lw_result *result = calloc(1, sizeof *result);
  lw_error error = {0};
  lw_case c = sheet_test_case(arguments);
  cr_assert_not_null(result);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, &error), LW_OK, "%s",
               error.text);
  return result;
}

const lw_situation *checks_test_situation(const lw_result *result, lw_situation_name name) {
  for (int i = 0; i < result->situations.count; i++)
    if (result->situations.situation[i].name == name) return &result->situations.situation[i];
  cr_assert_fail("no such situation");
  return NULL;
}

const lw_check *checks_test_check(const lw_situation *situation, int number) {
  enum { STAY = 1024 };
  static lw_check whole[STAY];
  static int next;
  next = (next + 1) % STAY;
  whole[next] = lw_situation_check(situation, number);
  return &whole[next];
}

const lw_check *checks_test_at_base(const lw_situation *situation, lw_check_kind kind) {
  for (int i = 0; i < situation->check_count; i++)
    if (situation->kept[i].kind == kind && situation->kept[i].at == LW_AT_BASE)
      return checks_test_check(situation, i);
  return NULL;
}

bool checks_test_near(double a, double b, double share) {
  return fabs(a - b) <= share * fmax(fmax(fabs(a), fabs(b)), 1e-9);
}

static double sum_of(const lw_free_body *body, lw_force_kind kind, bool horizontal) {
  double sum = 0.0;
  for (int i = 0; i < body->forces.count; i++) {
    const lw_force *f = &body->forces.force[i];
    if (f->kind == kind) sum += horizontal ? f->horizontal_kn_per_m : f->vertical_kn_per_m;
  }
  return sum;
}

double checks_test_vertical(const lw_free_body *body, lw_force_kind kind) {
  return sum_of(body, kind, false);
}

double checks_test_horizontal(const lw_free_body *body, lw_force_kind kind) {
  return sum_of(body, kind, true);
}
