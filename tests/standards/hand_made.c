/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <string.h>

#include "../sheet/support.h"
#include "standards/factor_set.h"
#include "standards/factors.h"
#include "standards/ground_factors.h"

/* Sets of factors of one or two rows each, made here: what each of them changes, and nothing else does. */

enum { ROWS = 4 };
typedef struct hand_made {
  lw_factor_row row[ROWS];
  int count;
  lw_factor_set set;
} hand_made;

static void add(hand_made *h, lw_factor need, double usual, double extreme) {
  lw_factor_row *row = &h->row[h->count++];
  *row = (lw_factor_row){.need = need, .needs = {usual, NAN, extreme}, .includes = -1, .next = -1};
  h->set.row[need] = row;
  h->set.any = row;
  h->set.has_factors = true;
}

/* Ground that an earthquake finds weaker by any of its strengths is other ground; loads do not matter. */
Test(hand_made, ground_is_the_same_where_every_strength_is) {
  static const struct {
    lw_factor need;
    bool of_ground;
  } rows[] = {{LW_FACTOR_FRICTION, true},           {LW_FACTOR_COHESION, true},
              {LW_FACTOR_UNDRAINED_COHESION, true}, {LW_FACTOR_PUSH_STRENGTH, true},
              {LW_FACTOR_COHESION_TIMES, true},     {LW_FACTOR_VARIABLE, false},
              {LW_FACTOR_PERMANENT, false},         {LW_FACTOR_SLIDING_RESISTANCE, false}};
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
    for (int differs = 0; differs < 2; differs++) {
      hand_made h = {.count = 0};
      add(&h, rows[i].need, 1.4, differs ? 1.1 : 1.4);
      bool same = !differs || !rows[i].of_ground;
      cr_expect_eq(lw_factor_set_same_ground(&h.set, LW_USUAL, LW_EXTREME), same, "row %zu", i);
      cr_expect_eq(lw_factor_set_same_ground(&h.set, LW_EXTREME, LW_USUAL), same, "row %zu", i);
      cr_expect(lw_factor_set_same_ground(&h.set, LW_USUAL, LW_UNUSUAL),
                "no figure of its own: the usual one");
    }
}

/* What varies may be away: by wind on a fence, a load or the surcharge alike a wall is tried with it and
 * without; where nothing varies there is one try. */
Test(hand_made, what_varies_is_tried_away) {
  for (int what = 0; what < 4; what++) {
    hand_made h = {.count = 0};
    lw_wall wall = {.site = {.load_count = what == 2 ? 1 : 0, .surcharge_kpa = what == 3 ? 5.0 : 0.0}};
    lw_load_case load_case = {.kind = LW_USUAL, .ground = {.wind_kn_per_m = what == 1 ? 0.4 : 0.0}};
    lw_factors factors[LW_LEANINGS];
    add(&h, LW_FACTOR_VARIABLE, 1.5, 1.5);
    add(&h, LW_FACTOR_VARIABLE_FAVOURABLE, 0.0, 0.0);
    int count = lw_factor_set_on_actions(&h.set, &load_case, &wall, factors);
    cr_expect_eq(count, what == 0 ? 1 : 2, "%d: %d tries", what, count);
    cr_expect_float_eq(factors[0].variable, 1.5, 1e-12);
    if (what > 0) cr_expect(fabs(factors[1].variable) + fabs(factors[1].level_push) <= 0.0);
  }
}

/* A set that nobody has asks nothing, and divides nothing. */
Test(hand_made, a_set_that_is_not_there_asks_nothing) {
  lw_factor_set_family family;
  lw_factor_set none;
  lw_factor_set_read(sheet_test_tables(), "no such set", &family);
  lw_factor_set_read_of(sheet_test_tables(), NULL, &none);
  cr_expect_eq(family.count, 1);
  cr_expect(!lw_factor_set_asks(&family.set[0]) && !lw_factor_set_asks(&none));
  cr_expect(!family.set[0].has_factors && family.set[0].any == NULL);
  cr_expect_float_eq(lw_factor_set_times(&none, LW_USUAL, LW_FACTOR_FRICTION, LW_FACTOR_FRICTION_TIMES), 1.0,
                     0.0);
}

/* A what-if is asked what an unusual situation is, not what is asked of every day. */
Test(hand_made, a_what_if_is_asked_what_is_asked_of_the_unusual) {
  const lw_factor_row row = {.needs = {1.5, 1.33, 1.1}};
  static const double asked[] = {
      [LW_USUAL] = 1.5, [LW_UNUSUAL] = 1.33, [LW_EXTREME] = 1.1, [LW_WHAT_IF] = 1.33};
  for (int kind = LW_USUAL; kind <= LW_WHAT_IF; kind++)
    cr_expect_float_eq(lw_factor_value(&row, (lw_situation_kind)kind).value, asked[kind], 0.0, "%d", kind);
}

