/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "measures.h"
#include "sheet/said.h"

/* One answer more, or one less. */

enum { ANSWER_BYTES = 600 };

/* Of the faults found since: items that are still missing are no fault of this answer, the others are named
 * by its question. gives whether any is left */
static bool contradicts(const lw_put *put, int before) {
  lw_faults *faults = put->faults;
  int kept = before;
  for (int i = before; i < faults->count; i++) {
    lw_fault fault = faults->fault[i];
    if (fault.slug == LW_FAULT_MISSING_ITEM) continue;
    lw_print(fault.wanted, sizeof fault.wanted, "%s%s%s", faults->fault[i].item, fault.item[0] ? ": " : "",
             faults->fault[i].wanted);
    lw_print(fault.item, sizeof fault.item, "%s", put->question.row->key);
    fault.row = fault.column = 0;
    faults->fault[kept++] = fault;
  }
  faults->count = kept;
  return kept > before;
}

/* Does the wall contradict itself, the plan of its order too? */
static lw_status hold(const lw_put *put) {
  lw_case c = put->answers->c;
  int before = put->faults->count;
  if (lw_case_complete(put->asking->tables, &c, put->faults) == LW_OK &&
      c.order.run[0].length.origin == LW_GIVEN)
    lw_case_complete_order(put->asking->tables, &c, put->faults);
  return contradicts(put, before) ? LW_FAULTS : LW_OK;
}

typedef struct fitting {
  bool question[LW_QUESTION_ROWS];
} fitting;

static fitting fitting_of(const lw_put *put) {
  fitting fits = {{false}};
  for (int i = 0; i < put->asking->tables->question_count; i++) {
    const lw_question question = lw_question_of(put->asking->tables, i);
    fits.question[i] = lw_question_fits(&question, put->answers);
  }
  return fits;
}

/* Answers to what the wall does not have any more go with it. gives whether any went */
static bool drop_orphans(const lw_put *put, const fitting *before) {
  const lw_tables *tables = put->asking->tables;
  const fitting after = fitting_of(put);
  int count = put->answers->count;
  for (int i = 0; i < tables->question_count; i++) {
    if (&tables->question[i] == put->question.row || !before->question[i] || after.question[i]) continue;
    for (lw_ask_walk walk = lw_ask_begin(tables->question[i].items); lw_ask_step(&walk);)
      if (!lw_ask_has(put->question.row->items, &walk.pair.named))
        lw_answers_drop(put->answers, &walk.pair.named);
  }
  return put->answers->count < count;
}

/* The sheet as it is now, and read again so that the case is the one of its rows. */
static lw_status write_again(const lw_put *put, lw_text *sheet) {
  int before = put->faults->count;
  lw_text_clear(sheet);
  lw_status status = lw_answers_write(put->answers, sheet);
  if (status != LW_OK) return status;
  lw_answers_free(put->answers);
  status = lw_answers_read(sheet->data, sheet->length, put->answers, put->faults);
  if (status == LW_FAULTS) contradicts(put, before);
  return status;
}

static bool put_answer(const lw_put *put, const char *answer) {
  bool doubt = lw_says_not_known(answer, strlen(answer));
  if (doubt && put->question.row->not_known[0] == '\0')
    return lw_put_fault(put, LW_FAULT_NO_VALUE, answer, "an answer; or skip the question");
  if (answer[0] == '\0') return lw_put_fault(put, LW_FAULT_NO_VALUE, "", "an answer; or skip the question");
  if (doubt) {
    lw_put_not_known(put);
    return true;
  }
  switch (put->question.row->kind) {
  case LW_QUESTION_CHOICE: return lw_put_choice(put, answer);
  case LW_QUESTION_SEVERAL: return lw_put_several(put, answer);
  case LW_QUESTION_MEASURE: return lw_put_measures(put, answer);
  case LW_QUESTION_WORDS: break;
  }
  return lw_put_words(put, answer);
}

/* Feet and inches that were chosen stand on the sheet, so that all that is made of it is said in them. */
static void put_units(const lw_put *put) {
  lw_named named = {.number = 0};
  named.item = lw_item_find("units", strlen("units"), &named.number);
  const char *now = lw_answers_value(put->answers, &named);
  bool us = now && strcmp(now, "us") == 0;
  if (us != put->asking->us && (now || put->asking->us))
    lw_answers_set(put->answers, &named, put->asking->us ? "us" : "metric");
}

/* answer NULL: take it back. */
static lw_status change(const lw_put *put, const char *answer, lw_text *sheet) {
  const fitting before = fitting_of(put);
  if (!answer)
    lw_put_clear(put);
  else if (!put_answer(put, answer))
    return LW_FAULTS;
  if (answer) put_units(put);
  lw_status status = write_again(put, sheet);
  if (status == LW_OK && drop_orphans(put, &before)) status = write_again(put, sheet);
  return status == LW_OK ? hold(put) : status;
}

/* Blanks around the answer left out. */
static bool trim(const char *answer, char *out, size_t size) {
  answer += strspn(answer, " \t\r\n");
  size_t length = strlen(answer);
  while (length > 0 && strchr(" \t\r\n", answer[length - 1])) length--;
  if (length >= size) return false;
  memcpy(out, answer, length);
  out[length] = '\0';
  return true;
}

static lw_status begin(const lw_asking_for *asking, const char *key, const char *answer, lw_text *sheet,
                       lw_faults *faults) {
  lw_answers answers = {.count = 0};
  lw_put put = {.asking = asking, .answers = &answers, .faults = faults};
  char typed[ANSWER_BYTES];
  int index = lw_question_find(asking->tables, key);
  if (index < 0) {
    lw_faults_add(faults, LW_FAULT_UNKNOWN_ROW, (lw_cell_place){0, 0}, "", key,
                  "the key of a question, as `lowwall list questions` has it");
    return LW_FAULTS;
  }
  put.question = lw_question_of(asking->tables, index);
  if (answer && !trim(answer, typed, sizeof typed)) {
    lw_put_fault(&put, LW_FAULT_CELL_TOO_LONG, "", "at most %d bytes", ANSWER_BYTES - 1);
    return LW_FAULTS;
  }
  lw_text made = {0};
  lw_status status = lw_answers_read(asking->sheet, asking->length, &answers, faults);
  if (status == LW_OK) status = change(&put, answer ? typed : NULL, &made);
  if (status == LW_OK) lw_text_add_bytes(sheet, made.data, made.length);
  lw_text_free(&made);
  lw_answers_free(&answers);
  return status == LW_OK && sheet->failed ? LW_NO_MEMORY : status;
}

lw_status lw_question_answer(const lw_asking_for *asking, const char *key, const char *answer, lw_text *sheet,
                             lw_faults *faults) {
  return begin(asking, key, answer, sheet, faults);
}

lw_status lw_question_take_back(const lw_asking_for *asking, const char *key, lw_text *sheet,
                                lw_faults *faults) {
  return begin(asking, key, NULL, sheet, faults);
}
