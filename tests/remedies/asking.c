/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Which unknown answers are worth asking for. */
#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
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
