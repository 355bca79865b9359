/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRESSURE_WALL_H
#define LOWWALL_CLI_PRESSURE_WALL_H

#include "pressure_asked.h"

/* The planes behind the wall of a sheet, items from the argument first on over it. gives the exit status */
int lw_pressure_of_wall(int argc, char **argv, int first, const lw_pressure_asked *asked);

#endif
