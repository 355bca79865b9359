/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "facts.h"

#include <math.h>

#include "base/extremes.h"

static const double QUARTER_PI = 0.78539816339744830962;

/* A figure met exactly in decimal millimetres is met, whatever its binary digits. */
static const double ROUNDING = 1e-9;

double lw_facts_threshold(const lw_facts *facts, lw_known_row threshold, double otherwise) {
  const lw_threshold_row *row = lw_known_threshold(facts->tables, threshold);
  return row && isfinite(row->value) ? row->value : otherwise;
}

double lw_facts_distance(const lw_quantity *q) {
  return q->origin == LW_ABSENT ? INFINITY : q->si;
}

bool lw_facts_is(const lw_choice *choice, int value) {
  return choice->origin != LW_ABSENT && choice->value == value;
}

bool lw_facts_back_is(const lw_facts *facts, lw_back back) {
  const lw_choice *site_back = &facts->c->site_back;
  bool said = site_back->origin == LW_GIVEN || lw_facts_is(&facts->c->site_behind, LW_BEHIND_BED);
  return said && lw_facts_is(site_back, (int)back);
}

static double height_of(const lw_facts *facts, lw_height_of which) {
  if (which == LW_OF_LOWER_WALL) return facts->lower_wall_m;
  return facts->height_m[which == LW_OF_TOTAL ? LW_HEIGHT_TOTAL : LW_HEIGHT_GREATEST];
}

double lw_facts_clearance(const lw_facts *facts, lw_known_row clearance) {
  const lw_clearance_row *row = lw_known_clearance(facts->tables, clearance);
  if (!row) return 0.0;
  double by_height = isfinite(row->per_height) ? row->per_height * height_of(facts, row->of) : 0.0;
  return lw_larger(isfinite(row->at_least_m) ? row->at_least_m : 0.0, by_height);
}

/* What is not known of cut and fill is as deep as the soil held up. */
static double natural_height(const lw_case *c, double retained_m) {
  double cut = c->cut_depth.origin == LW_GIVEN ? c->cut_depth.si : retained_m;
  double fill = c->fill_depth.origin == LW_GIVEN ? c->fill_depth.si : retained_m;
  return lw_larger(cut, fill);
}

/* The foot of a fence above the top of the wall: behind, it stands on ground that may lie lower, and rises.
 * Nobody knows how far off: as far as it counts. */
static double fence_foot(const lw_facts *f) {
  const lw_fence_wind *wind = &f->fence.on;
  const lw_site *site = &f->wall->site;
  if (wind->on_wall) return 0.0;
  double behind = f->c->fence_distance.origin == LW_GIVEN ? wind->distance_m : wind->keep_off_m;
  return lw_smaller(behind, site->slope_run_m) * tan(site->slope_rad) - site->soil_below_top_m;
}

/* A fence that keeps its distance neither loads the wall nor adds to its height. */
static void fence_gather(lw_facts *f) {
  lw_fence_weigh(f->c, f->tables, f->wall, &f->fence);
  const lw_fence_wind *wind = &f->fence.on;
  bool near = wind->present && (wind->on_wall || wind->distance_m < wind->keep_off_m - ROUNDING);
  f->fence_m = near ? wind->height_m : 0.0;
}

static void heights_gather(lw_facts *f) {
  const lw_section *section = &f->wall->section;
  double *h = f->height_m;
  f->to_pad_m = section->height_m + f->wall->site.pad.thickness_m;
  h[LW_HEIGHT_TOTAL] = section->height_m;
  h[LW_HEIGHT_EXPOSED] = section->height_m - section->embedment_m;
  h[LW_HEIGHT_RETAINED] = lw_larger(0.0, h[LW_HEIGHT_EXPOSED] - f->wall->site.soil_below_top_m);
  h[LW_HEIGHT_NATURAL] = natural_height(f->c, h[LW_HEIGHT_RETAINED]);
  h[LW_HEIGHT_FENCE] = h[LW_HEIGHT_EXPOSED];
  if (f->fence_m > 0.0) h[LW_HEIGHT_FENCE] += lw_larger(fence_foot(f) + f->fence_m, 0.0);
  h[LW_HEIGHT_GREATEST] = lw_larger(lw_larger(f->to_pad_m, h[LW_HEIGHT_EXPOSED]),
                                    lw_larger(h[LW_HEIGHT_RETAINED], h[LW_HEIGHT_NATURAL]));
  double cut = f->c->cut_depth.origin == LW_GIVEN ? f->c->cut_depth.si : 0.0;
  f->dig_m = lw_larger(section->embedment_m + f->wall->site.pad.thickness_m, cut);
}

/* Where a line from the bottom rear, back by `run` for each metre up, comes out of the ground: its distance
 * back. rise: of the ground, likewise. */
static double reach_of(const lw_facts *f, double run, double rise) {
  const lw_site *site = &f->wall->site;
  double depth = lw_larger(0.0, f->to_pad_m - site->soil_below_top_m);
  double back = run * rise < 1.0 ? run * depth / (1.0 - run * rise) : INFINITY;
  if (back <= site->slope_run_m) return back;
  return run * (depth + site->slope_run_m * rise);
}

