/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <string.h>

#include "../sheet/support.h"
#include "standards/factor_set.h"
#include "standards/factors.h"

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
