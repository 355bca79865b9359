/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PRECHECK_PLACE_H
#define LOWWALL_REPORT_PRECHECK_PLACE_H

#include <lowwall/report.h>

#include "precheck.h"

#define LW_BLOCK_MARGIN_MM 11.0
#define LW_BLOCK_LEAST_MM 2.5 /* 7 pt is 2.47 mm: smaller letters are not read, common practice, no source */
enum { LW_BLOCK_COLUMNS_MAX = 2 };

/* Where on the paper the next block goes: the last page, a column of it, a height. */
typedef struct lw_block_flow {
  lw_drawing_pages *pages;
  const lw_result *result;
  lw_drawing section; /* as wide as a column, drawn once */
  lw_error undrawn;   /* or why it could not be */
  double size_mm;     /* of the letters */
  lw_xy_mm paper;     /* its width and height */
  double top_mm;      /* where the columns of this page begin */
  int at_column;
  double y_mm;
  double beside_mm;      /* where the right half of a row of items is free; below 0: nowhere */
  const lw_block *waits; /* a drawing that had no room; NULL: none */
  int table, row;        /* of the block, for those who listen */
  bool failed;           /* out of memory */
} lw_block_flow;

double lw_block_width(const lw_block_flow *flow); /* of a column [mm] */

/** One block, and the flow below it; whoever calls has made room. */
void lw_block_place(lw_block_flow *flow, const lw_block *block);

#endif
