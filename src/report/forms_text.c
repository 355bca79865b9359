/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "forms.h"

/* What was kept of a page as the plain text that it would have been. */

/* The words up to the marks of cells, ended by a NUL. */
static void copy(lw_text *to, lw_span words) {
  static const char nul = '\0';
  lw_text_clear(to);
  for (size_t i = 0; i < words.length; i++)
    if (words.at[i] != LW_CELL_BEGINS && words.at[i] != LW_CELL_ENDS) lw_text_add_bytes(to, words.at + i, 1);
  lw_text_add_bytes(to, &nul, 1);
}

static void put(const lw_page *page, const lw_kept *entry, const char *prefix, const char *text) {
  switch (entry->kind) {
  case LW_KEPT_BLANK: lw_page_blank(page); break;
  case LW_KEPT_HEADLINE: lw_page_headline(page, entry->tone, text); break;
  case LW_KEPT_HEADING: lw_page_heading(page, text); break;
  case LW_KEPT_PART: lw_page_part(page, text); break;
  case LW_KEPT_SAY: lw_page_tone(page, entry->tone, prefix, text); break;
  case LW_KEPT_LINE:
  case LW_KEPT_ROW:
  case LW_KEPT_HEAD:
  case LW_KEPT_TITLED:
  case LW_KEPT_NUMBERS: lw_page_linef(page, entry->tone, "%s", text); break;
  case LW_KEPT_KINDS: break;
  }
}

void lw_kept_text(lw_span entries, const lw_page *page) {
  lw_text prefix = {0}, text = {0};
  lw_kept entry;
  while (lw_kept_next(&entries, &entry)) {
    copy(&prefix, entry.prefix);
    copy(&text, entry.text);
    if (!prefix.failed && !text.failed) put(page, &entry, prefix.data, text.data);
  }
  page->out->failed = page->out->failed || prefix.failed || text.failed;
  lw_text_free(&prefix);
  lw_text_free(&text);
}
