/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/support.h"

/* Loads at a distance on a whole wall: what is set beside what, and what each word of the sheet does. */

#define WALL \
  "course count=5", "block height=200 mm", "block depth=500 mm", "wall embedment=200 mm", \
      "site behind=ground", "ground slope=0 deg", "soil 1 friction angle=30 deg", "people on cap=no", \
      "drain outlets=2", "stone width=300 mm"
#define STRIP_OF(pressure, far) "load 1 kind=strip", "load 1 pressure=" pressure, "load 1 far edge=" far
#define STRIP(near, far) STRIP_OF("12 kPa", far), "load 1 near edge=" near

static const lw_free_body *base_of(const lw_result *result) {
  return &checks_test_situation(result, LW_SITUATION_DRAINED)->base;
}

static double level_push(const lw_free_body *body) {
  return checks_test_horizontal(body, LW_FORCE_THRUST) +
         checks_test_horizontal(body, LW_FORCE_SURCHARGE_THRUST) +
         checks_test_horizontal(body, LW_FORCE_LOADS_THRUST);
}

Test(loads, formula_and_theory_beside_the_wedge_the_larger_used) {
  static const char *const METHODS[] = {"method pressure=rankine", "method pressure=coulomb",
                                        "method pressure=wedge"};
  static const char *const NEAR[] = {"load 1 near edge=0.1 m", "load 1 near edge=0.5 m",
                                     "load 1 near edge=3 m"};
  for (size_t m = 0; m < 3; m++) {
    for (size_t i = 0; i < 3; i++) {
      lw_result *result = RUN(WALL, "wall friction=12 deg", STRIP_OF("12 kPa", "4 m"), METHODS[m], NEAR[i]);
      const lw_free_body *s = base_of(result);
      double a = s->thrust.angle_rad, together = s->formula_kn_per_m * cos(a) + s->elastic.push_kn_per_m;
      double wedge = s->wedge.thrust_kn_per_m * cos(a);
      cr_expect(s->wedge_known && s->elastic_by == LW_LOAD_PRESSURE_HALF_SPACE);
      cr_expect(checks_test_near(level_push(s), fmax(together, wedge), 1e-9), "%s, %s: %g of %g and %g",
                METHODS[m], NEAR[i], level_push(s), together, wedge);
      cr_expect_eq(s->wedge_governs, wedge > together * (1.0 + 1e-6), "%s, %s", METHODS[m], NEAR[i]);
      free(result);
    }
  }
}

/* At rest doubled, else half-space; each word of the sheet says what is taken. */
Test(loads, the_theory_is_the_one_asked_for) {
  lw_result *half = RUN(WALL, STRIP("0.4 m", "1.6 m"));
  lw_result *rest = RUN(WALL, STRIP("0.4 m", "1.6 m"), "method pressure=at rest");
  lw_result *doubled = RUN(WALL, STRIP("0.4 m", "1.6 m"), "method load pressure=doubled");
  lw_result *curves = RUN(WALL, STRIP("0.4 m", "1.6 m"), "method load pressure=curves");
  lw_result *wedge = RUN(WALL, STRIP("0.4 m", "1.6 m"), "method load pressure=wedge");
  double push = base_of(half)->elastic.push_kn_per_m;
  cr_expect_lt(0.0, push);
  cr_expect(checks_test_near(base_of(rest)->elastic.push_kn_per_m, 2.0 * push, 1e-9));
  cr_expect(checks_test_near(base_of(doubled)->elastic.push_kn_per_m, 2.0 * push, 1e-9));
  cr_expect(checks_test_near(base_of(curves)->elastic.push_kn_per_m, 2.0 * push, 1e-9));
  cr_expect(checks_test_near(1.0 + base_of(wedge)->elastic.push_kn_per_m, 1.0, 1e-15));
  double left = checks_test_horizontal(base_of(wedge), LW_FORCE_LOADS_THRUST);
  cr_expect_lt(0.0, left, "the wedge's own part: it is the load's, and takes its factor");
  cr_expect_eq(base_of(rest)->elastic_by, LW_LOAD_PRESSURE_DOUBLED);
  lw_result *all[] = {half, rest, doubled, curves, wedge};
  for (size_t i = 0; i < sizeof all / sizeof all[0]; i++) free(all[i]);
}

Test(loads, no_load_and_a_load_of_nothing_are_one) {
  lw_result *none = RUN(WALL, "load 1 kind=none");
  lw_result *nothing = RUN(WALL, STRIP_OF("0 kPa", "1.6 m"), "load 1 near edge=0.4 m");
  cr_expect(checks_test_near(level_push(base_of(none)), level_push(base_of(nothing)), 1e-6));
  free(nothing);
  free(none);
}

