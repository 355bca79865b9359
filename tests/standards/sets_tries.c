/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "sets_by_definition.h"
#include "../checks/support.h"

/* Of all tries at favourable and unfavourable loads the gravest answer is the one shown, also where every try
 * tips the wall. */

enum { WALLS = 60 };

typedef struct least {
  double sliding, overturning, pressed;
  bool tips, all_tip;
} least;

/* Where overturning is asked for, a try that tips is graver than any that does not. */
static void keep_overturning(const code_balance *b, const code_set *set, least *l) {
  bool tips = set->overturning && !b->inside;
  double has = b->holds / b->tips;
  if (tips == l->tips) l->overturning = fmin(l->overturning, has);
  if (tips && !l->tips) l->overturning = has;
  l->tips = l->tips || tips;
  l->all_tip = l->all_tip && tips;
}

static least least_of(const code_set *set, const lw_free_body *plain, double friction) {
  least l = {INFINITY, INFINITY, INFINITY, false, true};
  code_leaning all[CODE_LEANINGS];
  int count = code_leanings(set, all);
  for (int i = 0; i < count; i++) {
    code_balance b = code_balance_of(set, &all[i], plain);
    l.sliding = fmin(l.sliding, set->sliding * friction * fmax(b.down, 0.0) / b.level);
    l.pressed = fmin(l.pressed, b.pressed);
    keep_overturning(&b, set, &l);
  }
  return l;
}

Test(sets, the_gravest_try_is_the_one_shown) {
  dice d = {.state = 15};
  int tip = 0;
  for (int w = 0; w < WALLS; w++) {
    code_wall wall;
    code_wall_make(&d, &wall);
    for (int k = 0; k < CODE_SET_COUNT; k++) {
      const code_set *set = &CODE_SETS[k];
      random_wall items, design;
      char what[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
      code_wall_items(&wall, 1.0, 1.0, &items);
      code_wall_items(&wall, set->strength, set->undrained, &design);
      lw_result *plain = code_run(&design, "lowwall"), *factored = code_run(&items, set->format);
      lw_situation_name name = w % 2 ? LW_SITUATION_DRAINED : LW_SITUATION_PEOPLE_SITTING;
      const lw_free_body *base = &checks_test_situation(plain, name)->base;
      const lw_situation *situation = checks_test_situation(factored, name);
      random_wall_add(&items, "method format=%s", set->format);
      random_wall_name(&items, what, sizeof what);
      if (base->status == LW_OK) {
        least l = least_of(set, base, wall.friction / set->strength);
        code_expect(situation, LW_CHECK_SLIDING, l.sliding, what);
        code_expect(situation, LW_CHECK_OVERTURNING, l.overturning, what);
        code_expect(situation, LW_CHECK_COMPRESSION, l.pressed, what);
        tip += l.all_tip;
      }
      free(plain);
      free(factored);
    }
  }
  cr_expect(tip > 5, "every try tips %d walls: they tell nothing", tip);
}
