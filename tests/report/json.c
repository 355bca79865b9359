/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _POSIX_C_SOURCE 200809L
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <locale.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "sheet/faults.h"
#include "every_wall.h"
#include "support.h"

static const char *word(const json_t *object, const char *key) {
  const char *text = json_string_value(json_object_get(object, key));
  return text != NULL ? text : "(none)";
}

/* Functions, because the macros of jansson and those of the tests do not mix. */
static bool is_null(const json_t *value) {
  return value != NULL && json_is_null(value);
}

static bool is_boolean(const json_t *value) {
  return value != NULL && json_is_boolean(value);
}

static bool is_false(const json_t *value) {
  return value != NULL && json_is_false(value);
}

static bool is_reason(const char *slug) {
  for (int i = LW_REASON_NONE + 1; i < LW_REASON_COUNT; i++) {
    if (strcmp(slug, lw_reason_slug((lw_reason)i)) == 0) return true;
  }
  return false;
}

static void null_has_a_reason(void *context, const json_t *parent, const char *path, const json_t *value) {
  int *nulls = context;
  if (!json_is_null(value)) return;
  (*nulls)++;
  cr_expect(is_reason(word(parent, "reason")), "%s is null because of %s", path, word(parent, "reason"));
}

int every_null_has_a_reason(const every_wall *wall) {
  int nulls = 0;
  report_test_walk(wall->json, NULL, "", null_has_a_reason, &nulls);
  return nulls;
}

/* The keys that a program may count on, with the type of each. */
static void has_key(const json_t *object, const char *key, json_type type) {
  const json_t *value = json_object_get(object, key);
  bool truth = type == JSON_TRUE && json_is_boolean(value);
  cr_expect(value != NULL &&
                (truth || json_typeof(value) == type || (type == JSON_REAL && json_is_null(value))),
            "%s is missing or of another type", key);
}

static void has_words(const json_t *object, const char *const *keys) {
  for (size_t i = 0; keys[i] != NULL; i++) has_key(object, keys[i], JSON_STRING);
}

static void check_is_whole(const json_t *check) {
  static const char *const numbers[] = {"demand", "resistance", "has", "needs", "ratio"};
  has_words(check, (const char *const[]){"slug", "at", "unit", "format", "clause", "source", NULL});
  for (size_t i = 0; i < sizeof numbers / sizeof *numbers; i++) has_key(check, numbers[i], JSON_REAL);
  has_key(check, "counts", JSON_TRUE);
  const json_t *holds = json_object_get(check, "holds");
  cr_expect(is_boolean(holds) || is_null(holds));
}

static void situation_is_whole(const json_t *situation) {
  size_t i;
  json_t *check;
  has_words(situation, (const char *const[]){"slug", "kind", "why", NULL});
  has_key(situation, "decides", JSON_TRUE);
  has_key(situation, "base", JSON_OBJECT);
  has_key(situation, "pad", JSON_OBJECT);
  has_key(situation, "joints", JSON_ARRAY);
  cr_expect(json_array_size(json_object_get(situation, "checks")) > 0);
  json_array_foreach(json_object_get(situation, "checks"), i, check) check_is_whole(check);
}

int every_json_is_whole(const every_wall *wall) {
  const json_t *root = wall->json;
  static const char *const lists[] = {"situations", "figures",     "assumptions", "remedies", "worth_asking",
                                      "cautions",   "not_checked", "limits",      "sources"};
  size_t at;
  json_t *situation;
  has_words(root, (const char *const[]){"version", "headline", "title", "mark", NULL});
  has_words(json_object_get(root, "verdict"), (const char *const[]){"what", "stands", "who", NULL});
  has_key(root, "exit", JSON_INTEGER);
  for (size_t i = 0; i < sizeof lists / sizeof *lists; i++) has_key(root, lists[i], JSON_ARRAY);
  for (int i = 0; i < LW_HEIGHT_KINDS; i++) {
    char key[32];
    snprintf(key, sizeof key, "%s_m", lw_height_slug((lw_height_kind)i));
    for (char *c = key; *c != '\0'; c++) *c = *c == '-' ? '_' : *c;
    has_key(json_object_get(root, "heights"), key, JSON_REAL);
  }
  cr_expect(json_array_size(json_object_get(json_object_get(root, "format"), "rows")) > 0);
  json_array_foreach(json_object_get(root, "situations"), at, situation) situation_is_whole(situation);
  return 1;
}

