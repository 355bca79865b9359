/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_SOIL_ON_WALL_H
#define LOWWALL_BALANCE_SOIL_ON_WALL_H

#include <lowwall/checks.h>

/* The weight of soil that stands on heel, steps or a battered back, in front of the plane of the thrust. */
void lw_soil_on_wall(const lw_wall *wall, const lw_ground *ground, const lw_section *section,
                     const lw_back_plane *back, lw_forces *forces);

#endif
