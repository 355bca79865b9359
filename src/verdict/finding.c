/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "finding.h"

#include <stdarg.h>
#include <string.h>

#include "base/print.h"

void lw_tell(lw_finding *found, const char *format, ...) {
  if (!found->detail) return;
  size_t used = strlen(found->detail);
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(found->detail + used, LW_CLAUSE_MAX - used, format, arguments);
  va_end(arguments);
}

lw_so lw_open_by(lw_finding *found, const char *item) {
  if (item && found->left_out_count < LW_LEFT_OUT_MAX) found->left_out[found->left_out_count++] = item;
  return LW_SO_OPEN;
}
