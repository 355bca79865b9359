/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_TAPER_H
#define LOWWALL_WALL_TAPER_H

#include <lowwall/wall.h>

/* A course of blocks that taper to their rear. What stands in the gaps between them weighs fill_kn_per_m3. */
void lw_part_taper(lw_part *part, double tail_share, double fill_kn_per_m3);
/* What bears of the joint below a wall above, and where its contact ends. */
void lw_section_taper(const lw_part *lower, const lw_part *upper, lw_section *above);

#endif
