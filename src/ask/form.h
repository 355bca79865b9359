/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_FORM_H
#define LOWWALL_ASK_FORM_H

#include <lowwall/questions.h>

#include "question.h"

/* The questions as pages to fill in with a pencil: one list of lines, of which paper and HTML are made. */

typedef enum lw_form_kind {
  LW_FORM_TITLE,
  LW_FORM_WORDS,
  LW_FORM_QUESTION, /* label: its number; words; of: which walls have it, "" all */
  LW_FORM_BOX,      /* a box to tick, and words */
  LW_FORM_LINE,     /* words, a line to write on, and label: the units to ring */
  LW_FORM_STEP,     /* label: its number; words: one step of a test by hand */
  LW_FORM_SKETCH,   /* words, and room to draw */
  LW_FORM_PART      /* words: what follows is a part of its own, each in a column of the last page */
} lw_form_kind;

typedef struct lw_form_line {
  lw_form_kind kind;
  const char *label, *words, *of;
} lw_form_line;

typedef void (*lw_form_taker)(void *context, const lw_form_line *line);
void lw_form_each(const lw_tables *tables, lw_form_units units, lw_form_taker taker, void *context);

/* Which walls have a question, in words; "" all of them, NULL: its `when` has no words yet. */
const char *lw_form_when(const char *when);

#endif
