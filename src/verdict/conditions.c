/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <lowwall/influence.h>
#include <math.h>
#include <stdarg.h>
#include <string.h>

#include "base/print.h"

/* What sends a wall to a professional whatever its height. The rows, their sentences and whom they call
 * for stand in tables/conditions.csv; here is only how the sheet answers each. Heritage and vibrating
 * loads have no item: nobody is asked for them. */

/* How an answer was come by, for the end of the sentence. */
typedef struct lw_finding {
  lw_origin origin;
  char *detail; /* LW_DETAIL_MAX bytes; NULL: nobody reads it */
} lw_finding;

static const double TOUCHING_M = 1e-9;

static void tell(lw_finding *found, const char *format, ...) __attribute__((format(printf, 2, 3)));

/* Onto what is told already. */
static void tell(lw_finding *found, const char *format, ...) {
  if (!found->detail) return;
  size_t used = strlen(found->detail);
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(found->detail + used, LW_DETAIL_MAX - used, format, arguments);
  va_end(arguments);
}

static bool near(const lw_quantity *q, double within_m, const char *what, lw_finding *found) {
  if (q->origin == LW_ABSENT || q->si >= within_m) return false;
  char away[64];
  found->origin = q->origin;
  if (found->detail)
    tell(found, "%s %s, within the %.2f m that count here", what, lw_reasons_distance(q, away, sizeof away),
         within_m);
  return true;
}

static bool said_yes(const lw_choice *choice, int value, const char *known, lw_finding *found) {
  if (!lw_facts_is(choice, value)) return false;
  found->origin = choice->origin;
  tell(found, "%s", choice->origin == LW_ASSUMED ? "not known, so taken as true" : known);
  return true;
}

static bool supports_building(const lw_facts *f, lw_finding *found) {
  if (lw_facts_back_is(f, LW_BACK_BUILDING)) {
    return said_yes(&f->c->site_back, LW_BACK_BUILDING, "a building closes the far side", found);
  }
  return near(&f->c->building_distance, f->reach_m, "a building", found);
}

static bool vehicle_load(const lw_facts *f, lw_finding *found) {
  return said_yes(&f->c->vehicle_access, LW_YES, "a vehicle can reach it", found);
}

static bool water_held(const lw_facts *f, lw_finding *found) {
  return said_yes(&f->c->water_held, LW_YES, "it holds water", found) ||
         near(&f->c->pool_barrier_distance, TOUCHING_M, "a pool barrier", found);
}

/* The load that is furthest within the line, and how far it would have to go. */
static bool load_inside(const lw_facts *f, lw_finding *found) {
  lw_influence influence;
  const lw_influence_load *worst = NULL;
  lw_influence_find(f->c, f->tables, f->wall, &influence);
  for (int i = 0; i < influence.count; i++) {
    const lw_influence_load *load = &influence.load[i];
    if (load->heavy && load->inside && (!worst || load->move_m > worst->move_m)) worst = load;
  }
  if (!worst) return false;
  const lw_words *name = &f->c->load[worst->number - 1].name;
  found->origin = LW_GIVEN;
  tell(found,
       "load %d%s%.24s begins %.2f m behind the top, the line at %.0f deg comes up at %.2f m; it is %.2f m "
       "too near",
       worst->number, name->origin == LW_ABSENT ? "" : ", ", name->origin == LW_ABSENT ? "" : name->text,
       worst->distance_m, influence.angle_rad * LW_DEG_PER_RAD, worst->line_m, worst->move_m);
  return true;
}

static bool other_wall_near(const lw_facts *f, lw_finding *found) {
  return near(&f->c->other_wall_distance,
              lw_facts_threshold(f, LW_THRESHOLD_TIER_APART, INFINITY) * f->lower_wall_m - TOUCHING_M,
              "another wall", found);
}

static bool slopes(const lw_quantity *slope, const char *where, lw_finding *found) {
  found->origin = slope->origin;
  tell(found, "1 in %.1f %s%s", 1.0 / tan(fabs(slope->si)), where,
       slope->origin == LW_ASSUMED ? ", not known, so taken as that" : "");
  return true;
}

static bool sloping_ground(const lw_facts *f, lw_finding *found) {
  if (!f->level_behind) return slopes(&f->c->ground_slope, "behind", found);
  if (!f->level_in_front) return slopes(&f->c->front_slope, "in front", found);
  return false;
}

