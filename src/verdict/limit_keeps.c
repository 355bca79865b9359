/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "limit_keeps.h"

#include <math.h>

#include "base/extremes.h"
#include "limit_held.h"

/* What a row of tables/limits.csv asks for besides its height: distances, and no load behind. */

static const double ROUNDING = 1e-9;

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

/* The reason of one that is missed, still to be told; NULL: kept, not asked for, or told already. */
static lw_verdict_reason *missed(const lw_facts *f, const lw_limit_row *row, const lw_keep *keep,
                                 lw_reaching *to, bool *kept) {
  double taken = larger(keep->fixed_m, keep->per_height * keep->height->taken_m);
  double certain = larger(keep->fixed_m, keep->per_height * keep->height->certain_m);
  lw_so so = isfinite(keep->fixed_m) || isfinite(keep->per_height) ? lw_facts_nearer(keep->distance, taken)
                                                                   : LW_SO_NOT;
  const char *left_out = so == LW_SO_OPEN ? keep->item : keep->height->left_out;
  *kept = so == LW_SO_NOT;
  if (*kept) return NULL;
  if (so == LW_SO_YES && lw_facts_nearer(keep->distance, certain) == LW_SO_YES) left_out = NULL;
  return lw_reasons_new(to, &(lw_because){.answer = LW_ANSWER_WHO,
                                          .who = lw_limit_calls_for(f, row),
                                          .origin = left_out ? LW_ASSUMED : LW_GIVEN,
                                          .slug = keep->slug,
                                          .source = row->from.source,
                                          .left_out = left_out});
}

/* Gives whether it is kept for certain. */
static bool keeps(const lw_facts *f, const lw_limit_row *row, const lw_keep *keep, lw_reaching *to) {
  bool kept = true;
  lw_verdict_reason *r = missed(f, row, keep, to, &kept);
  if (!r) return kept;
  char question[LW_CLAUSE_MAX];
  double wanted = larger(keep->fixed_m, keep->per_height * keep->height->taken_m);
  const char *where = lw_limit_place(row);
  if (r->left_out)
    lw_print(r->text, sizeof r->text, "It may stand nearer to %s than %s asks for: %s.", keep->name, where,
             lw_reasons_question(r->left_out, question, sizeof question));
  if (r->left_out) return false;
  const lw_apart apart = lw_metres_apart(f->units, wanted, keep->distance->si, 2);
  lw_print(r->text, sizeof r->text, "Nearer than %s to %s: %s (%s).", apart.one.text, keep->name,
           lw_reasons_away(keep->distance, &apart.other).text, where);
  return false;
}

/* How near a load must be to count for a row that allows none; not said: as the default has it. */
static double load_zone(const lw_facts *f, const lw_limit_row *row, double height_m) {
  double zone = larger(row->surcharge_zone_m, row->surcharge_zone_per_height * height_m);
  return isfinite(zone) ? zone : lw_facts_clearance(f, LW_CLEARANCE_LOAD);
}

static bool keeps_load(const lw_facts *f, const lw_limit_row *row, const lw_span *height, lw_reaching *to) {
  double zone = load_zone(f, row, height->taken_m);
  lw_heavy load = lw_facts_heavy(f, zone);
  if (!row->no_surcharge || !(load.distance_m < zone - ROUNDING)) return true;
  if (lw_facts_vehicle_told(f, &load)) return false;
  bool certain = load.origin != LW_ASSUMED && load.distance_m < load_zone(f, row, height->certain_m);
  const char *left_out = load.origin == LW_ASSUMED ? f->load_left_out : height->left_out;
  lw_verdict_reason *r = lw_reasons_new(to, &(lw_because){.answer = LW_ANSWER_WHO,
                                                          .who = lw_limit_calls_for(f, row),
                                                          .origin = certain ? LW_GIVEN : LW_ASSUMED,
                                                          .slug = "clearance-load",
                                                          .source = row->from.source,
                                                          .left_out = certain ? NULL : left_out});
  if (!r) return false;
  char question[LW_CLAUSE_MAX];
  const lw_apart apart = lw_metres_apart(f->units, load.distance_m, zone, 2);
  if (r->left_out)
    lw_print(r->text, sizeof r->text, "A load heavier than garden use may come nearer than %s allows: %s.",
             lw_limit_place(row), lw_reasons_question(r->left_out, question, sizeof question));
  else
    lw_print(r->text, sizeof r->text, "A load heavier than garden use %s%s behind, nearer than %s (%s).",
             load.vehicle ? "(a vehicle) can stand " : "stands ", apart.one.text, apart.other.text,
             lw_limit_place(row));
  return false;
}

/* A barrier row asks for nothing besides its height. */
bool lw_limit_keeps(const lw_facts *facts, const lw_limit_row *row, const lw_span *height, lw_reaching *to) {
  static const double NONE = NAN;
  const lw_case *c = facts->c;
  if (row->trigger == LW_BARRIER_ABOVE || !row->keeps_off) return true;
  const lw_keep asked[] = {
      {&c->site.boundary_distance, row->min_boundary_m, row->min_boundary_per_height, height,
       "clearance-boundary", "a boundary", "boundary distance"},
      {&c->site.building_distance, row->min_building_m, row->min_building_per_height, height,
       "clearance-building", "a building", "building distance"},
      {&c->site.other_wall_distance, row->min_other_wall_m, row->min_other_wall_per_height,
       &facts->lower_wall, "clearance-other-wall", "another wall", "other wall distance"},
      {&c->site.service_distance, row->min_service_m, NONE, height, "clearance-service", "a service",
       "service distance"},
      {&c->site.waterbody_distance, row->min_waterbody_m, NONE, height, "clearance-waterbody", "a waterbody",
       "waterbody distance"},
      {&c->site.public_way_distance, row->min_public_way_m, NONE, height, "clearance-public-way", "a street",
       "public way distance"},
  };
  bool kept = true;
  for (size_t i = 0; i < sizeof asked / sizeof *asked; i++) kept = keeps(facts, row, &asked[i], to) && kept;
  return keeps_load(facts, row, height, to) && kept;
}