static const json_t *find_check(const json_t *root, const json_t *governing) {
  size_t i, k;
  json_t *situation, *check;
  json_array_foreach(json_object_get(root, "situations"), i, situation) {
    if (strcmp(word(situation, "slug"), word(governing, "situation")) != 0) continue;
    json_array_foreach(json_object_get(situation, "checks"), k, check) {
      bool same = strcmp(word(check, "slug"), word(governing, "check")) == 0;
      if (same && strcmp(word(check, "at"), word(governing, "at")) == 0) return check;
    }
  }
  return NULL;
}

Test(report, the_governing_check_is_one_of_the_checks) {
  json_t *root = report_test_json(report_test_named("would tip"));
  const json_t *check = find_check(root, json_object_get(json_object_get(root, "verdict"), "governing"));
  cr_assert(check != NULL);
  cr_expect(is_false(json_object_get(check, "holds")));
  cr_expect(eq(str, (char *)(size_t)word(check, "reason"), "outside-base"));
  cr_expect(json_number_value(json_object_get(check, "ratio")) < 1e-12);
  json_decref(root);
}

Test(report, where_nothing_governs_the_json_says_null) {
  json_t *root = report_test_json(report_test_named("nothing governs"));
  const json_t *verdict = json_object_get(root, "verdict");
  cr_expect(is_null(json_object_get(verdict, "governing")));
  cr_expect(eq(str, (char *)(size_t)word(verdict, "reason"), "no-demand"));
  json_decref(root);
}

Test(report, without_a_block_depth_no_check_is_shown) {
  size_t i, k;
  json_t *situation, *check, *root = report_test_json(report_test_named("no block depth"));
  json_array_foreach(json_object_get(root, "situations"), i, situation) {
    json_array_foreach(json_object_get(situation, "checks"), k, check) {
      cr_expect(is_null(json_object_get(check, "holds")));
      cr_expect(eq(str, (char *)(size_t)word(check, "reason"), "no-depth"));
    }
  }
  cr_expect(eq(str, (char *)(size_t)word(json_object_get(root, "verdict"), "stands"), "cannot-be-shown"));
  json_decref(root);
}

/* has, needs and ratio of the JSON are those of the result, to the 12 digits printed. */
Test(report, the_numbers_of_the_json_are_those_of_the_result) {
  const lw_result *result = report_test_named("pad");
  json_t *root = report_test_json(result);
  const json_t *situations = json_object_get(root, "situations");
  cr_assert(eq(sz, json_array_size(situations), (size_t)result->situations.count));
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    const json_t *checks = json_object_get(json_array_get(situations, (size_t)i), "checks");
    cr_assert(eq(sz, json_array_size(checks), (size_t)s->check_count));
    for (int k = 0; k < s->check_count; k++) {
      const json_t *has = json_object_get(json_array_get(checks, (size_t)k), "has");
      lw_number kept = lw_situation_check(s, k).has;
      cr_expect(eq(int, json_is_number(has), kept.known));
      double allowed = 1e-11 * fmax(fabs(kept.value), 1.0);
      if (kept.known) cr_expect(fabs(json_number_value(has) - kept.value) <= allowed);
    }
  }
  json_decref(root);
}

