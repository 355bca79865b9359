/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_TIER_H
#define LOWWALL_WALL_TIER_H

#include <lowwall/wall.h>

/* The other wall, and what it puts on this one's ground: it becomes a load of the site. */
void lw_tier_build(const lw_case *c, const lw_tables *tables, lw_wall *wall);

/* Whether there is ground to slip on, and a bed on a slope. */
void lw_slip_cause_build(const lw_case *c, const lw_tables *tables, lw_wall *wall);

#endif
