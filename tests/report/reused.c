/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/random_wall.h"
#include "../order/support.h"

#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>

/* A result may be used again and again, as a schedule does: nothing of the wall before may be left in it. */

static void tell(const lw_case *c, lw_result *result, lw_result *scratch, lw_text *text) {
  cr_assert_eq(lw_run(c, order_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  lw_water_find(result, scratch);
  lw_text_clear(text);
  cr_assert_eq(lw_report_json(result, 0, text), LW_OK);
}

Test(report, a_result_used_again_says_what_a_new_one_says) {
  enum { WALLS = 24 };
  lw_result *again = calloc(1, sizeof *again), *scratch = calloc(1, sizeof *scratch);
  lw_text used = {0}, fresh = {0};
  dice d = {5};
  cr_assert(again != NULL && scratch != NULL);
  for (int i = 0; i < WALLS / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    char name[2048];
    lw_result *own = calloc(1, sizeof *own);
    cr_assert_not_null(own);
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    /* Now and then a fence, whose wind the next wall must not keep. */
    if (i % 3 == 0) random_wall_add(&wall, "fence height=%.2f m", dice_between(&d, 0.6, 1.8));
    if (i % 3 == 0) random_wall_add(&wall, "fence place=%s", i % 2 ? "behind" : "on wall");
    lw_case c = random_wall_case(&wall);
    tell(&c, again, scratch, &used);
    tell(&c, own, scratch, &fresh);
    random_wall_name(&wall, name, sizeof name);
    cr_expect(strcmp(used.data, fresh.data) == 0, "wall %d: %s", i, name);
    free(own);
  }
  lw_text_free(&used);
  lw_text_free(&fresh);
  free(scratch);
  free(again);
}
