/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_TELL_H
#define LOWWALL_BASE_TELL_H

#include "amount.h"

/* Numbers of the working in the units that it is told in. Formulas stay as they are: what is told is in feet
 * and pounds throughout, so that each line comes out in what it prints. A number is named by its metric unit,
 * as a step and a bound are: "m", "kN/m", "kN m/m", "m2/m"; words may follow, "m from the front edge". */

/* The name of a unit, with the words behind it. */
typedef struct lw_tell_name {
  char text[72];
} lw_tell_name;

/** A number given in that unit; one that has none, or an angle, is as it was. */
double lw_tell_in(lw_units units, const char *unit, double value);
/** The name of the unit that it is told in, the words behind it too: "ft from the front edge". */
lw_tell_name lw_tell_unit(lw_units units, const char *unit);
/** Number and unit with so many decimals: "1.148 ft". */
lw_amount lw_tell_amount(lw_units units, const char *unit, double value, int decimals);

/** A result to five digits, as a step prints it; many pounds are written out. */
lw_amount lw_tell_result(lw_units units, double told);

/** What a working is told in; nobody listens in metric. */
static inline lw_units lw_tell_units(const lw_working *working) {
  return working ? working->units : LW_UNITS_METRIC;
}

/** A number that is put in. Cheap where nobody listens. */
static inline double lw_tell(const lw_working *working, const char *unit, double value) {
  return lw_tell_units(working) == LW_UNITS_METRIC ? value : lw_tell_in(working->units, unit, value);
}

#endif
