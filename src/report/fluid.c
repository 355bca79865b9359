/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fluid.h"

#include <math.h>

/* The code's figure is of level, drained ground. */
static const lw_soil_row *row_of(const lw_result *result) {
  if (result->wall.method.pressure == LW_PRESSURE_AT_REST) return NULL;
  const lw_words *name = &result->given.ground.soil[0].name;
  if (name->origin == LW_ABSENT) return NULL;
  const lw_soil_row *row = lw_tables_soil(result->tables, name->text);
  return row && isfinite(row->code_fluid_kn_per_m3) ? row : NULL;
}

lw_fluid lw_fluid_of(const lw_result *result) {
  const lw_wall *wall = &result->wall;
  const lw_free_body *base = &result->situations.situation[0].base;
  lw_fluid fluid = {.row = NULL};
  bool one = wall->section.known && wall->site.soil_count == 1 && result->situations.count > 0;
  if (!one || base->status != LW_OK || !(base->thrust.coefficient > 0.0)) return fluid;
  fluid.known = true;
  fluid.coefficient = base->thrust.coefficient;
  fluid.unit_weight_kn_per_m3 = wall->site.soil[0].unit_weight_kn_per_m3;
  fluid.angle_rad = base->thrust.angle_rad;
  fluid.weight_kn_per_m3 = fluid.coefficient * fluid.unit_weight_kn_per_m3 * cos(fluid.angle_rad);
  fluid.row = row_of(result);
  if (fluid.row) fluid.share = fluid.weight_kn_per_m3 / fluid.row->code_fluid_kn_per_m3;
  return fluid;
}
