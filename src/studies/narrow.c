/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "narrow.h"

#include <lowwall/studies.h>

#include <math.h>

#include "base/bound.h"

#include "balance/weigh.h"
#include "base/working.h"

/* A bed between two faces that stand close: information, never counted. */

typedef struct words {
  const char *slug, *title, *source;
} words;

static const words WORDS[LW_NARROW_COUNT] = {
#define NAME(name, slug, title, source) {slug, title, source},
    LW_NARROW_METHODS(NAME)
#undef NAME
};

const char *lw_narrow_slug(lw_narrow_method method) {
  return WORDS[method].slug;
}

const char *lw_narrow_title(lw_narrow_method method) {
  return WORDS[method].title;
}

const char *lw_narrow_source(lw_narrow_method method) {
  return WORDS[method].source;
}

static const lw_soil *weakest(const lw_site *site) {
  const lw_soil *least = &site->soil[0];
  for (int i = 1; i < site->soil_count; i++)
    if (site->soil[i].friction_rad < least->friction_rad) least = &site->soil[i];
  return least;
}

static void write_coefficient(const lw_step *step, double friction_rad, const lw_working *working) {
  const lw_bound bound[] = {{"phi", friction_rad * LW_DEG_PER_RAD, "deg"}};
  lw_working_bound(working, step, bound, 1);
}

static lw_status at_rest(double phi, double *k, lw_error *error, const lw_working *working) {
  lw_status status = lw_at_rest_coefficient(phi, 0.0, k, error);
  if (status == LW_OK)
    write_coefficient(&(lw_step){"K0", "1 - sin phi", NULL, *k, "", "[JAKY1944 1 - sin phi]"}, phi, working);
  return status;
}

static lw_status active(double phi, double *k, lw_error *error, const lw_working *working) {
  lw_status status = lw_rankine_coefficient(LW_ACTIVE, phi, 0.0, k, error);
  const lw_step step = {"Ka", "(1 - sin phi)/(1 + sin phi)", NULL, *k, "", "[RANKINE1857 level ground]"};
  if (status == LW_OK) write_coefficient(&step, phi, working);
  return status;
}

static lw_status coefficient_of(lw_narrow_method method, const lw_narrow *n, double *k, lw_error *error,
                                const lw_working *working) {
  switch (method) {
  case LW_NARROW_AT_REST: return at_rest(n->friction_rad, k, error, working);
  case LW_NARROW_ACTIVE: return active(n->friction_rad, k, error, working);
  case LW_NARROW_FRYDMAN_KEISSAR:
    return lw_frydman_keissar_coefficient(n->friction_rad, n->wall_friction_rad, k, error, working);
  case LW_NARROW_HANDY: return lw_handy_coefficient(n->friction_rad, k, error, working);
  case LW_NARROW_COUNT: break;
  }
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NONE, "no such method");
}

/* Shares of what the same coefficient makes of a wide bed. */
static void add_shares(const lw_narrow *n, lw_narrow_value *value, const lw_working *working) {
  double k = value->coefficient, h = n->height_m;
  double triangle = k * n->unit_weight_kn_per_m3 * h * h / 2.0;
  value->share = value->push.thrust_kn_per_m / triangle;
  value->height_share = value->push.height_m / h;
  const lw_bound bound[] = {{"K", k, ""},
                            {"gamma", n->unit_weight_kn_per_m3, "kN/m3"},
                            {"hn", h, "m"},
                            {"Pn", value->push.thrust_kn_per_m, "kN/m"},
                            {"zn", value->push.height_m, "m"}};
  lw_working_bound(working, &(lw_step){"shn", "Pn/(K gamma hn^2/2)", NULL, value->share, "", ""}, bound, 5);
  lw_working_bound(working, &(lw_step){"hsn", "zn/hn", NULL, value->height_share, "", ""}, bound, 5);
}

static void fill_in(lw_narrow_method method, const lw_narrow *n, lw_narrow_value *value,
                    const lw_working *working) {
  lw_slot slot = {.width_m = n->bed_width_m,
                  .unit_weight_kn_per_m3 = n->unit_weight_kn_per_m3,
                  .wall_friction_rad = n->wall_friction_rad};
  lw_error error = {0};
  *value = (lw_narrow_value){.known = false};
  lw_working_heading(working, lw_narrow_title(method));
  lw_status status = coefficient_of(method, n, &value->coefficient, &error, working);
  if (status == LW_OK)
    status = lw_slot_thrust(&slot, value->coefficient, n->height_m, &value->push, &error, working);
  value->known = status == LW_OK;
  value->reason = error.reason;
  if (!value->known) return;
  value->foot_kpa = lw_slot_kpa(&slot, value->coefficient, n->height_m);
  add_shares(n, value, working);
}

