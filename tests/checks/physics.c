/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "support.h"
#include "balance/contact.h"
#include "balance/forces.h"
#include "random_wall.h"

/* What must hold of a whole wall whatever the book: size, units, joints, water, no push. */

static const lw_situation *drained(const lw_result *result) {
  return checks_test_situation(result, LW_SITUATION_DRAINED);
}

static void expect_scaled(const lw_free_body *small, const lw_free_body *large, const char *method) {
  double thrust = large->thrust.total_kn_per_m / small->thrust.total_kn_per_m;
  double turns = large->contact.overturning_knm_per_m / small->contact.overturning_knm_per_m;
  double holds = large->contact.resisting_knm_per_m / small->contact.resisting_knm_per_m;
  cr_expect(checks_test_near(thrust, 4.0, 1e-6), "%s: thrust %.9g times", method, thrust);
  cr_expect(checks_test_near(turns, 8.0, 1e-6), "%s: overturning %.9g times", method, turns);
  cr_expect(checks_test_near(holds, 8.0, 1e-6), "%s: resisting %.9g times", method, holds);
}

Test(physics, twice_as_large_pushes_four_times_and_turns_eight_times) {
  static const char *const METHODS[] = {"method pressure=rankine", "method pressure=coulomb",
                                        "method pressure=wedge", "method pressure=at rest"};
  for (size_t i = 0; i < sizeof METHODS / sizeof METHODS[0]; i++) {
    lw_result *small =
        RUN("course count=5", "block height=137 mm", "block depth=419 mm", "setback=17 mm",
            "wall embedment=0 mm", "ground slope=7 deg", "load 1 kind=none", "wall friction=50 %",
            "soil 1 friction angle=31 deg", "drain outlets=1", METHODS[i]);
    lw_result *large =
        RUN("course count=5", "block height=274 mm", "block depth=838 mm", "setback=34 mm",
            "wall embedment=0 mm", "ground slope=7 deg", "load 1 kind=none", "wall friction=50 %",
            "soil 1 friction angle=31 deg", "drain outlets=1", METHODS[i]);
    for (int s = 0; s < 2; s++) {
      expect_scaled(&small->situations.situation[s].base, &large->situations.situation[s].base, METHODS[i]);
      for (int j = 0; j < small->situations.situation[s].joint_count; j++) {
        const lw_joint *a = &small->situations.situation[s].joint[j];
        const lw_joint *b = &large->situations.situation[s].joint[j];
        double thrust = b->thrust_kn_per_m / a->thrust_kn_per_m;
        cr_expect(checks_test_near(thrust, 4.0, 1e-6), "%s: joint %d, %.9g times", METHODS[i], j + 1, thrust);
      }
    }
    free(small);
    free(large);
  }
}

/* Every number of every check, and where it leads. */
static void expect_same_checks(const lw_result *a, const lw_result *b, double share) {
  cr_assert_eq(a->situations.count, b->situations.count);
  for (int s = 0; s < a->situations.count; s++) {
    const lw_situation *p = &a->situations.situation[s], *q = &b->situations.situation[s];
    cr_assert_eq(p->check_count, q->check_count);
    for (int i = 0; i < p->check_count; i++) {
      const lw_check *x = checks_test_check(p, i), *y = checks_test_check(q, i);
      cr_expect_eq(x->has.known, y->has.known);
      cr_expect_eq(x->holds, y->holds);
      if (x->kind == LW_CHECK_SLIP) { /* its least is flat: the circle may lie a little elsewhere */
        cr_expect(checks_test_near(x->has.value, y->has.value, 1e-4), "slip %d of %d", i, s);
        continue;
      }
      cr_expect(checks_test_near(x->demand.value, y->demand.value, share), "demand %d of %d", i, s);
      cr_expect(checks_test_near(x->resistance.value, y->resistance.value, share), "resistance %d of %d", i,
                s);
      cr_expect(checks_test_near(x->has.value, y->has.value, share), "has %d of %d", i, s);
    }
  }
}

/* 1 ft = 0.3048 m, 1 lb = 0.45359237 kg and 9.80665 m/s2 make the exact values in SI. */
Test(physics, feet_and_pounds_are_the_same_wall) {
  lw_result *feet = RUN("wall height=3 ft", "wall embedment=6 in", "block height=6 in", "block depth=14 in",
                        "setback=0.5 in", "block unit weight=135 pcf", "soil 1 friction angle=30 deg",
                        "soil 1 unit weight=118 pcf", "soil 1 saturated unit weight=128 lb/ft3",
                        "soil 1 cohesion=12 psf", "ground slope=1:6", "load 1 kind=uniform",
                        "load 1 pressure=50 psf", "allowable bearing=1500 psf", "drain outlets=1");
  lw_result *metres = RUN(
      "wall height=0.9144 m", "wall embedment=0.1524 m", "block height=152.4 mm", "block depth=355.6 mm",
      "setback=12.7 mm", "block unit weight=21.206807619243236 kN/m3", "soil 1 friction angle=30 deg",
      "soil 1 unit weight=18.53632073385705 kN/m3", "soil 1 saturated unit weight=20.10719537231951 kN/m3",
      "soil 1 cohesion=0.5745631077640301 kPa", "ground slope=9.462322208025618 deg", "load 1 kind=uniform",
      "load 1 pressure=2.394012949016792 kPa", "allowable bearing=71.82038847050374 kPa", "drain outlets=1");
  expect_same_checks(feet, metres, 1e-9);
  cr_expect_eq(feet->verdict.exit_status, metres->verdict.exit_status);
  free(feet);
  free(metres);
}

