/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_WORK_H
#define LOWWALL_ORDER_WORK_H

#include "laying.h"

/* The order of work. */
void lw_order_work(const lw_laying *laying);

#endif
