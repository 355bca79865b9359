/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "balance/ground.h"
#include "soil/site.h"
#include "construction_parts.h"

#include <math.h>

#include "base/bound.h"
#include "standards/factors.h"

/* One course newly laid: what pushes it and what holds it. */

/* A set that factors loads or soil asks 1 of a check. Its margin lies where this study has none, so the
 * project's own figure is asked instead. */
static const lw_factor_row *asked_by(const lw_factor_set *factor_set, const lw_factor_set *own,
                                     lw_factor need) {
  lw_number needs = lw_factor_value(factor_set->row[need], LW_UNUSUAL);
  return needs.known && needs.value > 1.0 ? factor_set->row[need] : own->row[need];
}

void lw_construction_site_make(const lw_wall *wall, const lw_tables *tables, lw_construction_site *site) {
  lw_factor_set_family family, own;
  lw_factor_set_read(tables, wall->factor_set, &family);
  lw_factor_set_read(tables, "lowwall", &own);
  site->tables = tables;
  site->wall = wall;
  lw_ground_own(wall, &site->ground);
  lw_factor_set_weaken(&family.set[0], LW_UNUSUAL, wall, &site->ground, NULL);
  site->sliding = asked_by(&family.set[0], &own.set[0], LW_FACTOR_SLIDING);
  site->overturning = asked_by(&family.set[0], &own.set[0], LW_FACTOR_OVERTURNING);
}

lw_status lw_construction_fill(const lw_construction_site *site, const lw_plant *plant, int i,
                               lw_construction_course *course, const lw_working *working) {
  const lw_section *section = &site->wall->section;
  const lw_site *ground = &site->wall->site;
  const lw_part *part = &section->part[i];
  double top = fmin(part->top_m, section->height_m - ground->soil_below_top_m);
  double depth = section->height_m - 0.5 * (part->bottom_m + part->top_m);
  int layer = lw_site_soil_at(ground, depth);
  double friction = site->ground.design.soil[layer].friction_rad,
         unit_weight = ground->soil[layer].unit_weight_kn_per_m3;
  *course = (lw_construction_course){.course = i + 1,
                                     .height_m = fmax(top - part->bottom_m, 0.0),
                                     .friction_rad = friction,
                                     .unit_weight_kn_per_m3 = unit_weight};
  lw_compaction compaction = {.line_load_kn_per_m = plant->line_load_kn_per_m,
                              .unit_weight_kn_per_m3 = unit_weight,
                              .friction_rad = friction,
                              .state = LW_ACTIVE};
  lw_status status = lw_compaction_solve(&compaction, &course->diagram, NULL, working);
  if (status != LW_OK) return status;
  double h = course->height_m, earth = course->diagram.coefficient * unit_weight * h * h / 2.0;
  course->earth = (lw_lateral){earth, h / 3.0};
  course->push = lw_compaction_thrust(&course->diagram, h, working);
  return LW_OK;
}

/* The courses as one body: Wk acts at xk, and turns over xf. */
static void write_hold(const lw_construction_site *site, bool base, const double of[4],
                       const lw_construction_hold *hold, const lw_working *working) {
  const lw_strengths *design = &site->ground.design;
  const lw_bound bound[] = {{"mub", design->base_friction, ""},
                            {"cb", design->base_adhesion_kpa, "kPa"},
                            {"Ab", of[3], "m"},
                            {"muj", design->joint_friction, ""},
                            {"Sj", design->joint_shear_kn_per_m, "kN/m"},
                            {"Wk", of[0], "kN/m"},
                            {"xk", of[2] + of[1] / of[0], "m"},
                            {"xf", of[2], "m"}};
  const lw_step friction = {
      "Fr", base ? "mub Wk + cb Ab" : "muj Wk + Sj", NULL, hold->friction_kn_per_m, "kN/m", ""};
  const lw_step moment = {"Mk", "Wk (xk - xf)", NULL, hold->moment_knm_per_m, "kN m/m", ""};
  lw_working_bound(working, &friction, bound, sizeof bound / sizeof bound[0]);
  lw_working_bound_finely(working, &moment, bound, sizeof bound / sizeof bound[0]);
}

lw_construction_hold lw_construction_hold_of(const lw_construction_site *site, int from, int to,
                                             const lw_working *working) {
  const lw_section *section = &site->wall->section;
  const lw_strengths *design = &site->ground.design;
  double front = section->part[from].front_m, weight = 0.0, moment = 0.0;
  if (from > 0) front = fmax(front, section->part[from - 1].front_m);
  for (int i = from; i <= to; i++) {
    weight += section->part[i].weight_kn_per_m;
    moment += section->part[i].weight_kn_per_m * (section->part[i].x_m - front);
  }
  double friction = design->joint_friction * weight + design->joint_shear_kn_per_m;
  double bears = 0.5 * (section->contact.front + section->contact.rear) * section->base_width_m;
  if (from == 0) friction = design->base_friction * weight + design->base_adhesion_kpa * bears;
  lw_construction_hold hold = {friction, moment};
  const double of[4] = {weight, moment, front, bears};
  if (working != NULL) write_hold(site, from == 0, of, &hold, working);
  return hold;
}

