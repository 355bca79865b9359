/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include <lowwall/pressure.h>

#include "../checks/support.h"
#include "load_cases/kinds.h"
#include "load_cases/load_case.h"

/* A wall in an earthquake: the situation, its forces and its balance. */

#define UPRIGHT \
  "wall kind=section", "wall height=1.2 m", "top width=0.7 m", "base width=0.7 m", \
      "wall unit weight=23 kN/m3", "soil 1 friction angle=33 deg", "soil 1 unit weight=18.5 kN/m3", \
      "ground slope=0 deg", "load 1 kind=none", "people on cap=no", "footing soil friction angle=30 deg", \
      "base friction=0.5"
#define ON_TOP UPRIGHT, "wall embedment=0 mm"
#define BURIED UPRIGHT, "wall embedment=300 mm"
#define DRAINED "site behind=bed", "drain outlets=2", "stone width=400 mm"

static const lw_situation *quake(const lw_result *result) {
  return checks_test_situation(result, LW_SITUATION_EARTHQUAKE);
}

static bool shaken(const lw_result *result) {
  for (int i = 0; i < result->situations.count; i++)
    if (result->situations.situation[i].name == LW_SITUATION_EARTHQUAKE) return true;
  return false;
}

Test(earthquake, is_there_only_when_given) {
  lw_result *none = RUN(ON_TOP, DRAINED), *zero = RUN(ON_TOP, DRAINED, "seismic horizontal=0"),
            *given = RUN(ON_TOP, DRAINED, "seismic vertical=-0.02");
  cr_expect_not(shaken(none));
  cr_expect_not(shaken(zero));
  cr_expect(shaken(given));
  cr_expect_eq(quake(given)->kind, LW_EXTREME);
  cr_expect(quake(given)->decides);
  cr_expect_lt(0.0, quake(given)->load_case.ground.seismic.vertical, "up is shown, whatever the sign");
  free(none);
  free(zero);
  free(given);
}

/* Sums written out by hand: thrust of Mononobe and Okabe, its two heights, and the wall's own weight. */
Test(earthquake, forces_are_in_equilibrium) {
  lw_result *result = RUN(ON_TOP, DRAINED, "seismic horizontal=0.12", "wall friction=0 deg");
  const lw_free_body *base = &quake(result)->base;
  lw_wall_angles angles = {33.0 * acos(-1.0) / 180.0, 0.0, 0.0, 0.0};
  double still, moving, area = 0.5 * 18.5 * 1.2 * 1.2, weight = 0.7 * 1.2 * 23.0;
  cr_assert_eq(lw_coulomb_coefficient(LW_ACTIVE, &angles, &still, NULL), LW_OK);
  cr_assert_eq(lw_mononobe_okabe_coefficient(LW_ACTIVE, &angles, atan(0.12), &moving, NULL), LW_OK);
  cr_assert_eq(base->status, LW_OK);
  double tips = area * (still * 0.4 + (moving - still) * 0.6 * 1.2) + 0.12 * weight * 0.6;
  cr_expect(checks_test_near(base->contact.horizontal_kn_per_m, area * moving + 0.12 * weight, 1e-9));
  cr_expect(checks_test_near(base->contact.vertical_kn_per_m, weight, 1e-9));
  cr_expect(checks_test_near(base->contact.overturning_knm_per_m, tips, 1e-9));
  cr_expect(checks_test_near(base->contact.resisting_knm_per_m, weight * 0.35, 1e-9));
  const lw_check *sliding = checks_test_at_base(quake(result), LW_CHECK_SLIDING);
  cr_expect(checks_test_near(sliding->needs.value, 1.1, 1e-12));
  free(result);
}

Test(earthquake, height_of_what_it_adds_is_a_choice) {
  lw_result *high = RUN(ON_TOP, DRAINED, "seismic horizontal=0.1"),
            *low = RUN(ON_TOP, DRAINED, "seismic horizontal=0.1", "method seismic height=33.3333333333 %");
  cr_expect(checks_test_near(quake(low)->base.thrust.height_of_action_m, 0.4, 1e-9));
  cr_expect_lt(0.4, quake(high)->base.thrust.height_of_action_m);
  free(high);
  free(low);
}

