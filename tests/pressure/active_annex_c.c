/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "support.h"

/* The active side of annex C: the coefficient, and the wall that `method active by` gives it to. */

static double annex_of(const lw_wall_angles *angles) {
  lw_annex_c annex = {.k = NAN};
  cr_assert_eq(lw_annex_c_coefficients(LW_ACTIVE, angles, &annex, NULL, NULL), LW_OK);
  return annex.k;
}

static double coulomb_of(const lw_wall_angles *angles) {
  double k = NAN;
  cr_assert_eq(lw_coulomb_coefficient(LW_ACTIVE, angles, &k, NULL), LW_OK);
  return k;
}

/* Values of Caquot and Kerisel with δ = φ, upright, printed to two places. [KRAMER-GEE table 8.5] */
Test(active_annex_c, caquot_and_kerisels_values) {
  static const struct {
    double phi, slope, k;
  } seen[] = {{20.0, 0.0, 0.44},  {25.0, 0.0, 0.37},  {30.0, 0.0, 0.30},  {35.0, 0.0, 0.26},
              {40.0, 0.0, 0.22},  {45.0, 0.0, 0.19},  {20.0, 15.0, 0.61}, {25.0, 15.0, 0.48},
              {30.0, 15.0, 0.37}, {35.0, 15.0, 0.32}, {40.0, 15.0, 0.25}, {45.0, 15.0, 0.21}};
  for (size_t i = 0; i < sizeof seen / sizeof *seen; i++) {
    lw_wall_angles angles = {RAD(seen[i].phi), RAD(seen[i].phi), 0.0, RAD(seen[i].slope)};
    double k = annex_of(&angles);
    cr_expect_lt(fabs(k - seen[i].k), 0.02, "phi %g slope %g: %g, printed %g", seen[i].phi, seen[i].slope, k,
                 seen[i].k);
  }
}

Test(active_annex_c, smooth_and_level_is_rankine) {
  for (double phi = 3.0; phi < 50.0; phi += 4.7) {
    lw_wall_angles angles = {RAD(phi), 0.0, 0.0, 0.0};
    double s = sin(RAD(phi));
    cr_expect_lt(fabs(annex_of(&angles) * (1.0 + s) / (1.0 - s) - 1.0), 1e-12, "phi %g", phi);
  }
}

/* A field of stress that the soil can bear never pushes less than the worst plane does. */
Test(active_annex_c, never_below_coulomb_on_an_upright_wall) {
  dice d = {411};
  for (int i = 0; i < 20000 / RANDOM_SHARE; i++) {
    double phi = RAD(dice_between(&d, 10.0, 48.0)), delta = dice_between(&d, 0.0, phi);
    lw_wall_angles angles = {phi, delta, 0.0, dice_between(&d, -phi, phi)};
    double annex = annex_of(&angles), plane = coulomb_of(&angles);
    cr_expect_leq(plane * (1.0 - 1e-9), annex, "phi %g delta %g slope %g", phi, delta, angles.slope_rad);
  }
}

Test(active_annex_c, stronger_soil_pushes_less) {
  for (double share = 0.0; share < 1.01; share += 0.25)
    for (double slope = -15.0; slope < 16.0; slope += 7.5) {
      double before = INFINITY;
      for (double phi = 16.0; phi < 48.0; phi += 1.0) {
        lw_wall_angles angles = {RAD(phi), share * RAD(phi), 0.0, RAD(slope)};
        double k = annex_of(&angles);
        cr_expect_lt(k, before, "share %g slope %g phi %g", share, slope, phi);
        before = k;
      }
    }
}

#define UPRIGHT \
  "wall kind=section", "wall height=1.2 m", "top width=0.9 m", "base width=0.9 m", \
      "wall unit weight=23 kN/m3", "soil 1 unit weight=18.5 kN/m3", "load 1 kind=none", "people on cap=no", \
      "footing soil friction angle=30 deg", "base friction=0.5", "wall embedment=0 mm", "method slip=not", \
      "site behind=bed", "drain outlets=2", "stone width=400 mm"
#define ROUGH UPRIGHT, "soil 1 friction angle=33 deg", "wall friction=33 deg", "ground slope=0 deg"
#define COULOMB ROUGH, "method pressure=coulomb"

