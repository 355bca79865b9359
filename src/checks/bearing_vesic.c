/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <math.h>

static void depth(const lw_strip *strip, lw_bearing *b) {
  double ratio = lw_bearing_depth_ratio(strip);
  double rest = 1.0 - sin(strip->friction_rad);
  b->dq = 1.0 + 2.0 * tan(strip->friction_rad) * rest * rest * ratio;
  b->dc = lw_bearing_is_frictionless(strip->friction_rad)
              ? 1.0 + 0.4 * ratio
              : b->dq - (1.0 - b->dq) / (b->nc * tan(strip->friction_rad));
}

/* Where H exceeds what the cohesion holds, the footing slides and bears nothing. */
static void inclination(const lw_strip *strip, lw_bearing *b) {
  if (!lw_bearing_is_frictionless(strip->friction_rad)) {
    lw_bearing_power_inclination(strip, b);
    return;
  }
  double held = b->effective_width_m * strip->cohesion_kpa;
  bool slides = !(strip->horizontal_kn_per_m < held);
  b->ic = slides ? 0.0 : 1.0 - 2.0 * strip->horizontal_kn_per_m / (held * b->nc);
}

static const bearing_author author = {
    .routine = &lw_bearing_routine_vesic,
    .n_gamma = LW_N_GAMMA_VESIC,
    .capacity = lw_bearing_prandtl,
    .depth = depth,
    .inclination = inclination,
    .capacity_wording = {.c = LW_PRANDTL_NC, .q = LW_PRANDTL_NQ},
    .depth_wording = {.c = "dq - (1 - dq)/(Nc tan phi); phi = 0: 1 + 0.4 k",
                      .q = "1 + 2 tan phi (1 - sin phi)^2 k, k = D/B or atan(D/B) above 1",
                      .gamma = "1"},
    .inclination_wording = {.c = "iq - (1 - iq)/(Nc tan phi); phi = 0: 1 - 2 H/(B' c Nc)",
                            .q = "(1 - H/(V + B' c cot phi))^2",
                            .gamma = "(1 - H/(V + B' c cot phi))^3"},
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
