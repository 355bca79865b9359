/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <math.h>

#include "soil/strength.h"

static void depth(const bearing_work *work) {
  double k = lw_bearing_depth_ratio(work), phi = work->strip->friction_rad, rest = 1.0 - sin(phi);
  bool none = lw_soil_is_frictionless(phi);
  lw_bearing *b = work->found;
  b->dq = 1.0 + 2.0 * tan(phi) * rest * rest * k;
  b->dc = none ? 1.0 + 0.4 * k : b->dq - (1.0 - b->dq) / (b->nc * tan(phi));
  lw_bearing_write(work, "dq", "1 + 2 tan phi (1 - sin phi)^2 k", b->dq);
  lw_bearing_write(work, "dc", none ? "1 + 0.4 k" : "dq - (1 - dq)/(Nc tan phi)", b->dc);
}

/* Where H exceeds what the cohesion holds, the footing slides and bears nothing. */
static void inclination(const bearing_work *work) {
  lw_bearing *b = work->found;
  if (!lw_soil_is_frictionless(work->strip->friction_rad)) {
    lw_bearing_power_inclination(work);
    return;
  }
  double held = b->effective_width_m * work->strip->cohesion_kpa, h = work->strip->horizontal_kn_per_m;
  b->ic = h < held ? 1.0 - 2.0 * h / (held * b->nc) : 0.0;
  lw_bearing_write_inclination(work, "ic", h < held ? "1 - 2 H/(B' c Nc)" : "0", b->ic);
}

static const bearing_author author = {
    .routine = &lw_bearing_routine_vesic,
    .n_gamma = LW_N_GAMMA_VESIC,
    .capacity = lw_bearing_prandtl,
    .depth = depth,
    .inclination = inclination,
    .inclination_source = "[VESIC-1973 inclination]",
};

lw_status lw_bearing_vesic(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                           const lw_working *working) {
  return lw_bearing_by(&author, strip, bearing, error, working);
}

const lw_bearing_routine lw_bearing_routine_vesic = {
    .slug = "vesic",
    .title = "Bearing by Vesic",
    .source = "[VESIC-1973 general equation]",
    .ultimate = lw_bearing_vesic,
};
