/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REMEDIES_COSTS_H
#define LOWWALL_REMEDIES_COSTS_H

#include <lowwall/result.h>

/** Fill result->cost: each quantity that differs between the two looks tried by itself.
 *  scratch is a second result to run in */
void lw_costs_find(lw_result *result, lw_result *scratch);

#endif
