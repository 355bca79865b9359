/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_ONE_WALL_H
#define LOWWALL_CLI_ONE_WALL_H

#include <lowwall/result.h>

#include "input.h"
#include "options.h"

/* At most so many options of a command stand for an item. */
enum { LW_OPTION_ITEMS = 2 };

/* What the commands about a wall have in common: a sheet, items that override it, tables of one's own. */
typedef struct lw_wall_asked {
  const char *command; /* "draw": for messages */
  const char *tables, *output;
  const char *sheet; /* NULL: items alone make the wall */
  bool wants_list;   /* a second file is taken, the list */
  const char *list;
  const char *units; /* of --units, or NULL; it is the item of that name */
  int item_count;    /* "wall height=1.2 m"; then those that options stand for */
  char **item;
  int option_item_count;
  char option_item[LW_OPTION_ITEMS][128];
  /* What fills in what was left out; NULL: lw_case_complete. */
  lw_status (*complete)(const lw_tables *tables, lw_case *c, lw_faults *faults);
} lw_wall_asked;

/* Sort what is left of the command line into sheet and items; the items take its place. false after saying
 * what is wrong, also when the output would take the place of the sheet. */
bool lw_wall_take_arguments(const lw_arguments *arguments, lw_wall_asked *asked);

/* An item has a "=" and no "/" before it; a file with "=" in its name can be given as ./NAME. */
bool lw_wall_is_item(const char *argument);

/* One item more, that of an option which was given; NULL: it was not. */
void lw_wall_add_item(lw_wall_asked *asked, const char *name, const char *value);

/* The items one after the other, from 0; NULL past the last. */
const char *lw_wall_item(const lw_wall_asked *asked, int index);

/* The items of the command line into a case, faults noted. */
void lw_wall_override(const lw_wall_asked *asked, lw_case *c, lw_faults *faults);

/* All that one wall needs, too big for a stack. */
typedef struct lw_one_wall {
  lw_tables *tables;
  lw_faults faults;
  lw_input input; /* holds the first block */
  bool many;      /* the sheet is a schedule */
  lw_case c;
  lw_result result, scratch;
} lw_one_wall;

/* The tables, and the sheet as far as it takes to tell one wall from many. gives NULL after saying why, with
 * the exit status to end with; else the wall, to be given up with lw_wall_close */
lw_one_wall *lw_wall_open(const lw_wall_asked *asked, int *exit_status);
void lw_wall_close(lw_one_wall *wall);

/* Fill in what was left out, faults noted. */
void lw_wall_complete(const lw_wall_asked *asked, lw_one_wall *wall);

/* Read the rest and the items, faults noted. gives 0, or after saying why the exit status + 1 */
int lw_wall_read(const lw_wall_asked *asked, lw_one_wall *wall);
/* Read the rest, complete and run. gives 0, or after saying why the exit status + 1 */
int lw_wall_run(const lw_wall_asked *asked, lw_one_wall *wall);

#endif
