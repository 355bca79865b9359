/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "fit/fit.h"
#include "report/fit/report.h"

#include "../checks/random_wall.h"
#include "../report/forms_read.h"
#include "../report/measures.h"
#include "../sheet/support.h"

/* Blocks by chance in the walls of the demos, lower and higher ones: what the list says of each must come out
 * again when its items are typed into the sheet. */

enum { BLOCKS = 12, YARDS = 12 / RANDOM_SHARE };

typedef struct tried {
  lw_case read;
  lw_yard yard;
  lw_fit fit[LW_YARD_MAX];
  lw_fit_room room;
  int holds, falls, heights, set_back;
} tried;

static lw_text yard_by_chance(dice *d) {
  lw_text text = {0};
  lw_text_add(&text, "name,length [mm],height [mm],depth [mm],mass [kg],price [AUD],setback [mm]\n");
  for (int i = 0; i < BLOCKS; i++) {
    static const int heights_mm[] = {100, 150, 200, 190};
    int length_mm = 200 + 10 * dice_pick(d, 30), height_mm = heights_mm[dice_pick(d, 4)];
    int depth_mm = 250 + 10 * dice_pick(d, 50);
    double mass = 1e-9 * length_mm * height_mm * depth_mm * dice_between(d, 1800.0, 2400.0);
    lw_text_addf(&text, "block %d,%d,%d,%d,%.1f,%.2f,", i + 1, length_mm, height_mm, depth_mm, mass,
                 dice_between(d, 3.0, 30.0));
    lw_text_addf(&text, dice_pick(d, 4) == 0 ? "%d\n" : "\n", 5 * dice_pick(d, 8));
  }
  return text;
}

/* The sheet with its overrides, as it was read and as far as its height. */
static lw_fit_wall wall_of(const char *path, const char *const *items, tried *t) {
  lw_faults faults = {.count = 0};
  lw_text sheet = sheet_test_file(path);
  memset(&t->read, 0, sizeof t->read);
  cr_assert_eq(lw_sheet_read(sheet.data, sheet.length, &t->read, &faults), LW_OK);
  for (int i = 0; items[i] != NULL; i++)
    cr_assert_eq(lw_sheet_override(items[i], i + 1, &t->read, &faults), LW_OK, "%s", items[i]);
  t->room.c = t->read;
  cr_assert_eq(lw_case_complete(sheet_test_tables(), &t->room.c, &faults), LW_OK, "%s: %s", path,
               faults.fault[0].wanted);
  lw_text_free(&sheet);
  return (lw_fit_wall){sheet_test_tables(), &t->read, t->room.c.wall.height.si, lw_case_units(&t->room.c)};
}

/* As a person types it: over the sheet, one item after the other; gives whether it could be laid. */
static bool type_in(const lw_case *read, const lw_typed *items, const char *more, lw_fit_room *room) {
  lw_faults faults = {.count = 0};
  room->c = *read;
  for (int i = 0; i < items->count; i++)
    if (more == NULL || strncmp(items->item[i], "setback=", 8) != 0)
      cr_assert_eq(lw_sheet_override(items->item[i], i + 1, &room->c, &faults), LW_OK, "%s: %s",
                   items->item[i], faults.fault[0].wanted);
  if (more != NULL)
    cr_assert_eq(lw_sheet_override(more, items->count + 1, &room->c, &faults), LW_OK, "%s", more);
  return lw_case_complete(sheet_test_tables(), &room->c, &faults) == LW_OK &&
         lw_case_complete_order(sheet_test_tables(), &room->c, &faults) == LW_OK &&
         lw_run(&room->c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &room->then, NULL) == LW_OK;
}

static void expect_counted(const lw_fit *fit, const lw_order *order) {
  double pieces = 0.0, mass = 0.0;
  for (int i = 0; i < order->line_count; i++) {
    const char *slug = lw_order_line_slug(order->line[i].kind);
    bool unit =
        strstr(slug, "blocks") != NULL || strstr(slug, "corners") != NULL || strstr(slug, "spares") != NULL;
    if (!unit) continue;
    if (order->line[i].kind == LW_LINE_BLOCKS)
      cr_expect(fabs(order->line[i].order - fit->whole) < 1e-9, "%s", fit->block->name);
    pieces += order->line[i].order;
    mass += order->line[i].mass_kg;
  }
  cr_expect(fabs(pieces - fit->whole - fit->other) < 1e-9, "%s", fit->block->name);
  cr_expect(fabs(mass - fit->mass_kg) < 1e-6, "%s", fit->block->name);
  cr_expect(fabs(pieces * fit->block->price - fit->cost) < 1e-6, "%s", fit->block->name);
}