static void expect_joint_is_base(const lw_joint *joint, const lw_free_body *base, bool same_width) {
  const lw_contact *a = &joint->contact, *b = &base->contact;
  cr_expect(checks_test_near(joint->thrust_kn_per_m, base->thrust.total_kn_per_m, 1e-9));
  cr_expect(checks_test_near(a->horizontal_kn_per_m, b->horizontal_kn_per_m, 1e-9));
  cr_expect(checks_test_near(a->overturning_knm_per_m, b->overturning_knm_per_m, 1e-9));
  cr_expect(checks_test_near(a->vertical_kn_per_m, b->vertical_kn_per_m, 1e-9));
  cr_expect(checks_test_near(a->resisting_knm_per_m, b->resisting_knm_per_m, 1e-9));
  cr_expect(!same_width || checks_test_near(a->eccentricity_m, b->eccentricity_m, 1e-9));
  cr_expect(!same_width || checks_test_near(a->greatest_kpa, b->greatest_kpa, 1e-9));
}

/* The wall of only the courses above a joint, built for itself; where blocks step back the joint is narrower
 * than that wall's base, and only the forces are the same. */
Test(physics, a_joint_is_the_base_of_the_wall_above_it) {
  static const char *const SETBACKS[] = {"setback=0 mm", "setback=23 mm"};
  static const char *const METHODS[] = {"method pressure=rankine", "method pressure=coulomb"};
  for (int i = 0; i < 4; i++) {
    const char *setback = SETBACKS[i / 2], *method = METHODS[i % 2];
    lw_result *whole =
        RUN("course count=6", "block height=180 mm", "block depth=430 mm", setback, method,
            "wall embedment=0 mm", "ground slope=9 deg", "soil below top=40 mm", "cap height=60 mm",
            "load 1 kind=uniform", "load 1 pressure=3.3 kPa", "wall friction=60 %");
    for (int above = 1; above < 6; above++) {
      char count[32];
      lw_print(count, sizeof count, "course count=%d", above);
      lw_result *part =
          RUN(count, "block height=180 mm", "block depth=430 mm", setback, method, "wall embedment=0 mm",
              "ground slope=9 deg", "soil below top=40 mm", "cap height=60 mm", "load 1 kind=uniform",
              "load 1 pressure=3.3 kPa", "wall friction=60 %");
      const lw_joint *joint = &drained(whole)->joint[6 - above - 1];
      cr_assert_eq(joint->status, LW_OK);
      expect_joint_is_base(joint, &drained(part)->base, i / 2 == 0);
      const lw_situation *wet = checks_test_situation(whole, LW_SITUATION_OUTLET_BLOCKED);
      const lw_situation *wet_part = checks_test_situation(part, LW_SITUATION_OUTLET_BLOCKED);
      if (i / 2 == 0) expect_joint_is_base(&wet->joint[6 - above - 1], &wet_part->base, true);
      free(part);
    }
    free(whole);
  }
}

Test(physics, a_wall_without_push_holds) {
  lw_result *result = RUN("course count=4", "block height=200 mm", "block depth=300 mm", "people on cap=no",
                          "soil below top=800 mm", "load 1 kind=none", "site behind=bed", "drain outlets=1");
  for (int s = 0; s < 2; s++) {
    const lw_situation *situation = &result->situations.situation[s];
    for (int i = 0; i < situation->check_count; i++) {
      const lw_check *check = checks_test_check(situation, i);
      cr_expect_eq(check->holds, LW_HOLDS, "check %d in situation %d", i, s);
      bool moves = check->kind == LW_CHECK_SLIDING || check->kind == LW_CHECK_OVERTURNING ||
                   check->kind == LW_CHECK_TILTING;
      if (!moves) continue;
      cr_expect_eq(check->reason, LW_REASON_NO_DEMAND, "check %d in situation %d", i, s);
      cr_expect_not(check->ratio.known);
    }
  }
  free(result);
}