Test(report, indent_nought_is_one_line_and_the_same_json) {
  const lw_result *result = report_test_named("ground");
  lw_text one = {0}, again = {0}, many = {0};
  cr_assert(eq(int, lw_report_json(result, 0, &one), LW_OK));
  cr_assert(eq(int, lw_report_json(result, 0, &again), LW_OK));
  cr_assert(eq(int, lw_report_json(result, 2, &many), LW_OK));
  cr_expect(eq(ptr, strchr(one.data, '\n'), one.data + one.length - 1));
  cr_expect(eq(str, one.data, again.data), "the same result gives the same bytes");
  json_t *a = json_loads(one.data, 0, NULL), *b = json_loads(many.data, 0, NULL);
  cr_expect(a != NULL && json_equal(a, b));
  json_decref(a);
  json_decref(b);
  lw_text_free(&one);
  lw_text_free(&again);
  lw_text_free(&many);
}

Test(report, texts_of_the_sheet_are_cleaned_and_escaped) {
  static lw_result result;
  result = *report_test_named("bed");
  snprintf(result.given.about.title.text, sizeof result.given.about.title.text,
           "\"Bed\", \\ of caf\xc3\xa9\xff\xc0\xaf \x1b[31m");
  snprintf(result.given.about.mark.text, sizeof result.given.about.mark.text, "\xed\xa0\x80");
  json_t *root = report_test_json(&result);
  cr_expect(eq(str, (char *)(size_t)word(root, "title"), "\"Bed\", \\ of caf\xc3\xa9??? ?[31m"));
  cr_expect(eq(str, (char *)(size_t)word(root, "mark"), "???"));
  json_decref(root);
}

static bool enter_comma_locale(locale_t *comma) {
  static const char *const names[] = {"de_DE.UTF-8", "de_DE.utf8", "de_DE", "fr_FR.UTF-8", "nl_NL.UTF-8"};
  for (size_t i = 0; i < sizeof names / sizeof *names; i++) {
    *comma = newlocale(LC_ALL_MASK, names[i], (locale_t)0);
    if (*comma == (locale_t)0) continue;
    uselocale(*comma);
    return true;
  }
  return false;
}

Test(report, a_decimal_comma_in_the_hosts_locale_changes_no_json) {
  const lw_result *result = report_test_named("pad");
  lw_text here = {0}, there = {0};
  locale_t comma;
  lw_report_json(result, 0, &here);
  if (!enter_comma_locale(&comma)) cr_skip("no locale with a decimal comma on this system");
  lw_report_json(result, 0, &there);
  uselocale(LC_GLOBAL_LOCALE);
  freelocale(comma);
  cr_expect(eq(str, here.data, there.data));
  lw_text_free(&here);
  lw_text_free(&there);
}

Test(report, faults_as_json) {
  lw_faults faults = {.file = "garden \"x\".csv"};
  lw_text text = {0};
  lw_faults_add(&faults, LW_FAULT_NO_UNIT, (lw_cell_place){3, 2}, "wall height", "900",
                "a length, as in %d mm", 900);
  cr_assert(eq(int, lw_report_faults_json(&faults, 0, &text), LW_OK));
  json_t *root = json_loads(text.data, JSON_REJECT_DUPLICATES, NULL);
  const json_t *fault = json_array_get(json_object_get(root, "faults"), 0);
  cr_expect(eq(int, (int)json_integer_value(json_object_get(root, "exit")), 2));
  cr_expect(eq(str, (char *)(size_t)word(root, "file"), "garden \"x\".csv"));
  cr_expect(eq(str, (char *)(size_t)word(fault, "slug"), "no-unit"));
  cr_expect(eq(str, (char *)(size_t)word(fault, "stood"), "900"));
  cr_expect(eq(str, (char *)(size_t)word(fault, "wanted"), "a length, as in 900 mm"));
  cr_expect(eq(int, (int)json_integer_value(json_object_get(fault, "row")), 3));
  cr_expect(eq(int, (int)json_integer_value(json_object_get(fault, "column")), 2));
  json_decref(root);
  lw_text_free(&text);
}
