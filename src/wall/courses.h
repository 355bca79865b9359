/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_COURSES_H
#define LOWWALL_WALL_COURSES_H

#include <lowwall/wall.h>

/* A wall of blocks: its courses and cap, and their outline. */
void lw_section_of_courses(const lw_case *c, const lw_tables *tables, lw_section *section);

/** The wall of only the courses above a joint, with its own toe as origin. Joint 1 is the lowest.
 *  in    section  of courses
 *        joint    1 to course_count - 1
 *  out   above    its contact is the overlap of the two courses, in its own x */
void lw_section_above(const lw_section *section, int joint, lw_section *above);

#endif
