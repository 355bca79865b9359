/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_HANDBOOK_WALL_ROWS_H
#define LOWWALL_TESTS_HANDBOOK_WALL_ROWS_H

#include <lowwall/result.h>

#include "rows.h"

/* Rows of tests/handbook/walls.csv: one printed number of a whole wall. The wall is a sheet of the folder
 * walls/, run as a user would run it; `inputs` are further items in force for this row ("load 1 kind=none;
 * ..."). `solve` asks for a limit: "wall height=2..5 m until heel pressure=0 kPa", and after a semicolon a
 * second unknown that is found for each trial of the first. */
typedef struct wall_row {
  case_row row;
  char sheet[CASE_CELL_MAX], solve[CASE_CELL_MAX], situation[CASE_CELL_MAX], where[CASE_CELL_MAX];
} wall_row;

/* Where on a wall a number is looked for. */
typedef struct wall_place {
  const lw_result *result;
  const lw_situation *situation;
  const lw_free_body *body;
  lw_at at;
  int joint;
} wall_place;

/* A number of a result by its name in the column `quantity`; false when there is no such name. */
bool wall_quantity(const wall_place *place, const char *name, double *value);

/* Hand on every row of walls.csv with what the library makes of it; gives the count. */
int wall_each(const char *file, case_taker taker, void *context);

/* Ours for one row, in the row's unit. */
case_outcome wall_row_run(const wall_row *row, double *value);

/* What one unit is in SI; 1 for a pure number, 0 for a unit that does not exist. */
double wall_unit(const char *name);

#endif
