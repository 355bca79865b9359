/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "look.h"

#include "tries.h"

/* Those that this wall does not have are not needed, answered or not, and of those that are open the ones
 * that change nothing. */
static void leave_out(const lw_asking_for *asking, const lw_answers *answers, lw_asked *asked) {
  bool wanted[LW_QUESTION_ROWS] = {false};
  for (int i = 0; i < asked->count; i++) {
    const lw_question question = lw_question_of(asking->tables, i);
    if (!lw_question_fits(&question, answers)) asked->state[i] = LW_ASKED_NOT_NEEDED;
    wanted[i] = asked->state[i] == LW_ASKED_OPEN;
  }
  if (asking->scratch) asked->runs = lw_tries(asking->tables, answers, asking->scratch, wanted);
  for (int i = 0; i < asked->count; i++)
    if (asked->state[i] == LW_ASKED_OPEN && !wanted[i]) asked->state[i] = LW_ASKED_NOT_NEEDED;
}

static void count(const lw_asking_for *asking, lw_asked *asked) {
  for (int i = 0; i < asked->count; i++) {
    bool open = asked->state[i] == LW_ASKED_OPEN,
         first = asking->tables->question[i].part == LW_QUESTION_FIRST;
    if (open && asked->next < 0) asked->next = i;
    asked->left += open && first ? 1 : 0;
    asked->answered +=
        first && (asked->state[i] == LW_ASKED_ANSWERED || asked->state[i] == LW_ASKED_NOT_KNOWN);
  }
}

void lw_look_at(const lw_asking_for *asking, const lw_answers *answers, lw_asked *asked) {
  *asked = (lw_asked){.count = asking->tables->question_count, .next = -1};
  for (int i = 0; i < asked->count; i++) {
    const lw_question question = lw_question_of(asking->tables, i);
    asked->state[i] = lw_question_state(&question, answers);
  }
  leave_out(asking, answers, asked);
  count(asking, asked);
}

lw_status lw_questions_look(const lw_asking_for *asking, lw_asked *asked, lw_faults *faults) {
  lw_answers answers;
  lw_status status = lw_answers_read(asking->sheet, asking->length, &answers, faults);
  if (status == LW_OK) lw_look_at(asking, &answers, asked);
  lw_answers_free(&answers);
  return status;
}
