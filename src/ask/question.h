/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_QUESTION_H
#define LOWWALL_ASK_QUESTION_H

#include <lowwall/questions.h>

#include "answers.h"
#include "parts.h"

/* One question of the tables with its choices, held against the answers so far. */
typedef struct lw_question {
  const lw_question_row *row;
  const lw_choice_row *choice; /* its first */
  int choice_count;
} lw_question;

lw_question lw_question_of(const lw_tables *tables, int index);

/* What the questions of a part are for; "" of the first. */
const char *lw_question_part_title(lw_question_part part);

/* Whether the wall so far has the question: its `when`. What is left out counts as not known. */
bool lw_question_fits(const lw_question *question, const lw_answers *answers);

/* Answered, not known or open, whether it fits or not. */
lw_asked_state lw_question_state(const lw_question *question, const lw_answers *answers);

/* Whether the sheet says the very same. */
bool lw_ask_agrees(const lw_ask_pair *pair, const lw_answers *answers);
/* The same of all pairs of a list; false for an empty one. */
bool lw_ask_all_agree(const char *list, const lw_answers *answers);

/* The choice that the sheet agrees with, from 0; -1: none. */
int lw_question_chosen(const lw_question *question, const lw_answers *answers);

/* Of several: whether the sheet has it so, not so, or says that it is not known. */
typedef enum lw_tick { LW_TICK_NONE, LW_TICK_YES, LW_TICK_NO, LW_TICK_NOT_KNOWN } lw_tick;
lw_tick lw_question_tick(const lw_choice_row *choice, const lw_answers *answers);

/* What not knowing is written to: the items of counts_as, or the first of its items. */
const char *lw_question_not_known_items(const lw_question *question, char *out, size_t size);

#endif
