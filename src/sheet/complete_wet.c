/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tables/known.h"
#include "complete.h"

/* What outlets, a storm and a trench need besides themselves; without them nothing is filled in. */

/* The soil that holds least water is filled highest. A soil that is not named takes the cautious share. */
static lw_quantity least_porosity(const lw_completing *s) {
  const lw_quantity unknown =
      lw_assumed(LW_KIND_SHARE, lw_known_value(s->tables, LW_THRESHOLD_DRAINABLE_POROSITY));
  lw_quantity least = unknown;
  bool found = false;
  for (int i = 0; i < s->soil_count; i++) {
    const lw_words *name = &s->c->ground.soil[i].name;
    const lw_soil_row *row = name->origin == LW_ABSENT ? NULL : lw_tables_soil(s->tables, name->text);
    lw_quantity own =
        row != NULL ? lw_from_table(LW_KIND_SHARE, row->drainable_porosity, (int)(row - s->tables->soil))
                    : unknown;
    if (!found || own.si < least.si) {
      least = own;
    }
    found = true;
  }
  return least;
}

void lw_complete_wet(lw_completing *s) {
  lw_case *c = s->c;
  if (lw_given(&c->water.drain_outlets) && c->water.drain_outlets.si > 0.5 &&
      !lw_given(&c->water.outlet_level)) {
    c->water.outlet_level = lw_assumed(LW_KIND_LENGTH, 0.0);
  }
  if (lw_given(&c->water.storm_rain) && !lw_given(&c->water.drainable_porosity)) {
    c->water.drainable_porosity = least_porosity(s);
  }
  if (lw_given(&c->ground.trench_depth) && !lw_given(&c->ground.trench_distance)) {
    c->ground.trench_distance = lw_assumed(LW_KIND_LENGTH, 0.0);
  }
  if (lw_given(&c->ground.trench_distance) && !lw_given(&c->ground.trench_depth)) {
    lw_complete_missing(s, &c->ground.trench_depth, NULL, "how deep the trench is");
  }
  if (lw_given(&c->water.drainable_porosity) && !lw_given(&c->water.storm_rain)) {
    lw_complete_missing(s, &c->water.storm_rain, NULL, "the rain that is to fill it");
  }
}
