/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PRECHECK_LIST_H
#define LOWWALL_REPORT_PRECHECK_LIST_H

#include "precheck.h"

/* The blocks kept, for who must see the next one before it places one. */
typedef struct lw_block_list {
  size_t count, room;
  lw_block *block;
  lw_text words;
  bool failed; /* out of memory */
} lw_block_list;

/** gives LW_OK · LW_NO_MEMORY; to be freed either way */
lw_status lw_block_list_make(const lw_result *result, const char *hash, lw_block_list *list);
void lw_block_list_free(lw_block_list *list);

/** The last block that must stand in one column with block `at`: a heading with what it heads, a table of
 *  checks whole, the last heading with all below it. Any other block stands alone. */
size_t lw_block_list_last(const lw_block_list *list, size_t at);

/** Whether two blocks are rows of one table. */
bool lw_block_list_same_table(const lw_block *a, const lw_block *b);

#endif
