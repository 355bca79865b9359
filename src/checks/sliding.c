/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sliding.h"

#include <math.h>

#include "base/extremes.h"
#include "bearing_common.h"
#include "format_factors.h"

/* Sliding on a contact: friction and what is bonded against the push. */

double lw_contact_held(const lw_method *method, const lw_contact *contact) {
  if (!contact->inside) return 0.0;
  if (method->base_pressure == LW_BASE_EFFECTIVE) return contact->effective_width_m;
  return contact->area_m2 * contact->share_in_compression;
}

/* What holds by itself, passive apart: friction of what is pressed, adhesion of what is in contact. */
static double friction_of(const lw_method *method, const lw_strengths *design, const lw_contact *contact,
                          lw_at at) {
  double pressed = lw_larger(contact->vertical_kn_per_m, 0.0);
  if (at == LW_AT_JOINT || at == LW_AT_CAP) {
    double shear = at == LW_AT_JOINT && pressed > 0.0 ? design->joint_shear_kn_per_m : 0.0;
    return design->joint_friction * pressed + shear;
  }
  double friction = at == LW_AT_PAD ? design->pad_friction : design->base_friction;
  return friction * pressed + design->base_adhesion_kpa * lw_contact_held(method, contact);
}

/* Water or air can get between clay and a dry wall. */
double lw_sliding_most(const lw_check_context *context, const lw_contact *contact, lw_at at) {
  lw_number share =
      lw_format_value(context->format->row[LW_NEED_UNDRAINED_SLIDING], context->load_case->kind);
  bool on_ground = at == LW_AT_PAD || (at == LW_AT_BASE && lw_site_under(&context->wall->site) <= 0.0);
  double friction = context->load_case->ground.design.footing.friction_rad;
  if (!share.known || !on_ground || !lw_bearing_is_frictionless(friction)) return INFINITY;
  return share.value * lw_larger(contact->vertical_kn_per_m, 0.0);
}

/* With so much of the ground in front counted; 0: none. A set may ask for more where some is. */
static lw_check slide(const lw_check_context *context, const lw_stage *stage, lw_check check,
                      double in_front_kn_per_m) {
  const lw_format_row *const *row = context->format->row;
  lw_situation_kind kind = context->load_case->kind;
  bool passive = in_front_kn_per_m > 0.0;
  bool off_push = lw_format_passive_off_push(context->format, &context->wall->method);
  double push = stage->contact.horizontal_kn_per_m - (off_push ? in_front_kn_per_m : 0.0);
  double holds =
      friction_of(&context->wall->method, &context->load_case->ground.design, &stage->contact, check.at) *
      lw_format_times(context->format, kind, LW_NEED_SLIDING_RESISTANCE, LW_NEED_SLIDING_RESISTANCE_TIMES);
  holds = lw_smaller(holds, lw_sliding_most(context, &stage->contact, check.at));
  if (!off_push) holds += in_front_kn_per_m;
  check.demand = lw_known(lw_larger(push, 0.0));
  check.resistance = lw_known(holds);
  if (push <= 1e-9) {
    check.needs = lw_format_value(row[LW_NEED_SLIDING], kind);
    check.by = row[LW_NEED_SLIDING];
    check.holds = LW_HOLDS;
    check.reason = LW_REASON_NO_DEMAND;
    return check;
  }
  check.has = lw_known(holds / push);
  /* The factor that was searched for: with it on every strength what holds comes to the push. */
  if (context->format->on_every_wedge > 0.0) {
    check.has = lw_known(context->format->on_every_wedge);
    check.resistance = lw_known(check.has.value * push);
  }
  bool asks_more = passive && row[LW_NEED_SLIDING_WITH_PASSIVE];
  lw_check_weigh(&check, row[asks_more ? LW_NEED_SLIDING_WITH_PASSIVE : LW_NEED_SLIDING], kind);
  return check;
}

lw_check lw_check_sliding(const lw_check_context *context, const lw_stage *stage, lw_at at, int joint) {
  lw_check check = {.kind = LW_CHECK_SLIDING, .at = at, .joint = joint, .unit = "kN/m", .counts = true};
  if (stage->status != LW_OK) {
    lw_check_not_shown(&check, stage->reason);
    return check;
  }
  lw_check alone = slide(context, stage, check, 0.0);
  if (stage->passive_kn_per_m <= 0.0) return alone;
  double in_front =
      stage->passive_kn_per_m * lw_format_times(context->format, context->load_case->kind,
                                                LW_NEED_PASSIVE_RESISTANCE, LW_NEED_PASSIVE_RESISTANCE_TIMES);
  /* What holds by itself is no worse for the ground in front of it. */
  lw_check with = slide(context, stage, check, in_front);
  return with.counts && lw_check_graver(&with, &alone) ? alone : with;
}
