/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <math.h>

static void depth(const lw_strip *strip, lw_bearing *b) {
  double ratio = lw_bearing_depth_ratio(strip);
  double rest = 1.0 - sin(strip->friction_rad);
  b->dc = 1.0 + 0.4 * ratio;
  b->dq = 1.0 + 2.0 * tan(strip->friction_rad) * rest * rest * ratio;
}

/* Where H exceeds what the cohesion holds, the footing slides and bears nothing. */
static double frictionless_ic(const lw_strip *strip, double width_m) {
  double held = width_m * strip->cohesion_kpa;
  return strip->horizontal_kn_per_m < held ? 0.5 + 0.5 * sqrt(1.0 - strip->horizontal_kn_per_m / held) : 0.0;
}

static void inclination(const lw_strip *strip, lw_bearing *b) {
  if (lw_bearing_is_frictionless(strip->friction_rad)) {
    b->ic = frictionless_ic(strip, b->effective_width_m);
    return;
  }
  b->iq = lw_bearing_share_left(strip, 0.5, 5.0);
  b->i_gamma = lw_bearing_share_left(strip, 0.7, 5.0);
  b->ic = fmax(b->iq - (1.0 - b->iq) / (b->nq - 1.0), 0.0);
}

static const bearing_author author = {
    .routine = &lw_bearing_routine_hansen,
    .n_gamma = LW_N_GAMMA_HANSEN,
    .capacity = lw_bearing_prandtl,
    .depth = depth,
    .inclination = inclination,
    .capacity_wording = {.c = LW_PRANDTL_NC, .q = LW_PRANDTL_NQ},
    .depth_wording = {.c = "1 + 0.4 k, k = D/B or atan(D/B) above 1",
                      .q = "1 + 2 tan phi (1 - sin phi)^2 k",
                      .gamma = "1"},
    .inclination_wording = {.c = "iq - (1 - iq)/(Nq - 1); phi = 0: 1/2 + sqrt(1 - H/(B' c))/2",
                            .q = "(1 - 0.5 H/(V + B' c cot phi))^5",
                            .gamma = "(1 - 0.7 H/(V + B' c cot phi))^5"},
    .inclination_source = "[HANSEN-1970 inclination]",
};

lw_status lw_bearing_hansen(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                            const lw_working *working) {
  return lw_bearing_by(&author, strip, bearing, error, working);
}

const lw_bearing_routine lw_bearing_routine_hansen = {
    .slug = "hansen",
    .title = "Bearing by Hansen",
    .source = "[HANSEN-1970 general equation]",
    .ultimate = lw_bearing_hansen,
};
