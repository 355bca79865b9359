/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_ASK_H
#define LOWWALL_CLI_ASK_H

#include <lowwall/questions.h>

#include "say.h"

/* What `lowwall ask` has in hand. */
typedef struct lw_ask_session {
  lw_asking_for asking;
  lw_text sheet;    /* the answers so far */
  const char *file; /* where they are kept */
  bool kept;        /* the file is this command's own: opened by it, or written */
  bool ended;       /* the input has come to its end */
  bool skipped[LW_QUESTION_ROWS];
  int asked_count, asked[4 * LW_QUESTION_ROWS]; /* the questions shown, in their turn */
  lw_asked look;
  lw_faults faults;
} lw_ask_session;

/* What a line means. */
typedef enum lw_ask_heard {
  LW_HEARD_ANSWER,
  LW_HEARD_BACK,
  LW_HEARD_SKIP,
  LW_HEARD_WHY,
  LW_HEARD_STOP,
  LW_HEARD_METRIC,
  LW_HEARD_US,
  LW_HEARD_NOTHING
} lw_ask_heard;

enum { LW_ASK_LINE = 512 };
/* Read a line; its end is as `stop`. line: without blanks around it, what it does not print as `?` */
lw_ask_heard lw_ask_read(lw_ask_session *session, char line[LW_ASK_LINE]);

/* The pages. Each ends with what is flushed. */
void lw_ask_show_greeting(const lw_ask_session *session);
void lw_ask_show_question(const lw_ask_session *session, int question);
void lw_ask_show_why(const lw_ask_session *session, int question);
/* The prompt for one measure of a question; false: there are no more. */
bool lw_ask_show_measure(const lw_ask_session *session, int question, int measure);
/* What the sheet has for that measure, with its unit; false: nothing. */
bool lw_ask_now(const lw_ask_session *session, int question, int measure, char line[LW_ASK_LINE]);
void lw_ask_show_prompt(void);
void lw_ask_show_faults(const lw_ask_session *session);
void lw_ask_show_so_far(const lw_ask_session *session);
/* The first screen of the wall, and what to do next. */
lw_status lw_ask_show_end(lw_ask_session *session, bool stopped);
void lw_ask_say(const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 1, 2)))
#endif
    ;

#endif
