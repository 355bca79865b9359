/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_ANSWERS_H
#define LOWWALL_ASK_ANSWERS_H

#include "sheet/entry.h"

/* The answers so far: the rows of an upright sheet as they were typed, and the case that they make. */

enum { LW_ANSWERS_MAX = 384, LW_ANSWER_BYTES = 160 };

typedef struct lw_answer_row {
  lw_named named;             /* its item is NULL: a remark */
  unsigned value, unit, note; /* where each begins in the text */
} lw_answer_row;

typedef struct lw_answers {
  lw_case c; /* as read, not complete */
  lw_text text;
  int count;
  bool too_many;
  lw_answer_row row[LW_ANSWERS_MAX];
} lw_answers;

/* Read a sheet, NULL or empty for none; lw_answers_free ends it whatever comes back.
 * gives LW_OK · LW_FAULTS · LW_NO_MEMORY */
lw_status lw_answers_read(const char *sheet, size_t length, lw_answers *answers, lw_faults *faults);
void lw_answers_free(lw_answers *answers);

/* What stands there, "900" or "900 mm"; NULL: the sheet does not have the item. */
const char *lw_answers_value(const lw_answers *answers, const lw_named *named);
const char *lw_answers_unit(const lw_answers *answers, const lw_named *named);

/* Put an answer in place of what stood there, its note kept, or take it away. A plain number goes beside its
 * unit; the case is not changed. */
void lw_answers_set(lw_answers *answers, const lw_named *named, const char *value);
void lw_answers_drop(lw_answers *answers, const lw_named *named);

/* The sheet again: remarks first, then the items in the order of the vocabulary; without any row nothing.
 * gives LW_OK · LW_NO_MEMORY */
lw_status lw_answers_write(const lw_answers *answers, lw_text *out);

#endif
