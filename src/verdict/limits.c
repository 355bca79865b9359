/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "limits.h"

#include <math.h>

#include "base/extremes.h"

/* The rows of tables/limits.csv that are about this place, each held against the wall: its height by the
 * row's own definition, then what the row asks for besides. A row that says itself unsure calls for the
 * council at most. */

static const double ROUNDING = 1e-9;

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

static void print_authority(const lw_facts *f, const lw_limit_row *row, char *out, size_t size) {
  if (!row->of_default)
    lw_print(out, size, "%s, %s,", row->instrument, row->region);
  else
    lw_print(out, size, "the cautious default for a place %s",
             f->c->place.origin == LW_ABSENT ? "not on file"
             : f->place_known                ? "without an engineer's line on file"
                                             : "without a line of its own on file");
}

static const char *place_of(const lw_limit_row *row) {
  if (row->of_default) return "the cautious default";
  return row->region[0] ? row->region : row->instrument;
}

static const char *comparison_of(const lw_limit_row *row) {
  return row->at_or_above ? "not below" : "past";
}

/* The wall's own height, even where what is left out could make it more. */
static double printed_height(const lw_facts *f, const lw_limit_row *row, const lw_span *height) {
  return isfinite(height->taken_m) ? height->taken_m : f->height_m[row->measured];
}

static void say_past(const lw_facts *f, const lw_limit_row *row, const lw_span *height,
                     lw_verdict_reason *r) {
  char authority[256];
  print_authority(f, row, authority, sizeof authority);
  lw_print(r->text, sizeof r->text, "It is %s m %s%s, %s the %s m where %s %s.",
           lw_two_decimals(printed_height(f, row, height)).text,
           manner_of(row->fence_counts ? LW_HEIGHT_FENCE : row->measured),
           lw_limit_adds_tier(f, row) ? " together with the other wall" : "", comparison_of(row),
           lw_two_decimals(row->height_m).text, authority, meaning_of(row->trigger));
}

/* Past it only if what is left out makes it so. */
static void ask_past(const lw_facts *f, const lw_limit_row *row, const char *left_out, lw_verdict_reason *r) {
  char authority[256], question[LW_DETAIL_MAX];
  print_authority(f, row, authority, sizeof authority);
  lw_print(r->text, sizeof r->text, "It may be %s the %s m where %s %s: %s.", comparison_of(row),
           lw_two_decimals(row->height_m).text, authority, meaning_of(row->trigger),
           lw_reasons_question(left_out, question, sizeof question));
}

static void tell_past(const lw_facts *f, const lw_limit_row *row, const lw_limit_held *held, lw_verdict *v) {
  bool certain = held->about == LW_SO_YES && held->past == LW_SO_YES;
  const char *left_out = held->about == LW_SO_OPEN ? held->about_left_out : held->height.left_out;
  lw_verdict_reason *r = lw_reasons_new(v, &(lw_because){.answer = LW_ANSWER_WHO,
                                                         .who = calls_for(f, row),
                                                         .origin = certain ? LW_GIVEN : LW_ASSUMED,
                                                         .slug = slug_of(row->trigger),
                                                         .source = row->from.source,
                                                         .left_out = certain ? NULL : left_out,
                                                         .again = true});
  if (!r) return;
  if (r->left_out)
    ask_past(f, row, left_out, r);
  else
    say_past(f, row, &held->height, r);
}

/* A distance that a row asks for besides its height; missed, it ends the row's mildness. */
typedef struct lw_keep {
  const lw_quantity *distance;
  double fixed_m, per_height; /* NAN: the row says nothing */
  const lw_span *height;
  const char *slug, *name, *item;
} lw_keep;

static double larger(double distance_m, double by_height) {
  if (!isfinite(distance_m)) return by_height;
  return isfinite(by_height) ? lw_larger(distance_m, by_height) : distance_m;
}

/* NULL: kept, or nothing is asked; otherwise its reason, still to be told. */
static lw_verdict_reason *missed(const lw_facts *f, const lw_limit_row *row, const lw_keep *keep,
                                 lw_verdict *v) {
  double taken = larger(keep->fixed_m, keep->per_height * keep->height->taken_m);
  double certain = larger(keep->fixed_m, keep->per_height * keep->height->certain_m);
  lw_so so = isfinite(keep->fixed_m) || isfinite(keep->per_height) ? lw_facts_nearer(keep->distance, taken)
                                                                   : LW_SO_NOT;
  const char *left_out = so == LW_SO_OPEN ? keep->item : keep->height->left_out;
  if (so == LW_SO_NOT) return NULL;
  if (so == LW_SO_YES && lw_facts_nearer(keep->distance, certain) == LW_SO_YES) left_out = NULL;
  return lw_reasons_new(v, &(lw_because){.answer = LW_ANSWER_WHO,
                                         .who = calls_for(f, row),
                                         .origin = left_out ? LW_ASSUMED : LW_GIVEN,
                                         .slug = keep->slug,
                                         .source = row->from.source,
                                         .left_out = left_out});
}

