/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/amount.h"
#include "pressure_view.h"

/* One panel: axes with their units, the boundaries of the ground, the curves and their letters. */

static const double LETTERS_MM = 6.0, TICK_MM = 1.2;

static double y_of(const lw_pressure_view *v, const lw_panel *p, double depth_m) {
  return p->top_mm + depth_m * v->s.mm_per_m;
}

/* 1, 2 or 5 times a power of ten, so that at most so many fit. */
static double step_of(double most, int ticks) {
  double raw = fmax(most, 1e-9) / ticks, power = pow(10.0, floor(log10(raw))), share = raw / power;
  return power * (share <= 1.0 ? 1.0 : share <= 2.0 ? 2.0 : share <= 5.0 ? 5.0 : 10.0);
}

static int decimals_of(double step) {
  return step >= 1.0 ? 0 : step >= 0.1 ? 1 : step >= 0.01 ? 2 : 3;
}

static void choose_scale(lw_panel *p, const lw_curves *curves) {
  double most = 0.0;
  for (int i = 0; i < curves->count; i++)
    for (int k = 0; k < curves->curve[i].count; k++) most = fmax(most, curves->curve[i].kpa[k]);
  p->most_kpa = fmax(most, 1e-3);
  p->mm_per_kpa = (p->width_mm - LETTERS_MM - 1.0) / p->most_kpa;
}

static void stroke(lw_pressure_view *v, lw_pen pen, lw_xy_mm a, lw_xy_mm b) {
  lw_xy_mm line[] = {a, b};
  lw_drawing_line(v->s.paper, pen, line, 2);
}

/* A figure below its tick; one of many digits by a power of ten, which leaves room for the next. */
static void tick_words(lw_pressure_view *v, lw_xy_mm at, double value, double step) {
  static const double MANY_DIGITS = 1e6;
  if (step >= MANY_DIGITS && value > 0.0)
    lw_drawing_words(v->s.paper, at, LW_ANCHOR_MIDDLE, LW_SMALL_MM, "%.0e", value);
  else
    lw_drawing_words(v->s.paper, at, LW_ANCHOR_MIDDLE, LW_SMALL_MM, "%.*f", decimals_of(step), value);
}

/* Ticks of pressure below the foot, and the unit. */
static void pressure_axis(lw_pressure_view *v, const lw_panel *p) {
  lw_units units = v->page->units;
  double per = lw_in_units(units, LW_KIND_PRESSURE, 1.0), most = p->most_kpa * per;
  double foot = y_of(v, p, v->d->asked.back.height_m), step = step_of(most, p->width_mm > 34.0 ? 4 : 3);
  stroke(v, LW_PEN_SEEN, (lw_xy_mm){p->left_mm, foot}, (lw_xy_mm){p->left_mm + p->width_mm - 1.0, foot});
  for (double at = 0.0; at <= most * (1.0 + 1e-9); at += step) {
    double x = p->left_mm + at / per * p->mm_per_kpa;
    stroke(v, LW_PEN_FINE, (lw_xy_mm){x, foot}, (lw_xy_mm){x, foot + TICK_MM});
    tick_words(v, (lw_xy_mm){x, foot + TICK_MM + LW_SMALL_MM}, at, step);
  }
  lw_drawing_words(v->s.paper, (lw_xy_mm){p->left_mm + 0.5 * p->width_mm, foot + TICK_MM + 2.3 * LW_SMALL_MM},
                   LW_ANCHOR_MIDDLE, LW_SMALL_MM, "%s", lw_units_name(units, LW_KIND_PRESSURE));
}

void lw_panel_depths(lw_pressure_view *v, const lw_panel *p) {
  lw_units units = v->page->units;
  double per = lw_in_units(units, LW_KIND_LENGTH, 1.0), high = v->d->asked.back.height_m;
  double step = step_of(high * per, 5), from = fmin(v->d->depth[0].depth_m, 0.0) * per;
  int decimals = decimals_of(step);
  for (double depth = ceil(from / step - 1e-9) * step; depth <= high * per * (1.0 + 1e-9); depth += step) {
    double y = y_of(v, p, depth / per);
    stroke(v, LW_PEN_FINE, (lw_xy_mm){p->left_mm - TICK_MM, y}, (lw_xy_mm){p->left_mm, y});
    lw_drawing_words(v->s.paper, (lw_xy_mm){p->left_mm - TICK_MM - 0.5, y + 0.35 * LW_SMALL_MM},
                     LW_ANCHOR_END, LW_SMALL_MM, "%.*f", decimals, fabs(depth) < 1e-9 ? 0.0 : depth);
  }
  lw_drawing_words(v->s.paper, (lw_xy_mm){p->left_mm - 0.5, y_of(v, p, high) + TICK_MM + 2.3 * LW_SMALL_MM},
                   LW_ANCHOR_END, LW_SMALL_MM, "%s deep", lw_units_name(units, LW_KIND_LENGTH));
}

