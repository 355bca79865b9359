/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "balance/weigh.h"
#include "load_cases/situations.h"
#include "wall/wall.h"
#include "random_wall.h"
#include "support.h"

/* A wall has one height, that of its courses or points, and nothing that is measured from it may fall into a
 * gap between two: a level moved by a nanometre leaves every ratio where it was. */

enum { WALLS = 64 / LONG_SHARE, LEVELS_MAX = 40 };
static const double NANOMETRE = 1e-9, MILLIMETRE = 1e-3, SAME = 1e-5;

/* What one try needs; the results are large. */
typedef struct bench {
  lw_wall wall;
  lw_situations before, after;
  char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  int compared;
} bench;

static void run(bench *b, const lw_case *c, lw_situations *all) {
  lw_wall_build(c, sheet_test_tables(), &b->wall);
  lw_situations_run(&b->wall, sheet_test_tables(), LW_DETAIL_EVERYTHING, all);
}

/* Depths below the top at which something begins or ends. */
static int levels_of(const lw_wall *wall, double level[LEVELS_MAX]) {
  const lw_section *section = &wall->section;
  int count = 0;
  for (int i = 0; i < section->part_count && count < 12; i++)
    level[count++] = section->height_m - section->part[i].bottom_m;
  level[count++] = 0.0;
  level[count++] = section->height_m;
  level[count++] = section->height_m - section->embedment_m;
  level[count++] = wall->site.soil_below_top_m;
  for (int i = 0; i + 1 < wall->site.soil_count; i++) level[count++] = wall->site.soil[i].bottom_m;
  if (isfinite(wall->site.water_depth_m)) level[count++] = wall->site.water_depth_m;
  level[count++] = wall->site.overflow_below_top_m;
  return count;
}

static void expect_sound(const bench *b, const lw_situations *all, const char *what, double at_m) {
  for (int s = 0; s < all->count; s++) {
    const lw_situation *at = &all->situation[s];
    for (int i = 0; i < at->check_count; i++) {
      const lw_check *c = checks_test_check(at, i);
      cr_expect_not(lw_check_faulty(c), "%s at %.9f: %s %s: %s: %s", what, at_m, lw_situation_slug(at->name),
                    lw_check_slug(c->kind), lw_reason_slug(c->reason), b->name);
      if (c->has.known) cr_expect(isfinite(c->has.value));
    }
  }
}

/* How much of what holds is used up; where nothing pushes, nothing. */
static double used(const lw_check *check) {
  if (!check->ratio.known) return check->holds == LW_HOLDS ? 0.0 : -1.0;
  return check->ratio.value > 0.0 ? 1.0 / check->ratio.value : 1e9;
}

static void expect_same(bench *b, const char *what, double at_m) {
  for (int s = 0; s < b->before.count; s++) {
    const lw_situation *x = &b->before.situation[s], *y = &b->after.situation[s];
    for (int i = 0; i < x->check_count; i++) {
      const lw_check *p = checks_test_check(x, i), *q = checks_test_check(y, i);
      char at[32];
      lw_check_print_at(p, at, sizeof at);
      b->compared++;
      cr_expect(fabs(used(p) - used(q)) <= SAME * used(p) + 1e-6,
                "%s at %.9f: %s, %s %s: %.9g, then %.9g: %s", what, at_m, lw_situation_slug(x->name),
                lw_check_slug(p->kind), at, p->ratio.value, q->ratio.value, b->name);
    }
  }
}

/* Ground begins at the rear of the wall at its own level: on a ledge that is its rear edge, above it its
 * front one, and a slope or a load begins there too. */
static bool on_a_ledge(const lw_section *section, double depth_m) {
  double y = section->height_m - depth_m;
  bool ledge = false;
  for (int i = 0; i + 1 < section->outline_count; i++) {
    const lw_corner *p = &section->outline[i], *q = p + 1;
    bool there = fabs(p->y_m - y) < 1e-6 && fabs(q->y_m - y) < 1e-6;
    ledge = ledge || (there && y > 1e-6 && y < section->height_m - 1e-6);
  }
  return ledge;
}

/* A crack may go down to the bottom of a layer that keeps it open: to the foot where that ends there. */
static bool cracks_to_the_foot(const lw_wall *wall) {
  const lw_soil *first = &wall->site.soil[0];
  bool keeps_open = first->cohesion_kpa > 0.0 && wall->site.soil_count > 1;
  return keeps_open && fabs(first->bottom_m - wall->section.height_m) < 1e-6;
}

/* Ground in front that counts is asked a figure of its own, from the first of it on. */
static bool counts_in_front(const lw_wall *wall) {
  return wall->method.passive_share > 0.0 && wall->section.embedment_m < 1e-6;
}

static bool is_threshold(const lw_wall *wall, double depth_m) {
  bool soil = fabs(depth_m - wall->site.soil_below_top_m) < 1e-6;
  return (soil && on_a_ledge(&wall->section, depth_m)) || cracks_to_the_foot(wall) || counts_in_front(wall);
}

