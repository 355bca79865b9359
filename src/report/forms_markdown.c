/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "forms.h"

#include <ctype.h>
#include <string.h>

/* What was kept of a page as CommonMark. It has no tables and would eat the stars of a formula: what stands
 * in columns, and steps, are fenced as the plain text has them. All else is escaped
 * [COMMONMARK backslash escapes]. */

enum { COLUMNS = 80, FENCE_LEAST = 3 };

typedef struct markdown {
  lw_text *out;
  bool list;     /* an item is open */
  size_t indent; /* of what belongs to it */
} markdown;

/* What stands at the beginning and would make a list, a heading or a rule of it. */
static bool begins_a_block(lw_span words, size_t at) {
  size_t digits = 0;
  char c = words.at[at];
  if (at == 0 && (c == '+' || c == '-' || c == '=')) return true;
  while (digits < words.length && isdigit((unsigned char)words.at[digits])) digits++;
  bool ends = at + 1 == words.length || words.at[at + 1] == ' ';
  return digits > 0 && at == digits && (c == '.' || c == ')') && ends;
}

/* What some renderers make a link of. */
static bool makes_a_link(lw_span words, size_t at) {
  bool www = at >= 3 && strncmp(words.at + at - 3, "www", 3) == 0;
  return (words.at[at] == ':' && at + 1 < words.length && words.at[at + 1] == '/') ||
         (words.at[at] == '.' && www);
}

static void add_character(lw_text *out, lw_span words, size_t at) {
  char c = words.at[at];
  bool special = strchr("\\`*_[]{}#|~$@", c) != NULL;
  if (c == '<')
    lw_text_add(out, "&lt;");
  else if (c == '>')
    lw_text_add(out, "&gt;");
  else if (c == '&')
    lw_text_add(out, "&amp;");
  else
    lw_text_addf(out, special || begins_a_block(words, at) || makes_a_link(words, at) ? "\\%c" : "%c", c);
}

/* Each run of blanks is one. */
static void add_words(lw_text *out, lw_span words) {
  words = lw_span_trim(words);
  for (size_t i = 0; i < words.length; i++) {
    bool again = words.at[i] == ' ' && words.at[i - 1] == ' ';
    if (!again) add_character(out, words, i);
  }
}

static void blank(const markdown *m) {
  if (m->out->length > 0) lw_text_add(m->out, "\n");
}

static void indent(const markdown *m) {
  for (size_t i = 0; i < m->indent; i++) lw_text_add(m->out, " ");
}

/* A block by itself, or within the item that is open. */
static void begin(markdown *m, bool within) {
  m->list = within && m->list;
  m->indent = m->list ? m->indent : 0;
  blank(m);
  indent(m);
}

static void block(markdown *m, const char *mark, lw_span words) {
  begin(m, false);
  lw_text_add(m->out, mark);
  add_words(m->out, words);
  lw_text_add(m->out, "\n");
}

static void paragraph(markdown *m, const lw_kept *entry) {
  const char *stars = entry->tone == LW_TONE_PLAIN ? "" : "**";
  begin(m, lw_kept_indent(entry) >= LW_FAR_IN);
  lw_text_add(m->out, stars);
  add_words(m->out, entry->text);
  lw_text_addf(m->out, "%s\n", stars);
}

static void item(markdown *m, const lw_kept *entry, lw_lead lead) {
  lw_span mark = lw_span_trim(entry->prefix);
  bool dash = mark.length == 1 && *mark.at == '-', number = mark.length > 1 && lead == LW_LEAD_ITEM;
  if (!m->list) blank(m);
  m->list = true;
  m->indent = number ? mark.length + 1 : 2;
  if (number)
    lw_text_add_bytes(m->out, mark.at, mark.length);
  else
    lw_text_add(m->out, "-");
  lw_text_add(m->out, " ");
  if (lead == LW_LEAD_NAME) lw_text_add(m->out, "**");
  if (!dash && !number) add_words(m->out, mark);
  if (lead == LW_LEAD_NAME) lw_text_add(m->out, "**");
  if (!dash && !number) lw_text_add(m->out, " ");
  add_words(m->out, entry->text);
  lw_text_add(m->out, "\n");
}

