/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "put.h"

#include <stdarg.h>
#include <string.h>

#include "base/print.h"
#include "sheet/said.h"
#include "tables/find.h"

bool lw_put_fault(const lw_put *put, lw_fault_slug slug, const char *stood, const char *format, ...) {
  char wanted[200];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(wanted, sizeof wanted, format, arguments);
  va_end(arguments);
  lw_faults_add(put->faults, slug, (lw_cell_place){0, 0}, put->question.row->key, stood, "%s", wanted);
  return false;
}

void lw_put_list(const lw_put *put, const char *list) {
  for (lw_ask_walk walk = lw_ask_begin(list); lw_ask_step(&walk);) {
    char value[LW_ANSWER_BYTES];
    lw_answers_set(put->answers, &walk.pair.named, lw_ask_copy(&walk.pair.value, value, sizeof value));
  }
}

static bool another_has(const lw_put *put, const lw_named *named) {
  const lw_tables *tables = put->asking->tables;
  for (int i = 0; i < tables->question_count; i++)
    if (&tables->question[i] != put->question.row && lw_ask_has(tables->question[i].items, named))
      return true;
  return false;
}

/* Is what stands there what a choice of this question writes? */
static bool own(const lw_put *put, const lw_named *named) {
  for (int i = 0; i < put->question.choice_count; i++)
    for (lw_ask_walk walk = lw_ask_begin(put->question.choice[i].writes); lw_ask_step(&walk);)
      if (lw_ask_same(&walk.pair.named, named) && lw_ask_agrees(&walk.pair, put->answers)) return true;
  return false;
}

/* A distance that another question has as near goes back to that. */
static bool back_to_near(const lw_put *put, const lw_named *named) {
  const lw_tables *tables = put->asking->tables;
  for (int i = 0; i < tables->choice_count; i++) {
    const lw_choice_row *choice = &tables->choice[i];
    lw_ask_walk walk = lw_ask_begin(choice->writes);
    if (choice->others[0] == '\0' || strcmp(choice->question, put->question.row->key) == 0) continue;
    if (!lw_ask_step(&walk) || !lw_ask_same(&walk.pair.named, named)) continue;
    lw_put_list(put, choice->writes);
    return true;
  }
  return false;
}

void lw_put_clear(const lw_put *put) {
  for (lw_ask_walk walk = lw_ask_begin(put->question.row->items); lw_ask_step(&walk);) {
    const lw_named *named = &walk.pair.named;
    bool measured = put->question.row->kind == LW_QUESTION_MEASURE;
    if (measured && back_to_near(put, named)) continue;
    if (measured || !another_has(put, named) || own(put, named)) lw_answers_drop(put->answers, named);
  }
  if (put->question.row->kind != LW_QUESTION_MEASURE) return;
  for (int i = 0; i < put->question.choice_count; i++)
    for (lw_ask_walk walk = lw_ask_begin(put->question.choice[i].writes); lw_ask_step(&walk);)
      lw_answers_drop(put->answers, &walk.pair.named);
}

void lw_put_not_known(const lw_put *put) {
  char first[LW_NOTE_MAX];
  const char *list = lw_question_not_known_items(&put->question, first, sizeof first);
  bool all = put->question.row->kind == LW_QUESTION_SEVERAL;
  lw_put_clear(put);
  for (lw_ask_walk walk = lw_ask_begin(all ? put->question.row->items : list); lw_ask_step(&walk);)
    lw_answers_set(put->answers, &walk.pair.named, "not known");
}

/* The row that an answer names, by number or key; -1: none. */
static int row_of(const lw_question *question, const char *answer, size_t length) {
  double number;
  if (lw_number_read(answer, length, &number) && number >= 1.0 && number <= question->choice_count) {
    int row = (int)number;
    return number > row ? -1 : row - 1;
  }
  for (int i = 0; i < question->choice_count; i++)
    if (strlen(question->choice[i].key) == length && memcmp(question->choice[i].key, answer, length) == 0)
      return i;
  return -1;
}

bool lw_put_choice(const lw_put *put, const char *answer) {
  int row = row_of(&put->question, answer, strlen(answer));
  if (row < 0)
    return lw_put_fault(put, LW_FAULT_UNKNOWN_WORD, answer, "a number from 1 to %d%s",
                        put->question.choice_count, put->question.row->not_known[0] ? ", or: not known" : "");
  lw_put_clear(put);
  lw_put_list(put, put->question.choice[row].writes);
  return true;
}

/* What is given more exactly, and agrees, stays. */
static void put_tick(const lw_put *put, const lw_choice_row *choice, lw_tick tick) {
  lw_ask_walk walk = lw_ask_begin(choice->writes);
  if (tick == lw_question_tick(choice, put->answers)) return;
  if (tick == LW_TICK_NOT_KNOWN && lw_ask_step(&walk))
    lw_answers_set(put->answers, &walk.pair.named, "not known");
  else
    lw_put_list(put, tick == LW_TICK_YES ? choice->writes : choice->others);
}

/* Numbers or keys with blanks or commas between; a question mark behind one says that it is not known. */
static bool read_ticks(const lw_put *put, const char *answer, lw_tick *tick) {
  static const char GAPS[] = " ,;\t";
  for (const char *at = answer + strspn(answer, GAPS); *at != '\0'; at += strspn(at, GAPS)) {
    size_t length = strcspn(at, GAPS), name = length;
    bool doubt = at[length - 1] == '?';
    if (doubt) name--;
    int row = row_of(&put->question, at, name);
    if (row < 0)
      return lw_put_fault(put, LW_FAULT_UNKNOWN_WORD, at,
                          "numbers from 1 to %d with blanks between, or: none", put->question.choice_count);
    tick[row] = doubt ? LW_TICK_NOT_KNOWN : LW_TICK_YES;
    at += length;
  }
  return true;
}

bool lw_put_several(const lw_put *put, const char *answer) {
  lw_tick tick[LW_CHOICE_ROWS];
  for (int i = 0; i < put->question.choice_count; i++) tick[i] = LW_TICK_NO;
  bool none = strcmp(answer, "none") == 0 || strcmp(answer, "None") == 0 || strcmp(answer, "0") == 0;
  if (!none && !read_ticks(put, answer, tick)) return false;
  for (int i = 0; i < put->question.choice_count; i++) put_tick(put, &put->question.choice[i], tick[i]);
  return true;
}

/* What lowwall has on file cannot be guessed, so whoever writes a place is told at once. */
static bool is_no_place(const lw_put *put, const lw_named *named, const char *answer) {
  return strcmp(named->item->name, "place") == 0 && !lw_tables_has_place(put->asking->tables, answer);
}

bool lw_put_words(const lw_put *put, const char *answer) {
  lw_ask_walk walk = lw_ask_begin(put->question.row->items);
  char hint[LW_PLACE_HINT];
  if (!lw_ask_step(&walk)) return true;
  if (is_no_place(put, &walk.pair.named, answer))
    return lw_put_fault(put, LW_FAULT_UNKNOWN_ROW, answer, "%s; or: not known",
                        lw_tables_place_hint(put->asking->tables, answer, hint, sizeof hint));
  lw_answers_set(put->answers, &walk.pair.named, answer);
  return true;
}
