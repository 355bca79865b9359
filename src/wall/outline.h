/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_OUTLINE_H
#define LOWWALL_WALL_OUTLINE_H

#include <lowwall/wall.h>

/* Append a corner to the outline unless it stands where the last one does. */
void lw_outline_add(lw_section *section, double x_m, double y_m);
/* The outline of the stack of courses in section->part, cap overhangs left out. */
void lw_outline_of_courses(lw_section *section);

/* A part of known box: a rectangle. */
lw_part lw_part_box(lw_part_kind kind, int number, lw_corner low, lw_corner high,
                    double unit_weight_kn_per_m3);
/* A part that is any polygon. */
lw_part lw_part_polygon(lw_part_kind kind, const lw_corner *corner, int count, double unit_weight_kn_per_m3);

#endif
