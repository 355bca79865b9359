/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "distance.h"

lw_amount lw_distance_told(lw_units units, const lw_quantity *distance) {
  lw_amount told;
  bool more = distance->origin == LW_GIVEN && distance->table_row == LW_MORE_THAN;
  lw_print(told.text, sizeof told.text, "%s%s", more ? "more than " : "",
           lw_metres(units, distance->si, 2).text);
  return told;
}
