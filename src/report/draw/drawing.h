/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DRAW_DRAWING_H
#define LOWWALL_REPORT_DRAW_DRAWING_H

#include <lowwall/report.h>

/** A new group of marks begins. */
void lw_drawing_begin(lw_drawing *drawing, lw_role role);
/** A new cell begins, of a row of a table; each has a number of its own in all of the pages. */
void lw_drawing_begin_cell(lw_drawing *drawing, lw_role role, int table, int row);

/** Add a line through spots, or an area closed through them.
 *  in    spot, count   mm; 2 or more for a line, 3 for an area */
void lw_drawing_line(lw_drawing *drawing, lw_pen pen, const lw_xy_mm *spot, size_t count);
void lw_drawing_area(lw_drawing *drawing, lw_pen pen, lw_fill fill, const lw_xy_mm *spot, size_t count);

/** An arrow from one spot to another with its head at the second. */
void lw_drawing_arrow(lw_drawing *drawing, lw_pen pen, lw_xy_mm from, lw_xy_mm to);

/** Words at a spot, printf-like. Control characters are left out. */
void lw_drawing_words(lw_drawing *drawing, lw_xy_mm at, lw_anchor anchor, double size_mm, const char *format,
                      ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 5, 6)))
#endif
    ;
void lw_drawing_bold(lw_drawing *drawing); /* the words added last */

typedef struct lw_box {
  double left_mm, top_mm, right_mm, bottom_mm;
} lw_box;
/** The box that words may take, on the wide side for any upright sans serif face. */
lw_box lw_drawing_box(const lw_drawing *drawing, const lw_mark *words);

/** How many lines, edges and arrow heads drawn so far go through a box; shading does not count.
 *  in    besides   lines that go through this spot do not count either; NULL: all do */
int lw_drawing_crossings(const lw_drawing *drawing, const lw_box *box, const lw_xy_mm *besides);
/** How many of them a straight line would cross, those through the spot that it begins at not counted. */
int lw_drawing_crossed_by(const lw_drawing *drawing, lw_xy_mm from, lw_xy_mm to);
/** Whether a straight line meets a box. */
bool lw_box_is_met(const lw_box *box, lw_xy_mm from, lw_xy_mm to);

/** Width of a string in such a face, on the wide side. [mm] */
double lw_drawing_text_width(const char *string, double size_mm);

#endif
