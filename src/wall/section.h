/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_SECTION_H
#define LOWWALL_WALL_SECTION_H

#include <lowwall/wall.h>

/** The section of a complete case; geometry that does not close was a fault before.
 *  in    c        complete
 *        tables   of a wall of courses: what the concrete of a filled hollow block weighs; a solid section
 *                 takes nothing from them, and NULL will do
 *  out   section */
void lw_section_build(const lw_case *c, const lw_tables *tables, lw_section *section);

/** The weight of a section [kN/m], and its moment about the toe [kN m/m]. */
double lw_section_weight(const lw_section *section);
double lw_section_moment(const lw_section *section);

#endif
