/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cells.h"

#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "tables/shape.h"

/* The built-in tables before they are linked, as they are read, and with one cell changed. */
typedef struct cells {
  lw_tables raw, whole, changed;
} cells;

static cells *all(void) {
  static cells *c;
  if (c) return c;
  c = calloc(1, sizeof *c);
  cr_assert_not_null(c);
  cr_assert_eq(lw_tables_read(NULL, &c->whole, NULL), LW_OK);
  const lw_shape *shape;
  for (size_t i = 0; (shape = lw_shape_at(i)) != NULL; i++) {
    lw_text text = {0};
    cr_assert_eq(lw_tables_csv(NULL, shape->name, &text, NULL), LW_OK);
    cr_assert_eq(lw_shape_read(shape, text.data, text.length, &c->raw, NULL), LW_OK);
    lw_text_free(&text);
  }
  return c;
}

const lw_tables *cells_built_in(void) {
  return &all()->whole;
}

static char *row_in(lw_tables *tables, const lw_shape *shape, int row) {
  return (char *)tables + shape->rows_offset + (size_t)row * shape->row_size;
}

static int rows_of(const lw_shape *shape) {
  int count;
  memcpy(&count, (char *)&all()->raw + shape->count_offset, sizeof count);
  return count;
}

static bool is_empty(const lw_shape *shape, const lw_column *column, int row) {
  const char *member = row_in(&all()->raw, shape, row) + column->offset;
  double value;
  if (column->type == LW_COLUMN_TEXT || column->type == LW_COLUMN_SAID || column->type == LW_COLUMN_WORDS)
    return member[0] == '\0';
  if (column->type != LW_COLUMN_NUMBER) return false;
  memcpy(&value, member, sizeof value);
  return isnan(value);
}

/* The n-th other value of a number; false past the last. */
static bool other_number(const lw_column *column, int n, char *member) {
  double value, low = column->low * column->scale, high = column->high * column->scale;
  memcpy(&value, member, sizeof value);
  const double others[] = {1.7 * value,  0.45 * value,          1.04 * value,
                           0.96 * value, 4.0 * value,           0.1 * value,
                           low,          fmin(high, low + 1.0), low + 0.5 * fmin(high - low, 1.0)};
  if (n >= (int)(sizeof others / sizeof *others)) return false;
  double other = fmin(fmax(others[n], low), high);
  memcpy(member, &other, sizeof other);
  return true;
}

static int words_in(const char *words) {
  int count = 1;
  for (const char *at = words; *at; at++) count += *at == '|' ? 1 : 0;
  return count;
}

static bool other_word(const lw_column *column, int n, char *member) {
  if (n >= words_in(column->words)) return false;
  const char *at = column->words;
  for (int i = 0; i < n; i++) at += strcspn(at, "|") + 1;
  size_t length = strcspn(at, "|");
  if (column->type == LW_COLUMN_LETTER) {
    *member = *at;
  } else if (column->type == LW_COLUMN_YES_NO) {
    bool yes = n % 2 == 1;
    memcpy(member, &yes, sizeof yes);
  } else if (column->type == LW_COLUMN_WORD) {
    memcpy(member, &n, sizeof n);
  } else if (length < column->size) {
    memcpy(member, at, length);
    member[length] = '\0';
  }
  return true;
}

/* A text that is free becomes another. */
static bool other_text(const lw_column *column, int n, char *member) {
  if (n > 0) return false;
  snprintf(member, column->size, "other");
  return true;
}

/* Put the n-th other value into the cell; false past the last. */
static bool change(const lw_column *column, int n, char *member) {
  switch (column->type) {
  case LW_COLUMN_NUMBER: return other_number(column, n, member);
  case LW_COLUMN_INTEGER: {
    int value = (int)column->low + n;
    memcpy(member, &value, sizeof value);
    return value <= (int)column->high;
  }
  case LW_COLUMN_SAID:
  case LW_COLUMN_TEXT: return column->words ? other_word(column, n, member) : other_text(column, n, member);
  case LW_COLUMN_WORDS:
  case LW_COLUMN_WORD:
  case LW_COLUMN_YES_NO:
  case LW_COLUMN_LETTER: break;
  }
  return other_word(column, n, member);
}