/* Each way of the vertical coefficient alone is no graver than the two together. */
Test(earthquake, keeps_the_worse_of_up_and_down) {
  lw_result *level = RUN(ON_TOP, DRAINED, "seismic horizontal=0.1"),
            *both = RUN(ON_TOP, DRAINED, "seismic horizontal=0.1", "seismic vertical=0.08"),
            *down = RUN(ON_TOP, DRAINED, "seismic horizontal=0.1", "seismic vertical=-0.08");
  for (int kind = LW_CHECK_SLIDING; kind <= LW_CHECK_COMPRESSION; kind++) {
    if (!lw_check_about_of((lw_check_kind)kind)->at[LW_AT_BASE]) continue;
    const lw_check *a = checks_test_at_base(quake(level), (lw_check_kind)kind),
                   *b = checks_test_at_base(quake(both), (lw_check_kind)kind),
                   *c = checks_test_at_base(quake(down), (lw_check_kind)kind);
    cr_expect_leq(b->has.value, a->has.value);
    cr_expect(checks_test_near(b->has.value, c->has.value, 1e-12));
  }
  const lw_check *bearing = checks_test_at_base(quake(both), LW_CHECK_BEARING);
  cr_expect_lt(quake(both)->base.contact.greatest_kpa, bearing->demand.value + 1e-9,
               "what presses harder may be the other way");
  free(level);
  free(both);
  free(down);
}

/* The ground lifts and drops, and water that stands anywhere behind wall or pad may be shaken with it or may
 * not: each with each is tried, and none twice. */
Test(earthquake, lifts_and_drops_with_and_without_its_water) {
  lw_result *r = RUN(ON_TOP, DRAINED, "seismic horizontal=0.1", "seismic vertical=0.08",
                     "pad thickness=150 mm", "pad width=1 m");
  static const struct {
    double water_m;
    bool wet;
  } rows[] = {{0.3, true}, {1.3, true}, {1.4, false}, {INFINITY, false}};
  lw_situation s = *quake(r);
  for (int i = 0; i < 4; i++) {
    lw_seismic way[LW_WAYS];
    int seen[2][2] = {{0}};
    s.water_depth_m = rows[i].water_m;
    int count = lw_load_case_ways(&r->wall, &s, way);
    for (int w = 0; w < count; w++) {
      cr_expect(checks_test_near(way[w].horizontal, 0.1, 1e-12));
      cr_expect(checks_test_near(fabs(way[w].vertical), 0.08, 1e-12));
      seen[way[w].vertical > 0.0][way[w].pervious]++;
    }
    for (int up = 0; up < 2; up++) {
      cr_expect_eq(seen[up][true], 1, "water at %g m, up %d", rows[i].water_m, up);
      cr_expect_eq(seen[up][false], rows[i].wet, "water at %g m, up %d", rows[i].water_m, up);
    }
  }
  free(r);
}

Test(earthquake, everything_grows_with_it) {
  double slides = INFINITY, tips = INFINITY, joint = INFINITY;
  static const char *const strong[] = {"seismic horizontal=0.02", "seismic horizontal=0.07",
                                       "seismic horizontal=0.15"};
  for (int i = 0; i < 3; i++) {
    lw_result *result =
        RUN("course count=5", "block height=200 mm", "block depth=500 mm", "wall embedment=0 mm",
            "soil 1 friction angle=33 deg", "ground slope=0 deg", DRAINED, strong[i]);
    const lw_situation *s = quake(result);
    const lw_joint *lowest = &s->joint[0];
    double at_joint = lowest->contact.resisting_knm_per_m / lowest->contact.overturning_knm_per_m;
    double now_slides = checks_test_at_base(s, LW_CHECK_SLIDING)->has.value;
    double now_tips = checks_test_at_base(s, LW_CHECK_OVERTURNING)->has.value;
    cr_expect(now_slides < slides && now_tips < tips && at_joint < joint);
    slides = now_slides, tips = now_tips, joint = at_joint;
    free(result);
  }
}

/* On a heel the soil pushes with its heavy weight and presses with its light one. */
Test(earthquake, soil_on_a_heel_pushes_with_its_heavy_weight) {
  lw_result *result =
      RUN("wall kind=section", "wall height=1 m", "wall embedment=0 mm", "top width=0.3 m",
          "base width=0.8 m", "heel length=0.5 m", "slab thickness=0.2 m", "soil 1 friction angle=33 deg",
          "ground slope=0 deg", "load 1 kind=none", DRAINED, "seismic horizontal=0.1",
          "soil 1 light unit weight=15 kN/m3", "soil 1 unit weight=19 kN/m3", "method pressure=rankine");
  const lw_free_body *base = &quake(result)->base;
  double inertia = 0.0;
  cr_assert_eq(base->status, LW_OK);
  for (int i = 0; i < base->forces.count; i++) {
    const lw_force *f = &base->forces.force[i];
    if (f->kind == LW_FORCE_INERTIA && f->index == 1) inertia += f->horizontal_kn_per_m;
  }
  cr_expect(checks_test_near(inertia, 0.1 * 0.5 * 0.8 * 19.0, 1e-9));
  cr_expect(checks_test_near(checks_test_vertical(base, LW_FORCE_SOIL_ON_WALL), 0.5 * 0.8 * 15.0, 1e-9));
  free(result);
}

