/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "base/canned.h"
#include "report/json/set.h"
#include "look.h"

/* All that a page or a form shows of the questions. */

static const char *state_word(lw_asked_state state) {
  static const char *const words[LW_ASKED_STATES] = {"open", "answered", "not-known", "not-needed"};
  return words[state];
}

static lw_units units_of(const lw_asking_for *asking) {
  return asking->us ? LW_UNITS_US : LW_UNITS_METRIC;
}

/* In the units of who is asked. */
static void set_words(json_t *object, const lw_asking_for *asking, const char *key, const char *words) {
  char said[LW_HAND_TEST_MAX];
  lw_json_set_text(object, key, lw_canned_told(units_of(asking), words, said, sizeof said));
}

static void set_part(json_t *object, const lw_asking_for *asking, const char *key, const lw_ask_part *part) {
  char text[LW_HAND_TEST_MAX];
  set_words(object, asking, key, lw_ask_copy(part, text, sizeof text));
}

static void add_steps(json_t *question, const lw_asking_for *asking, const char *steps) {
  json_t *list = lw_json_list(question, "hand_test");
  lw_ask_part step;
  for (const char *at = steps; lw_ask_next(&at, '|', &step);)
    set_part(lw_json_entry(list), asking, "step", &step);
}

/* What stands there, its unit behind it. */
static void set_answer(json_t *object, const lw_answers *answers, const lw_named *named) {
  const char *value = lw_answers_value(answers, named), *unit = lw_answers_unit(answers, named);
  char text[2 * LW_ANSWER_BYTES];
  lw_print(text, sizeof text, "%s%s%s", value ? value : "", value && unit[0] ? " " : "", value ? unit : "");
  lw_json_set_text(object, "answer", text);
}

/* One a part of the question's items: the first item stands for those that take the same value. */
static void add_measures(json_t *object, const lw_asking_for *asking, const lw_question_row *row,
                         const lw_answers *answers) {
  json_t *list = lw_json_list(object, "measures");
  bool fields = row->kind == LW_QUESTION_MEASURE || row->kind == LW_QUESTION_WORDS;
  int last = -1;
  for (lw_ask_walk walk = lw_ask_begin(row->items); fields && lw_ask_step(&walk);) {
    char name[LW_ITEM_NAME_MAX];
    if (walk.index == last) continue;
    last = walk.index;
    json_t *measure = lw_json_entry(list);
    const lw_ask_part label = lw_ask_nth(row->labels, ';', last),
                      unit = lw_ask_nth(asking->us ? row->us_units : row->units, ';', last);
    lw_named_print(&walk.pair.named, name, sizeof name);
    lw_json_set_text(measure, "item", name);
    set_part(measure, asking, "label", &label);
    set_part(measure, asking, "unit", &unit);
    lw_json_set_text(measure, "example", walk.pair.named.item->example);
    set_answer(measure, answers, &walk.pair.named);
  }
}

static void add_choices(json_t *object, const lw_asking_for *asking, const lw_question *question,
                        const lw_answers *answers) {
  static const char *const ticks[] = {"", "yes", "no", "not-known"};
  json_t *list = lw_json_list(object, "choices");
  int chosen = lw_question_chosen(question, answers);
  bool several = question->row->kind == LW_QUESTION_SEVERAL;
  if (question->row->kind == LW_QUESTION_MEASURE) return;
  for (int i = 0; i < question->choice_count; i++) {
    const lw_choice_row *choice = &question->choice[i];
    lw_tick tick = several ? lw_question_tick(choice, answers) : i == chosen ? LW_TICK_YES : LW_TICK_NONE;
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "key", choice->key);
    set_words(entry, asking, "words", choice->words);
    lw_json_set_flag(entry, "picture", choice->picture[0] != '\0');
    lw_json_set_text(entry, "chosen", ticks[tick]);
  }
}

static void add_items(json_t *object, const char *items) {
  json_t *list = lw_json_list(object, "items");
  for (lw_ask_walk walk = lw_ask_begin(items); lw_ask_step(&walk);) {
    char name[LW_ITEM_NAME_MAX];
    lw_named_print(&walk.pair.named, name, sizeof name);
    lw_json_set_text(lw_json_entry(list), "item", name);
  }
}

static void add_question(json_t *list, const lw_asking_for *asking, int index, const lw_answers *answers,
                         lw_asked_state state) {
  static const char *const parts[] = {"first", "order", "officer"}, *const kinds[] = {"choice", "several",
                                                                                      "measure", "words"};
  const lw_question question = lw_question_of(asking->tables, index);
  const lw_question_row *row = question.row;
  json_t *object = lw_json_entry(list);
  lw_json_set_text(object, "key", row->key);
  lw_json_set_text(object, "part", parts[row->part]);
  lw_json_set_text(object, "kind", kinds[row->kind]);
  lw_json_set_text(object, "state", state_word(state));
  set_words(object, asking, "words", row->words);
  set_words(object, asking, "why", row->why);
  set_words(object, asking, "not_known", row->not_known);
  lw_json_set_text(object, "source", row->from.source);
  lw_json_set_text(object, "seen", lw_seen_word(row->from.seen));
  add_items(object, row->items);
  add_measures(object, asking, row, answers);
  add_choices(object, asking, &question, answers);
  add_steps(object, asking, row->hand_test);
}

static void add_places(json_t *root, const lw_tables *tables) {
  json_t *list = lw_json_list(root, "places");
  for (int i = 0; i < tables->limit_count; i++) {
    const lw_limit_row *row = &tables->limit[i];
    if (row->place_row == i && strcmp(row->place, "default") != 0)
      lw_json_set_text(lw_json_entry(list), "place", row->place);
  }
}

lw_status lw_questions_json(const lw_asking_for *asking, lw_text *out, lw_faults *faults) {
  enum { INDENT = 2 };
  lw_answers answers;
  lw_asked asked;
  lw_status status = lw_answers_read(asking->sheet, asking->length, &answers, faults);
  if (status == LW_OK) {
    json_t *root = json_object();
    lw_look_at(asking, &answers, &asked);
    lw_json_set_text(root, "next", asked.next < 0 ? "" : asking->tables->question[asked.next].key);
    lw_json_set_count(root, "left", asked.left);
    lw_json_set_count(root, "answered", asked.answered);
    json_t *list = lw_json_list(root, "questions");
    for (int i = 0; i < asked.count; i++) add_question(list, asking, i, &answers, asked.state[i]);
    add_places(root, asking->tables);
    status = lw_json_write(root, INDENT, out);
  }
  lw_answers_free(&answers);
  return status;
}
