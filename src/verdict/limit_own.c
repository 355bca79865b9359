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

/* Whole inches and no round part of a metre: the law counts in feet. */
static bool counts_in_feet(const lw_limit_row *row) {
  static const double FIFTH_M = 0.05;
  return in_inches(row->height_m) && !is_whole(row->height_m / FIFTH_M);
}

lw_limit_figure lw_limit_own(lw_units units, const lw_limit_row *row, const char *before, const char *after) {
  lw_limit_figure own = {""};
  bool in_metres = units == LW_UNITS_US && !in_inches(row->height_m),
       in_feet = units == LW_UNITS_METRIC && counts_in_feet(row);
  lw_units laws = in_metres ? LW_UNITS_METRIC : LW_UNITS_US;
  if ((in_metres || in_feet) && !row->of_default && row->height_m > 0.0)
    lw_print(own.text, sizeof own.text, "%s%s by the law%s", before, lw_metres(laws, row->height_m, 2).text,
             after);
  return own;
}
