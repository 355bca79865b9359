/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_WALL_H
#define LOWWALL_WALL_WALL_H

#include <lowwall/wall.h>

/** Site, section and switches of a complete case. */
void lw_wall_build(const lw_case *c, const lw_tables *tables, lw_wall *wall);

#endif
