/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/support.h"

/* Rain on a bed that cannot drain: how high the water comes, and what that does to the checks. */

#define BED \
  "site behind=bed", "site back=wall", "wall height=600 mm", "wall embedment=200 mm", "block height=200 mm", \
      "block depth=500 mm", "soil below top=50 mm", "load 1 kind=none"

static lw_result *with_rain(const char *rain, const char *other) {
  return RUN(BED, "soil 1 friction angle=30 deg", rain, other);
}

/* 50 mm of rain in soil that takes up a tenth to a fifth of its volume: 250 to 500 mm of water.
 * Common practice, no source. */
Test(storm, fifty_millimetres_of_rain) {
  lw_result *loose = with_rain("storm rain=50 mm", "drainable porosity=20 %");
  cr_expect(checks_test_near(loose->storm.rise_m, 0.25, 1e-12));
  cr_expect(checks_test_near(loose->storm.from_depth_m, 0.6, 1e-12), "from the ground in front");
  cr_expect(checks_test_near(loose->storm.water_depth_m, 0.35, 1e-12));
  cr_expect_not(loose->storm.spills);
  const lw_situation *storm = checks_test_situation(loose, LW_SITUATION_STORM);
  cr_expect(checks_test_near(storm->water_depth_m, 0.35, 1e-12));
  cr_expect_eq(storm->kind, LW_WHAT_IF);
  cr_expect_not(storm->decides);
  lw_result *tight = with_rain("storm rain=50 mm", "title=no porosity");
  cr_expect(checks_test_near(tight->storm.rise_m, 0.5, 1e-12), "a tenth where nothing is known");
  cr_expect_eq(tight->given.water.drainable_porosity.origin, LW_ASSUMED);
  free(loose);
  free(tight);
}

/* A soil that is named brings its own share; of two the lesser counts. */
Test(storm, the_soil_that_holds_least_is_filled_highest) {
  static const struct {
    const char *first, *second;
    double porosity;
  } rows[] = {{"soil 1 name=crushed rock", "title=one soil", 0.35},
              {"soil 1 name=clean sand", "title=one soil", 0.10},
              {"soil 1 name=clay loam", "title=one soil", 0.03},
              {"soil 1 name=crushed rock", "soil 2 name=silt", 0.03}};
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    const char *bottom = i == 3 ? "soil 1 bottom=300 mm" : "note=no layers";
    lw_result *result = RUN(BED, rows[i].first, rows[i].second, bottom, "storm rain=10 mm");
    cr_expect(checks_test_near(result->storm.porosity, rows[i].porosity, 1e-12), "%s: %g", rows[i].first,
              result->storm.porosity);
    cr_expect_eq(result->given.water.drainable_porosity.origin, LW_TABLE);
    free(result);
  }
}

static bool same_checks(const lw_situation *a, const lw_situation *b) {
  if (a->check_count != b->check_count) return false;
  for (int i = 0; i < a->check_count; i++) {
    const lw_check *x = checks_test_check(a, i), *y = checks_test_check(b, i);
    if (x->has.known != y->has.known || fabs(x->has.value - y->has.value) > 0.0) return false;
  }
  return true;
}

/* No rain is no storm; rain that fills the bed is the blocked outlet, asked as a what-if. */
Test(storm, from_nothing_to_full) {
  lw_result *none = with_rain("storm rain=0 mm", "drain outlets=2"),
            *plain = with_rain("title=none", "note=none");
  lw_result *full = with_rain("storm rain=900 mm", "drain outlets=2");
  cr_expect_eq(none->situations.count, plain->situations.count);
  cr_expect(same_checks(&none->situations.situation[0], &plain->situations.situation[0]));
  cr_expect(full->storm.spills);
  cr_expect(checks_test_near(full->storm.water_depth_m, 0.05, 1e-12), "up to the soil's top");
  cr_expect(same_checks(checks_test_situation(full, LW_SITUATION_STORM),
                        checks_test_situation(full, LW_SITUATION_OUTLET_BLOCKED)));
  cr_expect_eq(full->verdict.stands, none->verdict.stands, "a what-if decides nothing");
  free(none);
  free(plain);
  free(full);
}

/* Water that stands there already is risen from; the overflow is the end. */
Test(storm, standing_water_and_overflow) {
  lw_result *wet = RUN(BED, "water depth=500 mm", "storm rain=20 mm", "overflow below top=200 mm",
                       "drainable porosity=0.1");
  lw_result *wetter = RUN(BED, "water depth=500 mm", "storm rain=40 mm", "overflow below top=200 mm",
                          "drainable porosity=0.1");
  cr_expect(checks_test_near(wet->storm.from_depth_m, 0.5, 1e-12));
  cr_expect(checks_test_near(wet->storm.water_depth_m, 0.3, 1e-12));
  cr_expect(checks_test_near(wetter->storm.water_depth_m, 0.2, 1e-12));
  cr_expect(wetter->storm.spills);
  free(wet);
  free(wetter);
}

/* More rain never raises a ratio, where no soil stands on the wall and the push is level. */
Test(storm, more_rain_never_raises_a_ratio) {
  lw_result *before = NULL;
  for (int rain = 5; rain <= 75; rain += 5) {
    char words[32];
    lw_print(words, sizeof words, "storm rain=%d mm", rain);
    lw_result *now = with_rain(words, "drainable porosity=0.12");
    for (int i = 0; before != NULL && i < now->situations.situation[2].check_count; i++) {
      const lw_check *a = checks_test_check(&before->situations.situation[2], i),
                     *b = checks_test_check(&now->situations.situation[2], i);
      cr_expect(!a->ratio.known || !b->ratio.known || b->ratio.value <= a->ratio.value + 1e-12,
                "%d mm: check %d has %.6g after %.6g", rain, i, b->ratio.value, a->ratio.value);
    }
    cr_expect_eq(now->situations.situation[2].name, LW_SITUATION_STORM);
    free(before);
    before = now;
  }
  free(before);
}