/* A number that may not stand there is no change; one that may must show. */
typedef enum outcome { REFUSED, SILENT, SHOWN } outcome;

static outcome try_change(int row, cells_look look, const lw_text *before) {
  static lw_text after;
  lw_tables *changed = &all()->changed;
  if (lw_tables_link(changed, NULL) != LW_OK || lw_tables_check(changed, NULL) != LW_OK) return REFUSED;
  lw_text_clear(&after);
  look(changed, row, &after);
  cr_assert(!after.failed);
  bool same = after.length == before->length && memcmp(after.data, before->data, after.length) == 0;
  return same ? SILENT : SHOWN;
}

/* A change shows in what comes of the row, or every other value is refused when the tables are read. */
static bool shows(const lw_shape *shape, const lw_column *column, int row, cells_look look,
                  const lw_text *before) {
  cells *c = all();
  bool silent = false;
  for (int n = 0;; n++) {
    c->changed = c->raw;
    char *member = row_in(&c->changed, shape, row) + column->offset;
    if (!change(column, n, member)) return !silent;
    if (memcmp(member, row_in(&c->raw, shape, row) + column->offset, column->size) == 0) continue;
    outcome came = try_change(row, look, before);
    if (came == SHOWN) return true;
    silent = silent || came == SILENT;
  }
}

static void key_of(const lw_shape *shape, int row, char *out, size_t size) {
  const char *from = row_in(&all()->raw, shape, row);
  snprintf(out, size, "%s%s%s", from + shape->columns[0].offset, shape->key_columns > 1 ? "," : "",
           shape->key_columns > 1 ? from + shape->columns[1].offset : "");
}

enum { COLUMNS_MAX = 64 };

/* How many cells of each column show nothing, and which. */
typedef struct silence {
  int cells[COLUMNS_MAX];
  char which[COLUMNS_MAX][2400];
} silence;

static void note_silent(const lw_shape *shape, int row, size_t k, silence *silent) {
  char key[160], *which = silent->which[k];
  size_t used = strlen(which);
  key_of(shape, row, key, sizeof key);
  snprintf(which + used, sizeof silent->which[k] - used, "%s%s", used ? "; " : "", key);
  silent->cells[k]++;
}

/* The cells of one row; columns that are looked at alike stand together, or the look is taken anew. */
static void change_row(const lw_shape *shape, int row, const cells_column *columns, silence *silent) {
  lw_text before = {0};
  cells_look looked = NULL;
  for (size_t k = 0; k < shape->column_count; k++) {
    cells_look look = columns[k].look;
    if (!look || is_empty(shape, &shape->columns[k], row)) continue;
    if (look != looked) {
      lw_text_clear(&before);
      look(&all()->whole, row, &before);
      looked = look;
    }
    if (!shows(shape, &shape->columns[k], row, look, &before)) note_silent(shape, row, k, silent);
  }
  lw_text_free(&before);
}

void cells_expect(const char *table, const cells_column *columns) {
  static silence silent;
  const lw_shape *shape = lw_shape_find(table, strlen(table));
  cr_assert_not_null(shape);
  cr_assert(shape->column_count <= COLUMNS_MAX);
  for (size_t k = 0; k < shape->column_count; k++)
    cr_assert_str_eq(columns[k].header ? columns[k].header : "", shape->columns[k].header);
  cr_assert_null(columns[shape->column_count].header);
  memset(&silent, 0, sizeof silent);
  /* The sanitized build changes a share of the rows. */
  int step = rows_of(shape) > 60 ? LONG_SHARE : RANDOM_SHARE;
  for (int row = 0; row < rows_of(shape); row += step) change_row(shape, row, columns, &silent);
  for (size_t k = 0; k < shape->column_count; k++)
    cr_expect(silent.cells[k] <= columns[k].silent,
              "%s.csv, column %s: nothing comes of %d cells, %d at most: %s", table, columns[k].header,
              silent.cells[k], columns[k].silent, silent.which[k]);
}
