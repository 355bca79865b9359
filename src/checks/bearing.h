/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_BEARING_H
#define LOWWALL_CHECKS_BEARING_H

#include "balance/weigh.h"

lw_check lw_check_bearing(const lw_check_context *context, const lw_free_body *body,
                          const lw_working *working);

/* The strip footing that a theory takes the contact for. */
lw_strip lw_bearing_strip(const lw_wall *wall, const lw_ground *ground, const lw_free_body *body, lw_at at,
                          const lw_working *working);

/* What the ground under a free body bears by theory, for the reports. */
void lw_bearing_show(const lw_wall *wall, const lw_ground *ground, const lw_free_body *body, lw_at at,
                     lw_borne *borne);

#endif
