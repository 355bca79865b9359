/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_SAID_H
#define LOWWALL_SHEET_SAID_H

#include "entry.h"

/* Answers in words where a value would stand: `not known`, `more than 3 m`, `less than 3 m`. */

/* What a person writes where the answer is not known. */
bool lw_says_not_known(const char *text, size_t length);

typedef enum lw_bound_word { LW_BOUND_NONE, LW_BOUND_MORE, LW_BOUND_LESS } lw_bound_word;
/* Whether the text begins with such words, and the bytes before the value that they are about. */
lw_bound_word lw_says_bound(const char *text, size_t *before);

/* Remember such an answer, or forget it; false when there is no room. The value itself stays absent. */
bool lw_said_note(const lw_entry *entry, lw_said_kind kind, double si, lw_case *c);
void lw_said_forget(const lw_item *item, int number, lw_case *c);

/* The answer that the case has so of an item; NULL: none, or a value was given since. */
const lw_said *lw_said_of(const lw_item *item, int number, const lw_case *c);
/* "not known", "less than 3 m" */
void lw_said_print(const lw_item *item, const lw_said *said, char *out, size_t size);

/* Forget all answers that count as left out, for whom that is no part of what was given. */
void lw_said_forget_idle(lw_case *c);

/* Of a schedule: a value of a row, out of its bytes, may be such an answer. */
void lw_said_unpacked(const lw_item *item, int number, lw_case *c);

#endif
