/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_H
#define LOWWALL_SHEET_H

#include <lowwall/case.h>
#include <lowwall/tables.h>

LW_PUBLIC_BEGIN

/* What is wrong with the input: slug, sentence. Every fault names the cell and the cure. */
#define LW_FAULT_SLUGS(X) \
  X(UNREADABLE, "unreadable", "the file cannot be read") \
  X(EMPTY, "empty", "the file has no items") \
  X(NO_ROWS, "no-rows", "nothing stands below the header") \
  X(HEADER, "header", "the first row is neither item,value,... nor a list of items") \
  X(QUOTING, "quoting", "a quotation mark is stray or never closed; reading stopped here") \
  X(NUL_BYTE, "nul-byte", "the cell holds a NUL byte") \
  X(NOT_UTF8, "not-utf8", "the cell is not UTF-8 text") \
  X(UTF16, "utf-16", "the file is in UTF-16, two bytes a character; reading stopped here") \
  X(CELL_TOO_LONG, "cell-too-long", "the cell is longer than a cell may be") \
  X(CELL_COUNT, "cell-count", "the row has more cells than the header") \
  X(UNKNOWN_ITEM, "unknown-item", "there is no such item") \
  X(DUPLICATE_ITEM, "duplicate-item", "the item is given twice") \
  X(TOO_MANY, "too-many", "lowwall has no room for so many of these") \
  X(NO_MARK, "no-mark", "the wall has no mark, and others have") \
  X(DUPLICATE_MARK, "duplicate-mark", "another row has this mark") \
  X(GAP_IN_NUMBERING, "gap-in-numbering", "the numbering skips a part") \
  X(NO_VALUE, "no-value", "the item has no value") \
  X(NOT_A_NUMBER, "not-a-number", "this is not a number") \
  X(DECIMAL_COMMA, "decimal-comma", "a comma in a number, in a comma-separated file") \
  X(NO_UNIT, "no-unit", "the number has no unit") \
  X(UNKNOWN_UNIT, "unknown-unit", "there is no such unit") \
  X(WRONG_UNIT, "wrong-unit", "the unit measures something else") \
  X(TWO_UNITS, "two-units", "two different units for one value") \
  X(UNKNOWN_WORD, "unknown-word", "the item takes other words") \
  X(OUT_OF_RANGE, "out-of-range", "the value is outside what the item may be") \
  X(CONTRADICTION, "contradiction", "two items contradict each other") \
  X(MISSING_ITEM, "missing-item", "an item that is needed is missing") \
  X(UNKNOWN_SOIL, "unknown-soil", "there is no such soil in the table") \
  X(UNKNOWN_ROW, "unknown-row", "this name is not on file") \
  X(NO_ROOM, "no-room", "more faults than are listed")

typedef enum lw_fault_slug {
#define LW_FAULT_NAME(name, slug, sentence) LW_FAULT_##name,
  LW_FAULT_SLUGS(LW_FAULT_NAME)
#undef LW_FAULT_NAME
      LW_FAULT_SLUG_COUNT
} lw_fault_slug;

/** The slug of a fault ("no-unit"), and its sentence. */
const char *lw_fault_slug_name(lw_fault_slug slug);
const char *lw_fault_slug_sentence(lw_fault_slug slug);

enum { LW_FAULT_MAX = 100 };

typedef struct lw_fault {
  lw_fault_slug slug;
  int row, column;  /* from 1; row 0: the command line */
  char item[64];    /* the item in hand, "" if none */
  char stood[80];   /* what stood there, cut and cleaned */
  char wanted[200]; /* what would be right */
} lw_fault;

typedef struct lw_faults {
  char file[128]; /* name of the sheet as the user wrote it; "-" for standard input */
  int count;
  lw_fault fault[LW_FAULT_MAX];
} lw_faults;

/** One line a fault: file, row, column, slug, what stood there, what would be right. */
void lw_faults_print(const lw_faults *faults, lw_text *out);

/* The one table of items: reading, writing, JSON keys, docs/sheet.md and starter sheets come from it. */
typedef enum lw_item_type { LW_ITEM_QUANTITY, LW_ITEM_CHOICE, LW_ITEM_WORDS } lw_item_type;

