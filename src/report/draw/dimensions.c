/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stdlib.h>

#include "sketch.h"

/* Dimensions as the trade draws them: a chain with a slash at each end of a length, whole lengths outside of
 * the parts, millimetres without a unit or feet and inches. */

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
    lw_anchor anchor = values_right ? LW_ANCHOR_START : LW_ANCHOR_END;
    lw_xy_mm at = {x_mm + way * 1.3, middle[i] + 0.35 * LW_SMALL_MM};
    lw_amount words = lw_sketch_dimension(s, level_m[i + 1] - level_m[i]);
    lw_drawing_words(s->paper, at, anchor, LW_SMALL_MM, "%s", words.text);
    lw_sketch_take(s, lw_sketch_words_box(words.text, at, anchor));
  }
}

static void level(lw_sketch *s, double y_mm, double from_m, double to_m) {
  lw_xy_mm a = lw_sketch_at(s, from_m, 0.0), b = lw_sketch_at(s, to_m, 0.0);
  lw_xy_mm line[] = {{a.x_mm, y_mm}, {b.x_mm, y_mm}};
  lw_drawing_line(s->paper, LW_PEN_FINE, line, 2);
  lw_sketch_slash(s->paper, line[0]);
  lw_sketch_slash(s->paper, line[1]);
  lw_sketch_label(s, (lw_xy_mm){0.5 * (a.x_mm + b.x_mm), y_mm + 1.2 + 0.8 * LW_SMALL_MM}, LW_ANCHOR_MIDDLE,
                  "%s", lw_sketch_dimension(s, to_m - from_m).text);
}

static void add_level(double *levels, int *count, double level_m) {
  if (*count < LW_DIMENSIONS_MAX && level_m - levels[*count - 1] > 1e-6) levels[(*count)++] = level_m;
}

/* Where bedding, base, ground, cap and top lie, from the bottom up. */
static int levels_of(const lw_sketch *s, double levels[LW_DIMENSIONS_MAX]) {
  const lw_section *section = &s->result->wall.section;
  int count = 1;
  levels[0] = -lw_sketch_under(s);
  add_level(levels, &count, -lw_sketch_bedding(s));
  add_level(levels, &count, 0.0);
  add_level(levels, &count, section->embedment_m);
  if (section->has_cap) add_level(levels, &count, section->height_m - section->cap_height_m);
  add_level(levels, &count, section->height_m);
  return count;
}

double lw_sketch_upright_wide(const lw_sketch *s, const double *level_m, int count) {
  double wide = 0.0;
  for (int i = 0; i + 1 < count; i++) {
    lw_amount words = lw_sketch_dimension(s, level_m[i + 1] - level_m[i]);
    wide = fmax(wide, lw_drawing_text_width(words.text, LW_SMALL_MM));
  }
  return wide;
}

/* Of paper from the chain of the parts to the window; feet and inches take more of it themselves. */
static double inner_mm(const lw_sketch *s) {
  return s->result->units == LW_UNITS_US ? 5.0 : 9.0;
}

/* From the window to the chain of the whole. */
static double outer_mm(const lw_sketch *s, const double *levels, int count) {
  static const double BESIDE_MM = 2.6, LEAST_MM = 9.0;
  return inner_mm(s) + fmax(LEAST_MM, lw_sketch_upright_wide(s, levels, count) + BESIDE_MM);
}

double lw_sketch_dimensions_wide(const lw_sketch *s) {
  static const double INTO_MARGIN_MM = 2.2, LEAST_MM = 24.0;
  double levels[LW_DIMENSIONS_MAX];
  int count = levels_of(s, levels);
  double whole[] = {levels[0], levels[count - 1]};
  return fmax(LEAST_MM, outer_mm(s, levels, count) + lw_sketch_upright_wide(s, whole, 2) - INTO_MARGIN_MM);
}

void lw_sketch_dimensions(lw_sketch *sketch) {
  static const double BELOW_MM = 19.0, NEAR_MM = 8.0;
  double levels[LW_DIMENSIONS_MAX], window = lw_sketch_at(sketch, sketch->left_m, 0.0).x_mm;
  int count = levels_of(sketch, levels);
  double whole[] = {levels[0], levels[count - 1]}, outer = outer_mm(sketch, levels, count);
  lw_sketch_upright(sketch, window - inner_mm(sketch), false, levels, count);
  if (count > 2) lw_sketch_upright(sketch, window - outer, false, whole, 2);
  level(sketch, lw_sketch_at(sketch, 0.0, levels[0]).y_mm + (lw_sketch_presses(sketch) ? BELOW_MM : NEAR_MM),
        0.0, sketch->result->wall.section.base_width_m);
}
