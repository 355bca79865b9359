/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>

#include "support.h"

/* What a page may ask, and what it gets. */

static const char *const DEMOS[] = {"docs/demo/bed.csv", "docs/demo/terrace.csv", "docs/demo/bank.csv"};
enum { DEMO_COUNT = sizeof DEMOS / sizeof *DEMOS, STRIDE = 4 };

static json_t *of_sheet(const char *what, const char *sheet) {
  return page_test_ask(
      json_pack("{s:s,s:s,s:s,s:s}", "do", what, "sheet", sheet, "view", "section", "as", "text"));
}

static void expect_refused(const char *request, const char *why) {
  json_t *reply = page_test_answer(request);
  cr_expect(!page_test_ok(reply), "%s", request);
  cr_expect_str_eq(page_test_text(reply, "why"), why, "%s: %s", request, page_test_text(reply, "why"));
  cr_expect_str_neq(page_test_text(reply, "text"), "", "%s", request);
  cr_expect(json_is_array(json_object_get(reply, "faults")), "%s", request);
  json_decref(reply);
}

Test(page, what_is_no_request_is_refused_and_says_why) {
  static const char *const BAD[] = {
      "",
      "{",
      "[]",
      "null",
      "3",
      "\"check\"",
      "{}",
      "{\"do\":3}",
      "{\"do\":\"\"}",
      "{\"do\":\"fly\"}",
      "{\"do\":\"check\"}",
      "{\"do\":\"check\",\"sheet\":4}",
      "{\"do\":\"check\",\"do\":\"check\"}",
      "{\"do\":\"start\",\"kind\":\"tower\"}",
      "{\"do\":\"draw\",\"sheet\":\"\",\"view\":\"behind\"}",
      "{\"do\":\"draw\",\"sheet\":\"\",\"view\":\"section\",\"width_mm\":5}",
      "{\"do\":\"draw\",\"sheet\":\"\",\"view\":\"section\",\"width_mm\":1e9}",
      "{\"do\":\"report\",\"sheet\":\"\",\"as\":\"song\"}",
      "{\"do\":\"check\",\"sheet\":\"\",\"set\":[3]}",
      "{\"do\":\"check\",\"sheet\":\"wall height [mm],block depth [mm]\\n300,400\\n\"}",
      "{\"do\":\"check\",\"sheet\":\"a\\u0000b\"}"};
  for (size_t i = 0; i < sizeof BAD / sizeof *BAD; i++) expect_refused(BAD[i], "bad-request");
}

Test(page, a_request_that_is_nested_too_deep_or_no_utf8_is_refused) {
  char deep[6001], broken[] = "{\"do\":\"\xff\"}";
  memset(deep, '[', sizeof deep - 1);
  deep[sizeof deep - 1] = '\0';
  expect_refused(deep, "bad-request");
  expect_refused(broken, "bad-request");
}

Test(page, faults_of_a_sheet_come_back_with_item_row_and_cure) {
  json_t *reply = of_sheet("check", "item,value,unit,note\nwall height,nine,mm,\nwal height,1,m,\n");
  const json_t *faults = json_object_get(reply, "faults");
  cr_assert_str_eq(page_test_text(reply, "why"), "faults");
  cr_expect_geq(json_array_size(faults), 2);
  const json_t *first = json_array_get(faults, 0);
  cr_expect_str_eq(page_test_text(first, "slug"), "not-a-number");
  cr_expect_str_eq(page_test_text(first, "item"), "wall height");
  cr_expect_eq(json_integer_value(json_object_get(first, "row")), 2);
  cr_expect_str_neq(page_test_text(first, "wanted"), "");
  json_decref(reply);
}

Test(page, an_item_that_is_set_has_its_faults_too) {
  json_t *reply = page_test_ask(json_pack("{s:s,s:s,s:[s]}", "do", "sheet", "sheet",
                                          page_test_sheet("docs/demo/bed.csv"), "set", "wall height=high"));
  cr_expect_str_eq(page_test_text(reply, "why"), "faults");
  json_decref(reply);
}

