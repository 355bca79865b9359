/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "sets_by_definition.h"
#include "../checks/support.h"

/* [AASHTO-LRFD 11.6.2.3] overall stability at service loads: every factor of safety of the unfactored slip
 * times 0.65, and 1 is asked. */

enum { WALLS = 5 };

static const lw_check *slip_of(const lw_situation *s) {
  for (int i = 0; i < s->check_count; i++)
    if (s->kept[i].kind == LW_CHECK_SLIP) return checks_test_check(s, i);
  return NULL;
}

static random_wall wall_by(dice *d) {
  random_wall wall = {0};
  random_wall_plain(d, &wall);
  random_wall_add(&wall, "site behind=ground");
  random_wall_add(&wall, "soil 1 friction angle=%.4f deg", dice_between(d, 24.0, 38.0));
  random_wall_add(&wall, "footing soil friction angle=%.4f deg", dice_between(d, 22.0, 36.0));
  random_wall_add(&wall, "ground slope=%.4f deg", dice_between(d, 0.0, 15.0));
  random_wall_add(&wall, "load 1 kind=uniform");
  random_wall_add(&wall, "load 1 pressure=%.4f kPa", dice_between(d, 0.0, 8.0));
  if (dice_pick(d, 2)) random_wall_add(&wall, "seismic horizontal=%.4f", dice_between(d, 0.02, 0.1));
  return wall;
}

Test(sets, a_slip_counts_under_aashto_lrfd) {
  dice d = {.state = 11623};
  int shown = 0;
  for (int w = 0; w < WALLS; w++) {
    random_wall wall = wall_by(&d);
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    lw_result *plain = code_run(&wall, "lowwall"), *factored = code_run(&wall, "aashto-lrfd");
    random_wall_name(&wall, name, sizeof name);
    for (int i = 0; i < plain->situations.count; i++) {
      const lw_check *a = slip_of(&plain->situations.situation[i]);
      const lw_check *b = slip_of(&factored->situations.situation[i]);
      cr_assert_eq(a == NULL, b == NULL, "%s", name);
      if (!a || !a->has.known) continue;
      cr_expect(b->counts && b->needs.known && fabs(b->needs.value - 1.0) < 1e-12, "%s", name);
      cr_expect(checks_test_near(b->has.value, 0.65 * a->has.value, 1e-9), "%g, unfactored %g: %s",
                b->has.value, a->has.value, name);
      cr_expect_eq(b->holds == LW_HOLDS, 0.65 * a->has.value >= 1.0, "%s", name);
      shown++;
    }
    free(plain);
    free(factored);
  }
  cr_expect(shown >= 2 * WALLS, "%d slips", shown);
}
