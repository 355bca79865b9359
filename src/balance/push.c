/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "push.h"

#include <lowwall/pressure.h>

#include <assert.h>
#include <math.h>

#include "base/extremes.h"
#include "pressure/elastic_record.h"
#include "pressure/given.h"
#include "pressure/seepage.h"
#include "pressure/trial_wedge_scale.h"
#include "push_guard.h"
#include "push_parts.h"
#include "push_record.h"

/* Formula and wedge that must agree do so to this share of the thrust. */
static const double AGREEMENT = 1e-6;

static lw_earth_state state_of(const lw_method *method) {
  return method->pressure == LW_PRESSURE_AT_REST ? LW_AT_REST : LW_ACTIVE;
}

/* Curved surfaces are not computed in an earthquake: there Coulomb's plane stands for annex C. */
static const lw_pressure_routine *formula_of(const lw_method *method, const lw_plane *plane) {
  if (method->coefficient > 0.0) return lw_given_routine();
  bool shaken = fabs(plane->seismic.horizontal) > 0.0 || fabs(plane->seismic.vertical) > 0.0;
  return lw_active_routine_of(method->pressure, shaken ? LW_ACTIVE_OWN : method->active_by);
}

/* On the method's own surface formula and wedge are the same; a curve may ask for more than the plane. */
static bool is_curved(const lw_method *method, const lw_push *push) {
  return push->formula != lw_pressure_routine_of(method->pressure);
}

/* At rest nothing slides, and a coefficient that is given need not be any wedge's. */
static bool has_no_wedge(const lw_method *method) {
  return method->pressure == LW_PRESSURE_AT_REST || method->coefficient > 0.0;
}

static void fail(lw_push *push, lw_reason reason) {
  push->status = LW_NO_SOLUTION;
  assert(reason != LW_REASON_NONE);
  push->reason = reason;
}

/* The independent recheck on the same plane and in the same direction; the larger of the two is used. */
static bool find_wedge(lw_trial_wedge_known *searched, lw_push *push, const lw_working *working) {
  const lw_plane *plane = &push->back.plane;
  bool known = searched && searched->known;
  if (known && lw_trial_wedge_scale(&searched->plane, &searched->wedge, plane, &push->wedge)) return true;
  if (lw_trial_wedge_thrust(LW_ACTIVE, plane, &push->wedge, NULL, working) != LW_OK) return false;
  if (searched) *searched = (lw_trial_wedge_known){true, *plane, push->wedge};
  return true;
}

/* At rest nothing slides down the back: a downward part there would hold a wall that no friction holds. */
static bool level(const lw_method *method) {
  return method->direction == LW_DIRECTION_LEVEL || method->pressure == LW_PRESSURE_AT_REST;
}

static double angle_used(const lw_method *method, const lw_push *push) {
  return level(method) ? 0.0 : push->thrust.angle_rad;
}

/* Formula and loads by elasticity act together at one height. */
static double height_together(const lw_method *method, const lw_push *push) {
  double soil = push->thrust.total_kn_per_m * cos(angle_used(method, push)),
         loads = push->elastic.push_kn_per_m;
  if (soil + loads <= 0.0) return push->thrust.height_of_action_m;
  return (soil * push->thrust.height_of_action_m + loads * push->elastic.height_m) / (soil + loads);
}

static void add_to_thrust(lw_thrust *thrust, double force_kn_per_m, double height_m) {
  double moment = thrust->total_kn_per_m * thrust->height_of_action_m + force_kn_per_m * height_m;
  thrust->total_kn_per_m += force_kn_per_m;
  if (thrust->total_kn_per_m > 0.0) thrust->height_of_action_m = moment / thrust->total_kn_per_m;
}

/* Where there is no wedge that a level push on the ground could enter: it is taken whole where a line down
 * from it, as steep as the one that no wedge of level soil reaches over, meets the wall. */
static void push_at_rest(double reach_run, lw_push *push) {
  const lw_plane *plane = &push->back.plane;
  for (int i = 0; i < plane->load_count && reach_run > 0.0; i++) {
    const lw_plane_load *load = &plane->load[i];
    double force = load->push_kn_per_m, height = plane->height_m - load->below_m - load->near_m / reach_run;
    if (force <= 0.0 || height <= 0.0) continue;
    add_to_thrust(&push->thrust, force, height);
    double sum = push->by_pushes.thrust_kn_per_m + force;
    push->by_pushes.height_m += (height - push->by_pushes.height_m) * force / sum;
    push->by_pushes.thrust_kn_per_m = sum;
  }
}

typedef enum carried { CARRIES_NOTHING, CARRIES_WEIGHTS } carried;

