/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/random_wall.h"
#include "../sheet/support.h"
#include "measures.h"

#include <criterion/criterion.h>

#include <jansson.h>
#include <stdlib.h>
#include <string.h>

/* Each wall as its reader measures: in metric and in feet, inches and pounds it is the same wall. */

enum { WIDE = 20000, WALLS = 24 / LONG_SHARE, LARGE = RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3) };

typedef struct told {
  lw_result *result, *scratch;
  lw_text page, screen;
  json_t *json;
} told;

static void run(const random_wall *wall, lw_units units, told *t) {
  lw_case c = random_wall_case(wall);
  lw_error error = {0};
  lw_text json = {0};
  const lw_text_style style = {.columns = WIDE};
  c.about.units = (lw_choice){.value = (int)units, .origin = LW_GIVEN};
  *t = (told){.result = calloc(1, sizeof *t->result), .scratch = calloc(1, sizeof *t->scratch)};
  cr_assert(t->result && t->scratch);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, t->result, &error), LW_OK);
  lw_water_find(t->result, t->scratch);
  lw_looks_find(t->result, t->scratch);
  cr_assert_eq(lw_report_text(t->result, &style, &t->page), LW_OK);
  cr_assert_eq(lw_report_json(t->result, 0, &json), LW_OK);
  t->json = json_loadb(json.data, json.length, 0, NULL);
  cr_assert_not_null(t->json);
  lw_text_free(&json);
}

static void give_up(told *t) {
  lw_text_free(&t->page);
  lw_text_free(&t->screen);
  json_decref(t->json);
  free(t->result);
  free(t->scratch);
}

/* Figures to the last bit, words where they are slugs. */
static bool same_figures(const char *key, const json_t *a, const json_t *b, const char **differs) {
  static const char *const SLUGS[] = {"slug",  "stands", "grade", "who",   "what",
                                      "check", "at",     "state", "reason"};
  json_t *value, *object = (json_t *)(size_t)a; /* jansson's iterators take no constant */
  bool same = json_typeof(a) == json_typeof(b);
  size_t i;
  *differs = key;
  if (same && json_is_number(a))
    same = !(json_number_value(a) < json_number_value(b)) && !(json_number_value(a) > json_number_value(b));
  for (size_t k = 0; same && json_is_string(a) && k < sizeof SLUGS / sizeof *SLUGS; k++)
    if (strcmp(key, SLUGS[k]) == 0) same = strcmp(json_string_value(a), json_string_value(b)) == 0;
  if (json_array_size(a) != json_array_size(b) || json_object_size(a) != json_object_size(b)) return false;
  json_array_foreach(a, i, value) {
    if (!same || !same_figures(key, value, json_array_get(b, i), differs)) return false;
  }
  for (void *step = json_object_iter(object); same && step; step = json_object_iter_next(object, step)) {
    const char *inner = json_object_iter_key(step);
    const json_t *other = json_object_get(b, inner);
    if (!other || !same_figures(inner, json_object_iter_value(step), other, differs)) return false;
  }
  return same;
}

Test(units, a_report_in_feet_is_the_metric_one_figure_by_figure) {
  dice d = {20261129};
  int paired = 0;
  for (int i = 0; i < WALLS; i++) {
    random_wall wall = {0};
    told metric, us;
    char name[LARGE];
    const char *differs = "";
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    random_wall_name(&wall, name, sizeof name);
    run(&wall, LW_UNITS_METRIC, &metric);
    run(&wall, LW_UNITS_US, &us);
    expect_all_in(LW_UNITS_METRIC, metric.page.data, name);
    expect_all_in(LW_UNITS_US, us.page.data, name);
    paired += expect_paired(metric.page.data, us.page.data, name);
    cr_expect_eq(metric.result->verdict.exit_status, us.result->verdict.exit_status, "%s", name);
    cr_expect(same_figures("", metric.json, us.json, &differs), "%s: %s", name, differs);
    give_up(&metric);
    give_up(&us);
  }
  cr_expect(paired >= 100 * WALLS, "%d figures paired", paired);
}

/* What would make it stand is sought in inches there, so that its figures are its own. */
Test(units, the_screen_and_the_remedies_speak_the_readers_units) {
  dice d = {11};
  for (int i = 0; i < WALLS / 2; i++) {
    for (int units = LW_UNITS_METRIC; units <= LW_UNITS_US; units++) {
      random_wall wall = {0};
      told t;
      char name[LARGE];
      const lw_text_style style = {.columns = WIDE};
      dice again = d;
      random_wall_make(&again, &wall);
      if (units == LW_UNITS_US) d = again;
      random_wall_add(&wall, "method slip=not");
      run(&wall, (lw_units)units, &t);
      random_wall_name(&wall, name, sizeof name);
      lw_remedies_find(t.result, t.scratch);
      cr_assert_eq(lw_report_screen(t.result, &style, &t.screen), LW_OK);
      expect_all_in((lw_units)units, t.screen.data, name);
      expect_narrow(t.screen.data, name);
      lw_text_clear(&t.page);
      cr_assert_eq(lw_report_text(t.result, &(lw_text_style){.columns = 80}, &t.page), LW_OK);
      expect_narrow(t.page.data, name);
      expect_all_in((lw_units)units, t.page.data, name);
      for (int r = 0; r < t.result->remedy_count; r++)
        for (int k = 0; k < t.result->remedy[r].items.count; k++)
          expect_all_in((lw_units)units, t.result->remedy[r].items.item[k], name);
      give_up(&t);
    }
  }
}
