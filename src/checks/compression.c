/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "compression.h"

#include <math.h>

#include "base/tell.h"
#include "base/working.h"
#include "standards/factor_set.h"

/* How much of the base, or of a joint, is in compression. */

/* On ground of which there is a doubt a set may ask for more; a joint stands on blocks. */
static const lw_factor_row *asked(const lw_check_context *context) {
  lw_doubt doubt = context->place->at == LW_AT_BASE ? context->wall->base_doubt : LW_DOUBT_NONE;
  return lw_factor_set_row(context->factor_set, LW_FACTOR_COMPRESSION, LW_FACTOR_COMPRESSION_WEAK, doubt,
                           context->load_case->kind);
}

/* What is in compression: the whole, a triangle's length, face shells, or the area under blocks that
 * taper. */
static void tell(const lw_contact *c, const lw_working *working) {
  double near = 0.5 * c->width_m - fabs(c->eccentricity_m), compressed = c->share_in_compression * c->area_m2;
  double width = lw_tell(working, "m", c->width_m), off = lw_tell(working, "m", fabs(c->eccentricity_m));
  lw_step step = {.symbol = "bp", .value = compressed, .unit = "m"};
  bool triangle = fabs(compressed - 3.0 * near) <= 1e-9 * fmax(compressed, 1.0);
  if (c->area_m2 < c->width_m) {
    step.formula = "share x area of the blocks, which taper";
    step.unit = "m2 a metre";
    lw_working_line(working, &step, "%.5f x %.5f", c->share_in_compression,
                    lw_tell(working, "m2/m", c->area_m2));
  } else if (c->share_in_compression > 1.0 - 1e-9) {
    step.formula = "B, as |e| is within the core";
    lw_working_line(working, &step, "%.4f", width);
  } else if (triangle) {
    step.formula = "3 (B/2 - |e|), as |e| is beyond B/6";
    lw_working_line(working, &step, "3 (%.5f/2 - %.5f)", width, off);
  } else {
    step.formula = "share x B of face shells, which alone bear";
    lw_working_line(working, &step, "%.5f x %.5f", c->share_in_compression, width);
  }
}

/* Beside it, as information: the handbook's middle third. */
static void tell_third(const lw_contact *c, const lw_working *working) {
  lw_step step = {.symbol = "em", .value = lw_contact_of_third(c), .unit = ""};
  step.formula = step.value <= 1.0
                     ? "|e|/(B/6), as a share of the middle third: inside, and it decides nothing"
                     : "|e|/(B/6), as a share of the middle third: outside, and it decides nothing";
  lw_working_line(working, &step, "%.5f/(%.5f/6)", lw_tell(working, "m", fabs(c->eccentricity_m)),
                  lw_tell(working, "m", c->width_m));
}

lw_check lw_check_compression(const lw_check_context *context, const lw_free_body *body,
                              const lw_working *working) {
  lw_check check = lw_check_begin(context, body, LW_CHECK_COMPRESSION, "m");
  const lw_contact *contact = &body->contact;
  if (body->status != LW_OK) return check;
  double share = contact->inside ? contact->share_in_compression : 0.0;
  check.resistance = lw_known(share * contact->area_m2);
  check.demand = lw_known(contact->area_m2);
  check.has = lw_known(share);
  lw_check_weigh(&check, asked(context), context->load_case->kind);
  if (!contact->inside) {
    check.reason = LW_REASON_OUTSIDE_BASE;
    return check;
  }
  tell_third(contact, working);
  tell(contact, working);
  lw_check_tell_has(&check, "bp / B", working);
  return check;
}
