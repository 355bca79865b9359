/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "forms.h"

#include "markup.h"

/* A page from its beginning to its end, and the document around its reports. */

lw_page lw_page_open(const lw_text_style *style, lw_units units, lw_text *out, lw_text *kept) {
  lw_page page = {.out = kept, .style = *style, .units = units, .keeps = style->as != LW_AS_TEXT};
  if (page.keeps) return page;
  page.out = out;
  page.from = out->length;
  return page;
}

/* Plain text keeps as well where its writer looks back at what was said: the working. */
static void write_kept(const lw_page *page, lw_text *out) {
  const lw_span entries = {page->out->data, page->out->length};
  const lw_page plain = {.out = out, .style = page->style, .units = page->units};
  switch (page->style.as) {
  case LW_AS_MARKDOWN: lw_kept_markdown(entries, out); break;
  case LW_AS_HTML: lw_kept_html(entries, out); break;
  case LW_AS_TEXT:
  case LW_AS_COUNT: lw_kept_text(entries, &plain); break;
  }
  out->failed = out->failed || page->out->failed;
}

lw_status lw_page_close(const lw_page *page, lw_text *out) {
  if (page->keeps) {
    write_kept(page, out);
    lw_text_free(page->out);
  }
  return out->failed ? LW_NO_MEMORY : LW_OK;
}

const char *lw_as_slug(lw_as as) {
  static const char *const slugs[LW_AS_COUNT] = {"text", "markdown", "html"};
  return as >= 0 && as < LW_AS_COUNT ? slugs[as] : NULL;
}

/* Black on white or white on black, seven to one or better; nothing is told by colour alone. */
static const char STYLE[] =
    ":root{color-scheme:light dark;--ink:#111;--paper:#fff;--bad:#8f0000;--good:#0b4a1f;--line:#767676}\n"
    "@media (prefers-color-scheme:dark){:root{--ink:#f2f2f2;--paper:#121212;--bad:#ffb3b3;--good:#a6e9b8;"
    "--line:#8a8a8a}}\n"
    "body{font:1rem/1.45 sans-serif;color:var(--ink);background:var(--paper);max-width:46rem;margin:1rem "
    "auto;padding:0 1rem 2rem;overflow-wrap:break-word}\n"
    "h1{font-size:1.3rem;line-height:1.3}\n"
    "h2{font-size:1.15rem;margin:1.8em 0 .5em;border-bottom:1px solid var(--line)}\n"
    "h3{font-size:1rem;margin:1.2em 0 .3em}p{margin:.4em 0}\n"
    ".bad{color:var(--bad);font-weight:bold}.good{color:var(--good)}.strong{font-weight:bold}\n"
    "ul{padding:0 0 0 1.3rem;margin:.4em 0}ul.m{list-style:none}li{margin:.3em 0}\n"
    "ul.m b{display:inline-block;min-width:1.3rem;margin-left:-1.3rem}\n"
    "dl{margin:.6em 0}dl div{display:grid;grid-template-columns:minmax(5rem,10rem) 1fr;gap:0 .8rem;"
    "margin:.3em 0}dd{margin:0;grid-column:2}dt{font-weight:bold}\n"
    ".w{overflow-x:auto;margin:.6em 0}table{border-collapse:collapse;font-variant-numeric:tabular-nums}\n"
    "th,td{padding:.15rem .8rem .15rem 0;text-align:left;vertical-align:top;border-bottom:1px solid "
    "var(--line)}thead th{font-weight:normal;border-bottom:2px solid var(--line)}tbody th{font-weight:"
    "normal;min-width:7rem}tr.bad th,th[scope=rowgroup]{font-weight:bold}\n"
    ".n{text-align:right;white-space:nowrap}td.x{padding-left:1.3rem}\n"
    ".step{margin:.7em 0}.step p{margin:0;padding-left:2.5rem;text-indent:-1rem}.step p:first-child{padding-"
    "left:1rem}var{font-weight:bold}\n"
    ".line{font-family:monospace;white-space:pre-wrap;overflow-wrap:anywhere}\n"
    "@media (max-width:30rem){dl div{grid-template-columns:fit-content(9rem) "
    "1fr}th,td{padding-right:.35rem}.w{font-"
    "size:.85rem}}\n"
    "@media print{:root{--ink:#000;--paper:#fff;--bad:#000;--good:#000}body{font-size:10pt;margin:0;max-"
    "width:none}h1,h2,h3{break-after:avoid}tr,li,dl div,.step{break-inside:avoid}.w{overflow:visible}}\n";

void lw_report_begin(const lw_text_style *style, const char *title, lw_text *out) {
  if (style->as != LW_AS_HTML) return;
  lw_text_add(out, "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                   "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
  lw_markup_add(out, title);
  lw_text_addf(out, "</title>\n<style>\n%s</style>\n</head>\n<body>\n", STYLE);
}

void lw_report_end(const lw_text_style *style, lw_text *out) {
  if (style->as == LW_AS_HTML) lw_text_add(out, "</body>\n</html>\n");
}
