/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_COURSES_H
#define LOWWALL_WALL_COURSES_H

#include <lowwall/section.h>

/* A wall of blocks: its courses and cap, and their outline. */
void lw_section_of_courses(const lw_case *c, const lw_tables *tables, lw_section *section);

#endif
