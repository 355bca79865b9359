/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "rain_seepage.h"

#include <lowwall/studies.h>

#include <math.h>

#include "balance/ground.h"
#include "pressure/back_plane.h"

/* Does the drain stand on the plane of the push, at the wall's back or in stone that fills the gap? */
static bool drain_on_plane(const lw_wall *wall, const lw_back_plane *back) {
  double front = fmin(wall->section.base_width_m, wall->section.crest.x_m);
  return back->foot_x_m - front <= wall->site.stone_width_m + 1e-9;
}

void lw_rain_seepage_find(const lw_wall *wall, lw_rain_seepage *seepage, const lw_working *working) {
  const lw_site *site = &wall->site;
  lw_back_plane back;
  lw_ground ground;
  lw_error error = {0};
  bool somewhere = site->drain_outlets > 0 || site->joints_open;
  *seepage = (lw_rain_seepage){.looked_at = somewhere && !site->free_draining && wall->section.known};
  if (!seepage->looked_at) return;
  lw_ground_own(wall, &ground);
  lw_back_plane_build(site, &ground, &wall->method, &(lw_stack){&wall->section, 0.0}, &back);
  seepage->status = LW_NO_SOLUTION;
  seepage->reason = LW_REASON_NO_SEEPAGE_FORM;
  if (site->backfill_refused) seepage->reason = LW_REASON_REFUSED_BACKFILL;
  bool active = wall->method.pressure != LW_PRESSURE_AT_REST;
  if (site->backfill_refused || !active || !drain_on_plane(wall, &back)) return;
  seepage->status = lw_seepage_thrust(&back.plane, &seepage->push, &error, working);
  seepage->reason = error.reason;
}
