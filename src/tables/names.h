/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_NAMES_H
#define LOWWALL_TABLES_NAMES_H

#include <lowwall/tables.h>

/* Where the names of a list stand in memory. */
typedef struct lw_name_list {
  const char *rows;
  size_t row_size;
  int count;
  size_t name_offset, aliases_offset; /* aliases_offset 0: the list has none */
} lw_name_list;

/** The first row with that name, or else with that alias; -1: none. */
int lw_name_index(const lw_tables *tables, const char *list, const char *name);

#endif
