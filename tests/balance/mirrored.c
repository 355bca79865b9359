/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>

#include "../checks/support.h"
#include "../report/told.h"
#include "balance/contact.h"
#include "balance/taper.h"

/* A contact seen from behind: turned round, its edges change places and nothing else changes. */

static const double WIDTH = 0.6, UPRIGHT = 25.0;

typedef struct shape {
  lw_taper taper;
  double shell_m;
} shape;

static const shape SHAPES[] = {
    {{1.0, 1.0}, 0.0}, {{1.0, 1.0}, 0.04}, {{1.0, 0.6}, 0.0}, {{1.0, 0.6}, 0.04}, {{0.8, 0.8}, 0.04}};
enum { SHAPE_COUNT = sizeof SHAPES / sizeof *SHAPES };

static lw_contact contact_of(const shape *s, lw_taper taper, lw_base_pressure by, double at_m, told *t) {
  lw_method method = {.base_pressure = by};
  lw_contact_terms terms = {.rear_m = WIDTH, .shell_m = s->shell_m, .contact = taper, .underside = taper};
  lw_forces forces = {.count = 1};
  forces.force[0] = (lw_force){.kind = LW_FORCE_PART, .vertical_kn_per_m = UPRIGHT, .x_m = at_m};
  lw_contact found, heard;
  lw_working working = told_listen(t);
  lw_contact_balance(&method, &terms, &forces, &found, NULL);
  lw_contact_balance(&method, &terms, &forces, &heard, &working);
  cr_expect(!(fabs(found.front_kpa - heard.front_kpa) > 0.0) &&
            !(fabs(found.rear_kpa - heard.rear_kpa) > 0.0));
  return found;
}

static void expect_turned(const lw_contact *a, const lw_contact *b, const char *where) {
  cr_expect_eq(a->inside, b->inside, "%s", where);
  cr_expect(checks_test_near(a->front_kpa, b->rear_kpa, 1e-9), "%s: %g, %g", where, a->front_kpa,
            b->rear_kpa);
  cr_expect(checks_test_near(a->rear_kpa, b->front_kpa, 1e-9), "%s: %g, %g", where, a->rear_kpa,
            b->front_kpa);
  cr_expect(checks_test_near(a->greatest_kpa, b->greatest_kpa, 1e-9), "%s", where);
  cr_expect(checks_test_near(a->compressed_m, b->compressed_m, 1e-9), "%s", where);
  cr_expect(checks_test_near(a->share_in_compression, b->share_in_compression, 1e-9), "%s", where);
  cr_expect(checks_test_near(a->effective_width_m, b->effective_width_m, 1e-9), "%s", where);
  cr_expect(checks_test_near(a->kern_m, b->kern_behind_m, 1e-9), "%s", where);
}

/* The pressure at the edge that is pressed most stands in the working, whichever edge that is. */
static void expect_told(const lw_contact *c, const told *t, const char *where) {
  static const char *const EDGES[] = {"pf", "pr", "pn", "p"};
  bool found = !c->inside;
  for (int i = 0; i < 4; i++) found = found || fabs(told_value(t, EDGES[i]) - c->greatest_kpa) < 1e-9;
  cr_expect(found, "%s: %g kPa is not told", where, c->greatest_kpa);
  cr_expect_eq(t->wrong, 0, "%s: %s", where, t->first_wrong);
}

Test(contact, turned_round_is_the_same_contact) {
  static const double AT[] = {-0.01, 0.008, 0.03, 0.08, 0.15, 0.22, 0.27, 0.3};
  static const lw_base_pressure BY[] = {LW_BASE_NO_TENSION, LW_BASE_LINEAR, LW_BASE_EFFECTIVE};
  for (int s = 0; s < SHAPE_COUNT; s++)
    for (int b = 0; b < 3; b++)
      for (int i = 0; i < (int)(sizeof AT / sizeof *AT); i++) {
        char where[80];
        told front, rear;
        lw_taper taper = SHAPES[s].taper, turned = lw_taper_turned(taper);
        lw_print(where, sizeof where, "shape %d, pressure %d, at %g", s, b, AT[i]);
        lw_contact one = contact_of(&SHAPES[s], taper, BY[b], AT[i], &front);
        lw_contact other = contact_of(&SHAPES[s], turned, BY[b], WIDTH - AT[i], &rear);
        expect_turned(&one, &other, where);
        expect_told(&one, &front, where);
        expect_told(&other, &rear, where);
      }
}

/* Courses that meet on no width, or stand beside one another, bear nothing: no pressure can be told. */
Test(contact, on_no_width_bears_nothing) {
  for (int s = 0; s < SHAPE_COUNT; s++)
    for (double width = 0.0; width > -0.2; width -= 0.1) {
      lw_method method = {.base_pressure = LW_BASE_NO_TENSION};
      lw_contact_terms terms = {.rear_m = width, .contact = SHAPES[s].taper, .underside = SHAPES[s].taper};
      lw_forces forces = {.count = 1};
      lw_contact found;
      forces.force[0] = (lw_force){.kind = LW_FORCE_PART, .vertical_kn_per_m = UPRIGHT, .x_m = 0.5 * width};
      lw_contact_balance(&method, &terms, &forces, &found, NULL);
      cr_expect_not(found.inside);
      cr_expect_eq(found.greatest_kpa, 0.0);
      cr_expect(isfinite(found.kern_m + found.area_m2 + found.resultant_m));
    }
}

/* Water in front alone of a joint that lets it out lifts nothing, and so stands nowhere. */
Test(contact, water_in_front_of_an_open_joint_lifts_nothing) {
  lw_wall wall = {.method = {.uplift_share = 1.0}, .site = {.water_unit_weight_kn_per_m3 = 9.81}};
  lw_taper taper = {1.0, 0.6};
  lw_contact_terms terms = {.rear_m = WIDTH, .contact = taper, .underside = taper, .front_head_m = 0.4};
  lw_forces forces = {.count = 1};
  lw_contact found;
  forces.force[0] = (lw_force){.kind = LW_FORCE_PART, .vertical_kn_per_m = UPRIGHT, .x_m = 0.3};
  lw_contact_solve(&wall, &terms, &forces, &found, NULL);
  cr_expect_eq(forces.count, 2);
  cr_expect(fabs(forces.force[1].vertical_kn_per_m) <= 0.0 && isfinite(forces.force[1].x_m));
  cr_expect_float_eq(found.vertical_kn_per_m, UPRIGHT, 1e-12);
}
