/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "load_cases/kinds.h"
#include "help.h"

/* A row of a schedule searches a slip only as far as it may govern, and a run to the checks leaves out what
 * only reports say: both must say what the whole check says. */

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
  static const char *const likely[] = {"", ";soil 1 friction angle likely=42 deg;base friction likely=0.9",
                                       ";load 1 pressure likely=0 kPa", ";base friction likely=0.6"};
  size_t used = strlen(changes);
  snprintf(changes + used, size - used, "%s", likely[roll(4)]);
}

static lw_check governing(const lw_result *r) {
  lw_check check = {0};
  cr_assert(lw_verdict_governing(r, &check));
  return check;
}

static void expect_same_least(const lw_least *a, const lw_least *b, const char *changes) {
  cr_expect(a->not_shown == b->not_shown && a->outside == b->outside && a->reason == b->reason, "%s",
            changes);
  cr_expect(a->has.known == b->has.known && memcmp(&a->has.value, &b->has.value, sizeof a->has.value) == 0,
            "%s: %.12g, %.12g", changes, a->has.value, b->has.value);
  cr_expect(!a->has.known || (a->kind == b->kind && a->at == b->at && a->joint == b->joint), "%s", changes);
}

/* What the check that governs has by likely values stands beside what it has, and the least of all beside the
 * grade: neither is said of another check. */
static void expect_likely_in_one_row(const lw_result *whole, const lw_result *less, const char *changes) {
  lw_check check = governing(whole);
  const lw_situation *s = &whole->situations.situation[whole->verdict.governing_situation];
  lw_number of_whole = lw_looks_has(whole, s, &check), of_less = lw_looks_has(less, s, &check);
  const lw_least *least = &less->looks.likely;
  bool below =
      least->outside || least->has.value < 1.1 || (least->pressed.known && least->pressed.value < 1.1);
  bool moves = !check.by || check.by->reserve <= 1.0;
  cr_expect(of_whole.known == of_less.known &&
                memcmp(&of_whole.value, &of_less.value, sizeof of_whole.value) == 0,
            "%s: %.12g, %.12g", changes, of_whole.value, of_less.value);
  cr_expect(of_less.known || check.holds == LW_CANNOT_SHOW, "%s", changes);
  if (less->verdict.grade == LW_GRADE_WOULD_MOVE) cr_expect(below || least->not_shown, "%s", changes);
  if (less->verdict.grade == LW_GRADE_MAY_MOVE) cr_expect(!below, "%s", changes);
  if (lw_check_times(&check).known && moves)
    cr_expect(least->has.value <= of_less.value + 1e-12, "%s: %.12g, %.12g", changes, least->has.value,
              of_less.value);
}

static void expect_same_verdict(const lw_result *whole, const lw_result *less, const char *changes) {
  const lw_verdict *v = &whole->verdict, *w = &less->verdict;
  cr_expect_str_eq(w->headline, v->headline, "%s", changes);
  cr_expect(w->stands == v->stands && w->who == v->who && w->what == v->what, "%s", changes);
  cr_expect(w->called_for_certain == v->called_for_certain && w->falls == v->falls, "%s", changes);
  cr_expect_eq(w->exit_status, v->exit_status, "%s", changes);
  cr_assert(v->governed && w->governed, "%s", changes);
  cr_expect_eq(w->grade, v->grade, "%s", changes);
  expect_same_least(&whole->looks.cautious, &less->looks.cautious, changes);
  expect_same_least(&whole->looks.likely, &less->looks.likely, changes);
  lw_check a = governing(whole), b = governing(less);
  cr_expect(a.kind == b.kind && a.at == b.at && a.joint == b.joint, "%s", changes);
  cr_expect(memcmp(&a.has.value, &b.has.value, sizeof a.has.value) == 0, "%s", changes);
  expect_likely_in_one_row(whole, less, changes);
}

static void expect_same_check(const lw_check *a, const lw_check *b, const char *changes) {
  const lw_number of[] = {a->demand, a->resistance, a->has, a->needs, a->ratio};
  const lw_number less[] = {b->demand, b->resistance, b->has, b->needs, b->ratio};
  cr_expect(a->kind == b->kind && a->at == b->at && a->joint == b->joint, "%s", changes);
  cr_expect(a->holds == b->holds && a->reason == b->reason && a->counts == b->counts, "%s", changes);
  cr_expect(a->by == b->by && a->factored == b->factored, "%s", changes);
  for (size_t i = 0; i < sizeof of / sizeof *of; i++)
    cr_expect(of[i].known == less[i].known && memcmp(&of[i].value, &less[i].value, sizeof(double)) == 0, "%s",
              changes);
}

static void expect_same_checks(const lw_result *whole, const lw_result *less, const char *changes) {
  cr_assert_eq(less->situations.count, whole->situations.count, "%s", changes);
  for (int i = 0; i < whole->situations.count; i++) {
    const lw_situation *a = &whole->situations.situation[i], *b = &less->situations.situation[i];
    cr_assert(b->name == a->name && b->check_count == a->check_count, "%s", changes);
    for (int k = 0; k < a->check_count; k++) {
      lw_check of_whole = lw_situation_check(a, k), of_less = lw_situation_check(b, k);
      expect_same_check(&of_whole, &of_less, changes);
    }
  }
}

Test(verdict, a_row_says_what_the_whole_check_says) {
  lw_result *whole = calloc(1, sizeof *whole), *less = calloc(1, sizeof *less),
            *scratch = calloc(1, sizeof *scratch);
  int slips = 0, others = 0, grades[LW_GRADE_COUNT] = {0};
  cr_assert(whole && less && scratch);
  dice = 1;
  while (slips + others < WALLS) {
    char changes[640];
    lw_case c;
    any_wall(changes, sizeof changes);
    verdict_case(changes, &c);
    cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, whole, NULL), LW_OK);
    cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_VERDICT, less, NULL), LW_OK);
    lw_looks_find(less, scratch);
    expect_same_verdict(whole, less, changes);
    cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_CHECKS, less, NULL), LW_OK);
    lw_looks_find(less, scratch);
    expect_same_verdict(whole, less, changes);
    expect_same_checks(whole, less, changes);
    grades[whole->verdict.grade]++;
    if (governing(whole).kind == LW_CHECK_SLIP)
      slips++;
    else
      others++;
  }
  /* Both kinds must have come up, or nothing was tried. */
  cr_expect_gt(slips, 3);
  cr_expect_gt(others, 3);
  for (int i = LW_GRADE_LESS_MARGIN; i <= LW_GRADE_WOULD_MOVE; i++)
    cr_expect_gt(grades[i], 0, "none %s", lw_grade_slug((lw_grade)i));
  free(whole);
  free(less);
  free(scratch);
}
