/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRECHECK_H
#define LOWWALL_PRECHECK_H

#include <lowwall/drawing.h>

LW_PUBLIC_BEGIN

/* The pre-check sheet: two pages an officer can file, and rerun. It is one list of blocks; HTML and paper are
 * made of the same list. */

typedef enum lw_block_kind {
  LW_BLOCK_WHO,        /* who must sign: always the first */
  LW_BLOCK_HEADING,
  LW_BLOCK_FACT,       /* a label and words */
  LW_BLOCK_ITEM,       /* an item of the sheet and its value: the label is a longer one */
  LW_BLOCK_WORDS,      /* a paragraph */
  LW_BLOCK_COLUMNS,    /* what the columns of the checks that follow are called */
  LW_BLOCK_CHECK,      /* label, words has · needs · outcome in columns */
  LW_BLOCK_SECTION,    /* the drawing stands here */
  LW_BLOCK_LINE        /* a label and room to write */
} lw_block_kind;

typedef struct lw_block {
  lw_block_kind kind;
  const char *label, *words;
  const char *has, *needs;   /* of a check, and of its columns */
  bool strong;               /* it falls short, cannot be shown, or is not checked */
} lw_block;

typedef void (*lw_block_taker)(void *context, const lw_block *block);

/** Every block of the sheet in its order.
 *  in    hash   of lw_precheck_hash: printed at the end */
void lw_precheck_each(const lw_result *result, const char *hash, lw_block_taker taker, void *context);

/** What tells whether a sheet, the tables in effect and the program are the ones a pre-check was made of.
 *  in    c           settled: what was given counts, not how or in which order it was written
 *        directory   as for lw_tables_read
 *  out   hex
 *  gives LW_OK · LW_NO_MEMORY · as lw_tables_csv */
lw_status lw_precheck_hash(const lw_case *c, const char *directory, char hex[LW_HASH_HEX], lw_error *error);

/** The sheet as one HTML page with the drawing inside; it asks for nothing from elsewhere. */
lw_status lw_precheck_html(const lw_result *result, const char *hash, lw_text *out);

typedef enum lw_paper { LW_PAPER_A4, LW_PAPER_LETTER } lw_paper;
enum { LW_PRECHECK_PAGES = 2 };

/** The sheet on paper, two pages at most.
 *  out   page    as many as count says; each to be freed by the caller
 *        count
 *  gives LW_OK · LW_NO_MEMORY · LW_TOO_MANY when two pages do not hold it even in the smallest letters */
lw_status lw_precheck_pages(const lw_result *result, const char *hash, lw_paper paper,
                            lw_drawing page[LW_PRECHECK_PAGES], int *count, lw_error *error);

LW_PUBLIC_END

#endif
