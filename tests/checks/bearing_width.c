/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "wall/wall.h"
#include "random_wall.h"
#include "support.h"

/* A theory says what the effective width bears, so it is held against the load over that width. */

enum { WALLS = 120 / RANDOM_SHARE };

static void make(dice *d, random_wall *items) {
  static const char *const BY[] = {"terzaghi", "meyerhof", "hansen", "vesic", "en1997"};
  items->count = 0;
  random_wall_add(items, "wall kind=section");
  random_wall_add(items, "wall height=%.4f m", dice_between(d, 0.4, 1.2));
  random_wall_add(items, "base width=%.4f m", dice_between(d, 0.4, 1.2));
  random_wall_add(items, "top width=%.4f m", dice_between(d, 0.2, 0.4));
  random_wall_add(items, "wall embedment=%.4f m", dice_between(d, 0.0, 0.4));
  random_wall_add(items, "footing soil friction angle=%.4f deg", dice_between(d, 20.0, 38.0));
  random_wall_add(items, "footing soil cohesion=%.4f kPa", dice_between(d, 0.0, 20.0));
  random_wall_add(items, "soil 1 friction angle=%.4f deg", dice_between(d, 25.0, 40.0));
  random_wall_add(items, "ground slope=0 deg");
  random_wall_add(items, "people on cap=no");
  random_wall_add(items, "method slip=not");
  random_wall_add(items, "method bearing=%s", BY[dice_pick(d, 5)]);
}

/* Blocks that taper bear on less than their length by their depth: on a width that is their area a metre. */
static void make_tapered(dice *d, random_wall *items) {
  static const char *const BY[] = {"terzaghi", "meyerhof", "hansen", "vesic", "en1997"};
  random_wall_plain(d, items);
  random_wall_add(items, "block length=400 mm");
  random_wall_add(items, "block tail length=%.6f mm", dice_between(d, 40.0, 380.0));
  random_wall_add(items, "footing soil friction angle=%.4f deg", dice_between(d, 20.0, 38.0));
  random_wall_add(items, "method slip=not");
  random_wall_add(items, "method bearing=%s", BY[dice_pick(d, 5)]);
}

/* One footing: what the check says, and what the routine of `lowwall bearing` makes of the same strip. */
static bool expect_one_footing(const lw_result *r, const char *name) {
  const lw_situation *drained = checks_test_situation(r, LW_SITUATION_DRAINED);
  const lw_check *check = checks_test_at_base(drained, LW_CHECK_BEARING);
  const lw_strip strip = drained->base_bears.strip;
  const lw_bearing_routine *by = lw_bearing_routine_of(r->wall.method.bearing);
  lw_bearing bearing;
  if (!drained->base_bears.known || by->ultimate(&strip, &bearing, NULL, NULL) != LW_OK) return false;
  double applied = strip.vertical_kn_per_m / bearing.effective_width_m;
  cr_expect(checks_test_near(check->demand.value, applied, 1e-9), "pressed %g, V/B' %g: %s",
            check->demand.value, applied, name);
  cr_expect(checks_test_near(check->has.value, bearing.ultimate_kpa / applied, 1e-9), "%s", name);
  return true;
}

static void expect_footings(void (*of)(dice *, random_wall *), int seed, int least) {
  dice d = {(unsigned long long)seed};
  int tried = 0;
  for (int i = 0; i < WALLS; i++) {
    char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
    random_wall items;
    of(&d, &items);
    lw_result *result = random_wall_run(&items);
    tried += expect_one_footing(result, random_wall_name(&items, name, sizeof name)) ? 1 : 0;
    free(result);
  }
  cr_expect_lt(least, tried, "%d footings", tried);
}

Test(bearing_width, check_and_bearing_agree_on_one_footing) {
  expect_footings(make, 3, WALLS / 2);
}

Test(bearing_width, and_under_blocks_that_taper) {
  expect_footings(make_tapered, 5, WALLS / 4);
}

#define WALL \
  "wall kind=section", "wall height=1 m", "base width=0.7 m", "top width=0.5 m", \
      "footing soil friction angle=30 deg", "soil 1 friction angle=32 deg", "ground slope=0 deg"

/* The word by itself: a theory takes the even pressure, a presumptive value the edge; a word that is given
 * stays. */
Test(bearing_width, own_follows_the_way_of_bearing) {
  static const struct {
    const char *bearing, *pressure;
    lw_base_pressure is;
  } rows[] = {{"method bearing=presumptive", "title=own", LW_BASE_NO_TENSION},
              {"method bearing=hansen", "title=own", LW_BASE_EFFECTIVE},
              {"title=no word", "method base pressure=own", LW_BASE_NO_TENSION},
              {"method bearing=en1997", "method base pressure=own", LW_BASE_EFFECTIVE},
              {"method bearing=vesic", "method base pressure=no tension", LW_BASE_NO_TENSION},
              {"method bearing=vesic", "method base pressure=linear", LW_BASE_LINEAR},
              {"method bearing=presumptive", "method base pressure=effective", LW_BASE_EFFECTIVE}};
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    lw_case c = CASE(WALL, rows[i].bearing, rows[i].pressure);
    static lw_wall wall;
    lw_wall_build(&c, sheet_test_tables(), &wall);
    cr_expect_eq(wall.method.base_pressure, rows[i].is, "row %zu", i);
  }
}
