/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_LINES_H
#define LOWWALL_ORDER_LINES_H

#include "laying.h"

/* What to buy, dig and carry. */
void lw_order_lines(const lw_laying *laying);

#endif
