/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_ORDINARY_WALLS_H
#define LOWWALL_TESTS_ORDINARY_WALLS_H

#include <lowwall/result.h>

#include "../handbook/rows.h"

/* Walls that people build: by rules of proportion, as the trade does, wrong ones, and walls of which it was
 * seen whether they stood. Rows of tests/ordinary/walls.csv, a sheet each in tests/ordinary/sheets/. */

typedef struct ordinary_wall {
  char id[CASE_CELL_MAX], what[CASE_CELL_MAX];
  char class[CASE_CELL_MAX]; /* practice · known-wrong · rule · measured */
  char source[CASE_CELL_MAX], seen[CASE_CELL_MAX], outcome[CASE_CELL_MAX], note[CASE_CELL_MAX];
} ordinary_wall;

/* What of a sheet is taken otherwise. */
typedef struct ordinary_change {
  bool garden_load;   /* no load is given: that of people who walk there */
  bool loam_on_clay;  /* behind and under it, in place of stone and gravel */
  double depth_share; /* of every depth of the section; 0: as it is */
} ordinary_change;

typedef struct ordinary_answer {
  lw_holds stands;
  lw_grade grade;
  lw_number has, likely;      /* the least of the checks that decide, by either look */
  lw_number sliding, tipping; /* of the base as built, by cautious values */
  char governs[80];           /* the check and its situation */
} ordinary_answer;

/* Hand on every wall; gives how many there are. */
typedef void (*ordinary_taker)(void *context, const ordinary_wall *wall);
int ordinary_each(ordinary_taker taker, void *context);
bool ordinary_is(const ordinary_wall *wall, const char *class);
/* The test fails on a sheet with a fault. */
ordinary_answer ordinary_run(const ordinary_wall *wall, const ordinary_change *change);
/* The tables of docs/validation.md. */
void ordinary_write(lw_text *out);

#endif
