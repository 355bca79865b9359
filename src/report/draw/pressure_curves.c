/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_view.h"

#include <math.h>

#include "base/print.h"

/* Which lines stand in which panel. */

lw_pen lw_way_pen(lw_way way) {
  switch (way) {
  case LW_WAY_RANKINE:
  case LW_WAY_PASSIVE_RANKINE: return LW_PEN_DASHED;
  case LW_WAY_WEDGE:
  case LW_WAY_PASSIVE_WEDGE: return LW_PEN_FINE;
  case LW_WAY_LOG_SPIRAL:
  case LW_WAY_PASSIVE_LOG_SPIRAL: return LW_PEN_DOTTED;
  case LW_WAY_ANNEX_C:
  case LW_WAY_PASSIVE_ANNEX_C: return LW_PEN_CHAIN;
  case LW_WAY_AT_REST: return LW_PEN_FORCE;
  case LW_WAY_COULOMB:
  case LW_WAY_PASSIVE_COULOMB:
  case LW_WAY_COUNT: break;
  }
  return LW_PEN_SEEN;
}

lw_pen lw_load_pen(int load) {
  static const lw_pen PENS[] = {LW_PEN_SEEN, LW_PEN_DASHED, LW_PEN_DOTTED, LW_PEN_CHAIN};
  return PENS[load % 4];
}

void lw_load_letter(const lw_diagram *d, int load, char *out, size_t size) {
  int number = d->asked.load_number[load];
  if (number > 0)
    lw_print(out, size, "%d", number);
  else
    lw_print(out, size, "a");
}

const char *lw_way_letter(lw_way way) {
  static const char *const LETTERS[] = {"R", "C", "W", "L", "E", "0"};
  return LETTERS[way < LW_WAY_PASSIVE_RANKINE ? way : way - LW_WAY_PASSIVE_RANKINE];
}

static void add(lw_curve *curve, double depth_m, double kpa) {
  if (curve->count == LW_CURVE_MAX) return;
  curve->depth_m[curve->count] = depth_m;
  curve->kpa[curve->count++] = kpa;
}

static lw_curve *begin(lw_curves *curves, lw_pen pen, const char *letter) {
  lw_curve *curve = &curves->curve[curves->count++];
  curve->pen = pen;
  curve->count = 0;
  lw_print(curve->letter, sizeof curve->letter, "%s", letter);
  return curve;
}

static void add_way(const lw_diagram *d, lw_way way, lw_curves *curves) {
  lw_curve *curve = begin(curves, lw_way_pen(way), lw_way_letter(way));
  for (int i = 0; i < d->depth_count; i++)
    if (d->depth[i].soil_kpa[way].known) add(curve, d->depth[i].depth_m, d->depth[i].soil_kpa[way].value);
  if (curve->count == 0) curves->count--;
}

/* A wedge has no pressure at a depth: what each even strip of depth adds to it, spread over the strip. */
static void add_wedge(const lw_diagram *d, lw_way way, lw_curves *curves) {
  lw_curve *curve = begin(curves, lw_way_pen(way), lw_way_letter(way));
  double step = d->asked.back.height_m / LW_DIAGRAM_STEPS, before = 0.0;
  int next = 1;
  for (int i = 0; i < d->depth_count; i++) {
    const lw_diagram_depth *row = &d->depth[i];
    if (fabs(row->depth_m - step * next) > 1e-6 || !row->down_to_kn_per_m[way].known) continue;
    double mean = (row->down_to_kn_per_m[way].value - before) / step;
    add(curve, step * (next - 1), mean);
    add(curve, step * next, mean);
    before = row->down_to_kn_per_m[way].value;
    next++;
  }
  if (next <= LW_DIAGRAM_STEPS) curves->count--;
}

void lw_curves_active(const lw_diagram *d, lw_curves *curves) {
  static const lw_way ORDER[] = {LW_WAY_RANKINE, LW_WAY_COULOMB, LW_WAY_LOG_SPIRAL, LW_WAY_ANNEX_C,
                                 LW_WAY_AT_REST};
  curves->count = 0;
  add_wedge(d, LW_WAY_WEDGE, curves);
  for (size_t i = 0; i < sizeof ORDER / sizeof *ORDER; i++) add_way(d, ORDER[i], curves);
}

void lw_curves_passive(const lw_diagram *d, lw_curves *curves) {
  static const lw_way ORDER[] = {LW_WAY_PASSIVE_RANKINE, LW_WAY_PASSIVE_COULOMB, LW_WAY_PASSIVE_LOG_SPIRAL,
                                 LW_WAY_PASSIVE_ANNEX_C};
  curves->count = 0;
  add_wedge(d, LW_WAY_PASSIVE_WEDGE, curves);
  for (size_t i = 0; i < sizeof ORDER / sizeof *ORDER; i++) add_way(d, ORDER[i], curves);
}

static void add_uniform(const lw_diagram *d, lw_curves *curves) {
  lw_curve *curve = begin(curves, LW_PEN_FINE, "q");
  for (int i = 0; i < d->depth_count; i++)
    if (d->depth[i].uniform_kpa[LW_WAY_COULOMB].known)
      add(curve, d->depth[i].depth_m, d->depth[i].uniform_kpa[LW_WAY_COULOMB].value);
  if (curve->count == 0) curves->count--;
}

/* An elastic line bends: it is cut finer than the rows. */
static void add_load(const lw_diagram *d, int load, lw_curves *curves) {
  enum { CUTS = 60 };
  const lw_plane *back = &d->asked.back;
  char letter[8];
  lw_load_letter(d, load, letter, sizeof letter);
  lw_curve *curve = begin(curves, lw_load_pen(load), letter);
  for (int i = 0; i <= CUTS; i++) {
    double depth = back->height_m * i / CUTS;
    add(curve, depth, lw_elastic_kpa_on(back, load, d->loads_by, depth));
  }
}

static void add_water(const lw_diagram *d, lw_curves *curves) {
  const lw_plane *back = &d->asked.back;
  lw_curve *curve = begin(curves, LW_PEN_FORCE, "w");
  add(curve, back->water_depth_m, 0.0);
  add(curve, back->height_m, back->water_unit_weight_kn_per_m3 * (back->height_m - back->water_depth_m));
}

void lw_curves_loads(const lw_diagram *d, lw_curves *curves) {
  const lw_plane *back = &d->asked.back;
  bool apart = d->loads_by != LW_LOAD_PRESSURE_WEDGE;
  curves->count = 0;
  if (back->surcharge_kpa > 0.0) add_uniform(d, curves);
  for (int i = 0; apart && i < back->load_count; i++) add_load(d, i, curves);
  if (back->water_depth_m < back->height_m) add_water(d, curves);
}
