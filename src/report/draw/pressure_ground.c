/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/amount.h"
#include "base/angles.h"
#include "base/print.h"
#include "hatch.h"
#include "pressure_view.h"
#include "report/diagram_words.h"

/* The ground behind the plane, to the scale of the depths: its surface, layers, water and loads. */

static const double RISE_MOST_MM = 30.0, ARROW_MM = 7.0, ABOVE_MM = 6.0;

static lw_xy_mm spot_of(const lw_pressure_view *v, double x_m, double y_m) {
  return lw_sketch_at(&v->s, x_m * v->squeeze, y_m);
}

static double surface(const lw_plane *back, double x_m) {
  return fmin(fmax(x_m, 0.0), back->slope_run_m) * tan(back->slope_rad);
}

/* As far right as the panel shows; a steep slope ends where it would leave the picture. */
static double reach_m(const lw_pressure_view *v, double width_mm) {
  const lw_plane *back = &v->d->asked.back;
  double reach = width_mm / (v->s.mm_per_m * v->squeeze), rise = tan(back->slope_rad) * v->s.mm_per_m;
  if (rise > 1e-9 && fmin(reach, back->slope_run_m) * rise > RISE_MOST_MM) reach = RISE_MOST_MM / rise;
  return reach;
}

double lw_pressure_sky(const lw_pressure_view *v, double width_mm) {
  const lw_plane *back = &v->d->asked.back;
  double rise = fmax(surface(back, reach_m(v, width_mm)), -v->d->depth[0].depth_m) * v->s.mm_per_m;
  bool loaded = back->load_count > 0 || back->surcharge_kpa > 0.0;
  return fmax(rise, 0.0) + (loaded ? ARROW_MM + ABOVE_MM : 0.0) + 3.0;
}

static void arrow(lw_pressure_view *v, lw_pen pen, double x_m, double y_m, double long_mm) {
  lw_xy_mm foot = spot_of(v, x_m, y_m);
  lw_drawing_arrow(v->s.paper, pen, (lw_xy_mm){foot.x_mm, foot.y_mm - long_mm}, foot);
}

static double level_of(const lw_plane *back, const lw_plane_load *load) {
  return surface(back, load->near_m) - load->below_m;
}

/* Arrows down on a stretch, their tops joined; a strip stands level at the ground of its near edge. */
static void rain(lw_pressure_view *v, double from_m, double to_m, double y_m, double long_mm) {
  static const double EVERY_MM = 4.0;
  int gaps = (int)fmax(1.0, floor((to_m - from_m) * v->s.mm_per_m * v->squeeze / EVERY_MM));
  for (int i = 0; i <= gaps; i++) arrow(v, LW_PEN_SEEN, from_m + (to_m - from_m) * i / gaps, y_m, long_mm);
  lw_xy_mm a = spot_of(v, from_m, y_m), b = spot_of(v, to_m, y_m);
  lw_xy_mm tops[] = {{a.x_mm, a.y_mm - long_mm}, {b.x_mm, b.y_mm - long_mm}};
  lw_drawing_line(v->s.paper, LW_PEN_SEEN, tops, 2);
}

static void one_load(lw_pressure_view *v, int number, double right_m) {
  const lw_plane *back = &v->d->asked.back;
  const lw_plane_load *load = &back->load[number];
  double y = level_of(back, load), near = load->near_m, far = fmin(load->far_m, right_m);
  char words[120], name[24];
  lw_plane_load_words(v->page->units, load, words, sizeof words);
  lw_diagram_load_name(v->d, number, name, sizeof name);
  if (near >= right_m) {
    lw_sketch_note(&v->s, right_m * v->squeeze - 1.0 / v->s.mm_per_m, surface(back, right_m),
                   "%s: %s; out of the picture", name, words);
    return;
  }
  if (load->pressure_kpa > 0.0 && far > near)
    rain(v, near, far, y, ARROW_MM);
  else
    arrow(v, LW_PEN_FORCE, near, y, ARROW_MM + 1.5);
  lw_sketch_note(&v->s, near * v->squeeze, y + (ARROW_MM + 3.0) / v->s.mm_per_m, "%s: %s", name, words);
}

