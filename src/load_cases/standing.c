/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "standing.h"

#include <math.h>

#include "soil/site.h"

double lw_standing_half(const lw_wall *wall) {
  const lw_section *section = &wall->section;
  double full = lw_site_blocked_depth(&wall->site), ground = section->height_m - section->embedment_m;
  double half = section->height_m - wall->site.joints_hold * (section->height_m - full);
  return fmax(fmin(fmin(half, ground), wall->site.water_depth_m), full);
}

bool lw_standing_by_joints(const lw_site *site) {
  return site->joints_open && site->ways_out == 1;
}

double lw_standing_blocked(const lw_wall *wall) {
  return lw_standing_by_joints(&wall->site) ? lw_standing_half(wall) : lw_site_blocked_depth(&wall->site);
}
