/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/support.h"
#include "../sheet/support.h"
#include "load_cases/kinds.h"
#include "load_cases/load_case.h"
#include "load_cases/load_cases.h"
#include "standards/factor_set.h"

/* Which load cases share a push, and which checks are there at all. */

/* An earthquake, wind and a person at the edge make a push of their own, in whichever order the two stand. */
Test(told_apart, a_push_is_shared_either_way_round) {
  lw_factor_set set = {.any = NULL};
  for (int a = 0; a < LW_SITUATION_COUNT; a++)
    for (int b = 0; b < LW_SITUATION_COUNT; b++) {
      lw_situation one = {.name = (lw_situation_name)a, .kind = LW_USUAL, .water_depth_m = 1.0},
                   other = {.name = (lw_situation_name)b, .kind = LW_UNUSUAL, .water_depth_m = 1.0};
      bool own = a == LW_SITUATION_EARTHQUAKE || b == LW_SITUATION_EARTHQUAKE || a == LW_SITUATION_WIND ||
                 b == LW_SITUATION_WIND || a == LW_SITUATION_PERSON_AT_EDGE ||
                 b == LW_SITUATION_PERSON_AT_EDGE;
      cr_expect_eq(lw_load_cases_push_alike(&set, &one, &other), !own, "%d, %d", a, b);
      other.water_depth_m = 0.5;
      cr_expect_not(lw_load_cases_push_alike(&set, &one, &other), "%d, %d", a, b);
    }
}

/* A check has words at the places where it is made, and none where it never is. */
Test(told_apart, a_check_is_called_something_where_it_is_made) {
  for (int kind = 0; kind < LW_CHECK_KIND_COUNT; kind++)
    for (int at = 0; at < LW_AT_COUNT; at++) {
      char words[64] = "?";
      lw_check check = {.kind = (lw_check_kind)kind, .at = (lw_at)at, .joint = 2};
      lw_check_words(&check, words, sizeof words);
      cr_expect_eq(words[0] != '\0', lw_check_about_of((lw_check_kind)kind)->at[at] != NULL, "%d, %d", kind,
                   at);
      cr_expect(at != LW_AT_JOINT || words[0] == '\0' || strstr(words, "course 2") != NULL, "%s", words);
    }
}

static int slides_of_the_bed(const lw_result *r) {
  int count = 0;
  for (int s = 0; s < r->situations.count; s++)
    for (int i = 0; i < r->situations.situation[s].check_count; i++) {
      const lw_check *check = checks_test_check(&r->situations.situation[s], i);
      count += check->kind == LW_CHECK_SLIDING && check->at == LW_AT_GROUND;
    }
  return count;
}

#define ON_A_SLOPE \
  "wall kind=section", "wall height=1 m", "top width=0.5 m", "base width=0.5 m", \
      "wall unit weight=23 kN/m3", "site behind=bed", "ground slope=12 deg"

/* A bed on a slope is asked whether it slides, but for one filled with what is refused, and for one without
 * soil. */
Test(told_apart, a_bed_slides_where_there_is_a_bed) {
  static const struct {
    const char *soil, *below;
    bool asked;
  } rows[] = {{"soil 1 friction angle=33 deg", "soil below top=0.1 m", true},
              {"soil 1 name=clay loam", "soil below top=0.1 m", true},
              {"soil 1 friction angle=33 deg", "soil below top=1.1 m", true}};
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    lw_result *r = RUN(ON_A_SLOPE, rows[i].soil, rows[i].below);
    bool asked =
        !r->wall.site.backfill_refused && r->wall.section.height_m - r->wall.site.soil_below_top_m > 0.0;
    cr_expect_eq(slides_of_the_bed(r) > 0, asked, "%s, %s", rows[i].soil, rows[i].below);
    free(r);
  }
}

/* By hand: soil of 18 kN/m3 and 0.9 m on 12 degrees pulls 18 x 0.9 x sin 12 x cos 12 = 3.2945 kPa down its
 * slope, and has tan 33/tan 12. */
Test(told_apart, a_dry_bed_slides_by_its_weight_along_the_slope) {
  lw_result *r = RUN(ON_A_SLOPE, "soil 1 friction angle=33 deg", "footing soil friction angle=33 deg",
                     "soil 1 unit weight=18 kN/m3", "soil below top=0.1 m", "wall embedment=0 m");
  const lw_situation *s = &r->situations.situation[0];
  int seen = 0;
  for (int i = 0; i < s->check_count; i++) {
    const lw_check *check = checks_test_check(s, i);
    if (check->kind != LW_CHECK_SLIDING || check->at != LW_AT_GROUND) continue;
    cr_expect_float_eq(check->demand.value, 3.2945, 0.0005, "%g", check->demand.value);
    cr_expect_float_eq(check->has.value, 0.64941 / 0.21256, 0.0005, "%g", check->has.value);
    seen++;
  }
  cr_expect_eq(seen, 1);
  free(r);
}

/* A wall that tips in an earthquake falls short where nothing is asked of what is in compression; how far a
 * run goes
 * changes neither that nor what is said of its slip. */
Test(told_apart, a_run_to_the_verdict_says_the_same) {
  static const char *const SHAKES[] = {"seismic horizontal=0.1", "seismic horizontal=0.6"};
  lw_result *whole = NULL, *headline = malloc(sizeof *headline);
  for (int i = 0; i < 2; i++) {
    whole = RUN("wall kind=section", "wall height=1.6 m", "top width=0.5 m", "base width=0.5 m",
                "wall unit weight=23 kN/m3", "soil 1 friction angle=36 deg", "site behind=ground",
                "method slip=bishop", SHAKES[i]);
    cr_assert_eq(lw_run(&whole->given, sheet_test_tables(), LW_DETAIL_VERDICT, headline, NULL), LW_OK);
    cr_expect_eq(headline->verdict.stands, whole->verdict.stands);
    cr_expect_str_eq(headline->verdict.headline, whole->verdict.headline);
    free(whole);
  }
  free(headline);
}
