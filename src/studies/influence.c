/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "influence.h"

#include <lowwall/studies.h>

#include <math.h>

#include "base/lines.h"
#include "pressure/methods.h"
#include "soil/site.h"
#include "tables/known.h"

/* Loads against the line of influence. Distances are from the rear of the top, as on the sheet. */

static const double ROUNDING = 1e-9;

/* The load's own level above the base. */
static double level_of(const lw_site *site, const lw_section *section, double behind_m, double below_m) {
  double rise = fmin(fmax(behind_m, 0.0), site->slope_run_m) * tan(site->slope_rad);
  return section->height_m - site->soil_below_top_m + rise - below_m;
}

/* How far the rear of the base lies in front of the rear of the top; negative: behind it. */
static double base_in_front(const lw_section *section) {
  return section->known ? section->crest.x_m - section->base_width_m : 0.0;
}

static void hold(const lw_wall *wall, double angle_rad, lw_influence_load *load) {
  double level = level_of(&wall->site, &wall->section, load->distance_m, load->below_m);
  load->line_m = level / tan(angle_rad) - base_in_front(&wall->section);
  /* Below the base nothing leans on the wall; a dig below a footing is asked about elsewhere. */
  load->below_base = level <= 0.0;
  load->inside = !load->below_base && load->distance_m < load->line_m - ROUNDING;
  if (!load->inside) return;
  double rise = tan(wall->site.slope_rad) / tan(angle_rad);
  double gap = load->line_m - load->distance_m, left = wall->site.slope_run_m - load->distance_m;
  bool climbs = rise < 1.0 && left > 0.0;
  double along = climbs ? gap / (1.0 - rise) : gap;
  /* On rising ground the line moves away as the load goes back, until the ground is level. */
  load->move_m = along <= left || left <= 0.0 ? along : gap + left * rise;
}

/* How far behind the rear of the top the line comes out of the ground: as far as a load at the wall would
 * have to move; 0 where it comes out in front of that. Ground as steep as the line counts to its bend. */
static double reach_m(const lw_wall *wall) {
  lw_influence_load at_the_wall = {0};
  hold(wall, wall->method.influence_rad, &at_the_wall);
  return at_the_wall.move_m;
}

static void add_uniform(const lw_site *site, int number, lw_influence *influence) {
  lw_number pressure = site->uniform_kpa[number - 1];
  if (pressure.known)
    influence->load[influence->count++] =
        (lw_influence_load){.number = number, .kind = LW_LOAD_UNIFORM, .pressure_kpa = pressure.value};
}

static void add_limited(const lw_site *site, int number, lw_influence *influence) {
  for (int i = 0; i < site->load_count; i++) {
    const lw_site_load *load = &site->load[i];
    if (load->number != number || load->kind == LW_LOAD_CAP) continue;
    influence->load[influence->count++] = (lw_influence_load){.number = number,
                                                              .kind = load->kind,
                                                              .pressure_kpa = load->pressure_kpa,
                                                              .force = load->force,
                                                              .distance_m = load->near_m,
                                                              .below_m = load->below_m};
  }
}

static double pressure_of(const lw_tables *tables, lw_known_row load) {
  return lw_known_load(tables, load)->value;
}

/* People on an even surface are garden use or a path; from the load of a vehicle on it is something heavy. */
static bool is_heavy(const lw_tables *tables, const lw_influence_load *load) {
  if (load->kind == LW_LOAD_UNIFORM)
    return load->pressure_kpa > pressure_of(tables, LW_LOAD_OF_VEHICLE) - ROUNDING;
  return load->force > 0.0 || load->pressure_kpa > pressure_of(tables, LW_LOAD_OF_GARDEN) + ROUNDING;
}

static double wedge_of(const lw_wall *wall) {
  const lw_site *site = &wall->site;
  double depth = fmax(wall->section.height_m + site->pad.thickness_m - site->soil_below_top_m, 0.0);
  double run = lw_failure_run(lw_site_least_friction(site));
  return lw_line_out_bent(depth, run, tan(site->slope_rad), site->slope_run_m);
}

void lw_influence_find(const lw_wall *wall, const lw_tables *tables, lw_influence *influence) {
  *influence = (lw_influence){
      .angle_rad = wall->method.influence_rad, .reach_m = reach_m(wall), .wedge_m = wedge_of(wall)};
  for (int number = 1; number <= LW_LOAD_MAX; number++) {
    add_uniform(&wall->site, number, influence);
    add_limited(&wall->site, number, influence);
  }
  for (int i = 0; i < influence->count; i++) {
    lw_influence_load *load = &influence->load[i];
    load->heavy = is_heavy(tables, load);
    hold(wall, influence->angle_rad, load);
  }
}
