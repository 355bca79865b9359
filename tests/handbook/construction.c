/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/lateral.h>
#include <math.h>
#include <string.h>

#include "rows.h"

/* Compaction plant beside a wall, and soil between two faces. */

static bool asks(const case_row *row, const char *quantity) {
  return strcmp(row->quantity, quantity) == 0;
}

static case_outcome part_of(const case_row *row, lw_lateral lateral, double *value) {
  *value = asks(row, "thrust") ? lateral.thrust_kn_per_m : lateral.height_m;
  return asks(row, "thrust") || asks(row, "thrust_height") ? CASE_VALUE : CASE_UNSUPPORTED;
}

static case_outcome run_ingold(const case_row *row, double *value) {
  lw_compaction compaction = {.line_load_kn_per_m = case_number(row, "P", NAN),
                              .unit_weight_kn_per_m3 = case_number(row, "gamma", NAN),
                              .friction_rad = case_number(row, "phi", NAN),
                              .state = LW_ACTIVE};
  lw_compaction_diagram diagram;
  if (lw_compaction_solve(&compaction, &diagram, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  bool line = asks(row, "zc") || asks(row, "hc") || asks(row, "pmax");
  if (!line) return part_of(row, lw_compaction_thrust(&diagram, case_number(row, "H", NAN), NULL), value);
  *value = asks(row, "zc") ? diagram.zc_m : asks(row, "hc") ? diagram.hc_m : diagram.greatest_kpa;
  return CASE_VALUE;
}

static case_outcome run_janssen(const case_row *row, double *value) {
  lw_slot slot = {.width_m = case_number(row, "B", NAN),
                  .unit_weight_kn_per_m3 = case_number(row, "gamma", NAN),
                  .wall_friction_rad = case_number(row, "delta", NAN)};
  double k = case_number(row, "K", NAN), level = lw_slot_kpa(&slot, k, case_number(row, "z", NAN));
  lw_lateral lateral;
  if (asks(row, "sigma_h") || asks(row, "sigma_v")) {
    *value = asks(row, "sigma_h") ? level : level / k;
    return CASE_VALUE;
  }
  if (lw_slot_thrust(&slot, k, case_number(row, "H", NAN), &lateral, NULL, NULL) != LW_OK)
    return CASE_NO_SOLUTION;
  return part_of(row, lateral, value);
}

case_outcome case_building(const case_row *row, double *value) {
  if (case_is(row, "method", "ingold")) return run_ingold(row, value);
  return case_is(row, "method", "janssen") ? run_janssen(row, value) : CASE_UNSUPPORTED;
}

Test(handbook, building) {
  cr_assert_eq(case_hold_all("tests/handbook/building.csv", case_building), 37);
}
