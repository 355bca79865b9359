/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ROWS_H
#define LOWWALL_ROWS_H

#include <lowwall/base.h>

LW_PUBLIC_BEGIN

/* What the rows of all tables have in common, and the rows of what people are asked. <lowwall/tables.h> has
 * the others. */

/* clang-format off */
enum {
  LW_NAME_MAX = 48, LW_ALIASES_MAX = 160, LW_SOURCE_MAX = 160, LW_NOTE_MAX = 320,
  LW_SOIL_ROWS = 32, LW_INTERFACE_ROWS = 64, LW_MATERIAL_ROWS = 48, LW_LOAD_ROWS = 48,
  LW_PLANT_ROWS = 24, LW_CONVENTIONS_ROWS = 24, LW_BEARING_ROWS = 80, LW_FACTOR_ROWS = 256,
  LW_LIMIT_ROWS = 160, LW_HAZARD_ROWS = 80, LW_CONDITION_ROWS = 48, LW_CLEARANCE_ROWS = 32,
  LW_THRESHOLD_ROWS = 64, LW_AROUND_MAX = 4, LW_NAME_SLOTS = 2048, LW_FENCE_ROWS = 24, LW_ORDERING_ROWS = 64,
  LW_REPLACED_MAX = 1200, LW_KNOWN_MAX = 256, LW_QUESTION_ROWS = 64, LW_CHOICE_ROWS = 128,
  LW_HAND_TEST_MAX = 960
};
/* clang-format on */

typedef enum lw_seen { LW_SEEN, LW_MEMORY, LW_DERIVED, LW_PROPOSAL, LW_PRACTICE } lw_seen;

typedef struct lw_origin_note {
  char source[LW_SOURCE_MAX]; /* "[KEY locator]" or "common practice, no source" */
  lw_seen seen;
} lw_origin_note;

/* tables/questions.csv: what is asked of a person, one question a row, in the order in which it is asked. */
typedef enum lw_question_part {
  LW_QUESTION_FIRST,   /* for the verdict */
  LW_QUESTION_ORDER,   /* for what is ordered, and nothing else */
  LW_QUESTION_OFFICER, /* what an officer asks besides */
} lw_question_part;
/* choice: one of its rows. several: any number of them. measure: a number for each item. words: as typed. */
typedef enum lw_question_kind {
  LW_QUESTION_CHOICE,
  LW_QUESTION_SEVERAL,
  LW_QUESTION_MEASURE,
  LW_QUESTION_WORDS
} lw_question_kind;

typedef struct lw_question_row {
  char key[LW_NAME_MAX];
  lw_question_part part;
  lw_question_kind kind;
  char items[LW_NOTE_MAX];  /* that it fills, "; " between; of a measure "a + b" are both filled with one */
  char words[LW_NOTE_MAX];  /* the question */
  char labels[LW_NOTE_MAX]; /* of measures: what each is, "; " between */
  char why[LW_NOTE_MAX];    /* it is asked */
  char units[LW_NAME_MAX], us_units[LW_NAME_MAX]; /* of measures without a unit, "; " between */
  char when[LW_NOTE_MAX];                         /* "item=word|word; item>0 m": all of them so; "": always */
  char not_known[LW_NOTE_MAX]; /* what I do not know then counts as, in words; "": that is no answer */
  char counts_as[LW_NOTE_MAX]; /* the same as items, "item=value; ..." */
  char mildest[LW_NOTE_MAX], gravest[LW_NOTE_MAX]; /* of measures and words: ends to try, likewise */
  char hand_test[LW_HAND_TEST_MAX]; /* how to find out with bare hands, steps with "|" between; "": none */
  lw_origin_note from;
} lw_question_row;

/* tables/choices.csv: the answers to choose from, in the order of the questions. */
typedef struct lw_choice_row {
  char question[LW_NAME_MAX], key[LW_NAME_MAX];
  char words[LW_NOTE_MAX];
  char writes[LW_NOTE_MAX];  /* "item=value; ...": when it is chosen */
  char others[LW_NOTE_MAX];  /* of several: when it is not */
  int rank;                  /* 1 the mildest end, 9 the gravest, 5 between: what is tried */
  char picture[LW_NOTE_MAX]; /* "ground; wall 30 3; ...": what is drawn, src/ask/picture.c */
} lw_choice_row;

LW_PUBLIC_END

#endif