static const lw_situation *drained(const lw_situations *situations) {
  for (int i = 0; i < situations->count; i++)
    if (situations->situation[i].name == LW_SITUATION_DRAINED) return &situations->situation[i];
  return NULL;
}

static bool overturning_of(const lw_situation *s, lw_check *check) {
  for (int i = 0; i < s->check_count; i++) {
    *check = lw_situation_check(s, i);
    if (check->kind == LW_CHECK_OVERTURNING && check->at == LW_AT_BASE) return true;
  }
  return false;
}

/* How much moment more when the soil's own push, its load's left where it is, rises so far. */
static double moment_more(const lw_free_body *body, const lw_working *working) {
  const lw_thrust *t = &body->thrust;
  double soil = t->total_kn_per_m - t->surcharge_kn_per_m, height = body->back.plane.height_m;
  double moment = t->total_kn_per_m * t->height_of_action_m - t->surcharge_kn_per_m * t->surcharge_height_m;
  double raised = soil * LW_NARROW_RAISED * height;
  double more = fmax(raised - moment, 0.0) * cos(t->angle_rad);
  const lw_bound bound[] = {{"P", t->total_kn_per_m, "kN/m"},
                            {"Pq", t->surcharge_kn_per_m, "kN/m"},
                            {"h", t->height_of_action_m, "m"},
                            {"hq", t->surcharge_height_m, "m"},
                            {"hp", height, "m"},
                            {"a", t->angle_rad * LW_DEG_PER_RAD, "deg"}};
  const lw_step step = {
      "dM", "max(0.42 (P - Pq) hp - (P h - Pq hq), 0) cos a", NULL, more, "kN m/m", "[HANDY1985 abstract]"};
  lw_working_bound_finely(working, &step, bound, sizeof bound / sizeof bound[0]);
  return more;
}

/* The wall drained, with the push of its soil higher up. */
static void raise_push(const lw_situations *situations, lw_narrow *n, const lw_working *working) {
  const lw_situation *s = drained(situations);
  lw_check check;
  if (!s || !overturning_of(s, &check) || s->base.status != LW_OK || !check.has.known || !check.demand.known)
    return;
  n->raised_known = true;
  n->raised_height_m = LW_NARROW_RAISED * s->base.back.plane.height_m;
  n->overturning = n->raised = check;
  double factor = s->load_case.actions.factors.factored ? s->load_case.actions.factors.earth_pressure : 1.0;
  double more = moment_more(&s->base, working);
  n->raised.demand = lw_known(check.demand.value + factor * more);
  n->raised.has = lw_known(check.resistance.value / n->raised.demand.value);
  lw_check_weigh(&n->raised, check.by, s->kind);
  const lw_bound bound[] = {{"Mr", check.resistance.value, "kN m/m"},
                            {"Mo", check.demand.value, "kN m/m"},
                            {"fE", factor, ""},
                            {"dM", more, "kN m/m"}};
  lw_working_bound(working, &(lw_step){"nr", "Mr/(Mo + fE dM)", NULL, n->raised.has.value, "", ""}, bound, 4);
}

void lw_narrow_write(const lw_situations *situations, const lw_narrow *narrow, const lw_working *working) {
  lw_narrow again = *narrow;
  lw_narrow_solve(&again, working);
  if (!narrow->raised_known) return;
  lw_working_heading(working, "Overturning, as built, with the push of the soil at 0.42 of the height");
  raise_push(situations, &again, working);
}

void lw_narrow_solve(lw_narrow *narrow, const lw_working *working) {
  narrow->wedge_width_m = narrow->height_m * tan(0.5 * (acos(0.0) - narrow->friction_rad));
  for (int i = 0; i < LW_NARROW_COUNT; i++) fill_in((lw_narrow_method)i, narrow, &narrow->value[i], working);
}

void lw_narrow_run(const lw_wall *wall, const lw_situations *situations, lw_narrow *narrow) {
  const lw_soil *soil = weakest(&wall->site);
  *narrow = (lw_narrow){.shown = false};
  if (wall->bed_width_m <= 0.0) return;
  narrow->bed_width_m = wall->bed_width_m;
  narrow->height_m = wall->section.height_m - wall->site.soil_below_top_m;
  narrow->friction_rad = soil->friction_rad;
  narrow->unit_weight_kn_per_m3 = soil->unit_weight_kn_per_m3;
  narrow->wall_friction_rad = fmin(wall->front_friction_rad, soil->friction_rad);
  narrow->wedge_width_m = narrow->height_m * tan(0.5 * (acos(0.0) - soil->friction_rad));
  narrow->shown = narrow->height_m > 0.0 && soil->friction_rad > 0.0 && !wall->site.backfill_refused &&
                  narrow->bed_width_m < narrow->wedge_width_m;
  if (!narrow->shown) return;
  lw_narrow_solve(narrow, NULL);
  raise_push(situations, narrow, NULL);
}
