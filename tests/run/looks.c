/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "../sheet/support.h"

/* The second look at a wall, by likely values. */

static lw_result *run_of(const random_wall *wall) {
  const char *arguments[RANDOM_ITEMS + 1] = {NULL};
  for (int i = 0; i < wall->count; i++) arguments[i] = wall->text[i];
  return checks_test_run(arguments);
}

/* Upright solid walls on level ground, dry: Coulomb's push at the back, its downward part at the rear of the
 * base; weight, friction, moments about the toe. Worked by hand, by sums of another's. */
typedef struct by_hand {
  double height_m, base_m, phi_deg, delta_deg, soil, load, friction, wall; /* kN/m3, kPa */
  double likely_phi_deg, likely_soil, likely_load, likely_friction, likely_wall;
  double sliding, overturning, likely_sliding, likely_overturning;
  lw_grade grade;
} by_hand;

/* clang-format off */
static const by_hand walls[] = {
    {0.75, 0.35, 30, 15, 20, 1, 0.45, 21, 32.5, 18, 0.5, 0.55, 22, 1.4571, 2.3178, 2.5491, 3.4050,
     LW_GRADE_LESS_MARGIN},
    {0.75, 0.20, 28, 14, 20, 2, 0.35, 21, 32, 18, 1, 0.45, 22, 0.5759, 0.6857, 1.1730, 1.1263,
     LW_GRADE_MAY_MOVE},
    {0.90, 0.20, 26, 13, 20, 3, 0.30, 21, 28, 18, 1.5, 0.35, 22, 0.3744, 0.4381, 0.6453, 0.6744,
     LW_GRADE_WOULD_MOVE},
};
/* clang-format on */

static void sheet_of(const by_hand *w, random_wall *wall) {
  wall->count = 0;
  random_wall_add(wall, "wall kind=section");
  random_wall_add(wall, "wall height=%.3f m", w->height_m);
  random_wall_add(wall, "overflow below top=%.3f m", w->height_m);
  random_wall_add(wall, "wall embedment=0 m");
  random_wall_add(wall, "top width=%.3f m", w->base_m);
  random_wall_add(wall, "base width=%.3f m", w->base_m);
  random_wall_add(wall, "method pressure=coulomb");
  random_wall_add(wall, "method plane=back");
  random_wall_add(wall, "method slip=not");
  random_wall_add(wall, "people on cap=no");
  random_wall_add(wall, "ground slope=0 deg");
  random_wall_add(wall, "front slope=0 deg");
  random_wall_add(wall, "soil below top=0 m");
  random_wall_add(wall, "drain outlets=2");
  random_wall_add(wall, "allowable bearing=200 kPa");
  random_wall_add(wall, "load 1 kind=uniform");
  random_wall_add(wall, "soil 1 friction angle=%.2f deg", w->phi_deg);
  random_wall_add(wall, "wall friction=%.2f deg", w->delta_deg);
  random_wall_add(wall, "soil 1 unit weight=%.2f kN/m3", w->soil);
  random_wall_add(wall, "load 1 pressure=%.2f kPa", w->load);
  random_wall_add(wall, "base friction=%.3f", w->friction);
  random_wall_add(wall, "wall unit weight=%.2f kN/m3", w->wall);
  random_wall_add(wall, "soil 1 friction angle likely=%.2f deg", w->likely_phi_deg);
  random_wall_add(wall, "wall friction likely=66.66666666666667 %%");
  random_wall_add(wall, "soil 1 unit weight likely=%.2f kN/m3", w->likely_soil);
  random_wall_add(wall, "load 1 pressure likely=%.2f kPa", w->likely_load);
  random_wall_add(wall, "base friction likely=%.3f", w->likely_friction);
  random_wall_add(wall, "wall unit weight likely=%.2f kN/m3", w->likely_wall);
}

static void expect_has(const lw_result *r, lw_check_kind kind, double cautious, double likely) {
  const lw_situation *s = checks_test_situation(r, LW_SITUATION_DRAINED);
  const lw_check *check = checks_test_at_base(s, kind);
  cr_assert(check && check->has.known);
  lw_number by_likely = lw_looks_has(r, s, check);
  cr_expect(fabs(check->has.value - cautious) < 5.1e-5, "%s: %.6f, not %.4f", lw_check_slug(kind),
            check->has.value, cautious);
  cr_expect(by_likely.known && fabs(by_likely.value - likely) < 5.1e-5, "%s likely: %.6f, not %.4f",
            lw_check_slug(kind), by_likely.value, likely);
}

