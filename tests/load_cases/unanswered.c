/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../verdict/help.h"
#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "studies/fence_wind.h"

/* Where a part of the answer is left out, or cannot be given. */

#define STEPPED \
  "course count=4", "block height=0.2 m", "block depth=0.3 m", "block unit weight=22 kN/m3", \
      "base course count=1", "base course depth=0.6 m", "soil 1 friction angle=32 deg", \
      "soil 1 unit weight=18 kN/m3", "ground slope=0 deg", "load 1 kind=none", "people on cap=no", \
      "footing soil friction angle=30 deg", "base friction=0.5", "method slip=not", \
      "method pressure=rankine"

/* Soil on the step of a deeper base course: 0.3 m wide, 0.6 m of it above the step, 18 kN/m3, by hand. */
Test(checks, soil_on_a_step_counts_or_not_and_changes_no_push) {
  lw_result *with = RUN(STEPPED), *without = RUN(STEPPED, "method soil on heel=not");
  const lw_free_body *a = &with->situations.situation[0].base, *b = &without->situations.situation[0].base;
  cr_expect_lt(checks_test_vertical(a, LW_FORCE_SOIL_ON_WALL), 0.3 * 0.6 * 18.0 + 1e-9);
  cr_expect_gt(checks_test_vertical(a, LW_FORCE_SOIL_ON_WALL), 0.3 * 0.6 * 16.0 * 0.5);
  cr_expect_float_eq(checks_test_vertical(b, LW_FORCE_SOIL_ON_WALL), 0.0, 0.0);
  cr_expect(checks_test_near(a->thrust.total_kn_per_m, b->thrust.total_kn_per_m, 1e-12));
  double lost = a->contact.vertical_kn_per_m - b->contact.vertical_kn_per_m;
  cr_expect(checks_test_near(lost, checks_test_vertical(a, LW_FORCE_SOIL_ON_WALL), 1e-9));
  free(with);
  free(without);
}

/* No theory of bearing covers friction above 50 degrees: that is no reason to hold. */
Test(checks, bearing_without_an_answer_cannot_be_shown) {
  static const char *const methods[] = {"terzaghi", "meyerhof", "hansen", "vesic", "en1997"};
  for (size_t i = 0; i < sizeof methods / sizeof *methods; i++) {
    char method[48];
    lw_print(method, sizeof method, "method bearing=%s", methods[i]);
    lw_result *r = RUN("wall height=0.6 m", "block depth=0.6 m", "soil 1 friction angle=32 deg",
                       "footing soil friction angle=60 deg", "method slip=not", method);
    const lw_check *check = checks_test_at_base(&r->situations.situation[0], LW_CHECK_BEARING);
    cr_assert_not_null(check, "%s", methods[i]);
    cr_expect_eq(check->holds, LW_CANNOT_SHOW, "%s", methods[i]);
    cr_expect_eq(check->reason, LW_REASON_ANGLE_OUT_OF_RANGE, "%s", methods[i]);
    cr_expect_neq(r->verdict.stands, LW_HOLDS, "%s", methods[i]);
    free(r);
  }
}

/* How far a fence must stand off is told of the fence at hand, not of one before. */
Test(checks, a_clear_distance_goes_with_its_fence) {
  static lw_result result;
  lw_case c;
  verdict_case("fence height=1.8 m;fence place=behind;wind pressure=0.6 kPa;fence distance=0.3 m", &c);
  cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, &result, NULL), LW_OK);
  lw_fence_wind wind = result.fence.on;
  wind.clear_m = (lw_number){1.0, true};
  lw_fence_clear(&result.situations, &wind);
  cr_expect(wind.clear_m.known);
  wind.present = false;
  lw_fence_clear(&result.situations, &wind);
  cr_expect_not(wind.clear_m.known);
}

/* Rankine's pressure of soil with cohesion under sloping ground, by the circle of Mohr itself: the stress on
 * the plane along the ground, gz cos2(b) and gz cos(b) sin(b), lies on a circle that touches c + s tan(phi);
 * its conjugate along the ground is the power of the origin over it. */
static double by_circle(lw_earth_state state, const lw_layer *soil, double slope, double stress) {
  double sp = sin(soil->friction_rad), cp = cos(soil->friction_rad), c = soil->cohesion_kpa;
  double normal = stress * cos(slope) * cos(slope), shear = stress * cos(slope) * sin(slope);
  /* (s - normal)2 + shear2 = (c cos phi + s sin phi)2 */
  double a = 1.0 - sp * sp, b = -2.0 * (normal + c * cp * sp);
  double k = normal * normal + shear * shear - c * c * cp * cp, root = sqrt(fmax(b * b - 4.0 * a * k, 0.0));
  double centre = (-b + (state == LW_PASSIVE ? root : -root)) / (2.0 * a), radius = c * cp + centre * sp;
  return (centre * centre - radius * radius) / (stress * cos(slope));
}

Test(pressure, cohesion_on_a_slope_is_the_circle_that_touches) {
  dice d = {11};
  for (int i = 0; i < 2000; i++) {
    lw_layer soil = {.friction_rad = dice_between(&d, 0.2, 0.8), .cohesion_kpa = dice_between(&d, 0.5, 20.0)};
    double slope = dice_between(&d, -0.95, 0.95) * soil.friction_rad, stress = dice_between(&d, 1.0, 60.0);
    for (int state = LW_ACTIVE; state <= LW_PASSIVE; state++) {
      double ours, theirs = by_circle((lw_earth_state)state, &soil, slope, stress);
      cr_assert_eq(lw_rankine_pressure((lw_earth_state)state, &soil, slope, stress, &ours, NULL), LW_OK);
      bool well = fabs(ours - theirs) < 1e-7 * (1.0 + fabs(theirs));
      cr_expect(well, "state %d: %g, by the circle %g", state, ours, theirs);
    }
  }
}
