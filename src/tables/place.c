/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "base/print.h"
#include "find.h"
#include "fold.h"
#include "names.h"

/* Places, as people write them: "NSW", "Greater Bendigo", "Bristol, England". */

enum { PLACE_BYTES = 160, NAMES_BYTES = 120 };

static bool says(const char *words, const char *name) {
  char folded[LW_FOLDED_MAX];
  lw_fold(name, strlen(name), folded);
  return lw_fold_listed(words, folded);
}

/* The state or the country around it may have no row of its own. */
static bool lies_within(const lw_tables *tables, const lw_limit_row *place, const char *name) {
  int row = lw_name_index(tables, LW_LIST_PLACES, name);
  if (says(place->within, name) || says(place->country, name)) return true;
  for (int i = 0; i < place->around_count; i++)
    if (place->around[i] == row) return true;
  return false;
}

/* The name before the next comma; *names goes behind it. */
static bool next_name(const char **names, char name[PLACE_BYTES]) {
  size_t span = strcspn(*names, ",");
  if ((*names)[0] == '\0' || span >= PLACE_BYTES) return false;
  memcpy(name, *names, span);
  name[span] = '\0';
  *names += span + ((*names)[span] == ',');
  return true;
}

/* The row of the first of the names, if all that follow lie around it. */
static int row_of_first(const lw_tables *tables, const char *names) {
  char name[PLACE_BYTES];
  int row = next_name(&names, name) ? lw_name_index(tables, LW_LIST_PLACES, name) : -1;
  while (row >= 0 && next_name(&names, name))
    if (!lies_within(tables, &tables->limit[row], name)) row = -1;
  return row;
}

int lw_tables_place_row(const lw_tables *tables, const char *place) {
  int row = row_of_first(tables, place);
  for (const char *comma = strchr(place, ','); row < 0 && comma != NULL; comma = strchr(comma + 1, ','))
    row = row_of_first(tables, comma + 1);
  return row;
}

bool lw_tables_has_place(const lw_tables *tables, const char *place) {
  return lw_tables_place_row(tables, place) >= 0;
}

const char *lw_tables_place(const lw_tables *tables, const char *place) {
  int i = lw_tables_place_row(tables, place);
  return i < 0 ? NULL : tables->limit[i].place;
}

void lw_tables_add_places(const lw_tables *tables, int place_row, lw_places *places) {
  if (place_row < 0) return;
  const lw_limit_row *place = &tables->limit[place_row];
  places->at[place->place_row] = true;
  for (int i = 0; i < place->around_count; i++) places->at[place->around[i]] = true;
}

/* The first row of each place that is one on a map. */
static bool is_place(const lw_tables *tables, int row) {
  const lw_limit_row *limit = &tables->limit[row];
  return limit->place_row == row && !limit->of_default;
}

static bool is_first_of_country(const lw_tables *tables, int row) {
  int first = 0;
  while (strcmp(tables->limit[first].country, tables->limit[row].country) != 0) first++;
  return first == row;
}

/* As many as have room. */
static void add_name(const char *name, char *out, size_t size) {
  size_t used = strlen(out);
  if (used + strlen(", ") + strlen(name) >= size) return;
  lw_print(out + used, size - used, "%s%s", used > 0 ? ", " : "", name);
}

static void add_places_of(const lw_tables *tables, const char *country, char *out, size_t size) {
  for (int i = 0; i < tables->limit_count; i++)
    if (is_place(tables, i) && says(tables->limit[i].country, country))
      add_name(tables->limit[i].place, out, size);
}

static void add_countries(const lw_tables *tables, char *out, size_t size) {
  for (int i = 0; i < tables->limit_count; i++)
    if (is_place(tables, i) && is_first_of_country(tables, i)) add_name(tables->limit[i].country, out, size);
}

const char *lw_tables_place_hint(const lw_tables *tables, const char *stood, char *out, size_t size) {
  const char *nearest = lw_tables_nearest(tables, "places", stood);
  char names[NAMES_BYTES] = "";
  add_places_of(tables, stood, names, sizeof names);
  if (nearest != NULL) {
    lw_print(out, size, "the nearest on file is \"%s\"", nearest);
  } else if (names[0] != '\0') {
    lw_print(out, size, "on file there: %s", names);
  } else {
    add_countries(tables, names, sizeof names);
    lw_print(out, size, "its state or country; on file are places in %s", names);
  }
  return out;
}
