/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "factors.h"

#include <math.h>

#include "base/working.h"
#include "soil/strength.h"

static const double SAME = 1e-12;

double lw_factor_set_times(const lw_factor_set *factor_set, lw_situation_kind kind, lw_factor divides,
                           lw_factor times) {
  if (!factor_set->has_factors) return 1.0;
  return lw_factor_set_or(factor_set, times, kind, 1.0) / lw_factor_set_or(factor_set, divides, kind, 1.0);
}

static double on_friction(const lw_factor_set *factor_set, lw_situation_kind kind) {
  return lw_factor_set_times(factor_set, kind, LW_FACTOR_FRICTION, LW_FACTOR_FRICTION_TIMES);
}

static double on_cohesion(const lw_factor_set *factor_set, lw_situation_kind kind) {
  return lw_factor_set_times(factor_set, kind, LW_FACTOR_COHESION, LW_FACTOR_COHESION_TIMES);
}

/* Of soil that is taken without friction; what has no factor of its own takes that of cohesion. */
static double on_undrained(const lw_factor_set *factor_set, lw_situation_kind kind) {
  lw_number divides = lw_factor_value(factor_set->row[LW_FACTOR_UNDRAINED_COHESION], kind);
  return divides.known ? 1.0 / divides.value : on_cohesion(factor_set, kind);
}

static bool same(double a, double b) {
  return fabs(a - b) < SAME;
}

bool lw_factor_set_same_ground(const lw_factor_set *factor_set, lw_situation_kind a, lw_situation_kind b) {
  return same(on_friction(factor_set, a), on_friction(factor_set, b)) &&
         same(on_cohesion(factor_set, a), on_cohesion(factor_set, b)) &&
         same(on_undrained(factor_set, a), on_undrained(factor_set, b)) &&
         same(lw_factor_set_or(factor_set, LW_FACTOR_PUSH_STRENGTH, a, 1.0),
              lw_factor_set_or(factor_set, LW_FACTOR_PUSH_STRENGTH, b, 1.0));
}

bool lw_factor_set_is_partial(const lw_factor_set *factor_set, lw_situation_kind kind) {
  for (int i = LW_FACTOR_FRICTION; factor_set->has_factors && i < LW_FACTOR_DECIDES; i++)
    if (!same(lw_factor_set_or(factor_set, (lw_factor)i, kind, 1.0), 1.0)) return true;
  return false;
}

static double weaker(double angle_rad, double times) {
  return atan(tan(angle_rad) * times);
}

/* By what strengths are multiplied. */
typedef struct strengths {
  double friction, cohesion, undrained;
} strengths;

static double of_cohesion(const strengths *times, const lw_strength *soil) {
  return lw_soil_is_frictionless(soil->friction_rad) ? times->undrained : times->cohesion;
}

static void weaken(lw_strength *soil, const strengths *times) {
  soil->cohesion_kpa *= of_cohesion(times, soil);
  soil->friction_rad = weaker(soil->friction_rad, times->friction);
}

/* Block on block is no ground, but a code for stonework divides its friction by more: it is weakened too.
 * Adhesion is a share of the cohesion of the ground below. */
static void weaken_contacts(lw_strengths *design, const strengths *times) {
  design->wall_friction_rad = weaker(design->wall_friction_rad, times->friction);
  design->front_friction_rad = weaker(design->front_friction_rad, times->friction);
  design->base_friction *= times->friction;
  design->pad_friction *= times->friction;
  design->undrained_kpa *= times->undrained;
  design->paired_kpa *= times->cohesion;
  design->shallow_kpa *= times->cohesion;
  design->base_adhesion_kpa *= of_cohesion(times, &design->footing);
  design->joint_friction *= times->friction;
  design->joint_shear_kn_per_m *= times->friction;
  design->key_strength_kn_per_m *= times->friction;
  weaken(&design->footing, times);
}

/* Of several soils each angle has the number of its soil. */
static void say(const lw_working *working, const lw_strength *soil, double friction, const char *symbol) {
  lw_step step = {.symbol = symbol,
                  .formula = "atan(tan phi x factor), the angle to design with",
                  .value = weaker(soil->friction_rad, friction) * LW_DEG_PER_RAD,
                  .unit = "deg"};
  lw_working_step(working, &step, "atan(tan(%.2f) x %.4f)", soil->friction_rad * LW_DEG_PER_RAD, friction);
}

