/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_GROUND_H
#define LOWWALL_BALANCE_GROUND_H

#include <lowwall/checks.h>

/** The ground as it is given: strengths of the sheet, the water that is usual, nothing shaken or dug. */
void lw_ground_own(const lw_wall *wall, lw_ground *ground);

/** Head of the water behind and in front over an underside that lies so far below the top of the wall.
 *  note  1 Water on its way out lifts no more than the water in front. */
typedef struct lw_heads {
  double rear_m, front_m;
} lw_heads;
lw_heads lw_ground_heads(const lw_site *site, const lw_ground *ground, double underside_m);

#endif
