/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The pre-check in its reader's units: words of laws and sources aside, nothing is told in the others. */
#include "every_wall.h"
#include "report/precheck/precheck.h"
#include "units_told.h"
#include "walls.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char HASH[] = "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";

typedef struct page {
  const char *wall;
  lw_units units;
  bool own_words; /* below a heading of what the sheet gives, in its own words */
} page;

/* What a law says is its own, and so is where a row is from: "4 ft, 1.22 m by the law (total), here 0.40 m:
 * asks for ... . Its name. [KEY], ...". Rows of ours are told whole. */
static const char *told_from(const char *words) {
  const char *law = strstr(words, " by the law");
  return law != NULL ? law : words;
}

static size_t told_of(const char *words) {
  const char *source = strstr(words, ". [");
  return source != NULL ? (size_t)(source - words) : strlen(words);
}

static void hold(void *context, const lw_block *block) {
  page *p = context;
  if (block->kind == LW_BLOCK_HEADING) p->own_words = strcmp(block->words, "Given on the sheet") == 0;
  if (p->own_words) return;
  const char *from = told_from(block->words);
  units_told_hold(p->wall, from, told_of(from), p->units);
}

int every_precheck_speaks_one_units(const every_wall *wall) {
  static lw_result *told;
  int held = 0;
  if (told == NULL) told = malloc(sizeof *told);
  cr_assert_not_null(told);
  for (int units = LW_UNITS_METRIC; units <= LW_UNITS_US; units++) {
    lw_case c = wall->result->given;
    c.about.units = (lw_choice){.value = units, .origin = LW_GIVEN};
    cr_assert_eq(lw_run(&c, wall->result->tables, LW_DETAIL_EVERYTHING, told, NULL), LW_OK, "%s", wall->name);
    page p = {wall->name, (lw_units)units, false};
    lw_precheck_each(told, HASH, hold, &p);
    held++;
  }
  return held;
}

typedef struct laws {
  lw_units units;
  int other; /* limits of laws that count in the other units, each with the figure of the law */
} laws;

/* An officer finds the figure of the law on the page, whatever the sheet is measured in. */
static void find_law(void *context, const lw_block *block) {
  laws *l = context;
  bool american = strncmp(block->label, "US-", 3) == 0, australian = strncmp(block->label, "AU-", 3) == 0;
  if (block->kind != LW_BLOCK_FACT || (!american && !australian)) return;
  bool other = american == (l->units == LW_UNITS_METRIC);
  const char *law = strstr(block->words, " by the law ("), *unit = american ? " ft" : " m";
  cr_expect_eq(law != NULL, other, "%s: %s", block->label, block->words);
  if (law != NULL)
    cr_expect(strncmp(law - strlen(unit), unit, strlen(unit)) == 0 || law[-1] == 'n', "%s", law - 9);
  l->other += other ? 1 : 0;
}

Test(precheck, a_limit_stands_as_the_law_counts_it) {
  static const char *const PLACES[] = {"seattle", "queensland"};
  for (int units = LW_UNITS_METRIC; units <= LW_UNITS_US; units++) {
    laws l = {(lw_units)units, 0};
    for (size_t i = 0; i < sizeof PLACES / sizeof *PLACES; i++) {
      char typed[200];
      snprintf(typed, sizeof typed,
               "place=%s;units=%s;wall height=700 mm;block height=200 mm;block depth=500 mm", PLACES[i],
               units == LW_UNITS_US ? "us" : "metric");
      lw_precheck_each(wall_of(typed), HASH, find_law, &l);
    }
    cr_expect(l.other >= 2, "%d", l.other);
  }
}
