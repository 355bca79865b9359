/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_RUNS_H
#define LOWWALL_ORDER_RUNS_H

#include "laying.h"

/* Of each run: its curve, and the lengths near it that need no cut. */
void lw_order_runs(const lw_laying *laying);

#endif
