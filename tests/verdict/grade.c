/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "verdict/grade.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "help.h"

/* The grade as a function of what it follows from, over all that it may be. */

static const double HAS[] = {0.0, 0.5, 0.999, 1.0, 1.09, 1.1, 1.46, 9.0};
enum { HASES = sizeof HAS / sizeof *HAS, TRIES = 3 * 2 * 2 * (HASES + 1) * 2 * 2 };

typedef struct one {
  lw_least likely;
  lw_graded of;
} one;

/* Every combination by its number. */
static one combination(int n) {
  one made = {.of.margin = 1.1};
  int has;
  made.of.stands = (lw_holds)(n % 3), n /= 3;
  made.of.moves = n % 2, n /= 2;
  made.of.looked = n % 2, n /= 2;
  has = n % (HASES + 1), n /= HASES + 1;
  made.likely.has = (lw_number){has < HASES ? HAS[has] : 0.0, has < HASES};
  made.likely.outside = n % 2, n /= 2;
  made.likely.not_shown = n % 2;

  return made;
}

static lw_grade grade(one *made) {
  made->of.likely = &made->likely;
  return lw_verdict_grade(&made->of);
}

static bool stands_by_likely(const one *made) {
  const lw_least *l = &made->likely;
  return made->of.looked && !l->outside && !l->not_shown && (!l->has.known || l->has.value >= 1.1);
}

Test(grade, each_combination_has_the_grade_that_its_definition_says) {
  for (int n = 0; n < TRIES; n++) {
    one made = combination(n);
    lw_grade got = grade(&made);
    bool helps = stands_by_likely(&made);
    switch (got) {
    case LW_GRADE_HOLDS: cr_expect(made.of.stands == LW_HOLDS, "%d", n); break;
    case LW_GRADE_LESS_MARGIN: cr_expect(made.of.stands == LW_FALLS_SHORT && !made.of.moves, "%d", n); break;
    case LW_GRADE_MAY_MOVE:
      cr_expect(made.of.stands == LW_FALLS_SHORT && made.of.moves && helps, "%d", n);
      break;
    case LW_GRADE_WOULD_MOVE:
      cr_expect(made.of.stands != LW_HOLDS && made.of.moves && !helps, "%d", n);
      break;
    case LW_GRADE_CANNOT_BE_SHOWN:
      cr_expect(made.of.stands == LW_CANNOT_SHOW && (!made.of.moves || helps), "%d", n);
      break;
    default: cr_expect(false, "%d has no grade", n);
    }
    cr_expect_eq(got == LW_GRADE_HOLDS, made.of.stands == LW_HOLDS, "%d", n);
  }
}

/* More by likely values is never graver, nor is what does not move beside what does. */
Test(grade, it_is_never_graver_with_more) {
  for (int n = 0; n < TRIES; n++) {
    one made = combination(n), more = made, still = made;
    lw_grade now = grade(&made);
    more.likely.has.value += 0.3;
    cr_expect(grade(&more) <= now || now == LW_GRADE_WOULD_MOVE, "%d", n);
    still.of.moves = false;
    cr_expect(grade(&still) <= now || now == LW_GRADE_WOULD_MOVE, "%d", n);
    made.of.margin = 0.9;
    cr_expect(grade(&made) <= now || now == LW_GRADE_WOULD_MOVE, "%d", n);
  }
}

Test(grade, both_looks_stand_in_one_sentence_and_no_less_than_1_reads_1) {
  static const struct {
    double likely, cautious;
    const char *says[2];
  } tries[] = {{1.1263, 0.5759, {"it has 1.1 times", "ones 0.6"}},
               {0.97, 0.96, {"it has 0.97 times", "ones 0.96"}},
               {12.0, 0.94, {"it has more than 9 times", "ones 0.9"}},
               {0.04, 0.004, {"it has 0.04 times", "ones less than 0.01"}},
               {0.6453, 0.3744, {"it has 0.6 times", "ones 0.4"}}};
  char words[200];
  for (size_t i = 0; i < sizeof tries / sizeof *tries; i++) {
    lw_looks looks = {
        .looked = true, .likely.has = {tries[i].likely, true}, .cautious.has = {tries[i].cautious, true}};
    lw_looks_words(&looks, words, sizeof words);
    for (int k = 0; k < 2; k++) cr_expect(strstr(words, tries[i].says[k]) != NULL, "%s", words);
    looks.cautious.has.known = false;
    cr_expect_str_eq(lw_looks_words(&looks, words, sizeof words), "", "never alone");
    looks.cautious.has.known = true;
    looks.looked = false;
    cr_expect_str_eq(lw_looks_words(&looks, words, sizeof words), "");
  }
}

/* What is not known says nothing of movement, under the factors of any set. */
Test(grade, a_wall_without_a_depth_cannot_be_shown_under_any_set) {
  const lw_tables *tables = verdict_tables();
  for (int i = 0; i < tables->factor_count; i++) {
    const char *set = tables->factor[i].factor_set;
    char changes[96];
    if (i > 0 && strcmp(set, tables->factor[i - 1].factor_set) == 0) continue;
    snprintf(changes, sizeof changes, "block depth=unknown;method format=%s", set);
    lw_result *result = verdict_run(changes);
    cr_expect_eq(result->verdict.grade, LW_GRADE_CANNOT_BE_SHOWN, "%s", set);
    free(result);
  }
}

static bool any_not_shown(const lw_result *r) {
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      const lw_check check = lw_situation_check(s, k);
      if (check.counts && check.holds == LW_CANNOT_SHOW) return true;
    }
  }
  return false;
}

/* A wall whose back leans so far and is so rough that no push is found may still be short of margin in its
 * slip alone: nobody is told then that it stands, on paper or with less margin. */
Test(grade, what_cannot_be_shown_does_not_stand_with_less_margin) {
  enum { WALLS = 72 };
  int without = 0;
  for (int n = 0; n < WALLS; n++) {
    random_wall wall = {0};
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    random_wall_add(&wall, "wall height=1 m");
    random_wall_add(&wall, "wall embedment=200 mm");
    random_wall_add(&wall, "top width=300 mm");
    random_wall_add(&wall, "base width=%.1f m", 1.2 + 0.6 * (n % 3));
    random_wall_add(&wall, "face batter=0 deg");
    random_wall_add(&wall, "soil 1 friction angle=40 deg");
    random_wall_add(&wall, "wall friction=%d deg", 30 + 5 * (n / 3 % 2));
    random_wall_add(&wall, "method pressure=%s", n / 6 % 2 ? "wedge" : "coulomb");
    random_wall_add(&wall, "footing soil friction angle=%d deg", 24 + 2 * (n / 12));
    lw_result *r = random_wall_run(&wall);
    bool missing = any_not_shown(r);
    lw_grade grade = r->verdict.grade;
    random_wall_name(&wall, name, sizeof name);
    without += missing ? 1 : 0;
    cr_expect(!missing || (grade != LW_GRADE_HOLDS && grade != LW_GRADE_LESS_MARGIN), "%s: %d", name, grade);
    cr_expect(!missing || r->verdict.stands == LW_CANNOT_SHOW || grade == LW_GRADE_WOULD_MOVE, "%s", name);
    free(r);
  }
  cr_expect(without > 0 && without < WALLS, "both are met: %d", without);
}
