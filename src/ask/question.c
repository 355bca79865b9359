/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "question.h"

#include <math.h>
#include <string.h>

#include "sheet/said.h"

int lw_question_find(const lw_tables *tables, const char *key) {
  for (int i = 0; i < tables->question_count; i++)
    if (strcmp(tables->question[i].key, key) == 0) return i;
  return -1;
}

int lw_question_choices(const lw_tables *tables, int question, int *first) {
  const char *key = tables->question[question].key;
  int count = 0;
  *first = 0;
  for (int i = tables->choice_count - 1; i >= 0; i--) {
    if (strcmp(tables->choice[i].question, key) != 0) continue;
    *first = i;
    count++;
  }
  return count;
}

lw_question lw_question_of(const lw_tables *tables, int index) {
  int first, count = lw_question_choices(tables, index, &first);
  return (lw_question){&tables->question[index], &tables->choice[first], count};
}

const char *lw_question_part_title(lw_question_part part) {
  static const char *const titles[] = {[LW_QUESTION_FIRST] = "",
                                       [LW_QUESTION_ORDER] = "For the order",
                                       [LW_QUESTION_OFFICER] = "For the officer, if it goes to the council"};
  return titles[part];
}

/* --- when --- */

static const void *value_of(const lw_named *named, const lw_case *c) {
  return (const char *)c + lw_item_offset(named->item, named->number);
}

static bool is_less(const lw_named *named, const lw_answers *answers) {
  const lw_said *said = lw_said_of(named->item, named->number, &answers->c);
  return said != NULL && said->kind == LW_SAID_LESS;
}

static bool is_told(const lw_named *named, const lw_answers *answers) {
  return lw_answers_value(answers, named) != NULL;
}

static bool is_not_known(const lw_named *named, const lw_answers *answers) {
  const lw_said *said = lw_said_of(named->item, named->number, &answers->c);
  return said != NULL && said->kind == LW_SAID_NOT_KNOWN;
}

/* Near, or as far as somebody has measured; neither far nor not known. */
static bool is_near(const lw_named *named, const lw_answers *answers) {
  const lw_quantity *q = value_of(named, &answers->c);
  bool distance = named->item->type == LW_ITEM_QUANTITY;
  return is_less(named, answers) || (distance && q->origin == LW_GIVEN && q->table_row != LW_MORE_THAN);
}

/* One of the words that a condition lists: `near`, `not known`, or a word of the item. */
static bool is_word(const lw_named *named, const lw_ask_part *word, const lw_answers *answers) {
  char text[LW_ANSWER_BYTES];
  if (lw_ask_is(word, "near")) return is_near(named, answers);
  if (lw_ask_is(word, "not known")) return !is_told(named, answers) || is_not_known(named, answers);
  lw_ask_copy(word, text, sizeof text);
  if (named->item->type != LW_ITEM_CHOICE) return false;
  const lw_choice *choice = value_of(named, &answers->c);
  return choice->origin == LW_GIVEN && choice->value == lw_item_word_value(named->item, text);
}

/* "item=word|word", or with "!=". */
static bool holds(const lw_ask_part *term, const lw_answers *answers) {
  lw_ask_part name = *term, word;
  lw_ask_pair pair;
  char words[LW_NOTE_MAX];
  const char *equals = memchr(term->text, '=', term->length);
  if (!equals) return false;
  bool unlike = equals > term->text && equals[-1] == '!';
  name.length = (size_t)(equals - term->text) - (unlike ? 1 : 0);
  if (!lw_ask_pair_of(&name, &pair)) return false;
  word = (lw_ask_part){equals + 1, term->length - (size_t)(equals + 1 - term->text)};
  lw_ask_copy(&word, words, sizeof words);
  bool any = false;
  for (const char *at = words; !any && lw_ask_next(&at, '|', &word);)
    any = is_word(&pair.named, &word, answers);
  return any != unlike;
}

bool lw_question_fits(const lw_question *question, const lw_answers *answers) {
  lw_ask_part term;
  bool all = true;
  for (const char *at = question->row->when; all && lw_ask_next(&at, ';', &term);)
    all = holds(&term, answers);
  return all;
}

/* --- what the sheet says --- */

static bool same_value(const lw_named *named, const lw_case *a, const lw_case *b) {
  const void *x = value_of(named, a), *y = value_of(named, b);
  const lw_choice *chosen = x, *other = y;
  const lw_quantity *q = x, *r = y;
  if (named->item->type == LW_ITEM_CHOICE)
    return chosen->origin == other->origin && chosen->value == other->value;
  if (named->item->type == LW_ITEM_WORDS)
    return strcmp(((const lw_words *)x)->text, ((const lw_words *)y)->text) == 0;
  return q->origin == r->origin && q->table_row == r->table_row && fabs(q->si - r->si) < 1e-9;
}

