/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <math.h>
#include <string.h>

/* Five to ten hazards that fit this wall, not a wall of text. The graver comes first, one that fits by a
 * cue of this very wall before one that comes with every wall, and a second one of the same kind steps
 * back. */

enum { CAUTIONS_ENOUGH = 5, STILL_WORTH_SAYING = 5, OWN_CUE = 2, OWN_CUES_COUNTED = 2, CUE_MAX = 32 };

/* The cues of tables/hazards.csv, and whether they are this wall's own or every wall's. */
typedef struct lw_cue {
  const char *slug;
  bool fits, own;
} lw_cue;

typedef struct lw_cues {
  int count;
  lw_cue cue[CUE_MAX];
} lw_cues;

static double block_mass_kg(const lw_case *c) {
  static const double GRAVITY = 9.80665;
  if (c->block_mass.origin != LW_ABSENT) return c->block_mass.si;
  if (c->block_depth.origin == LW_ABSENT || c->block_length.origin == LW_ABSENT) return 0.0;
  return c->block_unit_weight.si * c->block_height.si * c->block_depth.si * c->block_length.si * 1000.0 /
         GRAVITY;
}

static bool clayey(const lw_facts *f) {
  bool reactive = lw_facts_is(&f->c->reactive_soil, LW_YES);
  return reactive || f->wall->site.backfill_refused || !f->wall->site.free_draining;
}

static bool nearer(const lw_facts *f, const lw_quantity *q, const char *clearance) {
  return lw_facts_distance(q) < lw_facts_clearance(f, clearance);
}

static void add(lw_cues *cues, const char *slug, bool fits, bool own) {
  if (cues->count < CUE_MAX) cues->cue[cues->count++] = (lw_cue){.slug = slug, .fits = fits, .own = own};
}

static void cues_of_works(const lw_facts *f, const lw_verdict *v, lw_cues *cues) {
  bool bed = v->what > LW_WHAT_RETAINING_WALL;
  add(cues, "always", true, false);
  add(cues, "digging", true, false);
  add(cues, "compaction", true, false);
  add(cues, "delivery", true, false);
  add(cues, "cutting", f->wall->section.kind == LW_WALL_COURSES, false);
  add(cues, "soil-imported", bed, false);
  add(cues, "food", bed, false);
  add(cues, "cap", f->wall->section.has_cap, false);
  add(cues, "people-on-cap", f->wall->people_on_cap, true);
  add(cues, "deep-dig", f->dig_m >= lw_facts_threshold(f, "trench-depth", 0.0), true);
  add(cues, "lifting", block_mass_kg(f->c) > lw_facts_threshold(f, "lift-mass", 0.0), true);
  add(cues, "works-moved", lw_verdict_condition_met(f, "wall-that-moved"), true);
}

static void cues_of_site(const lw_facts *f, lw_cues *cues) {
  const lw_case *c = f->c;
  bool fence = lw_facts_back_is(f, LW_BACK_FENCE) || lw_verdict_condition_met(f, "fence-load");
  add(cues, "tall", f->height_m[LW_HEIGHT_EXPOSED] > lw_facts_clearance(f, "fall-flag"), true);
  add(cues, "outlet-blocked", lw_site_ways_out(&f->wall->site) < 2, true);
  add(cues, "fence-behind", fence, true);
  add(cues, "building-behind", lw_verdict_condition_met(f, "supports-building"), true);
  add(cues, "pool", nearer(f, &c->pool_barrier_distance, "pool-flag"), true);
  add(cues, "load-behind", f->loaded, true);
  add(cues, "vehicle", lw_verdict_condition_met(f, "vehicle-load"), true);
  add(cues, "tier", f->other_wall_near, true);
  add(cues, "slope", !f->level_behind || !f->level_in_front, true);
  add(cues, "clay", clayey(f), true);
  add(cues, "boundary", nearer(f, &c->boundary_distance, "boundary"), true);
  add(cues, "services", nearer(f, &c->service_distance, "service"), true);
  add(cues, "public-way", nearer(f, &c->public_way_distance, "public-way"), true);
  add(cues, "seismic", lw_verdict_condition_met(f, "earthquake"), true);
}

/* The cues of a hazard that this wall has, a bit each. */
static unsigned matches(const lw_cues *cues, const lw_hazard_row *row) {
  unsigned bits = 0;
  for (int i = 0; i < cues->count; i++) {
    if (cues->cue[i].fits && lw_tables_listed(row->when, cues->cue[i].slug)) bits |= 1u << i;
  }
  return bits;
}

/* Which cues each hazard has, found once: the rows are words, and a schedule has many walls. */
typedef struct lw_fits {
  unsigned bits[LW_HAZARD_ROWS];
} lw_fits;

static int weight_of(const lw_cues *cues, const lw_fits *fits, const lw_facts *f, const lw_verdict *v,
                     int at) {
  const lw_hazard_row *row = &f->tables->hazard[at];
  unsigned bits = fits->bits[at];
  int own = 0, alike = 0;
  if (!bits) return 0;
  for (int i = 0; i < cues->count; i++) own += (bits >> i & 1u) && cues->cue[i].own ? 1 : 0;
  for (int i = 0; i < v->caution_count; i++) {
    if (v->caution[i] == row) return 0;
    alike += fits->bits[v->caution[i] - f->tables->hazard] & bits ? 1 : 0;
  }
  own = own < OWN_CUES_COUNTED ? own : OWN_CUES_COUNTED;
  return row->severity + OWN_CUE * own - alike;
}

static const lw_hazard_row *heaviest(const lw_cues *cues, const lw_fits *fits, const lw_facts *f,
                                     const lw_verdict *v, int *weight) {
  const lw_hazard_row *best = NULL;
  *weight = 0;
  for (int i = 0; i < f->tables->hazard_count; i++) {
    int w = weight_of(cues, fits, f, v, i);
    if (w > *weight) {
      best = &f->tables->hazard[i];
      *weight = w;
    }
  }
  return best;
}

void lw_verdict_cautions(const lw_facts *facts, lw_verdict *verdict) {
  lw_cues cues = {.count = 0};
  lw_fits fits;
  cues_of_works(facts, verdict, &cues);
  cues_of_site(facts, &cues);
  for (int i = 0; i < facts->tables->hazard_count; i++)
    fits.bits[i] = matches(&cues, &facts->tables->hazard[i]);
  while (verdict->caution_count < LW_CAUTION_MAX) {
    int weight;
    const lw_hazard_row *row = heaviest(&cues, &fits, facts, verdict, &weight);
    if (!row || (verdict->caution_count >= CAUTIONS_ENOUGH && weight < STILL_WORTH_SAYING)) return;
    verdict->caution[verdict->caution_count++] = row;
  }
}
