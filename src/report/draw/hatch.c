/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hatch.h"

#include <lowwall/report.h>

#include <math.h>
#include <stdlib.h>

#include "drawing.h"

/* Hatching by drafting convention, made of plain lines, so that every file format shows the same.
 * common practice, no source */

enum { CROSSINGS = 64 };

typedef struct span {
  double from, to;
} span;

static int by_value(const void *a, const void *b) {
  double x = *(const double *)a, y = *(const double *)b;
  return x < y ? -1 : x > y ? 1 : 0;
}

/* Where the line `along * t + across * at` lies inside the area: t of each stretch, in pairs. The line is
 * turned to the level by the frame (c, s). */
static int inside(const lw_xy_mm *spot, size_t count, double c, double s, double at, double *t) {
  int crossings = 0;
  for (size_t i = 0; i < count; i++) {
    lw_xy_mm a = spot[i], b = spot[(i + 1) % count];
    double ya = c * a.y_mm - s * a.x_mm, yb = c * b.y_mm - s * b.x_mm;
    if ((ya > at) == (yb > at) || crossings == CROSSINGS) continue;
    double share = (at - ya) / (yb - ya);
    double x = a.x_mm + share * (b.x_mm - a.x_mm), y = a.y_mm + share * (b.y_mm - a.y_mm);
    t[crossings++] = c * x + s * y;
  }
  qsort(t, (size_t)crossings, sizeof *t, by_value);
  return crossings;
}

static span across(const lw_xy_mm *spot, size_t count, double c, double s) {
  span all = {INFINITY, -INFINITY};
  for (size_t i = 0; i < count; i++) {
    double at = c * spot[i].y_mm - s * spot[i].x_mm;
    all.from = fmin(all.from, at);
    all.to = fmax(all.to, at);
  }
  return all;
}

/* A dash pattern along a hatch line: drawn for `on`, left for `off`, begun at a phase of its own. */
typedef struct dashes {
  double on_mm, off_mm, phase_mm;
} dashes;

typedef struct grid {
  double c, s; /* direction of the lines */
  double gap_mm;
} grid;

static void stretch(lw_drawing *d, const grid *g, double at, double from, double to) {
  lw_xy_mm line[] = {{g->c * from - g->s * at, g->s * from + g->c * at},
                     {g->c * to - g->s * at, g->s * to + g->c * at}};
  if (to - from > 0.05) lw_drawing_line(d, LW_PEN_FINE, line, 2);
}

static void dashed(lw_drawing *d, const grid *g, const dashes *dash, double at, span along) {
  double period = dash->on_mm + dash->off_mm;
  if (dash->off_mm <= 0.0) {
    stretch(d, g, at, along.from, along.to);
    return;
  }
  for (double t = floor((along.from - dash->phase_mm) / period) * period + dash->phase_mm; t < along.to;
       t += period)
    stretch(d, g, at, fmax(t, along.from), fmin(t + dash->on_mm, along.to));
}

/* Every line of the grid that crosses the area; the phase moves on from line to line. */
static void lines(lw_drawing *d, const grid *g, dashes dash, const lw_xy_mm *spot, size_t count) {
  double t[CROSSINGS], shift = dash.phase_mm;
  span all = across(spot, count, g->c, g->s);
  for (double k = ceil(all.from / g->gap_mm); k * g->gap_mm < all.to; k++) {
    double at = k * g->gap_mm;
    int crossings = inside(spot, count, g->c, g->s, at, t);
    dash.phase_mm = shift * k;
    for (int i = 0; i + 1 < crossings; i += 2) dashed(d, g, &dash, at, (span){t[i], t[i + 1]});
  }
}

/* Open pebbles, the rows shifted against each other. */
static void pebbles(lw_drawing *d, const lw_xy_mm *spot, size_t count) {
  static const double ROW_MM = 1.9, APART_MM = 2.4, WIDE_MM = 0.75, HIGH_MM = 0.5;
  double t[CROSSINGS];
  span all = across(spot, count, 1.0, 0.0);
  int row = 0;
  for (double y = ceil(all.from / ROW_MM) * ROW_MM; y < all.to - HIGH_MM; y += ROW_MM, row++) {
    int crossings = y > all.from + HIGH_MM ? inside(spot, count, 1.0, 0.0, y, t) : 0;
    for (int i = 0; i + 1 < crossings; i += 2) {
      double first = (ceil(t[i] / APART_MM) + (row % 2 ? 0.5 : 0.0)) * APART_MM;
      for (double x = first; x < t[i + 1] - WIDE_MM; x += APART_MM) {
        lw_xy_mm pebble[] = {{x - WIDE_MM, y},
                             {x - 0.3 * WIDE_MM, y - HIGH_MM},
                             {x + 0.7 * WIDE_MM, y - 0.7 * HIGH_MM},
                             {x + WIDE_MM, y + 0.2 * HIGH_MM},
                             {x + 0.1 * WIDE_MM, y + HIGH_MM}};
        if (x > t[i] + WIDE_MM) lw_drawing_area(d, LW_PEN_FINE, LW_FILL_NONE, pebble, 5);
      }
    }
  }
}

/* So close that the thinnest band has a row of dots. */
static void sand(lw_drawing *d, const lw_xy_mm *spot, size_t count) {
  static const double GAP_MM = 0.8;
  span all = across(spot, count, 1.0, 0.0);
  grid level = {1.0, 0.0, fmin(GAP_MM, 0.5 * (all.to - all.from))};
  if (level.gap_mm > 0.01) lines(d, &level, (dashes){0.3, 0.8, 0.47}, spot, count);
}

void lw_drawing_hatch(lw_drawing *drawing, lw_hatch hatch, const lw_xy_mm *spot, size_t count) {
  static const double DIAGONAL = 0.70710678118654752;
  grid rising = {DIAGONAL, -DIAGONAL, 1.6}, falling = {DIAGONAL, DIAGONAL, 2.2}, level = {1.0, 0.0, 1.7};
  size_t first = drawing->mark_count;
  switch (hatch) {
  case LW_HATCH_BLOCK: lines(drawing, &rising, (dashes){0}, spot, count); break;
  case LW_HATCH_PAD:
    rising.gap_mm = falling.gap_mm;
    lines(drawing, &rising, (dashes){0}, spot, count);
    lines(drawing, &falling, (dashes){0}, spot, count);
    break;
  case LW_HATCH_EARTH:
    rising.gap_mm = 0.9;
    lines(drawing, &rising, (dashes){3.0, 4.5, 2.5}, spot, count);
    break;
  case LW_HATCH_FILL: lines(drawing, &level, (dashes){0.35, 3.1, 1.9}, spot, count); break;
  case LW_HATCH_SAND: sand(drawing, spot, count); break;
  case LW_HATCH_HALF:
    level.gap_mm = 0.9;
    lines(drawing, &level, (dashes){0}, spot, count);
    break;
  case LW_HATCH_STONE: pebbles(drawing, spot, count); break;
  default: break;
  }
  for (size_t i = first; i < drawing->mark_count; i++) drawing->mark[i].shading = true;
}