/* The case of that one pair; false where it cannot be read. */
static bool read_pair(const lw_ask_pair *pair, lw_case *c) {
  char name[LW_ITEM_NAME_MAX], value[LW_ANSWER_BYTES], typed[LW_ITEM_NAME_MAX + LW_ANSWER_BYTES + 1];
  lw_faults faults = {.count = 0};
  *c = (lw_case){0};
  lw_named_print(&pair->named, name, sizeof name);
  lw_print(typed, sizeof typed, "%s=%s", name, lw_ask_copy(&pair->value, value, sizeof value));
  return lw_sheet_override(typed, 1, c, &faults) == LW_OK;
}

bool lw_ask_agrees(const lw_ask_pair *pair, const lw_answers *answers) {
  lw_case written;
  return is_told(&pair->named, answers) && read_pair(pair, &written) &&
         same_value(&pair->named, &written, &answers->c);
}

bool lw_ask_all_agree(const char *list, const lw_answers *answers) {
  bool all = list[0] != '\0';
  for (lw_ask_walk walk = lw_ask_begin(list); all && lw_ask_step(&walk);)
    all = lw_ask_agrees(&walk.pair, answers);
  return all;
}

/* Where two rows agree, the one that says more. */
int lw_question_chosen(const lw_question *question, const lw_answers *answers) {
  int best = -1, most = 0;
  if (question->row->kind != LW_QUESTION_CHOICE) return -1;
  for (int i = 0; i < question->choice_count; i++) {
    const char *writes = question->choice[i].writes;
    int count = lw_ask_count(writes, ';');
    if (count <= most || !lw_ask_all_agree(writes, answers)) continue;
    best = i;
    most = count;
  }
  return best;
}

/* How a given distance compares with the one of "less than 3 m". */
static lw_tick tick_of_distance(const lw_ask_pair *pair, const lw_answers *answers) {
  lw_case written;
  const lw_quantity *q = value_of(&pair->named, &answers->c);
  if (!read_pair(pair, &written) || written.told.count == 0) return LW_TICK_NONE;
  return q->si < written.told.said[0].si ? LW_TICK_YES : LW_TICK_NO;
}

lw_tick lw_question_tick(const lw_choice_row *choice, const lw_answers *answers) {
  lw_ask_walk walk = lw_ask_begin(choice->writes);
  if (!lw_ask_step(&walk) || !is_told(&walk.pair.named, answers)) return LW_TICK_NONE;
  if (is_not_known(&walk.pair.named, answers)) return LW_TICK_NOT_KNOWN;
  if (is_less(&walk.pair.named, answers)) return LW_TICK_YES;
  if (walk.pair.named.item->near_is_grave) return tick_of_distance(&walk.pair, answers);
  return lw_ask_all_agree(choice->writes, answers) ? LW_TICK_YES : LW_TICK_NO;
}

static lw_asked_state state_of_several(const lw_question *question, const lw_answers *answers) {
  bool known = false;
  for (int i = 0; i < question->choice_count; i++) {
    lw_tick tick = lw_question_tick(&question->choice[i], answers);
    if (tick == LW_TICK_NONE) return LW_ASKED_OPEN;
    known = known || tick != LW_TICK_NOT_KNOWN;
  }
  return known ? LW_ASKED_ANSWERED : LW_ASKED_NOT_KNOWN;
}

const char *lw_question_not_known_items(const lw_question *question, char *out, size_t size) {
  lw_ask_part first = lw_ask_nth(question->row->items, ';', 0);
  if (question->row->counts_as[0] != '\0') return question->row->counts_as;
  return lw_ask_copy(&first, out, size);
}

static bool all_not_known(const lw_question *question, const lw_answers *answers) {
  char first[LW_NOTE_MAX];
  const char *list = lw_question_not_known_items(question, first, sizeof first);
  bool all = true;
  for (lw_ask_walk walk = lw_ask_begin(list); all && lw_ask_step(&walk);)
    all = is_not_known(&walk.pair.named, answers);
  return all;
}

/* A distance that is only known to be near is still to be measured. */
lw_asked_state lw_question_state(const lw_question *question, const lw_answers *answers) {
  lw_ask_walk walk = lw_ask_begin(question->row->items);
  if (question->row->kind == LW_QUESTION_SEVERAL) return state_of_several(question, answers);
  if (lw_question_chosen(question, answers) >= 0) return LW_ASKED_ANSWERED;
  if (all_not_known(question, answers)) return LW_ASKED_NOT_KNOWN;
  bool told = lw_ask_step(&walk) && is_told(&walk.pair.named, answers);
  return told && !is_less(&walk.pair.named, answers) ? LW_ASKED_ANSWERED : LW_ASKED_OPEN;
}
