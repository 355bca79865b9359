/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_LINES_SOLID_H
#define LOWWALL_ORDER_LINES_SOLID_H

#include "take_off.h"

/* Stone or concrete of a solid wall. */
void lw_lines_solid(const lw_take_off *t);

#endif
