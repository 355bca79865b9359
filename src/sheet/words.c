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
