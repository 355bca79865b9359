/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../report/measures.h"
#include "support.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <string.h>

/* An order and its pegs in feet, inches and pounds are the metric ones, figure by figure. */

enum { ITEMS = 640, PLANS = 24 / LONG_SHARE + 2 };

static void add(char items[ITEMS], const char *item) {
  size_t used = strlen(items);
  snprintf(items + used, ITEMS - used, ";%s", item);
}

static void random_items(char items[ITEMS]) {
  static const char *const SOME[] = {
      "setback=20 mm",
      "pad thickness=150 mm;pad width=400 mm",
      "stone width=300 mm;stone filter=cloth",
      "drain outlets=2",
      "step 1 distance=2 m;step 1 courses=1",
      "curve gap=5 mm;run 2 radius=4 m",
      "lining=yes",
      "cap height=60 mm;cap length=600 mm;cap depth=250 mm",
      "bedding thickness=20 mm",
      "joint gap=4 mm",
      "block depth=300 mm",
      "offcuts used=yes",
  };
  snprintf(items, ITEMS, "method slip=not;run 1 length=%.3f m;run 2 length=%.3f m;turn 1 angle=%.0f deg",
           order_random(2.5, 8.0), order_random(2.5, 6.0), order_random(0.0, 1.0) < 0.5 ? 90.0 : 60.0);
  for (size_t i = 0; i < sizeof SOME / sizeof *SOME; i++)
    if (order_random(0.0, 1.0) < 0.4) add(items, SOME[i]);
}

/* Four feet are a US level, and whole feet make its corners square: those two have figures of their own. */
static void without_own(char *text) {
  static const char *const OWN[] = {"make it square", "level along and across"};
  for (size_t i = 0; i < sizeof OWN / sizeof *OWN; i++) {
    for (char *found; (found = strstr(text, OWN[i])) != NULL;) {
      char *begin = found, *end = strchr(found, '\n');
      while (begin > text && begin[-1] != '\n') begin--;
      memmove(begin, end, strlen(end) + 1);
    }
  }
}

static lw_text page_of(const char *items, const char *units, lw_order_page which, bool *made) {
  static const lw_text_style style = {.columns = 20000};
  char all[ITEMS + 20];
  lw_text page = {0};
  snprintf(all, sizeof all, "%s;units=%s", items, units);
  const lw_order *order = order_try(all);
  *made = order != NULL;
  if (!order) return page;
  cr_assert_eq(lw_report_order_text(order_result(), order, which, &style, &page), LW_OK);
  without_own(page.data);
  return page;
}

static void expect_narrow_page(const char *items, lw_order_page which) {
  lw_text page = {0};
  char all[ITEMS + 20];
  snprintf(all, sizeof all, "%s;units=us", items);
  const lw_order *order = order_of(all);
  cr_assert_eq(lw_report_order_text(order_result(), order, which, &(lw_text_style){.columns = 80}, &page),
               LW_OK);
  expect_narrow(page.data, items);
  lw_text_free(&page);
}

Test(order_units, an_order_in_feet_is_the_metric_one_figure_by_figure) {
  int paired = 0, plans = 0;
  for (int i = 0; i < PLANS; i++) {
    char items[ITEMS];
    random_items(items);
    for (int which = LW_PAGE_ORDER; which <= LW_PAGE_PEGS; which++) {
      bool made, made_us;
      lw_text metric = page_of(items, "metric", (lw_order_page)which, &made);
      lw_text us = page_of(items, "us", (lw_order_page)which, &made_us);
      cr_assert_eq(made, made_us, "%s", items);
      if (!made) continue;
      plans++;
      expect_all_in(LW_UNITS_METRIC, metric.data, items);
      expect_all_in(LW_UNITS_US, us.data, items);
      paired += expect_paired(metric.data, us.data, items);
      expect_narrow_page(items, (lw_order_page)which);
      lw_text_free(&metric);
      lw_text_free(&us);
    }
  }
  cr_expect(plans >= PLANS && paired >= 60 * plans, "%d pages, %d figures", plans, paired);
}
