/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PRECHECK_PRECHECK_H
#define LOWWALL_REPORT_PRECHECK_PRECHECK_H

#include <lowwall/report.h>

typedef enum lw_block_kind {
  LW_BLOCK_WHO,      /* who must see it: always the first */
  LW_BLOCK_HEADLINE, /* the verdict's, below it */
  LW_BLOCK_HEADING,
  LW_BLOCK_FACT,     /* a label and words */
  LW_BLOCK_ITEM,     /* an item of the sheet and its value: the label is a longer one */
  LW_BLOCK_WORDS,    /* a paragraph */
  LW_BLOCK_COLUMNS,  /* what the columns of the checks that follow are called */
  LW_BLOCK_CHECK,    /* label, words has · needs · outcome in columns */
  LW_BLOCK_SECTION,  /* the drawing stands here */
  LW_BLOCK_LINE,     /* a label and room to write */
  LW_BLOCK_HALF_LINE /* the same for a few letters: two in a row */
} lw_block_kind;

typedef struct lw_block {
  lw_block_kind kind;
  const char *label, *words;
  const char *has, *needs; /* of a check, and of its columns */
  bool strong;             /* it falls short, cannot be shown, or is not checked */
} lw_block;

typedef void (*lw_block_taker)(void *context, const lw_block *block);

/** Every block of the sheet in its order.
 *  in    hash   of lw_precheck_hash: printed at the end */
void lw_precheck_each(const lw_result *result, const char *hash, lw_block_taker taker, void *context);

#endif