Test(looks, walls_worked_by_hand_in_both_looks) {
  for (size_t i = 0; i < sizeof walls / sizeof *walls; i++) {
    const by_hand *w = &walls[i];
    random_wall wall;
    sheet_of(w, &wall);
    lw_result *r = run_of(&wall);
    expect_has(r, LW_CHECK_SLIDING, w->sliding, w->likely_sliding);
    expect_has(r, LW_CHECK_OVERTURNING, w->overturning, w->likely_overturning);
    cr_expect_eq(r->verdict.grade, w->grade, "wall %d: %s", (int)i, lw_grade_slug(r->verdict.grade));
    double least = fmin(w->likely_sliding, w->likely_overturning);
    cr_expect(fabs(r->looks.likely.has.value - least) < 5.1e-5);
    cr_expect(fabs(r->looks.cautious.has.value - fmin(w->sliding, w->overturning)) < 5.1e-5);
    free(r);
  }
}

/* A garden wall of which little is said: what is left out has two values. */
static void garden_wall(dice *d, random_wall *wall) {
  static const char *const SOILS[] = {"",
                                      "soil 1 name=loam",
                                      "soil 1 name=silty sand",
                                      "soil 1 name=clean sand",
                                      "soil 1 name=clayey sand",
                                      "soil 1 name=crushed rock"};
  static const char *const BASES[] = {"", "footing soil name=clean sand", "footing soil name=clay loam",
                                      "footing soil name=firm clay"};
  const char *soil = SOILS[dice_pick(d, 6)], *base = BASES[dice_pick(d, 4)];
  wall->count = 0;
  random_wall_add(wall, "course count=%d", 2 + dice_pick(d, 4));
  random_wall_add(wall, "block height=%d mm", 100 + 50 * dice_pick(d, 3));
  random_wall_add(wall, "block depth=%d mm", 150 + 50 * dice_pick(d, 16));
  random_wall_add(wall, "wall embedment=%d mm", 50 * dice_pick(d, 2));
  random_wall_add(wall, "site behind=%s", dice_pick(d, 2) ? "bed" : "ground");
  random_wall_add(wall, "ground slope=%d deg", dice_pick(d, 3) ? 0 : 10);
  random_wall_add(wall, "drain outlets=%d", dice_pick(d, 3));
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "setback=%d mm", 10 * dice_pick(d, 3));
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "wall joints=%s", dice_pick(d, 2) ? "open" : "sealed");
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "vehicle access=no");
  if (soil[0]) random_wall_add(wall, "%s", soil);
  if (base[0]) random_wall_add(wall, "%s", base);
}

/* A load behind holds a broad wall down at its rear more than it pushes, where people sit on its front edge:
 * a little less of it is in compression under the lesser load that is likely. */
static double slack_of(const lw_situation *s, const lw_check *check) {
  bool sat_on = s->name == LW_SITUATION_PEOPLE_SITTING && check->kind == LW_CHECK_COMPRESSION;
  return sat_on && check->has.value > 0.5 ? 0.02 : 1e-9;
}

/* What the likely values change is on the side of the wall: no check of it has less by them. But for the
 * ground below: a heavier block presses harder on it, and with less push a wall that leans back does at its
 * heel. */
Test(looks, no_check_has_less_by_likely_values) {
  dice d = {77};
  char name[600];
  int compared = 0;
  for (int i = 0; i < 240 / RANDOM_SHARE; i++) {
    random_wall wall;
    bool weighed = i % 2 == 0;
    garden_wall(&d, &wall);
    random_wall_hurry(&wall, i);
    if (weighed) random_wall_add(&wall, "block unit weight=21.5 kN/m3");
    lw_result *r = run_of(&wall);
    cr_assert(r->looks.looked);
    for (int k = 0; k < r->situations.count; k++) {
      const lw_situation *s = &r->situations.situation[k];
      for (int n = 0; n < s->check_count; n++) {
        lw_check check = lw_situation_check(s, n);
        lw_number likely = lw_looks_has(r, s, &check);
        if (!check.has.known || !likely.known) continue;
        if (check.kind == LW_CHECK_BEARING && (!weighed || check.has.value > 2.5)) continue;
        compared++;
        cr_expect(likely.value >= check.has.value * (1.0 - slack_of(s, &check)),
                  "%s: %s %s %d: %.4f, likely %.4f", random_wall_name(&wall, name, sizeof name),
                  lw_situation_slug(s->name), lw_check_slug(check.kind), check.joint, check.has.value,
                  likely.value);
      }
    }
    const lw_looks *l = &r->looks;
    if (l->likely.has.known && l->cautious.has.known && !l->likely.not_shown)
      cr_expect(l->likely.has.value >= l->cautious.has.value * (1.0 - 1e-9), "%s",
                random_wall_name(&wall, name, sizeof name));
    free(r);
  }
  cr_expect_gt(compared, 2000 / RANDOM_SHARE);
}

