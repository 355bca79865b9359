/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "stage.h"

#include <math.h>

static const char *const QUANTITY[LW_NEED_COUNT] = {
    [LW_NEED_SLIDING] = "sliding",
    [LW_NEED_SLIDING_WITH_PASSIVE] = "sliding-with-passive",
    [LW_NEED_OVERTURNING] = "overturning",
    [LW_NEED_COMPRESSION] = "compression",
    [LW_NEED_BEARING_THEORY] = "bearing-theory",
    [LW_NEED_BEARING_PRESUMPTIVE] = "bearing-presumptive",
    [LW_NEED_PASSIVE_AS] = "passive-as",
    [LW_NEED_FRICTION] = "friction",
    [LW_NEED_COHESION] = "cohesion",
};

void lw_format_read(const lw_tables *tables, const char *name, lw_format *format) {
  for (int i = 0; i < LW_NEED_COUNT; i++) format->row[i] = lw_tables_format(tables, name, QUANTITY[i]);
}

lw_number lw_format_value(const lw_format_row *row, lw_situation_kind kind) {
  if (!row) return (lw_number){0};
  /* A what-if is asked what an unusual situation is asked. */
  lw_situation_kind column = kind == LW_WHAT_IF ? LW_UNUSUAL : kind;
  double value = isnan(row->needs[column]) ? row->needs[LW_USUAL] : row->needs[column];
  return (lw_number){.value = value, .known = !isnan(value)};
}

static void weaken(lw_soil *soil, double friction_factor, double cohesion_factor) {
  soil->friction_rad = atan(tan(soil->friction_rad) / friction_factor);
  soil->cohesion_kpa /= cohesion_factor;
}

void lw_format_apply(const lw_format *format, lw_situation_kind kind, lw_site *site) {
  lw_number friction = lw_format_value(format->row[LW_NEED_FRICTION], kind);
  lw_number cohesion = lw_format_value(format->row[LW_NEED_COHESION], kind);
  double on_friction = friction.known ? friction.value : 1.0,
         on_cohesion = cohesion.known ? cohesion.value : 1.0;
  /* Dividing by one still costs the last bit of an angle: a lumped set leaves the soil as it is. */
  if (fabs(on_friction - 1.0) < 1e-12 && fabs(on_cohesion - 1.0) < 1e-12) return;
  for (int i = 0; i < site->soil_count; i++) weaken(&site->soil[i], on_friction, on_cohesion);
  weaken(&site->footing, on_friction, on_cohesion);
  site->base_friction /= on_friction;
  site->pad_friction /= on_friction;
  site->base_adhesion_kpa /= on_cohesion;
}

bool lw_format_passive_off_push(const lw_format *format, const lw_method *method) {
  if (method->passive_as_given) return method->passive_as == LW_PASSIVE_OFF_PUSH;
  lw_number as = lw_format_value(format->row[LW_NEED_PASSIVE_AS], LW_USUAL);
  return as.known && as.value > 0.5;
}
