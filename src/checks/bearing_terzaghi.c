/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/angles.h"
#include "base/working.h"
#include "bearing_common.h"

#include <math.h>

#include "soil/strength.h"

/* Terzaghi never gave a formula for Ngamma, only curves. The passive coefficients behind them, each 5 degrees
 * [BOWLES-FAD table 4-2]; from memory, and held by the printed Ngamma of [BCF-WEB Terzaghi]. */
static const double passive[] = {10.8, 12.2, 14.7, 18.6, 25.0, 35.0, 52.0, 82.0, 141.0, 298.0, 800.0};
enum { LAST = (int)(sizeof passive / sizeof passive[0]) - 1 };

/* They grow by a nearly even share from one row to the next, so they are interpolated in their logarithm. */
static double passive_at(const bearing_work *work) {
  double degrees = work->strip->friction_rad * 180.0 / LW_PI, steps = degrees / 5.0;
  int row = (int)fmin(fmax(steps, 0.0), LAST - 1);
  double found = work->way->kp_gamma = passive[row] * pow(passive[row + 1] / passive[row], steps - row);
  lw_working_step(work->working,
                  &(lw_step){.symbol = "Kpg",
                             .formula = "between two rows of the table, in the logarithm",
                             .value = found,
                             .unit = "",
                             .source = "[BOWLES-FAD table 4-2]"},
                  "%.1f (%.1f/%.1f)^(%.3f/5 - %d)", passive[row], passive[row + 1], passive[row], degrees,
                  row);
  return found;
}

static void capacity(const bearing_work *work) {
  lw_bearing *b = work->found;
  double phi = work->strip->friction_rad, half = cos(LW_PI / 4.0 + phi / 2.0);
  bool none = lw_soil_is_frictionless(phi);
  b->nq = exp(2.0 * (0.75 * LW_PI - phi / 2.0) * tan(phi)) / (2.0 * half * half);
  b->nc = none ? 1.5 * LW_PI + 1.0 : (b->nq - 1.0) / tan(phi);
  lw_bearing_write(work, "Nq", "exp(pi (1.5 - phi/180) tan phi)/(2 cos^2(45 + phi/2))", b->nq);
  lw_bearing_write(work, "Nc", none ? "1.5 pi + 1" : "(Nq - 1) cot phi", b->nc);
  if (work->strip->n_gamma != LW_N_GAMMA_OWN) return;
  b->n_gamma = 0.5 * tan(phi) * (passive_at(work) / (cos(phi) * cos(phi)) - 1.0);
  lw_bearing_write(work, "Ngamma", "0.5 tan phi (Kpg/cos^2 phi - 1)", b->n_gamma);
}

/* His theory stops at a vertical load. Leaving an inclined one as if it were vertical would be unsafe, so
 * Meyerhof's factors stand in. */
static const bearing_author author = {
    .routine = &lw_bearing_routine_terzaghi,
    .n_gamma = LW_N_GAMMA_OWN,
    .capacity = capacity,
    .inclination = lw_bearing_meyerhof_inclination,
    .inclination_source = "[MEYERHOF-1963 inclination]",
};

lw_status lw_bearing_terzaghi(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                              const lw_working *working) {
  return lw_bearing_by(&author, strip, bearing, error, working);
}

const lw_bearing_routine lw_bearing_routine_terzaghi = {
    .slug = "terzaghi",
    .title = "Bearing by Terzaghi",
    .source = "[TERZAGHI-1943 chapter 8]",
    .ultimate = lw_bearing_terzaghi,
};
