/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_TOLD_H
#define TESTS_REPORT_TOLD_H

#include <lowwall/base.h>

/* A recorder that works out each step from the numbers put in, as a reader with a calculator would, and keeps
 * what each symbol came to. */

enum { TOLD_STEPS = 120, TOLD_WORDS = 120 };

typedef struct told {
  int count, worked_out; /* steps; those whose numbers are an expression */
  int wrong;             /* of these do not come out */
  int headings;
  char first_wrong[300];
  struct {
    char symbol[12], formula[TOLD_WORDS];
    double value;
  } step[TOLD_STEPS];
} told;

/* told is cleared. */
lw_working told_listen(told *t);

/* What a symbol came to the last time that it was told; NAN: it never was. */
double told_value(const told *t, const char *symbol);

/* How that read: "" where it was not told. */
const char *told_formula(const told *t, const char *symbol);

#endif
