/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_HANDBOOK_ROWS_H
#define LOWWALL_TESTS_HANDBOOK_ROWS_H

#include <stdbool.h>
#include <stddef.h>

/* Rows of tests/handbook/{earth_pressure,bearing,slip,walls}.csv: published numbers and what they follow
 * from. */

enum { CASE_CELL_MAX = 360, CASE_LINE_MAX = 2048 };

typedef struct case_row {
  char id[CASE_CELL_MAX], inputs[CASE_CELL_MAX], quantity[CASE_CELL_MAX], unit[CASE_CELL_MAX];
  char published[CASE_CELL_MAX], tolerance[CASE_CELL_MAX], recomputed[CASE_CELL_MAX];
  char source[CASE_CELL_MAX], seen[CASE_CELL_MAX], agrees[CASE_CELL_MAX], note[CASE_CELL_MAX];
  char about[3 * CASE_CELL_MAX]; /* what the number is and follows from, to be read */
} case_row;

/* What the library makes of a row. */
typedef enum case_outcome { CASE_VALUE, CASE_NO_SOLUTION, CASE_UNSUPPORTED } case_outcome;
typedef case_outcome (*case_run)(const case_row *row, double *value);

/* Hold every row of the file against the library; gives the count of rows. A published value that agrees
 * must be met within its tolerance, a derived one to its six digits, and one that does not agree must be
 * missed while its recomputed value is met. A recomputed value may be missing where the book rounds factors
 * on the way: then the published one alone is held. Each failure is reported with the row's id. */
int case_hold_all(const char *file, case_run run);

/* Hand on every row of the file with what the library makes of it; gives the count of rows. */
typedef void (*case_taker)(void *context, const case_row *row, case_outcome outcome, double ours);
int case_each(const char *file, case_run run, case_taker taker, void *context);

/* What each row is run by, for whoever wants the numbers as well. */
case_outcome case_earth_pressure(const case_row *row, double *value);
case_outcome case_loads(const case_row *row, double *value);
case_outcome case_earthquake_or_curve(const case_row *row, double *value); /* a part of the former */
case_outcome case_bearing(const case_row *row, double *value);
case_outcome case_slip(const case_row *row, double *value);
case_outcome case_building(const case_row *row, double *value);
case_outcome case_fence(const case_row *row, double *value);

/* The parts of case_hold_all: marks that go together, and ours against published and recomputed. */
void case_check_marks(const case_row *row);
void case_hold(const case_row *row, case_outcome outcome, double ours);
/* One cell from a line, quoted or not; gives what follows its comma, or NULL at the line's end. */
const char *case_cell(const char *at, char *out);
/* The number a text begins with, up to a blank; NAN when it is none. */
double case_number_of(const char *text);

/* The value of a key in `inputs`: "phi=30 deg; ...", degrees in radians; `instead` when it is absent. */
double case_number(const case_row *row, const char *key, double instead);
/* The word or list of a key, copied; false when absent. */
bool case_word(const case_row *row, const char *key, char *out, size_t size);
bool case_is(const case_row *row, const char *key, const char *word);

#endif
