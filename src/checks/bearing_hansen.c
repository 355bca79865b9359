/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <math.h>

#include "soil/strength.h"

static void depth(const bearing_work *work) {
  double k = lw_bearing_depth_ratio(work), phi = work->strip->friction_rad, rest = 1.0 - sin(phi);
  work->found->dc = 1.0 + 0.4 * k;
  work->found->dq = 1.0 + 2.0 * tan(phi) * rest * rest * k;
  lw_bearing_write(work, "dq", "1 + 2 tan phi (1 - sin phi)^2 k", work->found->dq);
  lw_bearing_write(work, "dc", "1 + 0.4 k", work->found->dc);
}

/* Where H exceeds what the cohesion holds, the footing slides and bears nothing. */
static void frictionless_inclination(const bearing_work *work) {
  double left = lw_bearing_left_by_cohesion(work);
  work->found->ic = left > 0.0 ? 0.5 + 0.5 * sqrt(left) : 0.0;
  lw_bearing_write_inclination(work, "ic", left > 0.0 ? "1/2 + sqrt(1 - H/(B' c))/2" : "0", work->found->ic);
}

static void inclination(const bearing_work *work) {
  static const bearing_share by_depth = {"iq", "(1 - 0.5 H/(V + B' c cot phi))^5", 0.5, 5.0},
                             by_weight = {"igamma", "(1 - 0.7 H/(V + B' c cot phi))^5", 0.7, 5.0};
  lw_bearing *b = work->found;
  if (lw_soil_is_frictionless(work->strip->friction_rad)) {
    frictionless_inclination(work);
    return;
  }
  b->iq = lw_bearing_share_left(work, &by_depth);
  b->i_gamma = lw_bearing_share_left(work, &by_weight);
  b->ic = lw_bearing_cohesion_left(work, "iq - (1 - iq)/(Nq - 1)", b->iq - (1.0 - b->iq) / (b->nq - 1.0));
}

static const bearing_author author = {
    .routine = &lw_bearing_routine_hansen,
    .n_gamma = LW_N_GAMMA_HANSEN,
    .capacity = lw_bearing_prandtl,
    .depth = depth,
    .inclination = inclination,
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
