/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <string.h>

#include "../checks/random_wall.h"
#include "../report/slugs.h"
#include "page/core.h"
#include "support.h"

/* What would make it stand comes in slices, and all that the page shows is said to people. */

static json_t *slice_of(const char *sheet, int price) {
  return json_pack("{s:s,s:s,s:i}", "do", "advice", "sheet", sheet, "price", price);
}

/* To its end, slice by slice; gives the last reply. What was found stays. */
static json_t *to_the_end(lw_page_kept *kept, const char *sheet, int price, int *slices) {
  size_t found = 0;
  for (*slices = 1;; ++*slices) {
    json_t *reply = page_test_ask_kept(kept, slice_of(sheet, price));
    size_t now = json_array_size(json_object_get(reply, "remedies"));
    cr_expect_geq(now, found);
    found = now;
    if (json_is_true(json_object_get(reply, "done"))) return reply;
    cr_expect_str_eq(page_test_text(reply, "none"), "");
    cr_assert_lt(*slices, 5000);
    json_decref(reply);
  }
}

Test(page_advised, slices_come_to_what_is_found_at_once) {
  lw_page_kept kept = {.search = NULL};
  char bank[32768], terrace[32768];
  int slices, again;
  lw_print(bank, sizeof bank, "%s", page_test_sheet("docs/demo/bank.csv"));
  lw_print(terrace, sizeof terrace, "%s", page_test_sheet("docs/demo/terrace.csv"));
  json_t *whole = page_test_ask_kept(NULL, json_pack("{s:s,s:s}", "do", "advice", "sheet", bank));
  json_decref(page_test_ask_kept(&kept, slice_of(bank, 30)));
  /* Another sheet takes its place, and this one begins anew. */
  json_t *other = to_the_end(&kept, terrace, 100, &slices);
  json_t *sliced = to_the_end(&kept, bank, 30, &again);
  cr_expect_gt(again, 3);
  cr_expect(json_equal(whole, sliced));
  cr_expect_not(json_equal(other, sliced));
  json_decref(to_the_end(&kept, bank, 30, &slices));
  cr_expect_eq(slices, 1, "what is known is found anew");
  json_decref(whole);
  json_decref(other);
  json_decref(sliced);
  lw_page_forget(&kept);
  cr_expect(kept.search == NULL);
}

/* Under these keys stand names for programs. */
static bool for_programs(const char *key) {
  static const char *const keys[] = {"what",   "stands", "who",  "grade", "answer", "tone",
                                     "handle", "sheet",  "item", "items", "mark",   "title_of_sheet"};
  for (size_t i = 0; i < sizeof keys / sizeof *keys; i++)
    if (strcmp(keys[i], key) == 0) return true;
  return false;
}

static int expect_words(json_t *value, const char *name) {
  const char *key;
  json_t *inner;
  size_t at;
  int held = 0;
  if (json_is_string(value)) {
    const char *slug = slug_in(json_string_value(value));
    cr_expect(slug == NULL, "\"%s\" in \"%s\": %s", slug ? slug : "", json_string_value(value), name);
    return 1;
  }
  json_object_foreach(value, key, inner) held += for_programs(key) ? 0 : expect_words(inner, name);
  json_array_foreach(value, at, inner) held += expect_words(inner, name);
  return held;
}

/* Each mark that the legend explains stands at a figure, so many times. */
static void expect_marks(const json_t *check, const char *name) {
  static const struct {
    char mark;
    const char *begins, *told;
  } MARKS[] = {{'m', "m: from memory", "m: from memory of its source, not read in print (%d)"},
               {'p', "p: our own", "p: our own proposal (%d)"}};
  const json_t *row;
  size_t at;
  for (size_t i = 0; i < sizeof MARKS / sizeof *MARKS; i++) {
    int count = 0;
    char told[80];
    json_array_foreach(json_object_get(check, "checks"), at, row) {
      const char *needs = page_test_text(row, "needs");
      count += needs[0] != '\0' && needs[strlen(needs) - 1] == MARKS[i].mark ? 1 : 0;
    }
    lw_print(told, sizeof told, MARKS[i].told, count);
    const char *legend = page_test_text(check, "legend"), *explained = strstr(legend, MARKS[i].begins);
    cr_expect_eq(explained != NULL, count > 0, "%s: %d of %c, the legend: %s", name, count, MARKS[i].mark,
                 legend);
    cr_expect(!explained || strstr(legend, told) != NULL, "%s: not %s, the legend: %s", name, told, legend);
  }
}

static int hold_wall(dice *d, int number, bool advice) {
  random_wall wall = {.count = 0};
  char name[1600];
  json_t *set = json_array();
  random_wall_make(d, &wall);
  random_wall_hurry(&wall, number);
  random_wall_name(&wall, name, sizeof name);
  for (int i = 0; i < wall.count; i++) json_array_append_new(set, json_string(wall.text[i]));
  json_t *reply = page_test_ask_kept(
      NULL, json_pack("{s:s,s:s,s:o}", "do", advice ? "advice" : "check", "sheet", "", "set", set));
  int held = expect_words(reply, name);
  if (!advice) expect_marks(reply, name);
  json_decref(reply);
  return held;
}

Test(page_advised, no_answer_has_words_for_programs) {
  enum { WALLS = 60 / RANDOM_SHARE, EACH_ADVISED = 12 };
  dice d = {1914};
  int held = 0;
  for (int i = 0; i < WALLS; i++) held += hold_wall(&d, i, i % EACH_ADVISED == 0);
  cr_expect_gt(held, WALLS * 20);
}

Test(page_advised, what_is_wrong_is_told_with_its_cure) {
  json_t *lacks = page_test_ask(json_pack("{s:s,s:s}", "do", "check", "sheet", ""));
  json_t *wrong =
      page_test_ask(json_pack("{s:s,s:s,s:[s]}", "do", "check", "sheet", "", "set", "wall height=tall"));
  const char *told = page_test_text(json_array_get(json_object_get(wrong, "faults"), 0), "told");
  cr_expect(strstr(told, "There stands: tall.") && strstr(told, "Wanted: "), "%s", told);
  cr_expect(strstr(page_test_text(lacks, "lead"), "questions come first") != NULL);
  cr_expect(strstr(page_test_text(wrong, "lead"), "fault") != NULL);
  json_decref(lacks);
  json_decref(wrong);
}