/* No check is graver than the wall that it is a check of. */
Test(looks, a_wall_is_as_grave_as_its_gravest_check) {
  dice d = {99};
  int grades[LW_GRADE_COUNT] = {0};
  char name[600];
  for (int i = 0; i < 240 / RANDOM_SHARE; i++) {
    random_wall wall;
    garden_wall(&d, &wall);
    random_wall_hurry(&wall, i);
    lw_result *r = run_of(&wall);
    lw_grade gravest = LW_GRADE_HOLDS;
    for (int k = 0; k < r->situations.count; k++) {
      const lw_situation *s = &r->situations.situation[k];
      for (int n = 0; s->decides && n < s->check_count; n++) {
        lw_check check = lw_situation_check(s, n);
        lw_grade of = lw_check_grade(r, s, &check);
        if (of < LW_GRADE_CANNOT_BE_SHOWN && of > gravest) gravest = of;
      }
    }
    grades[r->verdict.grade]++;
    if (r->verdict.grade != LW_GRADE_CANNOT_BE_SHOWN)
      cr_expect(r->verdict.grade == gravest, "%s: %s, its gravest check %s",
                random_wall_name(&wall, name, sizeof name), lw_grade_slug(r->verdict.grade),
                lw_grade_slug(gravest));
    free(r);
  }
  for (int i = LW_GRADE_LESS_MARGIN; i <= LW_GRADE_WOULD_MOVE; i++)
    cr_expect_gt(grades[i], 1, "%s", lw_grade_slug((lw_grade)i));
}

static lw_result *with(const random_wall *wall, const char *item, double value, const char *unit) {
  random_wall more = *wall;
  random_wall_add(&more, "%s=%.6f %s", item, value, unit);
  return run_of(&more);
}

/* Better ground, a deeper block, less load, less water: never a graver grade, nor less in either look. */
static void expect_no_graver(const random_wall *wall, const char *item, double from, double to,
                             const char *unit) {
  enum { STEPS = 4 };
  lw_grade before = LW_GRADE_COUNT;
  double likely = 0.0, cautious = 0.0;
  char name[600];
  for (int i = 0; i < STEPS; i++) {
    lw_result *r = with(wall, item, from + (to - from) * i / (STEPS - 1), unit);
    random_wall_name(wall, name, sizeof name);
    const lw_looks *l = &r->looks;
    cr_expect(r->verdict.grade <= before, "%s; %s %d", name, item, i);
    cr_expect(!l->likely.has.known || l->likely.has.value >= likely * (1.0 - 1e-9), "%s; %s %d", name, item,
              i);
    cr_expect(!l->cautious.has.known || l->cautious.has.value >= cautious * (1.0 - 1e-9), "%s; %s %d", name,
              item, i);
    before = r->verdict.grade;
    if (l->likely.has.known) likely = l->likely.has.value;
    if (l->cautious.has.known) cautious = l->cautious.has.value;
    free(r);
  }
}

Test(looks, grades_are_monotone_in_angle_depth_load_and_water) {
  dice d = {31};
  for (int i = 0; i < 24 / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    random_wall_add(&wall, "course count=%d", 2 + dice_pick(&d, 4));
    random_wall_add(&wall, "block height=200 mm");
    random_wall_add(&wall, "wall embedment=100 mm");
    random_wall_add(&wall, "ground slope=0 deg");
    random_wall_add(&wall, "wall friction=0 deg");
    random_wall_add(&wall, "method slip=not");
    random_wall plain = wall, deep = wall, loaded = wall, wet = wall;
    random_wall_add(&plain, "block depth=%.0f mm", dice_between(&d, 200.0, 700.0));
    expect_no_graver(&plain, "soil 1 friction angle", 20.0, 44.0, "deg");
    random_wall_add(&deep, "soil 1 friction angle=%.1f deg", dice_between(&d, 22.0, 36.0));
    expect_no_graver(&deep, "block depth", 150.0, 900.0, "mm");
    random_wall_add(&loaded, "block depth=%.0f mm", dice_between(&d, 200.0, 700.0));
    random_wall_add(&loaded, "load 1 kind=uniform");
    expect_no_graver(&loaded, "load 1 pressure", 20.0, 0.0, "kPa");
    random_wall_add(&wet, "block depth=%.0f mm", dice_between(&d, 200.0, 700.0));
    expect_no_graver(&wet, "overflow below top", 0.0, 0.3, "m");
  }
}

