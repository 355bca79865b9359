/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "schedule.h"

#include <stdlib.h>
#include <string.h>

#include "cells.h"
#include "entry.h"
#include "faults.h"
#include "likely.h"
#include "marks.h"
#include "said.h"

/* The schedule: the header row holds the items, each with its unit in brackets; a row a wall. The header is
 * resolved once; a row then costs no search, and the memory is that of one row and a few bytes a mark. */

enum { COLUMN_MAX = 512 };

typedef struct column {
  lw_named of; /* its item is NULL where there is no name in the header, or a faulty one */
  const lw_unit *unit;
  size_t place, size; /* of its value in a case */
} column;

struct lw_schedule {
  lw_cells cells;
  lw_schedule_row each;
  void *context;
  lw_faults *header_faults;
  lw_faults row_faults;
  lw_case c; /* of the row in hand */
  size_t row_size;
  int column_count, mark_column; /* from 1; 0: no marks */
  lw_marks marks;
  bool no_memory;
  bool has_header, bad_header, any_row, row_has_cells;
  column column[COLUMN_MAX];
};

size_t lw_header_split(const char *text, size_t length, char *unit, size_t size) {
  const char *open = memchr(text, '[', length);
  unit[0] = '\0';
  if (open == NULL || text[length - 1] != ']') {
    return length;
  }
  size_t inside = (size_t)(text + length - 1 - (open + 1));
  lw_print(unit, size, "%.*s", (int)inside, open + 1);
  return (size_t)(open - text);
}

static int column_of(const lw_schedule *s, const lw_named *named) {
  for (int i = 0; i < s->column_count; i++) {
    const lw_named *of = &s->column[i].of;
    if (of->item == named->item && of->number == named->number && of->likely == named->likely) {
      return i + 1;
    }
  }
  return 0;
}

static void resolve(lw_schedule *s, const char *text, size_t length, int row, int at, column *col) {
  char unit[64];
  size_t name = lw_header_split(text, length, unit, sizeof unit);
  lw_named named;
  if (!lw_entry_item(text, name, (lw_cell_place){row, at}, &named, s->header_faults)) {
    return;
  }
  int earlier = column_of(s, &named);
  if (earlier > 0) {
    lw_faults_add(s->header_faults, LW_FAULT_DUPLICATE_ITEM, (lw_cell_place){row, at}, "", text,
                  "it once; it heads column %d already", earlier);
  } else if (lw_entry_unit(named.item, unit, row, at, &col->unit, s->header_faults)) {
    static const size_t sizes[] = {
        [LW_ITEM_QUANTITY] = sizeof(lw_quantity),
        [LW_ITEM_CHOICE] = sizeof(lw_choice),
        [LW_ITEM_WORDS] = sizeof(lw_words),
    };
    col->of = named;
    col->place = lw_item_offset(named.item, named.number);
    col->size = sizes[named.item->type];
    s->row_size += col->size;
    if (col->place == offsetof(lw_case, about.mark)) s->mark_column = at;
  }
}

static void header_cell(lw_schedule *s, const char *text, size_t length, int row, int at) {
  column col = {0};
  if (at > COLUMN_MAX) {
    lw_faults_add(s->header_faults, LW_FAULT_TOO_MANY, (lw_cell_place){row, at}, "", text != NULL ? text : "",
                  "at most %d columns", COLUMN_MAX);
    return;
  }
  if (text != NULL && length > 0) {
    resolve(s, text, length, row, at, &col);
  }
  s->column[at - 1] = col;
  s->column_count = at;
}

static void take_cell(void *context, const char *text, size_t length, int row, int at) {
  lw_schedule *s = context;
  if (!s->has_header) {
    header_cell(s, text, length, row, at);
    return;
  }
  if (s->bad_header || (text != NULL && length == 0)) {
    return;
  }
  s->row_has_cells = true;
  if (text == NULL) {
    return;
  }
  const column *col = at <= s->column_count ? &s->column[at - 1] : NULL;
  if (col == NULL || col->of.item == NULL) {
    lw_faults_add(
        &s->row_faults, LW_FAULT_CELL_COUNT, (lw_cell_place){row, at}, "", text,
        "nothing under a column without a name; a comma inside a cell needs quotation marks around it");
    return;
  }
  lw_entry entry = {.item = col->of.item,
                    .number = col->of.number,
                    .likely = col->of.likely,
                    .value = text,
                    .length = length,
                    .unit = col->unit,
                    .comma_is_decimal = s->cells.comma_is_decimal,
                    .row = row,
                    .column = at};
  lw_entry_store(&entry, &s->c, &s->row_faults);
}

