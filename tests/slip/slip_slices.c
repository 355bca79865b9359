/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>

#include <lowwall/ground.h>

#include "../checks/support.h"
#include "../report/told.h"
#include "slip/parts.h"

/* Slices that somebody lists, in places where the answer is known by hand. */

static const double DEG = 57.295779513082320877;

/* One slice of a plane at an angle: 1 m wide. */
static lw_slip_slice slice_at(double angle_deg, double phi_deg, double weight) {
  double a = angle_deg / DEG;
  return (lw_slip_slice){.width_m = 1.0,
                         .length_m = 1.0 / cos(a),
                         .weight_kn_per_m = weight,
                         .sine = sin(a),
                         .cosine = cos(a),
                         .tan_friction = tan(phi_deg / DEG)};
}

static lw_slip_slices one(lw_slip_slice slice) {
  return (lw_slip_slices){.count = 1, .slice = {slice}};
}

/* Soil without cohesion on a plane has tan phi/tan alpha by either method, however steep the plane and
 * however little it holds: Bishop's equation is looked for from 0.1 there, and on a steep one as in 1955.
 * [TAYLOR1948 infinite slope] */
Test(slip_slices, a_dry_plane_has_its_friction_over_its_slope) {
  static const double ANGLE[] = {8.0, 25.0, 47.0, 68.0, 73.5}, PHI[] = {0.7, 4.0, 19.0, 33.0, 44.0};
  for (int i = 0; i < 25; i++) {
    double angle = ANGLE[i / 5], phi = PHI[i % 5], factor = tan(phi / DEG) / tan(angle / DEG);
    lw_slip_slices list = one(slice_at(angle, phi, 18.0));
    lw_slip ordinary, bishop;
    told t;
    lw_working working = told_listen(&t);
    cr_expect_eq(lw_slip_of_slices(&list, NULL, 0.0, LW_SLIP_ORDINARY, &ordinary, &working), LW_OK);
    cr_expect_float_eq(ordinary.ordinary, factor, 1e-12);
    bool far = sin(angle / DEG) > 0.94 && factor < 0.1; /* too slow to settle in a hundred rounds */
    if (far) continue;
    cr_expect_eq(lw_slip_of_slices(&list, NULL, 0.0, LW_SLIP_BISHOP, &bishop, NULL), LW_OK);
    cr_expect(checks_test_near(bishop.bishop, factor, 1e-7), "%g, %g: %g", angle, phi, bishop.bishop);
    cr_expect_eq(t.wrong, 0, "%g, %g: %s", angle, phi, t.first_wrong);
    cr_expect_float_eq(told_value(&t, "F0"), fmax(factor, 0.1), 1e-9);
  }
}

/* Ground that has no strength holds nothing: 0 by ordinary slices, and no answer by Bishop's equation, in
 * which 0 stands below a line. */
Test(slip_slices, ground_without_strength_holds_nothing) {
  lw_slip_slices list = one(slice_at(30.0, 0.0, 18.0));
  lw_slip slip = {.bishop = 7.0};
  told t;
  lw_working working = told_listen(&t);
  cr_expect_eq(lw_slip_of_slices(&list, NULL, 0.0, LW_SLIP_BISHOP, &slip, NULL), LW_NO_SOLUTION);
  cr_expect_eq(slip.bishop, 7.0, "unchanged on failure");
  cr_expect_eq(lw_slip_of_slices(&list, NULL, 0.0, LW_SLIP_ORDINARY, &slip, &working), LW_OK);
  cr_expect_float_eq(slip.ordinary, 0.0, 1e-15);
  cr_expect_float_eq(slip.bishop, 0.0, 1e-15);
  cr_expect(isnan(told_value(&t, "F0")) && told_value(&t, "Fo") <= 0.0, "nothing is told of Bishop's");
  lw_slip_forces bare = lw_slip_forces_of(&list.slice[0], NULL, 0.0, 0.0);
  cr_expect_float_eq(bare.driving_kn_per_m, 9.0, 1e-12);
  cr_expect(bare.m_alpha <= 0.0 && bare.bishop_kn_per_m <= 0.0);
}

/* A slice on edge would hold without end. */
Test(slip_slices, a_slice_on_edge_has_no_answer) {
  lw_slip_slices list = one(slice_at(30.0, 20.0, 18.0));
  lw_slip slip = {.bishop = 7.0};
  list.count = 2;
  list.slice[1] = (lw_slip_slice){
      .width_m = 1.0, .length_m = 1.0, .weight_kn_per_m = 1e-3, .cosine = 1e-320, .tan_friction = 1e6};
  cr_expect_eq(lw_slip_of_slices(&list, NULL, 0.0, LW_SLIP_BISHOP, &slip, NULL), LW_NO_SOLUTION);
  cr_expect_eq(slip.bishop, 7.0);
}

