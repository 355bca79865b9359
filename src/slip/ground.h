/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SLIP_GROUND_H
#define LOWWALL_SLIP_GROUND_H

#include <lowwall/checks.h>

/* The cross-section of a wall and the ground of a load case. */
void lw_slip_ground_build(const lw_wall *wall, const lw_ground *state, lw_slip_ground *ground);

#endif
