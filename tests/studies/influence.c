/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../verdict/help.h"

/* The line of influence: the bed of the other tests is 0.4 m high from its base and 0.3 m deep. */

static lw_influence influence_of(const char *changes) {
  lw_result *result = verdict_run(changes);
  lw_influence influence = result->influence;
  free(result);
  return influence;
}

static bool near(double a, double b) {
  return fabs(a - b) < 1e-9;
}

static const char strip[] = "load 1 kind=strip;load 1 pressure=12 kPa;load 1 far edge=5 m;load 1 near edge=";

static lw_influence_load strip_at(const char *more) {
  char changes[240];
  lw_print(changes, sizeof changes, "%s%s", strip, more);
  lw_influence influence = influence_of(changes);
  cr_assert_eq(influence.count, 1);
  return influence.load[0];
}

Test(influence, a_load_within_the_line_is_told_how_far_it_is_too_near) {
  lw_influence_load at = strip_at("0.1 m"), on = strip_at("0.4 m"), beyond = strip_at("0.5 m");
  cr_expect(at.inside && at.heavy && near(at.line_m, 0.4) && near(at.move_m, 0.3), "%g %g", at.line_m,
            at.move_m);
  cr_expect(!on.inside && near(on.move_m, 0.0));
  cr_expect(!beyond.inside && near(beyond.line_m, 0.4));
}

Test(influence, the_angle_and_the_depth_move_the_line) {
  lw_influence_load steep = strip_at("0.1 m;method influence line=1:2"), deep = strip_at("0.1 m;load 1 below "
                                                                                         "ground=0.25 m");
  lw_influence_load below = strip_at("0.0 m;load 1 below ground=0.4 m");
  cr_expect(near(steep.line_m, 0.8) && near(steep.move_m, 0.7), "%g %g", steep.line_m, steep.move_m);
  cr_expect(near(deep.line_m, 0.15) && near(deep.move_m, 0.05), "%g %g", deep.line_m, deep.move_m);
  cr_expect_not(below.inside);
}

/* On rising ground the line runs away from a load that is moved back: where it is told to go, it meets it. */
Test(influence, moved_as_told_a_load_stands_on_the_line) {
  static const char *const ground[] = {"", ";ground slope=1:4", ";ground slope=1:4;ground slope run=0.3 m"};
  for (size_t i = 0; i < sizeof ground / sizeof ground[0]; i++) {
    char more[120];
    lw_print(more, sizeof more, "0.05 m%s", ground[i]);
    lw_influence_load first = strip_at(more);
    cr_assert(first.inside);
    lw_print(more, sizeof more, "%.12g m%s", 0.05 + first.move_m, ground[i]);
    lw_influence_load then = strip_at(more);
    cr_expect(!then.inside || then.move_m < 1e-9, "%s: %g m within it", ground[i], then.move_m);
    cr_expect(fabs(then.line_m - then.distance_m) < 1e-9, "%s: line %g, load %g", ground[i], then.line_m,
              then.distance_m);
  }
}

static const lw_verdict_reason *reason_of(const char *changes, lw_verdict *v) {
  *v = verdict_of(changes, LW_HOLDS);
  const lw_verdict_reason *r = verdict_reason(v, LW_ANSWER_WHO, "load-inside-influence");
  return r && !r->assumed ? r : NULL;
}

Test(influence, what_is_heavy_within_the_line_calls_for_an_engineer) {
  static const char *const heavy[] = {"load 1 name=pallet",
                                      "load 1 kind=line;load 1 force=0.5 kN/m;load 1 distance=0.2 m",
                                      "load 1 kind=point;load 1 force=3 kN;load 1 distance=0.39 m",
                                      "load 1 kind=uniform;load 1 pressure=10 kPa"};
  static const char *const light[] = {
      "load 1 kind=none",
      "load 1 kind=uniform;load 1 pressure=5 kPa",
      "load 1 kind=strip;load 1 pressure=2.5 kPa;load 1 near edge=0 m;load 1 far edge=2 m",
      "load 1 kind=point;load 1 force=3 kN;load 1 distance=0.41 m",
      "load 1 name=pallet;load 1 near edge=0.4 m",
      "load 1 kind=none;load 2 name=seat"};
  lw_verdict v;
  for (size_t i = 0; i < sizeof heavy / sizeof heavy[0]; i++) {
    const lw_verdict_reason *reason = reason_of(heavy[i], &v);
    cr_assert_not_null(reason, "%s", heavy[i]);
    cr_expect_eq(v.who, LW_WHO_ENGINEER, "%s", heavy[i]);
    cr_expect_not_null(strstr(reason->text, "load 1"), "%s", reason->text);
    cr_expect_not_null(strstr(reason->text, "too near"), "%s", reason->text);
  }
  for (size_t i = 0; i < sizeof light / sizeof light[0]; i++)
    cr_expect_null(reason_of(light[i], &v), "%s", light[i]);
}
