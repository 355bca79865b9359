/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_PICTURE_MARKS_H
#define LOWWALL_ASK_PICTURE_MARKS_H

#include "report/draw/drawing.h"

/* A small picture is a list of things with numbers behind them, "ground 26 26; wall 30 4; person 60 58", on a
 * field 120 wide and 90 high, y up. Things that come later lie on top. */

#define LW_PICTURE_WIDE 120.0
#define LW_PICTURE_HIGH 90.0
enum { LW_PICTURE_NUMBERS = 4 };

typedef struct lw_picture {
  lw_drawing *paper;
  double mm;          /* of one unit of the field */
  double left, right; /* height of the ground at both edges */
} lw_picture;

typedef struct lw_picture_word {
  const char *word;
  int numbers;
  void (*draw)(lw_picture *picture, const double number[LW_PICTURE_NUMBERS]);
} lw_picture_word;

/* Marks by coordinates x, y, x, y ... of the field. */
void lw_picture_line(const lw_picture *picture, lw_pen pen, const double *xy, int spots);
void lw_picture_area(const lw_picture *picture, lw_pen pen, lw_fill fill, const double *xy, int spots);
void lw_picture_box(const lw_picture *picture, lw_fill fill, double left, double bottom, double right,
                    double top);
void lw_picture_ring(const lw_picture *picture, lw_fill fill, double x, double y, double radius);
void lw_picture_arrow(const lw_picture *picture, double x, double y, double to_x, double to_y);
double lw_picture_ground(const lw_picture *picture, double x);

#endif
