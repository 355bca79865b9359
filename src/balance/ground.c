/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ground.h"

#include <lowwall/checks.h>

#include "base/extremes.h"

void lw_ground_own(const lw_wall *wall, lw_ground *ground) {
  const lw_site *site = &wall->site;
  lw_strengths *design = &ground->design;
  for (int i = 0; i < site->soil_count; i++)
    design->soil[i] = (lw_strength){site->soil[i].friction_rad, site->soil[i].cohesion_kpa};
  design->footing = (lw_strength){site->footing.friction_rad, site->footing.cohesion_kpa};
  design->wall_friction_rad = wall->wall_friction_rad;
  design->front_friction_rad = wall->front_friction_rad;
  design->base_friction = site->base_friction;
  design->base_adhesion_kpa = site->base_adhesion_kpa;
  design->pad_friction = site->pad_friction;
  design->undrained_kpa = site->undrained_kpa;
  design->paired_kpa = site->paired.cohesion_kpa;
  design->shallow_kpa = site->paired.shallow_kpa;
  design->joint_friction = wall->section.joint_friction;
  design->joint_shear_kn_per_m = wall->section.joint_shear_kn_per_m;
  design->key_strength_kn_per_m = wall->section.key_strength_kn_per_m;
  design->divided = false;
  ground->water_depth_m = site->water_depth_m;
  ground->seeping = ground->led_away = false;
  ground->seismic = (lw_seismic){0};
  ground->level_push = 1.0;
  ground->wind_kn_per_m = ground->wind_distance_m = ground->wind_below_m = 0.0;
  ground->surcharge_kpa = site->surcharge_kpa;
  ground->person_kpa = ground->person_near_m = ground->person_far_m = 0.0;
  ground->front = (lw_front){.slope_rad = site->front_slope_rad,
                             .embedment_m = wall->section.embedment_m,
                             .bearing_embedment_m = wall->section.bearing_embedment_m};
}

lw_heads lw_ground_heads(const lw_site *site, const lw_ground *ground, double underside_m) {
  double front = lw_larger(underside_m - site->front_water_depth_m, 0.0),
         rear = lw_larger(underside_m - ground->water_depth_m, 0.0);
  return (lw_heads){ground->led_away ? lw_smaller(rear, front) : rear, front};
}
