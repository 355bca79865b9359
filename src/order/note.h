/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_NOTE_H
#define LOWWALL_ORDER_NOTE_H

#include <lowwall/order.h>

/* One more thing to mind, while there is room. */
void lw_order_note_add(lw_order *order, const lw_order_note *note);

#endif
