/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "limit_own.h"

#include <math.h>

/* No law counts metres to a hundredth that are whole inches too. */
static bool in_inches(double height_m) {
  static const double INCH_M = 0.0254;
  double inches = height_m / INCH_M;
  return fabs(inches - round(inches)) < 1e-6;
}

lw_limit_figure lw_limit_own(lw_units units, const lw_limit_row *row, const char *before, const char *after) {
  lw_limit_figure own = {""};
  bool told = units == LW_UNITS_METRIC || row->of_default || row->height_m <= 0.0 || in_inches(row->height_m);
  if (!told)
    lw_print(own.text, sizeof own.text, "%s%s in the law%s", before,
             lw_metres(LW_UNITS_METRIC, row->height_m, 2).text, after);
  return own;
}
