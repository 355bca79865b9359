/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_FIND_H
#define LOWWALL_TABLES_FIND_H

#include <stddef.h>

#include <lowwall/tables.h>

/** The index of the first row of a place given by slug or another of its names; -1 when none is on file.
 *  Where commas stand between ("Bristol, England") it is the first place on file that the names behind it
 *  lie around: "Portland, Oregon" is on file, "Portland, Maine" is not. */
int lw_tables_place_row(const lw_tables *tables, const char *place);

enum { LW_PLACE_HINT = 168 };

/** What to write for a place that is not on file: the nearest name, the names in that country, or the
 *  countries. */
const char *lw_tables_place_hint(const lw_tables *tables, const char *stood, char *out, size_t size);

/* Places, each by the index of its first row of tables/limits.csv: the rows that are about a wall are those
 * with at[limit_place[row]]. */
typedef struct lw_places {
  bool at[LW_LIMIT_ROWS];
} lw_places;

/** Add a place and the places around it: a council's wall also meets the state's and the country's rows. The
 *  rows of "default" are about the place "default" only.
 *  in    place_row  of lw_tables_place_row; below 0 none is added */
void lw_tables_add_places(const lw_tables *tables, int place_row, lw_places *places);

/** The first row of a set, or -1. */
int lw_tables_factor_set(const lw_tables *tables, const char *set);

/** The name in a list nearest to what stood there (edit distance over names and aliases), or NULL when
 *  nothing is near. list: "soils", "materials", "interfaces", "plant", "conventions", ... */
const char *lw_tables_nearest(const lw_tables *tables, const char *list, const char *stood);

#endif
