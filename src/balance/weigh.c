/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "weigh.h"

#include <math.h>

#include "base/tell.h"
#include "base/working.h"

lw_number lw_known(double value) {
  return (lw_number){.value = value, .known = true};
}

void lw_check_not_shown(lw_check *check, lw_reason reason) {
  check->has = check->ratio = (lw_number){0};
  check->holds = LW_CANNOT_SHOW;
  check->reason = reason;
}

lw_check lw_check_begin(const lw_check_context *context, const lw_free_body *body, lw_check_kind kind,
                        const char *unit) {
  bool known = body->status == LW_OK;
  return (lw_check){.kind = kind,
                    .at = context->place->at,
                    .joint = lw_place_joint(context->place),
                    .unit = unit,
                    .holds = known ? LW_HOLDS : LW_CANNOT_SHOW,
                    .reason = known ? LW_REASON_NONE : body->reason,
                    .counts = true};
}

void lw_check_no_demand(lw_check *check, const lw_factor_row *row, lw_situation_kind kind) {
  check->needs = lw_factor_value(row, kind);
  check->by = row;
  check->holds = LW_HOLDS;
  check->reason = LW_REASON_NO_DEMAND;
}

bool lw_check_find_has(const lw_check_context *context, lw_check *check) {
  static const double NOTHING = 1e-9;
  double factor = context->factor_set->on_every_wedge, demand = check->demand.value;
  if (factor <= 0.0) {
    if (demand <= NOTHING) return false;
    check->has = lw_known(check->resistance.value / demand);
    return true;
  }
  check->has = lw_known(factor);
  check->resistance = lw_known(factor * demand);
  return true;
}

void lw_check_tell_has(const lw_check *check, const char *formula, const lw_working *working) {
  if (!working) return;
  lw_step step = {.symbol = "has", .formula = formula, .value = check->has.value, .unit = ""};
  /* Next to nothing pushes a cap at times: four decimals would say that nothing does. */
  bool tiny = check->demand.value < 0.01;
  lw_working_line(working, &step, tiny ? "%.4f / %.3e" : "%.4f / %.4f",
                  lw_tell(working, check->unit, check->resistance.value),
                  lw_tell(working, check->unit, check->demand.value));
}

void lw_check_compare(lw_check *check) {
  check->ratio = lw_known(check->has.value / check->needs.value);
  check->holds = check->ratio.value >= 1.0 - 1e-12 ? LW_HOLDS : LW_FALLS_SHORT;
}

/* Without a requirement the number is printed and does not count; with a requirement of nothing (the
 * resultant need only stay inside) any `has` above zero does. */
void lw_check_weigh(lw_check *check, const lw_factor_row *row, lw_situation_kind kind) {
  check->by = row;
  check->needs = lw_factor_value(row, kind);
  check->counts = check->needs.known;
  check->reason = check->counts ? LW_REASON_NONE : LW_REASON_NO_REQUIREMENT;
  check->holds = LW_HOLDS;
  if (!isfinite(check->has.value)) {
    lw_check_not_shown(check, LW_REASON_NOT_FINITE);
    return;
  }
  if (!check->counts) return;
  if (check->needs.value <= 0.0) {
    check->holds = check->has.value > 0.0 ? LW_HOLDS : LW_FALLS_SHORT;
    check->reason = LW_REASON_NO_REQUIREMENT;
    return;
  }
  lw_check_compare(check);
}

bool lw_reason_is_faulty(lw_reason reason) {
  return reason == LW_REASON_NOT_FINITE || reason == LW_REASON_NO_PUSH || reason == LW_REASON_WEDGE_DISAGREES;
}

bool lw_check_faulty(const lw_check *check) {
  return check->holds == LW_CANNOT_SHOW && lw_reason_is_faulty(check->reason);
}

static int grade(const lw_check *check) {
  if (lw_check_faulty(check)) return 4;
  if (!check->counts) return 0;
  if (check->holds == LW_FALLS_SHORT) return 3;
  if (check->holds == LW_CANNOT_SHOW) return 2;
  return 1;
}

static bool has_less(const lw_check *a, const lw_check *b) {
  return a->has.known && (!b->has.known || a->has.value < b->has.value);
}

/* Whatever overturns has ratio 0: of two tries at one check the lesser moments still tell which is graver. */
bool lw_check_graver(const lw_check *a, const lw_check *b) {
  int ga = grade(a), gb = grade(b);
  if (ga != gb) return ga > gb;
  if (a->ratio.known != b->ratio.known) return a->ratio.known;
  if (!a->ratio.known) return has_less(a, b);
  if (a->ratio.value < b->ratio.value || b->ratio.value < a->ratio.value)
    return a->ratio.value < b->ratio.value;
  return a->kind == b->kind && has_less(a, b);
}
