/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "pressure_run.h"

/* The method in hand, what stands beside it, and all methods on their planes. */

/* What a formula's coefficient would be with the wedge's thrust: only where weight and load alone push. */
static double wedge_coefficient(const lw_pressure_run *run) {
  const lw_plane *p = &run->plane;
  if (!lw_plane_is_plain(p) || p->water_depth_m < p->height_m) return NAN;
  double load = p->surcharge_kpa * cos(p->batter_rad) * cos(p->slope_rad) / cos(p->batter_rad - p->slope_rad);
  return (run->thrust.total_kn_per_m - run->thrust.seismic_kn_per_m) /
         (0.5 * p->layer[0].unit_weight_kn_per_m3 * p->height_m * p->height_m + load * p->height_m);
}

/* What Rankine has for the same height of soil, who takes neither friction nor batter of a back. */
static void find_rankine(lw_pressure_run *run) {
  lw_plane plane = run->plane;
  if (run->plane.along_ground || run->curved) return;
  plane.along_ground = true;
  plane.batter_rad = 0.0;
  plane.wall_friction_rad = plane.slope_rad;
  run->rankine_known = lw_rankine_thrust(run->state, &plane, &run->rankine, NULL, NULL) == LW_OK;
}

lw_status lw_pressure_compute(lw_pressure_run *run, const lw_working *told, bool every) {
  const lw_working *working = every ? NULL : told;
  lw_status status = run->routine->thrust(run->state, &run->plane, &run->thrust, &run->error, working);
  if (status != LW_OK) return status;
  const lw_working *second = run->method == LW_PRESSURE_WEDGE ? NULL : working;
  status = lw_trial_wedge_thrust(run->state, &run->wedge_plane, &run->wedge, &run->wedge_error, second);
  run->wedge_known = status == LW_OK;
  double formula = run->thrust.total_kn_per_m, gap = fabs(formula - run->wedge.thrust_kn_per_m);
  run->faulty = lw_pressure_must_agree(run) && !(gap <= 1e-6 * fmax(formula, 1e-3));
  if (run->method == LW_PRESSURE_WEDGE) run->thrust.coefficient = wedge_coefficient(run);
  find_rankine(run);
  lw_diagram_find(&run->asked, &run->diagram, every ? told : NULL);
  lw_pressure_beside_find(run->state, &run->plane, &run->beside, told);
  return LW_OK;
}