static double least_friction(const lw_site *site) {
  double least = site->soil_count > 0 ? site->soil[0].friction_rad : 0.0;
  for (int i = 1; i < site->soil_count; i++) least = lw_smaller(least, site->soil[i].friction_rad);
  return least;
}

static void other_wall_gather(lw_facts *f) {
  const lw_case *c = f->c;
  double other =
      c->other_wall_height.origin == LW_ABSENT ? f->height_m[LW_HEIGHT_EXPOSED] : c->other_wall_height.si;
  bool other_is_lower = lw_facts_is(&c->other_wall_side, LW_SIDE_BELOW);
  f->lower_wall_m = other_is_lower ? other : f->height_m[LW_HEIGHT_EXPOSED];
  f->other_wall_m = lw_facts_distance(&c->other_wall_distance);
  double apart = lw_facts_threshold(f, LW_THRESHOLD_TIER_APART, INFINITY) * f->lower_wall_m;
  f->other_wall_near = f->other_wall_m < apart - ROUNDING;
}

/* Only a uniform load may be assumed. */
static lw_origin uniform_origin(const lw_case *c) {
  for (int i = 0; i < LW_LOAD_MAX; i++)
    if (c->load[i].kind.origin == LW_ASSUMED) return LW_ASSUMED;
  return LW_GIVEN;
}

static lw_heavy nearest_load(const lw_facts *f) {
  const lw_site *site = &f->wall->site;
  const lw_load_row *garden = lw_known_load(f->tables, LW_LOAD_OF_GARDEN);
  lw_heavy found = {INFINITY, LW_ABSENT, false};
  if (site->surcharge_kpa > (garden ? garden->value : 0.0) + ROUNDING)
    found = (lw_heavy){0.0, uniform_origin(f->c), false};
  for (int i = 0; i < site->load_count; i++) {
    if (site->load[i].other_wall) continue; /* a tier has reasons of its own */
    double distance = site->load[i].kind == LW_LOAD_CAP ? 0.0 : site->load[i].near_m;
    if (distance < found.distance_m) found = (lw_heavy){distance, LW_GIVEN, false};
  }
  return found;
}

lw_heavy lw_facts_heavy(const lw_facts *facts, double within_m) {
  lw_heavy vehicle = {INFINITY, facts->c->vehicle_access.origin, true};
  bool near = facts->stands.distance_m < within_m - ROUNDING;
  if (lw_facts_is(&facts->c->vehicle_access, LW_YES)) vehicle.distance_m = 0.0;
  if (!near) return vehicle;
  bool surer = facts->stands.origin != LW_GIVEN && vehicle.origin == LW_GIVEN;
  return surer && isfinite(vehicle.distance_m) ? vehicle : facts->stands;
}

static void ground_gather(lw_facts *f) {
  const lw_site *site = &f->wall->site;
  double level = atan(lw_facts_threshold(f, LW_THRESHOLD_LEVEL_GROUND, 0.0)) + ROUNDING;
  double rise = tan(site->slope_rad);
  f->reach_m = reach_of(f, 1.0, rise);
  f->wedge_m = reach_of(f, tan(QUARTER_PI - least_friction(site) / 2.0), rise);
  f->level_behind = fabs(site->slope_rad) <= level;
  f->level_in_front = fabs(site->front_slope_rad) <= level;
  f->water_behind = site->water_depth_m < f->wall->section.height_m;
  f->no_way_out = site->drain_outlets <= 0 && !site->joints_open && !site->ground_drains;
}

static void loads_gather(lw_facts *f) {
  f->stands = nearest_load(f);
  f->loaded = isfinite(f->stands.distance_m) || lw_facts_is(&f->c->vehicle_access, LW_YES);
}

/* A place counts as known when a row that certainly applies sets a height there. */
static bool place_has_height(const lw_facts *f) {
  for (int i = 0; i < f->tables->limit_count; i++) {
    if (!f->places.at[f->tables->limit_place[i]]) continue;
    const lw_limit_row *row = &f->tables->limit[i];
    bool sure = row->narrows == 0 && !row->unsure;
    bool height = row->trigger != LW_BARRIER_ABOVE && row->trigger != LW_DESIGN_ABOVE &&
                  !row->not_a_wall_height && !row->fence_counts && !isfinite(row->street_within_m);
    if (sure && height) return true;
  }
  return false;
}

static void place_gather(lw_facts *f) {
  const lw_words *word = &f->c->place;
  int elsewhere = lw_tables_place_row(f->tables, "default");
  int row = word->origin == LW_ABSENT ? -1 : lw_tables_place_row(f->tables, word->text);
  lw_tables_add_places(f->tables, row, &f->places);
  f->place_known = row >= 0 && row != elsewhere && place_has_height(f);
  if (!f->place_known) lw_tables_add_places(f->tables, elsewhere, &f->places);
}

void lw_facts_gather(const lw_case *c, const lw_tables *tables, const lw_wall *wall, lw_facts *facts) {
  *facts = (lw_facts){.c = c, .tables = tables, .wall = wall};
  fence_gather(facts);
  heights_gather(facts);
  other_wall_gather(facts);
  ground_gather(facts);
  loads_gather(facts);
  place_gather(facts);
  facts->people_above = c->site_above.origin != LW_ABSENT && c->site_above.value != LW_ABOVE_NOBODY;
}
