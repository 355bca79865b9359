/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "profile.h"

/* Earth pressure of ground that does not move: Jaky's simplified coefficient, raised by a slope. */

lw_status lw_at_rest_coefficient(double friction_rad, double slope_rad, double *k, lw_error *error) {
  if (!(friction_rad >= 0.0) || friction_rad >= acos(0.0))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                        "the friction angle must be from 0 to less than 90 deg");
  if (fabs(slope_rad) > friction_rad + 1e-12)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_STEEPER_THAN_FRICTION,
                        "the ground is steeper than its own friction angle");
  *k = (1.0 - sin(friction_rad)) * (1.0 + sin(slope_rad));
  return LW_OK;
}

lw_status lw_at_rest_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working) {
  (void)state; /* at rest is its own state */
  lw_law law = {.surcharge_factor = 1.0};
  lw_thrust made = {.angle_rad = plane->slope_rad};
  for (int i = 0; i < plane->layer_count; i++) {
    lw_status status =
        lw_at_rest_coefficient(plane->layer[i].friction_rad, plane->slope_rad, &law.k[i], error);
    if (status != LW_OK) return status;
  }
  lw_status status = lw_profile_integrate(plane, &law, &made, error);
  if (status != LW_OK) return status;
  *thrust = made;
  lw_working_heading(working, "At rest, on a vertical plane");
  lw_working_step(working,
                  &(lw_step){.symbol = "K0",
                             .formula = "(1 - sin phi)(1 + sin b)",
                             .value = thrust->coefficient,
                             .unit = "",
                             .source = "[JAKY1944 1 - sin phi]"},
                  "phi = %.2f deg, b = %.2f deg",
                  plane->layer[lw_layer_at(plane, plane->height_m)].friction_rad * 57.295779513082320877,
                  plane->slope_rad * 57.295779513082320877);
  lw_thrust_record(plane, thrust, working);
  return LW_OK;
}
