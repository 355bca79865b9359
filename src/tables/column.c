/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "shape.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/utf8.h"

/* Every word of the cell, or the cell as one word, stands in the list. */
static bool in_words(const lw_column *column, const char *cell) {
  if (column->type == LW_COLUMN_TEXT) return lw_word_index(column->words, cell) >= 0;
  for (const char *at = cell;; at++) {
    char word[64];
    size_t length = strcspn(at, "|");
    snprintf(word, sizeof word, "%.*s", (int)length, at);
    if (length >= sizeof word || lw_word_index(column->words, word) < 0) return false;
    at += length;
    if (*at == '\0') return true;
  }
}

static const char *store_text(const lw_column *column, const char *cell, size_t length, char *member,
                              char *wanted, size_t size) {
  if (!lw_is_utf8(cell, length)) return "UTF-8 text should stand there";
  if (length >= column->size) {
    snprintf(wanted, size, "at most %zu bytes have room", column->size - 1);
    return wanted;
  }
  if (column->type != LW_COLUMN_SAID && strchr(cell, '{')) return "no figure is quoted in this column";
  if (column->words && length > 0 && !in_words(column, cell)) {
    const char *how = column->type == LW_COLUMN_WORDS ? "words" : "one";
    snprintf(wanted, size, "%s of %.120s should stand there", how, column->words);
    return wanted;
  }
  memcpy(member, cell, length + 1);
  return NULL;
}

static const char *read_number(const lw_column *column, const char *cell, size_t length, double *value,
                               char *wanted, size_t size) {
  double number;
  if (!lw_number_read(cell, length, &number)) return "a number with a decimal point should stand there";
  if (number < column->low || number > column->high) {
    snprintf(wanted, size, "the number should lie within %g and %g", column->low, column->high);
    return wanted;
  }
  *value = number;
  return NULL;
}

static const char *store_integer(const lw_column *column, const char *cell, size_t length, void *member,
                                 char *wanted, size_t size) {
  double value = 0;
  const char *wrong = read_number(column, cell, length, &value, wanted, size);
  if (wrong) return wrong;
  int whole = (int)value;
  if (value > whole || value < whole) return "a whole number should stand there";
  memcpy(member, &whole, sizeof whole);
  return NULL;
}

static const char *store_double(const lw_column *column, const char *cell, size_t length, void *member,
                                char *wanted, size_t size) {
  double value = NAN;
  if (length > 0) {
    const char *wrong = read_number(column, cell, length, &value, wanted, size);
    if (wrong) return wrong;
    value *= column->scale;
  }
  memcpy(member, &value, sizeof value);
  return NULL;
}

static const char *store_word(const lw_column *column, const char *cell, void *member, char *wanted,
                              size_t size) {
  int index = cell[0] == '\0' && column->may_be_empty ? 0 : lw_word_index(column->words, cell);
  if (index < 0) {
    snprintf(wanted, size, "one of %s should stand there", column->words);
    return wanted;
  }
  if (column->type == LW_COLUMN_YES_NO) {
    bool yes = index % 2 == 1;
    memcpy(member, &yes, sizeof yes);
  } else if (column->type == LW_COLUMN_LETTER) {
    memcpy(member, cell, 1);
  } else {
    memcpy(member, &index, sizeof index);
  }
  return NULL;
}

const char *lw_column_store(const lw_column *column, const char *cell, size_t length, void *row, char *wanted,
                            size_t size) {
  void *member = (char *)row + column->offset;
  if (strlen(cell) != length) return "the cell holds a NUL byte";
  if (length == 0 && !column->may_be_empty) return "the cell may not be empty";
  switch (column->type) {
  case LW_COLUMN_SAID:
  case LW_COLUMN_WORDS:
  case LW_COLUMN_TEXT: return store_text(column, cell, length, member, wanted, size);
  case LW_COLUMN_NUMBER: return store_double(column, cell, length, member, wanted, size);
  case LW_COLUMN_INTEGER: return store_integer(column, cell, length, member, wanted, size);
  case LW_COLUMN_WORD:
  case LW_COLUMN_YES_NO:
  case LW_COLUMN_LETTER: break;
  }
  return store_word(column, cell, member, wanted, size);
}