/* A footing below the base's level pushes nothing; nearer the surface it never pushes less. */
Test(loads, a_footing_at_depth) {
  static const char *const DEPTH[] = {"load 1 below ground=0 m",   "load 1 below ground=0.25 m",
                                      "load 1 below ground=0.6 m", "load 1 below ground=0.99 m",
                                      "load 1 below ground=1 m",   "load 1 below ground=5 m"};
  lw_result *none = RUN(WALL, "load 1 kind=none");
  double bare = level_push(base_of(none)), before = INFINITY;
  for (size_t i = 0; i < sizeof DEPTH / sizeof DEPTH[0]; i++) {
    lw_result *result = RUN(WALL, STRIP_OF("60 kPa", "0.9 m"), "load 1 near edge=0.3 m", DEPTH[i]);
    double push = level_push(base_of(result));
    cr_expect_leq(push, before * (1.0 + 1e-9), "%s: %g after %g", DEPTH[i], push, before);
    cr_expect_leq(bare, push * (1.0 + 1e-6), "%s: %g, bare %g", DEPTH[i], push, bare);
    if (i >= 4) cr_expect(checks_test_near(push, bare, 1e-6), "%s: %g, bare %g", DEPTH[i], push, bare);
    before = push;
    free(result);
  }
  free(none);
}

/* A push at the cap is on base and joints of every situation, and turns by the wall's whole height. */
Test(loads, a_push_at_the_cap_acts_in_every_situation) {
  lw_result *calm = RUN(WALL, "load 1 kind=none");
  lw_result *pushed = RUN(WALL, "load 1 kind=none", "load 2 kind=cap", "load 2 push=0.74 kN/m");
  for (int i = 0; i < calm->situations.count; i++) {
    const lw_situation *a = &calm->situations.situation[i], *b = &pushed->situations.situation[i];
    double more = b->base.contact.horizontal_kn_per_m - a->base.contact.horizontal_kn_per_m;
    double turns = b->base.contact.overturning_knm_per_m - a->base.contact.overturning_knm_per_m;
    cr_expect(checks_test_near(more, 0.74, 1e-9), "situation %d: %g", i, more);
    cr_expect(checks_test_near(turns, 0.74 * 1.0, 1e-9), "situation %d: %g", i, turns);
    for (int j = 0; j < a->joint_count; j++) {
      double at_joint = b->joint[j].contact.horizontal_kn_per_m - a->joint[j].contact.horizontal_kn_per_m;
      cr_expect(checks_test_near(at_joint, 0.74, 1e-9), "situation %d, joint %d: %g", i, j + 1, at_joint);
    }
  }
  free(pushed);
  free(calm);
}

/* The weight of a seat may be absent while its push stays: no check is better for that weight. */
Test(loads, the_weight_on_a_cap_never_helps) {
  lw_result *seat = RUN(WALL, "load 1 kind=none", "load 2 name=seat");
  lw_result *push = RUN(WALL, "load 1 kind=none", "load 2 name=push-on-cap");
  const lw_situation *a = checks_test_situation(seat, LW_SITUATION_DRAINED);
  const lw_situation *b = checks_test_situation(push, LW_SITUATION_DRAINED);
  for (int k = LW_CHECK_SLIDING; k <= LW_CHECK_OVERTURNING; k++) {
    const lw_check *with = checks_test_at_base(a, (lw_check_kind)k),
                   *without = checks_test_at_base(b, (lw_check_kind)k);
    cr_assert(with && without && with->has.known && without->has.known);
    cr_expect_leq(with->has.value, without->has.value * (1.0 + 1e-9), "check %d", k);
  }
  free(push);
  free(seat);
}

/* Where the row gives a value the sheet may give another; a name alone stands at the wall, beside the garden
 * load; `none` takes that load away. */
Test(loads, a_name_gives_what_the_sheet_does_not) {
  lw_result *named = RUN(WALL, "vehicle access=no", "load 1 name=pallet");
  const lw_case *c = &named->given;
  cr_expect(checks_test_near(c->load[0].pressure.si, 12.0, 1e-12));
  cr_expect(checks_test_near(1.0 + c->load[0].near_edge.si, 1.0, 1e-12));
  cr_expect(checks_test_near(c->load[0].far_edge.si, 1.2, 1e-12));
  cr_expect_eq(c->load[0].near_edge.origin, LW_ASSUMED);
  cr_expect_eq(c->load[0].pressure.origin, LW_TABLE);
  cr_expect_eq(c->load[1].kind.origin, LW_ASSUMED);
  /* 10 kPa x H/3 m, of the 0.8 m held up. */
  cr_expect(checks_test_near(named->wall.site.surcharge_kpa, 10.0 * 0.8 / 3.0, 1e-12));
  free(named);
  lw_result *given =
      RUN(WALL, "load 1 name=bulk-bag", "load 1 pressure=9 kPa", "load 1 near edge=1 m", "load 2 kind=none");
  cr_expect(checks_test_near(given->given.load[0].pressure.si, 9.0, 1e-12));
  cr_expect(checks_test_near(given->given.load[0].far_edge.si, 1.9, 1e-12));
  cr_expect(checks_test_near(1.0 + given->wall.site.surcharge_kpa, 1.0, 1e-12));
  free(given);
  lw_result *tank = RUN(WALL, "load 1 name=tank", "load 1 height=1.5 m", "load 1 far edge=3 m",
                        "load 2 name=car-wheel", "load 3 kind=none");
  cr_expect(checks_test_near(tank->given.load[0].pressure.si, 1.5 * 9.81, 1e-12));
  cr_expect(checks_test_near(tank->given.load[1].force.si, 10.0, 1e-12));
  free(tank);
}

