/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "back.h"
#include "echo.h"
#include "parts.h"
#include "report/faces.h"
#include "report/paired.h"

/* Where each value comes from: assumed first, each with its question, then tables, then the sheet. */

typedef struct lw_listing {
  const lw_page *page;
  lw_text *line;
  lw_origin origin;
  bool all;
  int count;
  char source[LW_SOURCE_MAX];
} lw_listing;

static void say_assumed(void *context, const lw_echo *echo) {
  lw_listing *listing = context;
  bool asked = echo->item->question[0] != '\0';
  if (echo->origin != LW_ASSUMED || !asked) return;
  lw_page_sayf(listing->page, "  ? ", "%s = %s. %s", echo->name, echo->words, echo->item->question);
  listing->count++;
}

/* The switches of the method and what is not part of the check stand in the working, all of them. */
static bool is_a_switch(const lw_item *item) {
  return item->part == LW_ABOUT_METHOD || item->part == LW_ABOUT_SEISMIC;
}

static bool belongs(const lw_listing *listing, const lw_echo *echo) {
  bool heading = echo->item->part == LW_ABOUT_HEADING && strcmp(echo->item->name, "place") != 0;
  bool asked = echo->origin == LW_ASSUMED && echo->item->question[0] != '\0';
  bool left_out = echo->origin == LW_ASSUMED && !listing->all && is_a_switch(echo->item);
  return echo->origin == listing->origin && !heading && !asked && !left_out;
}

/* Defaults that nobody is asked for, tables, the sheet: run on, for they are looked up rather than read. A
 * source that several values in a row share stands behind the last of them. */
static void run_on(void *context, const lw_echo *echo) {
  lw_listing *listing = context;
  if (!belongs(listing, echo)) return;
  bool same = strcmp(listing->source, echo->source) == 0;
  if (listing->count > 0 && listing->source[0] && !same) lw_text_addf(listing->line, " %s", listing->source);
  lw_text_addf(listing->line, "%s%s %s", listing->count > 0 ? "; " : "", echo->name, echo->words);
  lw_print(listing->source, sizeof listing->source, "%s", echo->source);
  listing->count++;
}

static void listed(const lw_page *page, const lw_result *result, lw_origin origin, bool all,
                   const char *prefix) {
  lw_text line = {0};
  lw_listing listing = {.page = page, .line = &line, .origin = origin, .all = all};
  lw_echo_each(result, run_on, &listing);
  if (listing.source[0]) lw_text_addf(&line, " %s", listing.source);
  if (listing.count > 0 && line.data) lw_page_say(page, prefix, line.data);
  page->out->failed = page->out->failed || line.failed;
  lw_text_free(&line);
}

static void count_assumed(void *context, const lw_echo *echo) {
  lw_listing *listing = context;
  listing->count += echo->origin == LW_ASSUMED && echo->item->question[0] != '\0' ? 1 : 0;
}

static void questions(const lw_page *page, const lw_result *result) {
  lw_listing listing = {.page = page};
  lw_echo_each(result, count_assumed, &listing);
  if (listing.count == 0) return;
  lw_page_heading(page, "Assumed, because the sheet does not say; each with the question that settles it");
  lw_echo_each(result, say_assumed, &listing);
}

/* What the wall stands on: the faces it may slide on, and what its clay holds besides. */
static void ground(const lw_page *page, const lw_result *result) {
  lw_text line = {0}, clay = {0};
  lw_faces faces;
  lw_faces_find(result, &faces);
  lw_faces_say(&faces, &line);
  lw_page_say_text(page, "  Base:     ", &line);
  lw_paired_say(result, &clay);
  lw_page_say_text(page, "  Clay:     ", &clay);
}

void lw_text_assumed(const lw_page *page, const lw_result *result, bool all) {
  questions(page, result);
  lw_page_heading(page, "Where the values come from");
  listed(page, result, LW_TABLE, all, "  Tables:   ");
  listed(page, result, LW_GIVEN, all, "  Given:    ");
  listed(page, result, LW_ASSUMED, all, "  Defaults: ");
  lw_text_back(page, result);
  ground(page, result);
  lw_text_beside(page, result);
  lw_text_fluid(page, result);
}
