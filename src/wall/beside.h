/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_BESIDE_H
#define LOWWALL_WALL_BESIDE_H

#include <lowwall/wall.h>

/* What was told beside the wall: the fence at the back of a bed, the plant, the width of the bed. */
void lw_beside_build(const lw_case *c, const lw_tables *tables, lw_wall *wall);

#endif
