/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What a page is given: every key is documented, and says what the sheet says. */
#include "../sheet/support.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <jansson.h>

#include <stdio.h>
#include <string.h>

static json_t *json_of(ask_talk *talk) {
  lw_text text = {0};
  cr_assert(lw_questions_json(&talk->asking, &text, &talk->faults) == LW_OK);
  json_t *root = json_loads(text.data, 0, NULL);
  cr_assert(root != NULL);
  lw_text_free(&text);
  return root;
}

/* Each key of the value, under its path, stands in the document. */
static int expect_told(const char *document, const char *path, json_t *value) {
  const char *key;
  json_t *member;
  size_t index;
  int told = 0;
  json_array_foreach(value, index, member) {
    char below[120];
    snprintf(below, sizeof below, "%s[]", path);
    told += expect_told(document, below, member);
  }
  json_object_foreach(value, key, member) {
    char below[120], cell[140];
    snprintf(below, sizeof below, "%s%s%s", path, path[0] ? "." : "", key);
    snprintf(cell, sizeof cell, "| `%s%s` |", below, json_is_array(member) ? "[]" : "");
    cr_expect(strstr(document, cell) != NULL, "docs/questions.md: no %s", cell);
    told += 1 + expect_told(document, below, member);
  }
  return told;
}

static json_t *question(json_t *root, const char *key) {
  size_t index;
  json_t *one;
  json_array_foreach(json_object_get(root, "questions"), index, one) {
    if (strcmp(json_string_value(json_object_get(one, "key")), key) == 0) return one;
  }
  cr_assert(false, "%s", key);
  return NULL;
}

static const char *text_at(json_t *object, const char *key) {
  const char *text = json_string_value(json_object_get(object, key));
  return text ? text : "(none)";
}

static json_t *nth(json_t *object, const char *list, size_t n) {
  return json_array_get(json_object_get(object, list), n);
}

Test(ask_json, every_key_is_documented_and_every_documented_key_is_there) {
  ask_talk talk;
  lw_text document = sheet_test_file("docs/questions.md");
  ask_begin(&talk, false);
  ask_answer(&talk, "near", "boundary 2?");
  json_t *root = json_of(&talk);
  cr_expect(lt(int, 1000, expect_told(document.data, "", root)));
  json_decref(root);
  lw_text_free(&document);
  ask_end(&talk);
}

Test(ask_json, it_says_what_the_sheet_says) {
  ask_talk talk;
  ask_begin(&talk, false);
  ask_answer(&talk, "kind", "bank");
  ask_answer(&talk, "height", "0.9 m; not known");
  ask_answer(&talk, "near", "boundary building?");
  ask_answer(&talk, "ground", "not known");
  json_t *root = json_of(&talk);
  cr_expect_str_eq(text_at(question(root, "kind"), "state"), "answered");
  cr_expect_str_eq(text_at(nth(question(root, "kind"), "choices", 4), "chosen"), "yes");
  cr_expect_str_eq(text_at(nth(question(root, "kind"), "choices", 0), "chosen"), "");
  cr_expect_str_eq(text_at(nth(question(root, "height"), "measures", 0), "answer"), "0.9 m");
  cr_expect_str_eq(text_at(nth(question(root, "height"), "measures", 1), "answer"), "not known");
  cr_expect_str_eq(text_at(nth(question(root, "height"), "measures", 0), "unit"), "mm");
  cr_expect_str_eq(text_at(nth(question(root, "near"), "choices", 0), "chosen"), "yes");
  cr_expect_str_eq(text_at(nth(question(root, "near"), "choices", 1), "chosen"), "not-known");
  cr_expect_str_eq(text_at(nth(question(root, "near"), "choices", 2), "chosen"), "no");
  cr_expect_str_eq(text_at(question(root, "ground"), "state"), "not-known");
  cr_expect_str_eq(text_at(question(root, "bed-soil"), "state"), "not-needed");
  cr_expect_str_eq(text_at(root, "next"), ask_next(&talk));
  cr_expect(eq(int, (int)json_integer_value(json_object_get(root, "left")), talk.look.left));
  json_decref(root);
  ask_end(&talk);
}

Test(ask_json, the_answer_so_far_is_three_lines_and_the_gravest_comes_first) {
  ask_talk talk;
  lw_text out = {0};
  ask_begin(&talk, true);
  cr_expect(lw_questions_verdict(&talk.asking, &out) == LW_OK && out.length == 0, "nothing is known yet");
  ask_answer(&talk, "height", "400");
  ask_answer(&talk, "block", "200;500;400;");
  ask_answer(&talk, "land", "cracks");
  cr_assert(lw_questions_verdict(&talk.asking, &out) == LW_OK);
  const char *who = strstr(out.data, "  Who answers"), *stands = strstr(out.data, "  Does it stand"),
             *what = strstr(out.data, "  What it is");
  cr_assert(who && stands && what, "%s", out.data);
  cr_expect(who < stands && stands < what && strstr(who, "licensed engineer"), "%s", out.data);
  lw_text_free(&out);
  ask_end(&talk);
}
