/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_GRID_H
#define LOWWALL_REPORT_GRID_H

#include "kept.h"

/* The rows of a table and its columns, found in what was kept of a page. */

enum { LW_GRID_COLUMNS = 24 };

typedef struct lw_grid {
  int columns;
  bool used[LW_GRID_COLUMNS]; /* some row has something there */
  int used_count;
  size_t edge[LW_GRID_COLUMNS]; /* of a table of numbers: where the column ends */
  lw_span rows;                 /* the entries of the table */
} lw_grid;

typedef struct lw_cell {
  lw_span words;
  bool ends; /* below those above it, as a number does */
} lw_cell;

/** The table that begins at the cursor, which goes on behind it. A head after a row begins another table. */
void lw_grid_find(lw_span *cursor, lw_grid *grid);
/** What a row of it has in a column. */
lw_cell lw_grid_cell(const lw_grid *grid, const lw_kept *row, int column);

#endif
