/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slip_check.h"

#include <math.h>

#include "base/bound.h"

#include "slip/circle.h"
#include "slip/search.h"
#include "standards/factors.h"
#include "standards/ground_factors.h"
#include "load_case.h"
#include "standing.h"
#include "slip/ground.h"
#include "balance/weigh.h"

/* The check against a slip of wall and ground together, and of a bed down the slope it stands on. */

/* Ground that nothing is known to hold has no answer, and refused fill is refused here as well. */
static lw_reason refused(const lw_wall *wall, const lw_ground *ground) {
  const lw_strength *below = &ground->design.footing;
  if (wall->site.backfill_refused) return LW_REASON_REFUSED_BACKFILL;
  if (ground->front.undermined) return LW_REASON_UNDERMINED;
  if (wall->tier.band == LW_TIER_ONE_WALL) return LW_REASON_ONE_WALL;
  if (below->friction_rad <= 0.0 && below->cohesion_kpa <= 0.0) return LW_REASON_NO_BEARING_VALUE;
  return LW_REASON_NONE;
}

/* The ground in front keeps its own slope up to a trench, which is open as far as circles go. */
static void ground_of(const lw_check_context *context, bool light, bool bare, lw_slip_ground *ground) {
  const lw_wall *wall = context->wall;
  lw_ground cut = context->load_case->ground;
  if (context->load_case->situation == LW_SITUATION_TRENCH) {
    cut.front.slope_rad = wall->site.front_slope_rad;
    cut.front.bearing_embedment_m = wall->section.bearing_embedment_m;
    cut.front.open = true;
  }
  if (bare) cut.design.paired_kpa = cut.design.shallow_kpa = 0.0;
  lw_slip_ground_build(wall, &cut, ground);
  lw_factor_set_weigh_ground(context->factor_set, context->load_case->kind, light, ground);
}

static double resistance_times(const lw_check_context *context) {
  return lw_factor_set_times(context->factor_set, context->load_case->kind, LW_FACTOR_SLIP_RESISTANCE,
                             LW_FACTOR_SLIP_RESISTANCE_TIMES);
}

static const lw_factor_row *asked(const lw_check_context *context) {
  return lw_factor_set_row(context->factor_set, LW_FACTOR_SLIP, LW_FACTOR_SLIP_DOUBTFUL,
                           context->wall->slip_doubt, context->load_case->kind);
}

static void weigh(const lw_check_context *context, const lw_slip *slip, lw_check *check) {
  double has = lw_slip_factor(slip, context->wall->method.slip) * resistance_times(context);
  check->demand = lw_known(slip->driving_kn_per_m);
  check->resistance = lw_known(has * slip->driving_kn_per_m);
  check->has = lw_known(has);
  lw_check_weigh(check, asked(context), context->load_case->kind);
}

/* What is asked with none of the cohesion that is paired with the clay's angle: never more than in all. */
static double asked_bare(const lw_check_context *context, double needs) {
  return fmin(needs, context->wall->site.paired.slip_without);
}

static void ask_bare(const lw_check_context *context, lw_check *check) {
  if (!check->has.known || !check->counts || check->needs.value <= 0.0) return;
  check->needs = lw_known(asked_bare(context, check->needs.value));
  lw_check_compare(check);
}

/* The factor from which on a slip is not told: it neither governs beside what governs so far nor is the least
 * that any check has. */
static double told_below(const lw_ground_try *try, bool bare) {
  const lw_check_context *context = try->context;
  lw_number needs = lw_factor_value(asked(context), context->load_case->kind);
  if (try->aim == LW_GROUND_ALL) return INFINITY;
  if (!needs.known) return -INFINITY;
  double asks = bare ? asked_bare(context, needs.value) : needs.value;
  double governs = try->aim == LW_GROUND_LEAST ? 0.0 : asks * try->governing;
  return fmax(governs, try->least) / resistance_times(context);
}

/* Where nothing falls short yet no search ends early: whether a wall stands never hangs on where it may. */
static bool may_end_early(const lw_ground_try *try, double told) {
  return try->aim == LW_GROUND_LEAST || try->falls_short || told < 0.0;
}