Test(earthquake, beyond_its_limit_nothing_can_be_shown) {
  lw_result *result = RUN(ON_TOP, DRAINED, "seismic horizontal=0.7");
  const lw_check *sliding = checks_test_at_base(quake(result), LW_CHECK_SLIDING);
  cr_expect_eq(sliding->holds, LW_CANNOT_SHOW);
  cr_expect_eq(sliding->reason, LW_REASON_NO_SEISMIC_WEDGE);
  cr_expect_neq(result->verdict.stands, LW_HOLDS);
  free(result);
}

/* A bed without a way out is wet in the earthquake too, and open water in front draws. */
Test(earthquake, takes_the_water_that_is_usual) {
  lw_result *wet = RUN(ON_TOP, "site behind=bed", "seismic horizontal=0.05", "front water depth=0.9 m"),
            *dry = RUN(ON_TOP, DRAINED, "seismic horizontal=0.05");
  const lw_free_body *base = &quake(wet)->base;
  cr_expect_lt(quake(wet)->water_depth_m, 1e-9);
  cr_expect(isinf(quake(dry)->water_depth_m));
  double open = 7.0 / 12.0 * 0.05 * 9.81 * (1.2 * 1.2 + 0.3 * 0.3);
  cr_expect(checks_test_near(checks_test_horizontal(base, LW_FORCE_SEISMIC_WATER), open, 1e-9));
  const lw_check *all = checks_test_at_base(quake(wet), LW_CHECK_SLIDING);
  double shown = 0.5 * base->contact.vertical_kn_per_m / base->contact.horizontal_kn_per_m;
  cr_expect_leq(all->has.value, shown + 1e-12, "the worse of water with and without the ground is kept");
  free(wet);
  free(dry);
}

Test(earthquake, pad_and_passive_are_shaken) {
  lw_result *result = RUN(BURIED, DRAINED, "seismic horizontal=0.1", "pad thickness=150 mm",
                          "pad width=0.9 m", "pad material=crushed rock", "method passive=1");
  const lw_situation *s = quake(result), *still = checks_test_situation(result, LW_SITUATION_DRAINED);
  cr_assert_eq(s->pad.status, LW_OK);
  double inertia = 0.0, weight = 0.0;
  for (int i = 0; i < s->pad.forces.count; i++) {
    const lw_force *f = &s->pad.forces.force[i];
    if (f->kind == LW_FORCE_INERTIA && f->index == 2) inertia = f->horizontal_kn_per_m;
    if (f->kind == LW_FORCE_PART && f->index < 0) weight = f->vertical_kn_per_m;
  }
  cr_expect(weight > 0.0 && checks_test_near(inertia, 0.1 * weight, 1e-12));
  cr_expect_lt(s->base.passive_kn_per_m, still->base.passive_kn_per_m);
  cr_expect_lt(0.0, s->base.passive_kn_per_m);
  free(result);
}

/* A curve at the whole wall friction, less the friction that its lift takes from under the wall. */
Test(passive, check_takes_the_method_asked_for) {
  lw_result *none = RUN(BURIED, DRAINED, "method passive by=log spiral"),
            *own = RUN(BURIED, DRAINED, "method passive=1", "wall friction=0 deg"),
            *spiral = RUN(BURIED, DRAINED, "method passive=1", "wall friction=20 deg",
                          "method passive by=log spiral"),
            *annex =
                RUN(BURIED, DRAINED, "method passive=1", "wall friction=20 deg", "method passive by=annex c");
  double base[4];
  lw_result *all[] = {none, own, annex, spiral};
  for (int i = 0; i < 4; i++) {
    base[i] = checks_test_situation(all[i], LW_SITUATION_DRAINED)->base.passive_kn_per_m;
    free(all[i]);
  }
  cr_expect_lt(base[0], 1e-12, "a share of zero counts nothing, whatever the method");
  cr_expect(base[1] < base[2] && base[2] < base[3]);
}

Test(at_rest, overconsolidation_reaches_the_check) {
  lw_result *once = RUN(ON_TOP, DRAINED, "method pressure=at rest"),
            *loaded = RUN(ON_TOP, DRAINED, "method pressure=at rest", "soil 1 overconsolidation=3"),
            *en = RUN(ON_TOP, DRAINED, "method pressure=at rest", "soil 1 overconsolidation=3",
                      "method overconsolidation=en1997");
  double k = checks_test_situation(once, LW_SITUATION_DRAINED)->base.thrust.coefficient;
  double phi = 33.0 * acos(-1.0) / 180.0;
  cr_expect(checks_test_near(checks_test_situation(loaded, LW_SITUATION_DRAINED)->base.thrust.coefficient,
                             k * pow(3.0, sin(phi)), 1e-9));
  cr_expect(checks_test_near(checks_test_situation(en, LW_SITUATION_DRAINED)->base.thrust.coefficient,
                             k * sqrt(3.0), 1e-9));
  free(once);
  free(loaded);
  free(en);
}
