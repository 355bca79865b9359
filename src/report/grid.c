/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "grid.h"

#include <string.h>

static bool is_note(const lw_kept *entry) {
  return entry->kind == LW_KEPT_SAY || entry->kind == LW_KEPT_PART;
}

static bool is_mark(char c) {
  return c == LW_CELL_BEGINS || c == LW_CELL_ENDS;
}

/* The cell of that number, counted from 0; what stands before the first mark belongs to the first. */
static lw_cell marked_cell(const lw_kept *row, int number) {
  const char *at = row->text.at, *end = at + row->text.length, *begin = at;
  lw_cell cell = {.words = {end, 0}};
  int marks = 0;
  for (; at < end; at++) {
    if (!is_mark(*at)) continue;
    if (marks == number + 1) break;
    if (marks++ < number) continue;
    bool leads = number == 0 && lw_span_trim((lw_span){begin, (size_t)(at - begin)}).length > 0;
    begin = leads ? begin : at + 1;
    cell.ends = *at == LW_CELL_ENDS;
  }
  if (marks > number) cell.words = lw_span_trim((lw_span){begin, (size_t)(at - begin)});
  return cell;
}

static int count_marks(const lw_kept *row) {
  int marks = 0;
  for (size_t i = 0; i < row->text.length; i++) marks += is_mark(row->text.at[i]) ? 1 : 0;
  return marks;
}

/* The next word of a row of numbers, and where it ends. false: none */
static bool next_word(lw_span text, size_t *at, lw_span *word) {
  while (*at < text.length && text.at[*at] == ' ') (*at)++;
  size_t from = *at;
  while (*at < text.length && text.at[*at] != ' ') (*at)++;
  *word = (lw_span){text.at + from, *at - from};
  return *at > from;
}

static void add_edge(lw_grid *grid, size_t edge) {
  int at = 0;
  while (at < grid->columns && grid->edge[at] < edge) at++;
  if ((at < grid->columns && grid->edge[at] == edge) || grid->columns == LW_GRID_COLUMNS) return;
  memmove(grid->edge + at + 1, grid->edge + at, (size_t)(grid->columns - at) * sizeof *grid->edge);
  grid->edge[at] = edge;
  grid->columns++;
}

static void count_columns(lw_grid *grid, const lw_kept *row) {
  lw_span word;
  int marks = count_marks(row);
  if (row->kind == LW_KEPT_NUMBERS)
    for (size_t at = 0; next_word(row->text, &at, &word);) add_edge(grid, at);
  else if (marks > grid->columns)
    grid->columns = marks < LW_GRID_COLUMNS ? marks : LW_GRID_COLUMNS;
}

lw_cell lw_grid_cell(const lw_grid *grid, const lw_kept *row, int column) {
  lw_cell cell = {.ends = true};
  if (row->kind != LW_KEPT_NUMBERS) return marked_cell(row, column);
  for (size_t at = 0; next_word(row->text, &at, &cell.words);)
    if (at == grid->edge[column]) return cell;
  return (lw_cell){.ends = true};
}

static void note_used(lw_grid *grid) {
  lw_span rows = grid->rows;
  lw_kept entry;
  while (lw_kept_next(&rows, &entry))
    for (int i = 0; !is_note(&entry) && i < grid->columns; i++)
      grid->used[i] = grid->used[i] || lw_grid_cell(grid, &entry, i).words.length > 0;
  for (int i = 0; i < grid->columns; i++) grid->used_count += grid->used[i] ? 1 : 0;
}

void lw_grid_find(lw_span *cursor, lw_grid *grid) {
  lw_span before = *cursor;
  lw_kept entry;
  bool rows = false;
  *grid = (lw_grid){.rows = {cursor->at, 0}};
  while (lw_kept_next(cursor, &entry) && lw_kept_of_table(&entry, *cursor) &&
         !(rows && lw_kept_heads(&entry))) {
    rows = rows || !(lw_kept_heads(&entry) || is_note(&entry));
    if (!is_note(&entry)) count_columns(grid, &entry);
    before = *cursor;
  }
  *cursor = before;
  grid->rows.length = (size_t)(cursor->at - grid->rows.at);
  note_used(grid);
}
