/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/random_wall.h"
#include "../sheet/support.h"
#include "contacts.h"
#include "load_cases/load_case.h"
#include "standards/factor_set.h"
#include "standards/factors.h"
#include "tables/known.h"
#include "wall/wall.h"

/* At rest no wedge carries what pushes the ground level: it is taken whole, where the line of the table meets
 * the wall, and not at all where that line passes below its foot. */

enum { WALLS = 40 / RANDOM_SHARE };

static const lw_push *base_push(const lw_wall *wall) {
  static test_contact contact[CONTACTS_MAX];
  lw_load_case load_case = {.situation = LW_SITUATION_DRAINED, .kind = LW_USUAL};
  lw_factor_set set;
  load_case.ground.water_depth_m = INFINITY;
  lw_factor_set_read_of(sheet_test_tables(), &sheet_test_tables()->factor[0], &set);
  lw_load_case_ground(wall, &set, &load_case, NULL);
  int count = contacts_of(wall, &load_case.ground, contact);
  for (int i = 0; i < count; i++)
    if (contact[i].place.at == LW_AT_BASE) return &contact[i].push;
  cr_assert(false, "no base");
  return NULL;
}

static lw_wall wall_of(const lw_tables *tables, dice *d) {
  lw_wall wall;
  random_wall items = {0};
  random_wall_add(&items, "course count=%d", 2 + dice_pick(d, 5));
  random_wall_add(&items, "block height=200 mm");
  random_wall_add(&items, "block depth=400 mm");
  random_wall_add(&items, "method pressure=at rest");
  random_wall_add(&items, "load 1 kind=line");
  random_wall_add(&items, "load 1 force=0 kN/m");
  random_wall_add(&items, "load 1 distance=%.3f m", dice_between(d, 0.0, 1.5));
  random_wall_add(&items, "load 1 below ground=%.3f m", dice_between(d, 0.0, 0.3));
  lw_case c = random_wall_case(&items);
  lw_wall_build(&c, tables, &wall);
  return wall;
}

Test(push_at_rest, is_whole_where_the_line_of_the_table_meets_the_wall) {
  lw_tables *tables = malloc(sizeof *tables);
  cr_assert_not_null(tables);
  *tables = *sheet_test_tables();
  double *line = &tables->threshold[tables->known[LW_THRESHOLD_REACH_LINE]].value;
  dice d = {450};
  int within = 0, beyond = 0;
  for (int i = 0; i < WALLS; i++) {
    *line = dice_between(&d, 0.3, 2.0);
    lw_wall wall = wall_of(tables, &d);
    double force = dice_between(&d, 0.1, 2.0);
    wall.site.load[0].push_kn_per_m = 0.0;
    lw_thrust still = base_push(&wall)->thrust;
    wall.site.load[0].push_kn_per_m = force;
    const lw_push *push = base_push(&wall);
    const lw_plane_load *load = &push->back.plane.load[0];
    double height = push->back.plane.height_m - load->below_m - load->near_m / *line;
    double taken = height > 0.0 ? force : 0.0;
    cr_expect_float_eq(push->thrust.total_kn_per_m - still.total_kn_per_m, taken, 1e-9);
    double turns = push->thrust.total_kn_per_m * push->thrust.height_of_action_m -
                   still.total_kn_per_m * still.height_of_action_m;
    cr_expect_float_eq(turns, taken * height, 1e-9, "%.9g, %.9g", turns, taken * height);
    within += height > 0.0;
    beyond += height <= 0.0;
  }
  cr_expect_lt(WALLS / 8, within);
  cr_expect_lt(WALLS / 8, beyond);
  free(tables);
}
