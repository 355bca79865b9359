/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_SETTING_OUT_H
#define LOWWALL_ORDER_SETTING_OUT_H

#include "laying.h"

/* Pegs, levels, and what to measure between them. */
void lw_order_setting_out(const lw_laying *laying);

#endif
