/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_RECOMPUTE_CELLS_H
#define TESTS_REPORT_RECOMPUTE_CELLS_H

#include "recompute.h"

/* A number read from a table; without one it is not there. */
typedef struct cell {
  bool there;
  double value, half;
} cell;

/* What stands in so many bytes: a number, or nothing. */
cell recompute_cell(const char *begin, size_t length);
/* The columns at the end of a line, by their widths; the first words take what is left. */
bool recompute_columns(const char *line, const int *widths, int count, cell *out);
/* What a cell comes to beside what is printed. */
void recompute_hold(recompute *r, const char *line, const char *what, cell made, cell printed);
bool recompute_begins(const char *line, const char *words);
cell times(cell a, cell b);
cell plus(cell a, cell b);
cell minus(cell a);

/* The numbers of a line that has nothing else behind its first words; gives how many. */
int recompute_numbers(const char *line, cell *out, int most);
/* The number behind words of a line. */
cell recompute_after(const char *line, const char *words);

/* --- the tables of slips, of fences, of building and of narrow beds --- */
const char *recompute_slices(recompute *r, const char *line);
const char *recompute_courses(recompute *r, const char *line);
const char *recompute_fence(recompute *r, const char *line);

/* --- the tables of earth pressure --- */
const char *recompute_pressure(recompute *r, const char *line);
const char *recompute_load(recompute *r, const char *line);

#endif
