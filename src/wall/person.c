/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "person.h"

#include "tables/known.h"

/* The load of a planted bed that was taken, for no sheet says it. */
static const lw_case_load *planted(const lw_case *c, const lw_tables *tables) {
  int row = (int)(lw_known_load(tables, LW_LOAD_OF_PLANTED) - tables->load);
  for (int i = 0; i < LW_LOAD_MAX; i++)
    if (c->load[i].kind.origin == LW_ASSUMED && c->load[i].pressure.table_row == row) return &c->load[i];
  return NULL;
}

void lw_wall_person_build(const lw_case *c, const lw_tables *tables, lw_wall_person *person) {
  const lw_case_load *load = planted(c, tables);
  *person = (lw_wall_person){.present = load != NULL};
  if (!load) return;
  double side = lw_known_value(tables, LW_THRESHOLD_PERSON_SIDE),
         away = lw_known_value(tables, LW_THRESHOLD_PERSON_DISTANCE);
  person->planted_kpa = load->pressure.si;
  person->force_kn = lw_known_load(tables, LW_LOAD_OF_PERSON_AT_EDGE)->value;
  person->side_m = side;
  person->length_m = side + 2.0 * lw_known_value(tables, LW_THRESHOLD_PERSON_SPREAD) * away;
  person->pressure_kpa = person->force_kn / (person->length_m * side);
  person->near_m = away;
  person->far_m = away + side;
}
