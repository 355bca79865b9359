/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "names.h"
#include "quote.h"
#include "shape.h"

#include <math.h>
#include <string.h>

/* Words of the rows that every wall asks about, turned into numbers once. */

static lw_status wrong(lw_error *error, const char *file, const char *row, const char *stood,
                       const char *wanted) {
  return lw_error_set(error, LW_FAULTS, LW_REASON_NONE, "%s.csv, the row of %.60s: \"%.60s\" stood there; %s",
                      file, row, stood, wanted);
}

/* The next word of a "|"-separated list, cut to fit; false at its end. */
static bool next_word(const char **list, char *word, size_t size) {
  if ((*list)[0] == '\0') return false;
  size_t length = strcspn(*list, "|");
  lw_print(word, size, "%.*s", (int)length, *list);
  *list += length + ((*list)[length] == '|' ? 1 : 0);
  return true;
}

/* Rows of one place stand together or apart; the first of them stands for the place. */
static int first_of(const lw_tables *tables, const char *place) {
  return lw_names_exactly(tables, LW_LIST_PLACES, place);
}

static lw_status link_places(lw_tables *tables, lw_error *error) {
  for (int i = 0; i < tables->limit_count; i++) {
    lw_limit_row *row = &tables->limit[i];
    const char *within = row->within;
    char place[sizeof row->within];
    row->place_row = first_of(tables, row->place);
    tables->limit_place[i] = (short)row->place_row;
    for (row->around_count = 0; next_word(&within, place, sizeof place);) {
      int around = first_of(tables, place);
      /* A place around it may have no row of its own. */
      if (around < 0) continue;
      if (row->around_count == LW_AROUND_MAX)
        return wrong(error, "limits", row->id, row->within, "a place lies within four others at most");
      row->around[row->around_count++] = around;
    }
  }
  return LW_OK;
}

/* Where a word stands among others; their count where it does not. */
static int index_of(const char *const *words, int count, const char *word) {
  int i = 0;
  while (i < count && strcmp(words[i], word) != 0) i++;
  return i;
}

static unsigned narrow_of(const char *word) {
  static const char *const slugs[] = {
#define LW_ONLY_IF_SLUG(name, slug) slug,
      LW_ONLY_IFS(LW_ONLY_IF_SLUG)
#undef LW_ONLY_IF_SLUG
  };
  return (unsigned)index_of(slugs, LW_ONLY_IF_OTHER, word);
}

static bool keeps_off(const lw_limit_row *row) {
  const double asked[] = {
      row->min_boundary_m,          row->min_boundary_per_height, row->min_building_m,
      row->min_building_per_height, row->min_other_wall_m,        row->min_other_wall_per_height,
      row->min_service_m,           row->min_waterbody_m,         row->min_public_way_m};
  bool any = row->no_surcharge;
  for (size_t i = 0; i < sizeof asked / sizeof *asked; i++) any = any || isfinite(asked[i]);
  return any;
}

/* A depth of cut or fill, a fence, a fall or a street is not the height of the wall. */
static bool of_the_wall(const lw_limit_row *row) {
  bool asks = row->trigger != LW_BARRIER_ABOVE && row->trigger != LW_DESIGN_ABOVE;
  bool its_height = row->measured != LW_HEIGHT_FENCE && row->measured != LW_HEIGHT_NATURAL &&
                    !row->not_a_wall_height && !row->fence_counts;
  bool anywhere = row->narrows == 0 && !isfinite(row->street_within_m) && !isfinite(row->boundary_within_m);
  bool read = row->from.seen != LW_MEMORY && !row->superseded && !row->unsure;
  return asks && its_height && anywhere && read;
}

/* Leave from planning, or by the terms of a warranty, is not leave to build. */
static bool is_of_building(const char *regime) {
  return lw_tables_listed("building|planning-and-building|building-and-siting|any", regime);
}

static void link_words(lw_tables *tables) {
  for (int i = 0; i < tables->limit_count; i++) {
    lw_limit_row *row = &tables->limit[i];
    const char *only = row->only_if;
    char word[sizeof row->only_if];
    while (next_word(&only, word, sizeof word)) row->narrows |= 1u << narrow_of(word);
    const char *at_any = row->any_height_if;
    while (next_word(&at_any, word, sizeof word)) row->any_height |= 1u << narrow_of(word);
    row->of_default = strcmp(row->place, "default") == 0;
    row->unsure = strcmp(row->confidence, "low") == 0;
    row->of_standard = strcmp(row->regime, "standard") == 0;
    row->keeps_off = keeps_off(row);
    row->of_the_wall = of_the_wall(row);
    row->clears = row->of_the_wall && row->all_read && is_of_building(row->regime);
  }
  for (int i = 0; i < tables->condition_count; i++) {
    lw_condition_row *row = &tables->condition[i];
    row->for_engineer = strcmp(row->who, "engineer") == 0;
    row->for_council = strcmp(row->who, "council") == 0;
  }
  for (int i = 0; i < tables->clearance_count; i++) {
    lw_clearance_row *row = &tables->clearance[i];
    bool lower = strcmp(row->height_of, "lower-wall") == 0, total = strcmp(row->height_of, "total") == 0;
    row->of = lower ? LW_OF_LOWER_WALL : total ? LW_OF_TOTAL : LW_OF_GREATEST;
  }
}

