/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/support.h"

/* A trench in front of the toe: what it takes away, when it undermines, and where nobody may dig. */

#define WALL \
  "wall height=800 mm", "wall embedment=200 mm", "block height=200 mm", "block depth=600 mm", \
      "soil 1 friction angle=30 deg", "ground slope=0 deg", "load 1 kind=none", \
      "footing soil friction angle=30 deg"

static const lw_situation *trench_of(const lw_result *result) {
  return checks_test_situation(result, LW_SITUATION_TRENCH);
}

/* No trench is no situation. Passive falls with the depth that is left, a quarter of it at half the depth. */
Test(trench, passive_is_what_is_left_in_front) {
  lw_result *whole = RUN(WALL, "method passive=1", "trench depth=1 mm", "trench distance=900 m");
  lw_result *half = RUN(WALL, "method passive=1", "trench depth=100 mm");
  lw_result *none = RUN(WALL, "method passive=1", "trench depth=0 mm");
  double all = whole->situations.situation[0].base.passive_kn_per_m;
  cr_expect_gt(all, 0.1);
  cr_expect(checks_test_near(trench_of(whole)->base.passive_kn_per_m, all, 1e-12),
            "far off it changes nothing");
  cr_expect(checks_test_near(trench_of(half)->base.passive_kn_per_m, 0.25 * all, 1e-9));
  cr_expect(trench_of(half)->decides);
  cr_expect_eq(trench_of(half)->kind, LW_UNUSUAL);
  for (int i = 0; i < none->situations.count; i++)
    cr_expect_neq(none->situations.situation[i].name, LW_SITUATION_TRENCH);
  free(whole);
  free(half);
  free(none);
}

/* The line at 45 degrees from the front edge of the base. */
Test(trench, undermines_inside_the_line_at_45_degrees) {
  static const struct {
    const char *depth, *distance, *pad, *width;
    bool undermines;
  } rows[] = {
      {"200 mm", "0 mm", NULL, NULL, false},           {"210 mm", "0 mm", NULL, NULL, true},
      {"500 mm", "290 mm", NULL, NULL, true},          {"500 mm", "301 mm", NULL, NULL, false},
      {"300 mm", "190 mm", "150 mm", "1000 mm", true}, {"300 mm", "210 mm", "150 mm", "1000 mm", false},
      {"600 mm", "440 mm", "150 mm", "1000 mm", true}, {"600 mm", "460 mm", "150 mm", "1000 mm", false}};
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    char depth[32], distance[32], pad[32], width[32];
    lw_print(depth, sizeof depth, "trench depth=%s", rows[i].depth);
    lw_print(distance, sizeof distance, "trench distance=%s", rows[i].distance);
    lw_print(pad, sizeof pad, rows[i].pad ? "pad thickness=%s" : "title=no pad",
             rows[i].pad ? rows[i].pad : "");
    lw_print(width, sizeof width, rows[i].width ? "pad width=%s" : "note=no pad",
             rows[i].width ? rows[i].width : "");
    lw_result *result = RUN(WALL, depth, distance, pad, width);
    const lw_check *slides = checks_test_at_base(trench_of(result), LW_CHECK_SLIDING);
    cr_expect_eq(result->trench.undermines, rows[i].undermines, "%s, %s", rows[i].depth, rows[i].distance);
    cr_expect_eq(slides->holds == LW_CANNOT_SHOW, rows[i].undermines);
    cr_expect(!rows[i].undermines || slides->reason == LW_REASON_UNDERMINED);
    free(result);
  }
}

/* The ground that a strip heaves up reaches B tan(45 + phi/2) e^(pi/2 tan phi) in front of it
 * [PRANDTL-1920 mechanism]: by hand, 0.6 m on 30 degrees, 0.6 x 1.73205 x 2.47673 = 2.574 m. A trench within
 * it leaves the base as deep as it leaves the ground, 0.1 m; one beyond, as it is. */
Test(trench, within_the_ground_that_heaves_it_takes_depth) {
  lw_result *within = RUN(WALL, "method bearing=vesic", "trench depth=100 mm", "trench distance=2.56 m");
  lw_result *beyond = RUN(WALL, "method bearing=vesic", "trench depth=100 mm", "trench distance=2.59 m");
  double whole = within->situations.situation[0].base_bears.strip.depth_m;
  cr_expect_lt(0.1, whole);
  cr_expect(checks_test_near(trench_of(within)->base_bears.strip.depth_m, 0.1, 1e-9));
  cr_expect(checks_test_near(trench_of(beyond)->base_bears.strip.depth_m, whole, 1e-9));
  free(within);
  free(beyond);
}

/* What the trench takes is only ever support: no check has more by it, and the joints do not change. A ratio
 * may rise: where no passive is left, none has to be doubted. */
Test(trench, deeper_never_holds_more) {
  const char *const bearing[] = {"method bearing=vesic", "method bearing=presumptive"};
  for (size_t m = 0; m < 2; m++) {
    double before[LW_CHECK_MAX];
    for (int depth = 20; depth <= 320; depth += 50) {
      char words[32];
      lw_print(words, sizeof words, "trench depth=%d mm", depth);
      lw_result *result = RUN(WALL, "method passive=0.5", bearing[m], words, "trench distance=150 mm");
      const lw_situation *s = trench_of(result), *dry = &result->situations.situation[0];
      for (int i = 0; i < s->check_count; i++) {
        const lw_check *c = checks_test_check(s, i);
        double now = c->has.known ? c->has.value : c->holds == LW_HOLDS ? INFINITY : 0.0;
        cr_expect(depth == 20 || now <= before[i] + 1e-12, "%s: check %d", words, i);
        before[i] = now;
        if (c->at == LW_AT_JOINT && c->has.known)
          cr_expect(checks_test_near(c->has.value, lw_situation_check(dry, i).has.value, 1e-12));
      }
      free(result);
    }
  }
}

/* 0.6 m become 0.8 m: the push 1.8 times, its moment 2.4 times. [LOWWALL hazards] */
Test(trench, square_and_cube_of_the_height) {
  lw_result *result =
      RUN("wall height=600 mm", "wall embedment=0 mm", "block height=200 mm", "block depth=400 mm",
          "trench depth=200 mm", "trench distance=900 mm", "method pressure=rankine");
  cr_assert(result->trench.thrust_times.known && result->trench.moment_times.known);
  cr_expect_lt(fabs(result->trench.thrust_times.value - 1.8), 0.05);
  cr_expect_lt(fabs(result->trench.moment_times.value - 2.4), 0.05);
  cr_expect(checks_test_near(result->trench.thrust_times.value, 16.0 / 9.0, 1e-12));
  const lw_check *bears = checks_test_at_base(trench_of(result), LW_CHECK_BEARING);
  cr_expect_eq(bears->reason, LW_REASON_FRONT_SLOPE, "the ground falls away in front");
  free(result);
}

/* Down to the base, or nothing where what stands in front is counted; one height of the wall out. */
Test(trench, keep_out) {
  lw_result *plain = RUN(WALL), *counted = RUN(WALL, "method passive=0.3");
  cr_expect(checks_test_near(plain->trench.keep_out_depth_m, 0.2, 1e-12));
  cr_expect(checks_test_near(plain->trench.keep_out_distance_m, 1.0, 1e-12));
  cr_expect_lt(fabs(counted->trench.keep_out_depth_m), 1e-12);
  free(plain);
  free(counted);
}
