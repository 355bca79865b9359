/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stdlib.h>

#include "base/print.h"
#include "sketch.h"

/* Dimensions as the trade draws them: a chain with a slash at each end of a length, whole lengths outside of
 * the parts, millimetres without a unit. */

void lw_sketch_slash(lw_drawing *paper, lw_xy_mm at) {
  lw_xy_mm line[] = {{at.x_mm - 0.9, at.y_mm + 0.9}, {at.x_mm + 0.9, at.y_mm - 0.9}};
  lw_drawing_line(paper, LW_PEN_SEEN, line, 2);
}

/* The values beside an upright chain, moved apart where its parts are short. */
static void spread(double *y, int count) {
  static const double APART_MM = 3.0;
  for (int i = 1; i < count; i++)
    if (y[i - 1] - y[i] < APART_MM) y[i] = y[i - 1] - APART_MM;
}

/* levels from the bottom up */
void lw_sketch_upright(lw_sketch *s, double x_mm, bool values_right, const double *level_m, int count) {
  double way = values_right ? 1.0 : -1.0, middle[LW_DIMENSIONS_MAX];
  lw_xy_mm line[] = {{x_mm, lw_sketch_at(s, 0.0, level_m[0]).y_mm},
                     {x_mm, lw_sketch_at(s, 0.0, level_m[count - 1]).y_mm}};
  lw_drawing_line(s->paper, LW_PEN_FINE, line, 2);
  for (int i = 0; i < count; i++)
    lw_sketch_slash(s->paper, (lw_xy_mm){x_mm, lw_sketch_at(s, 0.0, level_m[i]).y_mm});
  for (int i = 0; i + 1 < count; i++)
    middle[i] = lw_sketch_at(s, 0.0, 0.5 * (level_m[i] + level_m[i + 1])).y_mm;
  spread(middle, count - 1);
  for (int i = 0; i + 1 < count; i++) {
    double y = lw_sketch_at(s, 0.0, 0.5 * (level_m[i] + level_m[i + 1])).y_mm;
    lw_xy_mm leader[] = {{x_mm, y}, {x_mm + way * 1.0, middle[i]}};
    if (fabs(y - middle[i]) > 0.3) lw_drawing_line(s->paper, LW_PEN_FINE, leader, 2);
    char words[32];
    lw_anchor anchor = values_right ? LW_ANCHOR_START : LW_ANCHOR_END;
    lw_xy_mm at = {x_mm + way * 1.3, middle[i] + 0.35 * LW_SMALL_MM};
    lw_print(words, sizeof words, "%.0f", (level_m[i + 1] - level_m[i]) * 1000.0);
    lw_drawing_words(s->paper, at, anchor, LW_SMALL_MM, "%s", words);
    lw_sketch_take(s, lw_sketch_words_box(words, at, anchor));
  }
}

static void level(lw_sketch *s, double y_mm, double from_m, double to_m) {
  lw_xy_mm a = lw_sketch_at(s, from_m, 0.0), b = lw_sketch_at(s, to_m, 0.0);
  lw_xy_mm line[] = {{a.x_mm, y_mm}, {b.x_mm, y_mm}};
  lw_drawing_line(s->paper, LW_PEN_FINE, line, 2);
  lw_sketch_slash(s->paper, line[0]);
  lw_sketch_slash(s->paper, line[1]);
  lw_sketch_label(s, (lw_xy_mm){0.5 * (a.x_mm + b.x_mm), y_mm + 1.2 + 0.8 * LW_SMALL_MM}, LW_ANCHOR_MIDDLE,
                  "%.0f", (to_m - from_m) * 1000.0);
}

static void add_level(double *levels, int *count, double level_m) {
  if (*count < LW_DIMENSIONS_MAX && level_m - levels[*count - 1] > 1e-6) levels[(*count)++] = level_m;
}

void lw_sketch_dimensions(lw_sketch *sketch) {
  static const double INNER_MM = 9.0, OUTER_MM = 18.0, BELOW_MM = 19.0, NEAR_MM = 8.0;
  const lw_wall *w = &sketch->result->wall;
  const lw_section *section = &w->section;
  double pad = lw_sketch_under(sketch), window = lw_sketch_at(sketch, sketch->left_m, 0.0).x_mm;
  double levels[LW_DIMENSIONS_MAX] = {-pad};
  int count = 1;
  add_level(levels, &count, -lw_sketch_bedding(sketch));
  add_level(levels, &count, 0.0);
  add_level(levels, &count, section->embedment_m);
  if (section->has_cap) add_level(levels, &count, section->height_m - section->cap_height_m);
  add_level(levels, &count, section->height_m);
  lw_sketch_upright(sketch, window + INNER_MM - OUTER_MM, false, levels, count);
  double whole[] = {-pad, section->height_m};
  if (count > 2) lw_sketch_upright(sketch, window - OUTER_MM, false, whole, 2);
  level(sketch, lw_sketch_at(sketch, 0.0, -pad).y_mm + (lw_sketch_presses(sketch) ? BELOW_MM : NEAR_MM), 0.0,
        section->base_width_m);
}
