/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/support.h"
#include "balance/push_parts.h"
#include "balance/free_body.h"
#include "balance/weigh.h"

/* Where what acts on a wall stands, and what does not act at all. */

static const lw_force *force_of(const lw_free_body *body, lw_force_kind kind) {
  for (int i = 0; i < body->forces.count; i++)
    if (body->forces.force[i].kind == kind) return &body->forces.force[i];
  return NULL;
}

#define LOADED \
  "wall kind=courses", "wall embedment=0 mm", "block height=200 mm", "block depth=300 mm", \
      "block mass=30 kg", "block length=400 mm", "setback=10 mm", "soil 1 friction angle=33 deg", \
      "site behind=bed", "load 1 kind=cap", "load 1 force=2 kN/m"

/* A load on the cap stands on the middle of what it lies on: the cap, or the highest block. By hand: five
 * courses put the highest block's face 40 mm behind the toe. */
Test(places, a_load_on_top_stands_on_its_middle) {
  static const struct {
    const char *height, *depth, *overhang;
    double middle_m;
  } rows[] = {{"cap height=0 mm", "cap depth=300 mm", "cap overhang=0 mm", 0.040 + 0.150},
              {"cap height=60 mm", "cap depth=360 mm", "cap overhang=30 mm", 0.040 - 0.030 + 0.180},
              {"cap height=60 mm", "cap depth=240 mm", "cap overhang=0 mm", 0.040 + 0.120}};
  for (int i = 0; i < 3; i++) {
    lw_result *r = i == 0
                       ? RUN(LOADED, "wall height=1 m")
                       : RUN(LOADED, "wall height=1060 mm", rows[i].height, rows[i].depth, rows[i].overhang);
    const lw_force *load = force_of(&r->situations.situation[0].base, LW_FORCE_CAP_LOAD);
    cr_assert_not_null(load);
    cr_expect_float_eq(load->x_m, rows[i].middle_m, 1e-9, "%s: %g", rows[i].depth, load->x_m);
    cr_expect_float_eq(load->vertical_kn_per_m, 2.0, 1e-12);
    free(r);
  }
}

/* An earthquake that only lifts and presses pushes neither wall nor water: what is level of it is nothing. */
Test(places, an_upright_earthquake_pushes_nothing_level) {
  lw_result *r = RUN("wall kind=section", "wall height=1.2 m", "top width=0.7 m", "base width=0.7 m",
                     "wall unit weight=23 kN/m3", "wall embedment=0 mm", "soil 1 friction angle=33 deg",
                     "site behind=bed", "front water depth=0.5 m", "seismic vertical=0.1");
  const lw_free_body *base = &checks_test_situation(r, LW_SITUATION_EARTHQUAKE)->base;
  const lw_force *inertia = force_of(base, LW_FORCE_INERTIA);
  cr_assert_not_null(inertia);
  cr_expect_float_eq(fabs(inertia->vertical_kn_per_m), 0.1 * 1.2 * 0.7 * 23.0, 1e-9);
  cr_expect_float_eq(inertia->horizontal_kn_per_m, 0.0, 1e-12);
  cr_expect_null(force_of(base, LW_FORCE_SEISMIC_WATER));
  free(r);
}

/* At rest nothing slides down the back: behind a slope, too, the push is level. */
Test(places, at_rest_the_push_is_level) {
  lw_result *r = RUN("wall kind=section", "wall height=1.2 m", "top width=0.7 m", "base width=0.7 m",
                     "wall unit weight=23 kN/m3", "soil 1 friction angle=33 deg", "site behind=ground",
                     "ground slope=10 deg", "method pressure=at rest", "method slip=not");
  const lw_thrust *thrust = &r->situations.situation[0].base.thrust;
  cr_expect_lt(0.1, r->wall.site.slope_rad);
  cr_expect_float_eq(thrust->vertical_kn_per_m, 0.0, 1e-12);
  cr_expect_float_eq(thrust->horizontal_kn_per_m, thrust->total_kn_per_m, 1e-12);
  free(r);
}

/* Soil that lies below the courses that lean over it stands on none of them. */
Test(places, soil_under_courses_that_lean_back_is_not_on_them) {
  lw_result *r = RUN("wall kind=courses", "wall height=2 m", "block height=200 mm", "block depth=250 mm",
                     "block mass=30 kg", "block length=400 mm", "setback=60 mm",
                     "soil 1 friction angle=33 deg", "site behind=bed", "soil below top=1.7 m");
  const lw_situation *s = &r->situations.situation[0];
  cr_assert_eq(s->base.status, LW_OK);
  cr_expect_null(force_of(&s->base, LW_FORCE_SOIL_ON_WALL));
  free(r);
}

/* A load that a set of factors or a book leaves to the wedge is none where there is none: the number of the
 * book stands. K gamma H2/2 by hand. */
Test(places, a_number_of_a_book_stands_without_loads) {
  lw_result *r = RUN("wall kind=section", "wall height=2 m", "top width=1 m", "base width=1 m",
                     "wall unit weight=23 kN/m3", "wall embedment=0 mm", "soil 1 friction angle=30 deg",
                     "soil 1 unit weight=18 kN/m3", "site behind=bed", "load 1 kind=none",
                     "method coefficient=0.35", "method load pressure=wedge");
  const lw_free_body *base = &r->situations.situation[0].base;
  cr_expect_eq(base->status, LW_OK);
  cr_expect_float_eq(base->thrust.total_kn_per_m, 0.35 * 18.0 * 2.0 * 2.0 / 2.0, 1e-9);
  free(r);
}

