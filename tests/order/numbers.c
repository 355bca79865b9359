/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <lowwall/report.h>

#include <ctype.h>
#include <jansson.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../report/forms_read.h"

/* No figure in the text or the CSV of an order or of pegs that its JSON does not carry, to its
 * printed digits,
 * in SI or in mm, per cent and tonnes; and no key of the JSON that docs/order.md does not have. */

enum { MOST = 20000 };

typedef struct numbers {
  int count;
  double value[MOST];
} numbers;

static const char *next_number(const char *at, double *value, int *decimals) {
  for (; *at; at++) {
    if (!isdigit((unsigned char)*at)) continue;
    char *end;
    *value = strtod(at, &end);
    const char *point = memchr(at, '.', (size_t)(end - at));
    *decimals = point ? (int)(end - point) - 1 : 0;
    return end;
  }
  return NULL;
}

static void keep(numbers *all, double value) {
  cr_assert(all->count < MOST);
  all->value[all->count++] = value;
}

static void collect(numbers *all, json_t *at) {
  json_t *value;
  size_t i;
  double number;
  int decimals;
  if (json_is_number(at)) keep(all, fabs(json_number_value(at)));
  if (json_is_string(at))
    for (const char *c = json_string_value(at); (c = next_number(c, &number, &decimals)) != NULL;)
      keep(all, number);
  json_array_foreach(at, i, value) collect(all, value);
  for (void *step = json_object_iter(at); step; step = json_object_iter_next(at, step))
    collect(all, json_object_iter_value(step));
}

static bool carried(const numbers *all, double printed, int decimals) {
  static const double units[] = {1.0, 100.0, 1000.0, 0.001};
  double half = 0.5000001 * pow(10.0, -decimals);
  for (int i = 0; i < all->count; i++)
    for (size_t u = 0; u < sizeof units / sizeof *units; u++)
      if (fabs(all->value[i] * units[u] - printed) <= half) return true;
  return false;
}

static void hold(const char *items, const lw_text *page, const numbers *all) {
  double value;
  int decimals;
  const char *at = page->data, *next;
  while ((next = next_number(at, &value, &decimals)) != NULL) {
    int back = next - page->data > 60 ? 60 : (int)(next - page->data);
    cr_expect(carried(all, value, decimals), "%s: %g is not in the JSON, at: %.80s", items, value,
              next - back);
    at = next;
  }
}

static void hold_keys(json_t *at, const char *document) {
  json_t *value;
  size_t i;
  const char *key;
  json_array_foreach(at, i, value) hold_keys(value, document);
  if (!json_is_object(at)) return;
  json_object_foreach(at, key, value) {
    cr_expect(strstr(document, key) != NULL, "docs/order.md lacks %s", key);
    hold_keys(value, document);
  }
}

static char *document(void) {
  static char text[40000];
  FILE *file = fopen("docs/order.md", "rb");
  cr_assert_not_null(file);
  size_t length = fread(text, 1, sizeof text - 1, file);
  fclose(file);
  text[length] = '\0';
  return text;
}

static void hold_forms(const char *items, const lw_order *order, lw_order_page page, const lw_text *text) {
  lw_text made[LW_AS_COUNT] = {{0}};
  for (int as = LW_AS_MARKDOWN; as < LW_AS_COUNT; as++) {
    const lw_text_style style = {.columns = 80, .as = (lw_as)as};
    cr_assert_eq(lw_report_order_text(order_result(), order, page, &style, &made[as]), LW_OK);
  }
  forms_expect_same(items, text->data, made[LW_AS_MARKDOWN].data, made[LW_AS_HTML].data);
  for (int as = 0; as < LW_AS_COUNT; as++) lw_text_free(&made[as]);
}

static void hold_page(const char *items, const lw_order *order, lw_order_page page) {
  static numbers all;
  const lw_result *result = order_result();
  lw_text json = {0}, text = {0}, csv = {0};
  lw_text_style style = {.columns = 80};
  cr_assert(lw_report_order_json(result, order, page, 0, &json) == LW_OK);
  cr_assert(lw_report_order_text(result, order, page, &style, &text) == LW_OK);
  cr_assert(lw_report_order_csv(result, order, page, &csv) == LW_OK);
  json_t *root = json_loads(json.data, 0, NULL);
  cr_assert_not_null(root);
  all.count = 0;
  collect(&all, root);
  hold(items, &text, &all);
  hold(items, &csv, &all);
  hold_keys(root, document());
  json_decref(root);
  hold_forms(items, order, page, &text);
  lw_text_free(&json);
  lw_text_free(&text);
  lw_text_free(&csv);
}

#define CAPS ";cap height=50 mm;cap depth=230 mm;cap length=600 mm;cap overhang=30 mm;cap fixing=bonded"
#define DRAIN ";stone width=300 mm;drain outlets=2;pad thickness=100 mm"

Test(order, no_number_that_the_json_lacks) {
  static const char *const plans[] = {
      "run 1 length=5.37 m",
      "run 1 length=4.2 m;turn 1 angle=90 deg;run 2 length=2.9 m;turn 2 angle=90 deg;run 3 length=4.2 m;turn "
      "3 "
      "angle=90 deg;run 4 length=2.9 m;setback=15 mm;site behind=bed" CAPS DRAIN,
      "run 1 length=3.1 m;turn 1 angle=45 deg;run 2 length=2.55 m;turn 2 angle=-60 deg;run 3 length=1.9 "
      "m;run 2 "
      "cap depth=300 mm;joint gap=3 mm;setback=7 mm;offcuts used=yes" CAPS DRAIN,
      "run 1 length=4 m;run 1 radius=-3 m;turn 1 angle=0 deg;run 2 length=2 m;curve gap=30 mm" CAPS,
      "run 1 length=7.3 m;ground fall=300 mm;lining=yes" DRAIN,
      "run 1 length=2.4 m;turn 1 angle=90 deg;run 2 length=2.6 m;corner unit=handed;half unit=sold;base "
      "course "
      "count=1;base course depth=400 mm" DRAIN,
      "run 1 length=3 m;turn 1 angle=120 deg;run 2 length=3 m;turn 2 angle=120 deg;run 3 length=3 m" CAPS,
  };
  for (size_t i = 0; i < sizeof plans / sizeof plans[0]; i++) {
    const lw_order *order = order_of(plans[i]);
    hold_page(plans[i], order, LW_PAGE_ORDER);
    hold_page(plans[i], order, LW_PAGE_PEGS);
  }
}