/* Somebody digs in front without asking: a share of what the wall stands above that ground. */
static double dug_in_front(const lw_factor_set *factor_set, lw_situation_kind kind, const lw_section *section,
                           const lw_front *front) {
  double share = lw_factor_set_or(factor_set, LW_FACTOR_DUG_SHARE, kind, 0.0);
  return fmin(share * (section->height_m - front->embedment_m),
              lw_factor_set_or(factor_set, LW_FACTOR_DUG_MOST, kind, INFINITY));
}

static void weaken_behind(const lw_site *site, const strengths *times, const char *symbol,
                          lw_strengths *design, const lw_working *working) {
  design->divided = true;
  for (int i = 0; i < site->soil_count; i++) {
    char name[12], number[4] = "";
    if (site->soil_count > 1) lw_print(number, sizeof number, "%d", i + 1);
    lw_print(name, sizeof name, "%s%s", symbol, number);
    if (working != NULL) say(working, &design->soil[i], times->friction, name);
    weaken(&design->soil[i], times);
  }
}

/* What a level push moves grows faster than the push, so its factor stands on it where it acts. */
void lw_factor_set_weaken(const lw_factor_set *factor_set, lw_situation_kind kind, const lw_wall *wall,
                          lw_ground *ground, const lw_working *working) {
  if (!factor_set->has_factors) return;
  ground->level_push = lw_factor_set_or(factor_set, LW_FACTOR_VARIABLE, kind, 1.0);
  ground->front.dug_m = dug_in_front(factor_set, kind, &wall->section, &ground->front);
  strengths times = {on_friction(factor_set, kind), on_cohesion(factor_set, kind),
                     on_undrained(factor_set, kind)};
  /* Dividing by one still costs the last bit of an angle: a lumped set leaves the soil as it is. */
  if (same(times.friction, 1.0) && same(times.cohesion, 1.0) && same(times.undrained, 1.0)) return;
  weaken_behind(&wall->site, &times, "phid", &ground->design, working);
  weaken_contacts(&ground->design, &times);
}

bool lw_factor_set_on_every_wedge(const lw_factor_set *factor_set, lw_situation_kind kind) {
  return lw_factor_set_or(factor_set, LW_FACTOR_SLIDING_ON_STRENGTH, kind, 0.0) > 0.5;
}

/* At rest no wedge slides, and no strength is called upon. */
double lw_factor_set_mobilized(const lw_factor_set *factor_set, lw_situation_kind kind,
                               const lw_method *method) {
  if (method->pressure == LW_PRESSURE_AT_REST) return 1.0;
  if (factor_set->on_every_wedge > 0.0) return 1.0 / factor_set->on_every_wedge;
  return 1.0 / lw_factor_set_or(factor_set, LW_FACTOR_PUSH_STRENGTH, kind, 1.0);
}

void lw_factor_set_mobilize(const lw_factor_set *factor_set, lw_situation_kind kind, const lw_wall *wall,
                            lw_ground *ground, const lw_working *working) {
  double share = lw_factor_set_mobilized(factor_set, kind, &wall->method);
  lw_strengths *design = &ground->design;
  strengths times = {share, share, share};
  /* What the wall stands on and the ground in front keep the same share as what pushes. */
  bool all = factor_set->on_every_wedge > 0.0;
  if (all) {
    double left = 1.0 / factor_set->on_every_wedge;
    strengths of_contacts = {left, left, left};
    weaken_contacts(design, &of_contacts);
  }
  if (same(share, 1.0)) return;
  weaken_behind(&wall->site, &times, "phim", design, working);
  if (all) return;
  design->wall_friction_rad = weaker(design->wall_friction_rad, share);
  design->front_friction_rad = weaker(design->front_friction_rad, share);
}

/* What has no factor of its own takes that of permanent actions. */
static double permanent(const lw_factor_set *factor_set, lw_situation_kind kind, lw_factor own,
                        bool favourable) {
  double common = lw_factor_set_or(
      factor_set, favourable ? LW_FACTOR_PERMANENT_FAVOURABLE : LW_FACTOR_PERMANENT, kind, 1.0);
  return lw_factor_set_or(factor_set, own, kind, common);
}

