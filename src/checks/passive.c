/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "stage.h"

#include <math.h>

/* Ground in front of the buried part of the wall, from the base (or the pad's underside) up. Where the plane
 * wedge overrates friction the value at a third of the angle is used; where the ground in front falls away
 * Rankine's coefficient does not know it, and Coulomb's does. */
static lw_plane plane_in_front(const lw_wall *wall, double depth_m) {
  const lw_soil *soil = &wall->site.footing;
  bool falls = wall->site.front_slope_rad > 0.0;
  bool coulomb = wall->method.pressure == LW_PRESSURE_COULOMB || falls;
  return (lw_plane){
      .height_m = depth_m,
      .slope_rad = -wall->site.front_slope_rad,
      .slope_run_m = INFINITY,
      .wall_friction_rad = coulomb ? fmin(wall->wall_friction_rad, soil->friction_rad / 3.0) : 0.0,
      .along_ground = !coulomb,
      .layer_count = 1,
      .layer = {{.bottom_m = INFINITY,
                 .friction_rad = soil->friction_rad,
                 .cohesion_kpa = soil->cohesion_kpa,
                 .unit_weight_kn_per_m3 = soil->light_unit_weight_kn_per_m3,
                 .saturated_unit_weight_kn_per_m3 = soil->saturated_unit_weight_kn_per_m3}},
      .water_depth_m =
          fmax(wall->site.front_water_depth_m - (wall->section.height_m - wall->section.embedment_m), 0.0),
      .water_unit_weight_kn_per_m3 = wall->site.water_unit_weight_kn_per_m3,
  };
}

double lw_passive_resistance(const lw_wall *wall, double extra_depth_m) {
  double depth = wall->section.embedment_m + extra_depth_m;
  if (wall->method.passive_share <= 0.0 || depth <= 0.0) return 0.0;
  lw_plane plane = plane_in_front(wall, depth);
  lw_thrust thrust;
  lw_status status = plane.along_ground ? lw_rankine_thrust(LW_PASSIVE, &plane, &thrust, NULL, NULL)
                                        : lw_coulomb_thrust(LW_PASSIVE, &plane, &thrust, NULL, NULL);
  return status == LW_OK ? wall->method.passive_share * thrust.horizontal_kn_per_m : 0.0;
}
