/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_ONE_WALL_H
#define LOWWALL_CLI_ONE_WALL_H

#include <lowwall/result.h>

#include "input.h"

/* What the commands about one wall have in common: a sheet, items that override it, tables of one's own. */
typedef struct lw_wall_asked {
  const char *command;             /* "draw": for messages */
  const char *tables, *output;
  const char *sheet;               /* NULL: items alone make the wall */
  int item_count;
  char **item;                     /* "wall height=1.2 m" */
} lw_wall_asked;

/* Sort what is left of the command line into sheet and items; the items take its place.
 * in    first   the index in argv of what is left
 * false after saying what is wrong */
bool lw_wall_take_arguments(int argc, char **argv, int first, lw_wall_asked *asked);

/* Would the output take the place of the sheet it is made from? */
bool lw_wall_eats_its_sheet(const lw_wall_asked *asked);

/* All that one wall needs, too big for a stack. */
typedef struct lw_one_wall {
  lw_tables *tables;
  lw_faults faults;
  lw_input input;
  lw_case c;
  lw_result result, scratch;
} lw_one_wall;

/* Read, settle and run. gives NULL after saying why, with the exit status to end with; else the wall, to be
 * given up with lw_wall_free */
lw_one_wall *lw_wall_run(const lw_wall_asked *asked, int *exit_status);
void lw_wall_free(lw_one_wall *wall);

#endif
