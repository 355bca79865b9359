/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <math.h>

#include "soil/strength.h"

/* The annex asks for H of at most A' cu; beyond, the footing slides and bears nothing. */
static void inclination(const bearing_work *work) {
  lw_bearing *b = work->found;
  if (!lw_soil_is_frictionless(work->strip->friction_rad)) {
    lw_bearing_power_inclination(work);
    return;
  }
  double left = lw_bearing_left_by_cohesion(work);
  b->ic = left > 0.0 ? 0.5 * (1.0 + sqrt(left)) : 0.0;
  lw_bearing_write_inclination(work, "ic", left > 0.0 ? "(1 + sqrt(1 - H/(B' c)))/2" : "0", b->ic);
}

static const bearing_author author = {
    .routine = &lw_bearing_routine_en1997,
    .n_gamma = LW_N_GAMMA_EN1997,
    .capacity = lw_bearing_prandtl,
    .inclination = inclination,
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