static int cue_of(const char *word) {
  static const char *const slugs[] = {
#define LW_CUE_SLUG(name, slug) slug,
      LW_CUES(LW_CUE_SLUG)
#undef LW_CUE_SLUG
  };
  return index_of(slugs, LW_CUE_COUNT, word);
}

static lw_status link_cues(lw_tables *tables, lw_error *error) {
  for (int i = 0; i < tables->hazard_count; i++) {
    lw_hazard_row *row = &tables->hazard[i];
    const char *when = row->when;
    char word[sizeof row->when];
    while (next_word(&when, word, sizeof word)) {
      int cue = cue_of(word);
      if (cue == LW_CUE_COUNT)
        return wrong(error, "hazards", row->id, word, "no wall has this cue: docs/verdict.md lists them");
      row->cues |= 1u << cue;
    }
  }
  return LW_OK;
}

static lw_factor need_of(const char *quantity) {
  static const char *const quantities[] = {
#define LW_FACTOR_QUANTITY(name, quantity) quantity,
      LW_FACTORS(LW_FACTOR_QUANTITY)
#undef LW_FACTOR_QUANTITY
  };
  return (lw_factor)index_of(quantities, LW_FACTOR_COUNT, quantity);
}

/* A value that is allowed holds a reserve. Whether the tables have the figure at all is seen later. */
static double reserve_of(const lw_tables *tables, int need) {
  bool has = tables->known[LW_THRESHOLD_BEARING_RESERVE] >= 0;
  return need == LW_FACTOR_BEARING_PRESUMPTIVE && has ? lw_known_value(tables, LW_THRESHOLD_BEARING_RESERVE)
                                                      : 1.0;
}

/* A row "includes-NAME" takes the set NAME in. Backwards, so that each row finds the one after it. */
static void link_factors(lw_tables *tables) {
  static const char includes[] = "includes-";
  size_t length = sizeof includes - 1;
  int after[LW_FACTOR_ROWS]; /* of each set, by its first row */
  for (int i = 0; i < tables->factor_count; i++) after[i] = -1;
  for (int i = tables->factor_count - 1; i >= 0; i--) {
    lw_factor_row *row = &tables->factor[i];
    bool takes_in = strncmp(row->quantity, includes, length) == 0;
    row->need = (short)need_of(row->quantity);
    row->reserve = reserve_of(tables, row->need);
    row->set = lw_names_exactly(tables, LW_LIST_FACTOR_SETS, row->factor_set);
    row->next = after[row->set];
    row->includes = takes_in ? lw_names_exactly(tables, LW_LIST_FACTOR_SETS, row->quantity + length) : -1;
    after[row->set] = i;
  }
  for (int i = 0; i < tables->factor_count; i++) {
    int taken = tables->factor[i].includes;
    for (int k = taken; k >= 0; k = tables->factor[k].next) tables->factor[k].taken_in = true;
  }
}

/* One cell with its quotes said. */
static lw_status say_cell(const lw_tables *tables, char *cell, size_t size, lw_text *said, char *stood) {
  if (!strchr(cell, '{')) return LW_OK;
  lw_text_clear(said);
  lw_status status = lw_quote_all(tables, cell, said, stood);
  if (status != LW_OK) return status;
  if (said->length >= size) return LW_TOO_MANY;
  memcpy(cell, said->data, said->length + 1);
  return LW_OK;
}

/* One row's sentences. Its first column names it. */
static lw_status say_row(const lw_tables *tables, const lw_shape *shape, char *row, lw_text *said,
                         lw_error *error) {
  char stood[LW_QUOTE_MAX] = "";
  lw_status status = LW_OK;
  for (size_t i = 0; i < shape->column_count && status == LW_OK; i++) {
    const lw_column *column = &shape->columns[i];
    if (column->type == LW_COLUMN_SAID)
      status = say_cell(tables, row + column->offset, column->size, said, stood);
  }
  const char *name = row + shape->columns[0].offset;
  if (status == LW_NO_MEMORY) return lw_error_set(error, status, LW_REASON_NONE, "out of memory");
  if (status == LW_TOO_MANY)
    return wrong(error, shape->name, name, stood, "the sentence is too long with it");
  if (status == LW_OK) return LW_OK;
  return wrong(error, shape->name, name, stood,
               "a figure is quoted as {table/slug} or {table/slug as form}, a measure stands as "
               "{3 m = 10 ft}: docs/verdict.md");
}

static lw_status say_quotes(lw_tables *tables, lw_error *error) {
  lw_text said = {0};
  lw_status status = LW_OK;
  const lw_shape *shape;
  for (size_t i = 0; status == LW_OK && (shape = lw_shape_at(i)) != NULL; i++) {
    char *rows = (char *)tables + shape->rows_offset;
    int count;
    memcpy(&count, (const char *)tables + shape->count_offset, sizeof count);
    for (int row = 0; row < count && status == LW_OK; row++)
      status = say_row(tables, shape, rows + (size_t)row * shape->row_size, &said, error);
  }
  lw_text_free(&said);
  return status;
}

lw_status lw_tables_link(lw_tables *tables, lw_error *error) {
  lw_names_index(tables);
  lw_known_link(tables);
  link_factors(tables);
  link_words(tables);
  lw_status status = link_places(tables, error);
  if (status == LW_OK) status = say_quotes(tables, error);
  return status == LW_OK ? link_cues(tables, error) : status;
}
