/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "passive.h"

#include <lowwall/pressure.h>

#include <math.h>

#include "base/tell.h"
#include "base/working.h"
#include "inertia.h"

/* Its surface below the top of the wall, what a set of factors digs away there taken off. */
static double ground_in_front(const lw_wall *wall, const lw_front *front) {
  return wall->section.height_m - front->embedment_m + front->dug_m;
}

/* Ground in front of the buried part of the wall, from the base (or the pad's underside) up. */
static lw_plane plane_in_front(const lw_wall *wall, const lw_ground *ground, double depth_m) {
  const lw_soil *soil = &wall->site.footing;
  const lw_strength *strength = &ground->design.footing;
  return (lw_plane){
      .height_m = depth_m,
      .slope_rad = 0.0 - ground->front.slope_rad,
      .slope_run_m = INFINITY,
      .layer_count = 1,
      .layer = {{.bottom_m = INFINITY,
                 .friction_rad = strength->friction_rad,
                 .cohesion_kpa = strength->cohesion_kpa,
                 .unit_weight_kn_per_m3 = soil->light_unit_weight_kn_per_m3,
                 .saturated_unit_weight_kn_per_m3 = soil->saturated_unit_weight_kn_per_m3}},
      .water_depth_m = fmax(wall->site.front_water_depth_m - ground_in_front(wall, &ground->front), 0.0),
      .water_unit_weight_kn_per_m3 = wall->site.water_unit_weight_kn_per_m3,
      .seismic = ground->seismic,
  };
}

static lw_status by_plane(bool coulomb, double wall_friction_rad, lw_plane *plane, lw_thrust *thrust,
                          const lw_working *working) {
  plane->along_ground = !coulomb;
  plane->wall_friction_rad = wall_friction_rad;
  return coulomb ? lw_coulomb_thrust(LW_PASSIVE, plane, thrust, NULL, working)
                 : lw_rankine_thrust(LW_PASSIVE, plane, thrust, NULL, working);
}

/* Where the plane wedge overrates friction the value at a third of the angle is used; where the ground in
 * front falls away Rankine's coefficient does not know it, and Coulomb's does. In an earthquake friction on
 * the wall does not count. [EN1998-5 7.3.2.3] */
static lw_status by_planes(const lw_wall *wall, const lw_ground *ground, lw_plane *plane, lw_thrust *thrust,
                           const lw_working *working) {
  bool falls = ground->front.slope_rad > 0.0, shaken = lw_seismic_acts(&ground->seismic);
  bool rankine = wall->method.passive_by == LW_PASSIVE_BY_RANKINE;
  bool coulomb = (wall->method.pressure == LW_PRESSURE_COULOMB && !rankine) || falls || shaken;
  double third = fmin(ground->design.front_friction_rad, ground->design.footing.friction_rad / 3.0);
  return by_plane(coulomb, coulomb && !shaken ? third : 0.0, plane, thrust, working);
}

/* Along a curve the whole wall friction counts; on Coulomb's plane too, for who repeats a book. */
static lw_status at_whole_friction(const lw_strengths *design, const lw_pressure_routine *routine,
                                   lw_plane *plane, lw_thrust *thrust, const lw_working *working) {
  plane->wall_friction_rad = fmin(design->front_friction_rad, design->footing.friction_rad);
  return routine->thrust(LW_PASSIVE, plane, thrust, NULL, working);
}

/* A thrust that turns up lifts the wall, and takes that much friction from under it. */
static double less_its_lift(const lw_thrust *thrust, double friction, const lw_working *working) {
  double level = thrust->horizontal_kn_per_m, lift = fmax(-thrust->vertical_kn_per_m, 0.0);
  if (lift <= 0.0) return level;
  double left = fmax(level - friction * lift, 0.0);
  lw_step step = {.symbol = "Pp", .formula = "level part - mu x lift", .value = left, .unit = "kN/m"};
  lw_working_step(working, &step, "%.4f - %.4f x %.4f", lw_tell(working, "kN/m", level), friction,
                  lw_tell(working, "kN/m", lift));
  return left;
}

double lw_passive_beside_pad(const lw_wall *wall, const lw_ground *ground, double depth_m, bool wet,
                             const lw_working *working) {
  if (depth_m <= 0.0) return 0.0;
  lw_plane plane = plane_in_front(wall, ground, depth_m);
  lw_thrust thrust;
  bool coulomb = ground->front.slope_rad > 0.0 || lw_seismic_acts(&ground->seismic);
  if (wet) plane.water_depth_m = 0.0;
  bool found = by_plane(coulomb, 0.0, &plane, &thrust, working) == LW_OK;
  return found ? thrust.horizontal_kn_per_m : 0.0;
}

double lw_passive_resistance(const lw_wall *wall, const lw_ground *ground, double below_m,
                             const lw_working *working) {
  double depth = ground->front.embedment_m + below_m - ground->front.dug_m;
  if (wall->method.passive_share <= 0.0 || depth <= 0.0) return 0.0;
  lw_plane plane = plane_in_front(wall, ground, depth);
  lw_thrust thrust;
  lw_passive_by by = wall->method.passive_by;
  bool own = by == LW_PASSIVE_OWN || by == LW_PASSIVE_BY_RANKINE || lw_seismic_acts(&ground->seismic);
  lw_status status =
      own ? by_planes(wall, ground, &plane, &thrust, working)
          : at_whole_friction(&ground->design, lw_passive_routine_of(by), &plane, &thrust, working);
  if (status != LW_OK) return 0.0;
  double under = below_m > 0.0 ? ground->design.pad_friction : ground->design.base_friction;
  double share = wall->method.passive_share, left = less_its_lift(&thrust, under, working);
  lw_step step = {.symbol = "Rp", .formula = "share that counts x Pp", .value = share * left, .unit = "kN/m"};
  lw_working_line(working, &step, "%.3f x %.4f", share, lw_tell(working, "kN/m", left));
  return share * left;
}
