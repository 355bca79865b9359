/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "coulomb_write.h"

#include "base/bound.h"

static const char SOURCE[] = "[COULOMB1776 wedge]";
static const char ACTIVE[] =
    "cos^2(phi - t)/(cos^2 t cos(d + t) [1 + sqrt(sin(phi + d) sin(phi - b)/(cos(d + t) cos(t - b)))]^2)";
static const char PASSIVE[] =
    "cos^2(phi + t)/(cos^2 t cos(d - t) [1 - sqrt(sin(phi + d) sin(phi + b)/(cos(d - t) cos(t - b)))]^2)";

void lw_coulomb_write(lw_earth_state state, const lw_wall_angles *angles, double k,
                      const lw_working *working) {
  const lw_bound bound[] = {{"phi", angles->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"d", angles->wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"b", angles->slope_rad * LW_DEG_PER_RAD, "deg"},
                            {"t", angles->batter_rad * LW_DEG_PER_RAD, "deg"}};
  const lw_step active = {"Ka", ACTIVE, NULL, k, "", SOURCE}, passive = {"Kp", PASSIVE, NULL, k, "", SOURCE};
  lw_working_bound(working, state == LW_PASSIVE ? &passive : &active, bound, sizeof bound / sizeof bound[0]);
}