Test(page, a_huge_sheet_is_answered_and_not_believed) {
  enum { ROWS = 200000 };
  static const char row[] = "soil 1 name,loam,,\n";
  char *sheet = malloc(32 + ROWS * sizeof row);
  cr_assert(sheet != NULL);
  size_t used = (size_t)lw_print(sheet, 32, "item,value,unit,note\n");
  for (int i = 0; i < ROWS; i++, used += sizeof row - 1) memcpy(sheet + used, row, sizeof row);
  json_t *reply = of_sheet("check", sheet);
  cr_expect_str_eq(page_test_text(reply, "why"), "faults");
  cr_expect_leq(json_array_size(json_object_get(reply, "faults")), LW_FAULT_MAX);
  json_decref(reply);
  free(sheet);
}

Test(page, everything_of_every_demo_sheet_is_answered) {
  static const char *const ALWAYS[] = {"sheet", "check", "advice", "draw", "report", "working", "precheck"};
  for (int i = 0; i < DEMO_COUNT; i++)
    for (size_t k = 0; k < sizeof ALWAYS / sizeof *ALWAYS; k++) {
      json_t *reply = of_sheet(ALWAYS[k], page_test_sheet(DEMOS[i]));
      cr_expect(page_test_ok(reply), "%s of %s: %s", ALWAYS[k], DEMOS[i], page_test_text(reply, "text"));
      json_decref(reply);
    }
}

/* The words are those of the report: nothing is said here that it does not say. */
Test(page, the_answer_is_that_of_the_report) {
  for (int i = 0; i < DEMO_COUNT; i++) {
    json_t *check = of_sheet("check", page_test_sheet(DEMOS[i]));
    json_t *report = of_sheet("report", page_test_sheet(DEMOS[i]));
    const json_t *answers = json_object_get(check, "answers");
    cr_assert_eq(json_array_size(answers), 3);
    for (size_t k = 0; k < 3; k++) {
      const char *words = page_test_text(json_array_get(answers, k), "words");
      char first[24] = "";
      (void)strncat(first, words, sizeof first - 1);
      cr_expect(strstr(page_test_text(report, "text"), first) != NULL, "%s: %s", DEMOS[i], words);
    }
    json_decref(check);
    json_decref(report);
  }
}

Test(page, the_gravest_answer_stands_first) {
  int engineers = 0;
  for (int i = 0; i < DEMO_COUNT; i++) {
    json_t *check = of_sheet("check", page_test_sheet(DEMOS[i]));
    const json_t *answers = json_object_get(check, "answers");
    json_int_t before = 3;
    for (size_t k = 0; k < json_array_size(answers); k++) {
      json_int_t gravity = json_integer_value(json_object_get(json_array_get(answers, k), "gravity"));
      cr_expect_leq(gravity, before);
      before = gravity;
    }
    if (strcmp(page_test_text(check, "who"), "engineer") == 0) {
      engineers++;
      cr_expect_str_eq(page_test_text(json_array_get(answers, 0), "answer"), "who");
      cr_expect(strstr(page_test_text(json_array_get(answers, 0), "words"), "licensed engineer") != NULL);
    }
    json_decref(check);
  }
  cr_expect_gt(engineers, 0);
}

/* A remedy typed in holds, as it says, and the sheet it leaves is one. */
Test(page, a_remedy_typed_in_is_the_wall_that_it_tells_of) {
  const char *start = "{\"do\":\"start\",\"kind\":\"bed\"}";
  json_t *begun = page_test_answer(start);
  const char *sheet = page_test_text(begun, "sheet");
  json_t *tall =
      page_test_ask(json_pack("{s:s,s:s,s:{s:f}}", "do", "check", "sheet", sheet, "move", "height", 0.9));
  cr_assert_str_eq(page_test_text(tall, "stands"), "falls-short");
  json_t *advice = of_sheet("advice", page_test_text(tall, "sheet"));
  const json_t *remedies = json_object_get(advice, "remedies");
  cr_assert_gt(json_array_size(remedies), 0);
  for (size_t i = 0; i < json_array_size(remedies); i++) {
    json_t *items = json_object_get(json_array_get(remedies, i), "items");
    json_t *then = page_test_ask(
        json_pack("{s:s,s:s,s:O}", "do", "check", "sheet", page_test_text(tall, "sheet"), "set", items));
    cr_expect_str_eq(page_test_text(then, "stands"), "holds", "%s",
                     page_test_text(json_array_get(remedies, i), "words"));
    json_decref(then);
  }
  json_decref(advice);
  json_decref(tall);
  json_decref(begun);
}

