/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "stage.h"

#include <math.h>

#include <lowwall/passive.h>

/* Ground in front of the buried part of the wall, from the base (or the pad's underside) up. */
static lw_plane plane_in_front(const lw_wall *wall, double depth_m) {
  const lw_soil *soil = &wall->site.footing;
  return (lw_plane){
      .height_m = depth_m,
      .slope_rad = -wall->site.front_slope_rad,
      .slope_run_m = INFINITY,
      .layer_count = 1,
      .layer = {{.bottom_m = INFINITY,
                 .friction_rad = soil->friction_rad,
                 .cohesion_kpa = soil->cohesion_kpa,
                 .unit_weight_kn_per_m3 = soil->light_unit_weight_kn_per_m3,
                 .saturated_unit_weight_kn_per_m3 = soil->saturated_unit_weight_kn_per_m3}},
      .water_depth_m =
          fmax(wall->site.front_water_depth_m - (wall->section.height_m - wall->section.embedment_m), 0.0),
      .water_unit_weight_kn_per_m3 = wall->site.water_unit_weight_kn_per_m3,
      .seismic = wall->site.seismic,
  };
}

/* Where the plane wedge overrates friction the value at a third of the angle is used; where the ground in
 * front falls away Rankine's coefficient does not know it, and Coulomb's does. In an earthquake friction on
 * the wall does not count. [EN1998-5 7.3.2.3] */
static lw_status by_planes(const lw_wall *wall, lw_plane *plane, lw_thrust *thrust,
                           const lw_working *working) {
  bool falls = wall->site.front_slope_rad > 0.0, shaken = lw_seismic_acts(&wall->site);
  bool coulomb = wall->method.pressure == LW_PRESSURE_COULOMB || falls || shaken;
  double third = fmin(wall->wall_friction_rad, wall->site.footing.friction_rad / 3.0);
  plane->along_ground = !coulomb;
  plane->wall_friction_rad = coulomb && !shaken ? third : 0.0;
  return coulomb ? lw_coulomb_thrust(LW_PASSIVE, plane, thrust, NULL, working)
                 : lw_rankine_thrust(LW_PASSIVE, plane, thrust, NULL, working);
}

/* At the whole wall friction the thrust lifts the wall, and takes that much friction from under it. */
static double along_a_curve(const lw_wall *wall, const lw_pressure_routine *routine, lw_plane *plane,
                            const lw_working *working) {
  lw_thrust thrust;
  plane->wall_friction_rad = fmin(wall->wall_friction_rad, wall->site.footing.friction_rad);
  if (routine->thrust(LW_PASSIVE, plane, &thrust, NULL, working) != LW_OK) return 0.0;
  double under = fmax(wall->site.base_friction, wall->site.pad_friction);
  return fmax(thrust.horizontal_kn_per_m + under * fmin(thrust.vertical_kn_per_m, 0.0), 0.0);
}

double lw_passive_resistance(const lw_wall *wall, double extra_depth_m, const lw_working *working) {
  double depth = wall->section.embedment_m + extra_depth_m;
  if (wall->method.passive_share <= 0.0 || depth <= 0.0) return 0.0;
  lw_plane plane = plane_in_front(wall, depth);
  lw_thrust thrust;
  const lw_pressure_routine *curved = lw_passive_routine_of(wall->method.passive_by);
  if (curved && !lw_seismic_acts(&wall->site))
    return wall->method.passive_share * along_a_curve(wall, curved, &plane, working);
  lw_status status = by_planes(wall, &plane, &thrust, working);
  return status == LW_OK ? wall->method.passive_share * thrust.horizontal_kn_per_m : 0.0;
}
