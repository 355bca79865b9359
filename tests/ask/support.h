/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_ASK_SUPPORT_H
#define LOWWALL_TESTS_ASK_SUPPORT_H

#include <lowwall/questions.h>

#include "../checks/random_wall.h"
#include "ask/question.h"

/* The built-in tables, and two results to run in, made once a test. */
const lw_tables *ask_tables(void);
lw_result *ask_scratch(void);

/* An interview: the sheet so far. */
typedef struct ask_talk {
  lw_asking_for asking;
  lw_text sheet;
  lw_asked look;
  lw_faults faults;
  int answers; /* that were taken */
} ask_talk;

void ask_begin(ask_talk *talk, bool tries);
void ask_end(ask_talk *talk);
/* Give one answer, and look again; the test fails on one that is refused. */
void ask_answer(ask_talk *talk, const char *key, const char *answer);
/* The same without failing. */
lw_status ask_try(ask_talk *talk, const char *key, const char *answer);
void ask_take_back(ask_talk *talk, const char *key);
lw_asked_state ask_state(const ask_talk *talk, const char *key);
/* The key of the next question, "" at the end. */
const char *ask_next(const ask_talk *talk);
/* A question that is open, by chance; -1: none. */
int ask_pick_open(const ask_talk *talk, dice *d);
/* Whether the sheet has that row, as in "wall height,900,mm,". */
bool ask_has_row(const ask_talk *talk, const char *row);

#endif