/* The worst circle of one cross-section. */
static bool search_one(const lw_ground_try *try, bool light, lw_ground_check *worst) {
  const lw_check_context *context = try->context;
  lw_slip_ground ground;
  double at_least, told = told_below(try, worst->bare);
  ground_of(context, light, worst->bare, &ground);
  const lw_slip_aim aim = {.enough = may_end_early(try, told) ? told : INFINITY,
                           .outdone = lw_slip_outdone(try->searched, &ground, told)};
  bool found = lw_slip_search_below(&ground, context->wall->method.slip, &aim, &at_least, &worst->slip);
  if (!aim.outdone) lw_slip_remember(try->searched, &ground, at_least);
  return found;
}

/* The worst circle that is told, weights unfavourable or favourable as a whole. gives whether there is one */
static bool search(const lw_ground_try *try, lw_ground_check *worst) {
  const lw_check_context *context = try->context;
  lw_slip_method by = context->wall->method.slip;
  lw_ground_check other = {.bare = worst->bare};
  worst->light = false;
  bool found = search_one(try, false, worst);
  if (found && worst->slip.status != LW_OK) return true;
  if (!lw_factor_set_weighs_twice(context->factor_set, context->load_case->kind)) return found;
  if (!search_one(try, true, &other) || other.slip.status != LW_OK) return found;
  worst->light = !found || lw_slip_factor(&other.slip, by) < lw_slip_factor(&worst->slip, by);
  if (worst->light) worst->slip = other.slip;
  return true;
}

/* Two walls too near for two are shown by no check of one of them: that they act as one is said of their
 * slip, and counts even where nobody asks for slips. */
bool lw_slip_looked_for(const lw_wall *wall) {
  if (wall->tier.band == LW_TIER_ONE_WALL) return true;
  return wall->slip_cause != LW_SLIP_LEVEL_BED && wall->method.slip != LW_SLIP_NOT;
}

/* With the cohesion that is paired with the clay's angle, or with none of it. */
static bool check_one(const lw_ground_try *try, bool bare, lw_ground_check *made) {
  const lw_check_context *context = try->context;
  lw_reason reason = refused(context->wall, &context->load_case->ground);
  made->bare = bare;
  made->searched = reason == LW_REASON_NONE;
  if (made->searched) {
    if (!search(try, made)) return false;
    if (made->slip.status != LW_OK) reason = made->slip.reason;
  }
  if (reason == LW_REASON_NONE) {
    weigh(context, &made->slip, &made->check);
    if (bare) ask_bare(context, &made->check);
  } else {
    lw_check_not_shown(&made->check, reason);
    made->check.counts = reason == LW_REASON_ONE_WALL || asked(context) != NULL;
  }
  return true;
}

bool lw_check_slip(const lw_ground_try *try, lw_ground_check *made) {
  const lw_wall *wall = try->context->wall;
  lw_ground_check bare = {.check = made->check};
  made->bare_has = made->bare_needs = (lw_number){0};
  if (!lw_slip_looked_for(wall)) return false;
  bool any = check_one(try, false, made);
  bool twice =
      try->context->load_case->ground.design.paired_kpa > 0.0 && wall->site.paired.slip_without > 0.0;
  if (!twice || (any && !made->check.has.known) || !check_one(try, true, &bare)) return any;
  bare.bare_has = bare.check.has;
  bare.bare_needs = bare.check.counts ? bare.check.needs : (lw_number){0};
  if (!any || lw_check_graver(&bare.check, &made->check)) *made = bare;
  made->bare_has = bare.bare_has;
  made->bare_needs = bare.bare_needs;
  return true;
}

/* A layer of soil on a slope, and the water in it. */
typedef struct layer {
  lw_slip_soil soil; /* its weight the mean of moist and wet */
  double weight_kpa, depth_m, lifted_kpa;
} layer;

/* The weakest soil of the bed and below it, over the whole depth of the bed. */
static layer bed_of(const lw_wall *wall, const lw_ground *ground, const lw_working *working) {
  const lw_site *site = &wall->site;
  const lw_soil *fill = &site->soil[0];
  double depth = wall->section.height_m - site->soil_below_top_m;
  double wet = fmin(fmax(wall->section.height_m - ground->water_depth_m, 0.0), depth);
  double least = ground->design.footing.friction_rad, lifted = site->water_unit_weight_kn_per_m3 * wet;
  for (int i = 0; i < site->soil_count; i++) least = fmin(least, ground->design.soil[i].friction_rad);
  double weight = fill->unit_weight_kn_per_m3 * (depth - wet) + fill->saturated_unit_weight_kn_per_m3 * wet;
  layer bed = {{.friction_rad = least, .unit_weight_kn_per_m3 = weight / depth}, weight, depth, lifted};
  const lw_bound bound[] = {{"gm", fill->unit_weight_kn_per_m3, "kN/m3"},
                            {"gsat", fill->saturated_unit_weight_kn_per_m3, "kN/m3"},
                            {"gw", site->water_unit_weight_kn_per_m3, "kN/m3"},
                            {"z", depth, "m"},
                            {"zw", wet, "m"}};
  const lw_step mean = {"gamma", "(gm (z - zw) + gsat zw)/z", NULL, bed.soil.unit_weight_kn_per_m3, "kN/m3",
                        ""};
  const lw_step lift = {"uz", "gw zw", NULL, lifted, "kPa", ""};
  if (wet > 0.0) {
    lw_working_bound(working, &mean, bound, sizeof bound / sizeof bound[0]);
    lw_working_bound(working, &lift, bound, sizeof bound / sizeof bound[0]);
  }
  return bed;
}

