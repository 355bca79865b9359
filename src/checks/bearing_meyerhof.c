/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <math.h>

#include "base/angles.h"

/* Between the frictionless soil's factor and that of 10 degrees he leaves a gap: the lower one is kept. */
static const double depth_from_rad = 10.0 * LW_PI / 180.0;

static void depth(const bearing_work *work) {
  const lw_strip *strip = work->strip;
  lw_bearing *b = work->found;
  double ratio = tan(LW_PI / 4.0 + strip->friction_rad / 2.0) * strip->depth_m / strip->width_m;
  bool counts = strip->friction_rad > depth_from_rad - 1e-9;
  b->dc = 1.0 + 0.2 * ratio;
  b->dq = b->d_gamma = counts ? 1.0 + 0.1 * ratio : 1.0;
  lw_bearing_write(work, "dc", "1 + 0.2 tan(45 + phi/2) Df/B", b->dc);
  lw_bearing_write(work, "dq", counts ? "1 + 0.1 tan(45 + phi/2) Df/B" : "1", b->dq);
  lw_bearing_write(work, "dgamma", "dq", b->d_gamma);
}

/* A load inclined at the soil's own friction leaves nothing to the width term. */
void lw_bearing_meyerhof_inclination(const bearing_work *work) {
  const lw_strip *strip = work->strip;
  double angle = atan2(strip->horizontal_kn_per_m, strip->vertical_kn_per_m);
  double left = 1.0 - angle / (LW_PI / 2.0);
  double rest = angle < strip->friction_rad ? 1.0 - angle / strip->friction_rad : 0.0;
  lw_bearing *b = work->found;
  b->ic = b->iq = left * left;
  b->i_gamma = rest * rest;
  work->way->load_angle_rad = angle;
  lw_bearing_write_inclination(work, "omega", "atan(H/V)", angle * LW_DEG_PER_RAD);
  lw_bearing_write_inclination(work, "iq", "(1 - omega/90)^2", b->iq);
  lw_bearing_write_inclination(work, "ic", "iq", b->ic);
  lw_bearing_write_inclination(work, "igamma", rest > 0.0 ? "(1 - omega/phi)^2" : "0", b->i_gamma);
}

static const bearing_author author = {
    .routine = &lw_bearing_routine_meyerhof,
    .n_gamma = LW_N_GAMMA_MEYERHOF,
    .capacity = lw_bearing_prandtl,
    .depth = depth,
    .inclination = lw_bearing_meyerhof_inclination,
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
