/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "../checks/support.h"

/* One person at the edge of a bed that is only planted: [LOWWALL loads], [LOWWALL thresholds]. */

#define WALL \
  "wall embedment=0 mm", "block height=150 mm", "block depth=300 mm", "site behind=bed", "drain outlets=2", \
      "stone width=300 mm", "soil 1 name=clean sand", "people on cap=no"
#define NO_VEHICLE "vehicle access=no"

/* 1 kN on 0.3 m, spread to 0.3 + 2 x 0.3 m of wall: worked by hand. */
static const double STRIP_KPA = 1.0 / (0.9 * 0.3);

static void expect_same(const lw_situation *person, const lw_situation *strip) {
  cr_assert_eq(person->check_count, strip->check_count);
  for (int i = 0; i < person->check_count; i++) {
    lw_check a = lw_situation_check(person, i), b = lw_situation_check(strip, i);
    cr_expect_eq(a.has.known, b.has.known);
    cr_expect(!a.has.known || checks_test_near(a.has.value, b.has.value, 1e-9), "%s: %g, %g",
              lw_check_slug(a.kind), a.has.value, b.has.value);
  }
}

/* The person pushes as the strip would that comes of it, with nothing else behind. */
Test(person, a_person_pushes_as_the_strip_does) {
  char pressure[48];
  snprintf(pressure, sizeof pressure, "load 1 pressure=%.12f kPa", STRIP_KPA);
  for (int i = 2; i <= 5; i++) {
    char height[32];
    snprintf(height, sizeof height, "wall height=%.3f m", 0.15 * i);
    lw_result *planted = RUN(WALL, NO_VEHICLE, height, "bed use=planted");
    lw_result *strip = RUN(WALL, NO_VEHICLE, height, "load 1 kind=strip", pressure, "load 1 near edge=0.3 m",
                           "load 1 far edge=0.6 m");
    expect_same(checks_test_situation(planted, LW_SITUATION_PERSON_AT_EDGE),
                checks_test_situation(strip, LW_SITUATION_DRAINED));
    cr_expect(checks_test_near(planted->wall.site.surcharge_kpa, 1.0, 1e-12));
    free(planted);
    free(strip);
  }
}

static bool has_person(const lw_result *r) {
  for (int i = 0; i < r->situations.count; i++)
    if (r->situations.situation[i].name == LW_SITUATION_PERSON_AT_EDGE) return true;
  return false;
}

/* Only where the light load was taken: not where the bed is higher, where somebody walks or may drive, or
 * where the load is given. */
Test(person, nobody_stands_where_more_is_taken) {
  lw_result *low = RUN(WALL, NO_VEHICLE, "wall height=0.75 m", "bed use=planted"),
            *high = RUN(WALL, NO_VEHICLE, "wall height=0.9 m", "bed use=planted"),
            *walked = RUN(WALL, NO_VEHICLE, "wall height=0.6 m", "bed use=walked"),
            *driven = RUN(WALL, "wall height=0.6 m", "bed use=planted", "vehicle access=yes"),
            *given = RUN(WALL, NO_VEHICLE, "wall height=0.6 m", "bed use=planted", "load 1 pressure=1 kPa");
  cr_expect(has_person(low));
  cr_expect_not(has_person(high) || has_person(walked) || has_person(driven) || has_person(given));
  cr_expect(checks_test_near(high->wall.site.surcharge_kpa, 3.0, 1e-12));
  cr_expect(checks_test_near(driven->wall.site.surcharge_kpa, 10.0, 1e-12));
  free(low);
  free(high);
  free(walked);
  free(driven);
  free(given);
}
