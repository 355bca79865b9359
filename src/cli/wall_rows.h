/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_WALL_ROWS_H
#define LOWWALL_CLI_WALL_ROWS_H

#include "one_wall.h"

/* The walls of a schedule one after the other, for commands that make a page of each. */

/* A row, run: the wall has its result, or faults. gives false when no more are wanted */
typedef bool (*lw_wall_row)(void *context, int row, lw_one_wall *wall);

/* Run each row, the items of the command line over it. The wall's input holds the first block.
 * gives LW_OK, also when no more were wanted · LW_FAULTS of the file or of an item · LW_NO_MEMORY; either is
 * said */
lw_status lw_wall_each_row(const lw_wall_asked *asked, lw_one_wall *wall, lw_wall_row each, void *context);

#endif
