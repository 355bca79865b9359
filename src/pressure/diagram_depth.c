/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "diagram.h"

#include <math.h>

#include "elastic_reach.h"
#include "profile.h"

/* Which depths have a row, and what stands in it. */

static const double SAME_M = 1e-7;

/* Depths in order, without two of a kind. */
typedef struct depths {
  int count;
  double at[LW_DIAGRAM_DEPTHS / 2];
} depths;

static void add(depths *all, double depth_m, double low_m, double high_m) {
  int room = LW_DIAGRAM_DEPTHS / 2, i = all->count;
  if (!(depth_m >= low_m && depth_m <= high_m) || all->count == room) return;
  while (i > 0 && all->at[i - 1] > depth_m) i--;
  bool after = i > 0 && depth_m - all->at[i - 1] < SAME_M;
  bool before = i < all->count && all->at[i] - depth_m < SAME_M;
  if (after || before) return;
  for (int k = all->count; k > i; k--) all->at[k] = all->at[k - 1];
  all->at[i] = depth_m;
  all->count++;
}

static void add_of_ways(const lw_diagram *d, depths *all, double low_m, double high_m) {
  for (int way = 0; way < LW_WAY_COUNT; way++) {
    const lw_thrust *t = &d->way[way].thrust;
    double above = lw_way_above(d, (lw_way)way);
    for (int i = 0; i < (d->way[way].known ? t->profile_count : 0); i++)
      add(all, t->profile[i].depth_m - above, low_m, high_m);
  }
}

/* The ends, what the planes meet, what the profiles have, and even steps in between. */
static void gather(const lw_diagram *d, depths *all) {
  const lw_plane *back = &d->asked.back;
  double foot = back->height_m, low = fmin(0.0, foot - d->asked.upright.height_m);
  all->count = 0;
  add(all, low, low, foot);
  add(all, 0.0, low, foot);
  add(all, foot, low, foot);
  for (int i = 0; i < back->layer_count; i++) add(all, back->layer[i].bottom_m, low, foot);
  add(all, back->water_depth_m, low, foot);
  for (int i = 0; i < back->load_count; i++)
    add(all, lw_elastic_reach_of(back, &back->load[i], d->loads_by).below_top_m, low, foot);
  add_of_ways(d, all, low, foot);
  for (int i = 1; i < LW_DIAGRAM_STEPS; i++) add(all, foot * i / LW_DIAGRAM_STEPS, low, foot);
}

static void set_stress(const lw_plane *back, lw_diagram_depth *row) {
  if (row->depth_m < 0.0) return;
  double soil = lw_stress_down_to(back, row->depth_m).kpa;
  row->pore_kpa = back->water_unit_weight_kn_per_m3 * fmax(row->depth_m - back->water_depth_m, 0.0);
  row->effective_kpa = soil + back->surcharge_kpa;
  row->stress_kpa = row->effective_kpa + row->pore_kpa;
}

static void set_loads(const lw_diagram *d, lw_diagram_depth *row) {
  const lw_plane *back = &d->asked.back;
  bool apart = d->loads_by != LW_LOAD_PRESSURE_WEDGE;
  for (int i = 0; i < back->load_count; i++) {
    double from = lw_elastic_reach_of(back, &back->load[i], d->loads_by).below_top_m;
    bool felt = row->depth_m > from + SAME_M || (row->depth_m > from - SAME_M && row->below);
    row->load_kpa[i] =
        apart && felt && row->depth_m >= 0.0 ? lw_elastic_kpa_on(back, i, d->loads_by, row->depth_m) : 0.0;
    row->loads_kpa += row->load_kpa[i];
  }
}

/* The wedge of the plane as far as this depth. */
static lw_number wedge_down_to(const lw_diagram *d, lw_way way, double depth_m) {
  lw_plane part = *lw_way_plane(d, way);
  lw_thrust thrust;
  if (!d->way[way].known) return (lw_number){0.0, false};
  if (depth_m <= SAME_M) return (lw_number){0.0, depth_m > -SAME_M};
  part.height_m = fmin(depth_m, part.height_m);
  part.load_count = 0;
  part.seismic = (lw_seismic){0};
  if (d->way[way].routine->thrust(d->way[way].state, &part, &thrust, NULL, NULL) != LW_OK)
    return (lw_number){0.0, false};
  return (lw_number){thrust.horizontal_kn_per_m, true};
}

static void set_ways(const lw_diagram *d, const lw_diagram_depth *above, lw_diagram_depth *row) {
  static const lw_way WEDGES[] = {LW_WAY_WEDGE, LW_WAY_PASSIVE_WEDGE};
  for (int i = 0; i < LW_WAY_COUNT; i++) {
    double depth = row->depth_m + lw_way_above(d, (lw_way)i);
    lw_way_pressure at = lw_way_pressure_at(d, (lw_way)i, depth, row->below);
    row->soil_kpa[i] = at.soil_kpa;
    row->uniform_kpa[i] = at.uniform_kpa;
  }
  for (int i = 0; i < 2; i++)
    row->down_to_kn_per_m[WEDGES[i]] = row->below && above != NULL
                                           ? above->down_to_kn_per_m[WEDGES[i]]
                                           : wedge_down_to(d, WEDGES[i], row->depth_m);
}

static bool same(lw_number a, lw_number b) {
  return a.known == b.known && (!a.known || fabs(a.value - b.value) <= 1e-9 * fmax(1.0, fabs(a.value)));
}

/* Whether anything jumps between the row above a depth and that below it. */
static bool jumps(const lw_diagram_depth *a, const lw_diagram_depth *b, int load_count) {
  for (int i = 0; i < LW_WAY_COUNT; i++)
    if (!same(a->soil_kpa[i], b->soil_kpa[i]) || !same(a->uniform_kpa[i], b->uniform_kpa[i])) return true;
  for (int i = 0; i < load_count; i++)
    if (fabs(a->load_kpa[i] - b->load_kpa[i]) > 1e-9) return true;
  return a->layer != b->layer;
}

static lw_diagram_depth row_at(const lw_diagram *d, double depth_m, const lw_diagram_depth *above) {
  const lw_plane *back = &d->asked.back;
  bool below = above != NULL;
  double inside = below ? depth_m + SAME_M : depth_m - SAME_M;
  lw_diagram_depth row = {.depth_m = depth_m, .below = below, .layer = lw_layer_at(back, fmax(inside, 0.0))};
  set_stress(back, &row);
  set_loads(d, &row);
  set_ways(d, above, &row);
  return row;
}

void lw_diagram_fill_depths(lw_diagram *d) {
  depths all;
  gather(d, &all);
  d->depth_count = 0;
  for (int i = 0; i < all.count; i++) {
    lw_diagram_depth *row = &d->depth[d->depth_count];
    row[0] = row_at(d, all.at[i], NULL);
    row[1] = row_at(d, all.at[i], &row[0]);
    bool first = i == 0, last = i == all.count - 1;
    bool both = !first && !last && jumps(&row[0], &row[1], d->asked.back.load_count);
    if (first) row[0] = row[1];
    d->depth_count += both ? 2 : 1;
  }
}
