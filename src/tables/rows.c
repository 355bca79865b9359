/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "shape.h"

#include <csv.h>
#include <stdio.h>
#include <string.h>

/* Enumerations of the tables are stored through their index. */
_Static_assert(sizeof(lw_seen) == sizeof(int), "an enumeration of the tables is not int-sized");
_Static_assert(sizeof(lw_trigger) == sizeof(int), "an enumeration of the tables is not int-sized");

typedef struct reading {
  const lw_shape *shape;
  lw_tables *tables;
  lw_error *error;
  lw_status status;
  int row;      /* from 1, as a spreadsheet counts */
  size_t cells; /* of the row in hand */
  bool header_seen;
  int last_ending; /* byte that ended the row before: CR LF ends a row twice */
} reading;

static int *count_of(const reading *r) {
  return (int *)(void *)((char *)r->tables + r->shape->count_offset);
}

static char *row_at(const reading *r, int index) {
  return (char *)r->tables + r->shape->rows_offset + (size_t)index * r->shape->row_size;
}

static void fault(reading *r, const char *column, const char *stood, const char *wanted) {
  r->status = lw_error_set(r->error, LW_FAULTS, LW_REASON_NONE,
                           "%s.csv row %d, column %.40s: \"%.40s\" stands there; %s", r->shape->name, r->row,
                           column, stood, wanted);
}

static void read_header_cell(reading *r, const char *cell) {
  char wanted[96];
  if (r->cells >= r->shape->column_count) return;
  const char *header = r->shape->columns[r->cells].header;
  if (strcmp(cell, header) == 0) return;
  snprintf(wanted, sizeof wanted, "the header should be \"%s\" (commas between cells)", header);
  fault(r, header, cell, wanted);
}

static void read_cell(void *text, size_t length, void *context) {
  reading *r = context;
  const char *cell = text;
  if (r->status != LW_OK) return;
  if (!r->header_seen) {
    read_header_cell(r, cell);
  } else if (r->cells < r->shape->column_count && (size_t)*count_of(r) < r->shape->row_limit) {
    char wanted[160];
    const lw_column *column = &r->shape->columns[r->cells];
    const char *wrong = lw_column_store(column, cell, length, row_at(r, *count_of(r)), wanted, sizeof wanted);
    if (wrong) fault(r, column->header, cell, wrong);
  }
  r->cells++;
}

static bool same_keys(const reading *r, const char *a, const char *b) {
  for (size_t k = 0; k < r->shape->key_columns; k++)
    if (strcmp(a + r->shape->columns[k].offset, b + r->shape->columns[k].offset) != 0) return false;
  return true;
}

static void end_data_row(reading *r) {
  int count = *count_of(r);
  if ((size_t)count >= r->shape->row_limit) {
    r->status =
        lw_error_set(r->error, LW_TOO_MANY, LW_REASON_NONE, "%s.csv row %d: there is room for %zu rows",
                     r->shape->name, r->row, r->shape->row_limit);
    return;
  }
  for (int i = 0; i < count; i++)
    if (same_keys(r, row_at(r, i), row_at(r, count))) {
      fault(r, r->shape->columns[0].header, row_at(r, count) + r->shape->columns[0].offset,
            "an earlier row has it already");
      return;
    }
  *count_of(r) = count + 1;
}

static void end_row(int ending, void *context) {
  reading *r = context;
  bool second_half = ending == '\n' && r->last_ending == '\r' && r->cells == 0;
  r->last_ending = second_half ? 0 : ending;
  if (second_half || r->status != LW_OK) return;
  if (r->cells > 0 && r->cells != r->shape->column_count) {
    char wanted[64];
    snprintf(wanted, sizeof wanted, "the row should have %zu cells", r->shape->column_count);
    char stood[32];
    snprintf(stood, sizeof stood, "%zu cells", r->cells);
    fault(r, "all", stood, wanted);
  } else if (r->cells > 0 && r->header_seen) {
    end_data_row(r);
  } else if (r->cells > 0) {
    r->header_seen = true;
  }
  r->cells = 0;
  r->row++;
}

static lw_status parse(reading *r, const char *bytes, size_t length) {
  struct csv_parser parser;
  if (csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL | CSV_REPALL_NL) != 0)
    return lw_error_set(r->error, LW_NO_MEMORY, LW_REASON_NONE, "out of memory");
  bool whole = csv_parse(&parser, bytes, length, read_cell, end_row, r) == length &&
               csv_fini(&parser, read_cell, end_row, r) == 0;
  int broken = csv_error(&parser);
  csv_free(&parser);
  if (whole || r->status != LW_OK) return r->status;
  if (broken == CSV_ENOMEM) return lw_error_set(r->error, LW_NO_MEMORY, LW_REASON_NONE, "out of memory");
  fault(r, "any", "\"", "a quotation mark is stray or never closed");
  return r->status;
}

lw_status lw_shape_read(const lw_shape *shape, const char *bytes, size_t length, lw_tables *tables,
                        lw_error *error) {
  reading r = {.shape = shape, .tables = tables, .error = error, .status = LW_OK, .row = 1};
  *count_of(&r) = 0;
  if (length >= 3 && memcmp(bytes, "\xEF\xBB\xBF", 3) == 0) {
    bytes += 3;
    length -= 3;
  }
  lw_status status = parse(&r, bytes, length);
  if (status == LW_OK && *count_of(&r) == 0)
    return lw_error_set(error, LW_FAULTS, LW_REASON_NONE, "%s.csv row 1: the file has no rows", shape->name);
  return status;
}
