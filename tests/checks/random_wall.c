/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "random_wall.h"

#include <criterion/criterion.h>
#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>

#include "../sheet/support.h"

/* A linear congruential generator; its high bits are the good ones. */
double dice_between(dice *d, double low, double high) {
  d->state = d->state * 6364136223846793005ULL + 1442695040888963407ULL;
  return low + (high - low) * (double)(d->state >> 11) / 9007199254740992.0;
}

int dice_pick(dice *d, int count) {
  return (int)dice_between(d, 0.0, (double)count);
}

void random_wall_add(random_wall *wall, const char *format, ...) {
  va_list arguments;
  cr_assert_lt(wall->count, (int)RANDOM_ITEMS);
  va_start(arguments, format);
  int length = vsnprintf(wall->text[wall->count++], RANDOM_ITEM_BYTES, format, arguments);
  va_end(arguments);
  cr_assert_lt(length, (int)RANDOM_ITEM_BYTES);
}

const char *random_wall_name(const random_wall *wall, char *out, size_t size) {
  size_t used = 0;
  for (int i = 0; i < wall->count && used < size; i++)
    used += (size_t)snprintf(out + used, size - used, "%s'%s'", i > 0 ? " " : "", wall->text[i]);
  return out;
}

lw_case random_wall_case(const random_wall *wall) {
  const char *arguments[RANDOM_ITEMS + 1] = {NULL};
  for (int i = 0; i < wall->count; i++) arguments[i] = wall->text[i];
  return sheet_test_case(arguments);
}

static void add_stack(dice *d, random_wall *wall) {
  double height = dice_between(d, 80.0, 300.0), depth = dice_between(d, 150.0, 900.0);
  random_wall_add(wall, "course count=%d", 1 + dice_pick(d, 8));
  random_wall_add(wall, "block height=%.3f mm", height);
  random_wall_add(wall, "block depth=%.3f mm", depth);
  random_wall_add(wall, "block unit weight=%.3f kN/m3", dice_between(d, 12.0, 26.0));
  random_wall_add(wall, "wall embedment=%.3f mm", dice_between(d, 0.0, 0.9) * height);
}

static void add_frills(dice *d, random_wall *wall) {
  if (dice_pick(d, 2)) random_wall_add(wall, "setback=%.3f mm", dice_between(d, 0.0, 100.0));
  if (dice_pick(d, 4) == 0) {
    random_wall_add(wall, "base course count=1");
    random_wall_add(wall, "base course depth=%.3f mm", dice_between(d, 900.0, 1300.0));
  }
  if (dice_pick(d, 3) == 0) {
    random_wall_add(wall, "cap height=%.3f mm", dice_between(d, 20.0, 120.0));
    random_wall_add(wall, "cap overhang=%.3f mm", dice_between(d, 0.0, 60.0));
  }
  if (dice_pick(d, 6) == 0)
    random_wall_add(wall, "face shell thickness=%.3f mm", dice_between(d, 15.0, 60.0));
  if (dice_pick(d, 4) == 0) {
    double shear = dice_between(d, 0.0, 3.0);
    random_wall_add(wall, "joint shear=%.3f kN/m", shear);
    if (shear > 0.5) random_wall_add(wall, "key strength=%.3f kN/m", 2.0 * shear);
  }
}

static void add_section(dice *d, random_wall *wall) {
  double height = dice_between(d, 0.3, 4.0), base = dice_between(d, 0.3, 3.0);
  double slab = dice_pick(d, 2) ? dice_between(d, 0.1, 0.3) * height : 0.0;
  double toe = slab > 0.0 ? dice_between(d, 0.0, 0.3) * base : 0.0;
  double heel = slab > 0.0 ? dice_between(d, 0.0, 0.4) * base : 0.0;
  double foot = base - toe - heel, lean = fmin(dice_between(d, -0.1, 0.3) * foot / (height - slab), 0.5);
  double buried = dice_between(d, 0.0, 0.4) * height;
  random_wall_add(wall, "wall height=%.4f m", height - buried);
  random_wall_add(wall, "wall embedment=%.4f m", buried);
  random_wall_add(wall, "base width=%.4f m", base);
  random_wall_add(wall, "top width=%.4f m", dice_between(d, 0.3, 0.6) * foot);
  random_wall_add(wall, "back batter=%.4f deg", atan(lean) * 57.29578);
  random_wall_add(wall, "wall unit weight=%.3f kN/m3", dice_between(d, 16.0, 26.0));
  if (slab <= 0.0) return;
  random_wall_add(wall, "slab thickness=%.4f m", slab);
  random_wall_add(wall, "toe length=%.4f m", toe);
  random_wall_add(wall, "heel length=%.4f m", heel);
}

