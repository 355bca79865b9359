/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>

#include <lowwall/tables.h>

#include "support.h"

/* What is taken of the load behind where the sheet gives none: [LOWWALL loads], [BS8002-2015 4.6.3.2]. */

enum { ITEMS = 12 };

typedef struct told {
  double height_m, below_top_m;
  const char *use, *vehicle; /* NULL: left out */
  bool section;
} told;

static lw_case case_of(const told *t, lw_look look) {
  char height[40], below[40], use[40], vehicle[40];
  const char *items[ITEMS] = {"wall embedment=0 mm", height, below}, **next = &items[3];
  snprintf(height, sizeof height, "wall height=%.4f m", t->height_m);
  snprintf(below, sizeof below, "soil below top=%.4f m", t->below_top_m);
  snprintf(use, sizeof use, "bed use=%s", t->use ? t->use : "");
  snprintf(vehicle, sizeof vehicle, "vehicle access=%s", t->vehicle ? t->vehicle : "");
  if (t->use) *next++ = use;
  if (t->vehicle) *next++ = vehicle;
  if (t->section) *next++ = "base width=500 mm";
  if (t->section) *next++ = "top width=300 mm";
  if (!t->section) *next++ = "course count=4";
  lw_case c = sheet_test_case(items);
  if (look == LW_LOOK_CAUTIOUS) return c;
  lw_faults faults = {0};
  c.complete = false;
  c.look = look;
  cr_assert_eq(lw_case_complete(sheet_test_tables(), &c, &faults), LW_OK);
  return c;
}

static double people(double held_m) {
  return fmax(2.5, 10.0 * fmin(held_m, 3.0) / 3.0);
}

static double wanted(const told *t) {
  bool comes = !t->vehicle || t->vehicle[0] == 'y' || (t->use && t->use[0] == 'v');
  return comes ? 10.0 : people(fmax(t->height_m - t->below_top_m, 0.0));
}

Test(use, the_load_behind_follows_who_goes_there_and_the_height) {
  static const char *const USES[] = {NULL, "walked", "vehicle"}, *const VEHICLES[] = {NULL, "no", "yes"};
  static const double HEIGHTS[] = {0.2, 0.7, 0.749, 0.751, 1.1, 2.9, 3.1, 4.0};
  for (int h = 0; h < 8; h++)
    for (int i = 0; i < 18; i++) {
      told t = {HEIGHTS[h], i % 2 ? 0.1 : 0.0, USES[i / 2 % 3], VEHICLES[i / 6], i % 4 < 2};
      lw_case c = case_of(&t, LW_LOOK_CAUTIOUS), likely = case_of(&t, LW_LOOK_LIKELY);
      const lw_case_load *load = &c.load[0];
      cr_expect_eq(load->kind.origin, LW_ASSUMED);
      cr_expect_eq(load->kind.value, LW_LOAD_UNIFORM);
      cr_expect(fabs(load->pressure.si - wanted(&t)) < 1e-9, "%g m, %s, vehicle %s: %g kPa", t.height_m,
                t.use ? t.use : "?", t.vehicle ? t.vehicle : "?", load->pressure.si);
      cr_expect(fabs(likely.load[0].pressure.si - 0.6 * wanted(&t)) < 1e-9, "%g m: likely %g kPa", t.height_m,
                likely.load[0].pressure.si);
    }
}

/* The row that a load is shown from is one that gives it. */
Test(use, the_row_that_is_shown_gives_the_load) {
  const lw_tables *tables = sheet_test_tables();
  static const told LOW = {0.6, 0.0, "walked", "no", false}, HIGH = {1.2, 0.0, "walked", "no", false},
                    DRIVEN = {0.6, 0.0, "walked", NULL, false};
  const struct {
    const told *t;
    const char *slug;
  } rows[] = {{&LOW, "garden"}, {&HIGH, "garden-full"}, {&DRIVEN, "vehicle"}};
  for (int i = 0; i < 3; i++) {
    lw_case c = case_of(rows[i].t, LW_LOOK_CAUTIOUS);
    cr_expect_str_eq(tables->load[c.load[0].pressure.table_row].slug, rows[i].slug);
  }
}

Test(use, a_load_that_is_given_stays) {
  lw_case c = CASE("wall height=1.2 m", "vehicle access=no", "bed use=walked", "load 1 pressure=1 kPa");
  cr_expect_eq(c.load[0].pressure.origin, LW_GIVEN);
  cr_expect(fabs(c.load[0].pressure.si - 1.0) < 1e-12);
  cr_expect_eq(c.load[1].kind.origin, LW_ABSENT);
  lw_case none = CASE("wall height=1.2 m", "vehicle access=no", "load 1 kind=none");
  cr_expect_eq(none.load[1].kind.origin, LW_ABSENT);
}
