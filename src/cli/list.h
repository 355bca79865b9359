/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_LIST_H
#define LOWWALL_CLI_LIST_H

#include "grid.h"

/* A column of the text form: the CSV header it shows, what stands above it, its width. */
typedef struct lw_list_column {
  const char *header, *title;
  int width;
} lw_list_column;

enum { LW_LIST_COLUMNS = 10, LW_LIST_BELOW = 10, LW_LIST_WIDTH = 100 };

typedef struct lw_list {
  const char *name, *about;
  void (*make)(const lw_tables *tables, lw_text *csv); /* NULL: the published table of that name */
  lw_list_column column[LW_LIST_COLUMNS];              /* ends with width 0 */
  lw_list_column below[LW_LIST_BELOW];                 /* lines under a row: header and label; no width */
  const char *numbers;                                 /* of a made list: headers of its numbers, by "|" */
} lw_list;

/* The i-th list, NULL past the last. */
const lw_list *lw_list_at(size_t index);

/* Lists that are no published table, as CSV. */
void lw_list_make_places(const lw_tables *tables, lw_text *csv);
void lw_list_make_methods(const lw_tables *tables, lw_text *csv);
void lw_list_make_items(const lw_tables *tables, lw_text *csv);
void lw_list_make_units(const lw_tables *tables, lw_text *csv);

/* A list as a table of at most LW_LIST_WIDTH columns, and as JSON: an array, an object a row. */
void lw_list_text(const lw_list *list, const lw_grid *grid, lw_text *out);
lw_status lw_list_json(const lw_list *list, const lw_grid *grid, lw_text *out);

#endif
