/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "find.h"

#include "fold.h"
#include "names.h"

#include <string.h>

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

int lw_name_index(const lw_tables *tables, lw_list list, const char *name) {
  char folded[LW_FOLDED_MAX];
  int exactly = lw_names_exactly(tables, list, name), count = lw_list_rows(tables, list);
  if (exactly >= 0) return exactly;
  if (lw_fold(name, strlen(name), folded) == 0) return -1;
  for (int i = 0; i < count; i++)
    if (lw_fold_listed(lw_list_name(tables, list, i), folded)) return i;
  for (int i = 0; i < count; i++)
    if (lw_fold_listed(lw_list_aliases(tables, list, i), folded)) return i;
  return -1;
}

const lw_load_row *lw_tables_load(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, LW_LIST_LOADS, slug);
  return i < 0 ? NULL : &tables->load[i];
}

const lw_material_row *lw_tables_material(const lw_tables *tables, const char *name) {
  int i = lw_name_index(tables, LW_LIST_MATERIALS, name);
  return i < 0 ? NULL : &tables->material[i];
}

const lw_plant_row *lw_tables_plant(const lw_tables *tables, const char *name) {
  int i = lw_name_index(tables, LW_LIST_PLANT, name);
  return i < 0 ? NULL : &tables->plant[i];
}

const lw_conventions_row *lw_tables_conventions(const lw_tables *tables, const char *name) {
  int i = lw_name_index(tables, LW_LIST_CONVENTIONS, name);
  return i < 0 ? NULL : &tables->conventions[i];
}

const lw_interface_row *lw_tables_interface(const lw_tables *tables, const char *name) {
  int i = lw_name_index(tables, LW_LIST_INTERFACES, name);
  return i < 0 ? NULL : &tables->interface_[i];
}

const lw_condition_row *lw_tables_condition(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, LW_LIST_CONDITIONS, slug);
  return i < 0 ? NULL : &tables->condition[i];
}

const lw_clearance_row *lw_tables_clearance(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, LW_LIST_CLEARANCES, slug);
  return i < 0 ? NULL : &tables->clearance[i];
}

const lw_threshold_row *lw_tables_threshold(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, LW_LIST_THRESHOLDS, slug);
  return i < 0 ? NULL : &tables->threshold[i];
}

const lw_threshold_row *lw_tables_fence(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, LW_LIST_FENCES, slug);
  return i < 0 ? NULL : &tables->fence[i];
}

const lw_ordering_row *lw_tables_ordering(const lw_tables *tables, const char *slug) {
  int i = lw_name_index(tables, LW_LIST_ORDERING, slug);
  return i < 0 ? NULL : &tables->ordering[i];
}

const lw_factor_row *lw_tables_factor(const lw_tables *tables, const char *set, const char *quantity) {
  int first = lw_name_index(tables, LW_LIST_FACTOR_SETS, set);
  if (first < 0) return NULL;
  for (int i = first; i < tables->factor_count; i++)
    if (strcmp(tables->factor[i].factor_set, tables->factor[first].factor_set) == 0 &&
        strcmp(tables->factor[i].quantity, quantity) == 0)
      return &tables->factor[i];
  return NULL;
}

int lw_tables_factor_set(const lw_tables *tables, const char *set) {
  return lw_name_index(tables, LW_LIST_FACTOR_SETS, set);
}

bool lw_tables_has_factor_set(const lw_tables *tables, const char *set) {
  return lw_tables_factor_set(tables, set) >= 0;
}

const char *lw_tables_nearest(const lw_tables *tables, const char *table, const char *stood) {
  lw_list list = lw_list_called(table);
  char folded[LW_FOLDED_MAX];
  if (list == LW_LIST_COUNT) return NULL;
  /* A third of the letters may be wrong: beyond that the hint would only mislead. */
  int best = (int)lw_fold(stood, strlen(stood), folded) / 3 + 1;
  const char *nearest = NULL;
  for (int i = 0; i < lw_list_rows(tables, list); i++) {
    const char *name = lw_list_name(tables, list, i);
    int distance = distance_to(name, folded),
        by_alias = distance_to(lw_list_aliases(tables, list, i), folded);
    if (by_alias < distance) distance = by_alias;
    if (distance >= best) continue;
    best = distance;
    nearest = name;
  }
  return nearest;
}
