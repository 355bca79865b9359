/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "conditions.h"

#include <math.h>
#include <string.h>

#include "base/canned.h"
#include "base/print.h"
#include "sheet/values.h"
#include "backfill.h"
#include "fence_conditions.h"
#include "officer_conditions.h"
#include "parts.h"

/* What sends a wall to a professional whatever its height. The rows, their sentences and whom they call
 * for stand in tables/conditions.csv; here is only how the sheet answers each. What it leaves out asks the
 * council, and is named; it is never taken as answered, nor as an engineer's. */

static const double TOUCHING_M = 1e-9;

static lw_so either(lw_so a, lw_so b) {
  return a > b ? a : b;
}

/* A thing, and the item that has its distance. */
typedef struct lw_thing {
  const lw_quantity *distance;
  const char *item, *words;
} lw_thing;

/* Within the line or the dig; within their uncertain part only, what leaves that uncertain is asked. */
static lw_so near(const lw_thing *thing, const lw_span *within, lw_finding *found) {
  const lw_quantity *q = thing->distance;
  if (q->origin == LW_ABSENT) return LW_SO_NOT;
  if (q->origin == LW_ASSUMED) return lw_open_by(found, thing->item);
  if (q->si >= within->taken_m) return LW_SO_NOT;
  if (q->si >= within->certain_m) return lw_open_by(found, within->left_out);
  if (lw_facts_nearer(q, within->certain_m) == LW_SO_OPEN) return lw_open_by(found, thing->item);
  if (!found->detail) return LW_SO_YES;
  const lw_apart apart = lw_metres_apart(found->units, q->si, within->certain_m, 2);
  lw_tell(found, "%s %s away, within the %s that count here", thing->words, apart.one.text, apart.other.text);
  return LW_SO_YES;
}

static lw_so said_yes(const lw_choice *choice, int value, const char *known, const char *item,
                      lw_finding *found) {
  if (choice->origin == LW_ASSUMED) return lw_open_by(found, item);
  if (!lw_choice_is(choice, value)) return LW_SO_NOT;
  lw_tell(found, "%s", known);
  return LW_SO_YES;
}

static lw_thing building(const lw_facts *f) {
  return (lw_thing){&f->c->site.building_distance, "building distance", "a building"};
}

static lw_so supports_building(const lw_facts *f, lw_finding *found) {
  lw_thing thing = building(f);
  if (lw_facts_back_is(f, LW_BACK_BUILDING)) {
    lw_tell(found, "%s", "a building closes the far side");
    return LW_SO_YES;
  }
  return near(&thing, &f->building, found);
}

static lw_so vehicle_load(const lw_facts *f, lw_finding *found) {
  return said_yes(&f->c->site.vehicle_access, LW_YES, "a vehicle can reach it", "vehicle access", found);
}

static lw_so water_held(const lw_facts *f, lw_finding *found) {
  const lw_span touching = {TOUCHING_M, TOUCHING_M, NULL};
  lw_thing pool = {&f->c->site.pool_barrier_distance, "pool barrier distance", "a pool barrier"};
  lw_so held = said_yes(&f->c->site.water_held, LW_YES, "it holds water", "water held behind", found);
  return held == LW_SO_YES ? held : either(held, near(&pool, &touching, found));
}

/* How much of the line's height above a load is only assumed. */
static double uncertain_m(const lw_facts *f, const lw_influence_load *load) {
  const lw_span *total = &f->height[LW_HEIGHT_TOTAL];
  bool slope = f->c->ground.slope.origin == LW_ASSUMED;
  double rise = slope ? fmax(load->distance_m, 0.0) * tan(f->wall->site.slope_rad) : 0.0;
  return total->taken_m - total->certain_m + rise;
}

