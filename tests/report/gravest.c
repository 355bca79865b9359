/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>

#include "../checks/random_wall.h"
#include "../sheet/support.h"

/* The gravest thing is said first, and nothing reassures beside something that fails: over walls by chance
 * and every combination of answers. What fails is worked out here from the result, not from the words. */

enum { WALLS = 24 };

static const char *const works[] = {"works=new", "works=raised", "works=moved"};
static const char *const backs[] = {"site back=wall", "site back=fence", "site back=building"};
static const char *const behinds[] = {"site behind=bed", "site behind=ground"};
static const char *const lands[] = {"mapped land=no", "mapped land=yes", "mapped land=unknown"};
enum { COMBINATIONS = 3 * 3 * 2 * 3 };

static void answer(random_wall *wall, int combination) {
  static const char *const clear[] = {"vehicle access=no",        "boundary distance=60 m",
                                      "building distance=60 m",   "other wall distance=60 m",
                                      "public way distance=60 m", "service distance=60 m",
                                      "people on cap=no",         "waterbody distance=600 m",
                                      "fence height=0 m",         "pool barrier distance=60 m"};
  int at = combination;
  random_wall_add(wall, "%s", works[at % 3]), at /= 3;
  random_wall_add(wall, "%s", backs[at % 3]), at /= 3;
  random_wall_add(wall, "%s", behinds[at % 2]), at /= 2;
  random_wall_add(wall, "%s", lands[at % 3]);
  for (size_t i = 0; i < sizeof clear / sizeof *clear; i++) random_wall_add(wall, "%s", clear[i]);
  random_wall_add(wall, "method slip=not");
}

static bool moves(const lw_check *c) {
  bool share = c->kind == LW_CHECK_COMPRESSION || c->kind == LW_CHECK_BEARING;
  bool below = c->counts && c->holds == LW_FALLS_SHORT;
  return below && (c->reason == LW_REASON_OUTSIDE_BASE || (!share && !c->factored && c->has.value < 1.0));
}

static bool any_moves(const lw_result *r) {
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      if (moves(&check)) return true;
    }
  }
  return false;
}

/* A check that falls short whether it decides or not, a fence with more soil than it keeps strength for, a
 * wall raised on one that nobody knows. */
static bool anything_fails(const lw_result *r) {
  bool fails = r->given.site.works.value != LW_WORKS_NEW || r->construction.moves;
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    for (int k = 0; k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      fails = fails || (check.counts && check.holds == LW_FALLS_SHORT);
    }
  }
  for (int m = 0; m < LW_FENCE_MEASURE_COUNT && r->fence.back && r->fence.status == LW_OK; m++)
    fails = fails || r->fence.lasting_ratio[LW_FENCE_DRY][m] > 1.0;
  return fails;
}

static void first_two_lines(const char *page, char *out, size_t size) {
  size_t first = strcspn(page, "\n"), second = strcspn(page + first + 1, "\n");
  snprintf(out, size, "%.*s %.*s", (int)first, page, (int)second, page + first + 1);
}

typedef struct tally {
  int engineers, moving, holding, short_of;
} tally;

static void hold(const lw_result *r, const char *page, const char *name, tally *all) {
  static const char sentence[] =
      "a licensed engineer must design it under the local code before work starts.";
  char lines[256];
  first_two_lines(page, lines, sizeof lines);
  const lw_verdict *v = &r->verdict;
  bool on_paper = strstr(page, "on paper, in every case that decides") != NULL;
  if (v->who == LW_WHO_ENGINEER) cr_expect_not_null(strstr(lines, sentence), "%s: %s", name, lines);
  cr_expect(strstr(page, "does not stand") == NULL || strstr(page, "stands on paper") == NULL, "%s", name);
  cr_expect_null(strstr(v->headline, "on paper"), "%s: %s", name, v->headline);
  cr_expect_eq(v->stands != LW_HOLDS && any_moves(r), strstr(v->headline, "would move") != NULL, "%s: %s",
               name, v->headline);
  cr_expect_not(on_paper && anything_fails(r), "%s", name);
  cr_expect_eq(v->headline[strlen(v->headline) - 1], '.', "%s: %s", name, v->headline);
  all->engineers += v->who == LW_WHO_ENGINEER ? 1 : 0;
  all->moving += v->stands != LW_HOLDS && any_moves(r) ? 1 : 0;
  all->holding += v->stands == LW_HOLDS ? 1 : 0;
  all->short_of += v->stands != LW_HOLDS && !any_moves(r) ? 1 : 0;
}

Test(report, the_gravest_is_said_first_whatever_the_answers) {
  lw_result *result = calloc(1, sizeof *result), *row = calloc(1, sizeof *row);
  tally all = {0};
  dice d = {23};
  cr_assert(result && row);
  for (int i = 0; i < WALLS; i++) {
    random_wall made;
    random_wall_make(&d, &made);
    for (int combination = i % 4; combination < COMBINATIONS; combination += 4) {
      char name[1600];
      random_wall wall = made;
      lw_text page = {0};
      answer(&wall, combination);
      lw_case c = random_wall_case(&wall);
      random_wall_name(&wall, name, sizeof name);
      cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK, "%s", name);
      cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_VERDICT, row, NULL), LW_OK, "%s", name);
      cr_expect_str_eq(row->verdict.headline, result->verdict.headline, "%s", name);
      cr_assert_eq(lw_report_text(result, &(lw_text_style){.columns = 80}, &page), LW_OK);
      hold(result, page.data, name, &all);
      lw_text_free(&page);
    }
  }
  cr_expect(all.engineers > 30 && all.moving > 30 && all.holding > 10 && all.short_of > 10,
            "%d engineers, %d move, %d hold, %d fall short", all.engineers, all.moving, all.holding,
            all.short_of);
  free(row);
  free(result);
}
