/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include "grid.h"

#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "sheet/cells.h"

typedef struct reading {
  lw_grid *grid;
  int room; /* rows that fit */
  bool failed;
} reading;

static bool make_room(reading *r, int row) {
  lw_grid *grid = r->grid;
  if (row < r->room) return true;
  int room = r->room < 64 ? 64 : r->room * 2;
  size_t width = (size_t)grid->columns, had = (size_t)r->room * width, want = (size_t)room * width;
  char **cell = realloc(grid->cell, want * sizeof *cell);
  if (cell == NULL) return false;
  memset(cell + had, 0, (want - had) * sizeof *cell);
  grid->cell = cell;
  r->room = room;
  return true;
}

static void take_cell(void *context, const char *text, size_t length, int row, int column) {
  enum { HEADER_MOST = 64 };
  reading *r = context;
  lw_grid *grid = r->grid;
  (void)row;
  (void)length;
  if (grid->rows == 0 && r->room == 0) grid->columns = HEADER_MOST;
  if (r->failed || text == NULL || column > grid->columns) return;
  r->failed = !make_room(r, grid->rows);
  if (r->failed) return;
  char **place = &grid->cell[grid->rows * grid->columns + column - 1];
  *place = strdup(text);
  r->failed = *place == NULL;
}

static void end_row(void *context, int row, int cells) {
  reading *r = context;
  (void)row;
  if (cells > 0 && !r->failed && r->room > r->grid->rows) r->grid->rows++;
}

lw_status lw_grid_read(const lw_text *csv, lw_grid *grid) {
  lw_faults *faults = calloc(1, sizeof *faults);
  lw_cells *cells = calloc(1, sizeof *cells);
  reading r = {.grid = grid};
  *grid = (lw_grid){0};
  lw_status status = LW_NO_MEMORY;
  if (faults != NULL && cells != NULL) {
    cells->context = &r;
    cells->cell = take_cell;
    cells->row_end = end_row;
    cells->faults = faults;
    lw_cells_open(cells);
    lw_cells_feed(cells, csv->data != NULL ? csv->data : "", csv->length);
    lw_cells_finish(cells);
    lw_cells_close(cells);
    status = r.failed ? LW_NO_MEMORY : faults->count > 0 ? LW_FAULTS : LW_OK;
  }
  free(cells);
  free(faults);
  return status;
}

void lw_grid_free(lw_grid *grid) {
  for (int i = 0; grid->cell != NULL && i < grid->rows * grid->columns; i++) free(grid->cell[i]);
  free(grid->cell);
  *grid = (lw_grid){0};
}

const char *lw_grid_at(const lw_grid *grid, int row, int column) {
  const char *cell = column < 0 ? NULL : grid->cell[row * grid->columns + column];
  return cell != NULL ? cell : "";
}

int lw_grid_column(const lw_grid *grid, const char *header) {
  for (int i = 0; grid->rows > 0 && i < grid->columns; i++)
    if (strcmp(lw_grid_at(grid, 0, i), header) == 0) return i;
  return -1;
}

void lw_grid_remove(lw_grid *grid, int row) {
  char **first = &grid->cell[row * grid->columns];
  size_t after = (size_t)(grid->rows - row - 1) * (size_t)grid->columns;
  for (int i = 0; i < grid->columns; i++) free(first[i]);
  memmove(first, first + grid->columns, after * sizeof *first);
  grid->rows--;
}

void lw_grid_add_cell(lw_text *out, const char *cell) {
  bool plain = strpbrk(cell, ",\"\r\n") == NULL, runs = lw_cell_runs(cell);
  if (plain) {
    if (runs) lw_text_add(out, "'");
    lw_text_add(out, cell);
    return;
  }
  lw_text_add(out, runs ? "\"'" : "\"");
  for (const char *c = cell; *c != '\0'; c++)
    if (*c == '"')
      lw_text_add(out, "\"\"");
    else
      lw_text_add_bytes(out, c, 1);
  lw_text_add(out, "\"");
}

void lw_grid_csv(const lw_grid *grid, lw_text *out) {
  for (int row = 0; row < grid->rows; row++) {
    for (int i = 0; i < grid->columns && lw_grid_at(grid, 0, i)[0] != '\0'; i++) {
      if (i > 0) lw_text_add(out, ",");
      lw_grid_add_cell(out, lw_grid_at(grid, row, i));
    }
    lw_text_add(out, "\n");
  }
}
