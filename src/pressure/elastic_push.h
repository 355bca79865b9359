/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_ELASTIC_PUSH_H
#define LOWWALL_PRESSURE_ELASTIC_PUSH_H

#include <lowwall/lateral.h>

/** The push of loads along a thrust of that direction: as long as their level push is there.
 *  in    angle_rad   of the thrust, from the horizontal   rad   any; at a right angle it is held to 1e-9
 *  gives kN/m */
double lw_elastic_along(const lw_elastic *elastic, double angle_rad);

#endif
