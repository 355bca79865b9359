/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/random_wall.h"
#include "../report/measures.h"

#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

/* A wall 2 ft wide that stands so far above the ground, in a place. */
static lw_result *wall_in(const char *place, double height_m, const char *units) {
  random_wall wall = {0};
  random_wall_add(&wall, "wall kind=section");
  random_wall_add(&wall, "base width=2 ft");
  random_wall_add(&wall, "top width=2 ft");
  random_wall_add(&wall, "wall embedment=0 m");
  random_wall_add(&wall, "wall height=%.9g mm", 1000.0 * height_m);
  random_wall_add(&wall, "method slip=not");
  if (place[0] != '\0') random_wall_add(&wall, "place=%s", place);
  random_wall_add(&wall, "units=%s", units);
  return random_wall_run(&wall);
}

static bool has_reason(const lw_result *result, const char *part) {
  for (int i = 0; i < result->verdict.reasons.count; i++)
    if (strstr(result->verdict.reasons.reason[i].text, part)) return true;
  return false;
}

/* "It is 4 ft 1/8 in high ..., past the 4 ft where": the two of a reason; how many reasons have two. */
static int hold_apart(const lw_result *result) {
  int held = 0;
  for (int i = 0; i < result->verdict.reasons.count; i++) {
    const char *at = result->verdict.reasons.reason[i].text;
    measure height, figure;
    if (strncmp(at, "It is ", 6) != 0 || !strstr(at, ", past the ")) continue;
    cr_assert(measure_next(&at, &height) && measure_next(&at, &figure));
    bool same = height.length == figure.length && strncmp(height.at, figure.at, height.length) == 0;
    cr_expect(!same, "%s", result->verdict.reasons.reason[i].text);
    held++;
  }
  return held;
}

Test(limits_in_feet, a_wall_past_a_figure_never_reads_like_it) {
  static const struct {
    const char *place;
    double limit_m;
  } EACH[] = {{"seattle", 1.2192}, {"new-zealand", 1.5}, {"san-diego", 0.9144}};
  static const char *const UNITS[] = {"metric", "us"};
  int held = 0;
  for (size_t i = 0; i < sizeof EACH / sizeof *EACH; i++) {
    for (double past_m = 1e-4; past_m < 0.01; past_m *= 3.0) {
      for (int k = 0; k < 2; k++) {
        lw_result *result = wall_in(EACH[i].place, EACH[i].limit_m + past_m, UNITS[k]);
        held += hold_apart(result);
        free(result);
      }
    }
  }
  cr_expect(held >= 30, "%d", held);
}

/* The rows of tables/limits.csv are the laws' own. */
Test(limits_in_feet, a_law_in_feet_reads_as_it_is_and_one_in_metres_has_its_own_figure_too) {
  static const struct {
    const char *place, *units, *has, *has_not;
  } EACH[] = {
      {"seattle", "us", "past the 4 ft where", "by the law"},
      {"seattle", "metric", "past the 1.22 m (4 ft by the law) where", "1.22 m where"},
      {"new-zealand", "us", "past the 4 ft 11 in (1.50 m by the law) where", "4 ft 11 in where"},
      {"new-zealand", "metric", "past the 1.50 m where", "by the law"},
      {"", "us", "past the 1 ft 7-5/8 in where the cautious default", "by the law"},
  };
  for (size_t i = 0; i < sizeof EACH / sizeof *EACH; i++) {
    lw_result *result = wall_in(EACH[i].place, 1.8, EACH[i].units);
    cr_expect(has_reason(result, EACH[i].has), "%s in %s: %s", EACH[i].place, EACH[i].units, EACH[i].has);
    cr_expect(!has_reason(result, EACH[i].has_not), "%s in %s", EACH[i].place, EACH[i].units);
    free(result);
  }
}
