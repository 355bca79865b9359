/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PRECHECK_BLOCKS_H
#define LOWWALL_REPORT_PRECHECK_BLOCKS_H

#include <lowwall/report.h>

#include "base/amount.h"
#include "precheck.h"

/* Who takes the blocks, and what they are about. */
typedef struct lw_blocks {
  const lw_result *result;
  lw_block_taker taker;
  void *context;
} lw_blocks;

/* Lengths as the reader of the page has them. */
lw_amount lw_block_m(const lw_blocks *blocks, double length_m);
/* A load, a weight or a push. */
lw_amount lw_block_amount(const lw_blocks *blocks, lw_kind kind, double si, int decimals);

/* One more of a list, which a semicolon parts from those before it. */
void lw_block_join(char *list, size_t size, const char *words);

/* A block, its words printf-like. */
void lw_block_say(const lw_blocks *blocks, lw_block_kind kind, const char *label, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 4, 5)))
#endif
    ;

#endif
