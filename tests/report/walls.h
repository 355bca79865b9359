/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_WALLS_H
#define TESTS_REPORT_WALLS_H

#include <lowwall/report.h>

/* A wall run from items "item=value;item=value", remedies and questions too; the same memory each time. */
const lw_result *wall_of(const char *items);

/* Walls of several sorts: courses, sections, with and without pad, cap, water, depth; ends with NULL. */
extern const char *const wall_sorts[];

/* Each report of a wall as text; free with lw_text_free. */
lw_text wall_page(const lw_result *result);
lw_text wall_working(const lw_result *result);
lw_text wall_json(const lw_result *result);

#endif
