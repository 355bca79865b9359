/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRESSURE_WALL_H
#define LOWWALL_CLI_PRESSURE_WALL_H

#include "options.h"
#include "pressure_asked.h"

/* The planes behind the wall of the sheet among the arguments, its items over it. gives the exit status */
int lw_pressure_of_wall(const lw_arguments *arguments, const lw_pressure_asked *asked);

#endif
