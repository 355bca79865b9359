/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "balance/ground.h"
#include "balance/push_guard.h"
#include "balance/free_body.h"
#include "balance/weigh.h"
#include "../checks/support.h"
#include "load_cases/governing.h"
#include "load_cases/kept.h"
#include "load_cases/situations.h"
#include "wall/wall.h"

/* What no sheet can make, a fault of the program could: a value that is no number, a push of nothing, a wedge
 * that disagrees. No verdict survives one. */

static lw_wall garden_wall(const char *more) {
  const char *arguments[] = {"course count=4",
                             "block height=150 mm",
                             "block depth=400 mm",
                             "block unit weight=22 kN/m3",
                             "setback=0 mm",
                             "soil 1 friction angle=32 deg",
                             "wall embedment=150 mm",
                             "soil 1 unit weight=18 kN/m3",
                             "ground slope=0 deg",
                             "soil below top=0 mm",
                             "load 1 kind=none",
                             "method slip=not",
                             "pad thickness=100 mm",
                             "pad width=600 mm",
                             "pad material=crushed rock",
                             more,
                             NULL};
  lw_case c = sheet_test_case(arguments);
  lw_wall wall;
  lw_wall_build(&c, sheet_test_tables(), &wall);
  return wall;
}

static lw_push push_of(const lw_wall *wall) {
  lw_ground ground;
  lw_stack base = {&wall->section, 0.0};
  lw_push push;
  lw_ground_own(wall, &ground);
  lw_push_find(wall, &ground, &base, NULL, &push, NULL);
  return push;
}

static void expect_doubt(const lw_wall *wall, const lw_push *push, lw_reason reason) {
  lw_ground ground;
  lw_stack base = {&wall->section, 0.0};
  lw_ground_own(wall, &ground);
  lw_reason doubt = lw_push_doubt(wall, &ground, &base, push);
  cr_expect_eq(doubt, reason, "%s, not %s", lw_reason_slug(doubt), lw_reason_slug(reason));
}

Test(checks, a_sound_push_is_in_no_doubt) {
  static const char *const methods[] = {"method pressure=coulomb", "method pressure=rankine",
                                        "method pressure=wedge", "method pressure=at rest"};
  for (size_t i = 0; i < sizeof methods / sizeof *methods; i++) {
    lw_wall wall = garden_wall(methods[i]);
    lw_push push = push_of(&wall);
    cr_expect_not(push.faulty, "%s", methods[i]);
    expect_doubt(&wall, &push, LW_REASON_NONE);
  }
}

/* Every number that a free body rests on, made none in turn: not there, and without end. */
Test(checks, a_push_with_a_value_that_is_no_number_is_faulty) {
  lw_wall wall = garden_wall("method pressure=rankine");
  lw_push push = push_of(&wall);
  double *const each[] = {&push.thrust.total_kn_per_m,
                          &push.thrust.horizontal_kn_per_m,
                          &push.thrust.vertical_kn_per_m,
                          &push.thrust.height_of_action_m,
                          &push.thrust.water_kn_per_m,
                          &push.thrust.surcharge_height_m,
                          &push.formula_kn_per_m,
                          &push.wedge.thrust_kn_per_m,
                          &push.wedge.height_of_action_m,
                          &push.elastic.push_kn_per_m,
                          &push.elastic.height_m,
                          &push.by_loads.thrust_kn_per_m,
                          &push.by_pushes.height_m,
                          &push.part[0].thrust_kn_per_m,
                          &push.part[1].height_m,
                          &push.back.plane.height_m,
                          &push.back.plane.batter_rad,
                          &push.back.ground_x_m,
                          &push.back.ground_y_m,
                          &push.back.top_x_m,
                          &push.back.top_y_m,
                          &push.back.foot_x_m,
                          &push.back.foot_y_m};
  for (size_t i = 0; i < sizeof each / sizeof *each; i++) {
    const double wrong[] = {NAN, INFINITY, -INFINITY};
    double was = *each[i];
    for (int k = 0; k < 3; k++) {
      *each[i] = wrong[k];
      expect_doubt(&wall, &push, LW_REASON_NOT_FINITE);
    }
    *each[i] = was;
  }
  expect_doubt(&wall, &push, LW_REASON_NONE);
}

/* As the library might be handed it, and as a fault in the geometry would leave it: no plane, so no push. */
Test(checks, soil_without_a_push_is_faulty) {
  lw_wall wall = garden_wall("method pressure=rankine");
  lw_push push = push_of(&wall);
  push.thrust.total_kn_per_m = 0.0;
  expect_doubt(&wall, &push, LW_REASON_NO_PUSH);
  push.back.plane.height_m = 0.0;
  expect_doubt(&wall, &push, LW_REASON_NO_PUSH);
  wall.site.soil[0].cohesion_kpa = 5.0;
  expect_doubt(&wall, &push, LW_REASON_NONE);
  wall.site.soil[0].cohesion_kpa = 0.0;
  /* Soil lies on a back that is no steeper than it would stand by itself, or lies below the contact. */
  push.back.plane.batter_rad = acos(0.0) - wall.site.soil[0].friction_rad;
  expect_doubt(&wall, &push, LW_REASON_NONE);
  push.back.plane.batter_rad = 0.0;
  wall.site.soil_below_top_m = wall.section.height_m;
  expect_doubt(&wall, &push, LW_REASON_NONE);
}

