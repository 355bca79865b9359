/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "storm.h"

#include <lowwall/studies.h>

#include <math.h>

#include "standing.h"

void lw_storm_find(const lw_wall *wall, lw_storm *storm) {
  const lw_site *site = &wall->site;
  double floor = wall->section.height_m - wall->section.embedment_m, blocked = lw_standing_blocked(wall);
  *storm = (lw_storm){.rain_m = site->storm_rain_m, .porosity = site->drainable_porosity};
  if (storm->rain_m <= 0.0) {
    *storm = (lw_storm){.water_depth_m = site->water_depth_m};
    return;
  }
  storm->rise_m = storm->rain_m / storm->porosity;
  storm->from_depth_m = fmax(fmin(floor, site->water_depth_m), blocked);
  storm->spills = storm->from_depth_m - storm->rise_m < blocked;
  storm->water_depth_m = fmax(storm->from_depth_m - storm->rise_m, blocked);
}
