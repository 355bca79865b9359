/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_MEASURES_H
#define TESTS_REPORT_MEASURES_H

#include <lowwall/report.h>

/* Measures read back from a text, in whichever units it is written. Blanks and line ends are one and the
 * same; what stands in [brackets], 'quotes' or `ticks` is a source's or something to type. */
typedef struct measure {
  const char *at; /* where its figure begins */
  size_t length;  /* of all of it */
  const char
      *unit; /* "m", "ft", "lb"; "" when it is a figure alone. "2 ft 7-1/2 in" is one measure in feet */
  bool us;
  lw_kind kind; /* of the unit */
  double value; /* as printed, in that unit */
  double step;  /* of its last digit, or of its fraction */
} measure;

/** The next one; false: none is left. */
bool measure_next(const char **text, measure *found);
/** A copy, blanks and line ends folded to one blank each, a law's own figure left out; to be freed. */
char *measure_fold(const char *text, bool without_law);

/** No measure of the other units stands in the text; prints the first that does. */
void expect_all_in(lw_units units, const char *text, const char *name);
/** No line is wider than 80 columns but one of typed items, which is not broken. */
void expect_narrow(const char *text, const char *name);
/** Each figure is the other's at the same place, within what both round. gives how many were paired */
int expect_paired(const char *metric, const char *us, const char *name);

#endif
