/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial_wedge_scale.h"

#include <math.h>

#include "base/extremes.h"

#include "profile.h"

/* Planes of one figure with the same angles have the same critical wedge at another size and weight. Searched
 * on each of its planes instead, a garden bed's row is about 65 % dearer. */

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
  return angles && shaken && lw_plane_is_one_figure(a) && lw_plane_is_one_figure(b);
}

/* Weight of a wedge of one soil per its area over the square of its height, and what that turns about the
 * foot. The water's level cuts a smaller wedge of the same figure off its lower end. */
typedef struct stack {
  double weight, moment;
} stack;

static stack stack_of(const lw_plane *plane) {
  int soil = lw_layer_at(plane, 0.0);
  double high = plane->height_m, deep = lw_smaller(lw_larger(high - plane->water_depth_m, 0.0), high);
  double moist = lw_layer_weight(plane, soil, false), lighter = moist - lw_layer_weight(plane, soil, true);
  /* Lines parallel to the failure plane through the centroid of either wedge meet the back at a third of its
   * height. */
  return (stack){moist * high * high - lighter * deep * deep,
                 (moist * high * high * high - lighter * deep * deep * deep) / 3.0};
}

bool lw_trial_wedge_scale(const lw_plane *from, const lw_trial_wedge *wedge, const lw_plane *to,
                          lw_trial_wedge *scaled) {
  double load = from->surcharge_kpa * wedge->reach_m, soil = wedge->weight_kn_per_m - load;
  if (soil <= 0.0 || !alike(from, to)) return false;
  double size = to->height_m / from->height_m;
  stack old = stack_of(from), new = stack_of(to);
  /* Soil as light as water weighs nothing below it. */
  if (old.weight <= 0.0 || new.weight <= 0.0) return false;
  double new_soil = soil * new.weight / old.weight;
  double new_load = to->surcharge_kpa * wedge->reach_m * size, weight = new_soil + new_load;
  *scaled = (lw_trial_wedge){.thrust_kn_per_m = wedge->thrust_kn_per_m * weight / wedge->weight_kn_per_m,
                             .plane_angle_rad = wedge->plane_angle_rad,
                             .weight_kn_per_m = weight,
                             .reach_m = wedge->reach_m * size,
                             .height_of_action_m =
                                 (soil * new.moment / old.weight + new_load * 0.5 * to->height_m) / weight};
  return true;
}