/* The wedge of the same ground without its loads at a distance, or with their weights alone. */
static bool find_lighter(const lw_push *push, carried what, lw_trial_wedge *wedge) {
  lw_plane plane = push->back.plane;
  if (what == CARRIES_NOTHING) plane.load_count = 0;
  for (int i = 0; i < plane.load_count; i++) plane.load[i].push_kn_per_m = 0.0;
  return lw_trial_wedge_thrust(LW_ACTIVE, &plane, wedge, NULL, NULL) == LW_OK;
}

static bool is_pushed(const lw_plane *plane) {
  for (int i = 0; i < plane->load_count; i++)
    if (plane->load[i].push_kn_per_m > 0.0) return true;
  return false;
}

/* What one wedge has more than another, and where that acts. */
static lw_lateral between(const lw_trial_wedge *with, const lw_trial_wedge *without, double height_m) {
  double more = with->thrust_kn_per_m - without->thrust_kn_per_m;
  if (more <= AGREEMENT * with->thrust_kn_per_m) return (lw_lateral){0};
  double moment = with->thrust_kn_per_m * with->height_of_action_m -
                  without->thrust_kn_per_m * without->height_of_action_m;
  return (lw_lateral){.thrust_kn_per_m = more,
                      .height_m = lw_smaller(lw_larger(moment / more, 0.0), height_m)};
}

/* Neither formula nor elasticity knows a level push on the ground: what the wedge has more by it is theirs
 * too. */
static void push_by_wedge(lw_push *push) {
  lw_trial_wedge without;
  if (!is_pushed(&push->back.plane) || !find_lighter(push, CARRIES_WEIGHTS, &without)) return;
  push->by_pushes = between(&push->wedge, &without, push->back.plane.height_m);
  add_to_thrust(&push->thrust, push->by_pushes.thrust_kn_per_m, push->by_pushes.height_m);
}

/* A wedge that is used carries every load: how much of its thrust is whose, for factors of their own. Without
 * loads it would act at the higher of its own height and the formula's. */
static void part_wedge(lw_push *push, double formula_height_m) {
  const lw_plane *plane = &push->back.plane;
  lw_trial_wedge none, still = push->wedge;
  bool pushed = is_pushed(plane);
  if (plane->load_count == 0 || !find_lighter(push, CARRIES_NOTHING, &none)) return;
  if (pushed && !find_lighter(push, CARRIES_WEIGHTS, &still)) return;
  push->unloaded = (lw_lateral){.thrust_kn_per_m = none.thrust_kn_per_m,
                                .height_m = lw_larger(none.height_of_action_m, formula_height_m)};
  push->by_loads = between(&still, &none, plane->height_m);
  if (pushed) push->by_pushes = between(&push->wedge, &still, plane->height_m);
}

/* What the formula says, the loads it leaves to elasticity included, along the thrust: an elastic push is
 * level. The wedge carries the loads itself, so the two are set beside each other and never added. */
static void recheck(const lw_method *method, lw_trial_wedge_known *searched, lw_push *push,
                    const lw_working *working) {
  const lw_plane *plane = &push->back.plane;
  if (has_no_wedge(method) || !find_wedge(searched, push, working)) return;
  push->wedge_known = true;
  bool has_it = method->pressure == LW_PRESSURE_WEDGE && push->elastic_by == LW_LOAD_PRESSURE_WEDGE;
  double formula_height = push->thrust.height_of_action_m;
  if (!has_it) push_by_wedge(push);
  double wedge = push->wedge.thrust_kn_per_m, formula = push->thrust.total_kn_per_m;
  if (lw_plane_is_plain(plane) && !is_curved(method, push)) {
    push->faulty = !(fabs(wedge - formula) <= AGREEMENT * lw_larger(fabs(formula), 1e-9));
    return;
  }
  if (has_it) part_wedge(push, 0.0);
  formula += push->elastic.push_kn_per_m / lw_larger(cos(angle_used(method, push)), 1e-9);
  push->wedge_governs = wedge > formula * (1.0 + AGREEMENT);
  if (!push->wedge_governs) return;
  push->thrust.height_of_action_m = lw_larger(height_together(method, push), push->wedge.height_of_action_m);
  push->thrust.total_kn_per_m = wedge;
  part_wedge(push, formula_height);
}

/* Soil through which rain seeps pushes more than moist soil. What it pushes more acts at a third of the
 * height: it grows with the square of the depth, as the thrust of the soil does. */
static bool add_rain(const lw_ground *ground, lw_push *push, lw_error *error, const lw_working *working) {
  double along, third = push->back.plane.height_m / 3.0, moist = push->thrust.total_kn_per_m;
  if (!ground->seeping) return true;
  if (lw_seepage_along(&push->back.plane, &along, error, working) != LW_OK) return false;
  push->by_rain = (lw_lateral){.thrust_kn_per_m = lw_larger(along - moist, 0.0), .height_m = third};
  add_to_thrust(&push->thrust, push->by_rain.thrust_kn_per_m, third);
  lw_push_record_rain(push, along, moist, working);
  return true;
}

