/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "cells.h"
#include "entry.h"
#include "faults.h"
#include "upright.h"

/* The upright sheet: header item,value,unit,note, then a row an item. */

typedef enum role { ROLE_ITEM, ROLE_VALUE, ROLE_UNIT, ROLE_NOTE, ROLE_COUNT, ROLE_NONE = ROLE_COUNT } role;

static const char *const role_names[] = {"item", "value", "unit", "note"};

enum { COLUMN_MAX = 16 };

typedef struct field {
  char text[LW_CELL_MAX + 1];
  size_t length;
  int column; /* 0: not in this row */
  bool faulty;
} field;

typedef struct upright {
  lw_case *c;
  lw_faults *faults;
  lw_cells *cells;
  lw_upright_taker taker; /* NULL: nobody wants the rows */
  void *context;
  role role_of[COLUMN_MAX + 1];
  bool has_header, bad_header, any_row;
  int header_columns;
  field field[ROLE_COUNT];
} upright;

static bool is_role(const char *text, size_t length, role r) {
  char folded[LW_FOLDED_MAX];
  lw_fold(text, length, folded);
  return strcmp(folded, role_names[r]) == 0;
}

static void header_cell(upright *u, const char *text, size_t length, int row, int column) {
  role found = ROLE_NONE;
  for (role r = ROLE_ITEM; r < ROLE_COUNT && text != NULL; r++) {
    found = is_role(text, length, r) ? r : found;
  }
  bool blank = text != NULL && length == 0;
  bool room = column <= COLUMN_MAX;
  for (int i = 1; i < column && room && found != ROLE_NONE; i++) {
    found = u->role_of[i] == found ? ROLE_NONE : found;
  }
  if (room) {
    u->role_of[column] = found;
  }
  if (found == ROLE_NONE && !blank && !u->bad_header) {
    u->bad_header = true;
    lw_faults_add(u->faults, LW_FAULT_HEADER, (lw_cell_place){row, column}, "", text != NULL ? text : "",
                  "the header item,value,unit,note, or a row of items");
  }
}

static void keep_cell(upright *u, const char *text, size_t length, int column) {
  role r = column <= COLUMN_MAX ? u->role_of[column] : ROLE_NONE;
  if (r == ROLE_NONE) {
    return;
  }
  field *f = &u->field[r];
  f->column = column;
  f->faulty = text == NULL;
  f->length = text == NULL ? 0 : length;
  if (text != NULL) {
    memcpy(f->text, text, length);
  }
  f->text[f->length] = '\0';
}

static void take_cell(void *context, const char *text, size_t length, int row, int column) {
  upright *u = context;
  if (!u->has_header) {
    header_cell(u, text, length, row, column);
    return;
  }
  bool beyond = column > u->header_columns || column > COLUMN_MAX || u->role_of[column] == ROLE_NONE;
  if (!u->bad_header && beyond && text != NULL && length > 0) {
    lw_faults_add(u->faults, LW_FAULT_CELL_COUNT, (lw_cell_place){row, column}, "", text,
                  "at most %d cells; a comma inside a cell needs quotation marks around it",
                  u->header_columns);
  }
  keep_cell(u, text, length, column);
}

static void end_header(upright *u, int row, int cells) {
  u->has_header = true;
  u->header_columns = cells;
  bool item = false;
  bool value = false;
  for (int i = 1; i <= cells && i <= COLUMN_MAX; i++) {
    item = item || u->role_of[i] == ROLE_ITEM;
    value = value || u->role_of[i] == ROLE_VALUE;
    u->header_columns = u->role_of[i] != ROLE_NONE || i == 1 ? i : u->header_columns;
  }
  if ((!item || !value) && !u->bad_header) {
    u->bad_header = true;
    lw_faults_add(u->faults, LW_FAULT_HEADER, (lw_cell_place){row, 1}, "", "",
                  "the header item,value,unit,note, or a row of items");
  }
}

static void hand_on(const upright *u, const lw_named *named) {
  const lw_upright_row row = {.named = named,
                              .value = u->field[ROLE_VALUE].text,
                              .unit = u->field[ROLE_UNIT].text,
                              .note = u->field[ROLE_NOTE].text,
                              .comma_is_decimal = u->cells->comma_is_decimal};
  if (u->taker != NULL) u->taker(u->context, &row);
}

/* One row, its cells kept: an item given, or only a remark. */
static void take_row(upright *u, int row) {
  const field *name = &u->field[ROLE_ITEM];
  const field *value = &u->field[ROLE_VALUE];
  const field *unit = &u->field[ROLE_UNIT];
  bool blank = name->length == 0 && value->length == 0 && unit->length == 0;
  bool remark = blank && !value->faulty && !unit->faulty;
  if (name->faulty || remark) {
    if (remark && u->field[ROLE_NOTE].length > 0) hand_on(u, NULL);
    return;
  }
  u->any_row = true;
  lw_named named;
  int earlier;
  if (!lw_entry_item(name->text, name->length, (lw_cell_place){row, name->column}, &named, u->faults)) {
    return;
  }
  if (lw_named_told(&named, u->c, &earlier)) {
    lw_faults_add(u->faults, LW_FAULT_DUPLICATE_ITEM, (lw_cell_place){row, name->column}, "", name->text,
                  "it once; it stands in row %d already", earlier);
    return;
  }
  lw_entry entry = {.item = named.item,
                    .number = named.number,
                    .likely = named.likely,
                    .value = value->text,
                    .length = value->length,
                    .row = row,
                    .column = value->column > 0 ? value->column : name->column + 1,
                    .comma_is_decimal = u->cells->comma_is_decimal};
  bool sound = lw_entry_unit(named.item, unit->text, row, unit->column, &entry.unit, u->faults);
  if (sound && !value->faulty && !unit->faulty) {
    lw_entry_store(&entry, u->c, u->faults);
    hand_on(u, &named);
  }
}

static void end_row(void *context, int row, int cells) {
  upright *u = context;
  if (cells == 0) {
    return;
  }
  if (!u->has_header) {
    end_header(u, row, cells);
  } else if (!u->bad_header) {
    take_row(u, row);
  }
  for (int r = 0; r < ROLE_COUNT; r++) {
    u->field[r].text[0] = '\0';
    u->field[r].length = 0;
    u->field[r].column = 0;
    u->field[r].faulty = false;
  }
}

lw_status lw_upright_read(const char *bytes, size_t length, lw_case *c, lw_upright_taker taker, void *context,
                          lw_faults *faults) {
  upright u = {.c = c, .faults = faults, .taker = taker, .context = context};
  lw_cells cells = {.context = &u, .cell = take_cell, .row_end = end_row, .faults = faults};
  int before = faults->count;
  *c = (lw_case){0};
  for (int i = 0; i <= COLUMN_MAX; i++) {
    u.role_of[i] = ROLE_NONE;
  }
  u.cells = &cells;
  lw_cells_open(&cells);
  lw_cells_feed(&cells, bytes, length);
  lw_cells_finish(&cells);
  lw_cells_close(&cells);
  if (!u.any_row && faults->count == before) {
    lw_faults_add(faults, LW_FAULT_EMPTY, (lw_cell_place){1, 1}, "", "",
                  "the header item,value,unit,note and a row an item");
  }
  return lw_faults_more(faults, before) ? LW_FAULTS : LW_OK;
}

lw_status lw_sheet_read(const char *bytes, size_t length, lw_case *c, lw_faults *faults) {
  return lw_upright_read(bytes, length, c, NULL, NULL, faults);
}