static double figure(const json_t *reply, const char *key) {
  return json_number_value(json_object_get(json_object_get(reply, "figures"), key));
}

static double base_sliding(const char *sheet, const char *handle, double value) {
  json_t *reply = page_test_ask(json_pack("{s:s,s:s,s:s,s:{s:f}}", "do", "report", "as", "figures", "sheet",
                                          sheet, "move", handle, value));
  cr_assert(page_test_ok(reply), "%s %g: %s", handle, value, page_test_text(reply, "text"));
  double has = figure(reply, "drained.base.sliding.has");
  json_decref(reply);
  return has;
}

/* Physics: a higher wall slides sooner, a deeper one later. */
Test(page, moved_higher_it_slides_sooner_and_deeper_later) {
  const char *terrace = page_test_sheet("docs/demo/terrace.csv");
  double before = INFINITY;
  for (double height = 0.2; height < 1.1; height += 0.2) {
    double has = base_sliding(terrace, "height", height);
    cr_expect_lt(has, before, "%g m: %g", height, has);
    before = has;
  }
  before = 0.0;
  for (double depth = 0.3; depth < 1.0; depth += 0.1) {
    double has = base_sliding(terrace, "depth", depth);
    cr_expect_lt(before, has, "%g m: %g", depth, has);
    before = has;
  }
}

/* Steps that a handle offers, its ends among them, are walls. */
Test(page, the_steps_of_every_handle_are_walls) {
  for (int i = 0; i < DEMO_COUNT; i++) {
    char sheet[65536];
    lw_print(sheet, sizeof sheet, "%s", page_test_sheet(DEMOS[i]));
    json_t *check = of_sheet("check", sheet);
    const json_t *handles = json_object_get(check, "handles");
    cr_assert_gt(json_array_size(handles), 0, "%s", DEMOS[i]);
    for (size_t k = 0; k < json_array_size(handles); k++) {
      const json_t *handle = json_array_get(handles, k);
      const char *name = page_test_text(handle, "handle");
      double from = json_number_value(json_object_get(handle, "from_m"));
      double step = json_number_value(json_object_get(handle, "step_m"));
      json_int_t most = json_integer_value(json_object_get(handle, "most"));
      for (json_int_t n = 0; n <= most; n += n < most && n + STRIDE > most ? most - n : STRIDE) {
        json_t *moved = page_test_ask(json_pack("{s:s,s:s,s:{s:f}}", "do", "check", "sheet", sheet, "move",
                                                name, from + step * (double)n));
        cr_expect(page_test_ok(moved), "%s: %s %g: %s", DEMOS[i], name, from + step * (double)n,
                  page_test_text(moved, "text"));
        json_decref(moved);
      }
    }
    json_decref(check);
  }
}

Test(page, no_handle_leaves_its_span) {
  const char *bed = page_test_sheet("docs/demo/bed.csv");
  static const char *const BEYOND[] = {"{\"height\":9}",
                                       "{\"height\":-1}",
                                       "{\"height\":\"nan\"}",
                                       "{\"depth\":3}",
                                       "{\"water\":5}",
                                       "{\"length\":1}",
                                       "{}",
                                       "{\"height\":0.4,\"depth\":0.4}",
                                       "0.4"};
  for (size_t i = 0; i < sizeof BEYOND / sizeof *BEYOND; i++) {
    json_t *move = json_loads(BEYOND[i], JSON_DECODE_ANY, NULL);
    json_t *reply = page_test_ask(json_pack("{s:s,s:s,s:o}", "do", "check", "sheet", bed, "move", move));
    cr_expect(!page_test_ok(reply) && strncmp(page_test_text(reply, "text"), "move: ", 6) == 0, "%s",
              BEYOND[i]);
    json_decref(reply);
  }
}