static double pressure(const lw_factor_set *factor_set, lw_situation_kind kind, bool at_rest,
                       bool favourable) {
  if (favourable) return permanent(factor_set, kind, LW_FACTOR_EARTH_PRESSURE_FAVOURABLE, true);
  double active = permanent(factor_set, kind, LW_FACTOR_EARTH_PRESSURE, false);
  return at_rest ? lw_factor_set_or(factor_set, LW_FACTOR_AT_REST, kind, active) : active;
}

static lw_factors factors_of(const lw_factor_set *factor_set, lw_situation_kind kind, bool at_rest,
                             const lw_leaning *as) {
  bool heavy = as->heavy, soil_heavy = as->soil_heavy, less = as->pushes_less;
  double variable = lw_factor_set_or(factor_set, LW_FACTOR_VARIABLE, kind, 1.0),
         missing = lw_factor_set_or(factor_set, LW_FACTOR_VARIABLE_FAVOURABLE, kind, 1.0);
  bool gone = as->no_variable;
  return (lw_factors){
      .factored = true,
      .wall_weight = permanent(factor_set, kind,
                               heavy ? LW_FACTOR_WALL_WEIGHT : LW_FACTOR_WALL_WEIGHT_FAVOURABLE, !heavy),
      .soil_weight =
          permanent(factor_set, kind, soil_heavy ? LW_FACTOR_SOIL_WEIGHT : LW_FACTOR_SOIL_WEIGHT_FAVOURABLE,
                    !soil_heavy),
      .earth_pressure = pressure(factor_set, kind, at_rest, less),
      .water = permanent(factor_set, kind, less ? LW_FACTOR_WATER_FAVOURABLE : LW_FACTOR_WATER, less),
      .front_water = permanent(factor_set, kind, LW_FACTOR_WATER_FAVOURABLE, true),
      .variable = gone ? missing : variable,
      .level_push = gone ? missing / variable : 1.0,
      .variable_on_wall = lw_factor_set_or(factor_set, LW_FACTOR_VARIABLE_ON_WALL, kind, variable),
      .trench = lw_factor_set_times(factor_set, kind, LW_FACTOR_PASSIVE_RESISTANCE,
                                    LW_FACTOR_PASSIVE_RESISTANCE_TIMES),
      .surcharge_on_wall = gone || !as->heel_loaded ? missing : variable};
}

static bool alike(const lw_factors *a, const lw_factors *b) {
  return same(a->wall_weight, b->wall_weight) && same(a->soil_weight, b->soil_weight) &&
         same(a->earth_pressure, b->earth_pressure) && same(a->water, b->water) &&
         same(a->variable, b->variable) && same(a->variable_on_wall, b->variable_on_wall) &&
         same(a->surcharge_on_wall, b->surcharge_on_wall);
}

static bool is_new(const lw_factors *all, int count) {
  for (int i = 0; i < count; i++)
    if (alike(&all[i], &all[count])) return false;
  return true;
}

/* Every way for each source to be favourable or not; what makes no difference is tried once. */
int lw_factor_set_on_actions(const lw_factor_set *factor_set, const lw_load_case *load_case,
                             const lw_wall *wall, lw_factors factors[LW_LEANINGS]) {
  lw_situation_kind kind = load_case->kind;
  int count = 0;
  if (!lw_factor_set_is_partial(factor_set, kind)) {
    factors[0] = (lw_factors){0};
    return 1;
  }
  const lw_method *method = &wall->method;
  bool loads = wall->site.surcharge_kpa > 0.0 || wall->site.load_count > 0 ||
               load_case->ground.wind_kn_per_m > 0.0 || load_case->ground.person_kpa > 0.0;
  bool heel = wall->site.surcharge_kpa > 0.0 && method->surcharge_on_heel == LW_SURCHARGE_PRESSES;
  bool one_source = !factor_set->row[LW_FACTOR_SOIL_WEIGHT];
  for (int i = 0; i < LW_LEANINGS; i++) {
    lw_leaning as = {.heavy = i & 1,
                     .pushes_less = i & 2,
                     .heel_loaded = i & 4,
                     .no_variable = i & 8,
                     .soil_heavy = one_source ? i & 1 : i & 16};
    if ((one_source && i >= 16) || (as.heel_loaded && !heel) || (as.no_variable && !loads)) continue;
    factors[count] = factors_of(factor_set, kind, method->pressure == LW_PRESSURE_AT_REST, &as);
    if (is_new(factors, count)) count++;
  }
  return count;
}