/* P = K γ H²/2 at δ on the back, by hand. */
Test(active_annex_c, is_the_push_of_the_wall) {
  lw_result *plane = RUN(COULOMB), *annex = RUN(COULOMB, "method active by=annex c");
  lw_wall_angles angles = {RAD(33.0), RAD(33.0), 0.0, 0.0};
  const lw_free_body *base = &checks_test_situation(annex, LW_SITUATION_DRAINED)->base,
                     *before = &checks_test_situation(plane, LW_SITUATION_DRAINED)->base;
  double push = annex_of(&angles) * 0.5 * 18.5 * 1.2 * 1.2;
  cr_assert_eq(base->status, LW_OK);
  cr_expect_not(base->faulty);
  cr_expect_not(base->wedge_governs);
  cr_expect(checks_test_near(base->thrust.total_kn_per_m, push, 1e-9));
  cr_expect(checks_test_near(base->thrust.horizontal_kn_per_m, push * cos(RAD(33.0)), 1e-9));
  cr_expect(checks_test_near(base->thrust.height_of_action_m, 0.4, 1e-9));
  cr_expect(checks_test_near(base->wedge.thrust_kn_per_m, before->thrust.total_kn_per_m, 1e-6));
  cr_expect_lt(1.03 * before->thrust.total_kn_per_m, push);
  free(plane);
  free(annex);
}

/* It is said of Coulomb alone: Rankine's wall is the same with the word and without. */
Test(active_annex_c, leaves_other_methods_as_they_are) {
  lw_result *one = RUN(ROUGH, "method pressure=rankine"),
            *other = RUN(ROUGH, "method pressure=rankine", "method active by=annex c");
  cr_expect_eq(one->situations.situation[0].base.thrust.total_kn_per_m,
               other->situations.situation[0].base.thrust.total_kn_per_m);
  free(one);
  free(other);
}

/* In an earthquake Mononobe and Okabe's plane stands for it, at every height of the wall. */
Test(active_annex_c, in_an_earthquake_is_coulomb) {
  lw_result *one = RUN(COULOMB, "seismic horizontal=0.12"),
            *other = RUN(COULOMB, "seismic horizontal=0.12", "method active by=annex c");
  const lw_free_body *plane = &checks_test_situation(one, LW_SITUATION_EARTHQUAKE)->base,
                     *annex = &checks_test_situation(other, LW_SITUATION_EARTHQUAKE)->base;
  cr_assert_eq(annex->status, LW_OK);
  cr_expect(checks_test_near(annex->thrust.total_kn_per_m, plane->thrust.total_kn_per_m, 1e-12));
  free(one);
  free(other);
}

/* Whatever the wall: never marked faulty, and never pushed by less than the wedge on its own plane. */
Test(active_annex_c, any_wall_takes_the_larger) {
  static lw_tables tables;
  static lw_result result;
  dice d = {9127};
  int governs = 0;
  cr_assert_eq(lw_tables_read(NULL, &tables, NULL), LW_OK);
  for (int i = 0; i < 300 / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    char name[2048];
    random_wall_plain(&d, &wall);
    double phi = dice_between(&d, 22.0, 42.0);
    random_wall_add(&wall, "soil 1 friction angle=%.6f deg", phi);
    random_wall_add(&wall, "ground slope=%.6f deg", dice_between(&d, 0.0, 0.9) * phi);
    random_wall_add(&wall, "load 1 kind=uniform");
    random_wall_add(&wall, "load 1 pressure=%.3f kPa", dice_between(&d, 0.0, 8.0));
    random_wall_add(&wall, "method pressure=coulomb");
    random_wall_add(&wall, "method active by=annex c");
    random_wall_add(&wall, "method slip=not");
    lw_case one = random_wall_case(&wall);
    cr_assert_eq(lw_run(&one, &tables, LW_DETAIL_EVERYTHING, &result, NULL), LW_OK);
    for (int s = 0; s < result.situations.count; s++) {
      const lw_free_body *base = &result.situations.situation[s].base;
      cr_expect_not(base->faulty, "%s", random_wall_name(&wall, name, sizeof name));
      if (base->status != LW_OK || !base->wedge_known) continue;
      cr_expect_geq(base->thrust.total_kn_per_m * (1.0 + 1e-6), base->wedge.thrust_kn_per_m, "%s",
                    random_wall_name(&wall, name, sizeof name));
      governs += !base->wedge_governs;
    }
  }
  cr_expect_gt(governs, 100 / RANDOM_SHARE, "the annex's own push was used %d times", governs);
}
