/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "kept.h"

#include <ctype.h>
#include <string.h>

/* An entry is its kind and its tone as a letter each, the prefix, BETWEEN, the words, END. */
enum { BETWEEN = 0x1F, END = '\n' };

static bool is_row(lw_kept_kind kind) {
  return kind == LW_KEPT_ROW || kind == LW_KEPT_HEAD || kind == LW_KEPT_TITLED || kind == LW_KEPT_NUMBERS;
}

static void add_tame(lw_text *entries, const char *words, bool row) {
  for (const char *c = words; *c != '\0'; c++) {
    bool control = (unsigned char)*c < 0x20 || *c == 0x7F, cell = *c == LW_CELL_BEGINS || *c == LW_CELL_ENDS;
    lw_text_add_bytes(entries, control && !(row && cell) ? "?" : c, 1);
  }
}

void lw_kept_add(lw_text *entries, lw_kept_kind kind, lw_tone tone, const char *prefix, const char *text) {
  const char head[] = {(char)('A' + kind), (char)('0' + tone)}, between = BETWEEN, end = END;
  lw_text_add_bytes(entries, head, sizeof head);
  add_tame(entries, prefix, false);
  lw_text_add_bytes(entries, &between, 1);
  add_tame(entries, text, is_row(kind));
  lw_text_add_bytes(entries, &end, 1);
}

bool lw_kept_next(lw_span *cursor, lw_kept *entry) {
  enum { HEAD = 2 };
  const char *at = cursor->at;
  const char *end = cursor->length > HEAD ? memchr(at, END, cursor->length) : NULL;
  const char *between = end ? memchr(at, BETWEEN, (size_t)(end - at)) : NULL;
  if (between == NULL) return false;
  entry->kind = (lw_kept_kind)(at[0] - 'A');
  entry->tone = (lw_tone)(at[1] - '0');
  entry->prefix = (lw_span){at + HEAD, (size_t)(between - at) - HEAD};
  entry->text = (lw_span){between + 1, (size_t)(end - between) - 1};
  cursor->length -= (size_t)(end + 1 - at);
  cursor->at = end + 1;
  return true;
}

lw_span lw_span_trim(lw_span span) {
  while (span.length > 0 && *span.at == ' ') {
    span.at++;
    span.length--;
  }
  while (span.length > 0 && span.at[span.length - 1] == ' ') span.length--;
  return span;
}

size_t lw_kept_indent(const lw_kept *entry) {
  size_t indent = 0;
  while (indent < entry->prefix.length && entry->prefix.at[indent] == ' ') indent++;
  return indent;
}

bool lw_kept_heads(const lw_kept *entry) {
  lw_span text = lw_span_trim(entry->text);
  bool letters = text.length > 0 && isalpha((unsigned char)*text.at) != 0;
  return entry->kind == LW_KEPT_HEAD || entry->kind == LW_KEPT_TITLED ||
         (entry->kind == LW_KEPT_NUMBERS && letters);
}

static bool is_note(const lw_kept *entry) {
  return entry->kind == LW_KEPT_PART ||
         (entry->kind == LW_KEPT_SAY && lw_kept_lead(entry) == LW_LEAD_NONE && entry->prefix.length > 0);
}

bool lw_kept_of_table(const lw_kept *entry, lw_span cursor) {
  lw_kept next;
  if (is_row(entry->kind)) return true;
  if (!is_note(entry)) return false;
  if (entry->kind == LW_KEPT_SAY && lw_kept_indent(entry) >= LW_FAR_IN) return true;
  while (lw_kept_next(&cursor, &next))
    if (!is_note(&next)) return is_row(next.kind) && !lw_kept_heads(&next);
  return false;
}

static bool is_number(lw_span lead) {
  size_t digits = 0;
  while (digits < lead.length && isdigit((unsigned char)lead.at[digits])) digits++;
  return digits > 0 && digits + 1 == lead.length && lead.at[digits] == '.';
}

lw_lead lw_kept_lead(const lw_kept *entry) {
  lw_span lead = lw_span_trim(entry->prefix);
  if (lead.length == 0) return LW_LEAD_NONE;
  char last = lead.at[lead.length - 1];
  if (lead.length == 1 && (last == '=' || last == ':')) return LW_LEAD_MORE;
  if (last == '=') return LW_LEAD_STEP;
  return is_number(lead) || (lead.length == 1 && ispunct((unsigned char)last)) ? LW_LEAD_ITEM : LW_LEAD_NAME;
}
