/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "blocks.h"

#include <stdarg.h>

#include "base/print.h"

void lw_block_say(const lw_blocks *b, lw_block_kind kind, const char *label, const char *format, ...) {
  char words[900];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(words, sizeof words, format, arguments);
  va_end(arguments);
  lw_cited_note(b->cited, words, LW_CITED_UNMARKED);
  b->taker(b->context, &(lw_block){.kind = kind, .label = label, .words = words});
}