/* Where the ground changes: layers fine, water dashed. */
static void boundaries(lw_pressure_view *v, const lw_panel *p) {
  const lw_plane *back = &v->d->asked.back;
  double right = p->left_mm + p->width_mm - LETTERS_MM;
  for (int i = 0; i + 1 < back->layer_count; i++) {
    double depth = back->layer[i].bottom_m, y = y_of(v, p, depth);
    if (depth > 0.0 && depth < back->height_m)
      stroke(v, LW_PEN_FINE, (lw_xy_mm){p->left_mm, y}, (lw_xy_mm){right, y});
  }
  if (back->water_depth_m < back->height_m) {
    double y = y_of(v, p, back->water_depth_m);
    stroke(v, LW_PEN_DASHED, (lw_xy_mm){p->left_mm, y}, (lw_xy_mm){right, y});
  }
}

static void draw_curve(lw_pressure_view *v, const lw_panel *p, const lw_curve *curve) {
  lw_xy_mm spot[LW_CURVE_MAX + 1];
  size_t count = 0;
  spot[count++] = (lw_xy_mm){p->left_mm, y_of(v, p, curve->depth_m[0])};
  for (int i = 0; i < curve->count; i++)
    spot[count++] = (lw_xy_mm){p->left_mm + curve->kpa[i] * p->mm_per_kpa, y_of(v, p, curve->depth_m[i])};
  lw_drawing_line(v->s.paper, curve->pen, spot, count);
}

static double kpa_at(const lw_curve *curve, double depth_m) {
  for (int i = 0; i + 1 < curve->count; i++) {
    double run = curve->depth_m[i + 1] - curve->depth_m[i];
    if (run <= 1e-12 || depth_m < curve->depth_m[i] || depth_m > curve->depth_m[i + 1]) continue;
    double share = (depth_m - curve->depth_m[i]) / run;
    return curve->kpa[i] + share * (curve->kpa[i + 1] - curve->kpa[i]);
  }
  return 0.0;
}

/* A leader lies on no boundary of the ground and near no other. */
static bool is_free(const lw_pressure_view *v, const lw_panel *p, double y_mm, const double *taken,
                    int count) {
  static const double APART_MM = 3.1, OFF_MM = 0.7;
  const lw_plane *back = &v->d->asked.back;
  for (int i = 0; i < count; i++)
    if (fabs(y_mm - taken[i]) < APART_MM) return false;
  for (int i = 0; i < back->layer_count; i++)
    if (fabs(y_mm - y_of(v, p, back->layer[i].bottom_m)) < OFF_MM) return false;
  return fabs(y_mm - y_of(v, p, back->water_depth_m)) >= OFF_MM;
}

/* From the place that is wanted down, and from the top again. */
static double leader_y(const lw_pressure_view *v, const lw_panel *p, double wanted_mm, const double *taken,
                       int count) {
  static const double STEP_MM = 0.4;
  double foot = y_of(v, p, v->d->asked.back.height_m) - 0.5, y = wanted_mm;
  for (double gone = 0.0; gone < foot - p->top_mm; gone += STEP_MM) {
    if (is_free(v, p, y, taken, count)) return y;
    y = y + STEP_MM > foot ? p->top_mm + 1.5 : y + STEP_MM;
  }
  return wanted_mm;
}

/* Each letter stands at the right at a depth of its own, with a level leader to its line. */
static void letters(lw_pressure_view *v, const lw_panel *p, const lw_curves *curves) {
  static const double DOT_MM = 0.5;
  double high = v->d->asked.back.height_m, right = p->left_mm + p->width_mm - LETTERS_MM + 1.5;
  double taken[LW_CURVES_MAX];
  for (int i = 0; i < curves->count; i++) {
    const lw_curve *curve = &curves->curve[i];
    double from = fmax(curve->depth_m[0], 0.0), share = (i + 1.0) / (curves->count + 1.0);
    double wanted = y_of(v, p, from + (0.15 + 0.8 * share) * (high - from));
    double y = taken[i] = leader_y(v, p, wanted, taken, i), depth = (y - p->top_mm) / v->s.mm_per_m;
    double x = p->left_mm + kpa_at(curve, depth) * p->mm_per_kpa;
    lw_xy_mm dot[] = {{x - DOT_MM, y}, {x, y - DOT_MM}, {x + DOT_MM, y}, {x, y + DOT_MM}};
    stroke(v, LW_PEN_FINE, (lw_xy_mm){x, y}, (lw_xy_mm){right, y});
    lw_drawing_area(v->s.paper, LW_PEN_NONE, LW_FILL_INK, dot, 4);
    lw_drawing_words(v->s.paper, (lw_xy_mm){right + 0.6, y + 0.35 * LW_SMALL_MM}, LW_ANCHOR_START,
                     LW_SMALL_MM, "%s", curve->letter);
    lw_drawing_bold(v->s.paper);
  }
}

void lw_panel_draw(lw_pressure_view *v, lw_panel *p, const lw_curves *curves) {
  double from = fmin(v->d->depth[0].depth_m, 0.0);
  choose_scale(p, curves);
  lw_drawing_words(v->s.paper, (lw_xy_mm){p->left_mm, y_of(v, p, from) - 2.0}, LW_ANCHOR_START, LW_SMALL_MM,
                   "%s", p->title);
  lw_drawing_bold(v->s.paper);
  boundaries(v, p);
  stroke(v, LW_PEN_CUT, (lw_xy_mm){p->left_mm, y_of(v, p, from)},
         (lw_xy_mm){p->left_mm, y_of(v, p, v->d->asked.back.height_m)});
  pressure_axis(v, p);
  for (int i = 0; i < curves->count; i++) draw_curve(v, p, &curves->curve[i]);
  letters(v, p, curves);
}
