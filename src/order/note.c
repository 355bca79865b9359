/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "note.h"

#include <stdarg.h>

#include "base/print.h"

void lw_order_note_add(lw_order *order, const char *slug, const char *format, ...) {
  if (order->note_count >= LW_ORDER_NOTE_MAX) return;
  lw_order_note *note = &order->note[order->note_count++];
  lw_print(note->slug, sizeof note->slug, "%s", slug);
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(note->text, sizeof note->text, format, arguments);
  va_end(arguments);
}
