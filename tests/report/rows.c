/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../sheet/support.h"
#include "load_cases/kinds.h"
#include "report/text/rows.h"
#include "tables/known.h"

/* A row of the page is graded as the wall is. */

enum { WALLS = 300 / RANDOM_SHARE };

typedef struct tally {
  int grades[LW_GRADE_COUNT + 1];
  int told; /* in another case than the one that governs */
  int given_way, outside;
} tally;

static bool moves(lw_grade grade) {
  return grade == LW_GRADE_MAY_MOVE || grade == LW_GRADE_WOULD_MOVE;
}

/* By an allowable pressure the ground gives way under so many times of it, not under a little more. */
static void hold_bearing(const lw_row *row, const char *name, tally *all) {
  const lw_check *check = &row->check;
  double reserve = lw_known_value(sheet_test_tables(), LW_THRESHOLD_BEARING_RESERVE);
  bool allowed = check->by && strcmp(check->by->quantity, "bearing-presumptive") == 0;
  if (check->kind != LW_CHECK_BEARING || !allowed || !check->counts || !check->has.known) return;
  bool gives_way = check->has.value * reserve < 1.0;
  cr_expect_eq(moves(row->grade), gives_way, "%.3f: %s", check->has.value, name);
  all->given_way += gives_way ? 1 : 0;
}

static void hold(const lw_result *r, const char *name, tally *all) {
  lw_rows rows;
  lw_rows_collect(r, &rows);
  all->grades[r->verdict.grade]++;
  for (int i = 0; i < rows.count; i++) {
    const lw_row *row = &rows.row[i];
    if (row->grade >= LW_GRADE_CANNOT_BE_SHOWN) continue;
    cr_expect(row->grade <= r->verdict.grade, "%s %s of a wall that %s: %s", lw_check_slug(row->check.kind),
              lw_grade_slug(row->grade), lw_grade_slug(r->verdict.grade), name);
    if (r->looks.bare) continue;
    hold_bearing(row, name, all);
    all->outside += row->check.reason == LW_REASON_OUTSIDE_BASE ? 1 : 0;
  }
}

/* The figures of the headline stand in the table. */
static void hold_told(const lw_result *r, const char *name, tally *all) {
  const lw_verdict *v = &r->verdict;
  lw_rows rows;
  if (!v->governed || v->stands == LW_HOLDS) return;
  lw_check told = lw_situation_check(&r->situations.situation[v->told_situation], v->told_check);
  if (told.holds != LW_FALLS_SHORT) return;
  lw_rows_collect(r, &rows);
  for (int i = 0; i < rows.count; i++) {
    const lw_check *check = &rows.row[i].check;
    if (check->kind != told.kind || check->at != told.at) continue;
    all->told += r->situations.situation[v->told_situation].name !=
                 r->situations.situation[v->governing_situation].name;
    cr_expect(check->has.known == told.has.known && !(check->has.value > told.has.value + 1e-9) &&
                  !(check->has.value < told.has.value - 1e-9),
              "%s: told %g, in the table %g: %s", lw_check_slug(told.kind), told.has.value, check->has.value,
              name);
  }
}

Test(rows, none_is_graver_than_its_wall) {
  lw_result *result = calloc(1, sizeof *result);
  const lw_tables *t = sheet_test_tables();
  tally all = {0};
  dice d = {77};
  cr_assert_not_null(result);
  for (int i = 0; i < WALLS; i++) {
    char name[1600];
    random_wall wall;
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    if (i % 3 == 1) random_wall_add(&wall, "method format=%s", t->factor[i * 5 % t->factor_count].factor_set);
    random_wall_name(&wall, name, sizeof name);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, t, LW_DETAIL_EVERYTHING, result, NULL), LW_OK, "%s", name);
    hold(result, name, &all);
    hold_told(result, name, &all);
  }
  /* The fewer walls of the sanitized build do not meet them all. */
  bool few = RANDOM_SHARE > 1;
  cr_expect(few || (all.given_way > 0 && all.outside > 0 && all.grades[LW_GRADE_MAY_MOVE] > 0),
            "%d give way, %d outside, %d may move", all.given_way, all.outside,
            all.grades[LW_GRADE_MAY_MOVE]);
  free(result);
}
