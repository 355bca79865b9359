/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "../sheet/support.h"
#include "help.h"

/* Ground in front that falls 1:20 or less is level, however it is typed: it makes no difference to what the
 * base has, and asks nobody. Anything steeper takes the bearing value away and calls the engineer. */

static bool calls(const lw_result *r, const char *slug) {
  const lw_verdict_reason *reason = verdict_reason(&r->verdict, LW_ANSWER_WHO, slug);
  return reason && !reason->assumed;
}

static void expect_level(const lw_result *r, const lw_result *flat, bool level, const char *slope) {
  for (int s = 0; s < r->situations.count; s++) {
    const lw_situation *is = &r->situations.situation[s], *was = &flat->situations.situation[s];
    for (int i = 0; i < is->check_count; i++) {
      lw_check check = lw_situation_check(is, i);
      bool bearing = check.kind == LW_CHECK_BEARING && check.reason != LW_REASON_OUTSIDE_BASE;
      cr_expect(!bearing || (check.reason == LW_REASON_FRONT_SLOPE) == !level, "front slope=%s: %s, %s",
                slope, lw_situation_slug(is->name), lw_check_slug(check.kind));
      if (!level || !bearing) continue;
      lw_check before = lw_situation_check(was, i);
      cr_expect(before.kind == check.kind && before.has.known == check.has.known &&
                    fabs(before.has.value - check.has.value) <= 1e-12 * fabs(before.has.value),
                "front slope=%s: has %.9g, level %.9g", slope, check.has.value, before.has.value);
    }
  }
  cr_expect_eq(calls(r, "sloping-ground"), !level, "front slope=%s", slope);
}

static lw_result *on(const char *wall, const char *slope) {
  char changes[200];
  snprintf(changes, sizeof changes, "%s;front slope=%s", wall, slope);
  return verdict_run(changes);
}

Test(level_front, up_to_one_in_twenty_is_level_in_any_unit) {
  static const struct {
    const char *slope;
    bool level;
  } rows[] = {{"0 deg", true},     {"1:100", true},   {"2 %", true},        {"1:20", true},
              {"5 %", true},       {"50:1000", true}, {"2.8624 deg", true}, {"2.862405226112 deg", true},
              {"0.05 rad", false}, {"1:19.9", false}, {"5.1 %", false},     {"3 deg", false},
              {"1:15", false},     {"1:8", false},    {"1:4", false},       {"1:2", false}};
  static const char *const walls[] = {"people on cap=no",
                                      "site behind=ground;site back=ground;course count=3",
                                      "pad thickness=150 mm;pad width=600 mm"};
  for (size_t w = 0; w < sizeof walls / sizeof *walls; w++) {
    lw_result *flat = on(walls[w], "0 deg");
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
      lw_result *r = on(walls[w], rows[i].slope);
      expect_level(r, flat, rows[i].level, rows[i].slope);
      free(r);
    }
    free(flat);
  }
}

/* Walls by chance: nothing of the base changes up to 1:20, and beyond it the value is gone at once. */
Test(level_front, of_any_wall_bearing_changes_at_one_in_twenty_alone) {
  dice d = {77};
  lw_result *r = calloc(1, sizeof *r), *flat = calloc(1, sizeof *flat);
  for (int i = 0; i < 40 / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    char *slope;
    random_wall_plain(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    random_wall_add(&wall, "soil 1 friction angle=32 deg");
    random_wall_add(&wall, "front slope=%s", "0 deg");
    slope = wall.text[wall.count - 1];
    double fall = i % 2 ? dice_between(&d, 0.0, 0.05) : dice_between(&d, 0.0501, 0.5);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_CHECKS, flat, NULL), LW_OK);
    snprintf(slope, RANDOM_ITEM_BYTES, "front slope=%.9f rad", atan(fall));
    c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_CHECKS, r, NULL), LW_OK);
    for (int s = 0; s < r->situations.count; s++)
      for (int k = 0; k < r->situations.situation[s].check_count; k++) {
        lw_check is = lw_situation_check(&r->situations.situation[s], k),
                 was = lw_situation_check(&flat->situations.situation[s], k);
        if (is.kind != LW_CHECK_BEARING || was.reason == LW_REASON_OUTSIDE_BASE || !was.has.known) continue;
        cr_expect_eq(is.has.known, fall <= 0.05, "1:%.4g, %s", 1.0 / fall, slope);
        cr_expect(!is.has.known || fabs(is.has.value - was.has.value) <= 1e-12 * was.has.value, "1:%.4g",
                  1.0 / fall);
      }
  }
  free(r);
  free(flat);
}
