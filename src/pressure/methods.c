/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "methods.h"

#include <assert.h>
#include <math.h>

#include "at_rest.h"
#include "profile.h"
#include "base/angles.h"

static const lw_pressure_routine ROUTINES[] = {
    [LW_PRESSURE_RANKINE] = {"rankine", "Rankine, thrust on a vertical plane", "[RANKINE1857 loose earth]",
                             lw_rankine_thrust},
    [LW_PRESSURE_COULOMB] = {"coulomb", "Coulomb, thrust on the back", "[COULOMB1776 wedge]",
                             lw_coulomb_thrust},
    [LW_PRESSURE_WEDGE] = {"wedge", "trial wedges, thrust on the back", "[COULOMB1776 wedge]",
                           lw_trial_wedge_as_thrust},
    [LW_PRESSURE_AT_REST] = {"at rest", "at rest, thrust on a vertical plane", LW_AT_REST_SOURCE,
                             lw_at_rest_thrust},
};

const lw_pressure_routine *lw_pressure_routine_of(lw_pressure_method method) {
  assert((size_t)method < sizeof ROUTINES / sizeof ROUTINES[0]);
  return &ROUTINES[method];
}

const char *lw_pressure_source(lw_pressure_method method, double slope_rad) {
  return method == LW_PRESSURE_AT_REST ? lw_at_rest_source(slope_rad)
                                       : lw_pressure_routine_of(method)->source;
}

static bool is_level(const lw_plane *plane) {
  return fabs(plane->slope_rad) < 1e-12;
}

/* One cohesionless soil down to the foot, straight ground, an even load. */
static bool is_even(const lw_plane *plane) {
  int layer = lw_layer_at(plane, 0.0);
  const lw_layer *soil = &plane->layer[layer];
  bool one_soil =
      layer == lw_layer_at(plane, plane->height_m * (1.0 - 1e-12)) && (layer == 0 || plane->slope_rad <= 0.0);
  bool straight = is_level(plane) || isinf(plane->slope_run_m);
  /* At β = φ the critical wedge has no end, and no search finds its far side; an earthquake turns β by ψ. */
  double turned = lw_layer_turned(plane, layer, plane->water_depth_m <= 0.0);
  bool ends = plane->slope_rad + turned < soil->friction_rad - 1e-3;
  return one_soil && straight && ends && plane->load_count == 0 && soil->cohesion_kpa <= 0.0;
}

bool lw_plane_is_plain(const lw_plane *plane) {
  bool wet = plane->water_depth_m <= 0.0;
  /* Ground that rises above water at the plane's top is heavier than what lies below. */
  bool one_weight = (wet && is_level(plane)) || plane->water_depth_m >= plane->height_m;
  /* Below water an earthquake turns the soil's weight further than that of a load on it. */
  bool turns_alike = !(plane->seismic.horizontal > 0.0 && wet && plane->surcharge_kpa > 0.0);
  return one_weight && turns_alike && is_even(plane);
}

static bool has_cohesion(const lw_plane *plane) {
  for (int i = 0; i < plane->layer_count; i++)
    if (plane->layer[i].cohesion_kpa > 0.0) return true;
  return false;
}

/* Of straight ground and one soil: what its water or its slope does. */
static lw_difference by_ground(const lw_plane *plane) {
  bool slopes = !is_level(plane), wet = plane->water_depth_m < plane->height_m;
  if (slopes && wet) return LW_DIFFER_WET_SLOPE;
  if (isfinite(plane->slope_run_m) && slopes) return LW_DIFFER_BROKEN;
  if (plane->water_depth_m > 0.0 && wet) return LW_DIFFER_WATER;
  if (plane->water_depth_m <= 0.0 && plane->seismic.horizontal > 0.0) return LW_DIFFER_SHAKEN_LOAD;
  return LW_DIFFER_STEEP;
}

lw_difference lw_plane_difference(const lw_plane *plane) {
  if (lw_plane_is_plain(plane)) return LW_DIFFER_NOT;
  if (has_cohesion(plane)) return LW_DIFFER_COHESION;
  if (plane->layer_count > 1) return LW_DIFFER_LAYERS;
  return plane->load_count > 0 ? LW_DIFFER_LOADS : by_ground(plane);
}

double lw_failure_run(double friction_rad) {
  return tan(LW_QUARTER_PI - friction_rad / 2.0);
}

bool lw_plane_is_one_figure(const lw_plane *plane) {
  bool shaken = plane->seismic.horizontal > 0.0;
  return lw_plane_is_plain(plane) || (is_level(plane) && !shaken && is_even(plane));
}
