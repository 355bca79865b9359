/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "walls.h"

#include <criterion/criterion.h>

#include <ctype.h>
#include <jansson.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

/* No figure on the page that the JSON does not carry: every number with a decimal point is, to its printed
 * digits, a number of the JSON, in SI or in a unit that people use. */

enum { NUMBERS = 40000 };

typedef struct numbers {
  int count;
  double value[NUMBERS];
} numbers;

static void keep(numbers *all, double value) {
  cr_assert(all->count < NUMBERS);
  all->value[all->count++] = value;
}

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

static void keep_words(numbers *all, const char *words) {
  double value;
  int decimals;
  while ((words = next_number(words, &value, &decimals)) != NULL) keep(all, value);
}

static void collect(numbers *all, json_t *at) {
  json_t *value;
  size_t i;
  if (json_is_number(at)) keep(all, fabs(json_number_value(at)));
  if (json_is_string(at)) keep_words(all, json_string_value(at));
  json_array_foreach(at, i, value) collect(all, value);
  for (void *step = json_object_iter(at); step; step = json_object_iter_next(at, step))
    collect(all, json_object_iter_value(step));
}

static bool carried(const numbers *all, double printed, int decimals) {
  static const double units[] = {1.0, 100.0, 1000.0};
  double half = 0.5000001 * pow(10.0, -decimals);
  for (int i = 0; i < all->count; i++) {
    for (size_t u = 0; u < sizeof units / sizeof *units; u++)
      if (fabs(all->value[i] * units[u] - printed) <= half) return true;
    /* "falls short by 12.5 %" of a ratio */
    if (fabs(100.0 * (1.0 - all->value[i]) - printed) <= half) return true;
  }
  return false;
}

static int missing_from(const numbers *all, const char *text, const char **first) {
  int missing = 0, decimals;
  double value;
  const char *at = text, *next;
  while ((next = next_number(at, &value, &decimals)) != NULL) {
    if (decimals > 0 && !carried(all, value, decimals)) {
      if (missing++ == 0) *first = next;
    }
    at = next;
  }
  return missing;
}

static void hold(const char *items, lw_text text, const numbers *all) {
  const char *first = "";
  int missing = missing_from(all, text.data, &first);
  int back = first - text.data > 70 ? 70 : (int)(first - text.data);
  cr_expect_eq(missing, 0, "%s: %d numbers the JSON lacks, the first at: %.90s", items, missing,
               missing ? first - back : "");
}

Test(report, no_number_on_the_page_that_the_json_lacks) {
  static numbers all;
  for (int i = 0; wall_sorts[i]; i++) {
    const lw_result *result = wall_of(wall_sorts[i]);
    lw_text json = wall_json(result), page = wall_page(result);
    json_t *root = json_loads(json.data, 0, NULL);
    cr_assert_not_null(root);
    all.count = 0;
    collect(&all, root);
    hold(wall_sorts[i], page, &all);
    json_decref(root);
    lw_text_free(&json);
    lw_text_free(&page);
  }
}