/* At 30 degrees: (buoyant x 1/3 + water) over (moist x 1/3). */
Test(physics, a_blocked_outlet_doubles_the_push) {
  lw_result *result = RUN("wall height=1 m", "wall embedment=0 mm", "top width=0.7 m", "base width=0.7 m",
                          "soil 1 friction angle=30 deg", "soil 1 unit weight=18 kN/m3",
                          "soil 1 saturated unit weight=20 kN/m3", "ground slope=0 deg", "load 1 kind=none",
                          "wall friction=0 deg");
  const lw_situation *wet = checks_test_situation(result, LW_SITUATION_OUTLET_BLOCKED);
  double times = wet->base.contact.horizontal_kn_per_m / drained(result)->base.contact.horizontal_kn_per_m;
  cr_expect(checks_test_near(times, (10.19 / 3.0 + 9.81) / 6.0, 1e-9), "%.6g times", times);
  cr_expect_lt(fabs(times - 2.2), 0.01);
  free(result);
}

/* Said to hold its tension, a base keeps its uplift a triangle; else the part that opens takes all of it. */
Test(physics, uplift_of_an_opening_base) {
  static const char *const PRESSURES[] = {"method base pressure=linear", "method base pressure=no tension"};
  double uplift[2];
  for (int i = 0; i < 2; i++) {
    lw_result *result = RUN("wall height=3.8 m", "wall embedment=0 m", "top width=3 m", "base width=3 m",
                            "wall unit weight=23.544 kN/m3", "water depth=0 m", "soil 1 unit weight=5 kN/m3",
                            "soil 1 saturated unit weight=9.81 kN/m3", "ground slope=0 deg",
                            "load 1 kind=none", PRESSURES[i]);
    const lw_contact *contact = &drained(result)->base.contact;
    uplift[i] = contact->uplift_kn_per_m;
    cr_expect_lt(contact->share_in_compression, 1.0);
    double pressed = i == 0 ? 3.0 : 3.0 * contact->share_in_compression;
    double expected = 9.81 * 3.8 * (0.5 * pressed + (3.0 - pressed));
    cr_expect(checks_test_near(uplift[i], expected, 1e-9), "%.9g, %.9g", uplift[i], expected);
    free(result);
  }
  cr_expect_lt(uplift[0], uplift[1]);
}

/* Where the resultant falls in front, all of the base opens and the full head lifts it. */
Test(physics, uplift_of_a_base_that_tips) {
  lw_result *result = RUN("wall height=1.2 m", "wall embedment=0 m", "top width=0.3 m", "base width=0.3 m",
                          "water depth=0.1 m", "load 1 kind=none", "ground slope=0 deg");
  const lw_contact *contact = &drained(result)->base.contact;
  cr_expect_not(contact->inside);
  cr_expect(checks_test_near(contact->uplift_kn_per_m, 9.81 * 1.1 * 0.3, 1e-9));
  free(result);
}

/* Head and contact agree: the head falls over just what is in compression, whatever stands on the base. */
Test(physics, uplift_agrees_with_what_it_leaves_pressed) {
  static lw_wall wall;
  static lw_forces forces;
  dice d = {20261126};
  int full = 0, opened = 0, tipped = 0;
  wall.site.water_unit_weight_kn_per_m3 = 9.81;
  wall.method.uplift_share = 1.0;
  for (int i = 0; i < 4000; i++) {
    lw_contact contact;
    lw_contact_terms terms = {
        .rear_m = dice_between(&d, 0.2, 2.0), .uplift = true, .contact = {1.0, 1.0}, .underside = {1.0, 1.0}};
    double width = terms.rear_m;
    terms.rear_head_m = i % 50 == 0 ? 0.0 : dice_between(&d, 0.0, 2.0);
    terms.front_head_m = dice_between(&d, 0.0, i % 50 == 0 ? 0.5 : terms.rear_head_m);
    forces.count = 0;
    lw_forces_add(&forces, (lw_force){.kind = LW_FORCE_PART,
                                      .vertical_kn_per_m = dice_between(&d, 1.0, 60.0) * width,
                                      .horizontal_kn_per_m = dice_between(&d, 0.0, 20.0),
                                      .x_m = 0.5 * width,
                                      .y_m = dice_between(&d, 0.1, 1.0)});
    lw_contact_solve(&wall, &terms, &forces, &contact, NULL);
    bool tips = contact.vertical_kn_per_m <= 0.0 || contact.resultant_m <= 0.0;
    bool opens = contact.eccentricity_m > width / 6.0 * (1.0 + 1e-9);
    double pressed = tips ? 0.0 : opens ? 3.0 * contact.resultant_m : width;
    double head =
        0.5 * (terms.rear_head_m + terms.front_head_m) * pressed + terms.rear_head_m * (width - pressed);
    *(tips ? &tipped : opens ? &opened : &full) += 1;
    cr_expect(checks_test_near(contact.uplift_kn_per_m, 9.81 * head, 1e-9), "wall %d: %.12g of %.12g", i,
              contact.uplift_kn_per_m, 9.81 * head);
  }
  cr_expect(full > 300 && opened > 300 && tipped > 300, "%d full, %d opened, %d tipped", full, opened,
            tipped);
}
