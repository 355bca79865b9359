/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "sets_by_definition.h"
#include "../checks/support.h"

/* Walls on clay that is taken without friction, under every set. EN 1997-1: its strength has a factor of its
 * own, 1.4 [EN1997-1 T.A.2], [EN1997-1 T.A.4], and where water or air can get between clay and footing the
 * clay holds no more from sliding than 0.4 of the design weight [EN1997-1 6.5.3(12)]. */

enum { WALLS = 40 };
static const double PI = 3.14159265358979323846;

/* Annex D on clay at the surface, over V/B'. */
static double bearing_of(const code_set *set, const code_balance *b, double clay_kpa) {
  double held = b->effective_m * clay_kpa;
  if (!b->inside || b->level > held) return 0.0;
  double left = 0.5 * (1.0 + sqrt(1.0 - b->level / held));
  return set->bearing * (PI + 2.0) * clay_kpa * left / (b->down / b->effective_m);
}

/* gives whether the limit governs */
static bool hold(const code_wall *wall, const code_set *set, const lw_free_body *plain, const lw_situation *s,
                 const char *what) {
  code_leaning all[CODE_LEANINGS];
  double sliding = INFINITY, bearing = INFINITY, unlimited = INFINITY;
  int count = code_leanings(set, all);
  for (int i = 0; i < count; i++) {
    code_balance b = code_balance_of(set, &all[i], plain);
    /* What is in compression is the effective width, as in bearing. */
    double own = set->sliding * wall->adhesion_kpa / set->undrained * b.effective_m;
    unlimited = fmin(unlimited, own / b.level);
    sliding = fmin(sliding, fmin(own, set->of_weight * fmax(b.down, 0.0)) / b.level);
    bearing = fmin(bearing, bearing_of(set, &b, wall->clay_kpa / set->undrained));
  }
  code_expect(s, LW_CHECK_SLIDING, sliding, what);
  code_expect(s, LW_CHECK_BEARING, bearing, what);
  return sliding < 0.99 * unlimited;
}

Test(sets, clay_without_friction_has_its_own_factor_and_limit) {
  dice d = {.state = 613};
  int limited = 0;
  for (int w = 0; w < WALLS; w++) {
    code_wall wall;
    code_wall_on_clay(&d, &wall);
    for (int k = 0; k < CODE_SET_COUNT; k++) {
      const code_set *set = &CODE_SETS[k];
      random_wall items, design;
      char what[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
      code_wall_items(&wall, 1.0, 1.0, &items);
      code_wall_items(&wall, set->strength, set->undrained, &design);
      lw_result *plain = code_run(&design, "lowwall"), *factored = code_run(&items, set->format);
      const lw_free_body *base = &checks_test_situation(plain, LW_SITUATION_DRAINED)->base;
      random_wall_add(&items, "method format=%s", set->format);
      random_wall_name(&items, what, sizeof what);
      const lw_situation *drained = checks_test_situation(factored, LW_SITUATION_DRAINED);
      if (base->status == LW_OK) limited += hold(&wall, set, base, drained, what);
      free(plain);
      free(factored);
    }
  }
  cr_expect(limited > WALLS, "the limit governs %d times", limited);
}

/* By hand: 22 x 0.8 = 17.6 kN/m of wall on clay of 50 kPa, 40 kPa of adhesion; 18 kN/m3 at 32 degrees push
 * with 0.30726 x 9 = 2.7653, times 1.35. The clay would hold 40 x 0.8 = 32, 8.6 of what is asked; it counts
 * with 0.4 x 17.6 = 7.04, 1.886 of it. With tan 32/1.25 the push is 0.38204 x 9 = 3.4383, and 7.04 of it are
 * 2.0475. */
Test(sets, sliding_on_clay_by_hand) {
  static const struct {
    const char *format;
    double has;
  } rows[] = {{"method format=en1997-da1-1", 1.886}, {"method format=en1997-da1-2", 2.0475}};
  for (int i = 0; i < 2; i++) {
    lw_result *r =
        RUN("wall kind=section", "wall height=1 m", "wall embedment=0 m", "base width=0.8 m",
            "top width=0.8 m", "wall unit weight=22 kN/m3", "soil 1 friction angle=32 deg",
            "soil 1 unit weight=18 kN/m3", "ground slope=0 deg", "load 1 kind=none", "people on cap=no",
            "footing soil friction angle=0 deg", "footing soil cohesion=50 kPa", "base adhesion=40 kPa",
            "base friction=0", "wall friction=0 deg", rows[i].format);
    const lw_check *check =
        checks_test_at_base(checks_test_situation(r, LW_SITUATION_DRAINED), LW_CHECK_SLIDING);
    cr_expect(fabs(check->has.value - rows[i].has) < 1e-3, "%s: %.4f", rows[i].format, check->has.value);
    free(r);
  }
}
