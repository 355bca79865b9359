/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/markup.h"
#include "form.h"

/* The form as one HTML page that asks for nothing from elsewhere: to fill in on paper, black on white. */

static const char HEAD[] =
    "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">\n<title>A wall to be "
    "checked</title>\n<style>"
    "body{font:15px/1.35 sans-serif;color:#000;background:#fff;max-width:60rem;margin:1rem auto;padding:0 "
    "1rem;"
    "columns:26rem 2}h1{font-size:1.2rem;column-span:all}h2{font-size:1rem;margin:.8em 0 "
    ".2em;break-after:avoid}"
    "section{break-inside:avoid}p{margin:.1em "
    "0;break-inside:avoid}.b{padding-left:1.6em;text-indent:-1.4em}.b::before{content:\"\\2610\\00a0\"}"
    ".l span{display:inline-block;min-width:7em;border-bottom:1px solid #000;margin:0 .5em}"
    ".t{padding-left:1.6em;text-indent:-1.6em}.o{break-before:page}"
    ".s{border:1px solid #000;height:18em;break-inside:avoid}@media "
    "print{body{font-size:10px;max-width:none}}"
    "</style></head><body>\n";

static void element(lw_text *out, const char *before, const lw_form_line *line, const char *after) {
  lw_text_add(out, before);
  lw_markup_add(out, line->words);
  lw_text_add(out, after);
}

typedef struct writing {
  lw_text *out;
  bool in_question;
} writing;

/* A question stays with its boxes and lines. */
static void end_question(writing *w) {
  if (w->in_question) lw_text_add(w->out, "</section>\n");
  w->in_question = false;
}

static void take(void *context, const lw_form_line *line) {
  writing *w = context;
  lw_text *out = w->out;
  if (line->kind == LW_FORM_QUESTION || line->kind == LW_FORM_SKETCH || line->kind == LW_FORM_PART)
    end_question(w);
  switch (line->kind) {
  case LW_FORM_TITLE: element(out, "<h1>", line, "</h1>\n"); break;
  case LW_FORM_WORDS: element(out, "<p>", line, "</p>\n"); break;
  case LW_FORM_QUESTION:
    w->in_question = true;
    lw_text_addf(out, "<section><h2>%s. ", line->label);
    lw_markup_add(out, line->words);
    lw_text_addf(out, "%s%s%s</h2>\n", line->of[0] ? " (" : "", line->of, line->of[0] ? ")" : "");
    break;
  case LW_FORM_STEP:
    lw_text_addf(out, "<p class=\"t\">%s ", line->label);
    lw_markup_add(out, line->words);
    lw_text_add(out, "</p>\n");
    break;
  case LW_FORM_BOX: element(out, "<p class=\"b\">", line, "</p>\n"); break;
  case LW_FORM_LINE:
    element(out, "<p class=\"l\">", line, "<span>&nbsp;</span>");
    lw_markup_add(out, line->label);
    lw_text_add(out, "</p>\n");
    break;
  case LW_FORM_PART: element(out, "<h1 class=\"o\">", line, "</h1>\n"); break;
  case LW_FORM_SKETCH: element(out, "<h2>", line, "</h2>\n<div class=\"s\"></div>\n"); break;
  }
}

lw_status lw_questions_form_html(const lw_tables *tables, lw_form_units units, lw_text *out) {
  lw_text_add(out, HEAD);
  writing w = {.out = out};
  lw_form_each(tables, units, take, &w);
  end_question(&w);
  lw_text_add(out, "</body></html>\n");
  return out->failed ? LW_NO_MEMORY : LW_OK;
}
