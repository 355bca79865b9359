/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "help.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Which of many the headline tells of. */

/* Below all of them the wall is told the figure that it comes nearest to, in every place. */
Test(verdict, the_nearest_limit_is_told_in_every_place) {
  lw_result *made = calloc(1, sizeof *made);
  lw_verdict *v = calloc(1, sizeof *v);
  const char *place;
  int told = 0, of_several = 0;
  for (int courses = 2; courses <= 5; courses++) {
    char changes[40];
    snprintf(changes, sizeof changes, "course count=%d", courses);
    verdict_wall_make(verdict_tables(), changes, LW_HOLDS, made);
    for (int p = 0; (place = verdict_place_at(verdict_tables(), p)) != NULL; p++) {
      verdict_in(made, place, v);
      if (v->who != LW_WHO_BUILDER || v->stands != LW_HOLDS) continue;
      const lw_limit_hit *hit = lw_verdict_limit(v);
      char figure[16];
      int clearing = 0;
      cr_assert_not_null(hit, "%s", place);
      snprintf(figure, sizeof figure, "(%.2f m,", hit->row->height_m);
      cr_expect_not_null(strstr(v->headline, figure), "%s: %s", place, v->headline);
      for (int i = 0; i < v->limit_count; i++) {
        const lw_limit_hit *other = &v->limit[i];
        if (other->past || !other->clears) continue;
        clearing++;
        cr_expect_leq(hit->row->height_m - hit->height_m, other->row->height_m - other->height_m + 1e-12,
                      "%s: %s, not %s", place, hit->row->id, other->row->id);
      }
      told++;
      of_several += clearing > 1 ? 1 : 0;
    }
  }
  cr_expect_lt(20, told);
  cr_expect_lt(5, of_several, "%d of %d", of_several, told);
  free(v);
  free(made);
}

/* Less than what pushes means movement, but not where both sides are design values with margin in them, nor
 * of a share of the base, nor where the check does not count or holds. */
Test(verdict, what_falls_short_by_design_values_does_not_move) {
  lw_check check = {.kind = LW_CHECK_SLIDING, .counts = true, .holds = LW_FALLS_SHORT, .has = {0.9, true}};
  cr_expect(lw_check_would_move(&check));
  check.factored = true;
  cr_expect_not(lw_check_would_move(&check));
  check.factored = false;
  check.kind = LW_CHECK_COMPRESSION;
  cr_expect_not(lw_check_would_move(&check));
  check.kind = LW_CHECK_OVERTURNING;
  cr_expect(lw_check_would_move(&check));
  check.has.value = 1.1;
  cr_expect_not(lw_check_would_move(&check));
  check.has.value = 0.9;
  check.counts = false;
  cr_expect_not(lw_check_would_move(&check));
}
