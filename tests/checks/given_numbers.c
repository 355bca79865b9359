/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/ground.h>
#include <math.h>
#include <stdlib.h>

#include "support.h"

/* Factors that a book gives as numbers, in place of a formula's. */

/* [DAS-PFE p.130 example 3.1]: Nγ 3.64 at 20° under Terzaghi's name, whose own table gives 4.97. A footing
 * 5 ft square, D 3 ft, c 320 lb/ft², 115 lb/ft³, factor 4; the square's 1.3 and 0.8 are the example's.
 * Allowable gross load 67,269 lb. */
Test(given_numbers, terzaghis_square_footing_with_the_books_n_gamma) {
  double foot = 0.3048, psf = 0.04788025898, pcf = 0.15708746;
  lw_strip strip = {.width_m = 5.0 * foot,
                    .depth_m = 3.0 * foot,
                    .overburden_kpa = 3.0 * foot * 115.0 * pcf,
                    .friction_rad = 20.0 * acos(-1.0) / 180.0,
                    .cohesion_kpa = 320.0 * psf,
                    .unit_weight_kn_per_m3 = 115.0 * pcf,
                    .vertical_kn_per_m = 1.0,
                    .n_gamma = LW_N_GAMMA_GIVEN,
                    .n_gamma_value = 3.64};
  lw_bearing b;
  cr_assert_eq(lw_bearing_terzaghi(&strip, &b, NULL, NULL), LW_OK);
  double square = 1.3 * strip.cohesion_kpa * b.nc + strip.overburden_kpa * b.nq +
                  0.8 * 0.5 * strip.unit_weight_kn_per_m3 * strip.width_m * b.n_gamma;
  double load_lb = square / psf * 25.0 / 4.0;
  cr_expect(checks_test_near(load_lb, 67269.0, 1e-3), "%.0f lb", load_lb);
}

#define GARDEN \
  "wall height=1 m", "top width=0.7 m", "base width=0.7 m", "wall embedment=0.3 m", \
      "footing soil friction angle=30 deg", "footing soil unit weight=18 kN/m3", \
      "soil 1 friction angle=30 deg", "soil 1 unit weight=18 kN/m3"

static const lw_check *bearing_of(const lw_result *result) {
  const lw_check *c =
      checks_test_at_base(checks_test_situation(result, LW_SITUATION_DRAINED), LW_CHECK_BEARING);
  cr_assert_not_null(c);
  return c;
}

static double bears(const char *bearing, const char *word, const char *value) {
  lw_result *r = RUN(GARDEN, bearing, word, value, "method pressure=rankine");
  const lw_check *c = bearing_of(r);
  cr_assert(c->resistance.known, "%s: %s", bearing, lw_reason_slug(c->reason));
  double kpa = c->resistance.value;
  free(r);
  return kpa;
}

/* By hand: it changes the term of the ground's own weight alone, and in proportion; the word beside it then
 * says nothing. */
Test(given_numbers, n_gamma_is_used_as_given_in_every_theory) {
  static const char *const all[] = {"method bearing=terzaghi", "method bearing=meyerhof",
                                    "method bearing=hansen", "method bearing=vesic", "method bearing=en1997"};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++) {
    const char *word = "method n gamma=vesic";
    double none = bears(all[i], word, "method n gamma value=0");
    double ten = bears(all[i], word, "method n gamma value=10");
    double thirty = bears(all[i], "method n gamma=hansen", "method n gamma value=30");
    cr_expect_gt(ten, none, "%s", all[i]);
    cr_expect(checks_test_near(thirty - none, 3.0 * (ten - none), 1e-9), "%s", all[i]);
  }
}

/* 2 (Nq + 1) tan φ at 30°, Nq = 18.4011: by hand 22.4025, as [BCF-WEB tables] has it. */
Test(given_numbers, a_number_that_is_the_formulas_changes_nothing) {
  double formula = bears("method bearing=vesic", "method n gamma=vesic", "method depth factors=none");
  double number = bears("method bearing=vesic", "method n gamma value=22.4025", "method depth factors=none");
  cr_expect(checks_test_near(formula, number, 1e-5), "%.6f, %.6f", formula, number);
}

/* The number belongs to the friction before it is divided. */
Test(given_numbers, no_bearing_by_a_given_n_gamma_where_a_set_divides_friction) {
  lw_result *r = RUN(GARDEN, "method bearing=en1997", "method n gamma value=20", "method format=en1997-da1-2",
                     "method pressure=rankine");
  const lw_check *c = bearing_of(r);
  cr_expect_eq(c->reason, LW_REASON_GIVEN_NUMBER);
  cr_expect(!c->has.known);
  free(r);
}

/* [DAS-PFE example 8.1 p.366], Ka 0.294 from its table: vertical part of the thrust 1.42 kip/ft, sum of
 * vertical forces 24.986 kip/ft, overturning 3.47. The friction here is another on purpose: only the number
 * may count. */
