/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "picture.h"

#include "base/canned.h"
#include "picture_things.h"
#include "picture_walls.h"
#include "question.h"

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
  lw_canned_add_both(row->words, &drawing->title);
  lw_drawing_begin(drawing, LW_ROLE_FIGURE);
  for (const char *at = row->picture; lw_ask_next(&at, ';', &part);) {
    const lw_picture_word *word = read_part(&part, number);
    if (word) word->draw(&picture, number);
  }
  return drawing->failed || drawing->title.failed ? LW_NO_MEMORY : LW_OK;
}
