/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tier.h"

#include <math.h>

#include "sheet/values.h"
#include "soil/site.h"
#include "tables/known.h"

/* Two walls, one above the other. An other wall that nobody spoke of raises its question in the verdict; only
 * one that was measured is put on the ground. */

static const double ROUNDING = 1e-9, FAR_M = 1000.0;

static lw_tier_band band_of(const lw_tables *tables, const lw_tier *tier) {
  if (tier->distance_m < lw_known_value(tables, LW_THRESHOLD_TIER_ONE_WALL) * tier->lower_m - ROUNDING)
    return LW_TIER_ONE_WALL;
  bool apart = tier->distance_m >= lw_known_value(tables, LW_THRESHOLD_TIER_APART) * tier->lower_m - ROUNDING;
  return apart ? LW_TIER_ALONE : LW_TIER_TOGETHER;
}

/* The heavier of soil and wall over the whole height, from the upper wall's face on back: cautious. */
static double heavier(const lw_wall *wall) {
  double weight = 0.0;
  for (int i = 0; i < wall->section.part_count; i++)
    weight = fmax(weight, wall->section.part[i].unit_weight_kn_per_m3);
  for (int i = 0; i < wall->site.soil_count; i++)
    weight = fmax(weight, wall->site.soil[i].unit_weight_kn_per_m3);
  return weight;
}

void lw_tier_build(const lw_case *c, const lw_tables *tables, lw_wall *wall) {
  double exposed = wall->section.height_m - wall->section.embedment_m;
  lw_tier *tier = &wall->tier;
  if (c->site.other_wall_distance.origin != LW_GIVEN) return;
  tier->above = !lw_choice_is(&c->site.other_wall_side, LW_SIDE_BELOW);
  tier->distance_m = c->site.other_wall_distance.si;
  tier->height_m = lw_si_or(&c->site.other_wall_height, exposed);
  tier->lower_m = tier->above ? exposed : tier->height_m;
  tier->band = band_of(tables, tier);
  bool loads = tier->above && tier->band != LW_TIER_ALONE && tier->height_m > 0.0;
  if (!loads || wall->site.load_count >= LW_SITE_LOAD_MAX) return;
  tier->pressure_kpa = heavier(wall) * tier->height_m;
  wall->site.load[wall->site.load_count++] = (lw_site_load){.kind = LW_LOAD_STRIP,
                                                            .pressure_kpa = tier->pressure_kpa,
                                                            .near_m = tier->distance_m,
                                                            .far_m = FAR_M,
                                                            .other_wall = true};
}

void lw_slip_cause_build(const lw_case *c, const lw_tables *tables, lw_wall *wall) {
  const lw_site *site = &wall->site;
  double steepest = lw_known_value(tables, LW_THRESHOLD_BED_SLOPE);
  double slope = fmax(fabs(site->slope_rad), fabs(site->front_slope_rad));
  bool bed = lw_choice_is(&c->site.behind, LW_BEHIND_BED);
  wall->slip_cause = LW_SLIP_LEVEL_BED;
  if (!bed)
    wall->slip_cause = LW_SLIP_GROUND_BEHIND;
  else if (!lw_site_is_level(site, slope))
    wall->slip_cause = LW_SLIP_SLOPE;
  else if (wall->tier.band != LW_TIER_NONE && wall->tier.band != LW_TIER_ALONE)
    wall->slip_cause = LW_SLIP_TIER;
  wall->bed_slope_rad = bed && tan(slope) > steepest + ROUNDING ? slope : 0.0;
}