static bool boundary(const lw_facts *f, lw_finding *found) {
  return near(&f->c->boundary_distance, fmax(f->reach_m, f->dig_m), "the boundary", found);
}

static bool public_way(const lw_facts *f, lw_finding *found) {
  return near(&f->c->public_way_distance, f->reach_m, "a street or public path", found);
}

static bool mapped_land(const lw_facts *f, lw_finding *found) {
  return said_yes(&f->c->mapped_land, LW_YES, "it is on a map", found);
}

static bool reactive_soil(const lw_facts *f, lw_finding *found) {
  return said_yes(&f->c->reactive_soil, LW_YES, "it cracks in dry seasons", found);
}

static bool fence_carries_soil(const lw_facts *f, lw_finding *found) {
  if (!lw_facts_back_is(f, LW_BACK_FENCE)) return false;
  found->origin = f->c->site_back.origin;
  const lw_fence *fence = &f->fence;
  const double *ratio = fence->ratio[LW_FENCE_DRY];
  if (fence->back && fence->status == LW_OK)
    tell(found,
         "soil over the wind it was built for: boards %.2f, push %.2f, moment at the ground %.2f, at the "
         "hole's bottom %.2f",
         ratio[LW_FENCE_BOARD], ratio[LW_FENCE_SHEAR], ratio[LW_FENCE_GROUND], ratio[LW_FENCE_HOLE]);
  else
    tell(found, "%s",
         found->origin == LW_ASSUMED ? "what closes the bed is not known, so taken as a fence"
                                     : "give the bed a side of its own there");
  return true;
}

static bool fence_load(const lw_facts *f, lw_finding *found) {
  const lw_quantity *fence = &f->c->fence_height;
  if (f->fence_m <= 0.0) return false;
  found->origin = fence->origin;
  const lw_fence_wind *wind = &f->fence.on;
  tell(found, "%s%.2f m high", fence->origin == LW_ASSUMED ? "not known, so taken as " : "", fence->si);
  if (!wind->on_wall)
    tell(found, ", %.2f m behind the wall, within its height of %.2f m", wind->distance_m, wind->keep_off_m);
  return true;
}

/* The drop from which codes that ask for a barrier agree; lower ones are a question for the council. */
static bool barrier_needed(const lw_facts *f, lw_finding *found) {
  double most = lw_facts_clearance(f, LW_CLEARANCE_FALL_BARRIER);
  if (!f->people_above || f->height_m[LW_HEIGHT_EXPOSED] < most - TOUCHING_M) return false;
  found->origin = f->c->site_above.origin;
  tell(found, "%sa drop of %.2f m, %.2f m or more",
       found->origin == LW_ASSUMED ? "who is above is not known, so taken as people; " : "",
       f->height_m[LW_HEIGHT_EXPOSED], most);
  return true;
}

static bool no_outlet(const lw_facts *f, lw_finding *found) {
  if (f->water_behind) {
    found->origin = LW_GIVEN;
    tell(found, "water stands %.2f m below the top", f->wall->site.water_depth_m);
    return true;
  }
  if (!f->no_way_out) return false;
  found->origin = f->c->drain_outlets.origin == LW_GIVEN ? LW_GIVEN : LW_ASSUMED;
  tell(found, "%s",
       f->wall->site.outlets_buried
           ? "its outlets lie below the ground in front, and there are no open joints, no ground that drains"
       : found->origin == LW_GIVEN
           ? "no outlet, no open joints, no ground that drains"
                                 : "where it gets out is not known, so taken as nowhere");
  return true;
}

/* A named ground whose row gives no bearing value on purpose, and none given in its stead. */
static bool bears_nothing(const lw_facts *f) {
  const lw_words *name = &f->c->footing.name;
  const lw_soil_row *row = name->origin == LW_ABSENT ? NULL : lw_tables_soil(f->tables, name->text);
  if (f->c->allowable_bearing.origin == LW_GIVEN) return false;
  return f->wall->site.allowable_bearing_kpa <= 0.0 || (row && !isfinite(row->allowable_bearing_kpa));
}

static bool bad_fill(const lw_facts *f, lw_finding *found) {
  bool behind = f->wall->site.backfill_refused;
  if (!behind && !bears_nothing(f)) return false;
  found->origin = LW_GIVEN;
  tell(found, "%s",
       behind ? "the soil behind is refused as backfill"
              : "no bearing value may be given for the ground under it");
  return true;
}

