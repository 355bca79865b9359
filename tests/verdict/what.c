/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <string.h>

#include "help.h"

typedef struct expected {
  const char *changes;
  lw_what what;
  const char *slug;
} expected;

static void expect_what(const expected *rows, size_t count) {
  for (size_t i = 0; i < count; i++) {
    lw_verdict v = verdict_of(rows[i].changes, LW_HOLDS);
    cr_expect_eq(v.what, rows[i].what, "%s: %s", rows[i].changes, lw_what_slug(v.what));
    cr_expect_not_null(verdict_reason(&v, LW_ANSWER_WHAT, rows[i].slug), "%s: no %s", rows[i].changes,
                       rows[i].slug);
  }
}

Test(verdict, each_what_has_its_cause) {
  static const expected rows[] = {
      {"", LW_WHAT_BED, "free-standing"},
      {"other wall distance=0.59 m", LW_WHAT_TIER, "other-wall-near"},
      {"site behind=ground", LW_WHAT_RETAINING_WALL, "ground-behind"},
      {"level difference=0.21 m", LW_WHAT_RETAINING_WALL, "level-difference"},
      {"level difference=-0.21 m", LW_WHAT_RETAINING_WALL, "level-difference"},
      {"site back=ground", LW_WHAT_RETAINING_WALL, "back-is-ground"},
      {"site back=ground;building distance=0.39 m", LW_WHAT_RETAINING_WALL, "wedge-building"},
      {"boundary distance=0.39 m", LW_WHAT_RETAINING_WALL, "wedge-boundary"},
      {"public way distance=0.39 m", LW_WHAT_RETAINING_WALL, "wedge-public-way"},
      {"ground slope=1:7", LW_WHAT_BED_ON_SLOPE, "slope-under"},
      {"front slope=1:7", LW_WHAT_BED_ON_SLOPE, "slope-under"},
      {"site back=building", LW_WHAT_BED_AGAINST_BUILDING, "back-is-building"},
      {"site back=fence", LW_WHAT_BED_AGAINST_FENCE, "back-is-fence"},
  };
  expect_what(rows, sizeof rows / sizeof *rows);
}

Test(verdict, what_at_its_figures_is_still_a_bed) {
  static const expected rows[] = {
      {"other wall distance=0.6 m", LW_WHAT_BED, "free-standing"},
      {"level difference=0.2 m", LW_WHAT_BED, "free-standing"},
      {"ground slope=1:8", LW_WHAT_BED, "free-standing"},
      {"building distance=0.4 m", LW_WHAT_BED, "free-standing"},
  };
  expect_what(rows, sizeof rows / sizeof *rows);
}

/* The first that is true, in the order tier, retaining wall, slope, building, fence; the rest are reasons. */
Test(verdict, the_gravest_what_wins_and_the_rest_are_reasons) {
  lw_verdict v =
      verdict_of("other wall distance=0.2 m;site behind=ground;ground slope=1:4;site back=fence", LW_HOLDS);
  cr_expect_eq(v.what, LW_WHAT_TIER);
  cr_expect_not_null(verdict_reason(&v, LW_ANSWER_WHAT, "ground-behind"));
  cr_expect_not_null(verdict_reason(&v, LW_ANSWER_WHAT, "slope-under"));
  cr_expect_not_null(verdict_reason(&v, LW_ANSWER_WHAT, "back-is-fence"));
  cr_expect_null(verdict_reason(&v, LW_ANSWER_WHAT, "free-standing"));
}

/* Twice the lower wall: this one when the other stands above it, the other one when that stands below. */
Test(verdict, a_tier_counts_from_the_lower_wall) {
  lw_verdict above =
      verdict_of("other wall side=above;other wall height=1 m;other wall distance=0.61 m", LW_HOLDS);
  lw_verdict below =
      verdict_of("other wall side=below;other wall height=1 m;other wall distance=0.61 m", LW_HOLDS);
  cr_expect_neq(above.what, LW_WHAT_TIER);
  cr_expect_eq(below.what, LW_WHAT_TIER);
}

