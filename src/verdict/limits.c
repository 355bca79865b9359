/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <math.h>

#include "base/extremes.h"

/* The rows of tables/limits.csv that are about this place, each held against the wall: its height by the
 * row's own definition, then what the row asks for besides. A row that says itself unsure calls for the
 * council at most. */

static const double ROUNDING = 1e-9;

/* Whether what narrows a row is so; not known counts as so, because a row never makes the verdict milder. */
static bool is_so(const lw_facts *f, lw_only_if narrow) {
  const lw_case *c = f->c;
  switch (narrow) {
  case LW_ONLY_IF_NEAR_BOUNDARY:
    return lw_facts_distance(&c->boundary_distance) < lw_facts_clearance(f, LW_CLEARANCE_BOUNDARY) - ROUNDING;
  case LW_ONLY_IF_NEAR_WATERBODY:
    return lw_facts_distance(&c->waterbody_distance) <
           lw_facts_clearance(f, LW_CLEARANCE_WATERBODY) - ROUNDING;
  case LW_ONLY_IF_WALKING_SURFACE: return f->people_above;
  case LW_ONLY_IF_NEXT_TO_HIGHWAY:
  case LW_ONLY_IF_NEAR_PUBLIC_WAY:
    return lw_facts_distance(&c->public_way_distance) <
           lw_facts_clearance(f, LW_CLEARANCE_PUBLIC_WAY) + ROUNDING;
  case LW_ONLY_IF_MAPPED_LAND: return lw_verdict_condition_met(f, LW_CONDITION_MAPPED_LAND);
  case LW_ONLY_IF_SUPPORTS_STRUCTURE: return lw_verdict_condition_met(f, LW_CONDITION_SUPPORTS_BUILDING);
  case LW_ONLY_IF_CROSSES_BOUNDARY:
  case LW_ONLY_IF_WEAKENS_ADJOINING: return lw_verdict_condition_met(f, LW_CONDITION_BOUNDARY);
  case LW_ONLY_IF_CHANGES_DRAINAGE: return lw_verdict_condition_met(f, LW_CONDITION_NO_OUTLET);
  case LW_ONLY_IF_OTHER_LOAD: return f->loaded || f->water_behind;
  case LW_ONLY_IF_NOT_LEVEL_SOIL_ALONE: return f->loaded || f->water_behind || !f->level_behind;
  case LW_ONLY_IF_OTHER:
  case LW_ONLY_IF_COUNT: break;
  }
  return true;
}

static bool one_is_so(const lw_facts *f, unsigned narrows) {
  bool so = narrows == 0;
  for (unsigned i = 0; i < LW_ONLY_IF_COUNT && !so; i++) so = (narrows & 1u << i) && is_so(f, (lw_only_if)i);
  return so;
}

static bool is_about(const lw_facts *f, const lw_limit_row *row) {
  if (!one_is_so(f, row->narrows)) return false;
  double street = lw_facts_distance(&f->c->public_way_distance);
  return !isfinite(row->street_within_m) || street <= row->street_within_m + ROUNDING;
}

/* Tiers nearer than the row's spacing, or all that a row adds, are one wall from the lowest foot to the
 * top. */
static double tier_height(const lw_facts *f, const lw_limit_row *row) {
  double spacing = lw_larger(
      isfinite(row->tier_spacing_m) ? row->tier_spacing_m : 0.0,
      isfinite(row->tier_spacing_per_height) ? row->tier_spacing_per_height * f->lower_wall_m : 0.0);
  if (row->tiers_add) spacing = lw_larger(spacing, lw_facts_clearance(f, LW_CLEARANCE_OTHER_WALL));
  if (!(f->other_wall_m < spacing - ROUNDING)) return 0.0;
  const lw_quantity *other = &f->c->other_wall_height;
  return other->origin == LW_ABSENT ? f->height_m[LW_HEIGHT_EXPOSED] : other->si;
}

static double height_by(const lw_facts *f, const lw_limit_row *row) {
  double height = f->height_m[row->measured];
  if (row->measured == LW_HEIGHT_TOTAL) height = f->to_pad_m;
  if (row->fence_counts) height = lw_larger(height, f->height_m[LW_HEIGHT_FENCE]);
  return height + tier_height(f, row);
}

