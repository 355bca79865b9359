/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_DOUBT_H
#define LOWWALL_WALL_DOUBT_H

#include <lowwall/wall.h>

/* What is not known, or not good, of the ground that the wall stands on and slips through. The section must
 * be there. */
void lw_doubt_build(const lw_case *c, const lw_tables *tables, lw_wall *wall);

#endif
