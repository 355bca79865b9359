/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"
#include "report/text/echo.h"
#include "sheet/said.h"

/* The case said back: `given` holds every item that is there with its origin, `assumptions` those that nobody
 * gave, with the question that would settle each. */

static const char *origin_word(const lw_echo *echo) {
  if (echo->worked_out) return "worked-out";
  return echo->origin == LW_TABLE ? "table" : echo->origin == LW_ASSUMED ? "assumed" : "given";
}

static void set_value(json_t *object, const lw_echo *echo) {
  if (echo->item->type == LW_ITEM_QUANTITY)
    lw_json_set_real(object, "value", echo->value);
  else
    lw_json_set_text(object, "value", echo->words);
  lw_json_set_text(object, "unit", echo->unit);
  lw_json_set_text(object, "words", echo->words);
}

static void add_given(void *context, const lw_echo *echo) {
  json_t *object = lw_json_object(context, echo->key);
  set_value(object, echo);
  lw_json_set_text(object, "origin", origin_word(echo));
  bool placed = echo->origin == LW_GIVEN && !echo->worked_out;
  lw_json_set_count(object, "row", placed ? echo->row : 0);
  lw_json_set_count(object, "column", placed ? echo->column : 0);
  if (echo->source[0]) lw_json_set_text(object, "source", echo->source);
}

static void add_assumption(void *context, const lw_echo *echo) {
  if (echo->origin != LW_ASSUMED) return;
  json_t *object = lw_json_entry(context);
  lw_json_set_text(object, "item", echo->name);
  lw_json_set_text(object, "key", echo->key);
  set_value(object, echo);
  lw_json_set_text(object, "origin", origin_word(echo));
  lw_json_set_text(object, "question", echo->item->question);
  lw_json_set_text(object, "source", echo->source);
}

/* What was asked, and answered by no value. */
static void add_not_known(json_t *list, const lw_case *c) {
  for (int i = 0; i < c->told.count; i++) {
    int number;
    char name[LW_ITEM_NAME_MAX], words[80];
    const lw_item *item = lw_item_at_offset(c->told.said[i].offset, &number);
    const lw_said *said = lw_said_of(item, number, c);
    if (!said) continue;
    lw_item_print_name(item, number, name, sizeof name);
    lw_said_print(item, said, words, sizeof words);
    json_t *object = lw_json_entry(list);
    lw_json_set_text(object, "item", name);
    lw_json_set_text(object, "said", words);
  }
}

void lw_json_given(json_t *root, const lw_result *result) {
  add_not_known(lw_json_list(root, "not_known"), &result->given);
  lw_echo_each(result, add_assumption, lw_json_list(root, "assumptions"));
  lw_echo_each(result, add_given, lw_json_object(root, "given"));
}
