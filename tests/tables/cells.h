/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_TABLES_CELLS_H
#define TESTS_TABLES_CELLS_H

#include <lowwall/tables.h>

/* Each cell of a table is changed by a notable factor, and something must come of it. */

/* What comes of the tables for one row, appended. The row is asked for as the built-in table names it. */
typedef void (*cells_look)(const lw_tables *tables, int row, lw_text *out);

/* A column and what shows that it is used; NULL: it is printed, by `lowwall list` and beside what it is the
 * source or the note of. silent: so many of its cells may show nothing; the reason stands beside the list. */
typedef struct cells_column {
  const char *header;
  cells_look look;
  int silent;
} cells_column;

/** Every column of the table must be told of, in its order; the list ends with a header that is NULL. */
void cells_expect(const char *table, const cells_column *columns);

/** The built-in tables. */
const lw_tables *cells_built_in(void);

/* What is shown of a wall. */
enum {
  CELLS_CHECKS = 1,   /* each check of each situation */
  CELLS_VERDICT = 2,  /* the answers, the reasons, the limits, the cautions */
  CELLS_TEXT = 4,     /* the report */
  CELLS_REMEDIES = 8, /* sought before it */
  CELLS_ORDER = 16,   /* the pages of the order and of the pegs */
  CELLS_JSON = 32,
  CELLS_LIKELY = 64 /* each check by likely values */
};
/** A wall of "item=value;item=value" run with these tables, and what is shown of it; its faults, where it
 *  has some. Appended. */
void cells_wall(const lw_tables *tables, const char *items, unsigned shown, lw_text *out);

#endif
