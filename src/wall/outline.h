/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_OUTLINE_H
#define LOWWALL_WALL_OUTLINE_H

#include <lowwall/section.h>

/* Append a corner to the outline unless it stands where the last one does. */
void lw_outline_add(lw_section *section, double x_m, double y_m);
/* The outline of the stack of courses in section->part, cap overhangs left out. */
void lw_outline_of_courses(lw_section *section);

/* A part of known box: a rectangle. */
lw_part lw_part_box(lw_part_kind kind, int number, lw_corner low, lw_corner high,
                    double unit_weight_kn_per_m3);
/* A part that is any polygon. */
lw_part lw_part_polygon(lw_part_kind kind, const lw_corner *corner, int count, double unit_weight_kn_per_m3);

/* A course of blocks that taper to their rear. What stands in the gaps between them weighs fill_kn_per_m3. */
void lw_part_taper(lw_part *part, double tail_share, double fill_kn_per_m3);
/* What bears of the joint below a wall above, and where its contact ends. */
void lw_section_taper(const lw_part *lower, const lw_part *upper, lw_section *above);

/* Crest, rear and back of a section whose outline is there. */
void lw_section_measure(lw_section *section);

void lw_section_of_courses(const lw_case *c, lw_section *section);
void lw_section_of_polygon(const lw_case *c, lw_section *section);

#endif
