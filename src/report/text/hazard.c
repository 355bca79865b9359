/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hazard.h"

#include <ctype.h>

#include "base/canned.h"

void lw_hazard_words(const lw_hazard_row *row, lw_units units, char *out, size_t size) {
  char hazard[LW_SOURCE_MAX];
  size_t used =
      (size_t)lw_print(out, size, "%s: ", lw_canned_told(units, row->hazard, hazard, sizeof hazard));
  lw_canned_told(units, row->caution, out + used, size - used);
  if (out[used] != '\0') out[used] = (char)tolower((unsigned char)out[used]);
}
