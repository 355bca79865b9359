/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_CUTS_H
#define LOWWALL_ORDER_CUTS_H

#include <lowwall/order.h>

/* One more line of the list of cuts, or more pieces on a line that is there. */
void lw_cuts_add(lw_order *order, const lw_cut *cut);

#endif
