/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "drawing.h"

#include <lowwall/report.h>

#include <math.h>
#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

#include "base/print.h"

/* The list of marks: adding to it, and how wide words are. */

static bool room_for(void **rows, size_t *room, size_t wanted, size_t row_size) {
  if (wanted <= *room) return true;
  size_t grown = *room < 64 ? 64 : 2 * *room;
  while (grown < wanted) grown *= 2;
  void *more = realloc(*rows, grown * row_size);
  if (!more) return false;
  *rows = more;
  *room = grown;
  return true;
}

static lw_mark *new_mark(lw_drawing *d, const lw_xy_mm *spot, size_t count) {
  bool fits = room_for((void **)&d->mark, &d->mark_room, d->mark_count + 1, sizeof *d->mark) &&
              room_for((void **)&d->spot, &d->spot_room, d->spot_count + count, sizeof *d->spot);
  if (!fits) d->failed = true;
  if (d->failed) return NULL;
  lw_mark *mark = &d->mark[d->mark_count++];
  *mark = (lw_mark){.first = d->spot_count,
                    .count = count,
                    .role = d->role,
                    .group = d->group,
                    .table = d->table,
                    .row = d->row};
  memcpy(d->spot + d->spot_count, spot, count * sizeof *spot);
  d->spot_count += count;
  return mark;
}

void lw_drawing_begin(lw_drawing *drawing, lw_role role) {
  lw_drawing_begin_cell(drawing, role, 0, 0);
}

void lw_drawing_begin_cell(lw_drawing *drawing, lw_role role, int table, int row) {
  drawing->role = role;
  drawing->table = table;
  drawing->row = row;
  drawing->group++;
}

void lw_drawing_line(lw_drawing *drawing, lw_pen pen, const lw_xy_mm *spot, size_t count) {
  lw_mark *mark = new_mark(drawing, spot, count);
  if (!mark) return;
  mark->kind = LW_MARK_LINE;
  mark->pen = pen;
}

void lw_drawing_area(lw_drawing *drawing, lw_pen pen, lw_fill fill, const lw_xy_mm *spot, size_t count) {
  lw_mark *mark = new_mark(drawing, spot, count);
  if (!mark) return;
  mark->kind = LW_MARK_AREA;
  mark->pen = pen;
  mark->fill = fill;
}

void lw_drawing_arrow(lw_drawing *drawing, lw_pen pen, lw_xy_mm from, lw_xy_mm to) {
  static const double LENGTH_MM = 2.4, HALF_WIDTH_MM = 0.7;
  double x = to.x_mm - from.x_mm, y = to.y_mm - from.y_mm, long_mm = hypot(x, y);
  if (long_mm < 1e-6) return;
  double head = fmin(LENGTH_MM, long_mm), half = HALF_WIDTH_MM * head / LENGTH_MM;
  x /= long_mm;
  y /= long_mm;
  lw_xy_mm neck = {to.x_mm - head * x, to.y_mm - head * y};
  lw_xy_mm shaft[] = {from, neck};
  lw_xy_mm tip[] = {
      to, {neck.x_mm - half * y, neck.y_mm + half * x}, {neck.x_mm + half * y, neck.y_mm - half * x}};
  lw_drawing_line(drawing, pen, shaft, 2);
  lw_drawing_area(drawing, LW_PEN_FINE, LW_FILL_INK, tip, 3);
}

static void add_clean(lw_text *words, const char *string) {
  for (const char *c = string; *c != '\0'; c++)
    if ((unsigned char)*c >= 0x20 && *c != 0x7f) lw_text_add_bytes(words, c, 1);
  lw_text_add_bytes(words, "", 1);
}

void lw_drawing_words(lw_drawing *drawing, lw_xy_mm at, lw_anchor anchor, double size_mm, const char *format,
                      ...) {
  char string[256];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(string, sizeof string, format, arguments);
  va_end(arguments);
  lw_mark *mark = new_mark(drawing, &at, 1);
  if (!mark) return;
  mark->kind = LW_MARK_WORDS;
  mark->anchor = anchor;
  mark->size_mm = size_mm;
  mark->words = drawing->words.length;
  add_clean(&drawing->words, string);
  drawing->failed = drawing->failed || drawing->words.failed;
}

void lw_drawing_bold(lw_drawing *drawing) {
  if (drawing->mark_count > 0) drawing->mark[drawing->mark_count - 1].bold = true;
}

/* Shares of the em, on the wide side of the common upright sans serif faces: common practice, no source. */
static double letter_width(char c) {
  if (strchr("il.,:;'|!", c)) return 0.32;
  if (strchr("fjrt()[]/- ", c)) return 0.40;
  if (strchr("mwMW%@", c)) return 0.95;
  if (c >= 'A' && c <= 'Z') return 0.72;
  return 0.60;
}

double lw_drawing_text_width(const char *string, double size_mm) {
  double em = 0.0;
  for (const char *c = string; *c != '\0'; c++)
    if (((unsigned char)*c & 0xc0) != 0x80) em += letter_width(*c); /* bytes that go on are no letters */
  return em * size_mm;
}

lw_box lw_drawing_box(const lw_drawing *drawing, const lw_mark *words) {
  static const double ABOVE = 0.80, BELOW = 0.22, BOLD = 1.15;
  lw_xy_mm at = drawing->spot[words->first];
  double width = lw_drawing_text_width(drawing->words.data + words->words, words->size_mm);
  if (words->bold) width *= BOLD;
  double back = words->anchor == LW_ANCHOR_START ? 0.0 : words->anchor == LW_ANCHOR_MIDDLE ? 0.5 : 1.0;
  double left = at.x_mm - back * width;
  return (lw_box){left, at.y_mm - ABOVE * words->size_mm, left + width, at.y_mm + BELOW * words->size_mm};
}

void lw_drawing_free(lw_drawing *drawing) {
  free(drawing->mark);
  free(drawing->spot);
  lw_text_free(&drawing->words);
  lw_text_free(&drawing->title);
  lw_text_free(&drawing->description);
  lw_text_free(&drawing->figure);
  *drawing = (lw_drawing){0};
}