static void add_ground(dice *d, random_wall *wall) {
  double phi = dice_between(d, 18.0, 44.0), weight = dice_between(d, 14.0, 21.0);
  double slope = dice_pick(d, 2) ? dice_between(d, 0.0, 0.97) * phi : 0.0;
  random_wall_add(wall, "soil 1 friction angle=%.4f deg", phi);
  random_wall_add(wall, "soil 1 unit weight=%.3f kN/m3", weight);
  random_wall_add(wall, "soil 1 saturated unit weight=%.3f kN/m3", weight + dice_between(d, 0.5, 3.0));
  random_wall_add(wall, "ground slope=%.4f deg", slope);
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "ground slope run=%.3f m", dice_between(d, 0.0, 5.0));
  if (dice_pick(d, 4) == 0) random_wall_add(wall, "soil 1 cohesion=%.3f kPa", dice_between(d, 0.0, 6.0));
  if (dice_pick(d, 4) == 0) {
    random_wall_add(wall, "soil 1 bottom=%.3f m", dice_between(d, 0.05, 1.5));
    random_wall_add(wall, "soil 2 friction angle=%.3f deg", dice_between(d, 18.0, 40.0));
    random_wall_add(wall, "soil 2 unit weight=%.3f kN/m3", dice_between(d, 15.0, 20.0));
  }
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "soil below top=%.4f m", dice_between(d, 0.0, 0.07));
  random_wall_add(wall, "wall friction=%.4f", dice_between(d, 0.0, 1.0));
}

static void add_footing(dice *d, random_wall *wall) {
  random_wall_add(wall, "footing soil friction angle=%.3f deg", dice_between(d, 20.0, 38.0));
  random_wall_add(wall, "footing soil cohesion=%.3f kPa", dice_between(d, 0.0, 10.0));
  random_wall_add(wall, "base friction=%.4f", dice_between(d, 0.2, 0.7));
  random_wall_add(wall, "allowable bearing=%.2f kPa", dice_between(d, 40.0, 300.0));
  if (dice_pick(d, 3)) return;
  random_wall_add(wall, "pad thickness=%.3f mm", dice_between(d, 50.0, 400.0));
  random_wall_add(wall, "pad width=%.3f mm", dice_between(d, 3000.0, 4000.0));
  random_wall_add(wall, "pad material=crushed rock");
}

static void add_loads(dice *d, random_wall *wall) {
  static const char *const KINDS[] = {"none", "uniform", "strip", "line"};
  int kind = dice_pick(d, 4);
  double near = dice_between(d, 0.0, 3.0);
  random_wall_add(wall, "load 1 kind=%s", KINDS[kind]);
  if (kind == 1 || kind == 2) random_wall_add(wall, "load 1 pressure=%.3f kPa", dice_between(d, 0.0, 15.0));
  if (kind == 2) random_wall_add(wall, "load 1 near edge=%.3f m", near);
  if (kind == 2) random_wall_add(wall, "load 1 far edge=%.3f m", near + dice_between(d, 0.1, 2.0));
  if (kind == 3) random_wall_add(wall, "load 1 force=%.3f kN/m", dice_between(d, 0.0, 8.0));
  if (kind == 3) random_wall_add(wall, "load 1 distance=%.3f m", near);
}

static void add_method(dice *d, random_wall *wall) {
  static const char *const PRESSURES[] = {"rankine", "coulomb", "wedge", "at rest"};
  static const char *const BASES[] = {"own", "no tension", "linear", "effective"};
  static const char *const BEARINGS[] = {"presumptive", "terzaghi", "meyerhof", "hansen", "vesic", "en1997"};
  random_wall_add(wall, "method pressure=%s", PRESSURES[dice_pick(d, 4)]);
  random_wall_add(wall, "method base pressure=%s", BASES[dice_pick(d, 4)]);
  random_wall_add(wall, "method bearing=%s", BEARINGS[dice_pick(d, 6)]);
  if (dice_pick(d, 4) == 0) random_wall_add(wall, "method surcharge on heel=presses");
  if (dice_pick(d, 4) == 0) random_wall_add(wall, "method passive=%.3f", dice_between(d, 0.0, 1.0));
  if (dice_pick(d, 4) == 0) random_wall_add(wall, "method thrust direction=level");
  if (dice_pick(d, 4) == 0) random_wall_add(wall, "method uplift as=off resistance");
}

void random_wall_make(dice *d, random_wall *wall) {
  wall->count = 0;
  if (dice_pick(d, 3)) {
    add_stack(d, wall);
    add_frills(d, wall);
    if (dice_pick(d, 2)) random_wall_add(wall, "wall joints=open");
  } else {
    add_section(d, wall);
  }
  add_ground(d, wall);
  add_footing(d, wall);
  add_loads(d, wall);
  add_method(d, wall);
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "water depth=%.3f m", dice_between(d, 0.0, 1.0));
  random_wall_add(wall, "drain outlets=%d", dice_pick(d, 3));
}

void random_wall_hurry(random_wall *wall, int number) {
  if (number % 4 != 0) random_wall_add(wall, "method slip=not");
}

void random_wall_plain(dice *d, random_wall *wall) {
  double weight = dice_between(d, 15.0, 20.0);
  wall->count = 0;
  add_stack(d, wall);
  random_wall_add(wall, "soil 1 unit weight=%.3f kN/m3", weight);
  random_wall_add(wall, "soil 1 saturated unit weight=%.3f kN/m3", weight + dice_between(d, 0.5, 3.0));
  random_wall_add(wall, "wall friction=%.4f", dice_between(d, 0.0, 0.9));
  random_wall_add(wall, "base friction=%.4f", dice_between(d, 0.2, 0.7));
}

lw_result *random_wall_run(const random_wall *wall) {
  char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
  lw_result *result = calloc(1, sizeof *result);
  lw_case c = random_wall_case(wall);
  lw_error error = {0};
  cr_assert_not_null(result);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, &error), LW_OK, "%s: %s",
               error.text, random_wall_name(wall, name, sizeof name));
  return result;
}
