/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/markup.h"
#include "blocks.h"
#include "report/draw/sketch.h"

/* The blocks as one HTML page: readable without style, black on white, on a phone and on paper. */

typedef struct html {
  const lw_result *result;
  lw_text *out;
  lw_block_kind open; /* what list of rows is open; LW_BLOCK_WHO: none */
  lw_status status;
} html;

static const char style[] =
    "body{font:16px/1.4 sans-serif;color:#000;background:#fff;max-width:52rem;margin:1rem auto;padding:0 "
    "1rem}"
    "h1{font-size:1.35rem}h2{font-size:1.05rem;border-bottom:1px solid #000;margin:1.4em 0 .4em}"
    "table{border-collapse:collapse;width:100%}th,td{text-align:left;vertical-align:top;padding:.15em .6em "
    ".15em 0}"
    "th{font-weight:normal}.n{text-align:right}.s{font-weight:bold}"
    ".w{border-bottom:1px solid #000;height:2em;width:80%}svg{width:100%;max-width:36rem;height:auto}"
    "@media print{body{font-size:10px}}";

static void between(html *h, const char *before, const char *words, const char *after) {
  lw_text_add(h->out, before);
  lw_markup_add(h->out, words);
  lw_text_add(h->out, after);
}

static void keep_open(html *h, lw_block_kind kind) {
  if (h->open == kind) return;
  if (h->open != LW_BLOCK_WHO) lw_text_add(h->out, "</table>\n");
  h->open = kind;
  if (kind != LW_BLOCK_WHO) lw_text_add(h->out, "<table>\n");
}

static void four_cells(html *h, const lw_block *block, const char *const before[4], const char *after) {
  between(h, before[0], block->label, before[1]);
  between(h, "", block->has, before[2]);
  between(h, "", block->needs, before[3]);
  between(h, "", block->words, after);
}

static void columns(html *h, const lw_block *block) {
  static const char *const before[] = {"<tr><th scope=\"col\">", "</th><th scope=\"col\" class=\"n\">",
                                       "</th><th scope=\"col\" class=\"n\">", "</th><th scope=\"col\">"};
  four_cells(h, block, before, "</th></tr>\n");
}

static void check(html *h, const lw_block *block) {
  const char *const before[] = {"<tr><th scope=\"row\">", "</th><td class=\"n\">", "</td><td class=\"n\">",
                                block->strong ? "</td><td class=\"s\">" : "</td><td>"};
  four_cells(h, block, before, "</td></tr>\n");
}

/* As narrow as for a phone, and scaled up where there is room: its letters are never smaller than there. */
static void section(html *h) {
  static const double PHONE_MM = 95.0;
  lw_drawing drawing = {0};
  lw_error error = {0};
  lw_status status = lw_draw_section_below(h->result, PHONE_MM, &drawing, &error);
  if (status == LW_OK) status = lw_drawing_svg(&drawing, h->out);
  if (status == LW_NO_SOLUTION) between(h, "<p class=\"s\">", error.text, "</p>\n");
  if (status == LW_NO_MEMORY) h->status = status;
  lw_drawing_free(&drawing);
}

/* Rows of one kind stand in one table; what is no row in none. */
static lw_block_kind list_of(lw_block_kind kind) {
  switch (kind) {
  case LW_BLOCK_COLUMNS: return LW_BLOCK_CHECK;
  case LW_BLOCK_FACT:
  case LW_BLOCK_ITEM:
  case LW_BLOCK_CHECK:
  case LW_BLOCK_LINE: return kind;
  default: return LW_BLOCK_WHO;
  }
}

static void take(void *context, const lw_block *block) {
  html *h = context;
  keep_open(h, list_of(block->kind));
  switch (block->kind) {
  case LW_BLOCK_WHO: between(h, "<h1>", block->words, "</h1>\n"); break;
  case LW_BLOCK_HEADLINE: between(h, "<p class=\"s\">", block->words, "</p>\n"); break;
  case LW_BLOCK_HEADING: between(h, "<h2>", block->words, "</h2>\n"); break;
  case LW_BLOCK_WORDS: between(h, block->strong ? "<p class=\"s\">" : "<p>", block->words, "</p>\n"); break;
  case LW_BLOCK_SECTION: section(h); break;
  case LW_BLOCK_FACT:
  case LW_BLOCK_ITEM:
    between(h, "<tr><th scope=\"row\">", block->label, "</th><td>");
    between(h, "", block->words, "</td></tr>\n");
    break;
  case LW_BLOCK_COLUMNS: columns(h, block); break;
  case LW_BLOCK_CHECK: check(h, block); break;
  case LW_BLOCK_LINE:
    between(h, "<tr><th scope=\"row\">", block->label, "</th><td class=\"w\"></td></tr>\n");
    break;
  }
}

lw_status lw_precheck_html(const lw_result *result, const char *hash, lw_text *out) {
  html h = {.result = result, .out = out, .open = LW_BLOCK_WHO};
  lw_text_add(out, "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
                   "<meta name=\"viewport\" content=\"width=device-width\"><title>Pre-check of a wall");
  if (result->given.about.title.text[0]) between(&h, ": ", result->given.about.title.text, "");
  lw_text_addf(out, "</title>\n<style>%s</style></head><body>\n", style);
  lw_precheck_each(result, hash, take, &h);
  keep_open(&h, LW_BLOCK_WHO);
  lw_text_add(out, "</body></html>\n");
  return h.status != LW_OK ? h.status : out->failed ? LW_NO_MEMORY : LW_OK;
}
