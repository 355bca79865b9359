/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cited.h"

#include <ctype.h>
#include <string.h>

/* Capitals and figures with what joins them, then the locator. */
static size_t key_length(const char *at) {
  size_t length = 0;
  bool capital = isupper((unsigned char)at[0]) != 0;
  while (isupper((unsigned char)at[length]) || isdigit((unsigned char)at[length]) ||
         (at[length] != '\0' && strchr("-./", at[length]) != NULL))
    length++;
  bool whole = at[length] == ' ' || at[length] == '\n' || at[length] == ']';
  return capital && whole && length > 1 && length < LW_CITED_BYTES ? length : 0;
}

static void note_key(lw_cited *cited, const char *key, size_t length, lw_cited_mark mark) {
  for (int i = 0; i < cited->count; i++) {
    if (strlen(cited->key[i]) != length || strncmp(cited->key[i], key, length) != 0) continue;
    if (mark == LW_CITED_MEMORY || (mark == LW_CITED_READ && cited->mark[i] == LW_CITED_UNMARKED))
      cited->mark[i] = mark;
    return;
  }
  if (cited->count >= LW_CITED_MAX) return;
  lw_print(cited->key[cited->count], LW_CITED_BYTES, "%.*s", (int)length, key);
  cited->mark[cited->count++] = mark;
}

void lw_cited_note(lw_cited *cited, const char *text, lw_cited_mark mark) {
  for (const char *at = strchr(text, '['); at != NULL; at = strchr(at + 1, '[')) {
    size_t length = key_length(at + 1);
    if (length > 0) note_key(cited, at + 1, length, mark);
  }
}

void lw_cited_note_seen(lw_cited *cited, const char *text, lw_seen seen) {
  lw_cited_note(cited, text, seen == LW_MEMORY ? LW_CITED_MEMORY : LW_CITED_READ);
}

void lw_cited_list(const lw_cited *cited, lw_cited_mark mark, lw_text *out) {
  size_t before = out->length;
  for (int i = 0; i < cited->count; i++) {
    if (cited->mark[i] == mark) lw_text_addf(out, "%s%s", out->length > before ? ", " : "", cited->key[i]);
  }
}
