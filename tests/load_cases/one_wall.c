/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"
#include "../checks/random_wall.h"
#include "../checks/support.h"

/* Two walls nearer than 0.6 of the lower one's height are one wall, and no check of one of them shows that it
 * stands: whatever the set of factors asks and whatever method the sheet chooses. */

enum { WALLS = 8 };

static const char *const METHODS[] = {"bishop", "ordinary", "not"};

static void place_other(dice *d, random_wall *wall, double height_m, double heights) {
  bool above = dice_pick(d, 2);
  double other = dice_between(d, 0.2, 1.5), lower = above ? height_m : other;
  random_wall_add(wall, "other wall side=%s", above ? "above" : "below");
  random_wall_add(wall, "other wall height=%.6f m", other);
  random_wall_add(wall, "other wall distance=%.6f m", heights * lower);
}

/* A stack that stands by itself under nearly any set. */
static random_wall stout(dice *d) {
  random_wall wall = {0};
  random_wall_add(&wall, "course count=%d", 2);
  random_wall_add(&wall, "block height=150 mm");
  random_wall_add(&wall, "wall embedment=50 mm");
  random_wall_add(&wall, "block depth=%.3f mm", dice_between(d, 1500.0, 2500.0));
  random_wall_add(&wall, "soil 1 friction angle=%.3f deg", dice_between(d, 34.0, 40.0));
  random_wall_add(&wall, "footing soil friction angle=%.3f deg", dice_between(d, 34.0, 40.0));
  random_wall_add(&wall, "base friction=0.6");
  random_wall_add(&wall, "allowable bearing=300 kPa");
  random_wall_add(&wall, "people on cap=no");
  random_wall_add(&wall, "ground slope=0 deg");
  random_wall_add(&wall, "site behind=%s", dice_pick(d, 2) ? "bed" : "ground");
  return wall;
}

static lw_holds stands_under(const random_wall *bare, const char *format, const char *slip,
                             lw_detail detail) {
  random_wall wall = *bare;
  lw_result *result = malloc(sizeof *result);
  cr_assert_not_null(result);
  random_wall_add(&wall, "method format=%s", format);
  random_wall_add(&wall, "method slip=%s", slip);
  lw_case c = random_wall_case(&wall);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), detail, result, NULL), LW_OK);
  lw_holds stands = result->verdict.stands;
  free(result);
  return stands;
}

/* gives how many of the sets hold */
static int hold_under_any(const random_wall *wall) {
  const lw_tables *tables = sheet_test_tables();
  int hold = 0;
  for (int i = 0; i < tables->factor_count; i++) {
    const char *format = tables->factor[i].factor_set;
    if (i > 0 && strcmp(format, tables->factor[i - 1].factor_set) == 0) continue;
    hold += stands_under(wall, format, METHODS[i % 3], i % 2 ? LW_DETAIL_VERDICT : LW_DETAIL_EVERYTHING) ==
            LW_HOLDS;
  }
  return hold + (stands_under(wall, "lowwall", "not", LW_DETAIL_EVERYTHING) == LW_HOLDS);
}

Test(one_wall, no_set_and_no_method_shows_two_walls_too_near_to_stand) {
  char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  dice d = {.state = 606};
  int apart_hold = 0;
  for (int i = 0; i < WALLS; i++) {
    random_wall near = stout(&d), apart = near;
    place_other(&d, &near, 0.25, dice_between(&d, 0.02, 0.59));
    place_other(&d, &apart, 0.25, 30.0);
    cr_expect_eq(hold_under_any(&near), 0, "%s", random_wall_name(&near, name, sizeof name));
    apart_hold += hold_under_any(&apart);
  }
  cr_expect(apart_hold > 2 * WALLS, "only %d hold with the other wall far off: the walls tell nothing",
            apart_hold);
}
