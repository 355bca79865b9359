/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "key.h"

#include <math.h>

#include "base/extremes.h"
#include "base/tell.h"
#include "base/working.h"
#include "standards/factors.h"

/* The key or lip of a joint: what pushes beyond the joint's friction against the shear that breaks it. What
 * is counted as shear of the joint is carried by the same key, so it takes nothing off. */

typedef struct on_key {
  double friction, normal_kn_per_m, strength_kn_per_m; /* to design with */
  double times;                                        /* what the set leaves of friction and strength */
  double rubs_kn_per_m, beyond_kn_per_m, holds_kn_per_m;
} on_key;

/* Courses that lift lift their key out of its seat. */
double lw_key_strength(const lw_strengths *design, const lw_contact *contact) {
  return contact->vertical_kn_per_m > 0.0 ? design->key_strength_kn_per_m : 0.0;
}

static on_key find(const lw_check_context *context, const lw_contact *contact) {
  const lw_strengths *design = &context->load_case->ground.design;
  on_key k = {.friction = design->joint_friction,
              .normal_kn_per_m = lw_larger(contact->vertical_kn_per_m, 0.0),
              .strength_kn_per_m = lw_key_strength(design, contact),
              .times = lw_factor_set_times(context->factor_set, context->load_case->kind,
                                           LW_FACTOR_SLIDING_RESISTANCE, LW_FACTOR_SLIDING_RESISTANCE_TIMES)};
  k.rubs_kn_per_m = k.times * k.friction * k.normal_kn_per_m;
  k.holds_kn_per_m = k.times * k.strength_kn_per_m;
  k.beyond_kn_per_m = contact->horizontal_kn_per_m - k.rubs_kn_per_m;
  return k;
}

/* A value to design with, where that is another than the one given. */
static void tell_design(lw_step step, double given, const lw_working *working) {
  double factor = step.value / given;
  if (fabs(step.value - given) > 1e-12)
    lw_working_line(working, &step, "%.5f x %.5f", lw_tell(working, step.unit, given), factor);
}

static void tell(const lw_check_context *context, const on_key *k, const lw_check *check,
                 const lw_working *working) {
  const lw_section *own = &context->wall->section;
  bool whole = fabs(k->times - 1.0) < 1e-12;
  lw_step rubs = {
      .symbol = "Rf", .formula = whole ? "mu V" : "factor x mu V", .value = k->rubs_kn_per_m, .unit = "kN/m"};
  lw_step beyond = {
      .symbol = "Hk", .formula = "H - Rf, on the key", .value = k->beyond_kn_per_m, .unit = "kN/m"};
  lw_step mu = {
      .symbol = "mu", .formula = "friction x factor, to design with", .value = k->friction, .unit = ""};
  lw_step strength = {
      .symbol = "Rk", .formula = "key strength x factor", .value = k->holds_kn_per_m, .unit = "kN/m"};
  double normal = lw_tell(working, "kN/m", k->normal_kn_per_m),
         rubbed = lw_tell(working, "kN/m", k->rubs_kn_per_m),
         past = lw_tell(working, "kN/m", k->beyond_kn_per_m);
  tell_design(mu, own->joint_friction, working);
  if (whole)
    lw_working_line(working, &rubs, "%.4f x %.4f", k->friction, normal);
  else
    lw_working_line(working, &rubs, "%.4f x %.4f x %.4f", k->times, k->friction, normal);
  lw_working_line(working, &beyond, "%.4f - %.4f", past + rubbed, rubbed);
  tell_design(strength, own->key_strength_kn_per_m, working);
  bool every = context->factor_set->on_every_wedge > 0.0;
  lw_check_tell_has(check, every ? "F Rk / Hk, with F on every strength" : "key strength / Hk", working);
}

bool lw_check_key_given(const lw_wall *wall) {
  return wall->section.key_strength_kn_per_m > 0.0;
}

lw_check lw_check_key(const lw_check_context *context, const lw_free_body *body, const lw_working *working) {
  lw_check check = lw_check_begin(context, body, LW_CHECK_KEY, "kN/m");
  const lw_factor_row *row = context->factor_set->row[LW_FACTOR_SLIDING];
  if (body->status != LW_OK) return check;
  on_key k = find(context, &body->contact);
  check.demand = lw_known(lw_larger(k.beyond_kn_per_m, 0.0));
  check.resistance = lw_known(k.holds_kn_per_m);
  if (!lw_check_find_has(context, &check)) {
    lw_check_no_demand(&check, row, context->load_case->kind);
    return check;
  }
  lw_check_weigh(&check, row, context->load_case->kind);
  if (working) tell(context, &k, &check, working);
  return check;
}
