/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../order/support.h"
#include "every_wall.h"
#include "walls.h"

#include <lowwall/report.h>

#include <criterion/criterion.h>

#include <ctype.h>
#include <jansson.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

/* No figure on the page that the JSON does not carry: every number with a decimal point is, to its printed
 * digits, a number of the JSON, in SI or in a unit that people use. */

enum { NUMBERS = 40000, LARGE = 100 };

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

static void collect(numbers *all, const json_t *at) {
  json_t *value;
  size_t i;
  if (json_is_number(at)) keep(all, fabs(json_number_value(at)));
  if (json_is_string(at)) keep_words(all, json_string_value(at));
  json_array_foreach(at, i, value) collect(all, value);
  json_t *object = (json_t *)(size_t)at; /* jansson's iterators take no constant */
  for (void *step = json_object_iter(object); step; step = json_object_iter_next(object, step))
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

/* On a drawing also every length in whole millimetres; `whole_from` is above all numbers where that is not
 * asked. */
static int missing_from(const numbers *all, const char *text, double whole_from, const char **first) {
  int missing = 0, decimals;
  double value;
  const char *at = text, *next;
  while ((next = next_number(at, &value, &decimals)) != NULL) {
    if ((decimals > 0 || value > whole_from) && !carried(all, value, decimals)) {
      if (missing++ == 0) *first = next;
    }
    at = next;
  }
  return missing;
}

static void hold(const char *items, const char *text, double whole_from, const numbers *all) {
  const char *first = "";
  int missing = missing_from(all, text, whole_from, &first);
  int back = first - text > 70 ? 70 : (int)(first - text);
  cr_expect_eq(missing, 0, "%s: %d numbers the JSON lacks, the first at: %.90s", items, missing,
               missing ? first - back : "");
}

int every_number_on_the_page_is_carried(const every_wall *wall) {
  static numbers all;
  all.count = 0;
  collect(&all, wall->json);
  hold(wall->name, wall->page, INFINITY, &all);
  return all.count;
}

int every_number_on_the_screen_is_carried(const every_wall *wall) {
  static numbers all;
  lw_text screen = {0};
  all.count = 0;
  collect(&all, wall->json);
  cr_assert_eq(lw_report_screen(wall->result, &(lw_text_style){0}, &screen), LW_OK);
  hold(wall->name, screen.data, INFINITY, &all);
  lw_text_free(&screen);
  return all.count;
}

/* All words of a drawing but the scale, which is the paper's and not the wall's. */
static lw_text drawn(const lw_drawing *d) {
  lw_text words = {0};
  for (size_t i = 0; i < d->mark_count; i++) {
    const char *said = d->words.data + d->mark[i].words;
    if (d->mark[i].kind != LW_MARK_WORDS || strstr(said, "when printed")) continue;
    bool bar = strlen(said) > 2 && strlen(said) < 8 && strcmp(said + strlen(said) - 2, " m") == 0;
    if (!bar) lw_text_addf(&words, "%s\n", said);
  }
  cr_assert_not(words.failed);
  return words;
}

static void collect_text(numbers *all, lw_text *json) {
  json_t *root = json_loads(json->data, 0, NULL);
  cr_assert_not_null(root);
  collect(all, root);
  json_decref(root);
  lw_text_free(json);
}

int every_number_on_the_section_is_carried(const every_wall *wall) {
  static numbers all;
  lw_drawing d = {0};
  all.count = 0;
  collect(&all, wall->json);
  bool made = lw_draw_section(wall->result, 180.0, &d, NULL) == LW_OK;
  if (made) {
    lw_text words = drawn(&d);
    /* Under a cap the chain of dimensions has a length that is a difference of two of the JSON's. */
    hold(wall->name, words.data, strstr(wall->name, "cap height") ? INFINITY : LARGE, &all);
    lw_text_free(&words);
  }
  lw_drawing_free(&d);
  return made ? 1 : 0;
}

Test(report, no_number_on_elevation_and_plan_that_the_json_lacks) {
  static const char *const plans[] = {
      "run 1 length=5.37 m;turn 1 angle=90 deg;run 2 length=3.21 m;setback=15 mm;pad thickness=150 mm;"
      "pad width=600 mm;stone width=300 mm;drain outlets=1;step 1 distance=2 m;step 1 courses=1",
      "run 1 length=5.37 m;turn 1 angle=35 deg;run 2 length=3.2 m;run 2 radius=4 m",
      "run 1 length=4.1 m;turn 1 angle=90 deg;run 2 length=2.3 m;turn 2 angle=90 deg;run 3 length=4.1 m;"
      "turn 3 angle=90 deg;run 4 length=2.3 m;cap height=60 mm;cap depth=240 mm;cap length=500 mm"};
  static numbers all;
  for (size_t i = 0; i < sizeof plans / sizeof *plans; i++) {
    const lw_order *order = order_of(plans[i]);
    const lw_result *result = order_result();
    lw_text json = wall_json(result), list = {0}, pegs = {0};
    cr_assert_eq(lw_report_order_json(result, order, LW_PAGE_ORDER, 2, &list), LW_OK);
    cr_assert_eq(lw_report_order_json(result, order, LW_PAGE_PEGS, 2, &pegs), LW_OK);
    all.count = 0;
    collect_text(&all, &json);
    collect_text(&all, &list);
    collect_text(&all, &pegs);
    lw_drawing d[2] = {0};
    cr_assert_eq(lw_draw_elevation(result, order, 250.0, &d[0], NULL), LW_OK);
    cr_assert_eq(lw_draw_plan(result, order, 250.0, &d[1], NULL), LW_OK);
    for (int k = 0; k < 2; k++) {
      lw_text words = drawn(&d[k]);
      hold(plans[i], words.data, LARGE, &all);
      lw_text_free(&words);
      lw_drawing_free(&d[k]);
    }
  }
}
