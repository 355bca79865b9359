/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "help.h"

#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

/* What is certain of a height or a reach answers; what is only assumed asks. */

static const lw_verdict_reason *by_source(const lw_verdict *v, const char *source) {
  for (int i = 0; i < v->reasons.count; i++)
    if (strcmp(v->reasons.reason[i].source, source) == 0) return &v->reasons.reason[i];
  return NULL;
}

/* Gawler counts the fence on a wall in its 1 m: 0.3 m of wall and 1.2 m of fence are past it when both are
 * told, may be past it when the fence's place is not, and 0.3 m and 0.6 m are not. The same where a table
 * counts the fence in beside the wall's own height. */
Test(verdict, a_fence_that_is_told_is_certain) {
  static const lw_height_kind measured[] = {LW_HEIGHT_FENCE, LW_HEIGHT_EXPOSED};
  lw_tables *tables = verdict_tables_copy();
  lw_limit_row *row = verdict_limit(tables, "AU-SA-04");
  for (int i = 0; i < 2; i++) {
    row->measured = measured[i];
    lw_verdict v = verdict_with(tables, "place=gawler;fence height=1.2 m;fence place=on the wall", LW_HOLDS);
    const lw_verdict_reason *r = by_source(&v, row->from.source);
    cr_assert_not_null(r);
    cr_expect(r->left_out == NULL && !r->assumed, "%s", r->text);
    v = verdict_with(tables, "place=gawler;fence height=1.2 m;fence place=unknown", LW_HOLDS);
    r = by_source(&v, row->from.source);
    cr_assert_not_null(r);
    cr_expect_str_eq(r->left_out, "fence place");
    v = verdict_with(tables, "place=gawler;fence height=0.6 m;fence place=on the wall", LW_HOLDS);
    cr_expect_null(by_source(&v, row->from.source));
  }
  free(tables);
}

/* The line at 45 degrees starts from how high the soil stands: where that is not told, what is near is asked
 * about and not answered. */
Test(verdict, a_reach_without_the_soils_level_asks) {
  lw_verdict v = verdict_of("site behind=ground;building distance=0.1 m", LW_HOLDS);
  const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_WHO, "supports-building");
  cr_assert_not_null(r);
  cr_expect_null(r->left_out, "%s", r->text);
  v = verdict_of("site behind=ground;building distance=0.1 m;soil below top=unknown", LW_HOLDS);
  r = verdict_reason(&v, LW_ANSWER_WHO, "supports-building");
  cr_assert_not_null(r);
  cr_expect_str_eq(r->left_out, "soil below top");
}