static void weigh(lw_check *check, const lw_factor_row *row, double holds, double pushes) {
  check->demand = lw_known(pushes);
  check->resistance = lw_known(holds);
  check->counts = true;
  if (pushes <= 1e-9) {
    check->needs = lw_factor_value(row, LW_UNUSUAL);
    check->by = row;
    check->holds = LW_HOLDS;
    check->reason = LW_REASON_NO_DEMAND;
    return;
  }
  check->has = lw_known(fmax(holds, 0.0) / pushes);
  lw_check_weigh(check, row, LW_UNUSUAL);
}

static void write_checks(const lw_construction_checks *checks, lw_construction_hold hold, lw_lateral push,
                         const lw_working *working) {
  const lw_bound bound[] = {{"Fr", hold.friction_kn_per_m, "kN/m"},
                            {"Mk", hold.moment_knm_per_m, "kN m/m"},
                            {"Pc", push.thrust_kn_per_m, "kN/m"},
                            {"yc", push.height_m, "m"}};
  const lw_step sliding = {"ns", "Fr/Pc", NULL, checks->sliding.has.value, "", ""};
  const lw_step tilting = {"nt", "Mk/(Pc yc)", NULL, checks->tilting.has.value, "", ""};
  if (checks->sliding.has.known) lw_working_bound(working, &sliding, bound, 4);
  if (checks->tilting.has.known && hold.moment_knm_per_m >= 0.0)
    lw_working_bound(working, &tilting, bound, 4);
}

lw_construction_checks lw_construction_check(const lw_construction_site *site, int from,
                                             lw_construction_hold hold, lw_lateral push,
                                             const lw_working *working) {
  lw_at at = from > 0 ? LW_AT_JOINT : LW_AT_BASE;
  lw_construction_checks checks = {
      .sliding = {.kind = LW_CHECK_SLIDING, .at = at, .joint = from, .unit = "kN/m"},
      .tilting = {.kind = from > 0 ? LW_CHECK_TILTING : LW_CHECK_OVERTURNING,
                  .at = at,
                  .joint = from,
                  .unit = "kN m/m"}};
  weigh(&checks.sliding, site->sliding, hold.friction_kn_per_m, push.thrust_kn_per_m);
  weigh(&checks.tilting, site->overturning, hold.moment_knm_per_m, push.thrust_kn_per_m * push.height_m);
  if (working != NULL) write_checks(&checks, hold, push, working);
  return checks;
}

/* Earth of course j that has yielded, under upright stress from the compacted level down: a trapezium. */
static lw_lateral earth_of(const lw_construction_course *c, double stress_kpa, double height_m) {
  double k = c->diagram.coefficient, h = height_m, w = c->unit_weight_kn_per_m3;
  double push = k * (stress_kpa * h + w * h * h / 2.0);
  double moment = k * (stress_kpa * h * h / 2.0 + w * h * h * h / 6.0);
  return (lw_lateral){push, moment / push};
}

/* Two pushes above one another: the upper acts `lift` above the foot of the lower. */
static lw_lateral both(lw_lateral upper, double lift_m, lw_lateral lower) {
  double push = upper.thrust_kn_per_m + lower.thrust_kn_per_m;
  double moment = upper.thrust_kn_per_m * (upper.height_m + lift_m) + lower.thrust_kn_per_m * lower.height_m;
  return (lw_lateral){push, moment / push};
}

/* The push from the compacted level down, course after course. */
typedef struct reach {
  const lw_compaction_diagram *diagram; /* of the layer just compacted */
  double layer_m;                       /* its thickness */
  double depth_m, stress_kpa;           /* come down to */
  lw_lateral push;                      /* so far, about that depth */
} reach;

/* Down past one course: as far as the layer goes none of it has yielded, below it all has. */
static void go_down(const lw_construction_course *course, reach *to) {
  double within = fmin(fmax(to->layer_m - to->depth_m, 0.0), course->height_m);
  double below = course->height_m - within;
  to->depth_m += course->height_m;
  to->stress_kpa += course->unit_weight_kn_per_m3 * within;
  if (within > 0.0) to->push = lw_compaction_thrust(to->diagram, to->depth_m - below, NULL);
  if (below > 0.0) to->push = both(to->push, below, earth_of(course, to->stress_kpa, below));
  to->stress_kpa += course->unit_weight_kn_per_m3 * below;
}

/* A layer thicker than a course is compacted behind several at once, and may end within one. */
void lw_construction_lower(const lw_construction_site *site, const lw_construction *construction, int i,
                           lw_construction_course *course) {
  reach to = {.diagram = &course->diagram,
              .layer_m = fmax(construction->layer_m, course->height_m),
              .depth_m = course->height_m,
              .stress_kpa = course->unit_weight_kn_per_m3 * course->height_m,
              .push = course->push};
  for (int j = i - 1; j >= 0; j--) {
    go_down(&construction->course[j], &to);
    lw_construction_checks checks =
        lw_construction_check(site, j, lw_construction_hold_of(site, j, i, NULL), to.push, NULL);
    const lw_check *graver =
        lw_check_graver(&checks.tilting, &checks.sliding) ? &checks.tilting : &checks.sliding;
    if (!course->has_lower || lw_check_graver(graver, &course->lower)) course->lower = *graver;
    course->has_lower = true;
  }
}