/* The uniform load as short arrows along the surface. */
static void uniform(lw_pressure_view *v, double right_m) {
  static const double LONG_MM = 3.2;
  const lw_plane *back = &v->d->asked.back;
  if (back->surcharge_kpa <= 0.0) return;
  int gaps = (int)fmax(1.0, floor(right_m * v->s.mm_per_m * v->squeeze / 4.0));
  for (int i = 0; i <= gaps; i++)
    arrow(v, LW_PEN_FINE, right_m * i / gaps, surface(back, right_m * i / gaps), LONG_MM);
  double x = right_m - 2.5 / (v->s.mm_per_m * v->squeeze);
  lw_sketch_note(&v->s, x * v->squeeze, surface(back, x) + 5.5 / v->s.mm_per_m, "q: uniform load, %s",
                 lw_amount_of(v->page->units, LW_KIND_PRESSURE, back->surcharge_kpa, 2).text);
}

static void note_layer(lw_pressure_view *v, int i, double top_m, double right_m) {
  const lw_plane *back = &v->d->asked.back;
  const lw_layer *layer = &back->layer[i];
  double bottom = fmin(layer->bottom_m, back->height_m), x = right_m - 4.0 / (v->s.mm_per_m * v->squeeze);
  lw_units units = v->page->units;
  char cohesion[60] = "";
  if (bottom <= top_m) return;
  if (layer->cohesion_kpa > 0.0)
    lw_print(cohesion, sizeof cohesion, ", cohesion %s",
             lw_amount_of(units, LW_KIND_PRESSURE, layer->cohesion_kpa, 1).text);
  lw_sketch_note(&v->s, x * v->squeeze, -0.5 * (top_m + bottom), "soil %d: %.1f deg%s, %s", i + 1,
                 layer->friction_rad * LW_DEG_PER_RAD, cohesion,
                 lw_amount_of(units, LW_KIND_UNIT_WEIGHT, layer->unit_weight_kn_per_m3, 1).text);
}

/* Boundaries are level, and begin at the back. */
static void layers(lw_pressure_view *v, double right_m) {
  const lw_plane *back = &v->d->asked.back;
  double lean = tan(back->batter_rad), top = 0.0;
  for (int i = 0; i < back->layer_count; i++) {
    double bottom = back->layer[i].bottom_m;
    note_layer(v, i, top, right_m);
    if (bottom > 0.0 && bottom < back->height_m) {
      lw_xy_mm line[] = {spot_of(v, bottom * lean, -bottom), spot_of(v, right_m, -bottom)};
      lw_drawing_line(v->s.paper, LW_PEN_SEEN, line, 2);
    }
    top = fmax(top, bottom);
  }
}

static void water(lw_pressure_view *v, double right_m) {
  const lw_plane *back = &v->d->asked.back;
  double depth = back->water_depth_m;
  if (depth >= back->height_m) return;
  lw_xy_mm line[] = {spot_of(v, depth * tan(back->batter_rad), -depth), spot_of(v, right_m, -depth)};
  lw_drawing_line(v->s.paper, LW_PEN_DASHED, line, 2);
  lw_sketch_note(
      &v->s, 0.55 * right_m * v->squeeze, -depth, "w: water from %s down, %s",
      lw_metres(v->page->units, depth, 2).text,
      lw_amount_of(v->page->units, LW_KIND_UNIT_WEIGHT, back->water_unit_weight_kn_per_m3, 2).text);
}

void lw_pressure_ground(lw_pressure_view *v, const lw_panel *panel) {
  const lw_plane *back = &v->d->asked.back;
  double right = reach_m(v, panel->width_mm - (v->s.origin.x_mm - panel->left_mm)), high = back->height_m,
         lean = tan(back->batter_rad);
  double bend = fmin(back->slope_run_m, right);
  lw_xy_mm soil[] = {spot_of(v, 0.0, 0.0), spot_of(v, bend, surface(back, bend)),
                     spot_of(v, right, surface(back, right)), spot_of(v, right, -high),
                     spot_of(v, high * lean, -high)};
  lw_drawing_hatch(v->s.paper, LW_HATCH_FILL, soil, 5);
  lw_drawing_line(v->s.paper, LW_PEN_CUT, soil, 3);
  lw_xy_mm plane[] = {soil[0], soil[4]};
  lw_drawing_line(v->s.paper, LW_PEN_FORCE, plane, 2);
  layers(v, right);
  water(v, right);
  uniform(v, right);
  for (int i = 0; i < back->load_count; i++) one_load(v, i, right);
}
