/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold.h"
#include "names.h"

#include <math.h>
#include <string.h>

/* The rows that code asks for by name. */

static const struct {
  lw_list list;
  const char *slug, *unit; /* unit: NULL where a row has none of its own */
} KNOWN[LW_KNOWN_COUNT] = {
#define LW_KNOWN_CLEARANCE(name, slug) [LW_CLEARANCE_##name] = {LW_LIST_CLEARANCES, slug, NULL},
#define LW_KNOWN_THRESHOLD(name, slug, unit) [LW_THRESHOLD_##name] = {LW_LIST_THRESHOLDS, slug, unit},
#define LW_KNOWN_FENCE(name, slug, unit) [LW_FENCE_OF_##name] = {LW_LIST_FENCES, slug, unit},
#define LW_KNOWN_ORDERING(name, slug, unit) [LW_ORDERING_##name] = {LW_LIST_ORDERING, slug, unit},
#define LW_KNOWN_CONDITION(name, slug) [LW_CONDITION_##name] = {LW_LIST_CONDITIONS, slug, NULL},
#define LW_KNOWN_LOAD(name, slug) [LW_LOAD_OF_##name] = {LW_LIST_LOADS, slug, NULL},
#define LW_KNOWN_SOIL(name, slug) [LW_SOIL_OF_##name] = {LW_LIST_SOILS, slug, NULL},
#define LW_KNOWN_INTERFACE(name, slug) [LW_ASSUMED_##name] = {LW_LIST_INTERFACES, slug, NULL},
#define LW_KNOWN_MATERIAL(name, slug) [LW_MATERIAL_OF_##name] = {LW_LIST_MATERIALS, slug, NULL},
#define LW_KNOWN_PLANT(name, slug) [LW_PLANT_OF_##name] = {LW_LIST_PLANT, slug, NULL},
    LW_CLEARANCES(LW_KNOWN_CLEARANCE) LW_THRESHOLDS(LW_KNOWN_THRESHOLD) LW_FENCES(LW_KNOWN_FENCE)
        LW_ORDERINGS(LW_KNOWN_ORDERING) LW_CONDITIONS(LW_KNOWN_CONDITION) LW_LOADS_ASKED(LW_KNOWN_LOAD)
            LW_SOILS_ASKED(LW_KNOWN_SOIL) LW_INTERFACES_ASKED(LW_KNOWN_INTERFACE)
                LW_MATERIALS_ASKED(LW_KNOWN_MATERIAL) LW_PLANT_ASKED(LW_KNOWN_PLANT)
#undef LW_KNOWN_CLEARANCE
#undef LW_KNOWN_THRESHOLD
#undef LW_KNOWN_FENCE
#undef LW_KNOWN_ORDERING
#undef LW_KNOWN_CONDITION
#undef LW_KNOWN_LOAD
#undef LW_KNOWN_SOIL
#undef LW_KNOWN_INTERFACE
#undef LW_KNOWN_MATERIAL
#undef LW_KNOWN_PLANT
};

void lw_known_link(lw_tables *tables) {
  for (int i = 0; i < LW_KNOWN_COUNT; i++)
    tables->known[i] = (short)lw_names_exactly(tables, KNOWN[i].list, KNOWN[i].slug);
}

const char *lw_known_slug(lw_known_row row) {
  return KNOWN[row].slug;
}

lw_list lw_known_list(lw_known_row row) {
  return KNOWN[row].list;
}

const char *lw_known_unit(lw_known_row row) {
  return KNOWN[row].unit;
}

bool lw_known_is(lw_list list, const char *slug) {
  for (int i = 0; i < LW_KNOWN_COUNT; i++)
    if (KNOWN[i].list == list && strcmp(KNOWN[i].slug, slug) == 0) return true;
  return false;
}

const char *lw_known_nearest(lw_list list, const char *slug) {
  int best = (int)strlen(slug) / 3 + 1;
  const char *nearest = NULL;
  for (int i = 0; i < LW_KNOWN_COUNT; i++) {
    int distance = KNOWN[i].list == list ? lw_edit_distance(KNOWN[i].slug, slug) : best;
    if (distance >= best) continue;
    best = distance;
    nearest = KNOWN[i].slug;
  }
  return nearest;
}

double lw_known_value(const lw_tables *tables, lw_known_row row) {
  int i = tables->known[row];
  switch (KNOWN[row].list) {
  case LW_LIST_THRESHOLDS: return tables->threshold[i].value;
  case LW_LIST_FENCES: return tables->fence[i].value;
  default: return tables->ordering[i].value;
  }
}

double lw_known_garden_kpa(const lw_tables *tables, double held_m) {
  double full = lw_known_value(tables, LW_THRESHOLD_FULL_LOAD_HEIGHT),
         share = fmin(fmax(held_m, 0.0) / full, 1.0);
  return fmax(lw_known_load(tables, LW_LOAD_OF_GARDEN)->value,
              share * lw_known_load(tables, LW_LOAD_OF_GARDEN_FULL)->value);
}

const lw_load_row *lw_known_load(const lw_tables *tables, lw_known_row row) {
  int i = tables->known[row];
  return i < 0 ? NULL : &tables->load[i];
}

const lw_condition_row *lw_known_condition(const lw_tables *tables, lw_known_row row) {
  int i = tables->known[row];
  return i < 0 ? NULL : &tables->condition[i];
}

const lw_clearance_row *lw_known_clearance(const lw_tables *tables, lw_known_row row) {
  int i = tables->known[row];
  return i < 0 ? NULL : &tables->clearance[i];
}

const lw_threshold_row *lw_known_threshold(const lw_tables *tables, lw_known_row row) {
  return &tables->threshold[tables->known[row]];
}

const lw_soil_row *lw_known_soil(const lw_tables *tables, lw_known_row row) {
  return &tables->soil[tables->known[row]];
}

const lw_interface_row *lw_known_interface(const lw_tables *tables, lw_known_row row) {
  return &tables->interface_[tables->known[row]];
}

const lw_material_row *lw_known_material(const lw_tables *tables, lw_known_row row) {
  return &tables->material[tables->known[row]];
}

const lw_plant_row *lw_known_plant(const lw_tables *tables, lw_known_row row) {
  return &tables->plant[tables->known[row]];
}