/* What is written is what is read: a sheet that went through is the same sheet again. */
Test(page, a_sheet_that_went_through_stays) {
  for (int i = 0; i < DEMO_COUNT; i++) {
    json_t *once = of_sheet("sheet", page_test_sheet(DEMOS[i]));
    json_t *twice = of_sheet("sheet", page_test_text(once, "sheet"));
    cr_expect_str_eq(page_test_text(once, "sheet"), page_test_text(twice, "sheet"));
    json_decref(once);
    json_decref(twice);
  }
}

Test(page, an_order_that_lacks_the_plan_says_what_is_wanted) {
  json_t *begun = page_test_answer("{\"do\":\"start\",\"kind\":\"bed\"}");
  json_t *order = of_sheet("order", page_test_text(begun, "sheet"));
  cr_expect_str_eq(page_test_text(order, "why"), "faults");
  json_t *given =
      page_test_ask(json_pack("{s:s,s:s,s:[s,s]}", "do", "order", "sheet", page_test_text(begun, "sheet"),
                              "set", "run 1 length=3 m", "block length=400 mm"));
  cr_expect(page_test_ok(given));
  const json_t *blocks = json_array_get(json_object_get(given, "lines"), 0);
  cr_expect_str_eq(page_test_text(blocks, "quantity"), "16 pieces"); /* by hand: 2 courses of 7.5, and 5 % */
  json_decref(given);
  json_decref(order);
  json_decref(begun);
}

/* A question's words, state and picture come through; its answer goes onto the sheet and off it again. */
Test(page, a_question_is_answered_and_the_answer_taken_back) {
  json_t *first = page_test_ask(json_pack("{s:s,s:s}", "do", "questions", "sheet", ""));
  const json_t *asking = json_object_get(first, "asking");
  cr_assert(page_test_ok(first), "%s", page_test_text(first, "text"));
  cr_expect_str_eq(page_test_text(asking, "next"), "kind");
  cr_expect_gt(json_array_size(json_object_get(asking, "questions")), 15);
  json_t *given = page_test_ask(
      json_pack("{s:s,s:s,s:s,s:s}", "do", "answer", "sheet", "", "key", "kind", "answer", "1"));
  cr_expect(strstr(page_test_text(given, "sheet"), "site behind,bed") != NULL);
  json_t *back = page_test_ask(
      json_pack("{s:s,s:s,s:s}", "do", "take-back", "sheet", page_test_text(given, "sheet"), "key", "kind"));
  cr_expect(page_test_ok(back) && strstr(page_test_text(back, "sheet"), "site behind") == NULL);
  json_t *picture = page_test_ask(json_pack("{s:s,s:s,s:i}", "do", "picture", "key", "kind", "choice", 0));
  cr_expect_eq(strncmp(page_test_text(picture, "svg"), "<svg", 4), 0);
  json_decref(picture);
  json_decref(back);
  json_decref(given);
  json_decref(first);
}

Test(page, an_answer_that_is_none_says_what_is_wanted) {
  json_t *reply = page_test_ask(
      json_pack("{s:s,s:s,s:s,s:s}", "do", "answer", "sheet", "", "key", "height", "answer", "very high"));
  cr_expect_str_eq(page_test_text(reply, "why"), "faults");
  cr_expect_str_neq(page_test_text(json_array_get(json_object_get(reply, "faults"), 0), "wanted"), "");
  json_decref(reply);
  expect_refused("{\"do\":\"answer\",\"sheet\":\"\",\"key\":\"colour\",\"answer\":\"1\"}", "bad-request");
  expect_refused("{\"do\":\"questions\"}", "bad-request");
  expect_refused("{\"do\":\"picture\",\"key\":\"kind\",\"choice\":-1}", "bad-request");
  expect_refused("{\"do\":\"picture\",\"key\":\"kind\",\"choice\":99999}", "bad-request");
  expect_refused("{\"do\":\"picture\",\"key\":\"kind\",\"width_mm\":1e300}", "bad-request");
}
