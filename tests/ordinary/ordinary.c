/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "walls.h"

#include <criterion/criterion.h>
#include <stdio.h>
#include <string.h>

/* Ordinary walls are held against their word: one that is known to be wrong never holds, and a wall by a
 * rule at half its depth neither. */

enum { RULES = 12, PRACTICE = 14, WRONG = 6, MEASURED = 11 };

typedef struct tally {
  const char *class;
  ordinary_change change;
  int count, grade[LW_GRADE_COUNT];
} tally;

static void count_wall(void *context, const ordinary_wall *wall) {
  tally *t = context;
  if (!ordinary_is(wall, t->class)) return;
  ordinary_answer a = ordinary_run(wall, &t->change);
  t->count++;
  t->grade[a.grade]++;
}

static tally tally_of(const char *class, ordinary_change change) {
  tally t = {.class = class, .change = change};
  (void)ordinary_each(count_wall, &t);
  return t;
}

/* Whoever does not give the word that is expected is named. */
static void name_movers(void *context, const ordinary_wall *wall) {
  const tally *t = context;
  if (!ordinary_is(wall, t->class)) return;
  ordinary_answer a = ordinary_run(wall, &t->change);
  cr_expect(a.grade == LW_GRADE_HOLDS || a.grade == LW_GRADE_LESS_MARGIN, "%s: %s, has %.2f, %s", wall->id,
            lw_grade_slug(a.grade), a.has.value, a.governs);
}

Test(ordinary, every_wall_is_there) {
  cr_expect_eq(ordinary_each(count_wall, &(tally){.class = "none"}), RULES + PRACTICE + WRONG + MEASURED);
}

Test(ordinary, walls_known_to_be_wrong_never_hold) {
  tally t = tally_of("known-wrong", (ordinary_change){0});
  cr_expect_eq(t.count, WRONG);
  cr_expect_eq(t.grade[LW_GRADE_HOLDS] + t.grade[LW_GRADE_LESS_MARGIN], 0);
}

/* As a rule says it, on a firm levelled base with clean stone packed behind. */
Test(ordinary, walls_by_rule_stand) {
  tally light = {.class = "rule"}, garden = tally_of("rule", (ordinary_change){.garden_load = true});
  (void)ordinary_each(name_movers, &light);
  cr_expect_eq(garden.count, RULES);
  cr_expect_geq(4 * (garden.grade[LW_GRADE_HOLDS] + garden.grade[LW_GRADE_LESS_MARGIN]), 3 * RULES);
}

/* What the trade builds and what stands is never said to move for sure; most of it is said to stand. */
Test(ordinary, walls_of_the_trade_stand_or_may_move) {
  tally t = tally_of("practice", (ordinary_change){0});
  cr_expect_eq(t.count, PRACTICE);
  cr_expect_eq(t.grade[LW_GRADE_WOULD_MOVE] + t.grade[LW_GRADE_CANNOT_BE_SHOWN], 0);
  cr_expect_geq(5 * (t.grade[LW_GRADE_HOLDS] + t.grade[LW_GRADE_LESS_MARGIN]), 3 * PRACTICE);
}

/* A crib is asked to be as deep as it is high: half of that is still the rule for stone laid dry, and
 * stands. */
static void hold_half(void *context, const ordinary_wall *wall) {
  int *held = context;
  if (!ordinary_is(wall, "rule") || strncmp(wall->id, "CRIB", 4) == 0) return;
  ordinary_answer a = ordinary_run(wall, &(ordinary_change){.depth_share = 0.5});
  cr_expect_neq(a.grade, LW_GRADE_HOLDS, "%s: has %.2f, %s", wall->id, a.has.value, a.governs);
  *held += a.grade == LW_GRADE_HOLDS;
}

Test(ordinary, walls_by_rule_hold_less_the_thinner_they_are) {
  tally whole = tally_of("rule", (ordinary_change){0}),
        most = tally_of("rule", (ordinary_change){.depth_share = 0.7});
  int held = 0;
  cr_expect_eq(whole.count, RULES);
  cr_expect_leq(most.grade[LW_GRADE_HOLDS], whole.grade[LW_GRADE_HOLDS]);
  (void)ordinary_each(hold_half, &held);
}
