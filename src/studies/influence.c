/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/influence.h>

#include <math.h>

/* Loads against the line of influence. Distances are from the rear of the top, as on the sheet. */

static const double ROUNDING = 1e-9;

static double value_or_none(const lw_quantity *q) {
  return q->origin == LW_ABSENT ? 0.0 : q->si;
}

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

/* As far as a load at the wall would have to move. */
double lw_influence_reach(const lw_wall *wall) {
  lw_influence_load at_the_wall = {0};
  hold(wall, wall->method.influence_rad, &at_the_wall);
  return at_the_wall.move_m;
}

static bool is_behind(const lw_case_load *load) {
  bool there = load->kind.origin == LW_GIVEN && load->kind.value != LW_LOAD_NONE;
  return there && load->kind.value != LW_LOAD_CAP;
}

static lw_influence_load load_of(const lw_case_load *from, int number) {
  lw_influence_load load = {.number = number, .kind = (lw_load_kind)from->kind.value};
  bool strip = load.kind == LW_LOAD_STRIP, uniform = load.kind == LW_LOAD_UNIFORM;
  load.pressure_kpa = strip || uniform ? value_or_none(&from->pressure) : 0.0;
  load.force = strip || uniform ? 0.0 : value_or_none(&from->force);
  load.distance_m = uniform ? 0.0 : value_or_none(strip ? &from->near_edge : &from->distance);
  load.below_m = value_or_none(&from->below_ground);
  return load;
}

static double pressure_of(const lw_tables *tables, lw_known_row load) {
  const lw_load_row *row = lw_known_load(tables, load);
  return row ? row->value : 0.0;
}

/* People on an even surface are garden use or a path; from the load of a vehicle on it is something heavy. */
static bool is_heavy(const lw_tables *tables, const lw_influence_load *load) {
  if (load->kind == LW_LOAD_UNIFORM)
    return load->pressure_kpa > pressure_of(tables, LW_LOAD_OF_VEHICLE) - ROUNDING;
  return load->force > 0.0 || load->pressure_kpa > pressure_of(tables, LW_LOAD_OF_GARDEN) + ROUNDING;
}

void lw_influence_find(const lw_case *c, const lw_tables *tables, const lw_wall *wall,
                       lw_influence *influence) {
  *influence = (lw_influence){.angle_rad = wall->method.influence_rad, .reach_m = lw_influence_reach(wall)};
  for (int i = 0; i < LW_LOAD_MAX; i++) {
    if (!is_behind(&c->load[i])) continue;
    lw_influence_load *load = &influence->load[influence->count++];
    *load = load_of(&c->load[i], i + 1);
    load->heavy = is_heavy(tables, load);
    hold(wall, influence->angle_rad, load);
  }
}
