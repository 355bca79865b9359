/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_ROWS_H
#define LOWWALL_ORDER_ROWS_H

#include "laying.h"

/* A row of a course, its ends and end pieces, no units yet. The whole stretch, steps left aside. */
lw_laid lw_row_whole(const lw_laying *laying, const lw_stretch *stretch, int course);
/* All rows of the order; LW_TOO_MANY when there is no room for them. */
lw_status lw_rows_build(const lw_laying *laying);
/* The face of a course that stands clear of the ground at steps, in units of laying. */
double lw_rows_face(const lw_laying *laying, int course);

#endif
