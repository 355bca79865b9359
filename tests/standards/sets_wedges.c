/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "sets_by_definition.h"
#include "../checks/support.h"

/* Manuals for hydraulic works: the factor of sliding divides tan φ of every wedge, and for overturning and
 * bearing the soil pushes with two thirds of its tan φ. [EM1110-2-2502 ch.3], [EM1110-2-2502 ch.4],
 * [EM1110-2-2100 T.3-3]. Strengths are typed in here, and the wall runs under a set that divides nothing. */

static const char *const MANUALS[] = {"em-1110-2-2502", "em-1110-2-2100"};
enum { WALLS = 30 };

static void add_passive(const code_wall *w, random_wall *items) {
  if (w->buried_m <= 0.0) return;
  random_wall_add(items, "method passive=0.5");
  random_wall_add(items, "method passive as=off push");
}

static void make(dice *d, code_wall *w) {
  code_wall_make(d, w);
  w->base_m *= 1.7;
  w->buried_m = dice_pick(d, 3) ? 0.0 : dice_between(d, 0.05, 0.3) * w->height_m;
}

/* Behind, in front and below at their whole strength over a factor, by a set that asks no more where the
 * ground in front counts. */
static const lw_check *at_factor(const code_wall *w, double factor, lw_check_kind kind, lw_result **result) {
  random_wall items;
  code_wall_items(w, factor, 1.0, &items);
  add_passive(w, &items);
  *result = code_run(&items, "irc");
  return checks_test_at_base(checks_test_situation(*result, LW_SITUATION_DRAINED), kind);
}

/* With what is left of every strength the wall just holds; a little less of it, and it does not. */
static void expect_sliding(const code_wall *w, const lw_check *check, const char *what) {
  lw_result *at, *past;
  double factor = check->has.value, steep = tan(w->slope_deg / 57.29577951308232);
  const lw_check *just = at_factor(w, factor * (1.0 - 1e-7), LW_CHECK_SLIDING, &at);
  const lw_check *more = at_factor(w, factor * (1.0 + 1e-7), LW_CHECK_SLIDING, &past);
  cr_expect(just->has.known && just->has.value >= 1.0, "at %.6f it has %.9g: %s", factor, just->has.value,
            what);
  cr_expect(!more->has.known || more->has.value <= 1.0, "past %.6f it has %.9g: %s", factor, more->has.value,
            what);
  cr_expect(steep <= tan(w->phi_deg / 57.29577951308232) / factor * (1.0 + 1e-6), "%s", what);
  free(at);
  free(past);
}

static void expect_same(const lw_situation *s, const lw_situation *by, lw_check_kind kind, const char *what) {
  const lw_check *a = checks_test_at_base(s, kind), *b = checks_test_at_base(by, kind);
  cr_assert(a && b && a->has.known && b->has.known, "%s", what);
  cr_expect(checks_test_near(a->has.value, b->has.value, 1e-9), "%s has %.9g, by two thirds %.9g: %s",
            lw_check_slug(kind), a->has.value, b->has.value, what);
}

/* Only the soil behind, which pushes, has two thirds; the ground below is whole. */
static void expect_rest(const code_wall *w, const lw_situation *s, const char *what) {
  code_wall mobilized = *w;
  random_wall items;
  mobilized.phi_deg = code_design_angle(w->phi_deg, 1.5);
  mobilized.delta_deg = code_design_angle(w->delta_deg, 1.5);
  code_wall_items(&mobilized, 1.0, 1.0, &items);
  random_wall_add(&items, "method bearing=hansen");
  add_passive(w, &items);
  lw_result *r = code_run(&items, "lowwall");
  const lw_situation *by = checks_test_situation(r, LW_SITUATION_DRAINED);
  if (by->base.status == LW_OK) {
    expect_same(s, by, LW_CHECK_OVERTURNING, what);
    expect_same(s, by, LW_CHECK_COMPRESSION, what);
    expect_same(s, by, LW_CHECK_BEARING, what);
  }
  free(r);
}

