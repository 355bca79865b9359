/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold.h"
#include "names.h"

#include <string.h>

/* A list of names inside the tables, so that one search serves all of them. */
static bool list_names(const lw_tables *tables, const char *list, lw_name_list *names) {
#define LIST(word, rows, count_, row, name_, aliases_)                                                       \
  if (strcmp(list, word) == 0) {                                                                             \
    *names = (lw_name_list){(const char *)(rows), sizeof(row), (count_), offsetof(row, name_), (aliases_)};  \
    return true;                                                                                             \
  }
  LIST("soils", tables->soil, tables->soil_count, lw_soil_row, name, offsetof(lw_soil_row, aliases))
  LIST("interfaces", tables->interface_, tables->interface_count, lw_interface_row, name, 0)
  LIST("materials", tables->material, tables->material_count, lw_material_row, name,
       offsetof(lw_material_row, aliases))
  LIST("plant", tables->plant, tables->plant_count, lw_plant_row, name, offsetof(lw_plant_row, aliases))
  LIST("loads", tables->load, tables->load_count, lw_load_row, slug, 0)
  LIST("places", tables->limit, tables->limit_count, lw_limit_row, place, offsetof(lw_limit_row, aliases))
  LIST("formats", tables->format, tables->format_count, lw_format_row, format, 0)
  LIST("conditions", tables->condition, tables->condition_count, lw_condition_row, slug, 0)
  LIST("clearances", tables->clearance, tables->clearance_count, lw_clearance_row, slug, 0)
  LIST("thresholds", tables->threshold, tables->threshold_count, lw_threshold_row, slug, 0)
  LIST("fences", tables->fence, tables->fence_count, lw_threshold_row, slug, 0)
  LIST("ordering", tables->ordering, tables->ordering_count, lw_ordering_row, slug, 0)
#undef LIST
  return false;
}

static const char *row_of(const lw_name_list *names, int index) {
  return names->rows + (size_t)index * names->row_size;
}

static const char *name_of(const lw_name_list *names, int index) {
  return row_of(names, index) + names->name_offset;
}

static const char *aliases_of(const lw_name_list *names, int index) {
  return names->aliases_offset ? row_of(names, index) + names->aliases_offset : "";
}

/* Distance of a folded name to one name or to the nearest of "|"-separated ones; 0 is a match, and the
 * beginning of a name is nearly one. */
static int distance_to(const char *words, const char *folded) {
  int nearest = LW_FOLDED_MAX;
  while (words[0] != '\0') {
    char word[LW_FOLDED_MAX];
    size_t span = strcspn(words, "|");
    lw_fold(words, span, word);
    int distance = lw_edit_distance(word, folded);
    size_t typed = strlen(folded);
    if (typed >= 3 && distance > 1 && strncmp(word, folded, typed) == 0) distance = 1;
    if (distance < nearest) nearest = distance;
    words += span + (words[span] == '|');
  }
  return nearest;
}

static bool matches(const char *words, const char *folded) {
  while (words[0] != '\0') {
    char word[LW_FOLDED_MAX];
    size_t span = strcspn(words, "|");
    lw_fold(words, span, word);
    if (strcmp(word, folded) == 0) return true;
    words += span + (words[span] == '|');
  }
  return false;
}

int lw_name_index(const lw_tables *tables, const char *list, const char *name) {
  lw_name_list names;
  char folded[LW_FOLDED_MAX];
  if (!list_names(tables, list, &names)) return -1;
  /* A schedule asks for the same slugs a hundred thousand times: as written first, folded only then. */
  for (int i = 0; i < names.count; i++)
    if (name_of(&names, i)[0] == name[0] && strcmp(name_of(&names, i), name) == 0) return i;
  if (lw_fold(name, strlen(name), folded) == 0) return -1;
  for (int i = 0; i < names.count; i++)
    if (matches(name_of(&names, i), folded)) return i;
  for (int i = 0; i < names.count; i++)
    if (matches(aliases_of(&names, i), folded)) return i;
  return -1;
}

const lw_load_row *lw_tables_load(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, "loads", slug);
  return i < 0 ? NULL : &tables->load[i];
}

const lw_material_row *lw_tables_material(const lw_tables *tables, const char *name) {
  int i = lw_name_index(tables, "materials", name);
  return i < 0 ? NULL : &tables->material[i];
}

const lw_plant_row *lw_tables_plant(const lw_tables *tables, const char *name) {
  int i = lw_name_index(tables, "plant", name);
  return i < 0 ? NULL : &tables->plant[i];
}

const lw_interface_row *lw_tables_interface(const lw_tables *tables, const char *name) {
  int i = lw_name_index(tables, "interfaces", name);
  return i < 0 ? NULL : &tables->interface_[i];
}

const lw_condition_row *lw_tables_condition(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, "conditions", slug);
  return i < 0 ? NULL : &tables->condition[i];
}

const lw_clearance_row *lw_tables_clearance(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, "clearances", slug);
  return i < 0 ? NULL : &tables->clearance[i];
}

const lw_threshold_row *lw_tables_threshold(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, "thresholds", slug);
  return i < 0 ? NULL : &tables->threshold[i];
}

const lw_threshold_row *lw_tables_fence(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, "fences", slug);
  return i < 0 ? NULL : &tables->fence[i];
}

const lw_ordering_row *lw_tables_ordering(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, "ordering", slug);
  return i < 0 ? NULL : &tables->ordering[i];
}

const lw_format_row *lw_tables_format(const lw_tables *tables, const char *format, const char *quantity) {
  int first = lw_name_index(tables, "formats", format);
  if (first < 0) return NULL;
  for (int i = first; i < tables->format_count; i++)
    if (strcmp(tables->format[i].format, tables->format[first].format) == 0 &&
        strcmp(tables->format[i].quantity, quantity) == 0)
      return &tables->format[i];
  return NULL;
}

int lw_tables_format_index(const lw_tables *tables, const char *format) {
  return lw_name_index(tables, "formats", format);
}

bool lw_tables_has_format(const lw_tables *tables, const char *format) {
  return lw_tables_format_index(tables, format) >= 0;
}

bool lw_tables_has_place(const lw_tables *tables, const char *place) {
  return lw_name_index(tables, "places", place) >= 0;
}

int lw_tables_place_row(const lw_tables *tables, const char *place) {
  return lw_name_index(tables, "places", place);
}

const char *lw_tables_place(const lw_tables *tables, const char *place) {
  int i = lw_tables_place_row(tables, place);
  return i < 0 ? NULL : tables->limit[i].place;
}

bool lw_tables_limit_applies(const lw_tables *tables, const lw_limit_row *row, int place_row) {
  if (place_row < 0) return false;
  const lw_limit_row *place = &tables->limit[place_row];
  bool applies = row->place_row == place->place_row;
  for (int i = 0; i < place->around_count; i++) applies = applies || row->place_row == place->around[i];
  return applies;
}

const char *lw_tables_nearest(const lw_tables *tables, const char *list, const char *stood) {
  lw_name_list names;
  char folded[LW_FOLDED_MAX];
  if (!list_names(tables, list, &names)) return NULL;
  /* A third of the letters may be wrong: beyond that the hint would only mislead. */
  int best = (int)lw_fold(stood, strlen(stood), folded) / 3 + 1;
  const char *nearest = NULL;
  for (int i = 0; i < names.count; i++) {
    const char *name = name_of(&names, i);
    int distance = distance_to(name, folded), by_alias = distance_to(aliases_of(&names, i), folded);
    if (by_alias < distance) distance = by_alias;
    if (distance >= best) continue;
    best = distance;
    nearest = name;
  }
  return nearest;
}
