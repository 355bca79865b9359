/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "markup.h"

void lw_markup_add(lw_text *out, const char *words) {
  for (const char *c = words; *c != '\0'; c++) {
    switch (*c) {
    case '&': lw_text_add(out, "&amp;"); break;
    case '<': lw_text_add(out, "&lt;"); break;
    case '>': lw_text_add(out, "&gt;"); break;
    case '"': lw_text_add(out, "&quot;"); break;
    default: lw_text_add_bytes(out, c, 1);
    }
  }
}
