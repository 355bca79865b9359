/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

const lw_tables *ask_tables(void) {
  static lw_tables tables;
  static bool read;
  lw_error error = {0};
  if (!read) cr_assert(lw_tables_read(NULL, &tables, &error) == LW_OK, "%s", error.text);
  read = true;
  return &tables;
}

lw_result *ask_scratch(void) {
  static lw_result scratch[2];
  return scratch;
}

static void look(ask_talk *talk) {
  talk->asking.sheet = talk->sheet.data;
  talk->asking.length = talk->sheet.length;
  talk->faults.count = 0;
  cr_assert(lw_questions_look(&talk->asking, &talk->look, &talk->faults) == LW_OK, "%s", talk->sheet.data);
}

void ask_begin(ask_talk *talk, bool tries) {
  *talk = (ask_talk){.asking = {.tables = ask_tables(), .scratch = tries ? ask_scratch() : NULL}};
  look(talk);
}

void ask_end(ask_talk *talk) {
  lw_text_free(&talk->sheet);
}

static lw_status change(ask_talk *talk, const char *key, const char *answer) {
  lw_text sheet = {0};
  talk->faults.count = 0;
  lw_status status = answer ? lw_question_answer(&talk->asking, key, answer, &sheet, &talk->faults)
                            : lw_question_take_back(&talk->asking, key, &sheet, &talk->faults);
  if (status != LW_OK) {
    cr_expect(sheet.length == 0, "%s=%s left something", key, answer);
    lw_text_free(&sheet);
    return status;
  }
  lw_text_free(&talk->sheet);
  talk->sheet = sheet;
  look(talk);
  return status;
}

lw_status ask_try(ask_talk *talk, const char *key, const char *answer) {
  return change(talk, key, answer);
}

void ask_answer(ask_talk *talk, const char *key, const char *answer) {
  lw_status status = change(talk, key, answer);
  talk->answers++;
  cr_assert(status == LW_OK, "%s=%s: %s; %s\n%s", key, answer, talk->faults.fault[0].stood,
            talk->faults.fault[0].wanted, talk->sheet.data ? talk->sheet.data : "");
}

void ask_take_back(ask_talk *talk, const char *key) {
  lw_status status = change(talk, key, NULL);
  cr_assert(status == LW_OK, "%s: %s", key, talk->faults.fault[0].wanted);
}

lw_asked_state ask_state(const ask_talk *talk, const char *key) {
  int index = lw_question_find(talk->asking.tables, key);
  cr_assert(index >= 0, "%s", key);
  return talk->look.state[index];
}

const char *ask_next(const ask_talk *talk) {
  return talk->look.next < 0 ? "" : talk->asking.tables->question[talk->look.next].key;
}

int ask_pick_open(const ask_talk *talk, dice *d) {
  int open[LW_QUESTION_ROWS], count = 0;
  for (int i = 0; i < talk->look.count; i++)
    if (talk->look.state[i] == LW_ASKED_OPEN) open[count++] = i;
  return count > 0 ? open[dice_pick(d, count)] : -1;
}

bool ask_has_row(const ask_talk *talk, const char *row) {
  size_t length = strlen(row);
  for (const char *at = talk->sheet.data; at && *at; at = strchr(at, '\n') ? strchr(at, '\n') + 1 : NULL)
    if (strncmp(at, row, length) == 0) return true;
  return false;
}
