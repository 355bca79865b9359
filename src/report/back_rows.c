/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "back_rows.h"

#include "sheet/values.h"
#include "tables/known.h"

const lw_interface_row *lw_back_row(const lw_result *result) {
  const lw_quantity *friction = &result->given.wall.friction;
  bool taken = friction->origin == LW_TABLE && friction->table_row >= 0;
  return taken ? &result->tables->interface_[friction->table_row] : NULL;
}

const lw_interface_row *lw_back_membrane(const lw_result *result) {
  const lw_case *c = &result->given;
  bool counts = lw_back_row(result) && c->wall.friction.si > 0.0;
  return counts && lw_back_is_lined(c) ? lw_known_interface(result->tables, LW_ASSUMED_MEMBRANE) : NULL;
}
