/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fence_wind.h"

#include <math.h>

#include "fence_parts.h"
#include "tables/known.h"
#include "wall/wind.h"

/* Wind: what a fence was built for, and what it does to the wall below or before it. */

/* How far, in heights, and how finely the end of the wedge is looked for. */
static const double FARTHEST = 40.0, CLEAR_STEP_M = 0.005, NOTHING_KN_PER_M = 1e-6;

void lw_fence_built_for(const lw_tables *tables, const lw_back_fence *back, lw_fence *fence) {
  fence->height_known = back->height_m.known;
  fence->exposure_known = back->wind_kpa.known;
  fence->built_for =
      (lw_fence_gust){.pressure_kpa = back->wind_kpa.known ? back->wind_kpa.value
                                                           : lw_wind_pressure(tables, LW_EXPOSURE_SHELTERED),
                      .height_m = back->height_m.known ? back->height_m.value
                                                       : lw_known_value(tables, LW_FENCE_OF_LEAST_HEIGHT),
                      .hole_m = fence->bed.hole_m};
}

void lw_fence_find_wind(const lw_tables *tables, const lw_wall *wall, lw_fence_wind *wind) {
  const lw_section *section = &wall->section;
  const lw_wall_wind *blows = &wall->wind;
  *wind = (lw_fence_wind){.present = blows->present, .on_wall = !blows->behind};
  if (!wind->present) return;
  double height = blows->height_m;
  wind->height_m = height;
  wind->pressure_kpa = blows->pressure_kpa;
  wind->end_factor = blows->end_factor;
  wind->force_kn_per_m = wind->pressure_kpa * height;
  wind->foot_moment_knm_per_m = wind->force_kn_per_m * height / 2.0;
  wind->toe_moment_knm_per_m = wind->force_kn_per_m * (section->height_m + height / 2.0);
  if (section->known) wind->wall_moment_knm_per_m = (lw_number){wall->weight_moment_knm_per_m, true};
  wind->distance_m = blows->distance_m;
  wind->below_m = blows->below_m;
  wind->keep_off_m = lw_known_value(tables, LW_FENCE_OF_KEEP_OFF) * section->height_m;
  wind->stone_off_m = fmin(lw_known_value(tables, LW_FENCE_OF_POST_CLEAR), wind->keep_off_m);
}

static double thrust_with(lw_plane plane, const lw_fence_wind *wind, double distance_m) {
  lw_trial_wedge wedge;
  if (wind)
    plane.load[plane.load_count++] = (lw_plane_load){.near_m = distance_m,
                                                     .far_m = distance_m,
                                                     .below_m = wind->below_m,
                                                     .push_kn_per_m = wind->force_kn_per_m};
  return lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL) == LW_OK ? wedge.thrust_kn_per_m : NAN;
}

void lw_fence_clear(const lw_situations *situations, lw_fence_wind *wind) {
  const lw_free_body *base = &situations->situation[0].base;
  wind->clear_m.known = false;
  if (!wind->present || wind->on_wall || base->status != LW_OK || !base->wedge_known) return;
  lw_plane plane = base->back.plane;
  double alone = thrust_with(plane, NULL, 0.0), near = 0.0, far = FARTHEST * plane.height_m;
  if (!(thrust_with(plane, wind, far) <= alone + NOTHING_KN_PER_M)) return;
  while (far - near > CLEAR_STEP_M) {
    double middle = 0.5 * (near + far);
    bool takes = thrust_with(plane, wind, middle) > alone + NOTHING_KN_PER_M;
    *(takes ? &near : &far) = middle;
  }
  wind->clear_m = (lw_number){far, true};
}
