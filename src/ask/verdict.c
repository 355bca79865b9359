/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/text/parts.h"
#include "answers.h"
#include "question.h"

/* The answer so far: the three lines that every page begins with, the gravest first. */

static void order_of(const lw_verdict *v, lw_answer order[3]) {
  bool engineer = v->who == LW_WHO_ENGINEER, holds = v->stands == LW_HOLDS;
  order[0] = engineer ? LW_ANSWER_WHO : holds ? LW_ANSWER_WHAT : LW_ANSWER_STANDS;
  order[1] = order[0] == LW_ANSWER_STANDS ? LW_ANSWER_WHO : LW_ANSWER_STANDS;
  order[2] = order[0] == LW_ANSWER_WHAT ? LW_ANSWER_WHO : LW_ANSWER_WHAT;
}

static lw_status say(const lw_asking_for *asking, const lw_case *from, lw_faults *faults, lw_text *out) {
  lw_result *result = &asking->scratch[0];
  lw_answer order[3];
  result->given = *from;
  if (lw_case_complete(asking->tables, &result->given, faults) != LW_OK ||
      lw_run(&result->given, asking->tables, LW_DETAIL_CHECKS, result, NULL) != LW_OK)
    return LW_OK;
  lw_looks_find(result, &asking->scratch[1]);
  order_of(&result->verdict, order);
  const lw_page page = {.out = out, .style = {.columns = LW_SCREEN_COLUMNS}, .units = result->units};
  for (int i = 0; i < 3; i++) lw_text_answer(&page, result, order[i], false);
  return out->failed ? LW_NO_MEMORY : LW_OK;
}

lw_status lw_questions_verdict(const lw_asking_for *asking, lw_text *out) {
  lw_answers answers;
  lw_faults faults = {.count = 0};
  if (!asking->scratch) return LW_NO_SOLUTION;
  lw_status status = lw_answers_read(asking->sheet, asking->length, &answers, &faults);
  if (status == LW_OK) status = say(asking, &answers.c, &faults, out);
  lw_answers_free(&answers);
  return status;
}
