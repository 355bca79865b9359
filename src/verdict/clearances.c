/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <math.h>

/* The distances to keep where no place is on file; a missed one is a question for the council. */

static const double ROUNDING = 1e-9;

static void miss(const lw_facts *f, lw_verdict *v, lw_known_row of, const lw_quantity *q, const char *slug) {
  const lw_clearance_row *row = lw_known_clearance(f->tables, of);
  double wanted = lw_facts_clearance(f, of);
  if (!row || q->origin == LW_ABSENT || q->si >= wanted - ROUNDING) return;
  char away[64];
  lw_verdict_reason *r = lw_reasons_new(v, &(lw_because){.answer = LW_ANSWER_WHO,
                                                         .who = LW_WHO_COUNCIL,
                                                         .origin = q->origin,
                                                         .slug = slug,
                                                         .source = row->from.source});
  if (!r) return;
  lw_print(r->text, sizeof r->text, "Nearer than %.2f m to %s: %s.", wanted, row->name,
           lw_reasons_distance(q, away, sizeof away));
}

static void load(const lw_facts *f, lw_verdict *v) {
  const lw_clearance_row *row = lw_known_clearance(f->tables, LW_CLEARANCE_LOAD);
  double wanted = lw_facts_clearance(f, LW_CLEARANCE_LOAD);
  lw_heavy heavy = lw_facts_heavy(f, wanted);
  if (!row || !(heavy.distance_m < wanted - ROUNDING)) return;
  lw_verdict_reason *r = lw_reasons_new(v, &(lw_because){.answer = LW_ANSWER_WHO,
                                                         .who = LW_WHO_COUNCIL,
                                                         .origin = heavy.origin,
                                                         .slug = "clearance-load",
                                                         .source = row->from.source});
  if (!r) return;
  lw_print(r->text, sizeof r->text, "Nearer than %.2f m to %s: %s%.2f m from the rear of the top.", wanted,
           row->name, heavy.origin == LW_ASSUMED ? "not known, so taken as " : "", heavy.distance_m);
}

/* The upper of two walls must not be the taller one, as far as its own height counts for a tier. */
static void taller_above(const lw_facts *f, lw_verdict *v) {
  const lw_case *c = f->c;
  double other = c->other_wall_height.origin == LW_ABSENT ? 0.0 : c->other_wall_height.si;
  double mine = f->height_m[LW_HEIGHT_EXPOSED];
  bool above = lw_facts_is(&c->other_wall_side, LW_SIDE_ABOVE);
  double upper = above ? other : mine, lower = above ? mine : other;
  const lw_clearance_row *row = lw_known_clearance(f->tables, LW_CLEARANCE_OTHER_WALL);
  double apart = fmax(lw_facts_clearance(f, LW_CLEARANCE_OTHER_WALL),
                      lw_facts_threshold(f, LW_THRESHOLD_TIER_APART, INFINITY) * upper);
  bool together = f->other_wall_m < apart - ROUNDING;
  if (!row || !together || upper <= lower + ROUNDING) return;
  lw_verdict_reason *r = lw_reasons_new(v, &(lw_because){.answer = LW_ANSWER_WHO,
                                                         .who = LW_WHO_COUNCIL,
                                                         .origin = c->other_wall_height.origin,
                                                         .slug = "upper-wall-taller",
                                                         .source = row->from.source});
  if (r)
    lw_print(r->text, sizeof r->text, "Of two walls the upper is the taller: %.2f m above %.2f m.", upper,
             lower);
}

void lw_verdict_clearances(const lw_facts *facts, lw_verdict *verdict) {
  const lw_case *c = facts->c;
  miss(facts, verdict, LW_CLEARANCE_BOUNDARY, &c->boundary_distance, "clearance-boundary");
  miss(facts, verdict, LW_CLEARANCE_BUILDING, &c->building_distance, "clearance-building");
  miss(facts, verdict, LW_CLEARANCE_OTHER_WALL, &c->other_wall_distance, "clearance-other-wall");
  load(facts, verdict);
  miss(facts, verdict, LW_CLEARANCE_SERVICE, &c->service_distance, "clearance-service");
  miss(facts, verdict, LW_CLEARANCE_WATERBODY, &c->waterbody_distance, "clearance-waterbody");
  miss(facts, verdict, LW_CLEARANCE_PUBLIC_WAY, &c->public_way_distance, "clearance-public-way");
  miss(facts, verdict, LW_CLEARANCE_POOL_BARRIER, &c->pool_barrier_distance, "clearance-pool-barrier");
  taller_above(facts, verdict);
}
