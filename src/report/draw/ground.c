/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/print.h"
#include "wall/measure.h"
#include "hatch.h"
#include "sketch.h"

/* What the wall stands in: the ground in front and behind, stone, layers and water. */

static const double EARTH_BAND_MM = 3.2;

/* Where the ground behind bends or leaves the window: two or three corners. */
static int ground_line(const lw_sketch *s, lw_xy_mm *spot) {
  const lw_back_plane *back = &s->situation->base.back;
  double bend = back->ground_x_m + s->result->wall.site.slope_run_m;
  int count = 0;
  spot[count++] = lw_sketch_at(s, back->ground_x_m, back->ground_y_m);
  if (bend > back->ground_x_m && bend < s->right_m)
    spot[count++] = lw_sketch_at(s, bend, lw_sketch_ground_behind(s, bend));
  spot[count++] = lw_sketch_at(s, s->right_m, lw_sketch_ground_behind(s, s->right_m));
  return count;
}

/* A band of hatch below a line, as a draughtsman shades the ground. */
static void band(lw_sketch *s, lw_hatch hatch, const lw_xy_mm *line, int count, double depth_mm) {
  lw_xy_mm area[8];
  for (int i = 0; i < count; i++) {
    area[i] = line[i];
    area[2 * count - 1 - i] = (lw_xy_mm){line[i].x_mm, line[i].y_mm + depth_mm};
  }
  lw_drawing_hatch(s->paper, hatch, area, 2 * (size_t)count);
}

static void behind(lw_sketch *s) {
  lw_xy_mm line[3], fill[8];
  int count = ground_line(s, line);
  lw_xy_mm foot = lw_sketch_at(s, s->result->wall.section.base_width_m * 0.5, 0.0);
  for (int i = 0; i < count; i++) fill[i] = line[i];
  fill[count] = (lw_xy_mm){line[count - 1].x_mm, foot.y_mm};
  fill[count + 1] = foot;
  lw_drawing_hatch(s->paper, LW_HATCH_FILL, fill, (size_t)count + 2);
  lw_drawing_line(s->paper, LW_PEN_CUT, line, (size_t)count);
  const lw_soil *soil = &s->result->wall.site.soil[0];
  double x = s->right_m - 4.0 / s->mm_per_m;
  lw_sketch_note(s, x, 0.45 * lw_sketch_ground_behind(s, x), "soil behind: %.0f deg, %s%s",
                 soil->friction_rad * LW_DEG_PER_RAD,
                 lw_sketch_amount(s, LW_KIND_UNIT_WEIGHT, soil->unit_weight_kn_per_m3, 1).text,
                 s->result->wall.site.soil_count > 1 ? "; layers are marked" : "");
}

/* Where another wall stands below, the ground drops by its height. */
static void in_front(lw_sketch *s) {
  bool drops = lw_sketch_pair(s) && !lw_sketch_pair_above(s);
  double edge = drops ? lw_sketch_pair_m(s) : s->left_m, drop = drops ? s->result->wall.tier.height_m : 0.0;
  lw_xy_mm line[] = {lw_sketch_at(s, edge, lw_sketch_ground_front(s, edge)),
                     lw_sketch_at(s, 0.0, lw_sketch_ground_front(s, 0.0))};
  band(s, LW_HATCH_EARTH, line, 2, EARTH_BAND_MM);
  lw_drawing_line(s->paper, LW_PEN_CUT, line, 2);
  if (!drops) return;
  lw_xy_mm low[] = {lw_sketch_at(s, s->left_m, lw_sketch_ground_front(s, s->left_m) - drop),
                    lw_sketch_at(s, edge, lw_sketch_ground_front(s, edge) - drop), line[0]};
  band(s, LW_HATCH_EARTH, low, 2, EARTH_BAND_MM);
  lw_drawing_line(s->paper, LW_PEN_CUT, low, 3);
}

/* The ground that carries it, shaded under base or pad and beside them. */
static void below(lw_sketch *s) {
  const lw_wall *w = &s->result->wall;
  double pad = lw_sketch_under(s), half = 0.5 * fmax(w->site.pad.width_m - w->section.base_width_m, 0.0);
  double front = -half, rear = w->section.base_width_m + half;
  lw_xy_mm under[] = {lw_sketch_at(s, front, -pad), lw_sketch_at(s, rear, -pad)};
  lw_xy_mm heel[] = {lw_sketch_at(s, rear, 0.0), lw_sketch_at(s, s->right_m, 0.0)};
  band(s, LW_HATCH_EARTH, under, 2, EARTH_BAND_MM);
  band(s, LW_HATCH_EARTH, heel, 2, EARTH_BAND_MM);
  lw_drawing_line(s->paper, LW_PEN_FINE, heel, 2);
}

