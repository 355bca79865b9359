/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_FORMULA_H
#define LOWWALL_CLI_FORMULA_H

#include <lowwall/sheet.h>

#include "report/json/set.h"
#include "options.h"

/* What `lowwall pressure`, `bearing` and `slip` share: items on the command line that make no wall, and the
 * working of a single formula as text and as JSON. */

enum { LW_FORMULA_ITEM_MAX = 32 };

/* An item of the subcommand, and its long name on a sheet ("" if none). */
typedef struct lw_formula_item {
  lw_item item;
  const char *sheet_name;
  bool needed;
} lw_formula_item;

typedef struct lw_formula_sheet {
  const char *usage;
  const lw_formula_item *item;
  size_t count;
  bool (*more)(const char *folded); /* which other items a sheet's own reader takes; NULL: none */
} lw_formula_sheet;

typedef struct lw_formula_value {
  bool given;
  int argument;        /* which item of the command line, from 1 */
  const char *written; /* what stood behind its `=` */
  double si;
  lw_kind kind;
  lw_units in; /* those it was written in */
  int word;
} lw_formula_value;

typedef struct lw_formula_given {
  const lw_formula_sheet *sheet;
  lw_formula_value value[LW_FORMULA_ITEM_MAX]; /* in the order of the sheet's items; 0 when left out */
  lw_case *more;                               /* where those of the sheet's own reader go */
  bool json;
  lw_units units; /* of what is printed; JSON is SI */
  lw_faults faults;
} lw_formula_given;

/* Read options and items; what is wrong with an item, or needed and missing, is a fault in given.
 * gives 0 to go on, else the exit status + 1 */
int lw_formula_read(const lw_formula_sheet *sheet, int argc, char **argv, lw_formula_given *given);

/* The parts of it, for a subcommand with options of its own: nothing is given yet; then the items, numbered
 * from 1; what is printed in, as asked or, NULL, as most of what was measured is written; the help. */
void lw_formula_begin(const lw_formula_sheet *sheet, const char *name, lw_formula_given *given);
void lw_formula_take(const lw_arguments *items, lw_formula_given *given);
void lw_formula_take_units(const char *asked, lw_formula_given *given);
int lw_formula_help(const lw_formula_sheet *sheet);

/* Note a contradiction at an item that was given. */
void lw_formula_contradict(lw_formula_given *given, size_t item, const char *wanted);

/* Print the faults to standard error. gives the exit status for bad input */
int lw_formula_refuse(const lw_formula_given *given, const char *name);

/* Print a JSON value to standard output and free it. gives the exit status */
int lw_formula_print_json(json_t *value);

/* A recorder that writes steps into a text, and one that adds them to a JSON array. */
lw_working lw_formula_text_working(lw_text *text);
lw_working lw_formula_json_working(json_t *array);

/* A number, or null with the reason beside it when it is missing (reason not NULL) or not finite. */
void lw_formula_set(json_t *object, const char *key, double value, const char *reason);

/* The items that were given, in SI units, under their names in snake case. */
void lw_formula_given_json(const lw_formula_given *given, json_t *object);

#endif
