/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_LINES_GROUND_H
#define LOWWALL_ORDER_LINES_GROUND_H

#include "take_off.h"

/* What is dug, and what comes in its place under the blocks: pad and bedding. */
void lw_lines_ground(const lw_take_off *t);

#endif
