/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_PEGS_H
#define LOWWALL_ORDER_PEGS_H

#include "laying.h"

/* Pegs, levels, and what to measure between them. */
void lw_order_pegs(const lw_laying *laying);

#endif
