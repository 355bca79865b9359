/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "random_plane.h"

#include <math.h>

#include "support.h"

lw_layer pressure_soil(double bottom_m, double weight, double friction_deg, double cohesion_kpa) {
  return (lw_layer){.bottom_m = bottom_m,
                    .friction_rad = RAD(friction_deg),
                    .cohesion_kpa = cohesion_kpa,
                    .unit_weight_kn_per_m3 = weight,
                    .saturated_unit_weight_kn_per_m3 = weight};
}

static void add_loads(dice *d, lw_plane *plane) {
  plane->load_count = dice_pick(d, 4);
  for (int i = 0; i < plane->load_count; i++) {
    double near = dice_between(d, 0.0, 2.0), below = dice_pick(d, 2) * dice_between(d, 0.0, 0.4);
    bool strip = dice_pick(d, 2);
    plane->load[i] = (lw_plane_load){.near_m = near,
                                     .far_m = strip ? near + dice_between(d, 0.1, 3.0) : near,
                                     .pressure_kpa = strip ? dice_between(d, 1.0, 20.0) : 0.0,
                                     .force_kn_per_m = strip ? 0.0 : dice_between(d, 1.0, 8.0),
                                     .below_m = below,
                                     .point = !strip && dice_pick(d, 2)};
  }
}

lw_plane pressure_random_plane(dice *d) {
  lw_plane plane = pressure_plane(30.0);
  double bottom = 0.0, least = 90.0;
  plane.height_m = dice_between(d, 0.4, 3.5);
  plane.layer_count = 1 + dice_pick(d, 4);
  for (int i = 0; i < plane.layer_count; i++) {
    double friction = dice_between(d, 18.0, 42.0), weight = dice_between(d, 12.0, 20.0);
    bottom += dice_between(d, 0.1, 1.2);
    least = fmin(least, friction);
    plane.layer[i] = pressure_soil(i + 1 < plane.layer_count ? bottom : INFINITY, weight, friction,
                                   dice_pick(d, 3) == 0 ? dice_between(d, 0.0, 6.0) : 0.0);
    plane.layer[i].saturated_unit_weight_kn_per_m3 = weight + dice_between(d, 0.0, 3.0);
  }
  if (dice_pick(d, 2)) plane.slope_rad = RAD(dice_between(d, 0.0, 0.8 * least));
  if (dice_pick(d, 2)) plane.water_depth_m = dice_between(d, 0.0, 3.0);
  if (dice_pick(d, 2)) plane.surcharge_kpa = dice_between(d, 0.0, 15.0);
  plane.batter_rad = RAD(dice_between(d, -8.0, 15.0)) * dice_pick(d, 2);
  plane.wall_friction_rad = RAD(dice_between(d, 0.0, 0.7 * least));
  plane.crack = (lw_crack)dice_pick(d, 3);
  add_loads(d, &plane);
  return plane;
}
