/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_OUTLINE_WATER_H
#define LOWWALL_BALANCE_OUTLINE_WATER_H

#include <lowwall/checks.h>

#include "pressure/back_plane.h"

/* Water behind and in front, on the outline of what stands on a contact. */
void lw_water_on_outline(const lw_site *site, const lw_ground *ground, const lw_stack *stack,
                         lw_forces *forces);

#endif
