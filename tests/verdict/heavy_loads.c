/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdio.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "help.h"

/* What is heavier than garden use (2.5 kPa, [LOWWALL loads]), and that a vehicle is told once. */

enum { BEDS = 120 };

static int count_of(const lw_verdict *v, const char *slug) {
  int count = 0;
  for (int i = 0; i < v->reasons.count; i++)
    count += v->reasons.reason[i].answer == LW_ANSWER_WHO && strcmp(v->reasons.reason[i].slug, slug) == 0;
  return count;
}

/* A strip under which others may lie: heavy where they come to more than garden use together. */
Test(verdict, garden_use_is_no_heavy_load_however_it_lies) {
  dice d = {.state = 25};
  int heavy_ones = 0;
  for (int i = 0; i < BEDS; i++) {
    double all = dice_pick(&d, 2) ? dice_between(&d, 0.0, 2.4) : 0.0, strip = dice_between(&d, 0.1, 4.0);
    double second = dice_pick(&d, 2) ? dice_between(&d, 0.1, 2.4) : 0.0, far = dice_between(&d, 0.7, 1.4);
    bool overlaps = far > 1.0;
    bool heavy = all + strip > 2.5 || (second > 0.0 && all + second + (overlaps ? strip : 0.0) > 2.5);
    char text[400];
    int used =
        snprintf(text, sizeof text,
                 "load 1 kind=strip;load 1 pressure=%.6f kPa;load 1 near edge=0.3 m;load 1 far edge=%.6f m",
                 strip, far);
    if (all > 0.0)
      used += snprintf(text + used, sizeof text - (size_t)used,
                       ";load 2 kind=uniform;load 2 pressure=%.6f kPa", all);
    int n = all > 0.0 ? 3 : 2;
    if (second > 0.0)
      snprintf(text + used, sizeof text - (size_t)used,
               ";load %d kind=strip;load %d pressure=%.6f kPa;load %d near edge=1 m;load %d far edge=1.4 m",
               n, n, second, n, n);
    lw_verdict v = verdict_of(text, LW_HOLDS);
    cr_expect_eq(count_of(&v, "clearance-load") > 0, heavy, "%s", text);
    heavy_ones += heavy;
  }
  cr_expect(heavy_ones > BEDS / 4 && heavy_ones < BEDS, "%d are heavy", heavy_ones);
}

Test(verdict, a_vehicle_is_told_once_in_every_place) {
  const lw_tables *tables = verdict_tables();
  for (int i = 0; i < tables->limit_count; i++) {
    char text[160];
    snprintf(text, sizeof text, "vehicle access=yes;load 1 kind=none;place=%s", tables->limit[i].place);
    lw_verdict v = verdict_of(text, LW_HOLDS);
    cr_expect_eq(count_of(&v, "vehicle-load"), 1, "%s", text);
    cr_expect_eq(count_of(&v, "clearance-load"), 0, "%s", text);
    cr_expect_eq(v.who, LW_WHO_ENGINEER, "%s", text);
  }
}
