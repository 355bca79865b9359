/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation_soaked.h"

#include <math.h>

#include "soil/site.h"
#include "standing.h"

/* Rain seeps through soil that does not drain by itself to whatever lets it out. Where the form of seepage to
 * a drain at the back holds it gives the push; elsewhere water stands half as high as it could. */

static const double NOTHING = 1e-9;

static bool water_is_known(const lw_wall *wall) {
  return wall->site.water_held || wall->site.water_depth_m < wall->section.height_m;
}

static lw_situation_why why_soaked(const lw_wall *wall) {
  const lw_site *site = &wall->site;
  if (water_is_known(wall)) return LW_WHY_KNOWN_SEEP;
  if (site->slope_rad > 0.0 && !lw_site_is_level(site, site->slope_rad)) return LW_WHY_FROM_SLOPE;
  if (site->permeability_m_per_s <= 0.0) return LW_WHY_UNNAMED_SOIL;
  return site->permeability_m_per_s > site->fine_m_per_s * (1.0 + NOTHING) ? LW_WHY_HEAVY_RAIN
                                                                           : LW_WHY_FINE_SOIL;
}

/* The back stands upright from base to top, course by course. */
static bool is_straight(const lw_section *section) {
  double rear = section->base_width_m;
  if (fabs(section->back_foot_m - rear) > NOTHING || fabs(section->back_rad) > NOTHING) return false;
  for (int i = 0; i < section->part_count; i++)
    if (section->part[i].kind == LW_PART_COURSE && fabs(section->part[i].rear_m - rear) > NOTHING)
      return false;
  return section->rear_m < rear + NOTHING;
}

/* One soil without cohesion under level ground, and nothing on it but an even load. */
static bool is_plain(const lw_site *site) {
  bool level = fabs(site->slope_rad) < NOTHING && site->soil_count == 1;
  for (int i = 0; i < site->load_count; i++) level = level && site->load[i].kind == LW_LOAD_CAP;
  return level && site->soil[0].cohesion_kpa <= 0.0;
}

/* Open joints, or an outlet that stone behind the whole wall leads to. */
static bool drains_at_back(const lw_site *site) {
  return site->joints_open || (site->drain_outlets > 0 && site->stone_width_m >= site->leading_stone_m);
}

static bool form_holds(const lw_wall *wall) {
  const lw_method *method = &wall->method;
  bool by_wedge = method->pressure != LW_PRESSURE_AT_REST && method->coefficient <= 0.0;
  return by_wedge && wall->section.known && is_straight(&wall->section) && is_plain(&wall->site) &&
         drains_at_back(&wall->site) && !water_is_known(wall);
}

bool lw_plan_soaked(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  (void)tables;
  if (wall->site.free_draining || wall->site.ways_out == 0) return false;
  plan->name = LW_SITUATION_SOAKED;
  plan->why = why_soaked(wall);
  plan->kind = plan->why == LW_WHY_HEAVY_RAIN ? LW_UNUSUAL : LW_USUAL;
  plan->decides = true;
  plan->seeping = form_holds(wall);
  plan->water_depth_m =
      plan->seeping ? wall->section.height_m + wall->site.pad.thickness_m : lw_standing_half(wall);
  return true;
}
