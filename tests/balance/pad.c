/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/support.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>

/* The pad under a wall: how the load spreads in it, and where its own weight is. */

#define WALL \
  "block height=200 mm", "block depth=600 mm", "course count=4", "wall embedment=200 mm", \
      "block unit weight=21 kN/m3", "soil 1 friction angle=33 deg", "soil 1 unit weight=18 kN/m3", \
      "site behind=bed", "drain outlets=2", "stone width=300 mm", "pad thickness=150 mm", "pad width=1.6 m", \
      "pad material=crushed rock"

static const lw_force *of_pad(const lw_free_body *body, lw_force_kind kind, int index) {
  for (int i = 0; i < body->forces.count; i++)
    if (body->forces.force[i].kind == kind && body->forces.force[i].index == index)
      return &body->forces.force[i];
  return NULL;
}

/* To each side by the spread times the thickness, where the pad has room: of 150 mm at 1 in 2 by 75 mm. */
Test(pad, load_spreads_to_both_sides) {
  double bare = 0.0;
  for (int percent = 0; percent <= 100; percent += 25) {
    char spread[40];
    snprintf(spread, sizeof spread, "pad spread=%.2f", percent / 100.0);
    lw_result *result = RUN(WALL, spread);
    const lw_free_body *pad = &checks_test_situation(result, LW_SITUATION_DRAINED)->pad;
    cr_assert(pad->status == LW_OK && pad->contact.inside);
    if (percent == 0) bare = pad->contact.width_m;
    cr_expect(checks_test_near(pad->contact.width_m, bare + 2.0 * percent / 100.0 * 0.15, 1e-9), "%s: %.4f",
              spread, pad->contact.width_m);
    free(result);
  }
}

/* Half its thickness below the base, standing and shaken: about the underside, half its thickness up. */
Test(pad, its_weight_is_in_its_middle) {
  lw_result *result = RUN(WALL, "seismic horizontal=0.1");
  const lw_free_body *pad = &checks_test_situation(result, LW_SITUATION_EARTHQUAKE)->pad;
  const lw_force *weight = of_pad(pad, LW_FORCE_PART, -1), *shaken = of_pad(pad, LW_FORCE_INERTIA, 2);
  cr_assert(weight != NULL && shaken != NULL);
  cr_expect(checks_test_near(weight->y_m, -0.075, 1e-12));
  cr_expect(checks_test_near(shaken->y_m, -0.075, 1e-12));
  free(result);
}

/* The blocks bear on the pad's stone, the pad on the ground: crushed rock has 144 kPa of the soils' table,
 * [IBC T.1806.2] 3000 psf, and the ground what is given for it. */
Test(pad, the_base_bears_on_its_stone_and_the_pad_on_the_ground) {
  lw_result *result = RUN(WALL, "allowable bearing=60 kPa");
  const lw_situation *drained = checks_test_situation(result, LW_SITUATION_DRAINED);
  int seen = 0;
  for (int i = 0; i < drained->check_count; i++) {
    const lw_check *check = checks_test_check(drained, i);
    if (check->kind != LW_CHECK_BEARING || (check->at != LW_AT_BASE && check->at != LW_AT_PAD)) continue;
    cr_expect(checks_test_near(check->resistance.value, check->at == LW_AT_BASE ? 144.0 : 60.0, 1e-9), "%.6g",
              check->resistance.value);
    seen++;
  }
  cr_expect_eq(seen, 2);
  free(result);
}
