/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "items.h"

#include <string.h>

/* A list of words is "no=n=false|yes=y=true": `|` between the choices, `=` before another way to say one. */

static const char *word_end(const char *word) {
  return word + strcspn(word, "|=");
}

int lw_item_word_value(const lw_item *item, const char *folded) {
  size_t length = strlen(folded);
  int value = 0;
  for (const char *word = item->words;;) {
    const char *end = word_end(word);
    if ((size_t)(end - word) == length && strncmp(word, folded, length) == 0) {
      return value;
    }
    if (*end == '\0') {
      return -1;
    }
    value += *end == '|' ? 1 : 0;
    word = end + 1;
  }
}

const char *lw_item_word(const lw_item *item, int value, char *out, size_t size) {
  const char *word = item->words;
  for (int i = 0; i < value && word != NULL; i++) {
    word = strchr(word, '|');
    word = word != NULL ? word + 1 : NULL;
  }
  if (word == NULL) {
    lw_print(out, size, "%s", "");
  } else {
    lw_print(out, size, "%.*s", (int)(word_end(word) - word), word);
  }
  return out;
}

void lw_item_list_words(const lw_item *item, char *out, size_t size) {
  size_t used = 0;
  out[0] = '\0';
  for (int value = 0;; value++) {
    char word[32];
    lw_item_word(item, value, word, sizeof word);
    if (word[0] == '\0' || used + strlen(word) + 3 > size) {
      return;
    }
    used += (size_t)lw_print(out + used, size - used, "%s%s", value > 0 ? ", " : "", word);
  }
}

static int least(int a, int b) {
  return a < b ? a : b;
}

bool lw_item_nearest(const char *stood, char *out, size_t size) {
  char folded[LW_ITEM_NAME_MAX];
  if (lw_fold(stood, strlen(stood), folded) == 0) {
    return false;
  }
  /* A number in the name is put aside, so that "soil 1 frction angle" is near to its item. */
  int number = 0;
  for (char *c = folded; *c != '\0'; c++) {
    if (*c >= '1' && *c <= '9' && c > folded && c[-1] == ' ' && (c[1] == ' ' || c[1] == '\0')) {
      number = *c - '0';
      *c = '#';
    }
  }
  int best = least(6, 1 + (int)strlen(folded) / 3);
  const lw_item *nearest = NULL;
  for (size_t i = 0; i < lw_item_count(); i++) {
    int distance = lw_edit_distance(folded, lw_item_at(i)->name);
    if (distance < best) {
      best = distance;
      nearest = lw_item_at(i);
    }
  }
  if (nearest != NULL) {
    lw_item_print_name(nearest, number > 0 ? number : 1, out, size);
  }
  return nearest != NULL;
}
