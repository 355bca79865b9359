/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"
#include "random_wall.h"
#include "support.h"
#include "tables/find.h"

/* The ground in front, counted: it never fails what holds without it, and what is asked then is asked of it
 * as resistance and off the push alike. */

enum { WALLS = 40 / RANDOM_SHARE };

static void make(dice *d, random_wall *items) {
  random_wall_plain(d, items);
  random_wall_add(items, "soil 1 friction angle=%.3f deg", dice_between(d, 26.0, 40.0));
  random_wall_add(items, "footing soil friction angle=%.3f deg", dice_between(d, 20.0, 36.0));
  random_wall_add(items, "ground slope=0 deg");
  random_wall_add(items, "method slip=not");
  if (dice_pick(d, 2)) random_wall_add(items, "seismic horizontal=0.1");
}

static lw_result *run(const random_wall *items, const char *format, const char *passive, const char *as) {
  random_wall all = *items;
  lw_result *result = calloc(1, sizeof *result);
  cr_assert_not_null(result);
  random_wall_add(&all, "method format=%s", format);
  random_wall_add(&all, "method passive=%s", passive);
  if (as) random_wall_add(&all, "method passive as=%s", as);
  lw_case c = random_wall_case(&all);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  return result;
}

static void expect_no_worse(const lw_result *with, const lw_result *without, const char *what) {
  cr_assert_eq(with->situations.count, without->situations.count);
  for (int s = 0; s < with->situations.count; s++) {
    const lw_situation *a = &with->situations.situation[s], *b = &without->situations.situation[s];
    for (int i = 0; i < a->check_count; i++) {
      const lw_check *x = checks_test_check(a, i), *y = checks_test_check(b, i);
      if (x->kind != LW_CHECK_SLIDING) continue;
      if (y->holds == LW_HOLDS) cr_expect_eq(x->holds, LW_HOLDS, "situation %d, check %d: %s", s, i, what);
      if (x->ratio.known && y->ratio.known)
        cr_expect_leq(y->ratio.value, x->ratio.value * (1.0 + 1e-9), "situation %d, check %d: %s", s, i,
                      what);
    }
  }
}

Test(passive_counted, never_fails_what_holds_without_it) {
  const lw_tables *tables = sheet_test_tables();
  dice d = {4};
  for (int i = 0; i < WALLS; i++) {
    random_wall items;
    char what[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
    make(&d, &items);
    random_wall_name(&items, what, sizeof what);
    for (int k = 0; k < tables->factor_count; k++) {
      const char *format = tables->factor[k].factor_set;
      if (lw_tables_factor_set(tables, format) != k || (k > 0 && dice_pick(&d, 6) > 0)) continue;
      lw_result *without = run(&items, format, "0 %", NULL);
      lw_result *as_resistance = run(&items, format, "60 %", "resistance");
      lw_result *off_push = run(&items, format, "60 %", "off push");
      expect_no_worse(as_resistance, without, what);
      expect_no_worse(off_push, without, what);
      free(without);
      free(as_resistance);
      free(off_push);
    }
  }
}

#define BURIED \
  "course count=6", "block height=200 mm", "block depth=400 mm", "wall embedment=400 mm", \
      "soil 1 friction angle=30 deg", "ground slope=0 deg", "people on cap=yes", "base friction=0.3", \
      "method slip=not", "seismic horizontal=0.02", "drain outlets=2", "stone width=300 mm"

static void expect_asked(const char *as, lw_situation_name name, double wanted) {
  lw_result *result = RUN(BURIED, "method passive=100 %", as);
  const lw_check *slides = checks_test_at_base(checks_test_situation(result, name), LW_CHECK_SLIDING);
  cr_expect(checks_test_near(slides->needs.value, wanted, 1e-12), "%s: %g asked", as, slides->needs.value);
  free(result);
}

/* Of the set's rows: 2.0 from memory of [NAVFAC-7.02 Ch.3 Fig.15]; 1.8 and 1.5 are proposals. */
Test(passive_counted, is_asked_one_figure_a_kind_either_way) {
  static const char *const AS[] = {"method passive as=resistance", "method passive as=off push"};
  for (int i = 0; i < 2; i++) {
    expect_asked(AS[i], LW_SITUATION_DRAINED, 2.0);
    expect_asked(AS[i], LW_SITUATION_PEOPLE_LEANING, 1.8);
    expect_asked(AS[i], LW_SITUATION_EARTHQUAKE, 1.5);
  }
}