/* The load that is furthest within the line, and how far it would have to go. */
static lw_so load_inside(const lw_facts *f, lw_finding *found) {
  const lw_influence *influence = f->influence;
  const lw_influence_load *worst = NULL;
  for (int i = 0; i < influence->count; i++) {
    const lw_influence_load *load = &influence->load[i];
    if (load->heavy && load->inside && (!worst || load->move_m > worst->move_m)) worst = load;
  }
  if (!worst) return f->load_left_out ? lw_open_by(found, f->load_left_out) : LW_SO_NOT;
  double certain = worst->line_m - uncertain_m(f, worst) / tan(influence->angle_rad);
  if (worst->distance_m >= certain) return lw_open_by(found, f->reach.left_out);
  if (!found->detail) return LW_SO_YES;
  const lw_words *name = &f->c->load[worst->number - 1].name;
  const lw_apart apart = lw_metres_apart(f->units, worst->distance_m, worst->line_m, 2);
  lw_tell(found,
          "load %d%s%.24s begins %s behind the top, the line at %.0f deg comes up at %s; it is %s too near",
          worst->number, name->origin == LW_ABSENT ? "" : ", ", name->origin == LW_ABSENT ? "" : name->text,
          apart.one.text, influence->angle_rad * LW_DEG_PER_RAD, apart.other.text,
          lw_metres_apart(f->units, worst->move_m, 0.0, 2).one.text);
  return LW_SO_YES;
}

static lw_so other_wall_near(const lw_facts *f, lw_finding *found) {
  double apart = lw_known_value(f->tables, LW_THRESHOLD_TIER_APART);
  const lw_span *lower = &f->lower_wall;
  const lw_span within = {apart * lower->taken_m - TOUCHING_M, apart * lower->certain_m - TOUCHING_M,
                          lower->left_out};
  lw_thing wall = {&f->c->site.other_wall_distance, "other wall distance", "another wall"};
  return near(&wall, &within, found);
}

static lw_so slopes(const lw_quantity *slope, bool level, const char *where, const char *item,
                    lw_finding *found) {
  if (slope->origin == LW_ASSUMED) return lw_open_by(found, item);
  if (level) return LW_SO_NOT;
  lw_tell(found, "1 in %.3g %s", 1.0 / tan(fabs(slope->si)), where);
  return LW_SO_YES;
}

/* Where nobody says what is behind, nobody says that it is level across. */
static lw_so sloping_ground(const lw_facts *f, lw_finding *found) {
  const lw_case *c = f->c;
  lw_so behind = slopes(&c->ground.slope, f->level_behind, "behind", "ground slope", found);
  if (behind == LW_SO_YES) return behind;
  lw_so front = slopes(&c->ground.front_slope, f->level_in_front, "in front", "front slope", found);
  if (front == LW_SO_YES) return front;
  lw_so unsaid = c->site.behind.origin == LW_ASSUMED ? lw_open_by(found, "site behind") : LW_SO_NOT;
  return either(either(behind, front), unsaid);
}

static lw_so boundary(const lw_facts *f, lw_finding *found) {
  const lw_span *dig = &f->beside_dig, *further = dig->taken_m > f->reach.taken_m ? dig : &f->reach;
  lw_span within = {further->taken_m, fmax(dig->certain_m, f->reach.certain_m), further->left_out};
  lw_thing thing = {&f->c->site.boundary_distance, "boundary distance", "the boundary"};
  return near(&thing, &within, found);
}

/* Where the boundary is near for all that is known. */
static lw_so neighbour_consent(const lw_facts *f, lw_finding *found) {
  lw_finding unread = {0};
  return boundary(f, &unread) == LW_SO_NOT ? LW_SO_NOT : lw_officer_no_consent(f, found);
}

static lw_so public_way(const lw_facts *f, lw_finding *found) {
  lw_thing way = {&f->c->site.public_way_distance, "public way distance", "a street or public path"};
  return near(&way, &f->reach, found);
}

static lw_so mapped_land(const lw_facts *f, lw_finding *found) {
  lw_so named = lw_officer_named_maps(f, found);
  if (named == LW_SO_YES) return named;
  return said_yes(&f->c->site.mapped_land, LW_YES, "it is on a map", "mapped land", found);
}

