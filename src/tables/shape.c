/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "shape.h"

#include <string.h>

const lw_shape *lw_shape_at(size_t index) {
  if (index < lw_ground_shape_count) return &lw_ground_shapes[index];
  index -= lw_ground_shape_count;
  if (index < lw_law_shape_count) return &lw_law_shapes[index];
  index -= lw_law_shape_count;
  return index < lw_question_shape_count ? &lw_question_shapes[index] : NULL;
}

const lw_shape *lw_shape_find(const char *name, size_t length) {
  const lw_shape *shape;
  for (size_t i = 0; (shape = lw_shape_at(i)) != NULL; i++)
    if (strlen(shape->name) == length && memcmp(shape->name, name, length) == 0) return shape;
  return NULL;
}

const char *lw_tables_name_at(size_t index) {
  const lw_shape *shape = lw_shape_at(index);
  return shape ? shape->name : NULL;
}

int lw_word_index(const char *words, const char *word) {
  size_t length = strlen(word);
  for (int index = 0; words; index++) {
    const char *end = strchr(words, '|');
    size_t span = end ? (size_t)(end - words) : strlen(words);
    if (span == length && memcmp(words, word, length) == 0) return index;
    words = end ? end + 1 : NULL;
  }
  return -1;
}

bool lw_tables_listed(const char *list, const char *slug) {
  return slug[0] != '\0' && lw_word_index(list, slug) >= 0;
}

const char *lw_seen_word(lw_seen seen) {
  static const char *const words[] = {"seen", "memory", "derived", "proposal", "practice"};
  return words[seen];
}
