/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "note.h"

void lw_order_note_add(lw_order *order, const lw_order_note *note) {
  if (order->note_count < LW_ORDER_NOTE_MAX) order->note[order->note_count++] = *note;
}