static void move(bench *b, const lw_case *c, lw_quantity *moved, const char *what) {
  double level[LEVELS_MAX];
  lw_wall_build(c, sheet_test_tables(), &b->wall);
  int count = levels_of(&b->wall, level);
  for (int i = 0; i < count; i++) {
    const double by[] = {-MILLIMETRE, -NANOMETRE, NANOMETRE, MILLIMETRE};
    moved->si = level[i];
    run(b, c, &b->before);
    expect_sound(b, &b->before, what, level[i]);
    bool jumps = is_threshold(&b->wall, level[i]);
    for (int k = 0; k < 4; k++) {
      if (level[i] + by[k] < 0.0) continue;
      moved->si = level[i] + by[k];
      run(b, c, &b->after);
      expect_sound(b, &b->after, what, moved->si);
      if (fabs(by[k]) < 1e-6 && !jumps) expect_same(b, what, level[i]);
    }
  }
}

/* A wall of its own kind, with its name at hand. */
static lw_case next_case(dice *d, bench *b) {
  random_wall wall;
  random_wall_make(d, &wall);
  random_wall_add(&wall, "method slip=not");
  random_wall_name(&wall, b->name, sizeof b->name);
  return random_wall_case(&wall);
}

Test(checks, a_level_moved_by_a_nanometre_changes_no_ratio) {
  dice d = {20261};
  bench *b = calloc(1, sizeof *b);
  cr_assert_not_null(b);
  for (int i = 0; i < WALLS; i++) {
    lw_case c = next_case(&d, b), with = c;
    move(b, &with, &with.ground.soil_below_top, "soil below top");
    with = c;
    if (c.ground.soil[0].bottom.origin == LW_GIVEN)
      move(b, &with, &with.ground.soil[0].bottom, "soil 1 bottom");
    with = c;
    if (c.water.depth.origin == LW_GIVEN) move(b, &with, &with.water.depth, "water depth");
    with = c;
    move(b, &with, &with.water.overflow_below_top, "overflow below top");
    with = c;
    with.water.front_depth.origin = LW_GIVEN;
    move(b, &with, &with.water.front_depth, "front water depth");
    with = c;
    move(b, &with, &with.wall.embedment, "wall embedment");
  }
  cr_expect_lt(20000 / LONG_SHARE, b->compared);
  free(b);
}

/* Up to a millimetre higher or lower than what it is made of: the same wall, soil up to its top and all. */
Test(checks, a_wall_is_as_high_as_its_courses_or_points_make_it) {
  dice d = {20262};
  bench *b = calloc(1, sizeof *b);
  cr_assert_not_null(b);
  for (int i = 0; i < WALLS; i++) {
    const double by[] = {-MILLIMETRE, -NANOMETRE, NANOMETRE, MILLIMETRE};
    lw_case c = next_case(&d, b);
    if (c.wall.kind.value != LW_WALL_COURSES) continue;
    if (i % 2) c.ground.soil_below_top.si = 0.0;
    run(b, &c, &b->before);
    for (int k = 0; k < 4; k++) {
      lw_case with = c;
      with.wall.height.si += by[k];
      run(b, &with, &b->after);
      expect_sound(b, &b->after, "wall height", with.wall.height.si);
      expect_same(b, "wall height", with.wall.height.si);
      cr_expect(fabs(b->wall.section.height_m - b->wall.section.crest.y_m) <= 0.0);
    }
  }
  free(b);
}

/* The base of a polygon may be a millimetre out of level, its top lies where its highest point is. */
Test(checks, a_polygon_may_stand_a_millimetre_out_of_level) {
  static const char *const foot[] = {"0 mm", "0.000001 mm", "0.5 mm", "1 mm"};
  double base = 0.0, push = 0.0;
  for (size_t i = 0; i < sizeof foot / sizeof *foot; i++) {
    char front[40], rear[40];
    snprintf(front, sizeof front, "point 1 y=%s", i % 2 ? foot[i] : "0 mm");
    snprintf(rear, sizeof rear, "point 2 y=%s", i % 2 ? "0 mm" : foot[i]);
    lw_result *r = RUN("point 1 x=0 m", front, "point 2 x=0.8 m", rear, "point 3 x=0.8 m", "point 3 y=1.2 m",
                       "point 4 x=0.4 m", "point 4 y=1.2 m", "wall height=1.2 m", "wall embedment=0 mm",
                       "soil below top=0 mm", "soil 1 friction angle=31 deg", "soil 1 unit weight=18 kN/m3",
                       "method slip=not", "ground slope=0 deg", "load 1 kind=none");
    const lw_free_body *drained = &checks_test_situation(r, LW_SITUATION_DRAINED)->base;
    cr_assert_eq(drained->status, LW_OK);
    if (i == 0) base = drained->contact.width_m, push = drained->thrust.total_kn_per_m;
    cr_expect(fabs(drained->contact.width_m - base) < 1e-12, "%s %s", front, rear);
    cr_expect(checks_test_near(drained->thrust.total_kn_per_m, push, 1e-9), "%s %s", front, rear);
    free(r);
  }
  cr_expect(fabs(base - 0.8) < 1e-12);
  cr_expect_lt(0.0, push);
}