/* Each number of a list that is none, and an earthquake that cannot be. */
Test(slip_slices, one_bad_number_has_no_answer) {
  lw_slip_slices good = one(slice_at(30.0, 20.0, 18.0));
  lw_slip slip = {.bishop = 7.0};
  lw_slip_slice *s = &good.slice[0];
  double *const each[] = {&s->width_m,      &s->length_m, &s->weight_kn_per_m, &s->pore_kpa, &s->tan_friction,
                          &s->cohesion_kpa, &s->sine,     &s->cosine};
  for (size_t i = 0; i < sizeof each / sizeof *each; i++) {
    static const double BAD[] = {NAN, INFINITY, -INFINITY, 1e10};
    double was = *each[i];
    for (int k = 0; k < 4; k++) {
      *each[i] = BAD[k];
      cr_expect_eq(lw_slip_of_slices(&good, NULL, 0.0, LW_SLIP_BISHOP, &slip, NULL), LW_NO_SOLUTION);
    }
    *each[i] = was;
  }
  static const double KH[] = {-0.1, 1.0, NAN};
  for (int k = 0; k < 3; k++)
    cr_expect_eq(lw_slip_of_slices(&good, NULL, KH[k], LW_SLIP_BISHOP, &slip, NULL), LW_NO_SOLUTION);
  good.count = 0;
  cr_expect_eq(lw_slip_of_slices(&good, NULL, 0.0, LW_SLIP_BISHOP, &slip, NULL), LW_NO_SOLUTION);
  good.count = LW_SLIP_SLICE_MAX + 1;
  cr_expect_eq(lw_slip_of_slices(&good, NULL, 0.0, LW_SLIP_BISHOP, &slip, NULL), LW_NO_SOLUTION);
  cr_expect_eq(slip.bishop, 7.0, "unchanged on failure");
}

/* A load over ground that water lifts whole neither holds nor, at its flat base, drives much: taken off it
 * would seem to help, and does not. Whichever is worse stands: with it or without. */
Test(slip_slices, of_with_and_without_a_load_the_worse_stands) {
  for (double pore = 0.0; pore < 60.0; pore += 4.0) {
    lw_slip_slices list = one(slice_at(40.0, 25.0, 30.0)), with, without;
    lw_slip found, a, b;
    list.count = 2;
    list.slice[1] = slice_at(9.0, 38.0, 20.0 + 6.0);
    list.slice[1].load_kn_per_m = 6.0;
    list.slice[1].pore_kpa = pore;
    with = without = list;
    without.slice[1].weight_kn_per_m -= 6.0;
    cr_assert_eq(lw_slip_of_slices(&with, NULL, 0.0, LW_SLIP_ORDINARY, &a, NULL), LW_OK);
    cr_assert_eq(lw_slip_of_slices(&without, NULL, 0.0, LW_SLIP_ORDINARY, &b, NULL), LW_OK);
    cr_assert_eq(lw_slip_worse(&list, NULL, 0.0, LW_SLIP_ORDINARY, &found), LW_OK);
    cr_expect_float_eq(found.ordinary, fmin(a.ordinary, b.ordinary), 1e-12, "pore %g: %g of %g, %g", pore,
                       found.ordinary, a.ordinary, b.ordinary);
  }
}

/* Water that lifts more than the soil weighs leaves cohesion alone. [TAYLOR1948 infinite slope] */
Test(slip_slices, a_lifted_slope_is_held_by_its_cohesion_alone) {
  lw_slip_soil soil = {.friction_rad = 33.0 / DEG, .cohesion_kpa = 4.0, .unit_weight_kn_per_m3 = 18.0};
  double slope = 20.0 / DEG, by_hand = 4.0 / (18.0 * 1.5 * sin(slope) * cos(slope));
  for (double lifts = 27.0; lifts < 40.0; lifts += 5.0) {
    told t;
    lw_working working = told_listen(&t);
    double found = lw_slip_infinite(&soil, slope, 1.5, lifts, &working);
    cr_expect_float_eq(found, by_hand, 1e-12);
    cr_expect(t.worked_out == 1 && t.wrong == 0, "%s", t.first_wrong);
  }
}

/* A level push lifts a slice off its base: of W cos a goes kh W sin a. By hand, 18 kN/m at 30 degrees, kh
 * 0.1: (15.588 - 0.9) tan 30 = 8.480 kN/m; 4 kPa of water on 1.1547 m of base leave 8.480 - 2.667. */
Test(slip_slices, a_level_push_takes_off_what_presses_on_the_base) {
  lw_slip_slice s = slice_at(30.0, 30.0, 18.0);
  cr_expect_float_eq(lw_slip_forces_of(&s, NULL, 0.0, 0.0).ordinary_kn_per_m, 9.0, 1e-9);
  cr_expect_float_eq(lw_slip_forces_of(&s, NULL, 0.1, 0.0).ordinary_kn_per_m, 8.4804, 5e-4);
  s.pore_kpa = 4.0;
  cr_expect_float_eq(lw_slip_forces_of(&s, NULL, 0.1, 0.0).ordinary_kn_per_m, 5.8137, 5e-4);
}

/* Where a slice at the foot is so steep that Bishop's divisor comes near to nothing, or below it, his sum
 * means nothing: less than 0.2 is no answer. Of what drives here the foot takes next to nothing away. */
Test(slip_slices, a_foot_too_steep_has_no_answer_by_bishop) {
  int with = 0, without = 0;
  for (double angle = -20.0; angle > -68.0; angle -= 4.0) {
    lw_slip_slices list = one(slice_at(40.0, 35.0, 100.0));
    lw_slip slip;
    list.slice[list.count++] = slice_at(angle, 35.0, 0.01);
    bool answer = lw_slip_of_slices(&list, NULL, 0.0, LW_SLIP_BISHOP, &slip, NULL) == LW_OK;
    /* The great slice alone has tan 35/tan 40. */
    double factor = tan(35.0 / DEG) / tan(40.0 / DEG);
    double divisor = cos(angle / DEG) + sin(angle / DEG) * tan(35.0 / DEG) / factor;
    if (fabs(divisor - 0.2) > 0.03) cr_expect_eq(answer, divisor > 0.2, "%g: %g", angle, divisor);
    with += answer ? 1 : 0, without += answer ? 0 : 1;
  }
  cr_expect(with > 2 && without > 2, "%d with an answer, %d without", with, without);
}