/* Passive pressure is taken off the push where the set says 1, and where the sheet says so, whatever the
 * set. */
Test(hand_made, passive_is_taken_off_the_push_where_that_is_said) {
  for (int says = -1; says < 2; says++) {
    hand_made h = {.count = 0};
    lw_method method = {.passive_as_given = false};
    if (says >= 0) add(&h, LW_FACTOR_PASSIVE_AS, says, NAN);
    cr_expect_eq(lw_factor_set_passive_off_push(&h.set, &method), says == 1, "the set says %d", says);
    method = (lw_method){.passive_as_given = true, .passive_as = LW_PASSIVE_OFF_PUSH};
    cr_expect(lw_factor_set_passive_off_push(&h.set, &method));
    method.passive_as = LW_PASSIVE_RESISTANCE;
    cr_expect_not(lw_factor_set_passive_off_push(&h.set, &method));
  }
}

/* Water in front only ever holds: in no try does it have more than its favourable factor. */
Test(hand_made, water_in_front_is_favourable_in_every_try) {
  hand_made h = {.count = 0};
  lw_wall wall = {.site = {.load_count = 1}};
  lw_load_case load_case = {.kind = LW_USUAL};
  lw_factors factors[LW_LEANINGS];
  add(&h, LW_FACTOR_WATER, 1.4, NAN);
  add(&h, LW_FACTOR_WATER_FAVOURABLE, 0.9, NAN);
  int count = lw_factor_set_on_actions(&h.set, &load_case, &wall, factors);
  cr_expect_lt(1, count);
  for (int i = 0; i < count; i++) {
    cr_expect_float_eq(factors[i].front_water, 0.9, 0.0, "try %d", i);
    cr_expect(fabs(factors[i].water - 1.4) + fabs(factors[i].water - 0.9) < 0.5 + 1e-12, "try %d", i);
  }
}

/* On a cross-section: all that weighs takes the factor of what is permanent, its favourable one as a whole
 * where it is light; every load that of what varies; strength, length and the ground's shape take none. */
Test(hand_made, a_cross_section_takes_one_factor_a_source) {
  for (int light = 0; light < 2; light++) {
    hand_made h = {.count = 0};
    lw_slip_soil soil = {.friction_rad = 0.5,
                         .cohesion_kpa = 3.0,
                         .unit_weight_kn_per_m3 = 18.0,
                         .saturated_unit_weight_kn_per_m3 = 20.0,
                         .spare_kn_per_m3 = 2.0};
    lw_slip_ground g = {.soil_count = 1,
                        .soil = {soil},
                        .below = soil,
                        .raised_kn_per_m3 = 5.0,
                        .body_kn_per_m3 = 22.0,
                        .water = {.unit_weight_kn_per_m3 = 9.81},
                        .load_count = 2,
                        .load = {{.pressure_kpa = 7.0}, {.force_kn_per_m = 11.0, .below_m = 0.3}}};
    double times = light ? 0.95 : 1.35;
    add(&h, LW_FACTOR_PERMANENT, 1.35, NAN);
    add(&h, LW_FACTOR_PERMANENT_FAVOURABLE, 0.95, NAN);
    add(&h, LW_FACTOR_VARIABLE, 1.5, NAN);
    lw_factor_set_weigh_ground(&h.set, LW_USUAL, light, &g);
    for (const lw_slip_soil *s = &g.soil[0]; s; s = s == &g.below ? NULL : &g.below) {
      cr_expect_float_eq(s->unit_weight_kn_per_m3, 18.0 * times, 1e-12);
      cr_expect_float_eq(s->saturated_unit_weight_kn_per_m3, 20.0 * times, 1e-12);
      cr_expect_float_eq(s->spare_kn_per_m3, 2.0 * times, 1e-12);
      cr_expect(fabs(s->friction_rad - 0.5) + fabs(s->cohesion_kpa - 3.0) <= 0.0);
    }
    cr_expect_float_eq(g.raised_kn_per_m3, 5.0 * times, 1e-12);
    cr_expect_float_eq(g.body_kn_per_m3, 22.0 * times, 1e-12);
    cr_expect_float_eq(g.water.unit_weight_kn_per_m3, 9.81 * times, 1e-12);
    cr_expect_float_eq(g.load[0].pressure_kpa, 7.0 * 1.5, 1e-12);
    cr_expect_float_eq(g.load[1].force_kn_per_m, 11.0 * 1.5, 1e-12);
    cr_expect_float_eq(g.load[1].below_m, 0.3, 0.0);
  }
}
