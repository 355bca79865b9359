/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DRAW_PENS_H
#define LOWWALL_REPORT_DRAW_PENS_H

#include <lowwall/report.h>

/* How pens and fills look, whoever writes them. Black on white, so that a copier and a fax keep it. */
typedef struct lw_pen_style {
  double width_mm;
  int dash_count;    /* 0: a whole line */
  double dash_mm[4]; /* drawn, left, drawn, left */
} lw_pen_style;

const lw_pen_style *lw_pen_style_of(lw_pen pen);
/* 0 black to 1 white; means nothing where nothing is filled. */
double lw_fill_grey(lw_fill fill);

#endif