/* Level thrust, thrust whose downward part is not counted, thrust on soil under an overhang: the direction is
 * settled here, after the size. */
static void direct(const lw_method *method, lw_push *push) {
  lw_thrust *thrust = &push->thrust;
  double angle = angle_used(method, push);
  thrust->angle_rad = angle;
  thrust->horizontal_kn_per_m = thrust->total_kn_per_m * cos(angle);
  thrust->vertical_kn_per_m = thrust->total_kn_per_m * sin(angle);
  bool down_misses = push->back.overhangs && push->back.plane.along_ground && thrust->vertical_kn_per_m > 0.0;
  if (method->thrust_vertical == LW_NOT_COUNTED || down_misses) thrust->vertical_kn_per_m = 0.0;
}

/* Which theory carries loads at a distance: a wall that may yield feels the half-space, one at rest is taken
 * for a face that cannot yield. */
static lw_load_pressure theory_of(const lw_method *method) {
  if (method->load_pressure != LW_LOAD_PRESSURE_OWN) return method->load_pressure;
  return method->pressure == LW_PRESSURE_AT_REST ? LW_LOAD_PRESSURE_DOUBLED : LW_LOAD_PRESSURE_HALF_SPACE;
}

/* The number of a book goes before the formula's, while the ground is as it was given. */
static lw_status thrust_on(const lw_method *method, const lw_plane *plane, lw_push *push, lw_error *error,
                           const lw_working *working) {
  bool given = method->coefficient > 0.0, by_wedge = push->elastic_by == LW_LOAD_PRESSURE_WEDGE;
  if (given && by_wedge && push->back.plane.load_count > 0)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_LOADS_GIVEN, "no wedge carries the loads");
  return push->formula->thrust(state_of(method), plane, &push->thrust, error, working);
}

/* The formula's thrust, and the loads at a distance beside it. Closed formulas leave such loads out; the
 * wedge as a method takes them in, so here it is asked about the ground without them. */
static lw_status by_formula(const lw_method *method, lw_push *push, lw_error *error,
                            const lw_working *working) {
  push->elastic_by = theory_of(method);
  bool apart = push->elastic_by != LW_LOAD_PRESSURE_WEDGE && push->back.plane.load_count > 0;
  if (!apart) return thrust_on(method, &push->back.plane, push, error, working);
  lw_plane plane = push->back.plane;
  plane.load_count = 0;
  lw_status status = thrust_on(method, &plane, push, error, working);
  if (status != LW_OK) return status;
  push->elastic = lw_elastic_push_on(&push->back.plane, push->elastic_by);
  lw_elastic_record(&push->back.plane, push->elastic_by, &push->elastic, working);
  return LW_OK;
}

static void find(const lw_wall *wall, const lw_ground *ground, const lw_stack *stack,
                 lw_trial_wedge_known *searched, lw_push *push, const lw_working *working) {
  const lw_method *method = &wall->method;
  lw_error error = {0};
  *push = (lw_push){.status = LW_OK};
  lw_back_plane_build(&wall->site, ground, method, stack, &push->back);
  push->formula = formula_of(method, &push->back.plane);
  if (wall->site.backfill_refused) {
    fail(push, LW_REASON_REFUSED_BACKFILL);
    return;
  }
  if (push->back.plane.height_m <= 0.0) return;
  /* A coefficient that was given belongs to the friction that was given. */
  if (method->coefficient > 0.0 && ground->design.divided) {
    fail(push, LW_REASON_GIVEN_NUMBER);
    return;
  }
  if (by_formula(method, push, &error, working) != LW_OK) {
    fail(push, error.reason);
    return;
  }
  push->formula_kn_per_m = push->thrust.total_kn_per_m;
  if (has_no_wedge(method)) push_at_rest(wall->site.reach_run, push);
  recheck(method, searched, push, working);
  if (!add_rain(ground, push, &error, working)) {
    fail(push, error.reason);
    return;
  }
  direct(method, push);
  lw_push_divide(push);
}

void lw_push_find(const lw_wall *wall, const lw_ground *ground, const lw_stack *stack,
                  lw_trial_wedge_known *searched, lw_push *push, const lw_working *working) {
  find(wall, ground, stack, searched, push, working);
  lw_reason doubt = lw_push_doubt(wall, ground, stack, push);
  if (push->status != LW_OK && doubt != LW_REASON_NOT_FINITE) return;
  push->reason = doubt;
  push->faulty = doubt != LW_REASON_NONE;
}