/* Of setbacks that were looked for, 5 mm less would not do, from 10 mm on; in feet 1/4 in, from 1/2 in on. */
static void expect_least(tried *t, const lw_fit *fit) {
  char less[48];
  double sheet_m = t->read.courses.setback.origin == LW_GIVEN ? t->read.courses.setback.si : 0.0;
  bool us = t->read.about.units.value == LW_UNITS_US;
  double then_m = fit->setback_m - (us ? 0.25 * 0.0254 : 0.005);
  if (fit->block->setback_given || fit->grade != LW_GRADE_HOLDS || fit->setback_m <= sheet_m) return;
  t->set_back++;
  if (then_m < fmax(us ? 0.5 * 0.0254 : 0.01, sheet_m) - 1e-9) return;
  snprintf(less, sizeof less, "setback=%.6g mm", then_m * 1000.0);
  cr_assert(type_in(&t->read, &fit->items, less, &t->room));
  cr_expect_neq(t->room.then.verdict.stands, LW_HOLDS, "%s: %s would do", fit->block->name, less);
}

/* A setback that the yard's block has is not the builder's to choose. */
static void expect_own_setback(const lw_fit *fit) {
  const lw_typed *own = &fit->block->items;
  for (int i = 0; i < own->count; i++) {
    bool typed = strncmp(own->item[i], "setback=", 8) != 0;
    for (int k = 0; k < fit->items.count; k++) typed = typed || strcmp(own->item[i], fit->items.item[k]) == 0;
    cr_expect(typed, "%s: not %s", fit->block->name, own->item[i]);
  }
}

static void expect_laid(tried *t, const lw_fit *fit) {
  lw_plan_fault fault;
  cr_assert(type_in(&t->read, &fit->items, NULL, &t->room), "%s", fit->block->name);
  const lw_verdict *then = &t->room.then.verdict;
  cr_expect_eq(then->grade, fit->grade, "%s: %s", fit->block->name, then->headline);
  cr_expect_eq(then->stands == LW_HOLDS, fit->grade == LW_GRADE_HOLDS, "%s", fit->block->name);
  cr_expect_eq(then->who, fit->who);
  cr_expect_str_eq(then->headline, fit->headline);
  cr_expect(fabs(t->room.then.given.courses.count.si - fit->courses) < 1e-9);
  cr_expect(fabs(t->room.then.wall.section.part[0].rear_m - fit->block->depth_m) < 1e-9, "%s",
            fit->block->name);
  cr_assert_eq(lw_order_make(&t->room.then, &t->room.order, &fault), LW_OK);
  expect_counted(fit, &t->room.order);
  expect_least(t, fit);
  expect_own_setback(fit);
  *(fit->grade == LW_GRADE_HOLDS ? &t->holds : &t->falls) += 1;
}

/* The heights that it names can be built, the sheet's cannot. */
static void expect_heights(tried *t, const lw_fit *fit) {
  const double heights_m[] = {fit->below_m, fit->above_m};
  for (int i = fit->courses_below > 0 ? 0 : 1; i < 2; i++) {
    lw_typed items = fit->items;
    snprintf(items.item[items.count++], LW_TYPED_BYTES, "wall height=%.6g mm", heights_m[i] * 1000.0);
    cr_expect(type_in(&t->read, &items, NULL, &t->room), "%s: %.3f m", fit->block->name, heights_m[i]);
  }
  cr_expect_not(type_in(&t->read, &fit->items, NULL, &t->room), "%s", fit->block->name);
  t->heights++;
}

static void expect_order(const lw_fit *a, const lw_fit *b) {
  bool later = a->kind == LW_FIT_LAID && b->kind != LW_FIT_LAID;
  if (a->kind != LW_FIT_LAID || later) {
    cr_expect(later || b->kind != LW_FIT_LAID);
    return;
  }
  cr_expect(a->grade <= b->grade, "%s before %s", a->block->name, b->block->name);
  cr_expect(a->grade != b->grade || a->cost <= b->cost, "%s before %s", a->block->name, b->block->name);
}

static void expect_forms(const lw_fit_wall *wall, const tried *t) {
  const lw_fit_list list = {&t->yard, t->fit, &wall->read->order, "", wall->units};
  lw_text made[LW_AS_COUNT] = {{0}};
  for (int as = 0; as < LW_AS_COUNT; as++) {
    const lw_text_style style = {.columns = 80, .as = (lw_as)as};
    cr_assert_eq(lw_report_fit_text(&list, &style, &made[as]), LW_OK);
  }
  expect_all_in(wall->units, made[LW_AS_TEXT].data, "a yard");
  forms_expect_same("a yard", made[LW_AS_TEXT].data, made[LW_AS_MARKDOWN].data, made[LW_AS_HTML].data);
  for (int as = 0; as < LW_AS_COUNT; as++) lw_text_free(&made[as]);
}

static void expect_yard(tried *t, const lw_fit_wall *wall, dice *d) {
  lw_faults faults = {.count = 0};
  lw_text list = yard_by_chance(d);
  cr_assert_eq(lw_yard_read(sheet_test_tables(), list.data, list.length, &t->yard, &faults), LW_OK, "%s",
               faults.fault[0].wanted);
  cr_assert_eq(t->yard.count, BLOCKS);
  lw_text_free(&list);
  lw_fit_find(wall, &t->yard, &t->room, t->fit);
  for (int i = 0; i < t->yard.count; i++) {
    if (i > 0) expect_order(&t->fit[i - 1], &t->fit[i]);
    if (t->fit[i].kind == LW_FIT_LAID) expect_laid(t, &t->fit[i]);
    if (t->fit[i].kind == LW_FIT_HEIGHT) expect_heights(t, &t->fit[i]);
  }
  expect_forms(wall, t);
}