static size_t longest_fence(const lw_text *text) {
  size_t longest = FENCE_LEAST - 1, run = 0;
  for (size_t i = 0; i < text->length; i++) {
    run = text->data[i] == '`' ? run + 1 : 0;
    longest = run > longest ? run : longest;
  }
  return longest + 1;
}

static void fence(const markdown *m, size_t length) {
  for (size_t i = 0; i < length; i++) lw_text_add(m->out, "`");
}

/* Lines as they stand, between two fences that none of them can close. */
static void fenced(markdown *m, const lw_text *text, bool within) {
  size_t length = longest_fence(text);
  begin(m, within);
  fence(m, length);
  lw_text_add(m->out, "text\n");
  for (size_t i = 0; i < text->length; i++) {
    if (i == 0 || text->data[i - 1] == '\n') indent(m);
    lw_text_add_bytes(m->out, text->data + i, 1);
  }
  indent(m);
  fence(m, length);
  lw_text_add(m->out, "\n");
}

static bool goes_into_a_fence(const lw_kept *entry, lw_span cursor) {
  bool stands_in = entry->text.length > 0 && entry->text.at[0] == ' ';
  if ((entry->kind == LW_KEPT_LINE && stands_in) || lw_kept_of_table(entry, cursor)) return true;
  if (entry->kind != LW_KEPT_SAY || entry->tone != LW_TONE_PLAIN) return false;
  lw_lead lead = lw_kept_lead(entry);
  return lead == LW_LEAD_STEP || lead == LW_LEAD_MORE ||
         (lead == LW_LEAD_NONE && lw_kept_indent(entry) >= LW_FAR_IN);
}

/* A table's title is a heading; in its place stand blanks. */
static void title(markdown *m, const lw_kept *entry, lw_text *text) {
  const char *end = memchr(entry->text.at + 1, LW_CELL_ENDS, entry->text.length - 1);
  if (entry->kind != LW_KEPT_TITLED || end == NULL) return;
  lw_span words = lw_span_trim((lw_span){entry->text.at + 1, (size_t)(end - entry->text.at) - 1});
  block(m, "## ", words);
  if (words.length < text->length) memset(text->data, ' ', words.length);
}

/* All that follows and may stand in it. */
static void columns(markdown *m, lw_span *cursor) {
  lw_text text = {0};
  lw_page page = {.out = &text, .style = {.columns = COLUMNS}};
  lw_span before = *cursor, all = {cursor->at, 0};
  lw_kept first, entry;
  lw_kept_next(cursor, &first);
  bool within = first.kind == LW_KEPT_LINE;
  for (*cursor = before; lw_kept_next(cursor, &entry) && goes_into_a_fence(&entry, *cursor);)
    before = *cursor;
  *cursor = before;
  all.length = (size_t)(cursor->at - all.at);
  lw_kept_text(all, &page);
  title(m, &first, &text);
  fenced(m, &text, within);
  m->out->failed = m->out->failed || text.failed;
  lw_text_free(&text);
}

static void put(markdown *m, const lw_kept *entry) {
  lw_lead lead = lw_kept_lead(entry);
  switch (entry->kind) {
  case LW_KEPT_HEADLINE: block(m, "# ", entry->text); break;
  case LW_KEPT_HEADING: block(m, "## ", entry->text); break;
  case LW_KEPT_PART: block(m, "### ", entry->text); break;
  case LW_KEPT_LINE: paragraph(m, entry); break;
  case LW_KEPT_SAY:
    if (lead == LW_LEAD_NONE)
      paragraph(m, entry);
    else
      item(m, entry, lead);
    break;
  default: m->list = false; break;
  }
}

void lw_kept_markdown(lw_span entries, lw_text *out) {
  markdown m = {.out = out};
  lw_span before = entries;
  lw_kept entry;
  while (lw_kept_next(&entries, &entry)) {
    bool note =
        entry.kind == LW_KEPT_PART || (entry.kind == LW_KEPT_SAY && lw_kept_lead(&entry) == LW_LEAD_NONE);
    if (!note && goes_into_a_fence(&entry, entries)) {
      entries = before;
      columns(&m, &entries);
    } else {
      put(&m, &entry);
    }
    before = entries;
  }
}
