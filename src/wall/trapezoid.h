/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_TRAPEZOID_H
#define LOWWALL_WALL_TRAPEZOID_H

#include <lowwall/wall.h>

/* A wall that is no stack of blocks: by its widths and batters, or by its points. */
void lw_section_of_polygon(const lw_case *c, lw_section *section);

#endif