#define FENCED \
  WALL, "fence height=1.8 m", "fence place=behind", "fence distance=0.3 m", "wind pressure=0.9 kPa"

static double wind_push(const char *format) {
  lw_result *result = RUN(FENCED, format);
  const lw_situation *wind = checks_test_situation(result, LW_SITUATION_WIND);
  double push = wind ? checks_test_horizontal(&wind->base, LW_FORCE_LEVEL_THRUST) : NAN;
  free(result);
  return push;
}

/* Wind is a variable action: 1.5 on it, at its source, so never less than 1.5 of what it pushes; and 1.75. */
Test(loads, wind_takes_the_factor_of_what_varies) {
  double plain = wind_push("method format=lowwall"), da2 = wind_push("method format=en1997-da2-geo"),
         lrfd = wind_push("method format=aashto-lrfd-strength-1");
  cr_expect_lt(0.0, plain);
  cr_expect_leq(1.5 * plain * (1.0 - 1e-6), da2, "%g, factored %g", plain, da2);
  cr_expect_leq(1.75 * plain * (1.0 - 1e-6), lrfd, "%g, factored %g", plain, lrfd);
}

/* Loads that a governing wedge carries leave with their own factor: 1.5 of them, 1.35 of the soil. */
Test(loads, loads_in_a_wedge_take_the_factor_of_what_varies) {
  lw_result *plain = RUN(WALL, STRIP("0.1 m", "1.6 m"), "method load pressure=wedge");
  lw_result *da2 =
      RUN(WALL, STRIP("0.1 m", "1.6 m"), "method load pressure=wedge", "method format=en1997-da2-geo");
  double loads = checks_test_horizontal(base_of(plain), LW_FORCE_LOADS_THRUST),
         soil = checks_test_horizontal(base_of(plain), LW_FORCE_THRUST);
  cr_expect_lt(0.0, loads);
  cr_expect(checks_test_near(checks_test_horizontal(base_of(da2), LW_FORCE_LOADS_THRUST), 1.5 * loads, 1e-9));
  cr_expect(checks_test_near(checks_test_horizontal(base_of(da2), LW_FORCE_THRUST), 1.35 * soil, 1e-9));
  free(plain);
  free(da2);
}

static double slip_has(const char *format, const char *more) {
  lw_result *result = RUN(WALL, "front slope=20 deg", format, more);
  const lw_situation *drained = checks_test_situation(result, LW_SITUATION_DRAINED);
  double has = NAN;
  for (int i = 0; i < drained->check_count; i++)
    if (lw_situation_check(drained, i).kind == LW_CHECK_SLIP && lw_situation_check(drained, i).counts)
      has = lw_situation_check(drained, i).has.value;
  free(result);
  return has;
}

/* Without loads and cohesion a circle's factor scales with tan phi and with what divides the resistance. */
Test(loads, a_slip_takes_the_factors_of_each_approach) {
  const char *bare = "load 1 kind=none";
  double plain = slip_has("method format=lowwall", bare);
  cr_expect(checks_test_near(slip_has("method format=en1997-da1-1", bare), plain, 1e-6));
  cr_expect(checks_test_near(slip_has("method format=en1997-da2-geo", bare), plain / 1.1, 1e-6));
  cr_expect(checks_test_near(slip_has("method format=en1997-da1-2", bare), plain / 1.25, 0.02));
  cr_expect(checks_test_near(slip_has("method format=en1997-da3-geo", bare),
                             slip_has("method format=en1997-da1-2", bare), 1e-9));
}

/* A trench in front takes ground away that holds. */
Test(loads, a_trench_lowers_what_a_slip_has) {
  lw_result *result = RUN(WALL, "front slope=10 deg", "trench depth=0.4 m", "trench distance=0.6 m");
  const lw_situation *open = checks_test_situation(result, LW_SITUATION_TRENCH),
                     *drained = checks_test_situation(result, LW_SITUATION_DRAINED);
  cr_assert(open != NULL && open->slip_known && drained->slip_known);
  cr_expect_lt(open->slip.bishop, drained->slip.bishop);
  free(result);
}
