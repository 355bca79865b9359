/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_NOTE_H
#define LOWWALL_ORDER_NOTE_H

#include <lowwall/order.h>

void lw_order_note_add(lw_order *order, const char *slug, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 3, 4)))
#endif
    ;

#endif
