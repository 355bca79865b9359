/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STANDARDS_FORMAT_GROUND_H
#define LOWWALL_STANDARDS_FORMAT_GROUND_H

#include "format.h"

/* Put the set's factors on the weights, the water and the loads of a cross-section. One source, one factor:
 * weight that drives and weight that holds are both unfavourable, or (light) both favourable. */
void lw_format_weigh_ground(const lw_format *format, lw_situation_kind kind, bool light,
                            lw_slip_ground *ground);
/* Whether the two differ. */
bool lw_format_weighs_twice(const lw_format *format, lw_situation_kind kind);

#endif
