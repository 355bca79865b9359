/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/markup.h"
#include "blocks.h"
#include "report/draw/sketch.h"

/* The blocks as one HTML page: readable without style, black on white, on a phone and on paper. */

/* On paper what stands before the checks is set beside the drawing: nothing can be broken off a drawing, and
 * below other words it would leave half a page empty. */
typedef enum front { FRONT_TO_COME, FRONT_OPEN, FRONT_PAST } front;

typedef struct html {
  const lw_result *result;
  lw_text *out;
  lw_block_kind open; /* what list of rows is open; LW_BLOCK_WHO: none */
  lw_text heading;    /* of what comes next: where the front ends it is not known before */
  front front;
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
    /* 7.5 pt, and the drawing as wide as its letters want it */
    "@media print{body{font-size:10px;max-width:none;margin:0;padding:0}h1{font-size:16px;margin-top:0}"
    "h2{font-size:12px;margin:1em 0 .3em;break-after:avoid}tr,p,table:has(.w){break-inside:avoid}"
    "th{white-space:nowrap}tr:has([scope=col]){break-after:avoid}"
    ".i,.i tbody{display:block}.i tbody{columns:2}.i tr{display:flex}.i th,.i td{flex:1}"
    "svg{width:95mm;max-width:none}.front:has(svg){display:grid;grid-template:auto 1fr/1fr 95mm;gap:0 4mm}"
    ".front svg{grid-area:1/2/3/3}.front div+svg+div{grid-area:2/1/3/2}}";

static void between(html *h, const char *before, const char *words, const char *after) {
  lw_text_add(h->out, before);
  lw_markup_add(h->out, words);
  lw_text_add(h->out, after);
}

static void keep_open(html *h, lw_block_kind kind) {
  if (h->open == kind) return;
  if (h->open != LW_BLOCK_WHO) lw_text_add(h->out, "</table>\n");
  h->open = kind;
  if (kind == LW_BLOCK_WHO) return;
  lw_text_add(h->out, kind == LW_BLOCK_ITEM ? "<table class=\"i\">\n" : "<table>\n");
}

static void four_cells(html *h, const lw_block *block, const char *const before[4], const char *after) {
  between(h, before[0], block->label, before[1]);
  between(h, "", block->has, before[2]);
  between(h, "", block->needs, before[3]);
  between(h, "", block->words, after);
}

static void put_heading(html *h) {
  if (h->heading.length > 0) between(h, "<h2>", h->heading.data, "</h2>\n");
  lw_text_clear(&h->heading);
}

static void take_heading(html *h, const lw_block *block) {
  if (h->front == FRONT_TO_COME) lw_text_add(h->out, "<div class=\"front\"><div>\n");
  if (h->front == FRONT_TO_COME) h->front = FRONT_OPEN;
  lw_text_add(&h->heading, block->words);
}

static void end_front(html *h) {
  if (h->front == FRONT_OPEN) lw_text_add(h->out, "</div></div>\n");
  h->front = FRONT_PAST;
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

/* As narrow as for a phone, and on a screen scaled up where there is room: its letters are never smaller than
 * there. Between the two halves of the front. */
static void section(html *h) {
  static const double PHONE_MM = 95.0;
  lw_drawing drawing = {0};
  lw_error error = {0};
  lw_text_add(h->out, "</div>\n");
  lw_status status = lw_draw_section_below(h->result, PHONE_MM, &drawing, &error);
  if (status == LW_OK) status = lw_drawing_svg(&drawing, h->out);
  if (status == LW_NO_SOLUTION) between(h, "<p class=\"s\">", error.text, "</p>\n");
  if (status == LW_NO_MEMORY) h->status = status;
  lw_drawing_free(&drawing);
  lw_text_add(h->out, "<div>\n");
}

/* Rows of one kind stand in one table; what is no row in none. */
static lw_block_kind list_of(lw_block_kind kind) {
  switch (kind) {
  case LW_BLOCK_COLUMNS: return LW_BLOCK_CHECK;
  case LW_BLOCK_FACT:
  case LW_BLOCK_ITEM:
  case LW_BLOCK_CHECK:
  case LW_BLOCK_LINE: return kind;
  case LW_BLOCK_HALF_LINE: return LW_BLOCK_LINE;
  default: return LW_BLOCK_WHO;
  }
}

static void take(void *context, const lw_block *block) {
  html *h = context;
  if (block->kind == LW_BLOCK_COLUMNS) end_front(h);
  put_heading(h);
  keep_open(h, list_of(block->kind));
  switch (block->kind) {
  case LW_BLOCK_WHO: between(h, "<h1>", block->words, "</h1>\n"); break;
  case LW_BLOCK_HEADLINE: between(h, "<p class=\"s\">", block->words, "</p>\n"); break;
  case LW_BLOCK_HEADING: take_heading(h, block); break;
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
  case LW_BLOCK_HALF_LINE:
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
  end_front(&h);
  if (h.heading.failed) h.status = LW_NO_MEMORY;
  lw_text_free(&h.heading);
  lw_text_add(out, "</body></html>\n");
  return h.status != LW_OK ? h.status : out->failed ? LW_NO_MEMORY : LW_OK;
}
