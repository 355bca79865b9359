/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/paired.h"

#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/support.h"
#include "../sheet/support.h"
#include "balance/weigh.h"

/* What is said of the cohesion that is paired with the clay's angle, under every set of factors. */

static const lw_check *slip_of(const lw_situation *s) {
  for (int k = 0; k < s->check_count; k++) {
    const lw_check *check = checks_test_check(s, k);
    if (check->kind == LW_CHECK_SLIP) return check;
  }
  return NULL;
}

/* What the set asks of the same slip where nothing is paired; the lesser of that and 1.1. */
static lw_number asked_of(const lw_result *off, const lw_situation *s) {
  const lw_check *slip = slip_of(checks_test_situation(off, s->name));
  bool asked = slip && slip->counts && slip->needs.known;
  return asked ? lw_known(fmin(slip->needs.value, 1.1)) : (lw_number){0};
}

static double share_of(const lw_situation *s, const lw_number *needs) {
  return s->slip_bare_has.value / (needs->known ? needs->value : 1.0);
}

/* How many situations are told of that do not decide. */
static int expect_told(const lw_result *on, const lw_result *off, const char *text, const char *set) {
  int beside = 0;
  for (int i = 0; i < on->situations.count; i++) {
    const lw_situation *s = &on->situations.situation[i];
    char told[80];
    if (!s->slip_bare_has.known) continue;
    lw_number needs = asked_of(off, s);
    if (needs.known)
      snprintf(told, sizeof told, "%.2f of %.2f %s", s->slip_bare_has.value, needs.value,
               lw_situation_short(s->name));
    else
      snprintf(told, sizeof told, "%.2f %s", s->slip_bare_has.value, lw_situation_short(s->name));
    const char *at = strstr(text, told);
    cr_expect_not_null(at, "%s: %s in %s", set, told, text);
    beside += s->decides ? 0 : 1;
    const lw_check *slip = slip_of(s); /* the graver of the two answers */
    if (needs.known)
      cr_expect_leq(slip->ratio.value, share_of(s, &needs) * (1.0 + 1e-9), "%s: %s", set, told);
    for (int k = 0; at && k < on->situations.count; k++) {
      const lw_situation *o = &on->situations.situation[k];
      lw_number of_other = asked_of(off, o);
      if (!o->slip_bare_has.known || o == s) continue;
      bool first = s->decides != o->decides ? s->decides : share_of(s, &needs) < share_of(o, &of_other);
      char name[40];
      snprintf(name, sizeof name, " %s", lw_situation_short(o->name));
      const char *other = strstr(strstr(text, "Without any of it"), name);
      cr_assert_not_null(other);
      if (first) cr_expect_lt(at, other, "%s: %s before%s in %s", set, told, name, text);
    }
  }
  return beside;
}

static void run_under(const char *set, const char *more, lw_result *result) {
  char format[80];
  snprintf(format, sizeof format, "method format=%s", set);
  const char *items[] = {"course count=4",
                         "block height=200 mm",
                         "block depth=300 mm",
                         "wall embedment=100 mm",
                         "site behind=ground",
                         "ground slope=1:6",
                         "soil 1 name=sandy loam",
                         "footing soil name=stiff clay",
                         "reactive soil=no",
                         "drain outlets=2",
                         "stone width=300 mm",
                         "wall joints=open",
                         "stone filter=cloth",
                         "building distance=9 m",
                         format,
                         more};
  lw_faults faults = {.count = 0};
  lw_error error = {0};
  lw_case c = {0};
  for (size_t i = 0; i < sizeof items / sizeof *items; i++)
    cr_assert_eq(lw_sheet_override(items[i], (int)i + 1, &c, &faults), LW_OK, "%s", items[i]);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_CHECKS, result, &error), LW_OK, "%s", error.text);
}

Test(paired_said, once_for_all_situations_worst_first_with_what_is_asked) {
  const lw_tables *tables = sheet_test_tables();
  lw_result *on = calloc(1, sizeof *on), *off = calloc(1, sizeof *off);
  int beside = 0, less = 0;
  cr_assert(on && off);
  for (int k = 0; k < tables->factor_count; k++) {
    const char *set = tables->factor[k].factor_set;
    if (k > 0 && strcmp(set, tables->factor[k - 1].factor_set) == 0) continue;
    lw_text text = {0};
    run_under(set, "mark=-", on);
    run_under(set, "footing soil cohesion=0 kPa", off);
    lw_paired_say(on, &text);
    const char *first = strstr(text.data, "Without any of it");
    cr_assert_not_null(first, "%s", text.data);
    cr_expect_null(strstr(first + 1, "Without any of it"), "%s", text.data);
    beside += expect_told(on, off, text.data, set);
    less += strstr(first, "of 1.00") ? 1 : 0;
    lw_text_free(&text);
  }
  cr_expect_lt(3, beside);
  cr_expect_lt(3, less); /* sets that ask less than 1.1 in all */
  free(on);
  free(off);
}
