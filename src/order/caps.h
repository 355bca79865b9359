/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_CAPS_H
#define LOWWALL_ORDER_CAPS_H

#include "laying.h"

/* The caps of all runs, and how they meet at corners. */
void lw_order_caps(const lw_laying *laying);

#endif
