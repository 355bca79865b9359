/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "support.h"

/* Friction of the back where the sheet does not say, against the rule in words, written a second time: half
 * the soil's angle behind blocks or stone laid dry; a third behind a smooth back, and on ground that nobody
 * has named or tested; three quarters of either behind a membrane; none on ground that is softer than firm,
 * or where natural clay lies against the wall. What is likely: 0.6, and a third against clay. */

typedef struct wall {
  const char *back, *lining, *behind, *soil, *stone, *footing, *tested;
} wall;

/* By their names, as a person would sort them. */
static bool is_soft(const char *name) {
  static const char *const soft[] = {
      "soft clay",         "very soft clay", "high-plasticity clay", "organic soil",
      "uncontrolled fill", "topsoil",        "planting mix",         "compost"};
  for (size_t i = 0; i < sizeof soft / sizeof *soft; i++)
    if (strcmp(name, soft[i]) == 0) return true;
  return false;
}

static bool is_clay(const char *name) {
  size_t length = strlen(name);
  return length > 5 && strcmp(name + length - 5, " clay") == 0;
}

static double rule(const wall *w, bool likely) {
  bool weak = strcmp(w->tested, "allowable bearing=40 kPa") == 0;
  double share = likely ? 0.6 : strcmp(w->back, "wall back=smooth") == 0 ? 0.3333 : 0.5;
  if (!likely && w->footing[0] == '\0' && w->tested[0] == '\0') share = 0.3333;
  bool natural = strcmp(w->behind, "site behind=bed") != 0 && w->stone[0] == '\0';
  if (natural && is_clay(w->soil)) share = likely ? 0.3333 : 0.0;
  if (weak || is_soft(w->footing)) share = 0.0;
  bool lined = strcmp(w->back, "wall back=lined") == 0 || strcmp(w->lining, "lining=yes") == 0;
  return lined ? 0.75 * share : share;
}

static void add(random_wall *items, const char *item, const char *name) {
  if (name[0] != '\0') random_wall_add(items, "%s%s", item, name);
}

static lw_case case_of(const wall *w, lw_look look) {
  random_wall items = {0};
  lw_case c = {0};
  lw_faults faults = {0};
  add(&items, "", w->back);
  add(&items, "", w->lining);
  add(&items, "", w->behind);
  add(&items, "", w->stone);
  add(&items, "", w->tested);
  add(&items, "soil 1 name=", w->soil);
  add(&items, "footing soil name=", w->footing);
  random_wall_add(&items, "course count=3");
  for (int i = 0; i < items.count; i++) lw_sheet_override(items.text[i], i + 1, &c, &faults);
  c.look = look;
  cr_assert_eq(lw_case_complete(sheet_test_tables(), &c, &faults), LW_OK, "%s", faults.fault[0].wanted);
  return c;
}

static void expect(const wall *w) {
  for (int look = 0; look < 2; look++) {
    lw_case c = case_of(w, (lw_look)look);
    cr_expect_eq(c.wall.friction.origin, LW_TABLE);
    cr_expect_eq(c.wall.friction.kind, LW_KIND_SHARE);
    cr_expect_float_eq(c.wall.friction.si, rule(w, look == LW_LOOK_LIKELY), 1e-12,
                       "%g: %s, %s, %s, soil %s, %s, on %s, %s, look %d", c.wall.friction.si, w->back,
                       w->lining, w->behind, w->soil, w->stone, w->footing, w->tested, look);
  }
}

Test(sheet, friction_of_the_back_follows_the_rule_in_every_combination) {
  static const char *const backs[] = {"", "wall back=rough", "wall back=smooth", "wall back=lined"};
  static const char *const behinds[] = {"", "site behind=ground", "site behind=bed"};
  static const char *const tests[] = {"", "footing soil friction angle=30 deg", "allowable bearing=90 kPa",
                                      "allowable bearing=40 kPa"};
  const lw_tables *tables = sheet_test_tables();
  dice d = {20263};
  for (int soil = 0; soil <= tables->soil_count; soil++)
    for (int footing = 0; footing <= tables->soil_count; footing++)
      for (int back = 0; back < 4; back++) {
        wall w = {.back = backs[back],
                  .lining = dice_pick(&d, 4) == 0 && back != 1 ? "lining=yes" : "", /* not rough as well */
                  .behind = behinds[dice_pick(&d, 3)],
                  .stone = dice_pick(&d, 3) == 0 ? "stone width=200 mm" : "",
                  .soil = soil < tables->soil_count ? tables->soil[soil].name : "",
                  .footing = footing < tables->soil_count ? tables->soil[footing].name : "",
                  .tested = tests[dice_pick(&d, 4)]};
        expect(&w);
      }
}

Test(sheet, friction_of_the_back_is_as_given) {
  wall w = {"wall back=lined", "", "", "stiff clay", "", "soft clay", "wall friction=20 deg"};
  lw_case c = case_of(&w, LW_LOOK_CAUTIOUS);
  cr_expect_eq(c.wall.friction.origin, LW_GIVEN);
  cr_expect_float_eq(c.wall.friction.si, 20.0 * atan(1.0) / 45.0, 1e-12);
}
