/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "wind.h"

#include <math.h>

#include "sheet/values.h"
#include "tables/known.h"

double lw_wind_pressure(const lw_tables *tables, int exposure) {
  static const lw_known_row rows[] = {LW_FENCE_OF_WIND_SHELTERED, LW_FENCE_OF_WIND_ORDINARY,
                                      LW_FENCE_OF_WIND_EXPOSED};
  return lw_known_value(tables, rows[exposure]);
}

/* Pressure with the factor of a run's end in it, and that factor. */
static double acting_pressure(const lw_case *c, const lw_tables *tables, double *factor) {
  *factor = 1.0;
  if (c->fence.wind_pressure.origin == LW_GIVEN) return c->fence.wind_pressure.si;
  bool end = c->fence.run_end.origin == LW_ABSENT || c->fence.run_end.value == LW_YES;
  int exposure =
      c->fence.wind_exposure.origin == LW_ABSENT ? LW_EXPOSURE_EXPOSED : c->fence.wind_exposure.value;
  if (end) *factor = lw_known_value(tables, LW_FENCE_OF_RUN_END);
  return *factor * lw_wind_pressure(tables, exposure);
}

/* Posts in a bed stand in the ground that the bed lies on, and were made to stand there by themselves: their
 * push goes into that ground, below the soil that the wall holds up. */
static double below_soil(const lw_case *c, double distance_m) {
  if (!lw_choice_is(&c->site.behind, LW_BEHIND_BED)) return 0.0;
  double held = lw_si_or(&c->wall.height, 0.0) - lw_si_or(&c->ground.soil_below_top, 0.0);
  double run = fmin(distance_m, lw_si_or(&c->ground.slope_run, INFINITY));
  double rise = run * tan(lw_si_or(&c->ground.slope, 0.0));
  return fmax(held + rise - lw_si_or(&c->site.level_difference, 0.0), 0.0);
}

void lw_wall_wind_build(const lw_case *c, const lw_tables *tables, lw_wall_wind *wind) {
  bool stands = c->fence.height.origin != LW_ABSENT && c->fence.height.si > 0.0;
  *wind = (lw_wall_wind){.present = stands};
  if (!stands) return;
  wind->behind = lw_choice_is(&c->fence.place, LW_FENCE_BEHIND);
  wind->height_m = c->fence.height.si;
  wind->pressure_kpa = acting_pressure(c, tables, &wind->end_factor);
  if (!wind->behind) return;
  wind->push_kn_per_m = wind->pressure_kpa * wind->height_m;
  wind->distance_m = lw_si_or(&c->fence.distance, 0.0);
  wind->below_m = below_soil(c, wind->distance_m);
}
