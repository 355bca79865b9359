/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_SLIP_PARTS_H
#define LOWWALL_CLI_SLIP_PARTS_H

#include <lowwall/ground.h>

#include "formula.h"

/* What `lowwall slip` works out: a circle with its slices, or a plane along a long slope. */
typedef struct lw_slip_run {
  lw_units units;       /* of what is printed */
  bool circular, plane; /* which were asked for */
  bool searched;        /* the circle was not given */
  lw_slip_ground ground;
  lw_slip slip;
  lw_slip_slices list;
  double slope_rad, depth_m, uplift_kpa, plane_factor; /* uplift: per horizontal area */
} lw_slip_run;

void lw_slip_write_text(const lw_slip_run *run, lw_text *text);
json_t *lw_slip_write_json(const lw_formula_given *given, const lw_slip_run *run);

#endif
