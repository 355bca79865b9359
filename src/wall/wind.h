/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_WIND_H
#define LOWWALL_WALL_WIND_H

#include <lowwall/wall.h>

/* Pressure of the wind on a fence in an exposure, by the row of the table. */
double lw_wind_pressure(const lw_tables *tables, int exposure);

/* The wind that pushes the wall, and nothing where no fence stands. */
void lw_wall_wind_build(const lw_case *c, const lw_tables *tables, lw_wall_wind *wind);

#endif
