/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <string.h>

#include "support.h"

/* The sheet says what its reader measures in, and all that the page shows follows. */

static json_t *of_demo(const char *does, const char *path, const char *set) {
  return page_test_ask(json_pack("{s:s,s:s,s:[s]}", "do", does, "sheet", page_test_sheet(path), "set", set));
}

static const char *const DEMOS[] = {"docs/demo/bed.csv", "docs/demo/terrace.csv", "docs/demo/bank.csv"};
enum { DEMO_COUNT = sizeof DEMOS / sizeof *DEMOS };

/* In inches a finger moves what is not laid in courses by one; where it stands is one of the places. */
Test(page_units, a_finger_moves_by_inches) {
  for (int i = 0; i < DEMO_COUNT; i++) {
    json_t *check = of_demo("check", DEMOS[i], "units=us");
    const json_t *handles = json_object_get(check, "handles");
    cr_assert_gt(json_array_size(handles), 0);
    for (size_t k = 0; k < json_array_size(handles); k++) {
      const json_t *handle = json_array_get(handles, k), *steps = json_object_get(handle, "steps");
      size_t at = (size_t)json_integer_value(json_object_get(handle, "at"));
      bool height = strcmp(page_test_text(handle, "handle"), "height") == 0;
      double step = json_number_value(json_object_get(handle, "step_m"));
      double now = json_number_value(json_object_get(handle, "now_m"));
      cr_expect(height || fabs(step - 0.0254) < 1e-12, "%s: %g m", DEMOS[i], step);
      cr_assert_lt(at, json_array_size(steps));
      double there = json_number_value(json_object_get(json_array_get(steps, at), "m"));
      cr_expect(fabs(there - now) <= 0.5 * step + 1e-9, "%s %zu: %g and %g m", DEMOS[i], k, there, now);
      for (size_t n = 0; n < json_array_size(steps); n++)
        cr_expect(strstr(page_test_text(json_array_get(steps, n), "words"), "mm") == NULL);
    }
    json_decref(check);
  }
}

Test(page_units, questions_follow_the_sheet) {
  static const char *const units[][2] = {{"units=us", "us"}, {"units=metric", "metric"}};
  for (size_t i = 0; i < 2; i++) {
    json_t *sheet =
        page_test_ask(json_pack("{s:s,s:s,s:[s]}", "do", "sheet", "sheet", "", "set", units[i][0]));
    json_t *reply =
        page_test_ask(json_pack("{s:s,s:s}", "do", "questions", "sheet", page_test_text(sheet, "sheet")));
    cr_expect_str_eq(page_test_text(json_object_get(reply, "asking"), "units"), units[i][1]);
    /* A number without a unit is read in them, too. */
    json_t *answer =
        page_test_ask(json_pack("{s:s,s:s,s:s,s:s}", "do", "answer", "sheet", page_test_text(sheet, "sheet"),
                                "key", "height", "answer", i == 0 ? "20;2" : "500;50"));
    const char *row = i == 0 ? "wall height,20,in" : "wall height,500,mm";
    cr_expect(strstr(page_test_text(answer, "sheet"), row) != NULL, "%s: %s", row,
              page_test_text(answer, "text"));
    json_decref(answer);
    json_decref(reply);
    json_decref(sheet);
  }
}

static void expect_us(json_t *value, const char *where, int *held) {
  static const char *const metric[] = {" mm", " kPa", " kN", " m ", " kg"};
  const char *key;
  json_t *inner;
  size_t at;
  if (json_is_string(value))
    for (size_t i = 0; i < sizeof metric / sizeof *metric; i++, ++*held)
      cr_expect(strstr(json_string_value(value), metric[i]) == NULL, "%s: %s", where,
                json_string_value(value));
  json_object_foreach(value, key, inner) {
    bool skipped = strcmp(key, "sheet") == 0 || strcmp(key, "items") == 0;
    if (!skipped) expect_us(inner, where, held);
  }
  json_array_foreach(value, at, inner) expect_us(inner, where, held);
}

/* What is read of a wall in feet and pounds has no other measure in it. */
Test(page_units, answers_are_in_feet_and_pounds) {
  static const char *const DOES[] = {"check", "advice", "order", "pegs"};
  int held = 0;
  for (int i = 0; i < DEMO_COUNT; i++)
    for (size_t k = 0; k < sizeof DOES / sizeof *DOES; k++) {
      json_t *reply = of_demo(DOES[k], DEMOS[i], "units=us");
      cr_expect(page_test_ok(reply), "%s: %s", DOES[k], page_test_text(reply, "text"));
      expect_us(reply, DOES[k], &held);
      json_decref(reply);
    }
  cr_expect_gt(held, 500);
}
