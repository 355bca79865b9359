/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_NOTES_H
#define LOWWALL_ORDER_NOTES_H

#include "laying.h"

/* What to mind about the whole of an order. */
void lw_order_notes(const lw_laying *laying);

#endif
