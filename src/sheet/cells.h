/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_CELLS_H
#define LOWWALL_SHEET_CELLS_H

#include <csv.h>

#include <lowwall/sheet.h>

/* A CSV file as a stream of cells, each with its row and column from 1. Comma, semicolon and tab files;
 * with or without byte-order mark; LF, CR or CR LF. What is no text is noted and handed on as NULL,
 * and text is handed on tamed. */

enum { LW_CELL_MAX = 4096, LW_CELL_STOP = 65536, LW_CELLS_HEAD = 512 };

typedef struct lw_cells {
  void *context;
  /* text is NULL for a cell that has a fault already; else it is NUL-terminated UTF-8 with no NUL inside. */
  void (*cell)(void *context, const char *text, size_t length, int row, int column);
  void (*row_end)(void *context, int row, int cells);
  lw_faults *faults;

  struct csv_parser parser;
  bool comma_is_decimal; /* in a semicolon or tab file */
  bool parsing, stopped;
  int row, column; /* of the last cell */
  int last_end;    /* the character that ended the last row */
  char head[LW_CELLS_HEAD];
  size_t head_length;
} lw_cells;

/* Fill in context, cell, row_end and faults first. */
void lw_cells_open(lw_cells *cells);
void lw_cells_feed(lw_cells *cells, const char *bytes, size_t length);
void lw_cells_finish(lw_cells *cells);
void lw_cells_close(lw_cells *cells);

/* The separator of a file that begins like this: the first `,`, `;` or tab outside quotes; 0: none yet. */
char lw_cells_separator(const char *bytes, size_t length);

#endif
