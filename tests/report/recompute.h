/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_RECOMPUTE_H
#define TESTS_REPORT_RECOMPUTE_H

#include "evaluate.h"

/* Pages of the working read back line by line, and worked out again from the numbers that they print. */

enum { RECOMPUTE_OPEN_MAX = 200, RECOMPUTE_KEY_MAX = 600 };

/* One walk over many pages. */
typedef struct recompute {
  const char *wall;              /* whose page is read */
  bool us;                       /* in feet and pounds */
  char under[80];                /* "under: " and the heading that the line stands under */
  evaluate_names said;           /* what each symbol has come to under this heading */
  int steps, rows, stated;       /* lines that came out, rows of tables that did, lines that only state */
  int shown;                     /* failures told in full */
  bool open[RECOMPUTE_OPEN_MAX]; /* entries of the list of open lines that were met, and failed */
} recompute;

/** The working of one wall, as printed on lines that never wrap. */
void recompute_page(recompute *r, const char *wall, const char *page);

/* --- one line, from its symbol on: recompute_step.c --- */

/** Whether a line begins a step: a symbol and an equals sign. */
bool recompute_is_step(const char *line);
/** Reads a step of one to three lines; gives the first line after it. */
const char *recompute_step(recompute *r, const char *line);

/* --- tables: recompute_tables.c --- */

/** If a table that is read begins here: the first line after it, its rows and sums worked out. Else NULL. */
const char *recompute_table(recompute *r, const char *line);

/* --- what is open: recompute_open.c --- */

typedef struct recompute_kind {
  const char *begins; /* of a line, blanks run together, each number a # */
  const char *why;
} recompute_kind;

/* Lines that state and do not compute. The list may only shrink. */
extern const recompute_kind RECOMPUTE_STATED[];
/* Lines that do not come out today, each with what is wrong. Each must still fail: mend it, then take it off.
 * RECOMPUTE=FILE build/lowwall-tests --filter 'recompute' notes every such line, with why and of which wall.
 * Ends with NULL. */
extern const recompute_kind RECOMPUTE_OPEN[];

/** A line that does not come out: of the open ones, or a failure of the test. */
void recompute_fails(recompute *r, const char *line, const char *why);
/** A line that computes nothing must be of a kind that states. */
void recompute_states(recompute *r, const char *line);
/** A line with its blanks run together, each number a #. */
void recompute_key(const char *line, char *out, size_t size);

/** The next line, past the end of this one. */
const char *recompute_next(const char *line);
/* Each symbol and each key that a working prints is explained at its end, once, and no other. */
void recompute_symbols(const char *wall, const char *page);

#endif
