/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_ASK_SHOW_H
#define LOWWALL_CLI_ASK_SHOW_H

#include "ask_line.h"

/* The pages. Each ends with what is flushed. */
void lw_ask_show_greeting(lw_ask_session *session);
void lw_ask_show_question(lw_ask_session *session, int question);
void lw_ask_show_why(lw_ask_session *session, int question);
/* The prompt for one measure of a question; false: there are no more. */
bool lw_ask_show_measure(lw_ask_session *session, int question, int measure);
/* What the sheet has for that measure, with its unit; false: nothing. */
bool lw_ask_now(lw_ask_session *session, int question, int measure, char line[LW_ASK_LINE]);
void lw_ask_show_prompt(lw_ask_session *session);
void lw_ask_show_faults(lw_ask_session *session);
void lw_ask_show_so_far(lw_ask_session *session);

#endif
