/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "json.h"
#include "report/back_rows.h"
#include "report/cited.h"
#include "report/fluid.h"
#include "report/difference.h"
#include "report/faces.h"
#include "report/text/echo.h"
#include "report/text/loads.h"
#include "report/text/said.h"

/* Every source that a value of this wall rests on, once. A source that is from memory anywhere is from
 * memory; `seen` is empty where the place that names it carries no mark: docs/sources.md then says it. */

static void note(json_t *list, const char *source, const char *seen) {
  size_t at;
  json_t *entry;
  if (source[0] == '\0') return;
  json_array_foreach(list, at, entry) {
    const char *known = json_string_value(json_object_get(entry, "source"));
    if (known == NULL || strcmp(known, source) != 0) continue;
    const char *before = json_string_value(json_object_get(entry, "seen"));
    bool better = before != NULL && (before[0] == '\0' || strcmp(seen, lw_seen_word(LW_MEMORY)) == 0);
    if (better && seen[0] != '\0') lw_json_set_text(entry, "seen", seen);
    return;
  }
  entry = lw_json_entry(list);
  lw_json_set_text(entry, "source", source);
  lw_json_set_text(entry, "seen", seen);
}

static void of_checks(json_t *list, const lw_result *result) {
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    for (int k = 0; k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      if (check.by) note(list, check.by->from.source, lw_seen_word(lw_check_seen(&check, s->kind)));
    }
  }
}

static void of_soil(json_t *list, const lw_result *result, const lw_case_soil *soil) {
  const lw_soil_row *row =
      soil->name.origin == LW_GIVEN ? lw_tables_soil(result->tables, soil->name.text) : NULL;
  if (!row) return;
  if (soil->friction.origin == LW_TABLE) note(list, row->from.source, lw_seen_word(row->from.seen));
  if (soil->unit_weight.origin != LW_TABLE) return;
  note(list, row->weight_from.source, lw_seen_word(row->weight_from.seen));
}

static void of_back(json_t *list, const lw_result *result) {
  const lw_interface_row *rows[] = {lw_back_row(result), lw_back_membrane(result)};
  for (int i = 0; i < 2; i++)
    if (rows[i]) note(list, rows[i]->from.source, lw_seen_word(rows[i]->from.seen));
  lw_fluid fluid = lw_fluid_of(result);
  if (fluid.row) note(list, fluid.row->fluid_from.source, lw_seen_word(fluid.row->fluid_from.seen));
}

static void of_verdict(json_t *list, const lw_verdict *v) {
  for (int i = 0; i < v->limit_count; i++) {
    note(list, v->limit[i].row->from.source, lw_seen_word(v->limit[i].row->from.seen));
  }
  for (int i = 0; i < v->reasons.count; i++) note(list, v->reasons.reason[i].source, "");
  for (int i = 0; i < v->reasons.caution_count; i++) {
    note(list, v->reasons.caution[i]->from.source, lw_seen_word(v->reasons.caution[i]->from.seen));
  }
}

static void of_construction(json_t *list, const lw_result *result) {
  const lw_plant_row *row = result->construction.plant.row;
  if (!result->construction.studied) return;
  note(list, "[INGOLD-1979 29(3)]", lw_seen_word(LW_MEMORY));
  if (row) note(list, row->from.source, lw_seen_word(row->from.seen));
}

static void of_faces(json_t *list, const lw_result *result) {
  const lw_origin_note *from[LW_FACES_SOURCES];
  int count = lw_faces_sources(result, from);
  for (int i = 0; i < count; i++) note(list, from[i]->source, lw_seen_word(from[i]->seen));
}

static void of_value(void *context, const lw_echo *echo) {
  note(context, echo->source, "");
}

static void of_conventions(json_t *list, const lw_result *result) {
  const lw_words *book = &result->given.method.conventions;
  const lw_conventions_row *row =
      book->origin == LW_GIVEN ? lw_tables_conventions(result->tables, book->text) : NULL;
  if (row) note(list, row->from.source, lw_seen_word(row->from.seen));
}

typedef struct citing {
  json_t *list;
  lw_cited *known;
} citing;

/* A source of which no key stands in the list yet, as it is cited: its key and where in it. */
static void of_text(const citing *c, const char *text) {
  for (const char *at = strchr(text, '['); at != NULL; at = strchr(at + 1, '[')) {
    char source[160];
    size_t length = strcspn(at, "]");
    if (at[length] == '\0' || length + 2 > sizeof source) continue;
    lw_print(source, sizeof source, "%.*s", (int)length + 1, at);
    int before = c->known->count;
    lw_cited_note(c->known, source, LW_CITED_UNMARKED);
    if (c->known->count > before) note(c->list, source, "");
  }
}

/* All that the document says, but what the sheet says: a title may look like a source. */
static void of_document(const citing *c, json_t *value) {
  const char *key;
  json_t *part;
  size_t at;
  if (json_is_string(value)) of_text(c, json_string_value(value));
  json_array_foreach(value, at, part) of_document(c, part);
  json_object_foreach(value, key, part) {
    if (strcmp(key, "given") != 0 && strcmp(key, "title") != 0 && strcmp(key, "mark") != 0)
      of_document(c, part);
  }
}

/* Last of all, so that nothing is cited after it. */
void lw_json_sources_cited(json_t *root) {
  json_t *list = json_object_get(root, "sources"), *entry;
  lw_cited known = {.count = 0};
  size_t at;
  json_array_foreach(list, at, entry) {
    const char *source = json_string_value(json_object_get(entry, "source"));
    if (source != NULL) lw_cited_note(&known, source, LW_CITED_READ);
  }
  of_document(&(citing){list, &known}, root);
}

void lw_json_sources(json_t *root, const lw_result *result) {
  const lw_bearing_routine *bearing = lw_bearing_routine_of(result->wall.method.bearing);
  json_t *list = lw_json_list(root, "sources");
  note(list, lw_thrust_source(result), "");
  note(list, lw_loads_source(result), lw_seen_word(LW_MEMORY));
  if (bearing) note(list, bearing->source, "");
  of_conventions(list, result);
  of_checks(list, result);
  for (int i = 0; i < LW_SOIL_MAX; i++) of_soil(list, result, &result->given.ground.soil[i]);
  of_soil(list, result, &result->given.ground.footing);
  of_back(list, result);
  lw_echo_each(result, of_value, list);
  of_faces(list, result);
  of_construction(list, result);
  of_verdict(list, &result->verdict);
}
