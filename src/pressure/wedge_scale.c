/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "profile.h"

/* Plain planes with the same angles have the same critical wedge at another size. */

static bool same(double a, double b) {
  return fabs(a - b) < 1e-12;
}

/* By an earthquake; the same for both where the bodies move alike. */
static double turned(const lw_plane *plane) {
  return lw_layer_turned(plane, lw_layer_at(plane, 0.0), plane->water_depth_m <= 0.0);
}

static bool alike(const lw_plane *a, const lw_plane *b) {
  const lw_layer *soil_a = &a->layer[lw_layer_at(a, 0.0)], *soil_b = &b->layer[lw_layer_at(b, 0.0)];
  bool angles = same(a->batter_rad, b->batter_rad) && same(a->wall_friction_rad, b->wall_friction_rad) &&
                same(a->slope_rad, b->slope_rad) && same(soil_a->friction_rad, soil_b->friction_rad);
  bool shaken = same(a->seismic.vertical, b->seismic.vertical) && same(turned(a), turned(b));
  return angles && shaken && lw_plane_is_plain(a) && lw_plane_is_plain(b);
}

static double unit_weight_of(const lw_plane *plane) {
  return lw_layer_weight(plane, lw_layer_at(plane, 0.0), plane->water_depth_m <= 0.0);
}

bool lw_wedge_scale(const lw_plane *from, const lw_wedge *wedge, const lw_plane *to, lw_wedge *scaled) {
  double load = from->surcharge_kpa * wedge->reach_m, soil = wedge->weight_kn_per_m - load;
  if (from->height_m <= 0.0 || to->height_m <= 0.0 || soil <= 0.0 || !alike(from, to)) return false;
  double size = to->height_m / from->height_m;
  double new_soil = soil * size * size * unit_weight_of(to) / unit_weight_of(from);
  double new_load = to->surcharge_kpa * wedge->reach_m * size, weight = new_soil + new_load;
  *scaled = (lw_wedge){
      .thrust_kn_per_m = wedge->thrust_kn_per_m * weight / wedge->weight_kn_per_m,
      .plane_angle_rad = wedge->plane_angle_rad,
      .weight_kn_per_m = weight,
      .reach_m = wedge->reach_m * size,
      /* Lines parallel to the failure plane through the centroids of soil and load meet the back at a third
       * and at half of its height. */
      .height_of_action_m = to->height_m * (new_soil / 3.0 + new_load / 2.0) / weight};
  return true;
}