/* The bed's weight on its slope, per area of plan; water that stands in it lifts it. */
static void slide(const lw_check_context *context, lw_check *check, const lw_working *working) {
  const lw_wall *wall = context->wall;
  layer bed = bed_of(wall, &context->load_case->ground, working);
  double slope = wall->bed_slope_rad;
  double factor = lw_slip_infinite(&bed.soil, slope, bed.depth_m, bed.lifted_kpa, working);
  double times = lw_factor_set_times(context->factor_set, context->load_case->kind,
                                     LW_FACTOR_SLIDING_RESISTANCE, LW_FACTOR_SLIDING_RESISTANCE_TIMES);
  double has = factor * times;
  check->demand = lw_known(bed.weight_kpa * sin(slope) * cos(slope));
  check->resistance = lw_known(has * check->demand.value);
  check->has = lw_known(has);
  lw_check_weigh(check, context->factor_set->row[LW_FACTOR_SLIDING], context->load_case->kind);
  const lw_bound bound[] = {{"F", factor, ""}, {"fR", times, ""}};
  if (fabs(times - 1.0) > 1e-12)
    lw_working_bound(working, &(lw_step){"has", "F fR", NULL, has, "", ""}, bound, 2);
}

bool lw_check_bed(const lw_ground_try *try, lw_ground_check *made) {
  const lw_wall *wall = try->context->wall;
  const lw_site *site = &wall->site;
  double depth = wall->section.height_m - site->soil_below_top_m;
  if (wall->bed_slope_rad <= 0.0 || site->backfill_refused || depth <= 0.0) return false;
  made->check.unit = "kPa";
  slide(try->context, &made->check, NULL);
  return true;
}

void lw_situation_bed_write(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                            const lw_working *working) {
  for (int i = 0; i < situation->check_count; i++) {
    const lw_kept_check *kept = &situation->kept[i];
    if (kept->kind != LW_CHECK_SLIDING || kept->at != LW_AT_GROUND) continue;
    lw_check check = {.kind = LW_CHECK_SLIDING, .at = LW_AT_GROUND};
    lw_factor_set factor_set;
    lw_factor_set_read_of(tables, kept->row, &factor_set);
    lw_load_case load_case = lw_slip_load_case(wall, &factor_set, situation);
    slide(&(lw_check_context){wall, &factor_set, &load_case, NULL}, &check, working);
  }
}

/* The form for seeping rain is one of wedges; a circle has the water standing half as high. */
double lw_slip_water_depth(const lw_wall *wall, const lw_situation *situation) {
  return situation->seeping ? lw_standing_half(wall) : situation->water_depth_m;
}

lw_load_case lw_slip_load_case(const lw_wall *wall, const lw_factor_set *factor_set,
                               const lw_situation *situation) {
  lw_load_case load_case = lw_load_case_begin(situation, factor_set);
  lw_seismic way[LW_WAYS];
  (void)lw_load_case_ways(wall, situation, way);
  load_case.ground.seismic = way[0];
  load_case.ground.water_depth_m = lw_slip_water_depth(wall, situation);
  lw_load_case_ground(wall, factor_set, &load_case, NULL);
  return load_case;
}

void lw_situation_slip_ground(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                              lw_slip_ground *ground) {
  lw_factor_set factor_set;
  lw_factor_set_read_of(tables, situation->slip_set, &factor_set);
  lw_load_case load_case = lw_slip_load_case(wall, &factor_set, situation);
  lw_check_context context = {wall, &factor_set, &load_case, NULL};
  ground_of(&context, situation->slip_light, situation->slip_bare, ground);
}
