/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <string.h>

/* Where each value comes from: assumed first, each with its question, then tables, then the sheet. */

typedef struct lw_listing {
  const lw_page *page;
  lw_text *line;
  lw_origin origin;
  int count;
} lw_listing;

static void say_assumed(void *context, const lw_echo *echo) {
  lw_listing *listing = context;
  bool asked = echo->item->question[0] != '\0';
  if (echo->origin != LW_ASSUMED || !asked) return;
  lw_page_sayf(listing->page, "  ? ", "%s = %s. %s", echo->name, echo->words, echo->item->question);
  listing->count++;
}

/* Defaults that nobody is asked for, tables, the sheet: run on, for they are looked up rather than read. */
static void run_on(void *context, const lw_echo *echo) {
  lw_listing *listing = context;
  bool heading = strcmp(echo->item->part, "heading") == 0 && strcmp(echo->item->name, "place") != 0;
  bool asked = echo->origin == LW_ASSUMED && echo->item->question[0] != '\0';
  if (echo->origin != listing->origin || heading || asked) return;
  lw_text_addf(listing->line, "%s%s %s%s%s", listing->count > 0 ? "; " : "", echo->name, echo->words,
               echo->source[0] ? " " : "", echo->source);
  listing->count++;
}

static void listed(const lw_page *page, const lw_result *result, lw_origin origin, const char *prefix) {
  lw_text line = {0};
  lw_listing listing = {.page = page, .line = &line, .origin = origin};
  lw_echo_each(result, run_on, &listing);
  if (listing.count > 0 && line.data) lw_page_say(page, prefix, line.data);
  page->out->failed = page->out->failed || line.failed;
  lw_text_free(&line);
}

static void count_assumed(void *context, const lw_echo *echo) {
  lw_listing *listing = context;
  listing->count += echo->origin == LW_ASSUMED && echo->item->question[0] != '\0' ? 1 : 0;
}

void lw_text_assumed(const lw_page *page, const lw_result *result) {
  lw_listing listing = {.page = page};
  lw_echo_each(result, count_assumed, &listing);
  if (listing.count > 0) {
    lw_page_heading(page, "Assumed, because the sheet does not say; each with the question that settles it");
    lw_echo_each(result, say_assumed, &listing);
  }
  lw_page_heading(page, "Where the values come from");
  listed(page, result, LW_TABLE, "  Tables:   ");
  listed(page, result, LW_GIVEN, "  Given:    ");
  listed(page, result, LW_ASSUMED, "  Defaults: ");
}
