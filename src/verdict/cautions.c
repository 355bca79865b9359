/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheet/taper.h"
#include "sheet/values.h"
#include "parts.h"

#include <lowwall/sheet.h>
#include <math.h>
#include <string.h>

#include "conditions.h"

/* Five to ten hazards that fit this wall, not a wall of text. The graver comes first, one that fits by a
 * cue of this very wall before one that comes with every wall, and a second one of the same kind steps
 * back. */

enum { CAUTIONS_ENOUGH = 5, STILL_WORTH_SAYING = 5, OWN_CUE = 2, OWN_CUES_COUNTED = 2 };

/* The cues that this wall has, a bit each, and those of them that are its own and not every wall's. */
typedef struct lw_cues {
  unsigned fits, own;
} lw_cues;

static double block_mass_kg(const lw_case *c) {
  static const double GRAVITY = 9.80665;
  if (c->courses.block_mass.origin != LW_ABSENT) return c->courses.block_mass.si;
  if (c->courses.block_depth.origin == LW_ABSENT || c->courses.block_length.origin == LW_ABSENT) return 0.0;
  return c->courses.block_unit_weight.si * lw_case_block_m3(c, c->courses.block_depth.si) * 1000.0 / GRAVITY;
}

static bool clayey(const lw_facts *f) {
  bool reactive = lw_choice_is(&f->c->site.reactive_soil, LW_YES);
  return reactive || f->wall->site.backfill_refused || !f->wall->site.free_draining;
}

static bool nearer(const lw_facts *f, const lw_quantity *q, lw_known_row clearance) {
  return lw_facts_distance(q) < lw_facts_clearance(f, clearance);
}

static void common(lw_cues *cues, lw_cue cue, bool fits) {
  if (fits) cues->fits |= 1u << cue;
}

/* Not one that is only a question: the report asks it. */
static bool is_so(const lw_facts *f, lw_known_row condition) {
  return lw_verdict_condition(f, condition, NULL) == LW_SO_YES;
}

static void own(lw_cues *cues, lw_cue cue, bool fits) {
  common(cues, cue, fits);
  if (fits) cues->own |= 1u << cue;
}

static void cues_of_works(const lw_facts *f, const lw_verdict *v, lw_cues *cues) {
  bool bed = v->what > LW_WHAT_RETAINING_WALL;
  common(cues, LW_CUE_ALWAYS, true);
  common(cues, LW_CUE_DIGGING, true);
  common(cues, LW_CUE_COMPACTION, true);
  common(cues, LW_CUE_DELIVERY, true);
  common(cues, LW_CUE_CUTTING, f->wall->section.kind == LW_WALL_COURSES);
  common(cues, LW_CUE_SOIL_IMPORTED, bed);
  common(cues, LW_CUE_FOOD, bed);
  common(cues, LW_CUE_CAP, f->wall->section.has_cap);
  own(cues, LW_CUE_PEOPLE_ON_CAP, f->wall->people_on_cap);
  own(cues, LW_CUE_DEEP_DIG, f->dig.taken_m >= lw_known_value(f->tables, LW_THRESHOLD_TRENCH_DEPTH));
  own(cues, LW_CUE_LIFTING, block_mass_kg(f->c) > lw_known_value(f->tables, LW_THRESHOLD_LIFT_MASS));
  own(cues, LW_CUE_WORKS_MOVED, is_so(f, LW_CONDITION_WALL_THAT_MOVED));
}

/* Damp and soil against it trouble a building that stands by itself beside a bed as well. */
static bool building_near(const lw_facts *f) {
  const lw_quantity *distance = &f->c->site.building_distance;
  return lw_facts_back_is(f, LW_BACK_BUILDING) || lw_facts_nearer(distance, f->reach.taken_m) == LW_SO_YES;
}

static void cues_of_site(const lw_facts *f, lw_cues *cues) {
  const lw_case *c = f->c;
  bool fence = lw_facts_back_is(f, LW_BACK_FENCE) || is_so(f, LW_CONDITION_FENCE_LOAD) ||
               is_so(f, LW_CONDITION_FENCE_NEAR);
  own(cues, LW_CUE_TALL, f->height_m[LW_HEIGHT_EXPOSED] > lw_facts_clearance(f, LW_CLEARANCE_FALL_FLAG));
  own(cues, LW_CUE_OUTLET_BLOCKED, f->wall->site.ways_out < 2);
  own(cues, LW_CUE_FENCE_BEHIND, fence);
  own(cues, LW_CUE_BUILDING_BEHIND, building_near(f));
  own(cues, LW_CUE_POOL, nearer(f, &c->site.pool_barrier_distance, LW_CLEARANCE_POOL_FLAG));
  own(cues, LW_CUE_LOAD_BEHIND, f->loaded != LW_SO_NOT);
  own(cues, LW_CUE_VEHICLE, lw_verdict_condition(f, LW_CONDITION_VEHICLE_LOAD, NULL) != LW_SO_NOT);
  own(cues, LW_CUE_TIER, f->other_wall_near);
  own(cues, LW_CUE_SLOPE, !f->level_behind || !f->level_in_front);
  own(cues, LW_CUE_CLAY, clayey(f));
  own(cues, LW_CUE_BOUNDARY, nearer(f, &c->site.boundary_distance, LW_CLEARANCE_BOUNDARY));
  own(cues, LW_CUE_SERVICES, nearer(f, &c->site.service_distance, LW_CLEARANCE_SERVICE));
  own(cues, LW_CUE_PUBLIC_WAY, nearer(f, &c->site.public_way_distance, LW_CLEARANCE_PUBLIC_WAY));
  own(cues, LW_CUE_SEISMIC, is_so(f, LW_CONDITION_EARTHQUAKE));
}

static int count_bits(unsigned bits) {
  int count = 0;
  for (; bits; bits &= bits - 1) count++;
  return count;
}

/* What a hazard weighs beside those already chosen; 0: nothing of this wall brings it up. */
static int weight_of(const lw_cues *cues, const lw_reasons *so_far, const lw_hazard_row *row) {
  unsigned bits = row->cues & cues->fits;
  int own_cues = count_bits(bits & cues->own), alike = 0;
  if (!bits) return 0;
  for (int i = 0; i < so_far->caution_count; i++) {
    if (so_far->caution[i] == row) return 0;
    alike += so_far->caution[i]->cues & bits ? 1 : 0;
  }
  own_cues = own_cues < OWN_CUES_COUNTED ? own_cues : OWN_CUES_COUNTED;
  return row->severity + OWN_CUE * own_cues - alike;
}

static const lw_hazard_row *heaviest(const lw_cues *cues, const lw_tables *tables, const lw_reasons *so_far,
                                     int *weight) {
  const lw_hazard_row *best = NULL;
  *weight = 0;
  for (int i = 0; i < tables->hazard_count; i++) {
    int w = weight_of(cues, so_far, &tables->hazard[i]);
    if (w > *weight) {
      best = &tables->hazard[i];
      *weight = w;
    }
  }
  return best;
}

void lw_verdict_cautions(const lw_facts *facts, lw_reaching *to) {
  lw_reasons *so_far = to->reasons;
  lw_cues cues = {0};
  cues_of_works(facts, to->verdict, &cues);
  cues_of_site(facts, &cues);
  while (so_far->caution_count < LW_CAUTION_MAX) {
    int weight;
    const lw_hazard_row *row = heaviest(&cues, facts->tables, so_far, &weight);
    if (!row || (so_far->caution_count >= CAUTIONS_ENOUGH && weight < STILL_WORTH_SAYING)) return;
    so_far->caution[so_far->caution_count++] = row;
  }
}
