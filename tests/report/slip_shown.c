/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/result.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/random_wall.h"
#include "run/again.h"

/* The slices that are shown add up to the sums they are shown with, in an earthquake too. */

enum { WALLS = 40 / RANDOM_SHARE };

static void add_up(const lw_result *r, const lw_situation *s) {
  lw_slip_view view;
  double drives = 0.0, holds = 0.0, bishop = 0.0;
  if (!lw_again_slip(r, s, &view)) return;
  for (int i = 0; i < view.list.count; i++) {
    const lw_slip_forces *f = &view.force[i];
    drives += f->driving_kn_per_m + f->shaken_kn_per_m;
    holds += f->ordinary_kn_per_m;
    bishop += f->bishop_kn_per_m;
  }
  cr_expect_lt(fabs(drives - view.slip.driving_kn_per_m), 1e-9 * (1.0 + drives));
  cr_expect_lt(fabs(holds / drives - view.slip.ordinary), 1e-9 * (1.0 + view.slip.ordinary));
  cr_expect_lt(fabs(bishop / drives - view.slip.bishop), 1e-6 * (1.0 + view.slip.bishop));
}

Test(report, slices_shown_add_up_to_their_sums) {
  lw_result *r = malloc(sizeof *r);
  lw_tables *tables = malloc(sizeof *tables);
  dice d = {7};
  int shaken = 0;
  cr_assert(r && tables);
  cr_assert_eq(lw_tables_read(NULL, tables, NULL), LW_OK);
  for (int i = 0; i < WALLS; i++) {
    random_wall wall;
    random_wall_make(&d, &wall);
    random_wall_add(&wall, "site behind=ground");
    random_wall_add(&wall, "seismic horizontal=%.3f", dice_between(&d, 0.05, 0.2));
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, tables, LW_DETAIL_EVERYTHING, r, NULL), LW_OK);
    for (int k = 0; k < r->situations.count; k++) {
      const lw_situation *s = &r->situations.situation[k];
      shaken += s->name == LW_SITUATION_EARTHQUAKE && s->slip_known && s->slip.status == LW_OK ? 1 : 0;
      add_up(r, s);
    }
  }
  cr_expect_gt(shaken, WALLS / 4);
  free(tables);
  free(r);
}
