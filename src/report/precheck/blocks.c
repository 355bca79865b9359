/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "blocks.h"

#include <stdarg.h>
#include <string.h>

#include "base/print.h"

lw_amount lw_block_m(const lw_blocks *b, double length_m) {
  return lw_metres(b->result->units, length_m, 2);
}

lw_amount lw_block_amount(const lw_blocks *b, lw_kind kind, double si, int decimals) {
  return lw_amount_of(b->result->units, kind, si, decimals);
}

void lw_block_join(char *list, size_t size, const char *words) {
  size_t used = strlen(list);
  lw_print(list + used, size - used, "%s%s", used > 0 ? "; " : "", words);
}

void lw_block_say(const lw_blocks *b, lw_block_kind kind, const char *label, const char *format, ...) {
  char words[900];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(words, sizeof words, format, arguments);
  va_end(arguments);
  b->taker(b->context, &(lw_block){.kind = kind, .label = label, .words = words});
}
