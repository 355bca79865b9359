/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_NAMES_H
#define LOWWALL_TABLES_NAMES_H

#include <lowwall/tables.h>

#include "known.h"

/* The lists of names inside the tables. */
typedef enum lw_list {
  LW_LIST_SOILS,
  LW_LIST_INTERFACES,
  LW_LIST_MATERIALS,
  LW_LIST_PLANT,
  LW_LIST_CONVENTIONS,
  LW_LIST_LOADS,
  LW_LIST_PLACES,
  LW_LIST_FACTOR_SETS,
  LW_LIST_CONDITIONS,
  LW_LIST_CLEARANCES,
  LW_LIST_THRESHOLDS,
  LW_LIST_FENCES,
  LW_LIST_ORDERING,
  LW_LIST_COUNT
} lw_list;

int lw_list_rows(const lw_tables *tables, lw_list list);
/* The name of a row, and its "|"-separated aliases, "" where a list has none. */
const char *lw_list_name(const lw_tables *tables, lw_list list, int row);
const char *lw_list_aliases(const lw_tables *tables, lw_list list, int row);
/* The list of a table; LW_LIST_COUNT when it has no names. */
lw_list lw_list_called(const char *table);

/* Enter every name as it is written: once, when the tables are read. */
void lw_names_index(lw_tables *tables);
/* The first row whose name is written just so; -1: none. */
int lw_names_exactly(const lw_tables *tables, lw_list list, const char *name);

/* Find the rows that code asks for, once the names are entered. */
void lw_known_link(lw_tables *tables);

/* The list of a row that code asks for, and its unit; NULL: it has none of its own. */
lw_list lw_known_list(lw_known_row row);
const char *lw_known_unit(lw_known_row row);
/* Whether code asks for that row of a list, and the name nearest to it that code asks for, or NULL. */
bool lw_known_is(lw_list list, const char *slug);
const char *lw_known_nearest(lw_list list, const char *slug);
/* The table of a list. */
const char *lw_list_table(lw_list list);

/** The first row with that name, or else with that alias; -1: none. */
int lw_name_index(const lw_tables *tables, lw_list list, const char *name);

#endif
