/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "basis.h"

#include <math.h>

#include "standards/factors.h"
#include "checks/key.h"
#include "kinds.h"
#include "balance/place.h"
#include "checks/sliding.h"
#include "balance/free_body.h"
#include "load_case.h"

/* What a check rests on, made again from the load case that it keeps. */

static void note_factors(const lw_wall *wall, const lw_factor_set *factor_set, lw_basis *out) {
  lw_situation_kind kind = out->load_case.kind;
  bool wedges = out->wedges > 0.0;
  double friction = lw_factor_set_times(factor_set, kind, LW_FACTOR_FRICTION, LW_FACTOR_FRICTION_TIMES);
  out->on_friction = wedges ? friction / out->wedges : friction;
  out->on_push = wedges ? 1.0 : lw_factor_set_mobilized(factor_set, kind, &wall->method);
  out->on_sliding =
      lw_factor_set_times(factor_set, kind, LW_FACTOR_SLIDING_RESISTANCE, LW_FACTOR_SLIDING_RESISTANCE_TIMES);
  out->on_passive =
      lw_factor_set_times(factor_set, kind, LW_FACTOR_PASSIVE_RESISTANCE, LW_FACTOR_PASSIVE_RESISTANCE_TIMES);
}

static void note_grip(const lw_check *check, lw_basis *out) {
  const lw_strengths *design = &out->load_case.ground.design;
  const lw_contact *contact = &out->body.contact;
  out->friction = lw_sliding_friction(design, check->at);
  out->bond_kn_per_m = check->kind == LW_CHECK_KEY
                           ? lw_key_strength(design, contact)
                           : lw_sliding_bond(&out->wall->method, design, contact, check->at);
}

/* Where no factor on every strength balances the contact, the check stands at full strength. */
static bool factor_found(const lw_check *check) {
  return fabs(check->has.value - check->made_in.divided_by) <= 1e-15 * check->has.value;
}

/* A check made once more, and where. */
typedef struct again {
  lw_factor_set factor_set;
  lw_section above;
  lw_place place;
} again;

static void make(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                 const lw_check *check, again *a, lw_basis *out) {
  lw_push push;
  lw_factor_set_read_of(tables, check->made_in.set, &a->factor_set);
  out->wall = wall;
  lw_load_case_of(wall, tables, situation, check, &out->load_case);
  lw_place_of_check(wall, check, &a->above, &a->place);
  lw_push_find(wall, &out->load_case.ground, &a->place.stack, NULL, &push, NULL);
  lw_place_load(wall, &out->load_case, &a->place, &push, &out->body, NULL);
  lw_free_body_show(&push, &out->body);
  out->wedges = factor_found(check) ? check->made_in.divided_by : 0.0;
}

bool lw_check_basis(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                    const lw_check *check, lw_basis *out) {
  again a;
  if (check->at == LW_AT_GROUND || (!check->has.known && !check->demand.known)) return false;
  make(wall, tables, situation, check, &a, out);
  note_factors(wall, &a.factor_set, out);
  lw_check_context context = {wall, &a.factor_set, &out->load_case, &a.place};
  out->ground_holds_kn_per_m = lw_sliding_most(&context, &out->body.contact, check->at);
  note_grip(check, out);
  return true;
}

void lw_check_tell(const lw_basis *basis, const lw_tables *tables, const lw_check *check,
                   const lw_working *working) {
  again a;
  lw_factor_set_read_of(tables, check->made_in.set, &a.factor_set);
  lw_place_of_check(basis->wall, check, &a.above, &a.place);
  a.factor_set.on_every_wedge = basis->wedges;
  lw_check_context context = {basis->wall, &a.factor_set, &basis->load_case, &a.place};
  (void)lw_check_row_of(check->kind)->make(&context, &basis->body, working);
}
