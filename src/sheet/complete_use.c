/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tables/known.h"
#include "values.h"
#include "complete.h"

/* The load behind, where the sheet gives none: by who goes there, and by the height that is held up. */

static bool vehicle_could_come(const lw_case *c) {
  bool reaches = c->site.vehicle_access.origin != LW_GIVEN || c->site.vehicle_access.value == LW_YES;
  return reaches || lw_choice_is(&c->ground.bed_use, LW_BED_VEHICLE);
}

/* Only behind a low wall: higher up nobody can know that nobody walks there. */
static bool planted(const lw_case *c, const lw_tables *tables, double held) {
  bool low = held <= lw_known_value(tables, LW_THRESHOLD_PLANT_SOIL_HELD) + LW_MILLIMETRE;
  return low && lw_choice_is(&c->ground.bed_use, LW_BED_PLANTED);
}

/* Of the two rows that the load of a garden follows from it keeps the one that makes it. */
static const lw_load_row *garden(const lw_tables *tables, double held, double *pressure_kpa) {
  const lw_load_row *least = lw_known_load(tables, LW_LOAD_OF_GARDEN);
  *pressure_kpa = lw_known_garden_kpa(tables, held);
  return *pressure_kpa > least->value ? lw_known_load(tables, LW_LOAD_OF_GARDEN_FULL) : least;
}

void lw_complete_use(lw_completing *s) {
  lw_case *c = s->c;
  if (!s->load_untold || s->load_count >= LW_LOAD_MAX) return;
  const lw_load_row *row = lw_known_load(s->tables, LW_LOAD_OF_VEHICLE);
  double held = lw_held_m(c);
  bool on_foot = !vehicle_could_come(c), only_planted = on_foot && planted(c, s->tables, held);
  if (only_planted) row = lw_known_load(s->tables, LW_LOAD_OF_PLANTED);
  double pressure = row->value;
  if (on_foot && !only_planted) row = garden(s->tables, held, &pressure);
  if (c->look == LW_LOOK_LIKELY) pressure *= lw_known_value(s->tables, LW_THRESHOLD_LIKELY_LOAD);
  lw_case_load *load = &c->load[s->load_count++];
  load->kind = (lw_choice){.value = LW_LOAD_UNIFORM, .origin = LW_ASSUMED};
  load->pressure = lw_assumed(LW_KIND_PRESSURE, pressure);
  load->pressure.table_row = (int)(row - s->tables->load);
}