/* Nothing was stored but under the columns. */
static void forget_row(lw_schedule *s) {
  for (int i = 0; i < s->column_count; i++) {
    const column *col = &s->column[i];
    if (col->of.item != NULL && !col->of.likely) {
      lw_entry_forget(col->of.item, col->of.number, &s->c);
    }
  }
  s->c.likely.count = 0;
  s->c.told.count = 0;
}

/* By its mark a wall is found again, in the results and on the site. */
static void hold_mark(lw_schedule *s, int row) {
  lw_cell_place place = {row, s->mark_column};
  if (s->mark_column == 0) return;
  if (s->c.about.mark.text[0] == '\0') {
    lw_faults_add(&s->row_faults, LW_FAULT_NO_MARK, place, "mark", "",
                  "a mark for each wall, or no such column");
    return;
  }
  lw_marked marked = lw_marks_add(&s->marks, s->c.about.mark.text);
  s->no_memory = s->no_memory || marked == LW_MARK_NO_MEMORY;
  if (marked == LW_MARK_TWICE)
    lw_faults_add(&s->row_faults, LW_FAULT_DUPLICATE_MARK, place, "mark", s->c.about.mark.text,
                  "a mark that no row above has");
}

static void end_row(void *context, int row, int cells) {
  lw_schedule *s = context;
  if (!s->has_header) {
    s->has_header = cells > 0;
    s->bad_header = s->header_faults->count > 0;
    s->cells.faults = s->has_header && !s->bad_header ? &s->row_faults : s->header_faults;
    return;
  }
  if (s->row_has_cells && !s->bad_header) {
    s->any_row = true;
    hold_mark(s, row);
    s->each(s->context, row, &s->c, &s->row_faults);
    forget_row(s);
  }
  s->row_faults.count = 0;
  s->row_has_cells = false;
}

lw_schedule *lw_schedule_open(lw_schedule_row each, void *context, lw_faults *header_faults) {
  lw_schedule *s = calloc(1, sizeof *s);
  if (s == NULL) {
    return NULL;
  }
  s->each = each;
  s->context = context;
  s->header_faults = header_faults;
  memcpy(s->row_faults.file, header_faults->file, sizeof s->row_faults.file);
  s->cells.context = s;
  s->cells.cell = take_cell;
  s->cells.row_end = end_row;
  s->cells.faults = header_faults;
  lw_cells_open(&s->cells);
  return s;
}

size_t lw_schedule_row_size(const lw_schedule *schedule) {
  return schedule->row_size;
}

/* A likely value that the row leaves out is packed as an absent one. */
static void pack_likely(const column *col, const lw_case *c, unsigned char *bytes) {
  static const lw_quantity none = {.table_row = -1};
  const lw_quantity *q = lw_item_likely(col->of.item, col->of.number, c);
  memcpy(bytes, q != NULL ? q : &none, sizeof *q);
}

static void unpack_likely(const column *col, const unsigned char *bytes, lw_case *c) {
  lw_quantity q;
  memcpy(&q, bytes, sizeof q);
  if (q.origin != LW_ABSENT) (void)lw_item_set_likely(col->of.item, col->of.number, &q, c);
}

void lw_schedule_pack(const lw_schedule *schedule, const lw_case *c, unsigned char *bytes) {
  for (int i = 0; i < schedule->column_count; i++) {
    const column *col = &schedule->column[i];
    if (col->of.likely)
      pack_likely(col, c, bytes);
    else if (col->of.item != NULL)
      lw_item_copy_value(col->of.item, bytes, (const char *)c + col->place);
    bytes += col->size;
  }
}

static void count_written(const column *col, const lw_case *c, int written[2]) {
  const lw_quantity *q = (const void *)((const char *)c + col->place);
  if (col->of.item->type == LW_ITEM_QUANTITY && lw_is_measured(q)) written[q->in]++;
}

