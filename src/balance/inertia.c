/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "inertia.h"

#include <lowwall/pressure.h>

#include <math.h>

#include "forces.h"

/* An earthquake as a steady push on the wall itself: every weight pushes outwards by kh and counts 1 - kv. */

bool lw_seismic_acts(const lw_seismic *seismic) {
  return fabs(seismic->horizontal) > 0.0 || fabs(seismic->vertical) > 0.0;
}

lw_force lw_seismic_inertia(const lw_seismic *seismic, const lw_force *weight, int index) {
  return (lw_force){.kind = LW_FORCE_INERTIA,
                    .index = index,
                    .horizontal_kn_per_m = seismic->horizontal * weight->moved_kn_per_m,
                    .vertical_kn_per_m = -seismic->vertical * weight->vertical_kn_per_m,
                    .x_m = weight->x_m,
                    .y_m = weight->y_m};
}

/* One weight for all of a kind, at the centroid of each of its two parts; what moves weighs something too. */
static void add_weight(lw_force *sum, const lw_force *f) {
  double moved = sum->moved_kn_per_m + f->moved_kn_per_m;
  double down = sum->vertical_kn_per_m + f->vertical_kn_per_m;
  sum->y_m += (f->y_m - sum->y_m) * f->moved_kn_per_m / moved;
  sum->x_m += (f->x_m - sum->x_m) * f->vertical_kn_per_m / down;
  sum->moved_kn_per_m = moved;
  sum->vertical_kn_per_m = down;
}

static void add_inertia(const lw_seismic *seismic, lw_forces *forces) {
  lw_force wall = {0}, on_wall = {0};
  for (int i = 0; i < forces->count; i++) {
    const lw_force *f = &forces->force[i];
    if (f->moved_kn_per_m > 0.0) add_weight(f->kind == LW_FORCE_PART ? &wall : &on_wall, f);
  }
  lw_forces_add(forces, lw_seismic_inertia(seismic, &wall, 0));
  if (on_wall.moved_kn_per_m > 0.0) lw_forces_add(forces, lw_seismic_inertia(seismic, &on_wall, 1));
}

/* Water that moves by itself pushes from behind and draws away in front. */
typedef struct moving_water {
  double horizontal, unit_weight_kn_per_m3, depth_m;
  int index;
} moving_water;

static void add_water(const moving_water *water, const lw_back_plane *back, lw_forces *forces) {
  double depth = water->depth_m;
  double force = lw_westergaard_kn_per_m(water->horizontal, water->unit_weight_kn_per_m3, depth);
  if (depth <= 0.0 || force <= 0.0) return;
  lw_forces_add(forces, (lw_force){.kind = LW_FORCE_SEISMIC_WATER,
                                   .index = water->index,
                                   .horizontal_kn_per_m = force,
                                   .x_m = water->index == 0 ? back->foot_x_m : 0.0,
                                   .y_m = back->foot_y_m + 0.4 * depth});
}

void lw_seismic_on_wall(const lw_site *site, const lw_ground *ground, const lw_section *section,
                        const lw_back_plane *back, lw_forces *forces) {
  const lw_seismic *seismic = &ground->seismic;
  if (!lw_seismic_acts(seismic)) return;
  double whole = section->height_m - back->foot_y_m;
  moving_water behind = {seismic->horizontal, site->water_unit_weight_kn_per_m3,
                         whole - ground->water_depth_m, 0};
  moving_water front = {seismic->horizontal, site->water_unit_weight_kn_per_m3,
                        whole - site->front_water_depth_m, 1};
  add_inertia(seismic, forces);
  if (seismic->pervious) add_water(&behind, back, forces);
  add_water(&front, back, forces);
}
