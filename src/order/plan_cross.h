/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_PLAN_CROSS_H
#define LOWWALL_ORDER_PLAN_CROSS_H

#include <lowwall/order.h>

/* Whether the face crosses itself, and which runs do, from 0. */
bool lw_plan_crosses(const lw_plan *plan, int *first, int *second);

#endif
