/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_PHASES_H
#define LOWWALL_ORDER_PHASES_H

#include "laying.h"

/* Which run runs through at each corner in the lowest course, and what stands at each free end. */
void lw_phases_choose(const lw_laying *laying);

#endif
