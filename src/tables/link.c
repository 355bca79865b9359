/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "shape.h"

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
  for (int i = 0; i < tables->limit_count; i++)
    if (strcmp(tables->limit[i].place, place) == 0) return i;
  return -1;
}

static lw_status link_places(lw_tables *tables, lw_error *error) {
  for (int i = 0; i < tables->limit_count; i++) {
    lw_limit_row *row = &tables->limit[i];
    const char *within = row->within;
    char place[sizeof row->within];
    row->place_row = first_of(tables, row->place);
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

static int cue_of(const char *word) {
  static const char *const slugs[] = {
#define LW_CUE_SLUG(name, slug) slug,
      LW_CUES(LW_CUE_SLUG)
#undef LW_CUE_SLUG
  };
  for (int i = 0; i < LW_CUE_COUNT; i++)
    if (strcmp(slugs[i], word) == 0) return i;
  return -1;
}

static lw_status link_cues(lw_tables *tables, lw_error *error) {
  for (int i = 0; i < tables->hazard_count; i++) {
    lw_hazard_row *row = &tables->hazard[i];
    const char *when = row->when;
    char word[sizeof row->when];
    while (next_word(&when, word, sizeof word)) {
      int cue = cue_of(word);
      if (cue < 0)
        return wrong(error, "hazards", row->id, word, "no wall has this cue: docs/verdict.md lists them");
      row->cues |= 1u << cue;
    }
  }
  return LW_OK;
}

lw_status lw_tables_link(lw_tables *tables, lw_error *error) {
  lw_status status = link_places(tables, error);
  return status == LW_OK ? link_cues(tables, error) : status;
}
