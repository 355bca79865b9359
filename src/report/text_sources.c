/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <string.h>

/* Cautions that fit this wall, and the sources of what was printed. */

void lw_text_cautions(const lw_page *page, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  if (v->caution_count == 0) return;
  lw_page_heading(page, "Mind");
  for (int i = 0; i < v->caution_count; i++) lw_page_say(page, "  - ", v->caution[i]->caution);
  if (result->wall.section.known) lw_text_keep_out(page, result);
}

enum { KEYS = 96, KEY_MAX = 40 };

/* The keys of the sources, once each; one that is from memory anywhere is from memory. */
typedef struct lw_sources {
  int count;
  char key[KEYS][KEY_MAX];
  bool memory[KEYS];
} lw_sources;

static void note_key(lw_sources *sources, const char *key, bool memory) {
  for (int i = 0; i < sources->count; i++) {
    if (strcmp(sources->key[i], key) != 0) continue;
    sources->memory[i] = sources->memory[i] || memory;
    return;
  }
  if (sources->count >= KEYS) return;
  lw_print(sources->key[sources->count], KEY_MAX, "%s", key);
  sources->memory[sources->count++] = memory;
}

/* "[KEY locator] words [KEY locator]": the keys. */
static void note(lw_sources *sources, const char *source, lw_seen seen) {
  for (const char *at = strchr(source, '['); at != NULL; at = strchr(at + 1, '[')) {
    char key[KEY_MAX];
    lw_print(key, sizeof key, "%.*s", (int)strcspn(at + 1, " ]"), at + 1);
    note_key(sources, key, seen == LW_MEMORY);
  }
}

static void of_checks(const lw_result *result, lw_sources *sources) {
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      const lw_check *check = &s->check[k];
      if (check->by) note(sources, check->by->from.source, lw_check_seen(check, s->kind));
    }
  }
}

static void of_soil(const lw_result *result, const lw_case_soil *soil, lw_sources *sources) {
  const lw_soil_row *row =
      soil->name.origin == LW_GIVEN ? lw_tables_soil(result->tables, soil->name.text) : NULL;
  if (!row) return;
  if (soil->friction.origin == LW_TABLE) note(sources, row->from.source, row->from.seen);
  if (soil->unit_weight.origin == LW_TABLE) note(sources, row->weight_from.source, row->weight_from.seen);
}

static void of_soils(const lw_result *result, lw_sources *sources) {
  for (int i = 0; i < LW_SOIL_MAX; i++) of_soil(result, &result->given.soil[i], sources);
  of_soil(result, &result->given.footing, sources);
}

static void of_method(const lw_result *result, lw_sources *sources) {
  note(sources, lw_pressure_routine_of(result->wall.method.pressure)->source, LW_SEEN);
  note(sources, lw_loads_source(result), LW_MEMORY);
  const lw_bearing_routine *bearing = lw_bearing_routine_of(result->wall.method.bearing);
  if (bearing) note(sources, bearing->source, LW_SEEN);
  const lw_words *book = &result->given.method_conventions;
  const lw_conventions_row *row =
      book->origin == LW_GIVEN ? lw_tables_conventions(result->tables, book->text) : NULL;
  if (row) note(sources, row->from.source, row->from.seen);
}

static void of_building(const lw_result *result, lw_sources *sources) {
  const lw_plant_row *row = result->building.plant.row;
  if (!result->building.studied) return;
  note(sources, "[INGOLD-1979 29(3)]", LW_MEMORY);
  if (row) note(sources, row->from.source, row->from.seen);
}

static void of_verdict(const lw_verdict *v, lw_sources *sources) {
  for (int i = 0; i < v->limit_count; i++)
    note(sources, v->limit[i].row->from.source, v->limit[i].row->from.seen);
  for (int i = 0; i < v->reason_count; i++) note(sources, v->reason[i].source, LW_SEEN);
  for (int i = 0; i < v->caution_count; i++)
    note(sources, v->caution[i]->from.source, v->caution[i]->from.seen);
}

static void say(const lw_page *page, const lw_sources *sources, bool memory, const char *prefix) {
  lw_text line = {0};
  for (int i = 0; i < sources->count; i++) {
    if (sources->memory[i] == memory)
      lw_text_addf(&line, "%s%s", line.length > 0 ? ", " : "", sources->key[i]);
  }
  if (line.length > 0) lw_page_say(page, prefix, line.data);
  page->out->failed = page->out->failed || line.failed;
  lw_text_free(&line);
}

static void of_value(void *context, const lw_echo *echo) {
  note(context, echo->source, LW_SEEN);
}

void lw_text_sources(const lw_page *page, const lw_result *result) {
  lw_sources sources = {.count = 0};
  of_method(result, &sources);
  of_checks(result, &sources);
  of_soils(result, &sources);
  lw_echo_each(result, of_value, &sources);
  of_building(result, &sources);
  of_verdict(&result->verdict, &sources);
  lw_page_heading(page, "Sources (docs/sources.md says what each key is)");
  say(page, &sources, false, "  ");
  say(page, &sources, true, "  From memory, not read: ");
}
