/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "limit_held.h"

#include <math.h>

#include "base/extremes.h"
#include "conditions.h"

/* Whether a row of tables/limits.csv is about this wall, how high the wall is by the row's definition, and
 * whether that is past it: yes, no, or open because the sheet leaves something out. */

static const double ROUNDING = 1e-9;

static lw_so open_by(const char *item, const char **left_out) {
  *left_out = item;
  return LW_SO_OPEN;
}

static lw_so near(const lw_quantity *q, double within_m, const char *item, const char **left_out) {
  lw_so so = lw_facts_nearer(q, within_m);
  return so == LW_SO_OPEN ? open_by(item, left_out) : so;
}

static lw_so near_street(const lw_facts *f, double within_m, const char **left_out) {
  return near(&f->c->site.public_way_distance, within_m + 2.0 * ROUNDING, "public way distance", left_out);
}

static lw_so people_walk(const lw_facts *f, const char **left_out) {
  if (f->c->site.above.origin == LW_ASSUMED) return open_by("site above", left_out);
  return f->people_above ? LW_SO_YES : LW_SO_NOT;
}

static lw_so loaded(const lw_facts *f, const char **left_out) {
  if (f->water_behind) return LW_SO_YES;
  return f->loaded == LW_SO_OPEN ? open_by(f->load_left_out, left_out) : f->loaded;
}

static lw_so not_level(const lw_facts *f, const char **left_out) {
  if (f->c->ground.slope.origin == LW_ASSUMED) return open_by("ground slope", left_out);
  return f->level_behind ? LW_SO_NOT : LW_SO_YES;
}

static lw_so loaded_or_not_level(const lw_facts *f, const char **left_out) {
  lw_so load = loaded(f, left_out);
  lw_so slope = load == LW_SO_YES ? LW_SO_YES : not_level(f, left_out);
  return slope > load ? slope : load;
}

/* Whether what narrows a row is so; what no sheet answers is open: a row never makes the verdict milder. */
static lw_so is_so(const lw_facts *f, lw_only_if narrow, const char **left_out) {
  const lw_case *c = f->c;
  switch (narrow) {
  case LW_ONLY_IF_NEAR_BOUNDARY:
    return near(&c->site.boundary_distance, lw_facts_clearance(f, LW_CLEARANCE_BOUNDARY), "boundary distance",
                left_out);
  case LW_ONLY_IF_NEAR_WATERBODY:
    return near(&c->site.waterbody_distance, lw_facts_clearance(f, LW_CLEARANCE_WATERBODY),
                "waterbody distance", left_out);
  case LW_ONLY_IF_WALKING_SURFACE: return people_walk(f, left_out);
  case LW_ONLY_IF_NEXT_TO_HIGHWAY:
  case LW_ONLY_IF_NEAR_PUBLIC_WAY:
    return near_street(f, lw_facts_clearance(f, LW_CLEARANCE_PUBLIC_WAY), left_out);
  case LW_ONLY_IF_MAPPED_LAND: return lw_verdict_condition(f, LW_CONDITION_MAPPED_LAND, left_out);
  case LW_ONLY_IF_SUPPORTS_STRUCTURE:
    return lw_verdict_condition(f, LW_CONDITION_SUPPORTS_BUILDING, left_out);
  case LW_ONLY_IF_CROSSES_BOUNDARY:
  case LW_ONLY_IF_WEAKENS_ADJOINING: return lw_verdict_condition(f, LW_CONDITION_BOUNDARY, left_out);
  case LW_ONLY_IF_CHANGES_DRAINAGE: return lw_verdict_condition(f, LW_CONDITION_DRAINS_NEXT_DOOR, left_out);
  case LW_ONLY_IF_NOT_DRAINED: return lw_verdict_condition(f, LW_CONDITION_NO_OUTLET, left_out);
  case LW_ONLY_IF_HERITAGE: return lw_verdict_condition(f, LW_CONDITION_HERITAGE, left_out);
  case LW_ONLY_IF_SLOPING_GROUND: return lw_verdict_condition(f, LW_CONDITION_SLOPING_GROUND, left_out);
  case LW_ONLY_IF_OTHER_WALL_NEAR: return lw_verdict_condition(f, LW_CONDITION_OTHER_WALL_NEAR, left_out);
  case LW_ONLY_IF_LIQUID_HELD: return lw_verdict_condition(f, LW_CONDITION_WATER_HELD, left_out);
  case LW_ONLY_IF_REACTIVE_SOIL: return lw_verdict_condition(f, LW_CONDITION_REACTIVE_SOIL, left_out);
  case LW_ONLY_IF_BAD_FILL: return lw_verdict_condition(f, LW_CONDITION_BAD_FILL, left_out);
  case LW_ONLY_IF_EARTHQUAKES: return lw_verdict_condition(f, LW_CONDITION_EARTHQUAKE, left_out);
  /* Courses are checked as laid dry; of what they are made, no item tells. */
  case LW_ONLY_IF_DRY_LAID: return c->wall.kind.value == LW_WALL_COURSES ? LW_SO_YES : LW_SO_OPEN;
  case LW_ONLY_IF_NOT_DRY_STONE: return c->wall.kind.value == LW_WALL_COURSES ? LW_SO_OPEN : LW_SO_YES;
  case LW_ONLY_IF_ALWAYS: return LW_SO_YES;
  case LW_ONLY_IF_OTHER_LOAD: return loaded(f, left_out);
  case LW_ONLY_IF_NOT_LEVEL_SOIL_ALONE: return loaded_or_not_level(f, left_out);
  case LW_ONLY_IF_OTHER:
  case LW_ONLY_IF_COUNT: break;
  }
  return LW_SO_OPEN;
}

