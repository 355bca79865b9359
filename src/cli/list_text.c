/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "list.h"

#include <string.h>

/* Columns side by side, each wrapped within its width; what is long in lines below. */

enum { INDENT = 4 };

/* Bytes of the text that fill at most width columns, cut at a blank where there is one. A character of the
 * tables is one column wide. */
static size_t fitting(const char *text, int width) {
  size_t used = 0, blank = 0;
  for (int columns = 0; text[used] != '\0' && columns < width; columns++) {
    if (text[used] == ' ') blank = used;
    used++;
    while (((unsigned char)text[used] & 0xC0) == 0x80) used++;
  }
  bool whole = text[used] == '\0' || text[used] == ' ';
  return whole || blank == 0 ? used : blank;
}

static int columns_of(const char *text, size_t bytes) {
  int columns = 0;
  for (size_t i = 0; i < bytes; i++) columns += ((unsigned char)text[i] & 0xC0) != 0x80;
  return columns;
}

static void pad(lw_text *out, int count) {
  for (int i = 0; i < count; i++) lw_text_add(out, " ");
}

/* "|" between names reads as a comma. */
static const char *said(const char *cell, lw_text *out) {
  lw_text_clear(out);
  lw_text_add(out, "");
  for (const char *c = cell; *c != '\0'; c++) lw_text_add_bytes(out, *c == '|' ? ", " : c, *c == '|' ? 2 : 1);
  return out->data != NULL ? out->data : "";
}

static const char *skip_blanks(const char *text) {
  return text + strspn(text, " ");
}

/* One line of all columns; each text moves on behind what was printed. gives true while any is left */
static bool add_line(const lw_list *list, const char **left, lw_text *out) {
  bool more = false;
  int behind = 0;
  for (int i = 0; i < LW_LIST_COLUMNS && list->column[i].width > 0; i++) {
    size_t bytes = fitting(left[i], list->column[i].width);
    if (bytes > 0) {
      pad(out, behind);
      lw_text_add_bytes(out, left[i], bytes);
      behind = 0;
    }
    behind += list->column[i].width - columns_of(left[i], bytes) + 2;
    left[i] = skip_blanks(left[i] + bytes);
    more = more || left[i][0] != '\0';
  }
  lw_text_add(out, "\n");
  return more;
}

static void add_below(const char *label, const char *text, lw_text *out) {
  if (text[0] == '\0') return;
  pad(out, INDENT);
  lw_text_addf(out, "%s%s", label, label[0] != '\0' ? ": " : "");
  int width = LW_LIST_WIDTH - INDENT - (label[0] != '\0' ? (int)strlen(label) + 2 : 0);
  for (;;) {
    size_t bytes = fitting(text, width);
    lw_text_add_bytes(out, text, bytes);
    lw_text_add(out, "\n");
    text = skip_blanks(text + bytes);
    if (text[0] == '\0') return;
    pad(out, INDENT + 2);
    width = LW_LIST_WIDTH - INDENT - 2;
  }
}

static void add_titles(const lw_list *list, lw_text *out) {
  const char *left[LW_LIST_COLUMNS] = {NULL};
  lw_text_addf(out, "%s: %s\n\n", list->name, list->about);
  for (int i = 0; i < LW_LIST_COLUMNS; i++) left[i] = list->column[i].width > 0 ? list->column[i].title : "";
  while (add_line(list, left, out)) continue;
  for (int i = 0; i < LW_LIST_COLUMNS && list->column[i].width > 0; i++) {
    if (i > 0) pad(out, 2);
    for (int k = 0; k < list->column[i].width; k++) lw_text_add(out, "-");
  }
  lw_text_add(out, "\n");
}

static void add_row(const lw_list *list, const lw_grid *grid, int row, lw_text *cells, lw_text *out) {
  const char *left[LW_LIST_COLUMNS] = {NULL};
  for (int i = 0; i < LW_LIST_COLUMNS && list->column[i].width > 0; i++)
    left[i] = said(lw_grid_at(grid, row, lw_grid_column(grid, list->column[i].header)), &cells[i]);
  while (add_line(list, left, out)) continue;
  for (int i = 0; i < LW_LIST_BELOW && list->below[i].header != NULL; i++) {
    const char *cell = lw_grid_at(grid, row, lw_grid_column(grid, list->below[i].header));
    add_below(list->below[i].title, said(cell, &cells[0]), out);
  }
}

void lw_list_text(const lw_list *list, const lw_grid *grid, lw_text *out) {
  lw_text cells[LW_LIST_COLUMNS] = {{0}};
  add_titles(list, out);
  for (int row = 1; row < grid->rows; row++) add_row(list, grid, row, cells, out);
  for (int i = 0; i < LW_LIST_COLUMNS; i++) {
    out->failed = out->failed || cells[i].failed;
    lw_text_free(&cells[i]);
  }
}
