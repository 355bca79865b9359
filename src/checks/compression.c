/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "compression.h"

/* How much of the base, or of a joint, is in compression. */

lw_check lw_check_compression(const lw_check_context *context, const lw_stage *stage, lw_at at, int joint) {
  lw_check check = {.kind = LW_CHECK_COMPRESSION, .at = at, .joint = joint, .unit = "m", .counts = true};
  const lw_contact *contact = &stage->contact;
  if (stage->status != LW_OK) {
    lw_check_not_shown(&check, stage->reason);
    return check;
  }
  double share = contact->inside ? contact->share_in_compression : 0.0;
  check.resistance = lw_known(share * contact->area_m2);
  check.demand = lw_known(contact->area_m2);
  check.has = lw_known(share);
  lw_check_weigh(&check, context->format->row[LW_NEED_COMPRESSION], context->load_case->kind);
  if (!contact->inside) check.reason = LW_REASON_OUTSIDE_BASE;
  return check;
}
