/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_ENTRY_H
#define LOWWALL_SHEET_ENTRY_H

#include "faults.h"
#include "items.h"

/* What a name on a sheet means. */
typedef struct lw_named {
  const lw_item *item;
  int number;  /* of a repeated part, else 0 */
  bool likely; /* the item's likely value */
} lw_named;

/* One item with its value, wherever it stands: a row, a cell of a schedule, the command line. */
typedef struct lw_entry {
  const lw_item *item;
  int number;
  bool likely;
  const char *value; /* NUL-terminated, no NUL inside */
  size_t length;
  const lw_unit *unit; /* of the unit cell or the header; NULL: none there */
  bool comma_is_decimal;
  int row, column; /* of the value */
} lw_entry;

/* Put the entry into the case, or note its fault. "not known" leaves the item out, and is remembered. */
void lw_entry_store(const lw_entry *entry, lw_case *c, lw_faults *faults);

/* Is the item given already, and where? */
bool lw_entry_given(const lw_item *item, int number, lw_case *c, int *row);

/* Make the item absent. */
void lw_entry_forget(const lw_item *item, int number, lw_case *c);

/* Find an item by the name in a cell; false after noting an unknown one, a number too great, or the likely
 * value of what is no quantity. */
bool lw_entry_item(const char *name, size_t length, lw_cell_place at, lw_named *named, lw_faults *faults);

/* As lw_entry_given, lw_entry_forget and lw_item_print_name, of the value that was named. */
bool lw_named_given(const lw_named *named, lw_case *c, int *row);
/* As lw_named_given, an answer that it is not known included. */
bool lw_named_told(const lw_named *named, lw_case *c, int *row);
void lw_named_forget(const lw_named *named, lw_case *c);
void lw_named_print(const lw_named *named, char *out, size_t size);

/* The unit in a cell of its own (or in the brackets of a header); false after noting a fault. */
bool lw_entry_unit(const lw_item *item, const char *text, int row, int column, const lw_unit **unit,
                   lw_faults *faults);

/* A number with its unit, as a cell has it. */
typedef struct lw_measured {
  double si;
  lw_kind kind;
  lw_units in;
} lw_measured;

/* LW_FAULT_SLUG_COUNT when it could be read; wanted then is unchanged. */
lw_fault_slug lw_measure(const lw_entry *entry, lw_measured *measured, char *wanted, size_t size);

/* A fraction at the head of a text, whole inches before it or not: its length, or 0. And one sign alone. */
size_t lw_fraction(const char *text, double *value);
size_t lw_vulgar(const char *text, double *value);

/* The unit's factor for this item, in its kind or the second kind it takes; NULL: none, and slug says why. */
const lw_unit *lw_item_unit(const lw_item *item, const char *name, size_t length, lw_fault_slug *slug);

/* "m, mm, cm, in, ft": units this item takes, for a sentence. */
void lw_item_list_units(const lw_item *item, char *out, size_t size);

/* A value in the item's own unit: "900 mm". */
void lw_item_say(const lw_item *item, double si, char *out, size_t size);

/* "a value from 50 mm to 100000 mm", or from 2 in to 328 ft 1 in: no end beyond the range. */
void lw_item_say_range(const lw_item *item, lw_units units, char *out, size_t size);

#endif