Test(fit, comes_out_when_typed) {
  static const struct {
    const char *path, *items[4];
  } walls[] = {
      {"docs/demo/terrace.csv", {NULL}},
      {"docs/demo/terrace.csv", {"wall embedment=unknown", "course count=unknown", "units=us", NULL}},
      {"docs/demo/terrace.csv", {"wall embedment=unknown", "course count=unknown", NULL}},
      {"docs/demo/terrace.csv",
       {"wall height=unknown", "ground fall=unknown", "wall embedment=unknown", NULL}},
      {"docs/demo/bed.csv", {"wall embedment=unknown", "course count=unknown", "half unit=sold", NULL}},
  };
  enum { WALLS = sizeof walls / sizeof *walls };
  tried *t = calloc(1, sizeof *t);
  dice d = {20260711};
  cr_assert_not_null(t);
  for (int i = 0; i < YARDS; i++) {
    lw_fit_wall wall = wall_of(walls[i % WALLS].path, walls[i % WALLS].items, t);
    expect_yard(t, &wall, &d);
  }
  cr_expect(t->holds > 3 && t->falls > 3 && t->heights > 0 && t->set_back > 0,
            "%d hold, %d fall short, %d heights, %d set back", t->holds, t->falls, t->heights, t->set_back);
  free(t);
}

/* Courses make a height to a millimetre, whatever the block; elsewhere the nearest heights are named. */
Test(fit, a_height_is_made_to_a_millimetre) {
  static const double OFF_MM[] = {-1.3, -0.8, -0.3, 0.0, 0.3, 0.8, 1.3};
  static const int BLOCK_MM[] = {90, 150, 300};
  tried *t = calloc(1, sizeof *t);
  int laid = 0, told = 0;
  cr_assert_not_null(t);
  for (int i = 0; i < 21; i++) {
    char height[40], own[40], list[160];
    int block_mm = BLOCK_MM[i / 7];
    snprintf(height, sizeof height, "wall height=%.2f mm", 900.0 - 100.0 + OFF_MM[i % 7]);
    snprintf(own, sizeof own, "block height=%.3f mm", (900.0 + OFF_MM[i % 7]) / 5.0);
    const char *const items[] = {height, own, "wall embedment=100 mm", "course count=unknown", NULL};
    snprintf(list, sizeof list,
             "name,length [mm],height [mm],depth [mm],mass [kg],price\nA,300,%d,450,%.1f,9\n", block_mm,
             0.3 * 0.45 * block_mm * 2.1);
    lw_faults faults = {.count = 0};
    lw_fit_wall wall = wall_of("docs/demo/terrace.csv", items, t);
    cr_assert_eq(lw_yard_read(sheet_test_tables(), list, strlen(list), &t->yard, &faults), LW_OK, "%s",
                 faults.fault[0].wanted);
    lw_fit_find(&wall, &t->yard, &t->room, t->fit);
    bool makes = fabs(OFF_MM[i % 7]) < 1.0;
    cr_expect_eq(t->fit[0].kind == LW_FIT_HEIGHT, !makes, "%s, %d mm", height, block_mm);
    if (!makes) {
      double apart = t->fit[0].above_m - t->fit[0].below_m;
      cr_expect(fabs(apart - 0.001 * block_mm) < 1e-9 && t->fit[0].courses_below > 0, "%s, %d mm", height,
                block_mm);
      cr_expect(t->fit[0].below_m < wall.height_m && wall.height_m < t->fit[0].above_m, "%s, %d mm", height,
                block_mm);
    }
    laid += makes;
    told += !makes;
  }
  cr_expect(laid > 0 && told > 0);
  free(t);
}

/* What an order lacks is a fault of the sheet, not of each block. */
Test(fit, sheet_lacks_a_length) {
  static const char *const items[] = {"run 1 length=unknown", "ground fall=unknown", NULL};
  static const char list[] = "name,length [mm],height [mm],depth [mm],mass [kg],price\nA,300,200,450,63,9\n";
  lw_faults faults = {.count = 0};
  tried *t = calloc(1, sizeof *t);
  cr_assert_not_null(t);
  lw_fit_wall wall = wall_of("docs/demo/terrace.csv", items, t);
  cr_assert_eq(lw_yard_read(sheet_test_tables(), list, sizeof list - 1, &t->yard, &faults), LW_OK);
  cr_expect_eq(lw_fit_hold(&wall, &t->yard, &t->room, &faults), LW_FAULTS);
  cr_expect_str_eq(faults.fault[0].item, "run 1 length");
  free(t);
}