static void layers(lw_sketch *s) {
  const lw_wall *w = &s->result->wall;
  for (int i = 0; i + 1 < w->site.soil_count; i++) {
    double y = w->section.height_m - w->site.soil[i].bottom_m;
    if (y <= s->bottom_m || y > s->top_m) continue;
    lw_xy_mm line[] = {lw_sketch_at(s, lw_section_rear(&w->section, fmax(y, 0.0)), y),
                       lw_sketch_at(s, s->right_m, y)};
    lw_drawing_line(s->paper, LW_PEN_SEEN, line, 2);
    const lw_soil *soil = &w->site.soil[i + 1];
    lw_sketch_note(s, s->right_m - 10.0 / s->mm_per_m, y, "soil %d from here down: %.0f deg, %s", i + 2,
                   soil->friction_rad * LW_DEG_PER_RAD,
                   lw_sketch_amount(s, LW_KIND_UNIT_WEIGHT, soil->unit_weight_kn_per_m3, 1).text);
  }
}

static const char *filter_words(const lw_result *result) {
  if (!result->wall.site.filtered) return "; no filter known between it and the soil";
  bool graded = result->given.water.stone_filter.value == (int)LW_STONE_FILTER_GRADED;
  return graded ? ", behind a graded filter (dotted)" : ", in filter cloth (dotted)";
}

/* Of a bed whose width is given: what its other side's stone leaves, which the picture does not show. */
static void left_between(const lw_sketch *s, char *words, size_t size) {
  double bed = s->result->wall.bed_width_m, soil = bed - 2.0 * s->result->wall.site.stone_width_m;
  words[0] = '\0';
  if (bed > 0.0 && soil > 0.0005)
    lw_print(words, size, "; at depth %s of soil is left between it and the other side's",
             lw_sketch_mm(s, soil).text);
  else if (bed > 0.0)
    lw_print(words, size, "; at depth it fills the bed: no soil is left between the sides");
}

static void stone(lw_sketch *s) {
  const lw_wall *w = &s->result->wall;
  double top = s->situation->base.back.ground_y_m, far = s->right_m - s->situation->base.back.ground_x_m;
  double wide = fmin(w->site.stone_width_m, far);
  if (wide <= 0.0 || top <= 0.0) return;
  double soil_cover = fmin(0.15, 0.25 * top);
  double low = w->section.rear_m, high = lw_section_rear(&w->section, top - soil_cover);
  lw_xy_mm area[] = {lw_sketch_at(s, 0.5 * low, 0.0), lw_sketch_at(s, low + wide, 0.0),
                     lw_sketch_at(s, high + wide, top - soil_cover),
                     lw_sketch_at(s, 0.5 * high, top - soil_cover)};
  lw_drawing_area(s->paper, LW_PEN_NONE, LW_FILL_PAPER, area, 4);
  lw_drawing_hatch(s->paper, LW_HATCH_STONE, area, 4);
  if (w->site.filtered) lw_drawing_line(s->paper, LW_PEN_DOTTED, area + 1, 3);
  char left[96];
  left_between(s, left, sizeof left);
  lw_sketch_note(s, 0.5 * (low + high) + 0.6 * wide, 0.5 * (top - soil_cover), "clean drainage stone, %s%s%s",
                 lw_sketch_mm(s, w->site.stone_width_m).text, filter_words(s->result), left);
}

static void water(lw_sketch *s) {
  const lw_wall *w = &s->result->wall;
  double y = w->section.height_m - s->situation->water_depth_m;
  if (!isfinite(y) || y <= s->bottom_m || y > s->top_m) return;
  lw_xy_mm line[] = {lw_sketch_at(s, lw_section_rear(&w->section, fmax(y, 0.0)), y),
                     lw_sketch_at(s, s->right_m, y)};
  lw_drawing_line(s->paper, LW_PEN_DASHED, line, 2);
  lw_xy_mm mark = {0.35 * line[0].x_mm + 0.65 * line[1].x_mm, line[0].y_mm};
  lw_xy_mm sign[] = {mark, {mark.x_mm - 1.3, mark.y_mm - 2.2}, {mark.x_mm + 1.3, mark.y_mm - 2.2}};
  lw_drawing_area(s->paper, LW_PEN_SEEN, LW_FILL_PAPER, sign, 3);
  lw_sketch_note(s, s->right_m - 16.0 / s->mm_per_m, y, "water behind, %s below the top: %s",
                 lw_sketch_m(s, s->situation->water_depth_m, 2).text,
                 lw_situation_sentence(s->situation->name));
}

/* Standing water in front, on the ground or above it. */
static void water_in_front(lw_sketch *s) {
  const lw_wall *w = &s->result->wall;
  double y = w->section.height_m - w->site.front_water_depth_m;
  if (!isfinite(y) || y <= lw_sketch_ground_front(s, 0.0) || y > s->top_m) return;
  lw_xy_mm line[] = {lw_sketch_at(s, s->left_m, y), lw_sketch_at(s, 0.0, y)};
  lw_drawing_line(s->paper, LW_PEN_DASHED, line, 2);
  lw_sketch_note(s, s->left_m + 3.0 / s->mm_per_m, y, "water in front, %s below the top",
                 lw_sketch_m(s, w->site.front_water_depth_m, 2).text);
}

void lw_sketch_ground(lw_sketch *sketch) {
  behind(sketch);
  in_front(sketch);
  below(sketch);
  layers(sketch);
  stone(sketch);
  water(sketch);
  water_in_front(sketch);
}
