/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "list.h"

#include <string.h>

/* Columns side by side, each wrapped within its width; what is long in lines below. */

enum { INDENT = 4 };

/* Bytes of the text that fill at most width columns, cut at a blank where there is one. UTF-8 characters of the
 * tables are one column wide. */
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
static void add_said(lw_text *out, const char *text, size_t bytes) {
  for (size_t i = 0; i < bytes; i++) lw_text_add_bytes(out, text[i] == '|' ? "," : &text[i], 1);
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
      add_said(out, left[i], bytes);
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
    add_said(out, text, bytes);
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

void lw_list_text(const lw_list *list, const lw_grid *grid, lw_text *out) {
  add_titles(list, out);
  for (int row = 1; row < grid->rows; row++) {
    const char *left[LW_LIST_COLUMNS] = {NULL};
    for (int i = 0; i < LW_LIST_COLUMNS && list->column[i].width > 0; i++)
      left[i] = lw_grid_at(grid, row, lw_grid_column(grid, list->column[i].header));
    while (add_line(list, left, out)) continue;
    for (int i = 0; i < LW_LIST_BELOW && list->below[i].header != NULL; i++)
      add_below(list->below[i].title, lw_grid_at(grid, row, lw_grid_column(grid, list->below[i].header)), out);
  }
}
