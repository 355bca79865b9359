/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "site.h"

#include <lowwall/wall.h>

#include <math.h>

#include "sheet/values.h"
#include "tables/known.h"
#include "backfill.h"
#include "footing.h"

static const double MM_PER_HOUR = 3.6e6; /* in 1 m/s */

static bool present(const lw_quantity *q) {
  return q->origin != LW_ABSENT;
}

static void soil_build(const lw_case_soil *from, lw_soil *soil) {
  soil->friction_rad = lw_si_or(&from->friction, 0.0);
  soil->cohesion_kpa = lw_si_or(&from->cohesion, 0.0);
  soil->unit_weight_kn_per_m3 = lw_si_or(&from->unit_weight, 0.0);
  soil->light_unit_weight_kn_per_m3 = lw_si_or(&from->light_unit_weight, soil->unit_weight_kn_per_m3);
  soil->saturated_unit_weight_kn_per_m3 = lw_si_or(&from->saturated_unit_weight, soil->unit_weight_kn_per_m3);
  soil->bottom_m = lw_si_or(&from->bottom, INFINITY);
  soil->overconsolidation = lw_si_or(&from->overconsolidation, 1.0);
}

static const lw_soil_row *row_of(const lw_case_soil *soil, const lw_tables *tables) {
  return soil->name.origin == LW_ABSENT ? NULL : lw_tables_soil(tables, soil->name.text);
}

static void refuse(lw_site *site, int index, lw_refused why) {
  site->refused = why;
  site->refused_soil = index;
  site->backfill_refused = why != LW_REFUSED_NOT;
}

static void soils_build(const lw_case *c, const lw_tables *tables, lw_site *site) {
  site->free_draining = true;
  site->permeability_m_per_s = INFINITY;
  for (int i = 0; i < LW_SOIL_MAX; i++) {
    const lw_case_soil *from = &c->ground.soil[i];
    if (i > 0 && !present(&from->unit_weight) && from->name.origin == LW_ABSENT) break;
    const lw_soil_row *row = row_of(from, tables);
    soil_build(from, &site->soil[site->soil_count++]);
    if (!site->backfill_refused) refuse(site, i, lw_backfill_refused(c, i, row, tables));
    site->free_draining = site->free_draining && row && row->free_draining;
    site->permeability_m_per_s = fmin(site->permeability_m_per_s, row ? row->permeability_m_per_s : 0.0);
  }
  site->soil[site->soil_count - 1].bottom_m = INFINITY;
}

static void thresholds_build(const lw_tables *tables, lw_site *site) {
  site->leading_stone_m = lw_known_value(tables, LW_THRESHOLD_STONE_WIDTH);
  site->level_rad = atan(lw_known_value(tables, LW_THRESHOLD_LEVEL_GROUND));
  site->lean_height_m = lw_known_value(tables, LW_THRESHOLD_LEAN_HEIGHT);
  site->fine_m_per_s = lw_known_value(tables, LW_THRESHOLD_FINE_SOIL) / MM_PER_HOUR;
  site->reach_run = lw_known_value(tables, LW_THRESHOLD_REACH_LINE);
  site->joints_hold = lw_known_value(tables, LW_THRESHOLD_OPEN_JOINTS_HOLD);
  site->trench_line_fall = lw_known_value(tables, LW_THRESHOLD_TRENCH_LINE);
}

static void ground_build(const lw_case *c, lw_site *site) {
  site->slope_rad = lw_si_or(&c->ground.slope, 0.0);
  site->slope_run_m = lw_si_or(&c->ground.slope_run, INFINITY);
  site->soil_below_top_m = lw_si_or(&c->ground.soil_below_top, 0.0);
  site->front_slope_rad = lw_si_or(&c->ground.front_slope, 0.0);
  site->stone_width_m = lw_si_or(&c->ground.stone_width, 0.0);
}

/* An outlet comes out where its inside bottom lies no lower than the ground there. */
static bool buried(const lw_case *c) {
  static const double NEAR_M = 1e-6;
  if (lw_si_or(&c->water.drain_outlets, 0.0) < 0.5) return false;
  double fallen = tan(lw_si_or(&c->ground.front_slope, 0.0)) * lw_si_or(&c->order.outlet_length, 0.0);
  return lw_si_or(&c->water.outlet_level, 0.0) < -fallen - NEAR_M;
}