Test(verdict, the_wedge_grows_with_a_slope_behind) {
  lw_verdict level = verdict_of("site behind=ground;building distance=0.45 m", LW_HOLDS);
  lw_verdict rising = verdict_of("site behind=ground;building distance=0.45 m;ground slope=1:4", LW_HOLDS);
  lw_verdict short_run = verdict_of(
      "site behind=ground;building distance=0.45 m;ground slope=1:4;ground slope run=0.1 m", LW_HOLDS);
  cr_expect_null(verdict_reason(&level, LW_ANSWER_WHAT, "wedge-building"));
  cr_expect_not_null(verdict_reason(&rising, LW_ANSWER_WHAT, "wedge-building"));
  cr_expect_null(verdict_reason(&short_run, LW_ANSWER_WHAT, "wedge-building"));
}

Test(verdict, an_unknown_back_is_a_fence_and_says_so) {
  lw_verdict v = verdict_of("site back=unknown", LW_HOLDS);
  const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_WHAT, "back-is-fence");
  cr_expect_eq(v.what, LW_WHAT_BED_AGAINST_FENCE);
  cr_assert_not_null(r);
  cr_expect(r->assumed);
  cr_expect_not_null(strstr(r->text, "not known, so taken as"));
}

/* A bed gets no discount: the word the user calls it changes neither heights nor who must sign. */
Test(verdict, a_bed_and_a_wall_of_one_height_get_the_same_figures) {
  lw_verdict bed = verdict_of("course count=8", LW_HOLDS);
  lw_verdict wall = verdict_of("course count=8;site behind=ground", LW_HOLDS);
  cr_expect_eq(bed.who, wall.who);
  for (int k = 0; k < LW_HEIGHT_KINDS; k++) cr_expect_float_eq(bed.height_m[k], wall.height_m[k], 1e-12);
}

Test(verdict, heights_by_every_definition) {
  lw_verdict v = verdict_of("course count=7;soil below top=50 mm;pad thickness=150 mm;fence height=1.2 m;"
                            "cut depth=0.2 m;fill depth=0.35 m",
                            LW_HOLDS);
  cr_expect_float_eq(v.height_m[LW_HEIGHT_TOTAL], 0.7, 1e-9);
  cr_expect_float_eq(v.total_to_pad_m, 0.85, 1e-9);
  cr_expect_float_eq(v.height_m[LW_HEIGHT_EXPOSED], 0.6, 1e-9);
  cr_expect_float_eq(v.height_m[LW_HEIGHT_RETAINED], 0.55, 1e-9);
  cr_expect_float_eq(v.height_m[LW_HEIGHT_NATURAL], 0.35, 1e-9);
  cr_expect_float_eq(v.height_m[LW_HEIGHT_FENCE], 1.8, 1e-9);
  cr_expect_float_eq(v.height_m[LW_HEIGHT_GREATEST], 0.85, 1e-9);
}

Test(verdict, cut_or_fill_not_known_is_as_deep_as_the_soil_held_up) {
  lw_verdict unknown = verdict_of("course count=7", LW_HOLDS);
  lw_verdict half = verdict_of("course count=7;cut depth=0.2 m", LW_HOLDS);
  lw_verdict deep = verdict_of("course count=7;cut depth=2 m", LW_HOLDS);
  cr_expect_float_eq(unknown.height_m[LW_HEIGHT_NATURAL], 0.6, 1e-9);
  cr_expect_float_eq(half.height_m[LW_HEIGHT_NATURAL], 0.6, 1e-9);
  cr_expect_float_eq(deep.height_m[LW_HEIGHT_GREATEST], 2.0, 1e-9);
}

Test(verdict, every_word_has_a_slug_and_a_sentence) {
  for (int w = LW_WHAT_TIER; w <= LW_WHAT_BED; w++) {
    cr_expect_neq(lw_what_slug((lw_what)w)[0], '\0');
    cr_expect_neq(lw_what_sentence((lw_what)w)[0], '\0');
  }
  for (int k = 0; k < LW_HEIGHT_KINDS; k++) {
    cr_expect_neq(lw_height_slug((lw_height_kind)k)[0], '\0');
    cr_expect_neq(lw_height_sentence((lw_height_kind)k)[0], '\0');
  }
  cr_expect_str_eq(lw_who_slug(LW_WHO_COUNCIL), "council");
  cr_expect_str_eq(lw_holds_slug(LW_CANNOT_SHOW), "cannot-be-shown");
}