/* What an item is about: the parts of the vocabulary, and the commands that have items of their own. */
/* clang-format off */
#define LW_ITEM_PARTS(X) \
  X(NOTHING, "") X(HEADING, "heading") X(SITE, "site") X(OFFICER, "officer") X(FENCE, "fence") \
  X(WET, "storm and trench") \
  X(WALL, "wall") X(COURSES, "courses") X(SECTION, "section") X(PAD, "pad") X(GROUND, "ground") \
  X(SOIL, "soil n") X(FOOTING, "footing") X(WATER, "water") X(LOAD, "load n") \
  X(SEISMIC, "seismic") X(BUILDING, "building it") X(METHOD, "method") X(PLAN, "plan") \
  X(ORDER, "order") X(PRESSURE, "pressure") X(BEARING, "bearing")
typedef enum lw_item_part {
#define LW_ITEM_PART_NAME(name, words) LW_ABOUT_##name,
  LW_ITEM_PARTS(LW_ITEM_PART_NAME)
#undef LW_ITEM_PART_NAME
} lw_item_part;
/* clang-format on */

typedef struct lw_item {
  lw_item_part part;
  const char *name; /* "soil # friction angle": # is the number of a repeated part */
  lw_item_type type;
  lw_kind kind;      /* of a quantity */
  lw_kind also;      /* a second kind it takes; LW_KIND_NUMBER (0): none. A pure number that also takes
                              an angle keeps the angle's tangent */
  const char *words; /* of a choice, "|"-separated, in the order of its enum; aliases after "=" */
  size_t offset;     /* into lw_case */
  size_t stride;     /* of a repeated part; 0 otherwise */
  int repeats;
  double low, high;     /* allowed SI range, both included */
  double assumed;       /* safe default, SI, or the choice's value; NAN: none, or it depends on others */
  const char *unit;     /* the unit for examples and starter sheets */
  const char *example;  /* "900 mm" */
  const char *means;    /* one sentence for docs/sheet.md */
  bool percent;         /* an angle or a fall that a percentage may give: rise over run */
  const char *question; /* the question that would settle it, plain words; "" when it is not asked */
  bool near_is_grave;   /* a distance that may be given as `more than 3 m` and `less than 3 m` */
} lw_item;

/** The items in the order of the vocabulary; NULL past the end. */
size_t lw_item_count(void);
const lw_item *lw_item_at(size_t index);
/** Find by name as a user writes it: case, blanks and hyphens folded.
 *  out   number  n of a repeated part, else 0; it may be greater than the item repeats
 *  gives the item, or NULL */
const lw_item *lw_item_find(const char *name, size_t length, int *number);
/** "heading", "soil n" */
const char *lw_item_part_words(lw_item_part part);
/** The item's name with its number put in.
 *  in    number   n of a repeated part, 1 to item->repeats; 0: n stands there */
void lw_item_print_name(const lw_item *item, int number, char *out, size_t size);
/** The JSON key: snake case, number put in, SI-like unit last: "soil_1_friction_angle_deg".
 *  in    number   as above */
void lw_item_print_key(const lw_item *item, int number, char *out, size_t size);
/** Where the item's value lies in a case.
 *  in    number   n of a repeated part, 1 to item->repeats; else 0 */
lw_quantity *lw_item_quantity(const lw_item *item, int number, lw_case *c);
lw_choice *lw_item_choice(const lw_item *item, int number, lw_case *c);
lw_words *lw_item_words(const lw_item *item, int number, lw_case *c);
/** The likely value that a case has of a quantity, beside the one that decides.
 *  in    number   as above
 *  gives NULL where none was given */
const lw_quantity *lw_item_likely(const lw_item *item, int number, const lw_case *c);
/** Give it one, or another one; a sheet does so by ` likely` behind the item's name.
 *  in    item    a quantity that a check reads; of others lw_case_complete tells
 *        number  n of a repeated part, 1 to item->repeats; else 0
 *        value   its origin is LW_GIVEN; absent: none any more
 *  out   c       not complete any more; unchanged on failure
 *  gives LW_OK · LW_TOO_MANY when the case has LW_LIKELY_MAX already */
lw_status lw_item_set_likely(const lw_item *item, int number, const lw_quantity *value, lw_case *c);
/** The word of a choice: "courses".
 *  in    value   0 or more; past the last word it is "" */
