/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../report/told.h"
#include "../sheet/support.h"
#include "checks/bearing.h"
#include "load_cases/basis.h"
#include "support.h"

/* Checks whose answer is known by hand, with what they write of it. */

static const lw_check *check_at(const lw_situation *s, lw_check_kind kind, lw_at at) {
  for (int i = 0; i < s->check_count; i++) {
    const lw_check *check = checks_test_check(s, i);
    if (check->kind == kind && check->at == at) return check;
  }
  cr_assert_fail("no such check");
  return NULL;
}

static told tell(const lw_result *r, const lw_situation *s, const lw_check *check) {
  lw_basis basis;
  told t;
  lw_working working = told_listen(&t);
  cr_assert(lw_check_basis(&r->wall, sheet_test_tables(), s, check, &basis));
  lw_check_tell(&basis, sheet_test_tables(), check, &working);
  cr_expect_eq(t.wrong, 0, "%s", t.first_wrong);
  return t;
}

#define STOUT \
  "wall kind=section", "wall height=1 m", "top width=0.8 m", "base width=0.8 m", \
      "wall unit weight=20 kN/m3", "wall embedment=0.2 m", "soil 1 friction angle=33 deg", \
      "site behind=bed", "load 1 kind=none", "soil below top=0.4 m"

/* Water in front below the footing takes off of its weight from the base's width down, in proportion
 * [DAS-PFE modification for the water table]; by hand 18 moist and 20 in water, gb 10.19. */
Test(told_checks, ground_under_a_footing_weighs_by_the_water_below_it) {
  static const struct {
    const char *depth, *formula;
    double gamma;
  } rows[] = {{"front water depth=1.24 m", "gb + (gm - gb) dw/B", 10.19 + (18.0 - 10.19) * 0.04 / 0.8},
              {"front water depth=1.2 m", "gb", 10.19},
              {"front water depth=3 m", "gm", 18.0}};
  for (int i = 0; i < 3; i++) {
    lw_result *r = RUN(STOUT, "method bearing=hansen", "footing soil friction angle=30 deg",
                       "footing soil unit weight=18 kN/m3", "footing soil saturated unit weight=20 kN/m3",
                       rows[i].depth);
    const lw_situation *s = &r->situations.situation[0];
    lw_strip strip = lw_bearing_strip(&r->wall, &s->load_case.ground, &s->base, LW_AT_BASE, NULL);
    told t = tell(r, s, check_at(s, LW_CHECK_BEARING, LW_AT_BASE));
    cr_expect_float_eq(strip.unit_weight_kn_per_m3, rows[i].gamma, 1e-9, "%g", strip.unit_weight_kn_per_m3);
    cr_expect_str_eq(told_formula(&t, "gamma"), rows[i].formula);
    free(r);
  }
}

/* A light wall set deep presses less than the ground dug out for it did: net of that it asks nothing. */
Test(told_checks, less_than_what_stood_there_asks_nothing) {
  lw_result *r = RUN("wall kind=section", "wall height=0.2 m", "top width=0.8 m", "base width=0.8 m",
                     "wall unit weight=12 kN/m3", "wall embedment=0.6 m", "soil 1 friction angle=33 deg",
                     "site behind=bed", "load 1 kind=none", "soil below top=0.1 m", "method bearing=hansen",
                     "method bearing on=net", "footing soil friction angle=30 deg",
                     "footing soil unit weight=20 kN/m3", "method base pressure=effective");
  const lw_situation *s = &r->situations.situation[0];
  const lw_check *check = check_at(s, LW_CHECK_BEARING, LW_AT_BASE);
  cr_expect_lt(s->base.contact.greatest_kpa, 0.6 * 20.0);
  cr_expect_eq(check->holds, LW_HOLDS);
  cr_expect_eq(check->reason, LW_REASON_NO_DEMAND);
  free(r);
}

/* On clay without friction water or air may get under a footing: no more than 0.4 V holds it, the ground in
 * front beside. [EN1997-1 6.5.3] */
Test(told_checks, clay_holds_no_more_than_its_share) {
  static const char *const FRONT[] = {"method passive=0", "method passive=1"};
  for (int i = 0; i < 2; i++) {
    lw_result *r = RUN(STOUT, "method format=en1997-da2-geo", "footing soil friction angle=0 deg",
                       "footing soil cohesion=80 kPa", "base friction=0", "base adhesion=40 kPa", FRONT[i]);
    const lw_situation *s = &r->situations.situation[0];
    const lw_check *check = check_at(s, LW_CHECK_SLIDING, LW_AT_BASE);
    told t = tell(r, s, check);
    double most = told_value(&t, i ? "Rm" : "R");
    lw_basis basis;
    cr_assert(lw_check_basis(&r->wall, sheet_test_tables(), s, check, &basis));
    cr_expect(checks_test_near(most, 0.4 * basis.body.contact.vertical_kn_per_m, 1e-9), "%g", most);
    cr_expect_lt(most, told_value(&t, "Rg"));
    free(r);
  }
}

/* A pad narrower than what stands on it bears only where it is: beyond its edge nothing does. */
Test(told_checks, a_pad_bears_only_where_it_is) {
  static const struct {
    const char *width;
    bool bears;
  } rows[] = {{"pad width=1 m", true}, {"pad width=0.1 m", false}};
  for (int i = 0; i < 2; i++) {
    lw_result *r = RUN("wall kind=section", "wall height=1.2 m", "top width=0.7 m", "base width=0.7 m",
                       "wall unit weight=23 kN/m3", "wall embedment=0 m", "soil 1 friction angle=33 deg",
                       "site behind=bed", "pad thickness=0.1 m", "pad spread=0.5", rows[i].width);
    const lw_situation *s = &r->situations.situation[0];
    const lw_check *check = check_at(s, LW_CHECK_BEARING, LW_AT_PAD);
    cr_assert(s->base.contact.inside && s->base.contact.resultant_m < 0.3);
    cr_expect_eq(s->pad.contact.inside, rows[i].bears, "%s", rows[i].width);
    cr_expect(rows[i].bears || (check->holds == LW_FALLS_SHORT && check->reason == LW_REASON_OUTSIDE_BASE));
    free(r);
  }
}