Test(sets, the_manuals_divide_tan_phi_of_every_wedge) {
  dice d = {.state = 2502};
  int held = 0;
  for (int w = 0; w < WALLS; w++) {
    code_wall wall;
    random_wall items;
    char what[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    make(&d, &wall);
    code_wall_items(&wall, 1.0, 1.0, &items);
    random_wall_add(&items, "method bearing=hansen");
    add_passive(&wall, &items);
    random_wall_name(&items, what, sizeof what);
    lw_result *r = code_run(&items, MANUALS[w % 2]);
    const lw_situation *drained = checks_test_situation(r, LW_SITUATION_DRAINED);
    const lw_check *sliding = checks_test_at_base(drained, LW_CHECK_SLIDING);
    cr_assert(sliding && (sliding->has.known || sliding->reason == LW_REASON_NO_DEMAND), "%s", what);
    if (sliding->has.known) expect_sliding(&wall, sliding, what);
    expect_rest(&wall, drained, what);
    held += sliding->has.known && sliding->holds == LW_HOLDS;
    free(r);
  }
  cr_expect(held > 2 && held < WALLS - 2, "%d hold: the walls tell nothing", held);
}

/* By hand: a wall of 1 m and 0.8 m, 22 kN/m3, 17.6 kN/m, on friction 0.3; soil of 30 degrees and 18 kN/m3. At
 * full strength it has 5.28/(0.3333 x 9) = 1.76. With 1.3457 on tan φ the soil has 23.22 degrees and 0.4346,
 * and 5.28/(0.4346 x 9) = 1.350: the factor lies between, where both agree. Two thirds of tan 30 are 21.05
 * degrees and 0.4715: the resultant is 0.4715 x 9/3/17.6 = 0.0804 m off the middle, within the third. */
Test(sets, the_factor_on_strength_by_hand) {
  lw_result *r =
      RUN("wall kind=section", "wall height=1 m", "wall embedment=0 m", "base width=0.8 m", "top width=0.8 m",
          "wall unit weight=22 kN/m3", "soil 1 friction angle=30 deg", "soil 1 unit weight=18 kN/m3",
          "ground slope=0 deg", "load 1 kind=none", "people on cap=no", "base friction=0.3",
          "wall friction=0 deg", "method format=em-1110-2-2502");
  const lw_situation *drained = checks_test_situation(r, LW_SITUATION_DRAINED);
  const lw_check *sliding = checks_test_at_base(drained, LW_CHECK_SLIDING);
  double f = sliding->has.value, phi = atan(tan(30.0 / 57.29577951308232) / f);
  double push = 9.0 * (1.0 - sin(phi)) / (1.0 + sin(phi));
  cr_expect(checks_test_near(0.3 * 17.6 / f, push, 1e-9), "%.9g", f);
  cr_expect(fabs(f - 1.3478) < 3e-3, "%.6f", f);
  cr_expect(fabs(drained->base.contact.eccentricity_m - 0.0804) < 1e-4);
  cr_expect_eq(sliding->holds, LW_FALLS_SHORT);
  free(r);
}

/* A stack: the factor is searched at every joint, the cap and the pad as it is at the base. */
Test(sets, every_contact_has_the_factor_on_strength) {
  dice d = {.state = 2100};
  for (int w = 0; w < WALLS / 3; w++) {
    random_wall wall = {0}, divided;
    random_wall_plain(&d, &wall);
    random_wall_add(&wall, "cap height=60 mm");
    random_wall_add(&wall, "cap depth=400 mm");
    random_wall_add(&wall, "people on cap=no");
    random_wall_add(&wall, "method slip=not");
    random_wall_add(&wall, "load 1 kind=none");
    random_wall_add(&wall, "ground slope=0 deg");
    random_wall_add(&wall, "method pressure=rankine");
    divided = wall;
    double phi = dice_between(&d, 25.0, 40.0), joint = dice_between(&d, 0.3, 0.7);
    random_wall_add(&wall, "soil 1 friction angle=%.17g deg", phi);
    random_wall_add(&wall, "joint friction=%.17g", joint);
    random_wall_add(&wall, "method thrust direction=level");
    lw_result *r = code_run(&wall, MANUALS[w % 2]);
    const lw_situation *drained = checks_test_situation(r, LW_SITUATION_DRAINED);
    for (int i = 0; i < drained->check_count; i++) {
      const lw_check *c = checks_test_check(drained, i);
      if (c->kind != LW_CHECK_SLIDING || (c->at != LW_AT_JOINT && c->at != LW_AT_CAP) || !c->has.known)
        continue;
      random_wall at = divided;
      random_wall_add(&at, "soil 1 friction angle=%.17g deg", code_design_angle(phi, c->has.value));
      random_wall_add(&at, "joint friction=%.17g", joint / c->has.value);
      random_wall_add(&at, "method thrust direction=level");
      lw_result *by = code_run(&at, "lowwall");
      const lw_check *same = checks_test_check(checks_test_situation(by, LW_SITUATION_DRAINED), i);
      cr_assert(same->kind == c->kind && same->at == c->at && same->joint == c->joint);
      cr_expect(fabs(same->has.value - 1.0) < 1e-7, "joint %d: %.9g at %.9g", c->joint, same->has.value,
                c->has.value);
      free(by);
    }
    free(r);
  }
}

/* Nothing pushes a wall without soil behind it: by the manuals as well nothing is asked, no factor is told,
 * and what would hold it is told at full strength, 0.5 of its weight. */
Test(sets, without_a_push_the_manuals_ask_nothing) {
  lw_result *r = RUN("course count=4", "block height=200 mm", "block depth=300 mm", "people on cap=no",
                     "soil below top=800 mm", "load 1 kind=none", "site behind=bed", "drain outlets=1",
                     "base friction=0.5", "method format=em-1110-2-2502");
  const lw_situation *drained = checks_test_situation(r, LW_SITUATION_DRAINED);
  const lw_check *sliding = checks_test_at_base(drained, LW_CHECK_SLIDING);
  cr_expect_eq(sliding->reason, LW_REASON_NO_DEMAND);
  cr_expect_eq(sliding->holds, LW_HOLDS);
  cr_expect_not(sliding->has.known);
  cr_expect(checks_test_near(sliding->resistance.value, 0.5 * drained->base.contact.vertical_kn_per_m, 1e-9),
            "%g", sliding->resistance.value);
  free(r);
}