static bool earthquake(const lw_facts *f, lw_finding *found) {
  const lw_quantity *q = &f->c->seismic_horizontal;
  if (q->origin == LW_ABSENT || q->si <= 0.0) return false;
  found->origin = q->origin;
  tell(found, "horizontal coefficient %.2f", q->si);
  return true;
}

static bool wall_that_moved(const lw_facts *f, lw_finding *found) {
  return said_yes(&f->c->works, LW_WORKS_MOVED, "it has moved", found) ||
         said_yes(&f->c->works, LW_WORKS_RAISED, "it is made higher than it was", found);
}

/* How deep a footing or a main lies is not asked: the trench reaches below it where it is nearer than it
 * is deep. */
static bool digs_below(const lw_facts *f, lw_finding *found) {
  return near(&f->c->building_distance, f->dig_m, "a building", found) ||
         near(&f->c->service_distance, f->dig_m, "a service", found);
}

typedef struct lw_condition {
  lw_known_row row;
  bool (*met)(const lw_facts *, lw_finding *);
} lw_condition;

static const lw_condition conditions[] = {
    {LW_CONDITION_OTHER_WALL_NEAR, other_wall_near},
    {LW_CONDITION_SLOPING_GROUND, sloping_ground},
    {LW_CONDITION_SUPPORTS_BUILDING, supports_building},
    {LW_CONDITION_VEHICLE_LOAD, vehicle_load},
    {LW_CONDITION_LOAD_INSIDE_INFLUENCE, load_inside},
    {LW_CONDITION_WATER_HELD, water_held},
    {LW_CONDITION_BOUNDARY, boundary},
    {LW_CONDITION_PUBLIC_WAY, public_way},
    {LW_CONDITION_MAPPED_LAND, mapped_land},
    {LW_CONDITION_REACTIVE_SOIL, reactive_soil},
    {LW_CONDITION_FENCE_LOAD, fence_load},
    {LW_CONDITION_FENCE_CARRIES_SOIL, fence_carries_soil},
    {LW_CONDITION_BARRIER_NEEDED, barrier_needed},
    {LW_CONDITION_NO_OUTLET, no_outlet},
    {LW_CONDITION_BAD_FILL, bad_fill},
    {LW_CONDITION_EARTHQUAKE, earthquake},
    {LW_CONDITION_WALL_THAT_MOVED, wall_that_moved},
    {LW_CONDITION_DIGS_BELOW_FOOTING, digs_below},
};

enum { CONDITIONS = sizeof conditions / sizeof *conditions };

const char *lw_verdict_condition_at(size_t index) {
  return index < CONDITIONS ? lw_known_slug(conditions[index].row) : NULL;
}

bool lw_verdict_condition_met(const lw_facts *facts, lw_known_row row) {
  lw_finding found = {LW_GIVEN, NULL};
  for (size_t i = 0; i < CONDITIONS; i++) {
    if (conditions[i].row == row) return conditions[i].met(facts, &found);
  }
  return false;
}

/* A table may give a condition to the council; one whose row is gone is no longer asked for. */
static void raise(const lw_facts *f, const lw_condition *condition, lw_verdict *v) {
  lw_finding found = {LW_GIVEN, NULL};
  const lw_condition_row *row = lw_known_condition(f->tables, condition->row);
  if (!row || !condition->met(f, &found)) return;
  lw_who who = row->for_council ? LW_WHO_COUNCIL : LW_WHO_ENGINEER;
  lw_verdict_reason *r = lw_reasons_new(v, &(lw_because){.answer = LW_ANSWER_WHO,
                                                         .who = who,
                                                         .origin = found.origin,
                                                         .slug = row->slug,
                                                         .source = row->from.source});
  if (!r) return;
  /* Most are not read in a schedule: the detail is told only now. */
  char detail[LW_DETAIL_MAX] = "";
  found.detail = detail;
  (void)condition->met(f, &found);
  size_t length = strlen(row->sentence);
  if (length > 0 && row->sentence[length - 1] == '.') length--;
  lw_print(r->text, sizeof r->text, "%.*s: %s.", (int)length, row->sentence, detail);
}

void lw_verdict_conditions(const lw_facts *facts, lw_verdict *verdict) {
  for (size_t i = 0; i < CONDITIONS; i++) raise(facts, &conditions[i], verdict);
}
