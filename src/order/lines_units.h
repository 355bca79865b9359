/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_LINES_UNITS_H
#define LOWWALL_ORDER_LINES_UNITS_H

#include "take_off.h"

/* Blocks, halves, handed units and caps with their adhesive. */
void lw_lines_units(const lw_take_off *t);

#endif
