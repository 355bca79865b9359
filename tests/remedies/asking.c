/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Which unknown answers are worth asking for. */
#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "load_cases/least.h"
#include "report/text/advised.h"
#include "../verdict/help.h"

static void find(lw_result *result) {
  lw_result *scratch = calloc(1, sizeof *scratch);
  cr_assert_not_null(scratch);
  lw_remedies_find(result, scratch);
  free(scratch);
}

static double ratio_of(const lw_result *result) {
  lw_check check;
  return lw_verdict_governing(result, &check) && check.ratio.known ? check.ratio.value : 0.0;
}

/* To be told that an answer is as it was taken makes one question less. That alone is worth nothing to a wall
 * whose verdict and margin stay as they are. */
Test(remedies, the_answer_that_was_taken_is_asked_for_only_where_it_changes_who_is_asked) {
  dice d = {20};
  for (int i = 0; i < 12 / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    random_wall_make(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    lw_result *result = random_wall_run(&wall);
    find(result);
    for (int k = 0; k < result->asking_count; k++) {
      const lw_asking *a = &result->asking[k];
      if (strcmp(a->assumed, a->favourable) != 0) continue;
      cr_expect(a->exit_then < result->verdict.exit_status || a->stands_then != result->verdict.stands ||
                    (a->ratio_then.known && fabs(a->ratio_then.value - ratio_of(result)) > 0.01),
                "%s: %s", a->item, a->favourable);
    }
    free(result);
  }
}

/* Of a wall whose resultant is outside, whatever the answer, every ratio is 0: what its checks have tells the
 * answers apart. Three ways out count as one for want of a filter that nobody told of. */
Test(remedies, of_a_wall_that_tips_the_answer_that_gives_it_most_is_asked_first) {
  random_wall wall = {0};
  static const char *const items[] = {"site behind=ground",
                                      "wall height=700 mm",
                                      "block height=175 mm",
                                      "block depth=300 mm",
                                      "soil 1 name=silty sand",
                                      "stone width=300 mm",
                                      "footing soil name=stiff clay",
                                      "drain outlets=2",
                                      "wall joints=open",
                                      "people on cap=no",
                                      "vehicle access=no",
                                      "ground slope=0 deg",
                                      "water held behind=no"};
  for (size_t i = 0; i < sizeof items / sizeof *items; i++) random_wall_add(&wall, "%s", items[i]);
  lw_result *result = random_wall_run(&wall);
  find(result);
  cr_expect_eq(ratio_of(result), 0.0);
  cr_assert_gt(result->asking_count, 0);
  cr_expect_str_eq(result->asking[0].item, "stone filter");
  cr_expect_str_eq(result->asking[0].favourable, "cloth");
  free(result);
}

static double least_of(const lw_result *result) {
  lw_number least = lw_situations_least(&result->situations).has;
  return least.known ? least.value : 0.0;
}

/* Of each answer that is named: the wall with it in it is as is said. */
static void hold(const lw_result *now, const lw_result *then, const lw_asking *asking) {
  const lw_verdict *a = &now->verdict, *b = &then->verdict;
  double gained = ratio_of(then) - ratio_of(now), least = least_of(then) - least_of(now);
  bool same = a->exit_status == b->exit_status && a->stands == b->stands;
  const char *told = asking->item;
  cr_expect(a->exit_status >= b->exit_status, "%s", told);
  if (asking->helps == LW_HELPS_VERDICT) cr_expect(!same, "%s changes nothing", told);
  if (asking->helps == LW_HELPS_MARGIN)
    cr_expect(same && (gained > 0.0 || least > 0.0), "%s gives nothing", told);
  if (asking->helps == LW_HELPS_REASONS)
    cr_expect(same && fabs(gained) < 0.011 && a->who != LW_WHO_BUILDER, "%s", told);
}

Test(remedies, what_an_answer_is_good_for_is_true_of_the_wall_with_it) {
  dice d = {77};
  int of[3] = {0};
  for (int i = 0; i < 24 / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    random_wall_make(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    lw_result *result = random_wall_run(&wall);
    find(result);
    for (int k = 0; k < result->asking_count; k++) {
      random_wall with = wall;
      of[result->asking[k].helps]++;
      random_wall_add(&with, "%s=%s", result->asking[k].item, result->asking[k].favourable);
      lw_result *then = random_wall_run(&with);
      hold(result, then, &result->asking[k]);
      free(then);
    }
    free(result);
  }
  if (RANDOM_SHARE == 1)
    cr_expect(of[LW_HELPS_VERDICT] > 0 && of[LW_HELPS_MARGIN] > 0 && of[LW_HELPS_REASONS] > 0);
}

/* All that the sums want is told of this bed against a fence: what is left to find out is the council's. */
Test(remedies, an_answer_that_only_leaves_fewer_reasons_is_not_said_to_help_it_to_stand) {
  static const char *const items[] = {"site behind=bed",
                                      "site back=fence",
                                      "site above=public",
                                      "vehicle access=no",
                                      "wall height=500 mm",
                                      "block height=200 mm",
                                      "block depth=250 mm",
                                      "block length=400 mm",
                                      "block mass=40 kg",
                                      "setback=0 mm",
                                      "cap height=0 mm",
                                      "people on cap=no",
                                      "ground slope=0 deg",
                                      "soil below top=50 mm",
                                      "front slope=1 %",
                                      "stone width=0 mm",
                                      "bed use=walked",
                                      "soil 1 name=topsoil",
                                      "footing soil name=clean sand",
                                      "drain outlets=0",
                                      "wall joints=open",
                                      "stone filter=none"};
  random_wall wall = {0};
  char words[200];
  for (size_t i = 0; i < sizeof items / sizeof *items; i++) random_wall_add(&wall, "%s", items[i]);
  lw_result *result = random_wall_run(&wall);
  find(result);
  cr_assert(result->asking_count > 0 && result->asking[0].helps == LW_HELPS_REASONS, "%s",
            result->asking[0].item);
  lw_asking_then(result, words, sizeof words);
  cr_expect_null(strstr(words, "helps most"), "%s", words);
  cr_expect_not_null(strstr(words, "with fewer reasons"), "%s", words);
  free(result);
}
