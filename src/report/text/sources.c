/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "hazard.h"
#include "parts.h"
#include "rests_on.h"
#include "report/cited.h"
#include "tables/titles.h"

/* Cautions that fit this wall, and the sources of what was printed. */

static void caution(const lw_page *page, const lw_hazard_row *row) {
  char text[LW_HAZARD_WORDS_MAX];
  lw_hazard_words(row, page->units, text, sizeof text);
  lw_page_say(page, "  - ", text);
}

void lw_text_cautions(const lw_page *page, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  if (v->reasons.caution_count == 0) return;
  lw_page_heading(page, "Mind");
  for (int i = 0; i < v->reasons.caution_count; i++) caution(page, v->reasons.caution[i]);
  if (result->wall.section.known) lw_text_keep_out(page, result);
}

static void say(const lw_page *page, const lw_cited *cited, lw_cited_mark mark, const char *prefix) {
  lw_text line = {0};
  lw_cited_list(cited, mark, &line);
  if (line.length > 0) lw_page_say(page, prefix, line.data);
  page->out->failed = page->out->failed || line.failed;
  lw_text_free(&line);
}

/* Of what is only printed the sources stand where it is cited. */
static void note(void *context, const lw_rest *rest) {
  if (rest->decides) lw_cited_note_seen(context, rest->source, rest->marked ? rest->seen : LW_SEEN);
}

static void say_all(const lw_page *page, const lw_cited *cited) {
  lw_page_heading(page, "Sources (docs/sources.md says what each key is)");
  say(page, cited, LW_CITED_READ, "  ");
  say(page, cited, LW_CITED_MEMORY, "  From memory, not read: ");
  say(page, cited, LW_CITED_UNMARKED, "  Cited besides: ");
}

/* Whatever is cited above stands in the list, and what cautions and limits rest on. */
void lw_text_sources(const lw_page *page, const lw_result *result) {
  lw_cited cited = {.count = 0};
  lw_rests_each(result, note, &cited);
  if (page->out->data) lw_cited_note(&cited, page->out->data + page->from, LW_CITED_UNMARKED);
  say_all(page, &cited);
}

/* What is printed of the keys: those of a mark, or this project's own, which nobody reads in print. */
typedef struct titled {
  const char *heading;
  lw_cited_mark mark;
  bool own;
} titled;

/* Each key and what it is, below a heading. */
static void say_titles(const lw_page *page, const lw_cited *cited, const titled *of) {
  bool headed = of->heading[0] == '\0';
  for (int i = 0; i < cited->count; i++) {
    char prefix[LW_CITED_BYTES + 8];
    const char *title = lw_source_title(cited->key[i]);
    bool own = strcmp(cited->key[i], "LOWWALL") == 0;
    if (own != of->own || (!own && cited->mark[i] != of->mark)) continue;
    if (!headed) lw_page_part(page, of->heading);
    headed = true;
    lw_print(prefix, sizeof prefix, "  %-14s ", cited->key[i]);
    lw_page_say(page, prefix, title ? title : "no source of ours: it stands on the sheet");
  }
}

void lw_text_sources_cited(const lw_page *page, const lw_result *result) {
  static const titled groups[] = {{"", LW_CITED_READ, false},
                                  {"From memory, not read", LW_CITED_MEMORY, false},
                                  {"Cited besides", LW_CITED_UNMARKED, false},
                                  {"Not from print", LW_CITED_MEMORY, true}};
  lw_cited known = {.count = 0}, cited = {.count = 0};
  lw_rests_each(result, note, &known);
  if (page->out->data) lw_cited_note(&cited, page->out->data + page->from, LW_CITED_UNMARKED);
  for (int i = 0; i < cited.count; i++) {
    for (int k = 0; k < known.count; k++)
      if (strcmp(cited.key[i], known.key[k]) == 0) cited.mark[i] = known.mark[k];
  }
  lw_page_heading(page, "Sources (docs/sources.md says what was taken from each)");
  for (size_t i = 0; i < sizeof groups / sizeof *groups; i++) say_titles(page, &cited, &groups[i]);
}