/* Sand and gravel under the wall do not swell: naming them answers. */
static bool never_swells(const lw_facts *f) {
  const lw_words *name = &f->c->ground.footing.name;
  const lw_soil_row *row = name->origin == LW_ABSENT ? NULL : lw_tables_soil(f->tables, name->text);
  return row && row->never_swells;
}

static lw_so reactive_soil(const lw_facts *f, lw_finding *found) {
  const lw_choice *said = &f->c->site.reactive_soil;
  if (said->origin == LW_ASSUMED && never_swells(f)) return LW_SO_NOT;
  return said_yes(said, LW_YES, "it cracks in dry seasons", "reactive soil", found);
}

/* The drop from which codes that ask for a barrier agree; lower ones are a question for the council. */
static lw_so barrier_needed(const lw_facts *f, lw_finding *found) {
  double most = lw_facts_clearance(f, LW_CLEARANCE_FALL_BARRIER) - TOUCHING_M;
  const lw_span *drop = &f->height[LW_HEIGHT_EXPOSED];
  if (f->c->site.above.origin == LW_ASSUMED) return lw_open_by(found, "site above");
  if (!f->people_above || drop->taken_m < most) return LW_SO_NOT;
  if (drop->certain_m < most) return lw_open_by(found, drop->left_out);
  if (found->detail)
    lw_tell(found, "a drop of %s, %s or more", lw_metres(f->units, drop->certain_m, 2).text,
            lw_metres(f->units, most, 2).text);
  return LW_SO_YES;
}

/* A way out that is told answers for the others; with none told, each that is left out may be one. */
static lw_so no_outlet(const lw_facts *f, lw_finding *found) {
  const lw_case *c = f->c;
  if (f->water_behind) {
    lw_tell(found, "water stands %s below the top", lw_metres(f->units, f->wall->site.water_depth_m, 2).text);
    return LW_SO_YES;
  }
  if (!f->no_way_out) return LW_SO_NOT;
  if (c->water.drain_outlets.origin == LW_ASSUMED) lw_open_by(found, "drain outlets");
  if (c->water.wall_joints.origin == LW_ASSUMED) lw_open_by(found, "wall joints");
  if (c->water.ground_drains.origin == LW_ASSUMED) lw_open_by(found, "ground drains");
  if (found->left_out_count > 0) return LW_SO_OPEN;
  lw_tell(
      found, "%s",
      f->wall->site.outlets_buried
          ? "its outlets lie below the ground in front, and there are no open joints, no ground that drains"
          : "no outlet, no open joints, no ground that drains");
  return LW_SO_YES;
}

/* A named ground whose row gives no bearing value on purpose, and none given in its stead. */
static bool bears_nothing(const lw_facts *f) {
  const lw_words *name = &f->c->ground.footing.name;
  const lw_soil_row *row = name->origin == LW_ABSENT ? NULL : lw_tables_soil(f->tables, name->text);
  if (f->c->ground.allowable_bearing.origin == LW_GIVEN) return false;
  return f->wall->site.allowable_bearing_kpa <= 0.0 || (row && !isfinite(row->allowable_bearing_kpa));
}

/* Neither named nor measured. */
static bool nobody_knows(const lw_case_soil *soil) {
  return soil->name.origin == LW_ABSENT && soil->friction.origin == LW_ASSUMED;
}

static lw_so bad_fill(const lw_facts *f, lw_finding *found) {
  static const char *const BEHIND[LW_SOIL_MAX] = {"soil 1 name", "soil 2 name", "soil 3 name",
                                                  "soil 4 name", "soil 5 name", "soil 6 name"};
  const char *left_out = lw_backfill_left_out(f);
  bool behind = f->wall->site.backfill_refused && !left_out;
  if (behind || bears_nothing(f)) {
    lw_tell(found, "%s",
            behind ? "the soil behind is refused as backfill"
                   : "no bearing value may be given for the ground under it");
    return LW_SO_YES;
  }
  lw_open_by(found, left_out);
  for (int i = 0; i < f->wall->site.soil_count; i++)
    if (nobody_knows(&f->c->ground.soil[i])) lw_open_by(found, BEHIND[i]);
  if (nobody_knows(&f->c->ground.footing) && f->c->ground.allowable_bearing.origin != LW_GIVEN)
    lw_open_by(found, "footing soil name");
  return found->left_out_count > 0 ? LW_SO_OPEN : LW_SO_NOT;
}

