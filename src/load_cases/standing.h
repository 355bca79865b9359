/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_STANDING_H
#define LOWWALL_LOAD_CASES_STANDING_H

#include <lowwall/wall.h>

/* How high water stands behind the wall, below its top. */

/** To the share of the height that open joints hold, reckoned from the base up to where blocked water would
 *  stand; never below the ground in front, where joints are buried, nor below the water that stands there
 *  anyway. */
double lw_standing_half(const lw_wall *wall);

/** With the ways out blocked: half as high where open joints are the one way out, else to the lower of the
 *  soil's top and the overflow. */
double lw_standing_blocked(const lw_wall *wall);

/** Whether open joints are the one way out, alone or counted as one with others. */
bool lw_standing_by_joints(const lw_site *site);

#endif
