/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "json.h"
#include "report/cited.h"
#include "report/text/rests_on.h"

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

static void note_rest(void *context, const lw_rest *rest) {
  note(context, rest->source, rest->marked ? lw_seen_word(rest->seen) : "");
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
  lw_rests_each(result, note_rest, lw_json_list(root, "sources"));
}
