/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>

#include "../checks/random_wall.h"
#include "../sheet/support.h"
#include "base/print.h"
#include "remedies/typed.h"

/* A remedy is one of the wall that was asked for: it holds up what was to be held up, and hands lay it. */

enum { WALLS = 40 / RANDOM_SHARE };

/* Figures of tables/thresholds.csv. */
static const double SHARE = 0.66, HAND_LAID_M = 0.6, ROUNDING = 1e-6;

typedef struct tally {
  int cures, others;
} tally;

static double held_m(const lw_result *result) {
  return result->verdict.height_m[LW_HEIGHT_EXPOSED] - result->wall.site.soil_below_top_m;
}

static bool of_hands(const lw_result *now, const lw_result *then) {
  const lw_quantity *before = &now->given.courses.block_depth, *after = &then->given.courses.block_depth;
  bool courses = now->given.wall.kind.value == LW_WALL_COURSES;
  double was = before->origin == LW_ABSENT ? 0.0 : before->si;
  return !courses || after->si <= HAND_LAID_M + ROUNDING || after->si <= was + ROUNDING;
}

static void then(const random_wall *wall, const lw_remedy *r, lw_result *out) {
  lw_case c = random_wall_case(wall);
  c.complete = false;
  cr_assert(lw_typed_enter(&r->items, &c), "%s", r->text);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_VERDICT, out, NULL), LW_OK);
}

static void expect_honest(const lw_remedy *r, const lw_result *now, const lw_result *after) {
  bool holds_up = held_m(after) >= SHARE * held_m(now) - ROUNDING, by_hand = of_hands(now, after);
  cr_expect_eq(r->kind == LW_REMEDY_CURE, holds_up && by_hand, "%s: %.2f m of %.2f m", r->text, held_m(after),
               held_m(now));
  if (!by_hand) cr_expect_not_null(strstr(r->text, "which an engineer designs"), "%s", r->text);
  if (by_hand && !holds_up) cr_expect_not_null(strstr(r->text, "which is another job"), "%s", r->text);
}

/* The first screen promises no wall that stands where only another job would. */
static void expect_heading(const lw_result *now) {
  lw_text screen = {0};
  cr_assert_eq(lw_report_screen(now, &(lw_text_style){0}, &screen), LW_OK);
  bool promised = strstr(screen.data, "What would make it stand") != NULL;
  cr_expect_eq(promised && now->remedy_count > 0,
               now->remedy_count > 0 && now->remedy[0].kind == LW_REMEDY_CURE, "%s", screen.data);
  lw_text_free(&screen);
}

static void look(const random_wall *wall, lw_result two[2], tally *all) {
  lw_case c = random_wall_case(wall);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &two[0], NULL), LW_OK);
  lw_remedies_find(&two[0], &two[1]);
  if (two[0].remedy_count > 0) expect_heading(&two[0]);
  for (int i = 0; i < two[0].remedy_count; i++) {
    const lw_remedy *r = &two[0].remedy[i];
    then(wall, r, &two[1]);
    expect_honest(r, &two[0], &two[1]);
    cr_expect(i == 0 || r->kind != LW_REMEDY_CURE || r[-1].kind == LW_REMEDY_CURE, "%s", r->text);
    *(r->kind == LW_REMEDY_CURE ? &all->cures : &all->others) += 1;
  }
}

Test(remedies, no_cure_holds_up_much_less_or_takes_blocks_that_no_hand_lays) {
  lw_result *two = calloc(2, sizeof *two);
  tally all = {0};
  cr_assert_not_null(two);
  dice d = {71};
  for (int i = 0; i < WALLS; i++) {
    random_wall wall;
    random_wall_make(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    random_wall_add(&wall, "site behind=ground");
    look(&wall, two, &all);
  }
  cr_expect(all.cures > WALLS / 4 && all.others > WALLS / 20, "%d cures, %d others", all.cures, all.others);
  free(two);
}

/* Nobody can keep the plants off a planted bed: not where that load alone is what it falls short by. */
static void expect_plants_stay(int depth_mm, lw_result two[2]) {
  char sheet[640];
  lw_case c;
  lw_faults faults = {.count = 0};
  int used = lw_print(
      sheet, sizeof sheet,
      "item,value\nwall height,700 mm\nwall embedment,100 mm\nblock depth,%d mm\nblock height,200 mm\n"
      "block unit weight,22 kN/m3\nsoil 1 name,sandy loam\nfooting soil friction angle,38 deg\n"
      "allowable bearing,150 kPa\nground slope,0 deg\ndrain outlets,2\nwall joints,open\nstone width,300 mm\n"
      "stone filter,cloth\nvehicle access,no\nbed use,planted\nmethod slip,not\n",
      depth_mm);
  cr_assert_eq(lw_sheet_read(sheet, (size_t)used, &c, &faults), LW_OK, "%s", faults.fault[0].wanted);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &two[0], NULL), LW_OK);
  lw_remedies_find(&two[0], &two[1]);
  for (int i = 0; i < two[0].remedy_count; i++)
    cr_expect_null(strstr(two[0].remedy[i].slug, "load-back"), "%d mm: %s", depth_mm, two[0].remedy[i].text);
}

Test(remedies, a_planted_bed_is_not_told_to_keep_its_load_back) {
  lw_result *two = calloc(2, sizeof *two);
  cr_assert_not_null(two);
  for (int mm = 200; mm <= 500; mm += 20) expect_plants_stay(mm, two);
  free(two);
}
