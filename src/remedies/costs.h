/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REMEDIES_COSTS_H
#define LOWWALL_REMEDIES_COSTS_H

#include <lowwall/result.h>

/** Fill result->cost: each quantity that differs between the two looks tried by itself.
 *  scratch is a second result to run in */
void lw_costs_find(lw_result *result, lw_result *scratch);

/* Whether what a caution costs is told in times what just holds the wall: it has less than that. Of another
 * the check that governs tells. */
bool lw_costs_in_times(const lw_result *result);

#endif
