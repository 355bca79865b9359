/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_PUT_H
#define LOWWALL_ASK_PUT_H

#include "question.h"

/* An answer being put into the answers so far. */
typedef struct lw_put {
  const lw_asking_for *asking;
  lw_question question;
  lw_answers *answers;
  lw_faults *faults;
} lw_put;

/* Note what is wrong with the answer, the cure printf-like. gives false */
bool lw_put_fault(const lw_put *put, lw_fault_slug slug, const char *stood, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 4, 5)))
#endif
    ;

/* Each pair of a list onto the sheet. */
void lw_put_list(const lw_put *put, const char *list);
/* Take the question's items away, but for what other questions have put there. */
void lw_put_clear(const lw_put *put);
/* All that the question does not know. */
void lw_put_not_known(const lw_put *put);

/* An answer of each kind; false after noting what is wrong. */
bool lw_put_choice(const lw_put *put, const char *answer);
bool lw_put_several(const lw_put *put, const char *answer);
bool lw_put_words(const lw_put *put, const char *answer);

#endif