void lw_schedule_unpack(const lw_schedule *schedule, const unsigned char *bytes, lw_case *c) {
  int written[2] = {0};
  memset(c, 0, sizeof *c);
  for (int i = 0; i < schedule->column_count; i++) {
    const column *col = &schedule->column[i];
    if (col->of.likely) {
      unpack_likely(col, bytes, c);
    } else if (col->of.item != NULL) {
      lw_item_copy_value(col->of.item, (char *)c + col->place, bytes);
      lw_said_unpacked(col->of.item, col->of.number, c);
      count_written(col, c, written);
    }
    bytes += col->size;
  }
  c->counted = true;
  c->most = written[LW_UNITS_US] > written[LW_UNITS_METRIC] ? LW_UNITS_US : LW_UNITS_METRIC;
}

/* Broken quoting ends the reading: a fault of the file, noted among those of the row it broke. */
static lw_status outcome(lw_schedule *s) {
  if (s->cells.stopped && s->cells.faults == &s->row_faults && s->row_faults.count > 0) {
    const lw_fault *last = &s->row_faults.fault[s->row_faults.count - 1];
    lw_faults_add(s->header_faults, last->slug, (lw_cell_place){last->row, last->column}, last->item,
                  last->stood, "%s", last->wanted);
    s->row_faults.count = 0;
  }
  if (s->no_memory) return LW_NO_MEMORY;
  return s->header_faults->count > 0 ? LW_FAULTS : LW_OK;
}

lw_status lw_schedule_feed(lw_schedule *schedule, const char *bytes, size_t length) {
  lw_cells_feed(&schedule->cells, bytes, length);
  return outcome(schedule);
}

lw_status lw_schedule_finish(lw_schedule *schedule) {
  lw_cells_finish(&schedule->cells);
  if (outcome(schedule) == LW_OK && !schedule->any_row) {
    if (schedule->has_header)
      lw_faults_add(schedule->header_faults, LW_FAULT_NO_ROWS, (lw_cell_place){0, 0}, "", "",
                    "a row a wall, each value under its item");
    else
      lw_faults_add(schedule->header_faults, LW_FAULT_EMPTY, (lw_cell_place){1, 1}, "", "",
                    "a header of items and a row a wall");
  }
  return outcome(schedule);
}

void lw_schedule_close(lw_schedule *schedule) {
  if (schedule != NULL) {
    lw_cells_close(&schedule->cells);
    lw_marks_free(&schedule->marks);
    free(schedule);
  }
}

/* What the first row is: does it hold items, and nothing that can only be a value? */
typedef struct first_row {
  bool done, has_item, has_number, upright;
} first_row;

static void look_at_cell(void *context, const char *text, size_t length, int row, int at) {
  first_row *first = context;
  (void)row;
  if (first->done || text == NULL || length == 0) {
    return;
  }
  char unit[64];
  char folded[LW_FOLDED_MAX];
  int number;
  double value;
  size_t name = lw_header_split(text, length, unit, sizeof unit);
  lw_fold(text, length, folded);
  bool item_word = strcmp(folded, "item") == 0;
  first->upright = first->upright || (at == 1 && item_word);
  first->has_item = first->has_item || lw_item_find(text, lw_likely_stem(text, name), &number) != NULL;
  first->has_number = first->has_number || lw_number_read(text, length, &value);
}

static void look_at_row_end(void *context, int row, int cells) {
  (void)row;
  ((first_row *)context)->done = ((first_row *)context)->done || cells > 0;
}

bool lw_sheet_is_schedule(const char *bytes, size_t length) {
  lw_faults faults = {0};
  first_row first = {0};
  lw_cells cells = {.context = &first, .cell = look_at_cell, .row_end = look_at_row_end, .faults = &faults};
  lw_cells_open(&cells);
  for (size_t i = 0; i < length && !first.done && !cells.stopped; i++) {
    lw_cells_feed(&cells, bytes + i, 1);
  }
  if (!first.done) {
    lw_cells_finish(&cells);
  }
  lw_cells_close(&cells);
  return first.has_item && !first.has_number && !first.upright;
}