static lw_so earthquake(const lw_facts *f, lw_finding *found) {
  const lw_quantity *q = &f->c->earthquake.horizontal;
  if (q->origin == LW_GIVEN && q->si > 0.0) {
    lw_tell(found, "horizontal coefficient %.2f", q->si);
    return LW_SO_YES;
  }
  return said_yes(&f->c->site.earthquakes, LW_YES, "so the sheet says", "strong earthquakes", found);
}

static lw_so heritage(const lw_facts *f, lw_finding *found) {
  return said_yes(&f->c->site.heritage, LW_YES, "so the sheet says", "heritage", found);
}

static lw_so vibrating_load(const lw_facts *f, lw_finding *found) {
  return said_yes(&f->c->site.vibration, LW_YES, "so the sheet says", "shaken ground", found);
}

static lw_so drains_next_door(const lw_facts *f, lw_finding *found) {
  lw_so sent =
      said_yes(&f->c->site.drains_next_door, LW_YES, "so the sheet says", "water sent next door", found);
  return sent == LW_SO_YES ? sent : either(sent, lw_officer_rain_next_door(f, found));
}

static lw_so wall_that_moved(const lw_facts *f, lw_finding *found) {
  lw_so moved = said_yes(&f->c->site.works, LW_WORKS_MOVED, "it has moved", "works", found);
  if (moved != LW_SO_NOT) return moved;
  return said_yes(&f->c->site.works, LW_WORKS_RAISED, "it is made higher than it was", "works", found);
}

/* How deep a main lies is not asked: the trench reaches below it where it is nearer than it is deep. A
 * footing is no shallower than codes let it be. */
static bool footings_are_deeper(const lw_facts *f) {
  return f->dig.taken_m <= lw_known_value(f->tables, LW_THRESHOLD_FOOTING_DEPTH) + TOUCHING_M;
}

static lw_so digs_below(const lw_facts *f, lw_finding *found) {
  lw_thing house = building(f);
  lw_thing service = {&f->c->site.service_distance, "service distance", "a service"};
  lw_so footing = footings_are_deeper(f) ? LW_SO_NOT : near(&house, &f->beside_dig, found);
  return footing == LW_SO_YES ? footing : either(footing, near(&service, &f->beside_dig, found));
}

static lw_so digs_beside(const lw_facts *f, lw_finding *found) {
  lw_thing house = building(f);
  return footings_are_deeper(f) ? near(&house, &f->beside_dig, found) : LW_SO_NOT;
}

typedef struct lw_condition {
  lw_known_row row;
  lw_so (*met)(const lw_facts *, lw_finding *);
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
    {LW_CONDITION_FENCE_LOAD, lw_fence_leans},
    {LW_CONDITION_FENCE_NEAR, lw_fence_stands_near},
    {LW_CONDITION_FENCE_CARRIES_SOIL, lw_fence_closes_bed},
    {LW_CONDITION_BARRIER_NEEDED, barrier_needed},
    {LW_CONDITION_NO_OUTLET, no_outlet},
    {LW_CONDITION_BAD_FILL, bad_fill},
    {LW_CONDITION_EARTHQUAKE, earthquake},
    {LW_CONDITION_WALL_THAT_MOVED, wall_that_moved},
    {LW_CONDITION_DIGS_BELOW_FOOTING, digs_below},
    {LW_CONDITION_DIGS_BESIDE_BUILDING, digs_beside},
    {LW_CONDITION_DRAINS_NEXT_DOOR, drains_next_door},
    {LW_CONDITION_HERITAGE, heritage},
    {LW_CONDITION_VIBRATING_LOAD, vibrating_load},
    {LW_CONDITION_RAIN_LED_AWAY, lw_officer_rain_led_away},
    {LW_CONDITION_RAIN_SOAKAWAY, lw_officer_rain_soaks_away},
    {LW_CONDITION_EASEMENT, lw_officer_easement},
    {LW_CONDITION_PROTECTED_TREES, lw_officer_protected_trees},
    {LW_CONDITION_FLOOD_LAND, lw_officer_flood_land},
    {LW_CONDITION_BUSHFIRE_LAND, lw_officer_bushfire_land},
    {LW_CONDITION_COAST_LAND, lw_officer_coast_land},
    {LW_CONDITION_NEIGHBOUR_CONSENT, neighbour_consent},
    {LW_CONDITION_SIGHT_LINES, lw_officer_sight_lines},
    {LW_CONDITION_OTHER_WORKS, lw_officer_other_works},
    {LW_CONDITION_OWNER_BUILDS, lw_officer_owner_builds},
};

