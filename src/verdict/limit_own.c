/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "limit_own.h"

#include <math.h>

static bool is_whole(double count) {
  return fabs(count - round(count)) < 1e-6;
}

/* No law counts metres to a hundredth that are whole inches too. */
static bool in_inches(double height_m) {
  return is_whole(height_m / LW_INCH_M);
}

lw_limit_figure lw_limit_own(lw_units units, const lw_limit_row *row, const char *before, const char *after) {
  lw_limit_figure own = {""};
  bool told = units == LW_UNITS_METRIC || row->of_default || row->height_m <= 0.0 || in_inches(row->height_m);
  if (!told)
    lw_print(own.text, sizeof own.text, "%s%s in the law%s", before,
             lw_metres(LW_UNITS_METRIC, row->height_m, 2).text, after);
  return own;
}

bool lw_limit_counts_inches(const lw_limit_row *row) {
  static const double FIFTH_M = 0.05;
  return in_inches(row->height_m) && !is_whole(row->height_m / FIFTH_M);
}
