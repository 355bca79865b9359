/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "stage.h"

#include <math.h>

#include <lowwall/seismic.h>

/* An earthquake as a steady push on the wall itself: every weight pushes outwards by kh and counts 1 - kv. */

bool lw_seismic_acts(const lw_site *site) {
  return fabs(site->seismic.horizontal) > 0.0 || fabs(site->seismic.vertical) > 0.0;
}

lw_force lw_seismic_inertia(const lw_site *site, const lw_force *weight, int index) {
  return (lw_force){.kind = LW_FORCE_INERTIA,
                    .index = index,
                    .horizontal_kn_per_m = site->seismic.horizontal * weight->moved_kn_per_m,
                    .vertical_kn_per_m = -site->seismic.vertical * weight->vertical_kn_per_m,
                    .x_m = weight->x_m,
                    .y_m = weight->y_m};
}

/* One weight for all of a kind, at the centroid of each of its two parts. */
static void add_weight(lw_force *sum, const lw_force *f) {
  double moved = sum->moved_kn_per_m + f->moved_kn_per_m;
  double down = sum->vertical_kn_per_m + f->vertical_kn_per_m;
  if (fabs(moved) > 0.0) sum->y_m += (f->y_m - sum->y_m) * f->moved_kn_per_m / moved;
  if (fabs(down) > 0.0) sum->x_m += (f->x_m - sum->x_m) * f->vertical_kn_per_m / down;
  sum->moved_kn_per_m = moved;
  sum->vertical_kn_per_m = down;
}

static void add_inertia(const lw_site *site, lw_forces *forces) {
  lw_force wall = {0}, on_wall = {0};
  for (int i = 0; i < forces->count; i++) {
    const lw_force *f = &forces->force[i];
    if (f->moved_kn_per_m > 0.0) add_weight(f->kind == LW_FORCE_PART ? &wall : &on_wall, f);
  }
  if (wall.moved_kn_per_m > 0.0) lw_forces_add(forces, lw_seismic_inertia(site, &wall, 0));
  if (on_wall.moved_kn_per_m > 0.0) lw_forces_add(forces, lw_seismic_inertia(site, &on_wall, 1));
}

/* Water that moves by itself pushes from behind and draws away in front. */
static void add_water(const lw_site *site, double depth_m, const lw_back_plane *back, int index,
                      lw_forces *forces) {
  double force =
      lw_westergaard_kn_per_m(site->seismic.horizontal, site->water_unit_weight_kn_per_m3, depth_m);
  if (depth_m <= 0.0 || force <= 0.0) return;
  lw_forces_add(forces, (lw_force){.kind = LW_FORCE_SEISMIC_WATER,
                                   .index = index,
                                   .horizontal_kn_per_m = force,
                                   .x_m = index == 0 ? back->foot_x_m : 0.0,
                                   .y_m = back->foot_y_m + 0.4 * depth_m});
}

void lw_seismic_on_wall(const lw_site *site, const lw_section *section, const lw_back_plane *back,
                        lw_forces *forces) {
  if (!lw_seismic_acts(site)) return;
  double whole = section->height_m - back->foot_y_m;
  add_inertia(site, forces);
  if (site->seismic.pervious) add_water(site, whole - site->water_depth_m, back, 0, forces);
  add_water(site, whole - site->front_water_depth_m, back, 1, forces);
}
