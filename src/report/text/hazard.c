/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hazard.h"

#include <lowwall/base.h>

#include <ctype.h>
#include <string.h>

void lw_hazard_words(const lw_hazard_row *row, char *out, size_t size) {
  size_t used = (size_t)lw_print(out, size, "%s: ", row->hazard);
  lw_print(out + used, size - used, "%s", row->caution);
  if (out[used] != '\0') out[used] = (char)tolower((unsigned char)out[used]);
}
