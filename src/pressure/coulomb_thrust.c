/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/bound.h"
#include "base/working.h"
#include "profile_record.h"
#include "seismic.h"

/* Coulomb's thrust on the back, layer by layer. */

static void record(const lw_plane *plane, int i, lw_earth_state state, double k, const lw_working *working) {
  const lw_layer *layer = &plane->layer[i];
  const lw_bound bound[] = {{"phi", layer->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"d", plane->wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"t", plane->batter_rad * LW_DEG_PER_RAD, "deg"},
                            {"b", plane->slope_rad * LW_DEG_PER_RAD, "deg"}};
  bool passive = state == LW_PASSIVE;
  const char *symbol = passive ? "Kp" : "Ka";
  const lw_step step = {
      symbol,
      passive ? "cos^2(phi+t) / (cos^2 t cos(d-t) [1 - sqrt(sin(phi+d) sin(phi+b) / (cos(d-t) cos(t-b)))]^2)"
              : "cos^2(phi-t) / (cos^2 t cos(d+t) [1 + sqrt(sin(phi+d) sin(phi-b) / (cos(d+t) cos(t-b)))]^2)",
      NULL,
      k,
      "",
      "[COULOMB1776 wedge]"};
  if (working == NULL || !lw_layer_is_met(plane, i)) return;
  lw_layer_heading(plane, i, working);
  lw_working_bound(working, &step, bound, sizeof bound / sizeof *bound);
  lw_cohesion_record(symbol, k, layer->cohesion_kpa, working);
}

lw_status lw_coulomb_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working) {
  double theta = plane->batter_rad, beta = plane->slope_rad, delta = plane->wall_friction_rad;
  double sign = state == LW_PASSIVE ? -1.0 : 1.0;
  if (lw_plane_hold(plane, error) != LW_OK) return LW_NO_SOLUTION;
  lw_law law = {.surcharge_factor = cos(theta) * cos(beta) / cos(theta - beta), .working = working};
  lw_working_heading(working, "Coulomb, on the back");
  /* A passive thrust with friction points above the normal: it lifts the wall. */
  double angle = state == LW_PASSIVE ? theta - delta : theta + delta;
  bool unsafe = false;
  for (int i = 0; i < plane->layer_count; i++) {
    const lw_layer *layer = &plane->layer[i];
    lw_wall_angles angles = {layer->friction_rad, delta, theta, beta};
    lw_status status = lw_coulomb_coefficient(state, &angles, &law.k[i], error);
    if (status != LW_OK) return status;
    law.cut_kpa[i] = sign * 2.0 * layer->cohesion_kpa * sqrt(law.k[i]);
    record(plane, i, state, law.k[i], working);
    unsafe = unsafe || (state == LW_PASSIVE && delta > layer->friction_rad / 3.0 + 1e-9);
  }
  lw_seismic_part part;
  lw_status status = lw_seismic_find(state, plane, &part, error);
  if (status != LW_OK) return status;
  lw_profile_integrate(plane, &law, angle, thrust);
  thrust->passive_unsafe = unsafe;
  lw_seismic_add(state, plane, &part, thrust, working);
  return LW_OK;
}
