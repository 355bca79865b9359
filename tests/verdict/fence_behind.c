/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/support.h"
#include "help.h"
#include "tables/known.h"
#include "wall/wall.h"

/* A fence on posts of its own behind a wall, from the wall's back to 3 m off. */

enum { STEP_MM = 75, FAR_MM = 3000 };

static lw_result *fenced(const char *wall, int off_mm) {
  char changes[240];
  snprintf(changes, sizeof changes, "%s;fence height=1.8 m;fence place=behind;fence distance=%d mm", wall,
           off_mm);
  return verdict_run(changes);
}

static bool calls(const lw_result *r, const char *slug, lw_who who) {
  const lw_verdict_reason *reason = verdict_reason(&r->verdict, LW_ANSWER_WHO, slug);
  return reason && !reason->assumed && reason->who == who;
}

static double pushed(const lw_result *r) {
  const lw_situation *wind = checks_test_situation(r, LW_SITUATION_WIND);
  cr_assert_not_null(wind);
  return checks_test_horizontal(&wind->base, LW_FORCE_LEVEL_THRUST);
}

static const char *const walls[] = {
    "people on cap=no",
    "people on cap=no;course count=7",
    "people on cap=no;soil below top=150 mm;level difference=0.1 m",
    "site behind=ground;site back=ground;course count=7;people on cap=no",
};
enum { WALLS = sizeof walls / sizeof *walls, LEVEL_BEDS = 2, GROUND = 3 };

/* In the stone an engineer; within one wall height the council; farther off nobody, for the fence alone. */
Test(fence_behind, who_must_look_follows_the_distance) {
  double clear = lw_known_value(verdict_tables(), LW_FENCE_OF_POST_CLEAR);
  for (int w = 0; w < WALLS; w++) {
    for (int off = 0; off <= FAR_MM; off += STEP_MM) {
      lw_result *r = fenced(walls[w], off);
      double at = off / 1000.0, keep = r->wall.section.height_m;
      bool engineer = at < fmin(clear, keep) - 1e-9, council = !engineer && at < keep - 1e-9;
      cr_expect_eq(calls(r, "fence-load", LW_WHO_ENGINEER), engineer, "%s, %d mm", walls[w], off);
      cr_expect_eq(calls(r, "fence-near", LW_WHO_COUNCIL), council, "%s, %d mm", walls[w], off);
      cr_expect_not(calls(r, "fence-on-wall", LW_WHO_ENGINEER), "%s, %d mm", walls[w], off);
      cr_expect_eq(r->verdict.what == LW_WHAT_BED, w != GROUND, "%s, %d mm", walls[w], off);
      free(r);
    }
  }
}

/* The farther off the less it pushes, and from some distance on not at all. */
Test(fence_behind, its_push_fades_with_the_distance) {
  for (int w = 0; w < WALLS; w++) {
    double before = INFINITY, gone_mm = FAR_MM;
    for (int off = 0; off <= FAR_MM; off += STEP_MM) {
      lw_result *r = fenced(walls[w], off);
      double push = pushed(r);
      cr_expect(push <= before + 1e-9 && push >= 0.0, "%s, %d mm: %g after %g", walls[w], off, push, before);
      if (push <= 1e-9) gone_mm = fmin(gone_mm, off);
      before = push;
      free(r);
    }
    /* A level bed's posts stand below what it holds up. */
    if (w < LEVEL_BEDS) cr_expect(gone_mm <= 600.0, "%s: it pushes up to %g mm", walls[w], gone_mm);
  }
}

/* The same wall with real ground behind is pushed no less: its posts stand in what it holds up. */
Test(fence_behind, posts_in_the_ground_below_a_bed_push_less) {
  static const char own[] = "people on cap=no;course count=7;ground slope=0 deg;soil 1 friction angle=30 deg";
  for (int off = 0; off <= 1500; off += 150) {
    char behind[200];
    snprintf(behind, sizeof behind, "%s;site behind=ground;site back=ground", own);
    lw_result *bed = fenced(own, off), *ground = fenced(behind, off);
    cr_expect(pushed(bed) <= pushed(ground) + 1e-9, "%d mm: %g, %g", off, pushed(bed), pushed(ground));
    cr_expect_float_eq(ground->wall.wind.below_m, 0.0, 1e-12);
    cr_expect_float_eq(bed->wall.wind.below_m, 0.6, 1e-9);
    free(bed);
    free(ground);
  }
}

/* What nobody tells of the wind is the worst there is, or what is usual. */
Test(fence_behind, the_likely_wind_is_less) {
  lw_case c;
  double pressure[2];
  for (int look = 0; look < 2; look++) {
    lw_faults faults = {.count = 0};
    lw_wall wall;
    verdict_case("fence height=1.8 m;fence distance=0.6 m", &c);
    c.look = look ? LW_LOOK_LIKELY : LW_LOOK_CAUTIOUS;
    cr_assert_eq(lw_case_complete(verdict_tables(), &c, &faults), LW_OK);
    lw_wall_build(&c, verdict_tables(), &wall);
    pressure[look] = wall.wind.pressure_kpa;
  }
  cr_expect_float_eq(pressure[0], 1.8, 1e-9);
  cr_expect_float_eq(pressure[1], 0.6, 1e-9);
}