/* The gravest of them, the word it is by, and the item that leaves it open. */
static lw_so one_is_so(const lw_facts *f, unsigned words, lw_only_if *by, const char **left_out) {
  lw_so so = LW_SO_NOT;
  for (unsigned i = 0; words >> i != 0 && so != LW_SO_YES; i++) {
    const char *open = NULL;
    lw_so this = words & 1u << i ? is_so(f, (lw_only_if)i, &open) : LW_SO_NOT;
    if (this <= so) continue;
    so = this;
    *by = (lw_only_if)i;
    *left_out = open;
  }
  return so;
}

static lw_so less(lw_so a, lw_so b) {
  return a < b ? a : b;
}

static lw_so is_about(const lw_facts *f, const lw_limit_row *row, const char **left_out) {
  lw_only_if by;
  lw_so so = row->narrows == 0 ? LW_SO_YES : one_is_so(f, row->narrows, &by, left_out);
  if (so != LW_SO_NOT && isfinite(row->boundary_within_m))
    so = less(so, near(&f->c->site.boundary_distance, row->boundary_within_m + 2.0 * ROUNDING,
                       "boundary distance", left_out));
  if (so != LW_SO_NOT && isfinite(row->street_within_m))
    so = less(so, near_street(f, row->street_within_m, left_out));
  return so;
}

/* Whether the upper of the two is not known to be the shorter. */
static bool upper_may_be_taller(const lw_facts *f) {
  const lw_case *c = f->c;
  double mine = f->height_m[LW_HEIGHT_EXPOSED];
  if (c->site.other_wall_height.origin != LW_GIVEN || c->site.other_wall_side.origin != LW_GIVEN) return true;
  bool above = c->site.other_wall_side.value == LW_SIDE_ABOVE;
  return above ? c->site.other_wall_height.si >= mine - ROUNDING
               : mine >= c->site.other_wall_height.si - ROUNDING;
}

/* Tiers nearer than the row's spacing are one wall from the lowest foot to the top; where a row always adds
 * them, as far as another wall is asked about at all. */
static double tier_spacing(const lw_facts *f, const lw_limit_row *row, double lower_m) {
  double spacing =
      lw_larger(isfinite(row->tier_spacing_m) ? row->tier_spacing_m : 0.0,
                isfinite(row->tier_spacing_per_height) ? row->tier_spacing_per_height * lower_m : 0.0);
  if (!row->tiers_add && !(row->upper_shorter && upper_may_be_taller(f))) return spacing;
  return lw_larger(spacing, lw_known_value(f->tables, LW_THRESHOLD_TIER_APART) *
                                lw_known_value(f->tables, LW_THRESHOLD_OTHER_WALL_HEIGHT));
}

bool lw_limit_adds_tier(const lw_facts *facts, const lw_limit_row *row) {
  double spacing = tier_spacing(facts, row, facts->lower_wall_m);
  return lw_facts_nearer(&facts->c->site.other_wall_distance, spacing) == LW_SO_YES;
}

