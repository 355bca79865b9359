/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "markup.h"

#include <string.h>

void lw_markup_add_bytes(lw_text *out, const char *words, size_t length) {
  for (size_t i = 0; i < length; i++) {
    switch (words[i]) {
    case '&': lw_text_add(out, "&amp;"); break;
    case '<': lw_text_add(out, "&lt;"); break;
    case '>': lw_text_add(out, "&gt;"); break;
    case '"': lw_text_add(out, "&quot;"); break;
    default: lw_text_add_bytes(out, words + i, 1);
    }
  }
}

void lw_markup_add(lw_text *out, const char *words) {
  lw_markup_add_bytes(out, words, strlen(words));
}
