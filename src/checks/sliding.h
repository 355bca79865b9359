/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_SLIDING_H
#define LOWWALL_CHECKS_SLIDING_H

#include "balance/weigh.h"

/* With the strengths as the load case has them. */
lw_check lw_check_sliding(const lw_check_context *context, const lw_free_body *body,
                          const lw_working *working);

/* Tan of the angle to design with. */
double lw_sliding_friction(const lw_strengths *design, lw_at at);
/* What holds besides friction: adhesion of what is in contact, or the shear strength of a joint. */
double lw_sliding_bond(const lw_method *method, const lw_strengths *design, const lw_contact *contact,
                       lw_at at);
/* The most that the ground may hold where it is taken without friction; INFINITY: no such limit. */
double lw_sliding_most(const lw_check_context *context, const lw_contact *contact, lw_at at);

#endif
