/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/result.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/support.h"
#include "../sheet/support.h"

/* The slip as a check of whole sheets: when it is made, when it holds, falls short and cannot be shown; tiers
 * and beds on slopes. */

#define DEG 57.295779513082320877

static const char TERRACE[] =
    "item,value\nsite behind,ground\nblock height,200 mm\nblock depth,800 mm\ncourse count,4\n"
    "wall embedment,200 mm\nblock unit weight,23 kN/m3\nground slope,0 deg\nfront slope,0 deg\n"
    "soil below top,50 mm\nsoil 1 name,clean sand\nfooting soil friction angle,24 deg\nbase friction,0.45\n"
    "wall joints,open\nstone width,300 mm\nstone filter,cloth\ndrain outlets,2\nload 1 kind,uniform\nload 1 "
    "pressure,2.5 kPa\n"
    "fence height,0 m\nvehicle access,no\nother wall distance,50 m\n";

/* The terrace with other items, as "name=value;name=value". */
static lw_case case_of(const char *items) {
  lw_case c;
  lw_faults faults = {.count = 0};
  cr_assert_eq(lw_sheet_read(TERRACE, sizeof TERRACE - 1, &c, &faults), LW_OK, "%s", faults.fault[0].wanted);
  c.complete = false;
  for (int number = 1; items[0] != '\0'; number++) {
    char item[160];
    size_t length = strcspn(items, ";");
    snprintf(item, sizeof item, "%.*s", (int)length, items);
    cr_assert_eq(lw_sheet_override(item, number, &c, &faults), LW_OK, "%s: %s", item, faults.fault[0].wanted);
    items += length + (items[length] == ';' ? 1 : 0);
  }
  return c;
}

static const lw_result *run(const char *items) {
  static lw_result result;
  lw_case c = case_of(items);
  lw_error error = {0};
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &result, &error), LW_OK, "%s: %s", items,
               error.text);
  return &result;
}

static const lw_check *at_ground(const lw_situation *s, lw_check_kind kind) {
  for (int i = 0; i < s->check_count; i++)
    if (s->kept[i].kind == kind && s->kept[i].at == LW_AT_GROUND) return checks_test_check(s, i);
  return NULL;
}

static const lw_check *slip_of(const char *items) {
  return at_ground(&run(items)->situations.situation[0], LW_CHECK_SLIP);
}

Test(checks, slip_holds_and_falls_short) {
  const lw_check *check = slip_of("");
  cr_assert_not_null(check);
  cr_expect_eq(check->holds, LW_HOLDS);
  cr_expect(check->counts && check->needs.value > 1.49 && check->needs.value < 1.51);
  cr_expect_lt(fabs(check->resistance.value / check->demand.value - check->has.value), 1e-9);
  double has = check->has.value;
  check = slip_of("footing soil friction angle=15 deg");
  cr_expect_eq(check->holds, LW_FALLS_SHORT);
  cr_expect_lt(check->has.value, has);
  cr_expect_eq(run("footing soil friction angle=15 deg")->verdict.stands, LW_FALLS_SHORT);
  check = slip_of("method slip=ordinary");
  cr_expect_lt(check->has.value, has);
  check = slip_of("front slope=1:4");
  cr_expect_lt(check->has.value, has);
  /* A set of factors that asks nothing of a slip has it printed, and it does not count. */
  check = slip_of("method format=ibc");
  cr_expect(!check->counts && check->has.known && !check->needs.known);
}

Test(checks, slip_is_looked_for_where_ground_is_held_up) {
  cr_expect_null(slip_of("site behind=bed"));
  cr_expect_null(slip_of("method slip=not"));
  cr_expect_not_null(slip_of("site behind=bed;front slope=1:15"));
  cr_expect_not_null(slip_of("site behind=bed;other wall distance=1 m;other wall side=above"));
  const lw_result *r = run("people on cap=yes");
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    bool water = s->name == LW_SITUATION_DRAINED || s->name == LW_SITUATION_OUTLET_BLOCKED;
    cr_expect_eq(at_ground(s, LW_CHECK_SLIP) != NULL, water);
  }
  cr_expect_lt(at_ground(&r->situations.situation[1], LW_CHECK_SLIP)->has.value,
               at_ground(&r->situations.situation[0], LW_CHECK_SLIP)->has.value);
}

