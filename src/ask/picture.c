/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "picture.h"

#include <math.h>

#include "question.h"

enum { SPOTS = 24 };

static lw_xy_mm spot(const lw_picture *picture, double x, double y) {
  return (lw_xy_mm){x * picture->mm, (LW_PICTURE_HIGH - y) * picture->mm};
}

static int spots_of(const lw_picture *picture, const double *xy, int count, lw_xy_mm *out) {
  for (int i = 0; i < count && i < SPOTS; i++) out[i] = spot(picture, xy[2 * i], xy[2 * i + 1]);
  return count < SPOTS ? count : SPOTS;
}

void lw_picture_line(const lw_picture *picture, lw_pen pen, const double *xy, int spots) {
  lw_xy_mm at[SPOTS];
  size_t count = (size_t)spots_of(picture, xy, spots, at);
  lw_drawing_line(picture->paper, pen, at, count);
}

void lw_picture_area(const lw_picture *picture, lw_pen pen, lw_fill fill, const double *xy, int spots) {
  lw_xy_mm at[SPOTS];
  size_t count = (size_t)spots_of(picture, xy, spots, at);
  lw_drawing_area(picture->paper, pen, fill, at, count);
}

void lw_picture_box(const lw_picture *picture, lw_fill fill, double left, double bottom, double right,
                    double top) {
  const double xy[] = {left, bottom, right, bottom, right, top, left, top};
  lw_picture_area(picture, LW_PEN_SEEN, fill, xy, 4);
}

void lw_picture_ring(const lw_picture *picture, lw_fill fill, double x, double y, double radius) {
  enum { SIDES = 16 };
  static const double TURN = 6.283185307179586;
  double xy[2 * SIDES];
  for (int i = 0; i < SIDES; i++) {
    xy[2 * i] = x + radius * cos(TURN * i / SIDES);
    xy[2 * i + 1] = y + radius * sin(TURN * i / SIDES);
  }
  lw_picture_area(picture, LW_PEN_SEEN, fill, xy, SIDES);
}

/* Its head in the size of the picture. */
void lw_picture_arrow(const lw_picture *picture, double x, double y, double to_x, double to_y) {
  static const double HEAD = 6.0, HALF = 2.4;
  double dx = to_x - x, dy = to_y - y, length = hypot(dx, dy);
  if (!(length > HEAD)) return;
  dx /= length;
  dy /= length;
  double back_x = to_x - HEAD * dx, back_y = to_y - HEAD * dy;
  const double shaft[] = {x, y, back_x, back_y};
  const double head[] = {
      to_x, to_y, back_x - HALF * dy, back_y + HALF * dx, back_x + HALF * dy, back_y - HALF * dx};
  lw_picture_line(picture, LW_PEN_SEEN, shaft, 2);
  lw_picture_area(picture, LW_PEN_NONE, LW_FILL_INK, head, 3);
}

double lw_picture_ground(const lw_picture *picture, double x) {
  return picture->left + (picture->right - picture->left) * x / LW_PICTURE_WIDE;
}

static const lw_picture_word *word_of(const lw_ask_part *name) {
  for (const lw_picture_word *word = lw_picture_of_walls; word->word; word++)
    if (lw_ask_is(name, word->word)) return word;
  for (const lw_picture_word *word = lw_picture_of_things; word->word; word++)
    if (lw_ask_is(name, word->word)) return word;
  return NULL;
}

/* "wall 30 4": the word and its numbers; NULL: not of this form. */
static const lw_picture_word *read_part(const lw_ask_part *part, double number[LW_PICTURE_NUMBERS]) {
  char text[LW_NAME_MAX];
  lw_ask_part piece;
  const char *at = lw_ask_copy(part, text, sizeof text);
  if (part->length >= sizeof text || !lw_ask_next(&at, ' ', &piece)) return NULL;
  const lw_picture_word *word = word_of(&piece);
  int count = 0;
  for (; word && lw_ask_next(&at, ' ', &piece); count++)
    if (count == LW_PICTURE_NUMBERS || !lw_number_read(piece.text, piece.length, &number[count])) return NULL;
  return word && count == word->numbers ? word : NULL;
}

bool lw_picture_reads(const char *list) {
  double number[LW_PICTURE_NUMBERS];
  lw_ask_part part;
  bool all = true;
  for (const char *at = list; all && lw_ask_next(&at, ';', &part);) all = read_part(&part, number) != NULL;
  return all;
}

static const lw_choice_row *choice_of(const lw_tables *tables, const char *key, int choice) {
  int first, index = lw_question_find(tables, key);
  if (index < 0 || choice < 0 || choice >= lw_question_choices(tables, index, &first)) return NULL;
  return &tables->choice[first + choice];
}

lw_status lw_question_picture(const lw_tables *tables, const char *key, int choice, double width_mm,
                              lw_drawing *drawing) {
  const lw_choice_row *row = choice_of(tables, key, choice);
  lw_picture picture = {.paper = drawing, .mm = width_mm / LW_PICTURE_WIDE, .left = 26.0, .right = 26.0};
  double number[LW_PICTURE_NUMBERS];
  lw_ask_part part;
  if (!row || row->picture[0] == '\0') return LW_NO_SOLUTION;
  drawing->width_mm = width_mm;
  drawing->height_mm = LW_PICTURE_HIGH * picture.mm;
  lw_text_add(&drawing->title, row->words);
  lw_drawing_begin(drawing, LW_ROLE_FIGURE);
  for (const char *at = row->picture; lw_ask_next(&at, ';', &part);) {
    const lw_picture_word *word = read_part(&part, number);
    if (word) word->draw(&picture, number);
  }
  return drawing->failed || drawing->title.failed ? LW_NO_MEMORY : LW_OK;
}