static void water_build(const lw_case *c, lw_site *site) {
  site->water_depth_m = lw_si_or(&c->water.depth, INFINITY);
  site->front_water_depth_m = lw_si_or(&c->water.front_depth, INFINITY);
  site->overflow_below_top_m = lw_si_or(&c->water.overflow_below_top, 0.0);
  site->water_unit_weight_kn_per_m3 = c->water.unit_weight.si;
  site->outlets_buried = buried(c);
  site->drain_outlets = site->outlets_buried ? 0 : (int)lround(lw_si_or(&c->water.drain_outlets, 0.0));
  site->joints_open = lw_choice_is(&c->water.wall_joints, LW_JOINTS_OPEN) && !lw_back_is_lined(c);
  site->water_held = lw_choice_is(&c->site.water_held, LW_YES) && c->site.water_held.origin == LW_GIVEN;
  site->filtered = !lw_choice_is(&c->water.stone_filter, LW_STONE_FILTER_NONE);
  site->ground_drains = lw_choice_is(&c->water.ground_drains, LW_YES);
}

static void storm_and_trench_build(const lw_case *c, lw_site *site) {
  site->storm_rain_m = lw_si_or(&c->water.storm_rain, 0.0);
  site->drainable_porosity = lw_si_or(&c->water.drainable_porosity, 0.0);
  site->trench_depth_m = lw_si_or(&c->ground.trench_depth, 0.0);
  site->trench_distance_m = lw_si_or(&c->ground.trench_distance, 0.0);
}

static void limited_load_add(const lw_case_load *load, int number, lw_site *site) {
  bool strip = load->kind.value == LW_LOAD_STRIP;
  site->load[site->load_count++] = (lw_site_load){
      .kind = (lw_load_kind)load->kind.value,
      .pressure_kpa = lw_si_or(&load->pressure, 0.0),
      .force = lw_si_or(&load->force, 0.0),
      .push = lw_si_or(&load->push, 0.0),
      .near_m = strip ? lw_si_or(&load->near_edge, 0.0) : lw_si_or(&load->distance, 0.0),
      .far_m = strip ? lw_si_or(&load->far_edge, 0.0) : lw_si_or(&load->distance, 0.0),
      .below_m = lw_si_or(&load->below_ground, 0.0),
      .number = number,
  };
}

static void loads_build(const lw_case *c, lw_site *site) {
  for (int i = 0; i < LW_LOAD_MAX; i++) {
    const lw_case_load *load = &c->load[i];
    if (load->kind.origin == LW_ABSENT || load->kind.value == LW_LOAD_NONE) continue;
    if (load->kind.value == LW_LOAD_UNIFORM) {
      double pressure = lw_si_or(&load->pressure, 0.0);
      site->surcharge_kpa += pressure;
      site->uniform_kpa[i] = (lw_number){pressure, load->kind.origin == LW_GIVEN};
    } else {
      limited_load_add(load, i + 1, site);
    }
  }
}

/* Outlets of one drain block together, and the sheet knows of one. Open joints are wherever the water is;
 * to an outlet and to the ground below it has to be led, by the soil or by stone that is wide enough. */
static void ways_build(lw_site *site) {
  bool stone_leads = site->stone_width_m > 0.0 && site->stone_width_m >= site->leading_stone_m;
  bool led = site->free_draining || stone_leads;
  site->ways_found = site->joints_open ? 1 : 0;
  if (led) site->ways_found += (site->drain_outlets > 0 ? 1 : 0) + (site->ground_drains ? 1 : 0);
  bool one = !site->filtered && site->ways_found > 1;
  site->ways_out = one ? 1 : site->ways_found;
}

void lw_site_build(const lw_case *c, const lw_tables *tables, lw_site *site) {
  *site = (lw_site){0};
  soils_build(c, tables, site);
  thresholds_build(tables, site);
  ground_build(c, site);
  water_build(c, site);
  ways_build(site);
  storm_and_trench_build(c, site);
  loads_build(c, site);
  soil_build(&c->ground.footing, &site->footing);
  lw_footing_build(c, tables, site);
}

double lw_site_blocked_depth(const lw_site *site) {
  return fmin(fmax(site->soil_below_top_m, site->overflow_below_top_m), site->water_depth_m);
}

double lw_site_least_friction(const lw_site *site) {
  double least = site->soil_count > 0 ? site->soil[0].friction_rad : 0.0;
  for (int i = 1; i < site->soil_count; i++) least = fmin(least, site->soil[i].friction_rad);
  return least;
}

bool lw_site_is_level(const lw_site *site, double slope_rad) {
  static const double ROUNDING_RAD = 1e-9;
  return fabs(slope_rad) <= site->level_rad + ROUNDING_RAD;
}

int lw_site_soil_at(const lw_site *site, double depth_m) {
  int i = 0;
  while (i < site->soil_count - 1 && depth_m >= site->soil[i].bottom_m) i++;
  return i;
}
