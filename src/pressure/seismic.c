/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "seismic.h"

#include <math.h>

#include "base/bound.h"
#include "base/tell.h"
#include "base/working.h"
#include "profile.h"

/* What an earthquake adds to a thrust. */

enum { TERMS = 320 };

static bool shaken(const lw_plane *plane) {
  return !(fabs(plane->seismic.horizontal) <= 0.0 && fabs(plane->seismic.vertical) <= 0.0);
}

/* Each layer's coefficient above and below water, in an earthquake or still, without cohesion. */
static lw_status law_of(lw_earth_state state, const lw_plane *plane, bool still, lw_law *law,
                        lw_error *error) {
  double theta = plane->along_ground ? 0.0 : plane->batter_rad, beta = plane->slope_rad;
  double delta = plane->along_ground ? beta : plane->wall_friction_rad;
  double lighter = still ? 1.0 : 1.0 - plane->seismic.vertical;
  *law = (lw_law){.surcharge_factor = cos(theta) * cos(beta) / cos(theta - beta), .wet_differs = true};
  for (int i = 0; i < plane->layer_count; i++) {
    lw_wall_angles angles = {plane->layer[i].friction_rad, delta, theta, beta};
    for (int wet = 0; wet < 2; wet++) {
      if (wet == 1 && !(plane->water_depth_m < plane->height_m)) continue;
      double *k = wet == 1 ? &law->k_wet[i] : &law->k[i];
      double turn = still ? 0.0 : lw_layer_turned(plane, i, wet == 1);
      lw_status status = lw_mononobe_okabe_coefficient(state, &angles, turn, k, error);
      if (status != LW_OK) return status;
      *k *= lighter;
    }
  }
  return LW_OK;
}

/* Without cohesion; its symbol is what the working calls the sum. */
static lw_status total_of(lw_earth_state state, const lw_plane *plane, bool still, lw_thrust *thrust,
                          lw_error *error, const lw_working *working) {
  lw_law law;
  lw_plane loose = *plane;
  for (int i = 0; i < loose.layer_count; i++) loose.layer[i].cohesion_kpa = 0.0;
  lw_status status = law_of(state, &loose, still, &law, error);
  law.working = working;
  law.symbol = still ? "P0" : "PE";
  if (status != LW_OK) return status;
  lw_profile_integrate(&loose, &law, 0.0, thrust);
  return LW_OK;
}

/* All that stands above a level of the plane, moving with a wall that cannot yield; its terms as text. */
static double moved_by_rigid_wall(const lw_plane *plane, const lw_working *working, char *terms,
                                  size_t size) {
  double sum = plane->surcharge_kpa, depth = 0.0;
  size_t used = (size_t)lw_print(terms, size, "%.4f", lw_tell(working, "kPa", sum));
  while (depth < plane->height_m) {
    int i = lw_layer_at(plane, depth);
    bool wet = depth >= plane->water_depth_m;
    double bottom = fmin(plane->height_m, plane->layer[i].bottom_m);
    if (!wet) bottom = fmin(bottom, plane->water_depth_m);
    double weight =
        wet ? plane->layer[i].saturated_unit_weight_kn_per_m3 : plane->layer[i].unit_weight_kn_per_m3;
    sum += weight * (bottom - depth);
    if (used < size)
      used += (size_t)lw_print(terms + used, size - used, " + %.4f x %.5f", lw_tell(working, "kN/m3", weight),
                               lw_tell(working, "m", bottom - depth));
    depth = bottom;
  }
  return sum * plane->height_m;
}

