/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_LINES_BEHIND_H
#define LOWWALL_ORDER_LINES_BEHIND_H

#include "take_off.h"

/* What stands behind and in the blocks: stone, cloth, pipe, soil, lining, fill. */
void lw_lines_behind(const lw_take_off *t);

#endif
