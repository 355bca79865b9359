/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "given.h"

#include <math.h>

#include "base/working.h"
#include "profile_record.h"

/* A coefficient that a book or a report gives as a number, on the plane and along the direction of the method
 * that it stands in for. */

static bool shakes(const lw_plane *plane) {
  return fabs(plane->seismic.horizontal) > 0.0 || fabs(plane->seismic.vertical) > 0.0;
}

/* On a battered back a load per horizontal area spreads as Coulomb's does. */
static lw_law law_of(const lw_plane *plane, lw_earth_state state) {
  double theta = plane->batter_rad, beta = plane->slope_rad, k = plane->coefficient;
  lw_law law = {.surcharge_factor = plane->along_ground ? 1.0 : cos(theta) * cos(beta) / cos(theta - beta)};
  for (int i = 0; i < plane->layer_count; i++) {
    law.k[i] = k;
    law.cut_kpa[i] = state == LW_AT_REST ? 0.0 : 2.0 * plane->layer[i].cohesion_kpa * sqrt(k);
  }
  return law;
}

static lw_status thrust_by_number(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust,
                                  lw_error *error, const lw_working *working) {
  if (lw_plane_hold(plane, error) != LW_OK) return LW_NO_SOLUTION;
  if (!(plane->coefficient > 0.0) || state == LW_PASSIVE || shakes(plane))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_GIVEN_NUMBER,
                        "a coefficient that is given stands for a thrust without an earthquake");
  lw_law law = law_of(plane, state);
  law.working = working;
  double angle = plane->along_ground ? plane->slope_rad : plane->batter_rad + plane->wall_friction_rad;
  lw_working_heading(working, "By the coefficient that is given");
  for (int i = 0; i < plane->layer_count && state != LW_AT_REST; i++)
    if (lw_layer_is_met(plane, i)) {
      lw_layer_heading(plane, i, working);
      lw_cohesion_record("K", plane->coefficient, plane->layer[i].cohesion_kpa, working);
    }
  lw_profile_integrate(plane, &law, angle, thrust);
  return LW_OK;
}

const lw_pressure_routine *lw_given_routine(void) {
  static const lw_pressure_routine routine = {"the coefficient given", "by a coefficient that is given", "",
                                              thrust_by_number};
  return &routine;
}
