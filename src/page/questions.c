/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/questions.h>

#include <stdlib.h>

#include "ask/question.h"
#include "replies.h"

/* The questions: which there are and which is next, an answer put on the sheet or taken off it, the picture
 * of a choice. */

enum { NARROWEST_MM = 10, WIDEST_MM = 120, PICTURE_MM = 40 };

/* As the request says, else as the sheet does; a sheet that cannot be read has its faults told elsewhere. */
static bool measures_in_us(const lw_request *asked) {
  const json_t *us = json_object_get(asked->request, "us"), *sheet = json_object_get(asked->request, "sheet");
  lw_case c = {0};
  lw_faults faults = {.count = 0};
  if (json_is_boolean(us)) return json_is_true(us);
  size_t length = json_string_length(sheet);
  return length > 0 && lw_sheet_read(json_string_value(sheet), length, &c, &faults) == LW_OK &&
         lw_case_units(&c) == LW_UNITS_US;
}

/* The sheet of the request, as the questions take it. */
static lw_status begin(lw_request *asked, lw_asking_for *asking) {
  const json_t *sheet = json_object_get(asked->request, "sheet");
  if (!json_is_string(sheet)) return lw_request_refuse(asked, "sheet: the text of a sheet is wanted");
  *asking = (lw_asking_for){.tables = asked->tables,
                            .sheet = json_string_value(sheet),
                            .length = json_string_length(sheet),
                            .us = measures_in_us(asked)};
  if (asking->length == 0) asking->sheet = NULL;
  return LW_OK;
}

/* How far one is, what each part of the questions is for, and what stands where all is asked. */
static void put_words(json_t *asking) {
  int left = (int)json_integer_value(json_object_get(asking, "left"));
  int answered = (int)json_integer_value(json_object_get(asking, "answered"));
  char progress[96];
  if (left > 0)
    lw_print(progress, sizeof progress, "%d answered, %d at most to go", answered, left);
  else
    lw_print(progress, sizeof progress, "%d answered; nothing more is needed for the answer", answered);
  lw_json_set_text(asking, "progress", progress);
  lw_json_set_text(asking, "end",
                   left > 0 ? "What is left may come later" : "All that the answer needs is asked");
  json_t *titles = lw_json_object(asking, "part_titles");
  lw_json_set_text(titles, "first", lw_question_part_title(LW_QUESTION_FIRST));
  lw_json_set_text(titles, "order", lw_question_part_title(LW_QUESTION_ORDER));
  lw_json_set_text(titles, "officer", lw_question_part_title(LW_QUESTION_OFFICER));
}

/* With a result to run in, so that only those are asked which can still change the answer. */
lw_status lw_reply_questions(lw_request *asked) {
  lw_asking_for asking;
  lw_text text = {0};
  lw_status status = begin(asked, &asking);
  if (status != LW_OK) return status;
  asking.scratch = malloc(2 * sizeof *asking.scratch);
  status = asking.scratch ? lw_questions_json(&asking, &text, &asked->faults) : LW_NO_MEMORY;
  if (status == LW_OK) {
    json_t *asked_for = json_loadb(text.data, text.length, 0, NULL);
    put_words(asked_for);
    lw_json_set_text(asked_for, "units", asking.us ? "us" : "metric");
    lw_json_put(asked->reply, "asking", asked_for);
  }
  free(asking.scratch);
  lw_text_free(&text);
  return status;
}

/* What the sheet becomes; nothing where it stays as it is. */
static lw_status give(lw_request *asked, lw_status status, lw_text *sheet) {
  if (status == LW_OK)
    lw_reply_put(asked->reply, "sheet", sheet);
  else
    lw_text_free(sheet);
  return status;
}

static lw_status known(lw_request *asked, const char *key) {
  if (lw_question_find(asked->tables, key) >= 0) return LW_OK;
  return lw_request_refuse(asked, "key: there is no question \"%.60s\"", key);
}

lw_status lw_reply_answer(lw_request *asked) {
  const char *key = lw_request_text_of(asked, "key"), *answer = lw_request_text_of(asked, "answer");
  lw_asking_for asking;
  lw_text sheet = {0};
  lw_status status = begin(asked, &asking);
  if (status == LW_OK) status = known(asked, key);
  if (status == LW_OK) status = lw_question_answer(&asking, key, answer, &sheet, &asked->faults);
  return give(asked, status, &sheet);
}

lw_status lw_reply_take_back(lw_request *asked) {
  const char *key = lw_request_text_of(asked, "key");
  lw_asking_for asking;
  lw_text sheet = {0};
  lw_status status = begin(asked, &asking);
  if (status == LW_OK) status = known(asked, key);
  if (status == LW_OK) status = lw_question_take_back(&asking, key, &sheet, &asked->faults);
  return give(asked, status, &sheet);
}

lw_status lw_reply_picture(lw_request *asked) {
  const char *key = lw_request_text_of(asked, "key");
  double width_mm = lw_request_number_of(asked, "width_mm", PICTURE_MM);
  double choice = lw_request_number_of(asked, "choice", 0.0);
  lw_drawing drawing = {0};
  lw_text svg = {0};
  lw_status status = known(asked, key);
  if (status != LW_OK) return status;
  if (!(width_mm >= NARROWEST_MM && width_mm <= WIDEST_MM) || !(choice >= 0.0 && choice < LW_CHOICE_ROWS))
    return lw_request_refuse(asked, "choice, from 0, and width_mm, %d to %d, are wanted", NARROWEST_MM,
                             WIDEST_MM);
  status = lw_question_picture(asked->tables, key, (int)choice, width_mm, &drawing);
  if (status == LW_OK) status = lw_drawing_svg(&drawing, &svg);
  lw_drawing_free(&drawing);
  if (status == LW_OK)
    lw_reply_put(asked->reply, "svg", &svg);
  else
    lw_text_free(&svg);
  return status;
}