/* The officer's stand last: a sheet that tells of none leaves them out in one go. */
enum { CONDITIONS = sizeof conditions / sizeof *conditions, OFFICER_CONDITIONS = 11 };

const char *lw_verdict_condition_at(size_t index) {
  return index < CONDITIONS ? lw_known_slug(conditions[index].row) : NULL;
}

lw_so lw_verdict_condition(const lw_facts *facts, lw_known_row row, const char **left_out) {
  lw_finding found = {0};
  for (size_t i = 0; i < CONDITIONS; i++) {
    if (conditions[i].row != row) continue;
    lw_so so = conditions[i].met(facts, &found);
    if (left_out && found.left_out_count > 0) *left_out = found.left_out[0];
    return so;
  }
  return LW_SO_NOT;
}

/* The sentence of the table and what is so of this wall. */
static void say_so(const lw_facts *f, const lw_condition *condition, const lw_condition_row *row,
                   lw_reaching *to) {
  lw_who who = row->for_engineer ? LW_WHO_ENGINEER : row->for_council ? LW_WHO_COUNCIL : LW_WHO_BUILDER;
  lw_verdict_reason *r = lw_reasons_new(to, &(lw_because){.answer = LW_ANSWER_WHO,
                                                          .who = who,
                                                          .origin = LW_GIVEN,
                                                          .slug = row->slug,
                                                          .source = row->from.source});
  if (!r) return;
  /* Most are not read in a schedule: the detail is told only now. */
  char detail[LW_CLAUSE_MAX] = "";
  (void)condition->met(f, &(lw_finding){.detail = detail, .units = f->units});
  char sentence[sizeof row->sentence + LW_CLAUSE_MAX];
  size_t length = strlen(lw_canned_told(f->units, row->sentence, sentence, sizeof sentence));
  if (length > 0 && sentence[length - 1] == '.') length--;
  lw_print(r->text, sizeof r->text, "%.*s%s%s.", (int)length, sentence, detail[0] ? ": " : "", detail);
}

/* A table may give a condition to the council, or to nobody, and then it asks nothing; one whose row is gone
 * is no longer asked for. */
static void raise(const lw_facts *f, const lw_condition *condition, lw_reaching *to) {
  lw_finding found = {0};
  const lw_condition_row *row = lw_known_condition(f->tables, condition->row);
  if (!row) return;
  lw_so so = condition->met(f, &found);
  if (so == LW_SO_YES) say_so(f, condition, row, to);
  bool asks = so == LW_SO_OPEN && (row->for_engineer || row->for_council);
  for (int i = 0; asks && i < found.left_out_count; i++)
    lw_reasons_ask(to, row->slug, row->from.source, found.left_out[i]);
}

void lw_verdict_conditions(const lw_facts *facts, lw_reaching *to) {
  size_t count = CONDITIONS - (lw_officer_told(facts) ? 0 : OFFICER_CONDITIONS);
  for (size_t i = 0; i < count; i++) raise(facts, &conditions[i], to);
}
