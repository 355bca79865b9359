/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "facts.h"

#include <math.h>

#include "base/extremes.h"
#include "sheet/values.h"

/* A figure met exactly in decimal millimetres is met, whatever its binary digits. */
static const double ROUNDING = 1e-9;

double lw_facts_distance(const lw_quantity *q) {
  if (q->origin == LW_ABSENT) return INFINITY;
  return q->origin == LW_ASSUMED ? 0.0 : q->si;
}

/* More than 3 m may be less than 6 m, or not. */
lw_so lw_facts_nearer(const lw_quantity *q, double than_m) {
  if (q->origin == LW_ASSUMED) return LW_SO_OPEN;
  if (q->origin == LW_ABSENT || q->si >= than_m - ROUNDING) return LW_SO_NOT;
  return q->origin == LW_GIVEN && q->table_row == LW_MORE_THAN ? LW_SO_OPEN : LW_SO_YES;
}

bool lw_facts_back_is(const lw_facts *facts, lw_back back) {
  const lw_choice *site_back = &facts->c->site.back;
  bool said = site_back->origin == LW_GIVEN || lw_choice_is(&facts->c->site.behind, LW_BEHIND_BED);
  return said && lw_choice_is(site_back, (int)back);
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

/* A fence that keeps its distance neither loads the wall nor adds to its height. */
static void fence_gather(lw_facts *f) {
  const lw_fence_wind *wind = &f->fence->on;
  bool near = wind->present && (wind->on_wall || wind->distance_m < wind->keep_off_m - ROUNDING);
  f->fence_m = near ? wind->height_m : 0.0;
}

/* Only a uniform load may be assumed. */
static lw_origin uniform_origin(const lw_case_load load[LW_LOAD_MAX]) {
  for (int i = 0; i < LW_LOAD_MAX; i++)
    if (load[i].kind.origin == LW_ASSUMED) return LW_ASSUMED;
  return LW_GIVEN;
}

/* All that lies on the ground there, a tier apart: that has reasons of its own. */
static double pressure_at(const lw_site *site, double behind_m) {
  double sum = site->surcharge_kpa;
  for (int i = 0; i < site->load_count; i++) {
    const lw_site_load *load = &site->load[i];
    bool there = load->kind == LW_LOAD_STRIP && !load->other_wall;
    if (there && load->near_m <= behind_m && behind_m < load->far_m) sum += load->pressure_kpa;
  }
  return sum;
}

/* An even load is heavier than garden use where it and what lies beside it come to more. */
static bool is_heavy(const lw_site *site, const lw_site_load *load, double garden_kpa) {
  if (load->other_wall) return false;
  if (load->kind != LW_LOAD_STRIP) return load->force > 0.0 || load->push > 0.0;
  return load->pressure_kpa > 0.0 && pressure_at(site, load->near_m) > garden_kpa + ROUNDING;
}

/* What is taken where nobody told of a load grows with the wall, and is garden use all the same. */
static double garden_use(const lw_facts *f, lw_origin origin) {
  const lw_section *section = &f->wall->section;
  double held = section->height_m - section->embedment_m - f->wall->site.soil_below_top_m;
  return lw_known_garden_kpa(f->tables, origin == LW_ASSUMED ? held : 0.0);
}

static lw_heavy nearest_load(const lw_facts *f) {
  const lw_site *site = &f->wall->site;
  lw_origin origin = uniform_origin(f->c->load);
  double garden = lw_known_garden_kpa(f->tables, 0.0);
  lw_heavy found = {INFINITY, LW_ABSENT, false};
  if (site->surcharge_kpa > garden_use(f, origin) + ROUNDING) found = (lw_heavy){0.0, origin, false};
  for (int i = 0; i < site->load_count; i++) {
    double distance = site->load[i].kind == LW_LOAD_CAP ? 0.0 : site->load[i].near_m;
    bool heavy = is_heavy(site, &site->load[i], garden);
    if (heavy && distance < found.distance_m) found = (lw_heavy){distance, LW_GIVEN, false};
  }
  return found;
}

bool lw_facts_vehicle_told(const lw_facts *facts, const lw_heavy *heavy) {
  const lw_condition_row *row = lw_known_condition(facts->tables, LW_CONDITION_VEHICLE_LOAD);
  return heavy->vehicle && heavy->origin == LW_GIVEN && row && row->for_engineer;
}

lw_heavy lw_facts_heavy(const lw_facts *facts, double within_m) {
  lw_heavy vehicle = {INFINITY, facts->c->site.vehicle_access.origin, true};
  bool near = facts->stands.distance_m < within_m - ROUNDING;
  if (lw_choice_is(&facts->c->site.vehicle_access, LW_YES)) vehicle.distance_m = 0.0;
  if (!near) return vehicle;
  bool surer = facts->stands.origin != LW_GIVEN && vehicle.origin == LW_GIVEN;
  return surer && isfinite(vehicle.distance_m) ? vehicle : facts->stands;
}

/* What the lower of the two may be high, where the height or the side of the other one is left out. */
static lw_span lower_wall(const lw_facts *f) {
  const lw_case *c = f->c;
  const lw_span *mine = &f->height[LW_HEIGHT_EXPOSED];
  bool told = c->site.other_wall_height.origin == LW_GIVEN;
  double tallest = lw_known_value(f->tables, LW_THRESHOLD_OTHER_WALL_HEIGHT);
  lw_span other = {told ? c->site.other_wall_height.si : tallest, told ? c->site.other_wall_height.si : 0.0,
                   told ? NULL : "other wall height"};
  if (c->site.other_wall_side.origin == LW_GIVEN)
    return c->site.other_wall_side.value == LW_SIDE_BELOW ? other : *mine;
  return (lw_span){.taken_m = lw_larger(mine->taken_m, other.taken_m),
                   .certain_m = lw_smaller(mine->certain_m, other.certain_m),
                   .left_out = told ? "other wall side" : other.left_out};
}

static void other_wall_gather(lw_facts *facts) {
  const lw_case *c = facts->c;
  double mine = facts->height_m[LW_HEIGHT_EXPOSED];
  double other = lw_si_or(&c->site.other_wall_height, mine);
  facts->lower_wall_m = lw_choice_is(&c->site.other_wall_side, LW_SIDE_BELOW) ? other : mine;
  facts->lower_wall = lower_wall(facts);
  facts->other_wall_m = lw_facts_distance(&c->site.other_wall_distance);
  double apart = lw_known_value(facts->tables, LW_THRESHOLD_TIER_APART) * facts->lower_wall_m;
  facts->other_wall_near = lw_facts_nearer(&c->site.other_wall_distance, apart) == LW_SO_YES;
}

static void ground_gather(lw_facts *f) {
  const lw_site *site = &f->wall->site;
  double level = site->level_rad + ROUNDING;
  f->level_behind = fabs(site->slope_rad) <= level;
  f->level_in_front = fabs(site->front_slope_rad) <= level;
  f->water_behind = site->water_depth_m < f->wall->section.height_m;
  f->no_way_out = site->drain_outlets <= 0 && !site->joints_open && !site->ground_drains;
}

/* Who goes there is told, and it is people at most: nothing heavier than the load of a garden stands. */
static bool on_foot(const lw_case *c) {
  const lw_choice *use = &c->ground.bed_use;
  return use->origin == LW_GIVEN && use->value != LW_BED_VEHICLE;
}

/* The item that would tell what stands behind: nothing is said of it, or not whether a vehicle may come. */
static const char *load_left_out(const lw_case *c) {
  static const char *const KINDS[LW_LOAD_MAX] = {"load 1 kind", "load 2 kind", "load 3 kind",
                                                 "load 4 kind", "load 5 kind", "load 6 kind"};
  if (c->site.vehicle_access.origin == LW_ASSUMED) return "vehicle access";
  for (int i = 0; i < LW_LOAD_MAX; i++)
    if (c->load[i].kind.origin == LW_ASSUMED && !on_foot(c)) return KINDS[i];
  return NULL;
}

static void loads_gather(lw_facts *f) {
  const lw_choice *vehicle = &f->c->site.vehicle_access;
  f->stands = nearest_load(f);
  f->load_left_out = load_left_out(f->c);
  bool stands = isfinite(f->stands.distance_m) && f->stands.origin != LW_ASSUMED;
  bool comes = vehicle->origin == LW_GIVEN && vehicle->value == LW_YES;
  f->loaded = stands || comes ? LW_SO_YES : f->load_left_out ? LW_SO_OPEN : LW_SO_NOT;
}

/* A place counts as known when a row that may clear a wall is its own, or of a place around it which says
 * that it holds there too. An engineer's line is its own likewise. */
static void own_heights(lw_facts *f) {
  for (int i = 0; i < f->tables->limit_count; i++) {
    const lw_limit_row *row = &f->tables->limit[i];
    bool holds = row->place_row == f->place_row || (row->clears_within && f->places.at[row->place_row]);
    if (!holds) continue;
    f->place_known = f->place_known || row->clears;
    f->own_engineer = f->own_engineer || (row->of_the_wall && row->trigger == LW_ENGINEER_ABOVE);
  }
}

/* What the rows about a place ask of their own: the default's distance is not asked there then. */
static void own_clearances(lw_facts *f) {
  const unsigned street = 1u << LW_ONLY_IF_NEAR_PUBLIC_WAY | 1u << LW_ONLY_IF_NEXT_TO_HIGHWAY;
  for (int i = 0; i < f->tables->limit_count; i++) {
    const lw_limit_row *row = &f->tables->limit[i];
    if (!f->places.at[f->tables->limit_place[i]] || row->unsure) continue;
    f->own_service = f->own_service || isfinite(row->min_service_m);
    f->own_waterbody = f->own_waterbody || isfinite(row->min_waterbody_m);
    f->own_street = f->own_street || isfinite(row->street_within_m) || (row->narrows & street) != 0;
  }
}

static void place_gather(lw_facts *f) {
  const lw_words *word = &f->c->about.place;
  int elsewhere = lw_tables_place_row(f->tables, "default");
  int row = word->origin == LW_ABSENT ? -1 : lw_tables_place_row(f->tables, word->text);
  lw_tables_add_places(f->tables, row, &f->places);
  own_clearances(f);
  f->place_row = row >= 0 ? f->tables->limit[row].place_row : -1;
  if (row >= 0 && row != elsewhere) own_heights(f);
  if (!f->place_known) lw_tables_add_places(f->tables, elsewhere, &f->places);
}

void lw_facts_gather(const lw_result *result, lw_facts *facts) {
  const lw_case *c = &result->given;
  *facts = (lw_facts){.c = c,
                      .tables = result->tables,
                      .wall = &result->wall,
                      .units = result->units,
                      .fence = &result->fence,
                      .trench = &result->trench,
                      .influence = &result->influence};
  fence_gather(facts);
  lw_facts_heights(facts);
  other_wall_gather(facts);
  ground_gather(facts);
  loads_gather(facts);
  place_gather(facts);
  facts->people_above = c->site.above.origin != LW_ABSENT && c->site.above.value != LW_ABOVE_NOBODY;
}
