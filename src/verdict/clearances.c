/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <math.h>

#include "sheet/values.h"

/* The distances to keep where no place is on file, and of them those that a place on file says nothing of: to
 * services, waterbodies, streets and pool barriers. A missed one is a question for the council. */

static const double ROUNDING = 1e-9;

/* A distance of the sheet, what it is to, and the item that has it. */
typedef struct lw_kept {
  lw_known_row of;
  const lw_quantity *distance;
  const char *slug, *item;
} lw_kept;

static double per_height(const lw_clearance_row *row, double height_m) {
  return fmax(isfinite(row->at_least_m) ? row->at_least_m : 0.0,
              isfinite(row->per_height) ? row->per_height * height_m : 0.0);
}

/* As far as the row asks for with the height as taken, and as far as it does for certain. */
static lw_span wanted_by(const lw_facts *f, const lw_clearance_row *row) {
  const lw_span *height = row->of == LW_OF_LOWER_WALL ? &f->lower_wall
                          : row->of == LW_OF_TOTAL    ? &f->height[LW_HEIGHT_TOTAL]
                                                      : &f->height[LW_HEIGHT_GREATEST];
  double taken = isfinite(height->taken_m) ? height->taken_m : f->height_m[LW_HEIGHT_GREATEST];
  return (lw_span){per_height(row, taken), per_height(row, height->certain_m), height->left_out};
}

static void miss(const lw_facts *f, lw_reaching *to, const lw_kept *kept) {
  const lw_clearance_row *row = lw_known_clearance(f->tables, kept->of);
  if (!row) return;
  lw_span wanted = wanted_by(f, row);
  lw_so so = lw_facts_nearer(kept->distance, wanted.taken_m);
  bool certain = lw_facts_nearer(kept->distance, wanted.certain_m) == LW_SO_YES;
  if (so == LW_SO_NOT) return;
  if (!certain) {
    lw_reasons_ask(to, kept->slug, row->from.source, so == LW_SO_OPEN ? kept->item : wanted.left_out);
    return;
  }
  const lw_apart apart = lw_metres_apart(f->units, wanted.taken_m, kept->distance->si, 2);
  lw_verdict_reason *r = lw_reasons_new(to, &(lw_because){.answer = LW_ANSWER_WHO,
                                                          .who = LW_WHO_COUNCIL,
                                                          .origin = LW_GIVEN,
                                                          .slug = kept->slug,
                                                          .source = row->from.source});
  if (!r) return;
  lw_print(r->text, sizeof r->text, "Nearer than %s to %s: %s.", apart.one.text, row->name,
           lw_reasons_away(kept->distance, &apart.other).text);
}

static void load(const lw_facts *f, lw_reaching *to) {
  const lw_clearance_row *row = lw_known_clearance(f->tables, LW_CLEARANCE_LOAD);
  if (!row) return;
  lw_span wanted = wanted_by(f, row);
  lw_heavy heavy = lw_facts_heavy(f, wanted.taken_m);
  if (!(heavy.distance_m < wanted.taken_m - ROUNDING) || lw_facts_vehicle_told(f, &heavy)) return;
  if (heavy.origin == LW_ASSUMED || !(heavy.distance_m < wanted.certain_m - ROUNDING)) {
    const char *left_out = heavy.origin == LW_ASSUMED ? f->load_left_out : wanted.left_out;
    lw_reasons_ask(to, "clearance-load", row->from.source, left_out);
    return;
  }
  lw_verdict_reason *r = lw_reasons_new(to, &(lw_because){.answer = LW_ANSWER_WHO,
                                                          .who = LW_WHO_COUNCIL,
                                                          .origin = LW_GIVEN,
                                                          .slug = "clearance-load",
                                                          .source = row->from.source});
  if (!r) return;
  const lw_apart apart = lw_metres_apart(f->units, wanted.taken_m, heavy.distance_m, 2);
  lw_print(r->text, sizeof r->text, "Nearer than %s to %s: %s from the rear of the top.", apart.one.text,
           row->name, apart.other.text);
}

/* The upper of two walls must not be the taller one, as far as its own height counts for a tier. */
static void taller_above(const lw_facts *f, lw_reaching *to) {
  const lw_case *c = f->c;
  double other = lw_si_or(&c->site.other_wall_height, 0.0);
  double mine = f->height_m[LW_HEIGHT_EXPOSED];
  bool above = lw_choice_is(&c->site.other_wall_side, LW_SIDE_ABOVE);
  double upper = above ? other : mine, lower = above ? mine : other;
  const lw_clearance_row *row = lw_known_clearance(f->tables, LW_CLEARANCE_OTHER_WALL);
  if (!row || lw_facts_nearer(&c->site.other_wall_distance, 0.0) == LW_SO_OPEN) return;
  bool told = c->site.other_wall_height.origin == LW_GIVEN && c->site.other_wall_side.origin == LW_GIVEN;
  double tallest = told ? upper : fmax(mine, f->lower_wall.taken_m);
  double apart = fmax(lw_facts_clearance(f, LW_CLEARANCE_OTHER_WALL),
                      lw_known_value(f->tables, LW_THRESHOLD_TIER_APART) * tallest);
  bool together = lw_facts_nearer(&c->site.other_wall_distance, apart) == LW_SO_YES;
  if (together && !told) {
    bool height = c->site.other_wall_height.origin == LW_GIVEN;
    lw_reasons_ask(to, "upper-wall-taller", row->from.source,
                   height ? "other wall side" : "other wall height");
    return;
  }
  if (!together || upper <= lower + ROUNDING) return;
  lw_verdict_reason *r = lw_reasons_new(to, &(lw_because){.answer = LW_ANSWER_WHO,
                                                          .who = LW_WHO_COUNCIL,
                                                          .origin = c->site.other_wall_height.origin,
                                                          .slug = "upper-wall-taller",
                                                          .source = row->from.source});
  const lw_apart heights = lw_metres_apart(f->units, upper, lower, 2);
  if (r)
    lw_print(r->text, sizeof r->text, "Of two walls the upper is the taller: %s above %s.", heights.one.text,
             heights.other.text);
}

void lw_verdict_clearances(const lw_facts *facts, lw_reaching *to) {
  const lw_case *c = facts->c;
  bool all = !facts->place_known;
  const struct {
    lw_kept kept;
    bool asked;
  } rows[] = {
      {{LW_CLEARANCE_BOUNDARY, &c->site.boundary_distance, "clearance-boundary", "boundary distance"}, all},
      {{LW_CLEARANCE_BUILDING, &c->site.building_distance, "clearance-building", "building distance"}, all},
      {{LW_CLEARANCE_OTHER_WALL, &c->site.other_wall_distance, "clearance-other-wall", "other wall distance"},
       all},
      {{LW_CLEARANCE_SERVICE, &c->site.service_distance, "clearance-service", "service distance"},
       all || !facts->own_service},
      {{LW_CLEARANCE_WATERBODY, &c->site.waterbody_distance, "clearance-waterbody", "waterbody distance"},
       all || !facts->own_waterbody},
      {{LW_CLEARANCE_PUBLIC_WAY, &c->site.public_way_distance, "clearance-public-way", "public way distance"},
       all || !facts->own_street},
      {{LW_CLEARANCE_POOL_BARRIER, &c->site.pool_barrier_distance, "clearance-pool-barrier",
        "pool barrier distance"},
       true},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
    if (rows[i].asked) miss(facts, to, &rows[i].kept);
  if (!all) return;
  load(facts, to);
  taller_above(facts, to);
}