/* A trench that undermines the wall is no reason where there is a graver one already. */
Test(places, what_failed_before_keeps_its_reason) {
  lw_load_case load_case = {.ground = {.front = {.undermined = true}}};
  lw_free_body whole = {.status = LW_OK}, failed = {.status = LW_NO_SOLUTION, .reason = LW_REASON_NOT_FINITE};
  lw_free_body_undermine(&load_case, &whole);
  lw_free_body_undermine(&load_case, &failed);
  cr_expect_eq(whole.status, LW_NO_SOLUTION);
  cr_expect_eq(whole.reason, LW_REASON_UNDERMINED);
  cr_expect_eq(failed.reason, LW_REASON_NOT_FINITE);
}

/* Three reasons say that the program went wrong; of all others the wall or the sheet is the cause. */
Test(places, three_reasons_are_the_programs_own) {
  for (int i = 0; i < LW_REASON_COUNT; i++) {
    bool own = i == LW_REASON_NOT_FINITE || i == LW_REASON_NO_PUSH || i == LW_REASON_WEDGE_DISAGREES;
    lw_check check = {.holds = LW_CANNOT_SHOW, .reason = (lw_reason)i};
    cr_expect_eq(lw_reason_is_faulty((lw_reason)i), own, "%d", i);
    cr_expect_eq(lw_check_faulty(&check), own, "%d", i);
    check.holds = LW_HOLDS;
    cr_expect_not(lw_check_faulty(&check), "%d", i);
  }
}

/* Soil, surcharge and loads that add up to the whole keep each the height that it has by itself. By hand: the
 * ground without its loads pushes 8 at 0.6 m, of that the surcharge 2 at 0.9 m; loads push 3 at 1.2 m. */
Test(places, parts_that_add_up_keep_their_heights) {
  lw_push push = {.thrust = {.total_kn_per_m = 11.0,
                             .height_of_action_m = (8.0 * 0.6 + 3.0 * 1.2) / 11.0,
                             .surcharge_kn_per_m = 2.0,
                             .surcharge_height_m = 0.9},
                  .unloaded = {8.0, 0.6},
                  .by_loads = {3.0, 1.2},
                  .back = {.plane = {.height_m = 1.8}}};
  lw_push_divide(&push);
  cr_expect_float_eq(push.part[LW_PART_OF_SOIL].thrust_kn_per_m, 6.0, 1e-12);
  cr_expect_float_eq(push.part[LW_PART_OF_SOIL].height_m, (8.0 * 0.6 - 2.0 * 0.9) / 6.0, 1e-12);
  cr_expect_float_eq(push.part[LW_PART_OF_SURCHARGE].height_m, 0.9, 1e-12);
  cr_expect_float_eq(push.part[LW_PART_OF_LOADS].height_m, 1.2, 1e-12);
}

/* Formula and loads by elasticity push along the thrust, which leans: the wedge is used where it is more. */
Test(places, the_wedge_is_used_where_it_is_more_than_both) {
  int used = 0, tried = 0;
  for (int i = 0; i < 40; i++) {
    char force[40], distance[40];
    lw_print(force, sizeof force, "load 1 force=%d kN/m", 1 + i % 8);
    lw_print(distance, sizeof distance, "load 1 distance=%.2f m", 0.2 + 0.06 * i);
    lw_result *r = RUN("wall kind=section", "wall height=1.6 m", "top width=0.8 m", "base width=0.8 m",
                       "wall unit weight=23 kN/m3", "wall embedment=0 mm", "soil 1 friction angle=34 deg",
                       "wall friction=34 deg", "method pressure=coulomb", "site behind=bed",
                       "load 1 kind=line", force, distance);
    const lw_free_body *base = &r->situations.situation[0].base;
    tried += base->wedge_known;
    used += base->wedge_governs;
    cr_expect_eq(base->wedge_governs, base->wedge.thrust_kn_per_m > base->by_formula_kn_per_m * (1.0 + 1e-6),
                 "%s, %s", force, distance);
    free(r);
  }
  cr_expect(tried == 40 && used > 4 && used < 36, "%d of %d", used, tried);
}

/* Water in front holds the wall: under no set is it multiplied by what makes water behind heavier. */
Test(places, water_in_front_is_never_made_heavier) {
  static const char *const SETS[] = {"method format=en1997-da1-1", "method format=en1997-da2-geo",
                                     "method format=en1997-equ", "method format=lowwall"};
  for (int i = 0; i < 4; i++) {
    lw_result *r = RUN("wall kind=section", "wall height=1.2 m", "top width=0.7 m", "base width=0.7 m",
                       "wall unit weight=23 kN/m3", "wall embedment=0 mm", "soil 1 friction angle=33 deg",
                       "site behind=bed", "front water depth=0.5 m", "drain outlets=0", SETS[i]);
    int seen = 0;
    for (int s = 0; s < r->situations.count; s++) {
      const lw_force *front = force_of(&r->situations.situation[s].base, LW_FORCE_FRONT_WATER);
      if (!front) continue;
      seen++;
      cr_expect(fabs(front->horizontal_kn_per_m) <= 9.81 * 0.7 * 0.7 / 2.0 + 1e-9, "%s: %g", SETS[i],
                front->horizontal_kn_per_m);
    }
    cr_expect_lt(0, seen, "%s", SETS[i]);
    free(r);
  }
}
