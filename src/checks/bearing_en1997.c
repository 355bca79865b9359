/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <math.h>

/* The annex asks for H of at most A' cu; beyond, the footing slides and bears nothing. */
static void inclination(const lw_strip *strip, lw_bearing *b) {
  if (!lw_bearing_is_frictionless(strip->friction_rad)) {
    lw_bearing_power_inclination(strip, b);
    return;
  }
  double held = b->effective_width_m * strip->cohesion_kpa;
  bool slides = !(strip->horizontal_kn_per_m < held);
  b->ic = slides ? 0.0 : 0.5 * (1.0 + sqrt(1.0 - strip->horizontal_kn_per_m / held));
}

static const bearing_author author = {
    .routine = &lw_bearing_routine_en1997,
    .n_gamma = LW_N_GAMMA_EN1997,
    .capacity = lw_bearing_prandtl,
    .inclination = inclination,
    .capacity_wording = {.c = LW_PRANDTL_NC, .q = LW_PRANDTL_NQ},
    .inclination_wording = {.c = "iq - (1 - iq)/(Nc tan phi); phi = 0: (1 + sqrt(1 - H/(B' c)))/2",
                            .q = "(1 - H/(V + B' c cot phi))^2",
                            .gamma = "(1 - H/(V + B' c cot phi))^3"},
    .inclination_source = "[EN1997-1 annex D.4]",
};

lw_status lw_bearing_en1997(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                            const lw_working *working) {
  return lw_bearing_by(&author, strip, bearing, error, working);
}

const lw_bearing_routine lw_bearing_routine_en1997 = {
    .slug = "en1997",
    .title = "Bearing by EN 1997-1 annex D",
    .source = "[EN1997-1 annex D]",
    .ultimate = lw_bearing_en1997,
};
