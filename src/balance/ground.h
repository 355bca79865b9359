/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_GROUND_H
#define LOWWALL_BALANCE_GROUND_H

#include <lowwall/checks.h>

/** The ground as it is given: strengths of the sheet, the water that is usual, nothing shaken or dug. */
void lw_ground_own(const lw_wall *wall, lw_ground *ground);

#endif
