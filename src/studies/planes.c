/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/studies.h>

#include <math.h>

#include "balance/ground.h"
#include "pressure/back_plane.h"

/* The planes behind a wall on which the methods are set side by side. */

static lw_plane plane_of(const lw_wall *wall, const lw_ground *ground, lw_pressure_method by) {
  lw_method method = wall->method;
  lw_stack base = {&wall->section, 0.0};
  lw_back_plane back;
  method.pressure = by;
  method.plane = LW_PLANE_OWN;
  lw_back_plane_build(&wall->site, ground, &method, &base, &back);
  return back.plane;
}

/* The loads of a plane are those of the site in its order, without those on the cap or in front of it. */
static void number_loads(const lw_site *site, lw_diagram_asked *asked) {
  const lw_plane *back = &asked->back;
  for (int i = 0, k = 0; i < site->load_count && k < back->load_count; i++) {
    const lw_site_load *load = &site->load[i];
    bool strip = load->kind == LW_LOAD_STRIP, cap = load->kind == LW_LOAD_CAP;
    double force = strip ? load->pressure_kpa : load->force,
           on_plane = strip ? back->load[k].pressure_kpa : back->load[k].force_kn_per_m;
    if (cap || fabs(force - on_plane) > 1e-9) continue;
    asked->load_number[k++] = load->other_wall ? 0 : load->number;
  }
}

lw_status lw_diagram_planes(const lw_wall *wall, lw_diagram_asked *asked, lw_error *error) {
  lw_ground ground;
  if (!wall->section.known)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_DEPTH,
                        "there is no back to press on: the wall's depth is not given (block depth, or base "
                        "width)");
  lw_ground_own(wall, &ground);
  lw_diagram_asked made = {.back = plane_of(wall, &ground, LW_PRESSURE_COULOMB),
                           .upright = plane_of(wall, &ground, LW_PRESSURE_RANKINE),
                           .loads_by = wall->method.load_pressure};
  if (made.back.height_m <= 0.0 || made.upright.height_m <= 0.0)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_DEMAND, "no soil stands behind the wall");
  number_loads(&wall->site, &made);
  *asked = made;
  return LW_OK;
}