#define DAS \
  "wall height=16.75 ft", "wall embedment=4 ft", "top width=1.5 ft", "base width=12.5 ft", \
      "toe length=4 ft", "heel length=6 ft", "slab thickness=2.75 ft", "wall unit weight=150 pcf", \
      "soil 1 friction angle=27 deg", "soil 1 unit weight=117 pcf", "ground slope=10 deg", \
      "footing soil friction angle=18 deg", "footing soil cohesion=900 psf", \
      "footing soil unit weight=107 pcf", "load 1 kind=none", "method base friction=66.67 %", \
      "method base cohesion=66.67 %", "method pressure=rankine"

static const lw_situation *drained_of(const lw_result *result) {
  return checks_test_situation(result, LW_SITUATION_DRAINED);
}

Test(given_numbers, a_cantilever_wall_with_the_books_coefficient) {
  lw_result *r = RUN(DAS, "method coefficient=0.294");
  const lw_situation *s = drained_of(r);
  double kip_per_ft = 14.59390294;
  cr_assert_eq(s->base.status, LW_OK);
  cr_expect_float_eq(s->base.thrust.vertical_kn_per_m / kip_per_ft, 1.42, 0.006);
  cr_expect_float_eq(s->base.contact.vertical_kn_per_m / kip_per_ft, 24.986, 0.01);
  cr_expect_float_eq(checks_test_at_base(s, LW_CHECK_OVERTURNING)->has.value, 3.47, 0.01);
  free(r);
}

/* By hand: K γ H²/2 with K 0.5, γ 18 kN/m³, H 1.3 m is 7.605 kN/m, a third of H up. */
Test(given_numbers, the_coefficient_is_the_whole_thrust_and_no_wedge_has_a_say) {
  static const char *const all[] = {"method pressure=rankine", "method pressure=coulomb",
                                    "method pressure=wedge", "method pressure=at rest"};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++) {
    lw_result *r = RUN(GARDEN, all[i], "method coefficient=0.5", "load 1 kind=none");
    const lw_free_body *base = &drained_of(r)->base;
    cr_assert_eq(base->status, LW_OK, "%s", all[i]);
    cr_expect(checks_test_near(base->thrust.total_kn_per_m, 7.605, 1e-9), "%s: %.4f", all[i],
              base->thrust.total_kn_per_m);
    cr_expect(checks_test_near(base->thrust.height_of_action_m, 1.3 / 3.0, 1e-9), "%s", all[i]);
    cr_expect(!base->wedge_known && !base->wedge_governs && !base->faulty, "%s", all[i]);
    free(r);
  }
}

/* Far below any wedge's, far above, and with loads that a wedge would carry: never faulty. */
Test(given_numbers, no_coefficient_makes_a_result_faulty) {
  static const char *const ks[] = {"method coefficient=0.01", "method coefficient=0.3",
                                   "method coefficient=9"};
  double before = 0.0;
  for (size_t i = 0; i < sizeof ks / sizeof *ks; i++) {
    lw_result *r = RUN(GARDEN, ks[i], "load 1 kind=strip", "load 1 pressure=8 kPa", "load 1 near edge=0.3 m",
                       "load 1 far edge=1 m", "ground slope=10 deg", "ground slope run=0.6 m");
    const lw_free_body *base = &drained_of(r)->base;
    cr_assert_eq(base->status, LW_OK);
    cr_expect(!base->faulty && !base->wedge_known);
    cr_expect_gt(base->elastic.push_kn_per_m, 0.0);
    cr_expect_gt(base->thrust.total_kn_per_m, before);
    before = base->thrust.total_kn_per_m;
    free(r);
  }
}

/* What the number was not given for is not shown. */
Test(given_numbers, no_thrust_by_a_coefficient_in_an_earthquake_or_with_divided_friction) {
  lw_result *shaken = RUN(GARDEN, "method coefficient=0.33", "seismic horizontal=0.1");
  cr_expect_eq(drained_of(shaken)->base.status, LW_OK);
  cr_expect_eq(checks_test_situation(shaken, LW_SITUATION_EARTHQUAKE)->base.reason, LW_REASON_GIVEN_NUMBER);
  free(shaken);
  static const char *const sets[] = {"method format=en1997-da1-2", "method format=en1997-da3-geo"};
  for (size_t i = 0; i < sizeof sets / sizeof *sets; i++) {
    lw_result *r = RUN(GARDEN, "method coefficient=0.33", sets[i]);
    cr_expect_eq(drained_of(r)->base.reason, LW_REASON_GIVEN_NUMBER, "%s", sets[i]);
    free(r);
  }
  lw_result *r = RUN(GARDEN, "method coefficient=0.33", "method load pressure=wedge", "load 1 kind=line",
                     "load 1 force=2 kN/m", "load 1 distance=0.5 m");
  cr_expect_eq(drained_of(r)->base.reason, LW_REASON_NO_LOADS_GIVEN);
  free(r);
}
