/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "overturning.h"

/* Overturning of the wall about its toe, tilting of a stack of courses about its front lower edge. */

lw_check lw_check_overturning(const lw_check_context *context, const lw_free_body *body,
                              const lw_working *working) {
  bool wall = context->place->at == LW_AT_BASE;
  lw_check check = lw_check_begin(context, body, wall ? LW_CHECK_OVERTURNING : LW_CHECK_TILTING, "kN m/m");
  const lw_factor_row *row = context->factor_set->row[LW_FACTOR_OVERTURNING];
  const lw_contact *contact = &body->contact;
  if (body->status != LW_OK) return check;
  check.demand = lw_known(contact->overturning_knm_per_m);
  check.resistance = lw_known(contact->resisting_knm_per_m);
  if (contact->overturning_knm_per_m <= 1e-9) {
    lw_check_no_demand(&check, row, context->load_case->kind);
    check.counts = contact->inside || check.needs.known;
  } else {
    check.has = lw_known(contact->resisting_knm_per_m / contact->overturning_knm_per_m);
    lw_check_weigh(&check, row, context->load_case->kind);
    lw_check_tell_has(&check, "what holds / what tips", working);
  }
  if (contact->inside || !check.counts) return check;
  /* The resultant is outside: whatever the moments say, it stands on nothing. */
  check.ratio = lw_known(0.0);
  check.holds = LW_FALLS_SHORT;
  check.reason = LW_REASON_OUTSIDE_BASE;
  return check;
}
