/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"
#include "help.h"

/* Who does not know the ground may stand on any that walls are ordinarily built on: no check is milder for
 * him than for one who names it. What a table refuses, or gives no number for, goes to an engineer. */

static const char *const WALLS[] = {
    "site behind=ground;level difference=0.6 m;course count=7;block depth=300 mm;method slip=not;",
    "site behind=ground;level difference=0.6 m;course count=7;block depth=450 mm;method slip=not;",
    ("site behind=ground;level difference=0.4 m;course count=5;block depth=250 mm;ground slope=1:6;"
     "method slip=not;"),
    "site behind=bed;course count=4;block depth=350 mm;method slip=not;",
    "site behind=bed;course count=6;block depth=200 mm;method slip=not;"};
enum { WALL_COUNT = sizeof WALLS / sizeof *WALLS };

/* The least ratio of a kind of check in all that decides; infinite: there is none, below 0: not shown. */
static double least(const lw_result *result, lw_check_kind kind) {
  double ratio = INFINITY;
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    for (int k = 0; k < s->check_count && s->decides; k++) {
      const lw_check check = lw_situation_check(s, k);
      bool of_base = check.kind == kind && check.at == LW_AT_BASE && check.counts;
      if (of_base) ratio = fmin(ratio, check.ratio.known ? check.ratio.value : -1.0);
    }
  }
  return ratio;
}

/* gives whether it was held */
static bool hold(const lw_result *unknown, const char *wall, const char *item, const lw_soil_row *soil) {
  static const lw_check_kind kinds[] = {LW_CHECK_SLIDING, LW_CHECK_OVERTURNING, LW_CHECK_BEARING};
  char changes[320];
  lw_print(changes, sizeof changes, "%s%s=%s", wall, item, soil->name);
  lw_result *named = verdict_run(changes);
  bool shown = named->verdict.stands != LW_CANNOT_SHOW && named->verdict.who != LW_WHO_ENGINEER;
  for (size_t i = 0; shown && i < sizeof kinds / sizeof *kinds; i++) {
    double not_known = least(unknown, kinds[i]), told = least(named, kinds[i]);
    cr_expect(not_known <= told + 1e-9, "%s: %s has %.4f, not known %.4f", changes, lw_check_slug(kinds[i]),
              told, not_known);
  }
  free(named);
  return shown;
}

static bool ordinary_behind(const lw_soil_row *soil) {
  return !soil->clay && isfinite(soil->friction_rad);
}

static bool ordinary_beneath(const lw_soil_row *soil) {
  return isfinite(soil->friction_rad) && isfinite(soil->allowable_bearing_kpa);
}

Test(unknown_ground, is_never_milder_than_ground_that_has_a_name) {
  const lw_tables *t = sheet_test_tables();
  int behind = 0, beneath = 0;
  for (int w = 0; w < WALL_COUNT; w++) {
    char changes[240];
    lw_print(changes, sizeof changes, "%ssoil 1 name=unknown;footing soil name=unknown;base friction=unknown",
             WALLS[w]);
    lw_result *unknown = verdict_run(changes);
    lw_print(changes, sizeof changes, "%sbase friction=unknown;", WALLS[w]);
    for (int i = 0; i < t->soil_count; i++) {
      if (ordinary_behind(&t->soil[i])) behind += hold(unknown, changes, "soil 1 name", &t->soil[i]) ? 1 : 0;
      if (ordinary_beneath(&t->soil[i]))
        beneath += hold(unknown, changes, "footing soil name", &t->soil[i]) ? 1 : 0;
    }
    free(unknown);
  }
  cr_expect(behind > 12 && beneath > 12, "%d behind and %d beneath", behind, beneath);
}

/* Clay alone is worse than what is counted, and whoever answers that he does not know is told so. */
Test(unknown_ground, that_clay_is_worse_is_said) {
  const lw_tables *t = sheet_test_tables();
  for (int i = 0; i < t->question_count; i++)
    if (strcmp(t->question[i].key, "soil") == 0)
      cr_expect(strstr(t->question[i].not_known, "Clay is worse") != NULL, "%s", t->question[i].not_known);
}
