/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "help.h"

/* A bed by a house: with the house as its back it is refused, with the cure; with a fourth side of its own,
 * as the cure asks, it is the bed that it would be anywhere. */

static lw_verdict at(const char *wall, int off_mm) {
  char changes[240];
  snprintf(changes, sizeof changes, "%s;building distance=%d mm", wall, off_mm);
  return verdict_of(changes, LW_HOLDS);
}

static bool calls(const lw_verdict *v, const char *slug, lw_who who) {
  const lw_verdict_reason *r = verdict_reason(v, LW_ANSWER_WHO, slug);
  return r && !r->assumed && r->who == who;
}

Test(bed_by_house, with_a_fourth_side_it_is_a_bed_at_any_gap) {
  static const char *const beds[] = {"title=low", "course count=5;soil below top=50 mm",
                                     "pad thickness=150 mm;pad width=500 mm"};
  for (size_t b = 0; b < sizeof beds / sizeof *beds; b++) {
    lw_verdict alone = at(beds[b], 60000);
    for (int off = 0; off <= 3000; off += 50) {
      lw_verdict v = at(beds[b], off);
      cr_expect_eq(v.what, LW_WHAT_BED, "%s, %d mm", beds[b], off);
      cr_expect_eq(v.stands, LW_HOLDS, "%s, %d mm", beds[b], off);
      cr_expect_neq(v.who, LW_WHO_ENGINEER, "%s, %d mm: %s", beds[b], off, v.headline);
      cr_expect_eq(calls(&v, "clearance-building", LW_WHO_COUNCIL), off < 1500, "%s, %d mm", beds[b], off);
      if (off >= 1500) cr_expect_eq(v.who, alone.who, "%s, %d mm", beds[b], off);
    }
  }
}

Test(bed_by_house, with_the_house_as_its_back_it_is_refused_with_the_cure) {
  for (int off = 0; off <= 3000; off += 500) {
    lw_verdict v = at("site back=building", off);
    const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_STANDS, "building-behind");
    cr_assert_not_null(r);
    cr_expect_eq(v.stands, LW_CANNOT_SHOW);
    cr_expect_eq(v.who, LW_WHO_ENGINEER);
    cr_expect_not_null(strstr(r->text, "fourth side"), "%s", r->text);
    cr_expect_not_null(strstr(r->text, "gap"), "%s", r->text);
  }
}

/* Real ground that is held up may carry the house; so may ground beyond a bed that lies higher. */
Test(bed_by_house, a_house_on_what_is_held_up_is_an_engineers) {
  for (int off = 0; off <= 3000; off += 50) {
    lw_verdict ground = at("site behind=ground;site back=ground", off),
               higher = at("level difference=0.15 m", off);
    cr_expect_eq(calls(&ground, "supports-building", LW_WHO_ENGINEER), off < 400, "%d mm", off);
    cr_expect_eq(calls(&higher, "supports-building", LW_WHO_ENGINEER), off < 150, "%d mm", off);
  }
}

/* A trench beside the house: an engineer's where it may go below a footing, else a question. */
Test(bed_by_house, a_trench_below_footings_is_an_engineers) {
  for (int buried = 50; buried <= 550; buried += 100) {
    char wall[120];
    snprintf(wall, sizeof wall, "course count=8;block height=100 mm;wall embedment=%d mm", buried);
    for (int off = 0; off <= 700; off += 100) {
      lw_verdict v = at(wall, off);
      bool near = off < buried;
      cr_expect_eq(calls(&v, "digs-below-footing", LW_WHO_ENGINEER), near && buried > 300, "%d, %d", buried,
                   off);
      cr_expect_eq(calls(&v, "digs-beside-building", LW_WHO_COUNCIL), near && buried <= 300, "%d, %d", buried,
                   off);
    }
  }
}