/* Of ground that is shaken. */
static lw_status find_part(lw_earth_state state, const lw_plane *plane, lw_seismic_part *part,
                           lw_error *error) {
  lw_thrust moving = {0}, still = {0};
  int lowest = lw_layer_at(plane, plane->height_m);
  double turn = lw_layer_turned(plane, lowest, plane->water_depth_m < plane->height_m);
  if (state == LW_AT_REST) {
    char terms[TERMS];
    part->increment_kn_per_m =
        plane->seismic.horizontal * moved_by_rigid_wall(plane, NULL, terms, sizeof terms);
    part->turn_rad = turn;
    return LW_OK;
  }
  lw_status status = total_of(state, plane, false, &moving, error, NULL);
  if (status == LW_OK) status = total_of(state, plane, true, &still, error, NULL);
  if (status != LW_OK) return status;
  *part = (lw_seismic_part){.increment_kn_per_m = moving.total_kn_per_m - still.total_kn_per_m,
                            .moving_kn_per_m = moving.total_kn_per_m,
                            .still_kn_per_m = still.total_kn_per_m,
                            .coefficient = moving.coefficient / (1.0 - plane->seismic.vertical),
                            .turn_rad = turn};
  return LW_OK;
}

lw_status lw_seismic_find(lw_earth_state state, const lw_plane *plane, lw_seismic_part *part,
                          lw_error *error) {
  lw_seismic_part found = {0};
  lw_status status = shaken(plane) ? lw_plane_hold(plane, error) : LW_OK;
  if (status == LW_OK && shaken(plane)) status = find_part(state, plane, &found, error);
  if (status == LW_OK) *part = found;
  return status;
}

static void tell_rigid(const lw_plane *plane, const lw_seismic_part *part, const lw_working *working) {
  char terms[TERMS];
  double stress = moved_by_rigid_wall(plane, working, terms, sizeof terms) / plane->height_m;
  const lw_bound bound[] = {
      {"kh", plane->seismic.horizontal, ""}, {"s", stress, "kPa"}, {"H", plane->height_m, "m"}};
  const lw_step step = {"dP", "kh s H", NULL, part->increment_kn_per_m, "kN/m", "[WOOD1973 rigid wall]"};
  lw_working_step(working, &(lw_step){"s", "q + weight x depth, all of which moves", NULL, stress, "kPa", ""},
                  "%s", terms);
  lw_working_bound(working, &step, bound, sizeof bound / sizeof *bound);
}

/* The diagrams that the increment is the difference of, and what it makes of the thrust. */
static void tell(lw_earth_state state, const lw_plane *plane, const lw_seismic_part *part,
                 const lw_still *before, const lw_thrust *thrust, const lw_working *working) {
  lw_thrust again;
  lw_error error = {0};
  bool by_planes = state != LW_AT_REST && part->coefficient > 0.0;
  lw_working_heading(working, "Earthquake, as a steady push that makes weight 1 - kv times as heavy");
  if (by_planes) {
    lw_seismic_tell_layers(state, plane, working);
    (void)total_of(state, plane, false, &again, &error, working);
    lw_working_heading(working, "The same without earthquake and cohesion");
    (void)total_of(state, plane, true, &again, &error, working);
  }
  if (state == LW_AT_REST) tell_rigid(plane, part, working);
  lw_seismic_tell(plane, part, before, thrust, working);
}

/* What is taken off (passive, or weight made lighter) goes off at the static thrust's own height. */
void lw_seismic_add(lw_earth_state state, const lw_plane *plane, const lw_seismic_part *part,
                    lw_thrust *thrust, const lw_working *working) {
  if (!shaken(plane)) return;
  double before = thrust->total_kn_per_m, added = fmax(part->increment_kn_per_m, -before);
  double height = thrust->height_of_action_m;
  bool adds = added > 0.0;
  thrust->seismic_kn_per_m = added;
  thrust->seismic_coefficient = part->coefficient;
  thrust->seismic_turn_rad = part->turn_rad;
  thrust->seismic_height_m =
      adds ? plane->seismic.height_share * plane->height_m : thrust->height_of_action_m;
  thrust->total_kn_per_m = before + added;
  /* A static part that pulls may take all of it away again. */
  if (adds && thrust->total_kn_per_m > 0.0)
    thrust->height_of_action_m =
        (before * thrust->height_of_action_m + added * thrust->seismic_height_m) / thrust->total_kn_per_m;
  lw_thrust_resolve(thrust);
  if (working != NULL) tell(state, plane, part, &(lw_still){before, height}, thrust, working);
}