/* The upper wall presses on the wedge where it stands near, the less the further off; too near it is one. */
Test(checks, tiers) {
  const lw_result *r = run("other wall distance=0.2 m;other wall height=0.5 m;other wall side=above");
  cr_expect_eq(r->wall.tier.band, LW_TIER_ONE_WALL);
  const lw_check *check = at_ground(&r->situations.situation[0], LW_CHECK_SLIP);
  cr_expect_eq(check->holds, LW_CANNOT_SHOW);
  cr_expect_eq(check->reason, LW_REASON_ONE_WALL);
  cr_expect_neq(r->verdict.stands, LW_HOLDS);
  double before = INFINITY, alone = run("")->situations.situation[0].base.contact.horizontal_kn_per_m;
  const char *far[] = {"0.37 m", "0.45 m", "0.6 m", "1.1 m"};
  for (int i = 0; i < 4; i++) {
    char items[160];
    snprintf(items, sizeof items, "other wall height=0.5 m;other wall side=above;other wall distance=%s",
             far[i]);
    r = run(items);
    cr_expect_eq(r->wall.tier.band, LW_TIER_TOGETHER);
    cr_expect_lt(fabs(r->wall.tier.pressure_kpa - 23.0 * 0.5), 1e-9);
    double thrust = r->situations.situation[0].base.contact.horizontal_kn_per_m;
    cr_expect(thrust >= alone - 1e-9 && thrust <= before + 1e-9, "%s: %g", far[i], thrust);
    cr_expect(i > 0 || thrust > 1.01 * alone, "%g and %g", thrust, alone);
    before = thrust;
  }
  r = run("other wall height=0.5 m;other wall side=above;other wall distance=1.3 m");
  cr_expect_eq(r->wall.tier.band, LW_TIER_ALONE);
  cr_expect_lt(fabs(r->situations.situation[0].base.contact.horizontal_kn_per_m - alone), 1e-9);
}

Test(checks, a_pair_slips_before_one) {
  double one = slip_of("")->has.value;
  double above =
      slip_of("other wall height=0.6 m;other wall side=above;other wall distance=0.7 m")->has.value;
  double below =
      slip_of("other wall height=0.6 m;other wall side=below;other wall distance=0.7 m")->has.value;
  cr_expect_lt(above, one);
  cr_expect_lt(below, one);
}

/* An other wall that nobody measured is asked for, and loads nothing. */
Test(checks, an_unknown_wall_loads_nothing) {
  lw_case c = case_of("");
  lw_result *r = malloc(sizeof *r);
  cr_assert_not_null(r);
  c.site.other_wall_distance.origin = LW_ABSENT;
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, r, NULL), LW_OK);
  cr_expect_eq(r->wall.tier.band, LW_TIER_NONE);
  cr_expect_neq(r->verdict.what, LW_WHAT_TIER);
  cr_expect_geq(r->verdict.who, LW_WHO_COUNCIL);
  free(r);
}

/* tan φ/tan slope, and less by the water in it: trade values for 25 degrees in tests/handbook/slip.csv. */
Test(checks, bed_on_a_slope) {
  const char sheet[] = "site behind=bed;soil 1 friction angle=25 deg;footing soil friction angle=25 deg;"
                       "front slope=15 deg;water unit weight=10 kN/m3;soil 1 unit weight=18 kN/m3;"
                       "soil 1 saturated unit weight=20 kN/m3";
  const lw_result *r = run(sheet);
  const lw_check *dry = at_ground(&r->situations.situation[0], LW_CHECK_SLIDING);
  const lw_check *wet = at_ground(&r->situations.situation[1], LW_CHECK_SLIDING);
  cr_assert(dry && wet);
  cr_expect_lt(fabs(dry->has.value - tan(25.0 / DEG) / tan(15.0 / DEG)), 1e-9);
  cr_expect_lt(fabs(wet->has.value - 0.5 * dry->has.value), 1e-9);
  cr_expect(dry->needs.value > 1.49 && dry->needs.value < 1.51);
  cr_expect_eq(wet->holds, LW_FALLS_SHORT);
  cr_expect_null(
      at_ground(&run("site behind=bed;front slope=1:9")->situations.situation[0], LW_CHECK_SLIDING));
}

/* Leaving a slip out where it does not govern never changes the answer. */
Test(checks, a_slip_left_out_changes_no_answer) {
  const char *walls[] = {"",
                         "footing soil friction angle=15 deg",
                         "block depth=300 mm",
                         "drain outlets=0",
                         "front slope=1:4",
                         "other wall distance=0.1 m",
                         "block depth=400 mm;wall joints=sealed"};
  lw_result *r = malloc(sizeof *r);
  cr_assert_not_null(r);
  for (size_t i = 0; i < sizeof walls / sizeof walls[0]; i++) {
    lw_case c = case_of(walls[i]);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_VERDICT, r, NULL), LW_OK);
    cr_expect_eq(r->verdict.stands, run(walls[i])->verdict.stands, "%s", walls[i]);
  }
  free(r);
}
