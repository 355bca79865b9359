/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_CUTTING_H
#define LOWWALL_ORDER_CUTTING_H

#include "laying.h"

/* What each cut piece is sawn from, and what is left of it. */
void lw_order_cutting(const lw_laying *laying);

#endif
