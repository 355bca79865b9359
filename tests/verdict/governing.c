/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "help.h"

/* A row of a schedule searches a slip only as far as it may govern: it must say what the whole check says. */

enum { WALLS = 60 };

static unsigned dice;

static int roll(int sides) {
  dice = dice * 1103515245u + 12345u;
  return (int)((dice >> 16) % (unsigned)sides);
}

/* Walls that hold up ground, from hopeless to heavy, on ground from soft to firm, dry and wet. */
static void any_wall(char *changes, size_t size) {
  int embedded = 50 * roll(3), courses = 2 + roll(4);
  snprintf(changes, size,
           "site behind=ground;site back=ground;course count=%d;block height=150 mm;wall embedment=%d mm;"
           "block depth=%d mm;setback=%d mm;ground slope=%d deg;front slope=%d deg;"
           "soil 1 friction angle=%d deg;soil 1 cohesion=%d kPa;"
           "footing soil friction angle=%d deg;footing soil cohesion=%d kPa;drain outlets=%d;"
           "wall joints=sealed;load 1 kind=uniform;load 1 pressure=%d kPa",
           courses, embedded, 200 + 50 * roll(14), 10 * roll(3), 5 * roll(4), 5 * roll(4), 26 + 2 * roll(7),
           2 * roll(2), 5 * roll(8), 4 * roll(4), roll(3), roll(3) * 5);
}

static const lw_check *governing(const lw_result *r) {
  return &r->situations.situation[r->verdict.governing_situation].check[r->verdict.governing_check];
}

Test(verdict, a_row_says_what_the_whole_check_says) {
  lw_result *whole = calloc(1, sizeof *whole), *row = calloc(1, sizeof *row);
  int slips = 0, others = 0;
  cr_assert(whole && row);
  dice = 1;
  while (slips + others < WALLS) {
    char changes[640];
    lw_case c;
    any_wall(changes, sizeof changes);
    verdict_case(changes, &c);
    cr_assert_eq(lw_run(&c, verdict_tables(), whole, NULL), LW_OK);
    cr_assert_eq(lw_run_governing(&c, verdict_tables(), row, NULL), LW_OK);
    const lw_verdict *v = &whole->verdict, *w = &row->verdict;
    cr_expect_str_eq(w->headline, v->headline, "%s", changes);
    cr_expect(w->stands == v->stands && w->who == v->who && w->what == v->what, "%s", changes);
    cr_expect_eq(w->exit_status, v->exit_status, "%s", changes);
    cr_assert(v->governed && w->governed, "%s", changes);
    const lw_check *a = governing(whole), *b = governing(row);
    cr_expect(a->kind == b->kind && a->at == b->at && a->joint == b->joint, "%s", changes);
    cr_expect(memcmp(&a->has, &b->has, sizeof a->has) == 0, "%s", changes);
    if (a->kind == LW_CHECK_SLIP)
      slips++;
    else
      others++;
  }
  /* Both kinds must have come up, or nothing was tried. */
  cr_expect_gt(slips, 3);
  cr_expect_gt(others, 3);
  free(whole);
  free(row);
}
