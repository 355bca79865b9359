/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_SHAPE_H
#define LOWWALL_TABLES_SHAPE_H

#include <lowwall/tables.h>

/* What a table looks like, as data: one reader serves them all, and a new column is one line here. */

typedef enum lw_column_type {
  LW_COLUMN_TEXT,   /* char array of `size` bytes; where there are `words`, one of them */
  LW_COLUMN_WORDS,  /* the same, any number of `words` with "|" between */
  LW_COLUMN_SAID,   /* a sentence that is told in the reader's units: quotes and pairs stand in braces */
  LW_COLUMN_NUMBER, /* double, cell times `scale`, within low .. high before scaling */
  LW_COLUMN_WORD,   /* one of `words`, stored as its index in an int-sized enum */
  LW_COLUMN_YES_NO, /* bool: true for every second of `words` */
  LW_COLUMN_LETTER, /* one char, one of `words` */
  LW_COLUMN_INTEGER /* int, within low .. high */
} lw_column_type;

typedef struct lw_column {
  const char *header; /* with its unit: "friction_angle [deg]" */
  lw_column_type type;
  bool may_be_empty; /* a text stays "", a number becomes NAN */
  size_t offset;     /* into the row */
  size_t size;       /* of the member */
  double scale, low, high;
  const char *words; /* "good|filter|refused", in the order of the enum */
} lw_column;

typedef struct lw_shape {
  const char *name; /* "soils": the file is soils.csv */
  const lw_column *columns;
  size_t column_count;
  size_t key_columns; /* the first so many cells together tell a row apart from all others */
  size_t rows_offset, row_size, row_limit;
  size_t count_offset;
} lw_shape;

#define LW_DEGREE (3.14159265358979323846 / 180.0)
#define LW_MM 0.001

#define LW_AT(row, member) offsetof(row, member), sizeof(((row *)0)->member)
#define LW_TEXT(header, row, member) \
  { header, LW_COLUMN_TEXT, false, LW_AT(row, member), 0, 0, 0, NULL }
#define LW_TEXT_MAYBE(header, row, member) \
  { header, LW_COLUMN_TEXT, true, LW_AT(row, member), 0, 0, 0, NULL }
#define LW_SAID(header, row, member) \
  { header, LW_COLUMN_SAID, false, LW_AT(row, member), 0, 0, 0, NULL }
#define LW_SAID_MAYBE(header, row, member) \
  { header, LW_COLUMN_SAID, true, LW_AT(row, member), 0, 0, 0, NULL }
#define LW_TEXT_OF(header, row, member, may_be_empty, words) \
  { header, LW_COLUMN_TEXT, may_be_empty, LW_AT(row, member), 0, 0, 0, words }
#define LW_WORDS_MAYBE(header, row, member, words) \
  { header, LW_COLUMN_WORDS, true, LW_AT(row, member), 0, 0, 0, words }
#define LW_NUMBER(header, row, member, scale, low, high) \
  { header, LW_COLUMN_NUMBER, false, LW_AT(row, member), scale, low, high, NULL }
#define LW_NUMBER_MAYBE(header, row, member, scale, low, high) \
  { header, LW_COLUMN_NUMBER, true, LW_AT(row, member), scale, low, high, NULL }
#define LW_WORD(header, row, member, words) \
  { header, LW_COLUMN_WORD, false, LW_AT(row, member), 0, 0, 0, words }
#define LW_WORD_MAYBE(header, row, member, words) \
  { header, LW_COLUMN_WORD, true, LW_AT(row, member), 0, 0, 0, words }
#define LW_YES_NO(header, row, member) \
  { header, LW_COLUMN_YES_NO, false, LW_AT(row, member), 0, 0, 0, "no|yes" }
#define LW_SEEN_WORDS "seen|memory|derived|proposal|practice"
#define LW_FROM(row, member) \
  LW_TEXT("source", row, member.source), LW_WORD("seen", row, member.seen, LW_SEEN_WORDS)

#define LW_SHAPE(name, columns, keys, row, member, count) \
  { \
    name, columns, sizeof(columns) / sizeof((columns)[0]), keys, offsetof(lw_tables, member), sizeof(row), \
        sizeof(((lw_tables *)0)->member) / sizeof(row), offsetof(lw_tables, count) \
  }

extern const lw_shape lw_ground_shapes[]; /* soils, interfaces, materials, loads, bearing, plant */
extern const size_t lw_ground_shape_count;
/* formats, limits, hazards, conditions, clearances, thresholds, fences, ordering */
extern const lw_shape lw_law_shapes[];
extern const size_t lw_law_shape_count;
extern const lw_shape lw_question_shapes[]; /* questions, choices */
extern const size_t lw_question_shape_count;

/** The i-th shape of all, or NULL past the last. */
const lw_shape *lw_shape_at(size_t index);
/** The shape of that name, or NULL. */
const lw_shape *lw_shape_find(const char *name, size_t length);

/** Read one table's CSV text into its rows and count.
 *  gives LW_OK · LW_FAULTS · LW_TOO_MANY · LW_NO_MEMORY */
lw_status lw_shape_read(const lw_shape *shape, const char *bytes, size_t length, lw_tables *tables,
                        lw_error *error);

/** Put one cell into its place in a row.
 *  gives NULL, or what would be right, written into wanted */
const char *lw_column_store(const lw_column *column, const char *cell, size_t length, void *row, char *wanted,
                            size_t size);

/** Hold the rows against each other and against what the program cannot do without.
 *  gives LW_OK · LW_FAULTS */
lw_status lw_tables_check(const lw_tables *tables, lw_error *error);

/** Hold the rows that code asks for against the code: each there, in its unit, and no row that nothing reads.
 *  gives LW_OK · LW_FAULTS */
lw_status lw_tables_check_asked(const lw_tables *tables, lw_error *error);

/** Turn words that every wall asks about into numbers: places, and the cues of hazards.
 *  gives LW_OK · LW_FAULTS for a cue that no wall has, or a place within too many others */
lw_status lw_tables_link(lw_tables *tables, lw_error *error);

/** Index of word in a "|"-separated list, or -1. */
int lw_word_index(const char *words, const char *word);

/** True when one of the "|"-separated slugs of `list` is `slug`: for hazards' `when`, limits' `only_if`. */
bool lw_tables_listed(const char *list, const char *slug);

#endif
