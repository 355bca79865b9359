/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_GRID_H
#define LOWWALL_CLI_GRID_H

#include <lowwall/tables.h>

/* A table as rows of cells, the header being row 0: what `lowwall list` prints in each of its forms. */
typedef struct lw_grid {
  int rows, columns;
  char **cell; /* row by row */
} lw_grid;

/* Read CSV text that is known to be sound. gives LW_OK · LW_FAULTS · LW_NO_MEMORY; free it either way */
lw_status lw_grid_read(const lw_text *csv, lw_grid *grid);
void lw_grid_free(lw_grid *grid);

/* A cell, "" when the row is short. */
const char *lw_grid_at(const lw_grid *grid, int row, int column);
/* The column of that header, or -1. */
int lw_grid_column(const lw_grid *grid, const char *header);
/* Take a row out. */
void lw_grid_remove(lw_grid *grid, int row);

/* One cell of CSV, in quotation marks where it needs them. */
void lw_grid_add_cell(lw_text *out, const char *cell);
void lw_grid_csv(const lw_grid *grid, lw_text *out);

#endif
