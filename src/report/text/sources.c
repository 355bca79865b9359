/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "echo.h"
#include "hazard.h"
#include "loads.h"
#include "parts.h"
#include "said.h"
#include "report/back_rows.h"
#include "report/cited.h"
#include "report/fluid.h"
#include "report/difference.h"
#include "report/faces.h"

/* Cautions that fit this wall, and the sources of what was printed. */

static void caution(const lw_page *page, const lw_hazard_row *row) {
  char text[LW_HAZARD_WORDS_MAX];
  lw_hazard_words(row, text, sizeof text);
  lw_page_say(page, "  - ", text);
}

void lw_text_cautions(const lw_page *page, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  if (v->reasons.caution_count == 0) return;
  lw_page_heading(page, "Mind");
  for (int i = 0; i < v->reasons.caution_count; i++) caution(page, v->reasons.caution[i]);
  if (result->wall.section.known) lw_text_keep_out(page, result);
}

static void of_checks(const lw_result *result, lw_cited *cited) {
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      if (check.by) lw_cited_note_seen(cited, check.by->from.source, lw_check_seen(&check, s->kind));
    }
  }
}

static void of_soil(const lw_result *result, const lw_case_soil *soil, lw_cited *cited) {
  const lw_soil_row *row =
      soil->name.origin == LW_GIVEN ? lw_tables_soil(result->tables, soil->name.text) : NULL;
  if (!row) return;
  if (soil->friction.origin == LW_TABLE) lw_cited_note_seen(cited, row->from.source, row->from.seen);
  if (soil->unit_weight.origin == LW_TABLE)
    lw_cited_note_seen(cited, row->weight_from.source, row->weight_from.seen);
}

static void of_soils(const lw_result *result, lw_cited *cited) {
  for (int i = 0; i < LW_SOIL_MAX; i++) of_soil(result, &result->given.ground.soil[i], cited);
  of_soil(result, &result->given.ground.footing, cited);
}

static void of_back(const lw_result *result, lw_cited *cited) {
  const lw_interface_row *rows[] = {lw_back_row(result), lw_back_membrane(result)};
  for (int i = 0; i < 2; i++)
    if (rows[i]) lw_cited_note_seen(cited, rows[i]->from.source, rows[i]->from.seen);
  lw_fluid fluid = lw_fluid_of(result);
  if (fluid.row) lw_cited_note_seen(cited, fluid.row->fluid_from.source, fluid.row->fluid_from.seen);
}

static void of_faces(const lw_result *result, lw_cited *cited) {
  const lw_origin_note *from[LW_FACES_SOURCES];
  int count = lw_faces_sources(result, from);
  for (int i = 0; i < count; i++) lw_cited_note_seen(cited, from[i]->source, from[i]->seen);
}

static void of_method(const lw_result *result, lw_cited *cited) {
  lw_cited_note_seen(cited, lw_thrust_source(result), LW_SEEN);
  lw_cited_note_seen(cited, lw_loads_source(result), LW_MEMORY);
  const lw_bearing_routine *bearing = lw_bearing_routine_of(result->wall.method.bearing);
  if (bearing) lw_cited_note_seen(cited, bearing->source, LW_SEEN);
  const lw_words *book = &result->given.method.conventions;
  const lw_conventions_row *row =
      book->origin == LW_GIVEN ? lw_tables_conventions(result->tables, book->text) : NULL;
  if (row) lw_cited_note_seen(cited, row->from.source, row->from.seen);
}

static void of_construction(const lw_result *result, lw_cited *cited) {
  const lw_plant_row *row = result->construction.plant.row;
  if (!result->construction.studied) return;
  lw_cited_note_seen(cited, "[INGOLD-1979 29(3)]", LW_MEMORY);
  if (row) lw_cited_note_seen(cited, row->from.source, row->from.seen);
}

static void of_verdict(const lw_verdict *v, lw_cited *cited) {
  for (int i = 0; i < v->limit_count; i++)
    lw_cited_note_seen(cited, v->limit[i].row->from.source, v->limit[i].row->from.seen);
  for (int i = 0; i < v->reasons.count; i++) lw_cited_note_seen(cited, v->reasons.reason[i].source, LW_SEEN);
  for (int i = 0; i < v->reasons.caution_count; i++)
    lw_cited_note_seen(cited, v->reasons.caution[i]->from.source, v->reasons.caution[i]->from.seen);
}

static void say(const lw_page *page, const lw_cited *cited, lw_cited_mark mark, const char *prefix) {
  lw_text line = {0};
  lw_cited_list(cited, mark, &line);
  if (line.length > 0) lw_page_say(page, prefix, line.data);
  page->out->failed = page->out->failed || line.failed;
  lw_text_free(&line);
}

static void of_value(void *context, const lw_echo *echo) {
  lw_cited_note_seen(context, echo->source, LW_SEEN);
}

static void of_result(const lw_result *result, lw_cited *cited) {
  of_method(result, cited);
  of_checks(result, cited);
  of_soils(result, cited);
  of_back(result, cited);
  of_faces(result, cited);
  lw_echo_each(result, of_value, cited);
  of_construction(result, cited);
  of_verdict(&result->verdict, cited);
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
  of_result(result, &cited);
  if (page->out->data) lw_cited_note(&cited, page->out->data, LW_CITED_UNMARKED);
  say_all(page, &cited);
}

void lw_text_sources_cited(const lw_page *page, const lw_result *result) {
  lw_cited known = {.count = 0}, cited = {.count = 0};
  of_result(result, &known);
  if (page->out->data) lw_cited_note(&cited, page->out->data, LW_CITED_UNMARKED);
  for (int i = 0; i < cited.count; i++) {
    for (int k = 0; k < known.count; k++)
      if (strcmp(cited.key[i], known.key[k]) == 0) cited.mark[i] = known.mark[k];
  }
  say_all(page, &cited);
}
