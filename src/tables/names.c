/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "names.h"

#include <stddef.h>
#include <string.h>

/* The names of all lists, and where each is found: a schedule asks for the same few again and again. */

/* Where a list stands inside the tables. aliases_offset 0: it has none. */
typedef struct shelf {
  const char *table;
  size_t rows, row_size, count, name_offset, aliases_offset;
} shelf;

#define SHELF(table_, row, field, count_, name_, aliases_) \
  { \
    table_, offsetof(lw_tables, field), sizeof(row), offsetof(lw_tables, count_), offsetof(row, name_), \
        (aliases_) \
  }
static const shelf SHELVES[LW_LIST_COUNT] = {
    [LW_LIST_SOILS] = SHELF("soils", lw_soil_row, soil, soil_count, name, offsetof(lw_soil_row, aliases)),
    [LW_LIST_INTERFACES] = SHELF("interfaces", lw_interface_row, interface_, interface_count, name, 0),
    [LW_LIST_MATERIALS] = SHELF("materials", lw_material_row, material, material_count, name,
                                offsetof(lw_material_row, aliases)),
    [LW_LIST_PLANT] = SHELF("plant", lw_plant_row, plant, plant_count, name, offsetof(lw_plant_row, aliases)),
    [LW_LIST_CONVENTIONS] = SHELF("conventions", lw_conventions_row, conventions, conventions_count, name, 0),
    [LW_LIST_LOADS] = SHELF("loads", lw_load_row, load, load_count, slug, 0),
    [LW_LIST_PLACES] =
        SHELF("places", lw_limit_row, limit, limit_count, place, offsetof(lw_limit_row, aliases)),
    [LW_LIST_FACTOR_SETS] = SHELF("formats", lw_factor_row, factor, factor_count, factor_set, 0),
    [LW_LIST_CONDITIONS] = SHELF("conditions", lw_condition_row, condition, condition_count, slug, 0),
    [LW_LIST_CLEARANCES] = SHELF("clearances", lw_clearance_row, clearance, clearance_count, slug, 0),
    [LW_LIST_THRESHOLDS] = SHELF("thresholds", lw_threshold_row, threshold, threshold_count, slug, 0),
    [LW_LIST_FENCES] = SHELF("fences", lw_threshold_row, fence, fence_count, slug, 0),
    [LW_LIST_ORDERING] = SHELF("ordering", lw_ordering_row, ordering, ordering_count, slug, 0),
};
#undef SHELF

static const char *row_of(const lw_tables *tables, const shelf *s, int row) {
  return (const char *)tables + s->rows + (size_t)row * s->row_size;
}

int lw_list_rows(const lw_tables *tables, lw_list list) {
  int count;
  memcpy(&count, (const char *)tables + SHELVES[list].count, sizeof count);
  return count;
}

const char *lw_list_name(const lw_tables *tables, lw_list list, int row) {
  return row_of(tables, &SHELVES[list], row) + SHELVES[list].name_offset;
}

const char *lw_list_aliases(const lw_tables *tables, lw_list list, int row) {
  const shelf *s = &SHELVES[list];
  return s->aliases_offset ? row_of(tables, s, row) + s->aliases_offset : "";
}

const char *lw_list_table(lw_list list) {
  return SHELVES[list].table;
}

lw_list lw_list_called(const char *table) {
  int list = 0;
  while (list < LW_LIST_COUNT && strcmp(SHELVES[list].table, table) != 0) list++;
  return (lw_list)list;
}

/* Fowler, Noll and Vo's hash. */
static unsigned slot_of(lw_list list, const char *name) {
  unsigned hash = 2166136261u ^ (unsigned)list;
  for (const char *c = name; *c != '\0'; c++) hash = (hash ^ (unsigned char)*c) * 16777619u;
  return (hash ^ hash >> 15) % LW_NAME_SLOTS;
}

/* The slot of a name, or the free one where it would stand. */
static unsigned find(const lw_tables *tables, lw_list list, const char *name) {
  unsigned at = slot_of(list, name);
  for (; tables->slot[at].taken; at = (at + 1) % LW_NAME_SLOTS) {
    const lw_name_slot *slot = &tables->slot[at];
    if (slot->list == (int)list && strcmp(lw_list_name(tables, list, slot->row), name) == 0) break;
  }
  return at;
}

void lw_names_index(lw_tables *tables) {
  memset(tables->slot, 0, sizeof tables->slot);
  for (int list = 0; list < LW_LIST_COUNT; list++)
    for (int row = 0; row < lw_list_rows(tables, (lw_list)list); row++) {
      unsigned at = find(tables, (lw_list)list, lw_list_name(tables, (lw_list)list, row));
      /* Of rows with one name, such as those of a place, the first. */
      if (!tables->slot[at].taken) tables->slot[at] = (lw_name_slot){true, (short)list, (short)row};
    }
}

int lw_names_exactly(const lw_tables *tables, lw_list list, const char *name) {
  const lw_name_slot *slot = &tables->slot[find(tables, list, name)];
  return slot->taken ? slot->row : -1;
}