/* What the other wall adds to a height. */
static void add_tier(const lw_facts *f, const lw_limit_row *row, lw_span *height) {
  const lw_quantity *apart = &f->c->site.other_wall_distance, *other = &f->c->site.other_wall_height;
  double most = tier_spacing(f, row, f->lower_wall.taken_m);
  if (most <= 0.0 || lw_facts_nearer(apart, most) == LW_SO_NOT) return;
  double least = tier_spacing(f, row, f->lower_wall.certain_m);
  bool told = other->origin == LW_GIVEN, adds = lw_facts_nearer(apart, least) == LW_SO_YES;
  height->taken_m += told ? other->si
                     : apart->origin == LW_ASSUMED
                         ? INFINITY
                         : lw_known_value(f->tables, LW_THRESHOLD_OTHER_WALL_HEIGHT);
  if (told && adds) {
    height->certain_m += other->si;
    return;
  }
  height->left_out = apart->origin == LW_ASSUMED ? "other wall distance"
                     : told                      ? f->lower_wall.left_out
                                                 : "other wall height";
}

/* Below the existing ground. */
static lw_span cut(const lw_facts *f) {
  const lw_case *c = f->c;
  bool told = c->ground.cut_depth.origin == LW_GIVEN;
  bool bed = c->site.behind.origin == LW_GIVEN && c->site.behind.value == LW_BEHIND_BED;
  if (told || bed)
    return (lw_span){told ? c->ground.cut_depth.si : 0.0, told ? c->ground.cut_depth.si : 0.0, NULL};
  return (lw_span){INFINITY, 0.0, "cut depth"};
}

static lw_span height_by(const lw_facts *f, const lw_limit_row *row) {
  lw_span height = row->cut_only ? cut(f) : f->height[row->measured];
  const lw_span *fence = &f->height[LW_HEIGHT_FENCE];
  if (row->fence_counts && fence->taken_m > height.taken_m) {
    height.taken_m = fence->taken_m;
    if (!height.left_out) height.left_out = fence->left_out;
  }
  if (row->fence_counts) height.certain_m = lw_larger(height.certain_m, fence->certain_m);
  add_tier(f, row, &height);
  return height;
}

bool lw_limit_is_past(const lw_limit_row *row, double height_m) {
  return row->at_or_above ? height_m >= row->height_m - ROUNDING : height_m > row->height_m + ROUNDING;
}

void lw_limit_hold(const lw_facts *facts, const lw_limit_row *row, lw_limit_held *held) {
  *held = (lw_limit_held){.about_left_out = NULL};
  held->about = is_about(facts, row, &held->about_left_out);
  if (held->about == LW_SO_NOT) return;
  held->height = height_by(facts, row);
  bool past = lw_limit_is_past(row, held->height.taken_m);
  bool certain = lw_limit_is_past(row, held->height.certain_m);
  held->past = certain ? LW_SO_YES : past ? LW_SO_OPEN : LW_SO_NOT;
  held->any_height = one_is_so(facts, row->any_height, &held->any_by, &held->any_left_out);
}

static lw_who barrier_calls(const lw_facts *f) {
  const lw_condition_row *row = lw_known_condition(f->tables, LW_CONDITION_BARRIER_NEEDED);
  bool council = !f->place_known || (row && !row->for_engineer);
  return council ? LW_WHO_COUNCIL : LW_WHO_ENGINEER;
}

lw_who lw_limit_calls_for(const lw_facts *facts, const lw_limit_row *row) {
  if (row->unsure) return LW_WHO_COUNCIL;
  if (row->with_engineer) return LW_WHO_ENGINEER;
  /* The height from which a standard is meant to be used is its scope, and names nobody. */
  if (row->trigger == LW_DESIGN_ABOVE && row->of_standard) return LW_WHO_COUNCIL;
  if (row->trigger == LW_ENGINEER_ABOVE || row->trigger == LW_DESIGN_ABOVE) return LW_WHO_ENGINEER;
  if (row->trigger == LW_BARRIER_ABOVE) return barrier_calls(facts);
  return LW_WHO_COUNCIL;
}

const char *lw_limit_place(const lw_limit_row *row) {
  if (row->of_default) return "the cautious default";
  return row->region[0] ? row->region : row->instrument;
}
