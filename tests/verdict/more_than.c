/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "help.h"

/* A distance of more than so much leaves open how far it is. */

static int certain(const lw_verdict *v) {
  int count = 0;
  for (int i = 0; i < v->reasons.count; i++)
    count += v->reasons.reason[i].answer == LW_ANSWER_WHO && !v->reasons.reason[i].assumed;
  return count;
}

/* Whoever says "more than 0.1 m" has not said that it is nearer than what a law asks for: nothing is known
 * that is not known without it, and nobody is called for certain. */
Test(verdict, more_than_a_little_is_never_told_as_near) {
  static const char *const items[] = {"boundary distance",    "building distance", "other wall distance",
                                      "public way distance",  "service distance",  "waterbody distance",
                                      "pool barrier distance"};
  lw_result *open = calloc(1, sizeof *open), *more = calloc(1, sizeof *more);
  lw_verdict *a = calloc(2, sizeof *a), *b = a + 1;
  cr_assert(open && more && a);
  for (size_t i = 0; i < sizeof items / sizeof *items; i++) {
    char changes[2][80];
    const char *place;
    snprintf(changes[0], sizeof changes[0], "%s=not known", items[i]);
    snprintf(changes[1], sizeof changes[1], "%s=more than 0.1 m", items[i]);
    verdict_wall_make(verdict_tables(), changes[0], LW_HOLDS, open);
    verdict_wall_make(verdict_tables(), changes[1], LW_HOLDS, more);
    for (int k = 0; (place = verdict_place_at(verdict_tables(), k)) != NULL; k++) {
      verdict_in(open, place, a);
      verdict_in(more, place, b);
      cr_expect_leq(b->who, a->who, "%s in %s: %s", changes[1], place, b->headline);
      cr_expect_leq(certain(b), certain(a), "%s in %s: %s", changes[1], place, b->headline);
    }
  }
  free(open);
  free(more);
  free(a);
}
