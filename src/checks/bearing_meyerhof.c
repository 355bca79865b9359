/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <math.h>

static const double pi = 3.14159265358979323846;

/* Between the frictionless soil's factor and that of 10 degrees he leaves a gap: the lower one is kept. */
static const double depth_from_rad = 10.0 * 3.14159265358979323846 / 180.0;

static void depth(const lw_strip *strip, lw_bearing *b) {
  double ratio = tan(pi / 4.0 + strip->friction_rad / 2.0) * strip->depth_m / strip->width_m;
  b->dc = 1.0 + 0.2 * ratio;
  b->dq = b->d_gamma = strip->friction_rad > depth_from_rad - 1e-9 ? 1.0 + 0.1 * ratio : 1.0;
}

/* A load inclined at the soil's own friction leaves nothing to the width term. */
void lw_bearing_meyerhof_inclination(const lw_strip *strip, lw_bearing *b) {
  double angle = atan2(strip->horizontal_kn_per_m, strip->vertical_kn_per_m);
  double left = 1.0 - angle / (pi / 2.0);
  b->ic = b->iq = left * left;
  double rest = angle < strip->friction_rad ? 1.0 - angle / strip->friction_rad : 0.0;
  b->i_gamma = rest * rest;
}

static const bearing_author author = {
    .routine = &lw_bearing_routine_meyerhof,
    .n_gamma = LW_N_GAMMA_MEYERHOF,
    .capacity = lw_bearing_prandtl,
    .depth = depth,
    .inclination = lw_bearing_meyerhof_inclination,
    .capacity_wording = {.c = LW_PRANDTL_NC, .q = LW_PRANDTL_NQ},
    .depth_wording = {.c = "1 + 0.2 tan(45 + phi/2) D/B",
                      .q = "1 + 0.1 tan(45 + phi/2) D/B; 1 below 10 deg",
                      .gamma = "dq"},
    .inclination_wording = LW_MEYERHOF_INCLINATION_WORDING,
    .inclination_source = "[MEYERHOF-1963 inclination]",
};

lw_status lw_bearing_meyerhof(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                              const lw_working *working) {
  return lw_bearing_by(&author, strip, bearing, error, working);
}

const lw_bearing_routine lw_bearing_routine_meyerhof = {
    .slug = "meyerhof",
    .title = "Bearing by Meyerhof",
    .source = "[MEYERHOF-1963 general equation]",
    .ultimate = lw_bearing_meyerhof,
};
