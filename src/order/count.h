/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_COUNT_H
#define LOWWALL_ORDER_COUNT_H

#include "laying.h"

/* The pieces of each course, and the cuts among them. */
void lw_order_count(const lw_laying *laying);

#endif
