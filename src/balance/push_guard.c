/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "push_guard.h"

#include <math.h>

#include "base/angles.h"
#include "base/extremes.h"

/* What may never come of a push, whatever went in: a value that is no number, or nothing at all where soil
 * stands. The question does not ask the plane that the push was found on: it may be the one at fault. */

/* Soil lower than this above a contact, and a back this near to the angle of repose, push next to nothing. */
static const double LEAST_HEIGHT_M = 1e-6, LEAST_ANGLE_RAD = 1e-3;

/* A sum is finite only where every one of its terms is. */
static bool ground_is_finite(const lw_site *site, const lw_ground *ground) {
  double sum = ground->surcharge_kpa + ground->person_kpa + site->soil_below_top_m + site->slope_rad;
  for (int i = 0; i < site->soil_count; i++) {
    const lw_soil *soil = &site->soil[i];
    const lw_strength *strength = &ground->design.soil[i];
    sum += strength->friction_rad + strength->cohesion_kpa + soil->unit_weight_kn_per_m3 +
           soil->light_unit_weight_kn_per_m3 + soil->saturated_unit_weight_kn_per_m3;
  }
  return isfinite(sum);
}

static bool place_is_finite(const lw_back_plane *back) {
  const lw_plane *plane = &back->plane;
  return isfinite(back->foot_x_m + back->foot_y_m + back->top_x_m + back->top_y_m + back->ground_x_m +
                  back->ground_y_m + plane->height_m + plane->batter_rad);
}

static bool thrust_is_finite(const lw_push *push) {
  const lw_thrust *t = &push->thrust;
  double wedge = push->wedge_known ? push->wedge.thrust_kn_per_m + push->wedge.height_of_action_m : 0.0;
  double parts = push->by_loads.thrust_kn_per_m + push->by_loads.height_m + push->by_pushes.thrust_kn_per_m +
                 push->by_pushes.height_m + push->unloaded.thrust_kn_per_m + push->unloaded.height_m +
                 t->surcharge_kn_per_m + t->surcharge_height_m + t->seismic_kn_per_m + t->seismic_height_m;
  for (int i = 0; i < LW_PUSH_PARTS; i++) parts += push->part[i].thrust_kn_per_m + push->part[i].height_m;
  return isfinite(t->total_kn_per_m + t->horizontal_kn_per_m + t->vertical_kn_per_m + t->height_of_action_m +
                  t->water_kn_per_m + t->water_height_m + push->formula_kn_per_m +
                  push->by_rain.thrust_kn_per_m + push->elastic.push_kn_per_m + push->elastic.height_m +
                  parts + wedge);
}

/* Soil that can neither stand by itself nor float, and by which angle it stands at the steepest. */
static bool needs_holding(const lw_site *site, const lw_ground *ground, double *repose_rad) {
  *repose_rad = 0.0;
  for (int i = 0; i < site->soil_count; i++) {
    const lw_soil *soil = &site->soil[i];
    const lw_strength *strength = &ground->design.soil[i];
    bool floats = soil->saturated_unit_weight_kn_per_m3 <= site->water_unit_weight_kn_per_m3;
    if (strength->cohesion_kpa > 0.0 || floats) return false;
    *repose_rad = lw_larger(*repose_rad, strength->friction_rad);
  }
  return true;
}

/* A back that soil lies on is less steep than upright, one that leans into the soil steeper. */
static bool must_push(const lw_wall *wall, const lw_ground *ground, const lw_stack *stack,
                      const lw_push *push) {
  double repose, soil = stack->section->height_m - wall->site.soil_below_top_m + stack->below_m;
  if (!(soil > LEAST_HEIGHT_M) || !needs_holding(&wall->site, ground, &repose)) return false;
  return LW_HALF_PI - lw_larger(push->back.plane.batter_rad, 0.0) > repose + LEAST_ANGLE_RAD;
}

lw_reason lw_push_doubt(const lw_wall *wall, const lw_ground *ground, const lw_stack *stack,
                        const lw_push *push) {
  bool finite = ground_is_finite(&wall->site, ground) && isfinite(stack->section->height_m) &&
                place_is_finite(&push->back) && thrust_is_finite(push);
  if (!finite) return LW_REASON_NOT_FINITE;
  bool pushes = push->thrust.total_kn_per_m > 0.0;
  if (!pushes && must_push(wall, ground, stack, push)) return LW_REASON_NO_PUSH;
  return push->faulty ? LW_REASON_WEDGE_DISAGREES : LW_REASON_NONE;
}
