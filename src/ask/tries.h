/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_TRIES_H
#define LOWWALL_ASK_TRIES_H

#include "question.h"

/* Of the questions in wanted, leave those that may still change what is said of the wall. Those with no ends
 * to try stay wanted.
 *  in    scratch   two results to run in
 *  out   wanted    by the index of the question
 *  gives how often the wall was run */
int lw_tries(const lw_tables *tables, const lw_answers *answers, lw_result *scratch,
             bool wanted[LW_QUESTION_ROWS]);

/* The mildest and the gravest answer, as pairs; "" where the question has no ends. */
typedef enum lw_ask_end { LW_END_MILD, LW_END_GRAVE } lw_ask_end;
void lw_question_put_end(const lw_question *question, lw_ask_end end, lw_case *c);
bool lw_question_has_ends(const lw_question *question);

#endif