static void miss(const lw_facts *f, const lw_limit_row *row, const lw_keep *keep, lw_verdict *v) {
  lw_verdict_reason *r = missed(f, row, keep, v);
  if (!r) return;
  char away[LW_DETAIL_MAX];
  double wanted = larger(keep->fixed_m, keep->per_height * keep->height->taken_m);
  const char *where = place_of(row);
  if (r->left_out)
    lw_print(r->text, sizeof r->text, "It may stand nearer to %s than %s asks for: %s.", keep->name, where,
             lw_reasons_question(r->left_out, away, sizeof away));
  else
    lw_print(r->text, sizeof r->text, "Nearer than %s m to %s: %s (%s).", lw_two_decimals(wanted).text,
             keep->name, lw_reasons_distance(keep->distance, away, sizeof away), where);
}

/* How near a load must be to count for a row that allows none; not said: as the default has it. */
static double load_zone(const lw_facts *f, const lw_limit_row *row, double height_m) {
  double zone = larger(row->surcharge_zone_m, row->surcharge_zone_per_height * height_m);
  return isfinite(zone) ? zone : lw_facts_clearance(f, LW_CLEARANCE_LOAD);
}

static void miss_load(const lw_facts *f, const lw_limit_row *row, const lw_span *height, lw_verdict *v) {
  double zone = load_zone(f, row, height->taken_m);
  lw_heavy load = lw_facts_heavy(f, zone);
  if (!row->no_surcharge || !(load.distance_m < zone - ROUNDING)) return;
  if (lw_facts_vehicle_told(f, &load)) return;
  bool certain = load.origin != LW_ASSUMED && load.distance_m < load_zone(f, row, height->certain_m);
  const char *left_out = load.origin == LW_ASSUMED ? f->load_left_out : height->left_out;
  lw_verdict_reason *r = lw_reasons_new(v, &(lw_because){.answer = LW_ANSWER_WHO,
                                                         .who = calls_for(f, row),
                                                         .origin = certain ? LW_GIVEN : LW_ASSUMED,
                                                         .slug = "clearance-load",
                                                         .source = row->from.source,
                                                         .left_out = certain ? NULL : left_out});
  if (!r) return;
  char question[LW_DETAIL_MAX];
  if (r->left_out)
    lw_print(r->text, sizeof r->text, "A load heavier than garden use may come nearer than %s allows: %s.",
             place_of(row), lw_reasons_question(r->left_out, question, sizeof question));
  else
    lw_print(r->text, sizeof r->text, "A load heavier than garden use %s%s m behind, nearer than %s m (%s).",
             load.vehicle ? "(a vehicle) can stand " : "stands ", lw_two_decimals(load.distance_m).text,
             lw_two_decimals(zone).text, place_of(row));
}

/* A barrier row asks for nothing besides its height. */
static void hold_conditions(const lw_facts *f, const lw_limit_row *row, const lw_span *height,
                            lw_verdict *v) {
  static const double NONE = NAN;
  const lw_case *c = f->c;
  if (row->trigger == LW_BARRIER_ABOVE || !row->keeps_off) return;
  const lw_keep keeps[] = {
      {&c->boundary_distance, row->min_boundary_m, row->min_boundary_per_height, height, "clearance-boundary",
       "a boundary", "boundary distance"},
      {&c->building_distance, row->min_building_m, row->min_building_per_height, height, "clearance-building",
       "a building", "building distance"},
      {&c->other_wall_distance, row->min_other_wall_m, row->min_other_wall_per_height, &f->lower_wall,
       "clearance-other-wall", "another wall", "other wall distance"},
      {&c->service_distance, row->min_service_m, NONE, height, "clearance-service", "a service",
       "service distance"},
      {&c->waterbody_distance, row->min_waterbody_m, NONE, height, "clearance-waterbody", "a waterbody",
       "waterbody distance"},
  };
  for (size_t i = 0; i < sizeof keeps / sizeof *keeps; i++) miss(f, row, &keeps[i], v);
  miss_load(f, row, height, v);
}

static bool clears(const lw_facts *f, const lw_limit_row *row) {
  return row->clears &&
         (row->of_default ? !f->place_known : row->place_row == f->place_row || row->clears_within);
}

static void hold(const lw_facts *f, const lw_limit_row *row, lw_verdict *v) {
  lw_limit_held held;
  lw_limit_hold(f, row, &held);
  if (held.about == LW_SO_NOT) return;
  double printed = printed_height(f, row, &held.height);
  if (v->limit_count < LW_LIMIT_HIT_MAX)
    v->limit[v->limit_count++] = (lw_limit_hit){
        .row = row, .height_m = printed, .past = lw_limit_is_past(row, printed), .clears = clears(f, row)};
  if (held.past != LW_SO_NOT) tell_past(f, row, &held, v);
  hold_conditions(f, row, &held.height, v);
}

/* Where no engineer's line is on file the default's holds, however well the rest of the place is known. */
static bool asked_of_all(const lw_facts *f, const lw_limit_row *row) {
  bool engineer = row->trigger == LW_ENGINEER_ABOVE || row->trigger == LW_DESIGN_ABOVE;
  return row->of_default && engineer && !f->own_engineer;
}

void lw_verdict_limits(const lw_facts *facts, lw_verdict *verdict) {
  const lw_tables *tables = facts->tables;
  for (int i = 0; i < tables->limit_count; i++) {
    const lw_limit_row *row = &tables->limit[i];
    if (facts->places.at[tables->limit_place[i]] || asked_of_all(facts, row)) hold(facts, row, verdict);
  }
}