static void expect_same(lw_number a, lw_number b) {
  cr_expect(a.known == b.known && fabs(a.value - b.value) < 1e-12, "%.12g, %.12g", a.value, b.value);
}

/* Design values have margin in them: what such a wall has is looked at without its factors. */
Test(looks, under_partial_factors_both_looks_are_of_the_wall_as_it_is) {
  dice d = {5};
  int less = 0, moves = 0;
  for (int i = 0; i < 80 / RANDOM_SHARE; i++) {
    random_wall wall, factored;
    garden_wall(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    factored = wall;
    random_wall_add(&factored, "method format=en1997-da1");
    lw_result *plain = run_of(&wall), *r = run_of(&factored);
    cr_assert(r->looks.bare && !plain->looks.bare);
    expect_same(r->looks.likely.has, plain->looks.likely.has);
    expect_same(r->looks.cautious.has, plain->looks.cautious.has);
    if (r->verdict.stands == LW_FALLS_SHORT && plain->verdict.stands == LW_FALLS_SHORT &&
        plain->verdict.grade > LW_GRADE_LESS_MARGIN)
      cr_expect(r->verdict.grade == plain->verdict.grade);
    less += r->verdict.grade == LW_GRADE_LESS_MARGIN ? 1 : 0;
    moves += r->verdict.grade == LW_GRADE_WOULD_MOVE ? 1 : 0;
    free(plain);
    free(r);
  }
  cr_expect(less > 0 && moves > 0, "%d, %d", less, moves);
}

/* A slip governs, and by likely values something else has least: the slip is then no part of the search for
 * the least, and is looked at for itself. */
Test(looks, a_row_has_the_likely_value_of_a_slip_that_is_not_the_least) {
  lw_result *less = calloc(1, sizeof *less), *scratch = calloc(1, sizeof *scratch);
  int beside = 0;
  cr_assert(less && scratch);
  for (int height_mm = 450; height_mm <= 600; height_mm += 30) {
    random_wall wall = {.count = 0};
    random_wall_add(&wall, "wall kind=section");
    random_wall_add(&wall, "wall height=%d mm", height_mm);
    random_wall_add(&wall, "wall embedment=100 mm");
    random_wall_add(&wall, "base width=%d mm", height_mm + 100);
    random_wall_add(&wall, "top width=%d mm", height_mm - 100);
    random_wall_add(&wall, "wall unit weight=24.7 kN/m3");
    random_wall_add(&wall, "soil 1 friction angle=28.9 deg");
    random_wall_add(&wall, "soil 1 unit weight=17.9 kN/m3");
    random_wall_add(&wall, "wall friction=8.9 deg");
    random_wall_add(&wall, "base friction=0.51");
    random_wall_add(&wall, "allowable bearing=98 kPa");
    random_wall_add(&wall, "load 1 kind=uniform");
    random_wall_add(&wall, "load 1 pressure=1.89 kPa");
    random_wall_add(&wall, "people on cap=no");
    random_wall_add(&wall, "drain outlets=2");
    random_wall_add(&wall, "stone width=300 mm");
    random_wall_add(&wall, "soil below top=0 mm");
    random_wall_add(&wall, "ground slope=0 deg");
    random_wall_add(&wall, "site behind=ground");
    lw_case c = random_wall_case(&wall);
    lw_result *whole = run_of(&wall);
    lw_check check;
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_VERDICT, less, NULL), LW_OK);
    lw_looks_find(less, scratch);
    cr_assert(lw_verdict_governing(whole, &check));
    const lw_situation *s = &whole->situations.situation[whole->verdict.governing_situation];
    lw_number likely = lw_looks_has(whole, s, &check), in_row = lw_looks_has(less, s, &check);
    cr_expect(likely.known && in_row.known && fabs(likely.value - in_row.value) < 1e-12, "%d mm: %.6f, %.6f",
              height_mm, likely.value, in_row.value);
    beside += check.kind == LW_CHECK_SLIP && likely.value > whole->looks.likely.has.value;
    free(whole);
  }
  cr_expect_gt(beside, 2, "%d", beside);
  free(less);
  free(scratch);
}
