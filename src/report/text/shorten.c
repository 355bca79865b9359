/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "shorten.h"

#include <ctype.h>
#include <string.h>

/* Of "(0.50 m, [KEY p.2] from A-01, 2024-03)" stays "(0.50 m, 2024-03)": inside brackets a key goes with all
 * that follows it up to the last comma. */
static char *end_of_key(char *key) {
  char *end = strchr(key, ']');
  if (!end) return key + strlen(key);
  char *close = strchr(end, ')'), *open = strchr(end, '(');
  if (!close || (open && open < close)) return end + 1;
  char *at = close;
  while (at > end && *at != ',') at--;
  return at > end ? at : close;
}

void lw_shorten_keys(char *text) {
  for (char *key = strchr(text, '['); key != NULL; key = strchr(text, '[')) {
    char *begin = key, *end = end_of_key(key);
    while (begin > text && (begin[-1] == ' ' || begin[-1] == ',' || begin[-1] == ';')) begin--;
    memmove(begin, end, strlen(end) + 1);
  }
}

const char *lw_shorten_next(const char *sentence) {
  for (const char *at = sentence; *at != '\0'; at++) {
    if (at[0] == '.' && at[1] == ' ' && isupper((unsigned char)at[2])) return at + 2;
  }
  return sentence + strlen(sentence);
}

int lw_shorten_lines(const lw_page *page, const char *prefix, const char *text) {
  lw_text words = {0};
  lw_page scratch = {.out = &words, .style = {.columns = page->style.columns}};
  int lines = 0;
  lw_page_say(&scratch, prefix, text);
  for (size_t i = 0; i < words.length; i++) lines += words.data[i] == '\n' ? 1 : 0;
  page->out->failed = page->out->failed || words.failed;
  lw_text_free(&words);
  return lines;
}

void lw_shorten_sentences(const lw_page *page, const char *prefix, int lines, char *text) {
  while (lw_shorten_lines(page, prefix, text) > lines) {
    const char *last = text;
    for (const char *next = lw_shorten_next(last); *next != '\0'; next = lw_shorten_next(last)) last = next;
    if (last == text) return;
    text[last - text - 1] = '\0';
  }
}

void lw_shorten_to(int characters, char *text) {
  int count = 0;
  char *cut = text;
  for (char *at = text; *at != '\0'; at++) {
    if (((unsigned char)*at & 0xC0) == 0x80) continue;
    if (count == characters - 3) cut = at;
    count++;
  }
  if (count > characters) lw_print(cut, 4, "...");
}