static bool is_past(const lw_limit_row *row, double height_m) {
  return row->at_or_above ? height_m >= row->height_m - ROUNDING : height_m > row->height_m + ROUNDING;
}

static lw_who barrier_calls(const lw_facts *f) {
  const lw_condition_row *row = lw_known_condition(f->tables, LW_CONDITION_BARRIER_NEEDED);
  bool council = !f->place_known || (row && row->for_council);
  return council ? LW_WHO_COUNCIL : LW_WHO_ENGINEER;
}

static lw_who calls_for(const lw_facts *f, const lw_limit_row *row) {
  if (row->unsure) return LW_WHO_COUNCIL;
  /* The height from which a standard is meant to be used is its scope, and names nobody. */
  if (row->trigger == LW_DESIGN_ABOVE && row->of_standard) return LW_WHO_COUNCIL;
  if (row->trigger == LW_ENGINEER_ABOVE || row->trigger == LW_DESIGN_ABOVE) return LW_WHO_ENGINEER;
  if (row->trigger == LW_BARRIER_ABOVE) return barrier_calls(f);
  return LW_WHO_COUNCIL;
}

static const char *slug_of(lw_trigger trigger) {
  static const char *const slugs[] = {[LW_EXEMPT_BELOW] = "limit-exemption",
                                      [LW_APPROVAL_ABOVE] = "limit-approval",
                                      [LW_ENGINEER_ABOVE] = "limit-engineer",
                                      [LW_DESIGN_ABOVE] = "limit-design",
                                      [LW_BARRIER_ABOVE] = "limit-barrier"};
  return slugs[trigger];
}

static const char *meaning_of(lw_trigger trigger) {
  static const char *const meanings[] = {[LW_EXEMPT_BELOW] = "stops leaving it to the builder",
                                         [LW_APPROVAL_ABOVE] = "asks for an approval",
                                         [LW_ENGINEER_ABOVE] = "asks for an engineer",
                                         [LW_DESIGN_ABOVE] = "asks for a design",
                                         [LW_BARRIER_ABOVE] = "asks about a barrier"};
  return meanings[trigger];
}

static const char *manner_of(lw_height_kind kind) {
  static const char *const manners[LW_HEIGHT_KINDS] = {[LW_HEIGHT_TOTAL] = "high from underside to top",
                                                       [LW_HEIGHT_EXPOSED] = "high above the ground in front",
                                                       [LW_HEIGHT_RETAINED] = "of soil held up",
                                                       [LW_HEIGHT_NATURAL] = "of cut or fill",
                                                       [LW_HEIGHT_FENCE] = "high with its fence",
                                                       [LW_HEIGHT_GREATEST] = "high by its greatest height"};
  return manners[kind];
}

static void print_authority(const lw_limit_row *row, char *out, size_t size) {
  lw_print(out, size, row->of_default ? "the cautious default for a place not on file" : "%s, %s,",
           row->instrument, row->region);
}

static void tell_past(const lw_facts *f, const lw_limit_row *row, double height_m, lw_verdict *v) {
  bool natural = row->measured == LW_HEIGHT_NATURAL;
  char authority[256];
  lw_verdict_reason *r = lw_reasons_new(
      v, &(lw_because){.answer = LW_ANSWER_WHO,
                       .who = calls_for(f, row),
                       .origin = natural && f->c->cut_depth.origin != LW_GIVEN ? LW_ASSUMED : LW_GIVEN,
                       .slug = slug_of(row->trigger),
                       .source = row->from.source,
                       .again = true});
  if (!r) return;
  print_authority(row, authority, sizeof authority);
  lw_print(r->text, sizeof r->text, "It is %s m %s%s, %s the %s m where %s %s.",
           lw_two_decimals(height_m).text, manner_of(row->fence_counts ? LW_HEIGHT_FENCE : row->measured),
           tier_height(f, row) > 0.0 ? " together with the other wall" : "",
           row->at_or_above ? "not below" : "past", lw_two_decimals(row->height_m).text, authority,
           meaning_of(row->trigger));
}

/* A distance that a row asks for besides its height; missed, it ends the row's mildness. */
typedef struct lw_keep {
  const lw_quantity *distance;
  double at_least_m; /* NAN: the row says nothing */
  const char *slug, *name;
} lw_keep;

