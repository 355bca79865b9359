/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include "help.h"

/* A reason rests on an answer that is not known where the fence's height or its place is not: it is the
 * height's origin while nobody gave that, and then the place's. */
Test(verdict, a_fences_reason_knows_what_it_rests_on) {
  static const struct {
    const char *items;
    bool assumed;
  } cases[] = {
      {"fence height=1.2 m;fence place=on wall", false},
      {"fence height=1.2 m;fence place=unknown", true},
  };
  for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
    lw_verdict verdict = verdict_of(cases[i].items, LW_HOLDS);
    const lw_verdict_reason *reason =
        verdict_reason(&verdict, LW_ANSWER_STANDS, lw_reason_slug(LW_REASON_FENCE_ON_WALL));
    cr_assert_not_null(reason, "%s", cases[i].items);
    cr_expect_eq(reason->assumed, cases[i].assumed, "%s", cases[i].items);
  }
}
