/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <string.h>

static bool is_blank(char c) {
  return c == ' ' || c == '\t';
}

static lw_ask_part trimmed(const char *text, size_t length) {
  while (length > 0 && is_blank(text[0])) text++, length--;
  while (length > 0 && is_blank(text[length - 1])) length--;
  return (lw_ask_part){text, length};
}

bool lw_ask_next(const char **at, char mark, lw_ask_part *part) {
  if (*at == NULL || **at == '\0') return false;
  const char *end = strchr(*at, mark);
  *part = trimmed(*at, end ? (size_t)(end - *at) : strlen(*at));
  *at = end ? end + 1 : NULL;
  return true;
}

lw_ask_part lw_ask_nth(const char *list, char mark, int n) {
  lw_ask_part part = {"", 0};
  for (const char *at = list; lw_ask_next(&at, mark, &part); n--)
    if (n == 0) return part;
  return (lw_ask_part){"", 0};
}

int lw_ask_count(const char *list, char mark) {
  lw_ask_part part;
  int count = 0;
  for (const char *at = list; lw_ask_next(&at, mark, &part);) count++;
  return count;
}

bool lw_ask_is(const lw_ask_part *part, const char *word) {
  return strlen(word) == part->length && memcmp(part->text, word, part->length) == 0;
}

const char *lw_ask_copy(const lw_ask_part *part, char *out, size_t size) {
  size_t length = part->length < size ? part->length : size - 1;
  memcpy(out, part->text, length);
  out[length] = '\0';
  return out;
}

bool lw_ask_pair_of(const lw_ask_part *part, lw_ask_pair *pair) {
  const char *equals = memchr(part->text, '=', part->length);
  size_t name = equals ? (size_t)(equals - part->text) : part->length;
  size_t rest = equals ? part->length - name - 1 : 0;
  *pair = (lw_ask_pair){.value = trimmed(equals ? equals + 1 : "", rest)};
  pair->named.item = lw_item_find(part->text, name, &pair->named.number);
  return pair->named.item != NULL;
}

lw_ask_walk lw_ask_begin(const char *list) {
  return (lw_ask_walk){.at = list, .index = -1};
}

/* "run 1 length + run 3 length": the items of one part, one after the other. */
bool lw_ask_step(lw_ask_walk *walk) {
  lw_ask_part item;
  if (walk->plus == NULL || walk->plus >= walk->part.text + walk->part.length) {
    if (!lw_ask_next(&walk->at, ';', &walk->part)) return false;
    walk->plus = walk->part.text;
    walk->index++;
  }
  size_t left = (size_t)(walk->part.text + walk->part.length - walk->plus);
  const char *plus = memchr(walk->plus, '+', left);
  bool many = plus != NULL && memchr(walk->part.text, '=', walk->part.length) == NULL;
  item = trimmed(walk->plus, many ? (size_t)(plus - walk->plus) : left);
  walk->plus = many ? plus + 1 : walk->part.text + walk->part.length;
  return lw_ask_pair_of(&item, &walk->pair);
}

bool lw_ask_same(const lw_named *a, const lw_named *b) {
  return a->item == b->item && a->number == b->number && a->likely == b->likely;
}

bool lw_ask_has(const char *list, const lw_named *named) {
  for (lw_ask_walk walk = lw_ask_begin(list); lw_ask_step(&walk);)
    if (lw_ask_same(&walk.pair.named, named)) return true;
  return false;
}
