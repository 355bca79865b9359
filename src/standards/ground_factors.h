/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STANDARDS_GROUND_FACTORS_H
#define LOWWALL_STANDARDS_GROUND_FACTORS_H

#include "factor_set.h"

/* Put the set's factors on the weights, the water and the loads of a cross-section. One source, one factor:
 * weight that drives and weight that holds are both unfavourable, or (light) both favourable. */
void lw_factor_set_weigh_ground(const lw_factor_set *factor_set, lw_situation_kind kind, bool light,
                                lw_slip_ground *ground);
/* Whether the two differ. */
bool lw_factor_set_weighs_twice(const lw_factor_set *factor_set, lw_situation_kind kind);

#endif