Test(checks, a_wedge_that_disagrees_is_faulty) {
  static const double off[] = {1.0 + 2e-6, 1.0 - 2e-6, 3.0, NAN};
  lw_wall wall = garden_wall("method pressure=rankine");
  lw_push first = push_of(&wall);
  lw_load_case load_case = {.actions = {.cap_load = true}};
  lw_stack base = {&wall.section, 0.0};
  lw_ground_own(&wall, &load_case.ground);
  for (size_t i = 0; i < sizeof off / sizeof *off; i++) {
    /* A wedge that is on file for the same figure, and wrong. */
    lw_trial_wedge_known searched = {true, first.back.plane, first.wedge};
    lw_push push;
    searched.wedge.thrust_kn_per_m *= off[i];
    lw_push_find(&wall, &load_case.ground, &base, &searched, &push, NULL);
    cr_expect(push.faulty);
    cr_expect_eq(push.reason, isnan(off[i]) ? LW_REASON_NOT_FINITE : LW_REASON_WEDGE_DISAGREES);
    lw_free_body body;
    lw_free_body_base(&wall, &load_case, &push, &body, NULL);
    cr_expect_eq(body.status, LW_NO_SOLUTION);
    cr_expect(body.faulty);
    cr_expect_eq(body.reason, push.reason);
  }
}

/* A wall with one wrong number in it, whatever else of it holds or falls short. */
static void expect_no_verdict(const lw_wall *wall, lw_reason reason, const char *what) {
  lw_situations *all = calloc(1, sizeof *all);
  int s = 0, c = 0;
  cr_assert_not_null(all);
  lw_situations_run(wall, sheet_test_tables(), LW_DETAIL_EVERYTHING, all);
  cr_expect_eq(all->stands, LW_CANNOT_SHOW, "%s", what);
  cr_assert(lw_situations_governing(all, &s, &c));
  const lw_check *check = checks_test_check(&all->situation[s], c);
  cr_expect(lw_check_faulty(check), "%s", what);
  cr_expect_eq(check->reason, reason, "%s: %s", what, lw_reason_slug(check->reason));
  cr_expect_not(check->has.known || check->ratio.known, "%s", what);
  free(all);
}

Test(checks, no_verdict_survives_a_value_that_is_no_number) {
  const double wrong[] = {NAN, INFINITY};
  for (int k = 0; k < 2; k++) {
    lw_wall wall = garden_wall("method pressure=coulomb"), bare = wall;
    double *const each[] = {&wall.site.soil_below_top_m,
                            &wall.site.soil[0].unit_weight_kn_per_m3,
                            &wall.site.base_friction,
                            &wall.site.surcharge_kpa,
                            &wall.site.pad.unit_weight_kn_per_m3,
                            &wall.section.height_m,
                            &wall.section.part[1].weight_kn_per_m,
                            &wall.section.part[3].x_m,
                            &wall.section.joint_friction};
    for (size_t i = 0; i < sizeof each / sizeof *each; i++) {
      char what[40];
      snprintf(what, sizeof what, "value %zu, %g", i, wrong[k]);
      *each[i] = wrong[k];
      expect_no_verdict(&wall, LW_REASON_NOT_FINITE, what);
      wall = bare;
    }
  }
}

/* One joint of a wall that falls short elsewhere is faulty: what falls short is not the verdict. */
Test(checks, a_fault_outweighs_what_falls_short) {
  lw_result *r = RUN("course count=4", "block height=200 mm", "block depth=200 mm",
                     "block unit weight=20 kN/m3", "soil 1 friction angle=30 deg", "method slip=not");
  lw_situations *all = &r->situations;
  int s = 0, c = 0;
  cr_assert_eq(all->stands, LW_FALLS_SHORT);
  lw_situation *last = &all->situation[all->count - 1];
  int faulty = last->check_count - 1;
  lw_check check = lw_situation_check(last, faulty);
  last->decides = false;
  last->check_count--;
  lw_check_not_shown(&check, LW_REASON_NO_PUSH);
  lw_situation_keep(last, &check);
  lw_situations_weigh(all);
  cr_expect_eq(all->stands, LW_CANNOT_SHOW);
  cr_assert(lw_situations_governing(all, &s, &c));
  cr_expect(s == all->count - 1 && c == faulty);
  free(r);
}

/* A result that is no number is none, whatever it is weighed by. */
Test(checks, a_ratio_that_is_no_number_is_not_weighed) {
  const lw_factor_row row = {.needs = {1.5, 1.3, 1.1}};
  const double wrong[] = {NAN, INFINITY, -INFINITY};
  for (int i = 0; i < 3; i++) {
    lw_check check = {.has = {wrong[i], true}, .counts = true};
    lw_check_weigh(&check, &row, LW_USUAL);
    cr_expect_eq(check.holds, LW_CANNOT_SHOW);
    cr_expect_eq(check.reason, LW_REASON_NOT_FINITE);
    cr_expect(lw_check_faulty(&check));
  }
}