static void miss(const lw_facts *f, const lw_limit_row *row, const lw_keep *keep, lw_verdict *v) {
  const lw_quantity *q = keep->distance;
  if (!isfinite(keep->at_least_m) || q->origin == LW_ABSENT || q->si >= keep->at_least_m - ROUNDING) return;
  char away[64];
  lw_verdict_reason *r = lw_reasons_new(v, &(lw_because){.answer = LW_ANSWER_WHO,
                                                         .who = calls_for(f, row),
                                                         .origin = q->origin,
                                                         .slug = keep->slug,
                                                         .source = row->from.source});
  if (!r) return;
  lw_print(r->text, sizeof r->text, "Nearer than %s m to %s: %s (%s).",
           lw_two_decimals(keep->at_least_m).text, keep->name, lw_reasons_distance(q, away, sizeof away),
           row->region[0] ? row->region : row->instrument);
}

static double larger(double distance_m, double by_height) {
  if (!isfinite(distance_m)) return by_height;
  return isfinite(by_height) ? lw_larger(distance_m, by_height) : distance_m;
}

/* How near a load must be to count for a row that allows none; not said: as the default has it. */
static double load_zone(const lw_facts *f, const lw_limit_row *row, double height_m) {
  double zone = larger(row->surcharge_zone_m, row->surcharge_zone_per_height * height_m);
  return isfinite(zone) ? zone : lw_facts_clearance(f, LW_CLEARANCE_LOAD);
}

static void miss_load(const lw_facts *f, const lw_limit_row *row, double height_m, lw_verdict *v) {
  double zone = load_zone(f, row, height_m);
  lw_heavy load = lw_facts_heavy(f, zone);
  if (!row->no_surcharge || !(load.distance_m < zone - ROUNDING)) return;
  lw_verdict_reason *r = lw_reasons_new(v, &(lw_because){.answer = LW_ANSWER_WHO,
                                                         .who = calls_for(f, row),
                                                         .origin = load.origin,
                                                         .slug = "clearance-load",
                                                         .source = row->from.source});
  if (!r) return;
  lw_print(r->text, sizeof r->text, "A load heavier than garden use %s%s m behind, nearer than %s m (%s).",
           load.origin == LW_ASSUMED ? "is not known, so taken as "
           : load.vehicle            ? "(a vehicle) can stand "
                                     : "stands ",
           lw_two_decimals(load.distance_m).text, lw_two_decimals(zone).text, row->region);
}

/* A barrier row asks for nothing besides its height. */
static void hold_conditions(const lw_facts *f, const lw_limit_row *row, double height_m, lw_verdict *v) {
  const lw_case *c = f->c;
  if (row->trigger == LW_BARRIER_ABOVE || !row->keeps_off) return;
  const lw_keep keeps[] = {
      {&c->boundary_distance, larger(row->min_boundary_m, row->min_boundary_per_height * height_m),
       "clearance-boundary", "a boundary"},
      {&c->building_distance, larger(row->min_building_m, row->min_building_per_height * height_m),
       "clearance-building", "a building"},
      {&c->other_wall_distance,
       larger(row->min_other_wall_m, row->min_other_wall_per_height * f->lower_wall_m),
       "clearance-other-wall", "another wall"},
      {&c->service_distance, row->min_service_m, "clearance-service", "a service"},
      {&c->waterbody_distance, row->min_waterbody_m, "clearance-waterbody", "a waterbody"},
  };
  for (size_t i = 0; i < sizeof keeps / sizeof *keeps; i++) miss(f, row, &keeps[i], v);
  miss_load(f, row, height_m, v);
}

static void hold(const lw_facts *f, const lw_limit_row *row, lw_verdict *v) {
  if (!is_about(f, row)) return;
  double height = height_by(f, row);
  bool past = is_past(row, height);
  if (v->limit_count < LW_LIMIT_HIT_MAX)
    v->limit[v->limit_count++] = (lw_limit_hit){.row = row, .height_m = height, .past = past};
  if (past) tell_past(f, row, height, v);
  hold_conditions(f, row, height, v);
}

void lw_verdict_limits(const lw_facts *facts, lw_verdict *verdict) {
  const lw_tables *tables = facts->tables;
  for (int i = 0; i < tables->limit_count; i++)
    if (facts->places.at[tables->limit_place[i]]) hold(facts, &tables->limit[i], verdict);
}