const char *lw_item_word(const lw_item *item, int value, char *out, size_t size);

/** What the reader of a case measures in: as it is given, else as most of what was measured is written.
 *  gives LW_UNITS_METRIC where as many are written in either, and of a case without a sheet
 *  note  of a row of a schedule its columns are counted, not what overrides them */
lw_units lw_case_units(const lw_case *c);

/** Read an upright sheet from memory into a case (which is cleared first).
 *  gives LW_OK · LW_FAULTS, all faults collected */
lw_status lw_sheet_read(const char *bytes, size_t length, lw_case *c, lw_faults *faults);

/** One `item=value` from the command line; it overrides the sheet.
 *  in    number   of it among them, 1 or more: faults name it
 *  gives LW_OK · LW_FAULTS */
lw_status lw_sheet_override(const char *argument, int number, lw_case *c, lw_faults *faults);

/* A schedule is read a row at a time, so that a million rows need the memory of one. */
typedef struct lw_schedule lw_schedule;
typedef void (*lw_schedule_row)(void *context, int row, const lw_case *c, const lw_faults *faults);
/** A reader of schedules: open it with what to do with each row, feed it bytes in pieces of any size,
 *  finish it, close it. A faulty row is handed on with its faults and the reading goes on; the case of a row
 *  is not complete. Faults of the header, broken quoting and a file without rows are faults of the file.
 *  in    each           called for every row that is not blank
 *        header_faults  receives the faults of the file; its file name is that of the rows' faults too
 *  gives NULL out of memory; feed and finish: LW_OK · LW_FAULTS of the file · LW_NO_MEMORY
 *  note  A column of marks has one in each row, and none twice: a few bytes of each are kept. */
lw_schedule *lw_schedule_open(lw_schedule_row each, void *context, lw_faults *header_faults);
lw_status lw_schedule_feed(lw_schedule *schedule, const char *bytes, size_t length);
lw_status lw_schedule_finish(lw_schedule *schedule);
void lw_schedule_close(lw_schedule *schedule);

/** True when the bytes begin a schedule (their header row names items), false for an upright sheet. */
bool lw_sheet_is_schedule(const char *bytes, size_t length);

/* What completing works out from given items (a height from its courses) is marked given with this row. It
 * is worked out anew by the next completing and never written to a sheet. */
enum { LW_WORKED_OUT_ROW = -1 };

/** Fill in what was left out: table rows by name, then safe defaults, each marked; then hold the items
 *  against each other (heights and courses, angles and slopes, layers in order, geometry that closes).
 *  What a value may be is in the table of items, and is held against it here whoever put it in.
 *  Completing a complete case changes nothing; whoever changes a complete case and wants it completed anew
 *  clears
 *  `complete`. May also be called after a reading that found faults, to find the others: an item that has a
 *  fault already is not reported missing. On faults the case is unchanged.
 *  note  1 c->look says which values stand in. In a case of look LW_LOOK_LIKELY its likely values stand where
 *          the given ones stood, so it is made from a copy. Of the other look likely values are only held
 *          against the rest, as they would be put in.
 *  gives LW_OK · LW_FAULTS */
lw_status lw_case_complete(const lw_tables *tables, lw_case *c, lw_faults *faults);

/** Fill in what `lowwall order` and `lowwall pegs` need beyond a check, and hold the plan's items against
 *  each other: a check reads none of them, so lw_case_complete leaves them alone. Call it after that one.
 *  in    tables   an allowance left out is its row of tables/ordering.csv, marked assumed
 *  out   c        unchanged on faults
 *  gives LW_OK · LW_FAULTS */
lw_status lw_case_complete_order(const lw_tables *tables, lw_case *c, lw_faults *faults);

/** Write a case as an upright sheet; reading it gives the same case.
 *  assumed: also write what was assumed or taken from a table, as comments in the note column. */
void lw_sheet_write(const lw_case *c, bool assumed, lw_text *out);

/** A commented starter sheet that runs as it is. kind: "bed", "ground" or "section".
 *  gives LW_OK · LW_NO_SOLUTION for another kind */
lw_status lw_sheet_start(const char *kind, lw_text *out);

LW_PUBLIC_END

#endif
