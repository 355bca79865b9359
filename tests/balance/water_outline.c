/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "balance/ground.h"
#include "wall/wall.h"
#include "contacts.h"
#include "../checks/random_wall.h"
#include "../checks/support.h"

/* Water presses on every face that it reaches, on the undersides of courses and cap too. */

enum { WALLS = 200 / RANDOM_SHARE };

static void make(dice *d, random_wall *wall) {
  double depth = dice_between(d, 250.0, 700.0);
  wall->count = 0;
  random_wall_add(wall, "course count=%d", 2 + dice_pick(d, 6));
  random_wall_add(wall, "block height=%.3f mm", dice_between(d, 80.0, 300.0));
  random_wall_add(wall, "block depth=%.3f mm", depth);
  random_wall_add(wall, "setback=%.3f mm", dice_pick(d, 4) ? dice_between(d, 0.0, 120.0) : 0.0);
  random_wall_add(wall, "wall embedment=0 mm");
  random_wall_add(wall, "soil 1 friction angle=%.3f deg", dice_between(d, 26.0, 38.0));
  random_wall_add(wall, "ground slope=0 deg");
  random_wall_add(wall, "wall joints=sealed");
  if (dice_pick(d, 2)) return;
  random_wall_add(wall, "cap height=%.3f mm", dice_between(d, 30.0, 120.0));
  random_wall_add(wall, "cap depth=%.3f mm", depth * dice_between(d, 0.8, 1.6));
  random_wall_add(wall, "cap overhang=%.3f mm", dice_between(d, 0.0, 100.0));
}

static void build(const random_wall *items, double behind_m, double front_m, lw_wall *wall) {
  lw_case c = random_wall_case(items);
  lw_wall_build(&c, sheet_test_tables(), wall);
  wall->site.water_depth_m = behind_m;
  wall->site.front_water_depth_m = front_m;
}

typedef struct sums {
  double level, down, turns; /* to the front, down, and what turns the wall forwards about x = 0, y = 0 */
} sums;

static double deep(double level_m, double y_m) {
  return fmax(level_m - y_m, 0.0);
}

/* A level face from x to x, pressed from below (up) or from above. */
static void add_level_face(double from_m, double to_m, double head_m, bool up, sums *s) {
  double width = fmax(to_m - from_m, 0.0), force = 9.81 * head_m * width * (up ? -1.0 : 1.0);
  s->down += force;
  s->turns -= force * 0.5 * (from_m + to_m);
}

/* An upright face, pressed to the front (1) or back (-1): triangles of pressure above its two ends. */
static void add_upright_face(double low_m, double high_m, double level_m, double sign, sums *s) {
  double a = deep(level_m, low_m), b = deep(level_m, high_m);
  double force = sign * 9.81 * 0.5 * (a * a - b * b);
  s->level += force;
  s->turns += sign * 9.81 * 0.5 * (a * a * (level_m - 2.0 / 3.0 * a) - b * b * (level_m - 2.0 / 3.0 * b));
}

/* The stack box by box, each face as far as no other box or contact covers it. */
static sums press(const lw_section *section, double level_m, bool behind) {
  sums s = {0.0, 0.0, 0.0};
  for (int i = 0; i < section->part_count; i++) {
    const lw_part *box = &section->part[i];
    bool lowest = i == 0, highest = i == section->part_count - 1;
    double under_front = lowest ? section->contact_front_m : box[-1].front_m;
    double under_rear = lowest ? section->contact_rear_m : box[-1].rear_m;
    double over_front = highest ? box->front_m : box[1].front_m,
           over_rear = highest ? box->rear_m : box[1].rear_m;
    double below = deep(level_m, box->bottom_m), above = deep(level_m, box->top_m);
    add_upright_face(box->bottom_m, box->top_m, level_m, behind ? 1.0 : -1.0, &s);
    if (behind) {
      add_level_face(fmax(under_rear, box->front_m), box->rear_m, below, true, &s);
      add_level_face(fmax(over_rear, box->front_m), box->rear_m, above, false, &s);
    } else {
      add_level_face(box->front_m, fmin(under_front, box->rear_m), below, true, &s);
      add_level_face(box->front_m, fmin(over_front, box->rear_m), above, false, &s);
    }
  }
  return s;
}

static sums rows_of(const lw_free_body *body, lw_force_kind kind) {
  sums s = {0.0, 0.0, 0.0};
  for (int i = 0; i < body->forces.count; i++) {
    const lw_force *f = &body->forces.force[i];
    if (f->kind != kind) continue;
    s.level += f->horizontal_kn_per_m;
    s.down += f->vertical_kn_per_m;
    s.turns += f->horizontal_kn_per_m * f->y_m - f->vertical_kn_per_m * f->x_m;
  }
  return s;
}

static void expect_same(const sums *a, const sums *b, const char *what, const char *name) {
  cr_expect_lt(fabs(a->level - b->level), 1e-9, "%s, level %g, pressed %g: %s", what, a->level, b->level,
               name);
  cr_expect_lt(fabs(a->down - b->down), 1e-9, "%s, down %g, pressed %g: %s", what, a->down, b->down, name);
  cr_expect_lt(fabs(a->turns - b->turns), 1e-9, "%s, turns %g, pressed %g: %s", what, a->turns, b->turns,
               name);
}

Test(water_outline, presses_on_every_face_of_every_stack) {
  static test_contact contact[CONTACTS_MAX];
  static lw_wall wall;
  static lw_free_body body;
  lw_load_case load_case = {.actions = {.cap_load = true}};
  dice d = {8};
  for (int i = 0; i < WALLS; i++) {
    char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
    random_wall items;
    make(&d, &items);
    build(&items, dice_between(&d, 0.0, 0.5), dice_between(&d, 0.0, 1.0), &wall);
    random_wall_name(&items, name, sizeof name);
    lw_ground_own(&wall, &load_case.ground);
    int count = contacts_of(&wall, &load_case.ground, contact);
    for (int k = 0; k < count; k++) {
      const lw_section *section = contact[k].place.stack.section;
      if (contact[k].place.at == LW_AT_PAD) continue;
      if (!contact_stage(&wall, &load_case, &contact[k], &body)) continue;
      sums behind = press(section, section->height_m - wall.site.water_depth_m, true);
      sums front = press(section, section->height_m - wall.site.front_water_depth_m, false);
      sums is_behind = rows_of(&body, LW_FORCE_WATER), is_front = rows_of(&body, LW_FORCE_FRONT_WATER);
      expect_same(&is_behind, &behind, "behind", name);
      expect_same(&is_front, &front, "in front", name);
    }
  }
}

static double net_of(const lw_contact *c) {
  return c->resisting_knm_per_m - c->overturning_knm_per_m;
}

/* A wall that starts at joint 1, on ground as wide as its course, has all that the joint has but the water
 * under the part of that course that hangs over; and nothing else where none does. */
Test(water_outline, a_joint_is_the_base_of_the_wall_cut_there) {
  static test_contact of_whole[CONTACTS_MAX], of_cut[CONTACTS_MAX];
  static lw_wall whole, cut;
  static lw_free_body joint, base;
  lw_load_case of_all = {.actions = {.cap_load = true}}, of_less = of_all;
  dice d = {81};
  for (int i = 0; i < WALLS; i++) {
    char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
    random_wall items, less;
    make(&d, &items);
    less = items;
    double depth = dice_between(&d, 0.0, 0.4);
    build(&items, depth, INFINITY, &whole);
    snprintf(less.text[0], sizeof less.text[0], "course count=%d", whole.section.course_count - 1);
    build(&less, depth, INFINITY, &cut);
    random_wall_name(&items, name, sizeof name);
    double hangs = whole.section.part[1].rear_m - whole.section.part[0].rear_m;
    if (hangs > 1e-9) whole.method.uplift_share = cut.method.uplift_share = 0.0;
    lw_ground_own(&whole, &of_all.ground);
    lw_ground_own(&cut, &of_less.ground);
    contacts_of(&whole, &of_all.ground, of_whole);
    contacts_of(&cut, &of_less.ground, of_cut);
    const test_contact *lowest = of_whole + 1 + (of_whole[1].place.at == LW_AT_PAD);
    if (!contact_stage(&whole, &of_all, lowest, &joint)) continue;
    contact_stage(&cut, &of_less, &of_cut[0], &base);
    double lift = 9.81 * hangs * fmax(cut.section.height_m - depth, 0.0);
    double arm = whole.section.part[0].rear_m + 0.5 * hangs - whole.section.part[1].front_m;
    const lw_contact *a = &joint.contact, *b = &base.contact;
    cr_expect(checks_test_near(a->vertical_kn_per_m, b->vertical_kn_per_m - lift, 1e-9), "%s", name);
    cr_expect(checks_test_near(a->horizontal_kn_per_m, b->horizontal_kn_per_m, 1e-9), "%s", name);
    cr_expect_lt(fabs(net_of(a) - net_of(b) + lift * arm), 1e-9, "%s: %g and %g", name, net_of(a), net_of(b));
  }
}

/* By hand: two courses of 1.76 kN/m at 0.2 and 0.3 m hold 0.880 kN m/m; soil and water push 0.347, and the
 * water under 0.1 m of the lower one, 0.4 m below its surface, lifts 0.392 kN/m at 0.35 m:
 * 0.880/(0.347 + 0.137) = 1.82. */
Test(water_outline, the_underside_of_a_joints_own_course_tilts_it) {
  lw_result *result =
      RUN("course count=3", "block height=0.2 m", "block depth=0.4 m", "setback=0.1 m",
          "block unit weight=22 kN/m3", "joint friction=0.5", "soil 1 friction angle=30 deg",
          "soil 1 cohesion=0 kPa", "soil 1 unit weight=18 kN/m3", "soil 1 saturated unit weight=20 kN/m3",
          "ground slope=0 deg", "load 1 kind=none", "people on cap=no", "wall embedment=0 m",
          "method slip=not", "method pressure=rankine");
  const lw_situation *blocked = checks_test_situation(result, LW_SITUATION_OUTLET_BLOCKED);
  double has = NAN;
  for (int i = 0; i < blocked->check_count; i++)
    if (lw_situation_check(blocked, i).kind == LW_CHECK_TILTING && lw_situation_check(blocked, i).joint == 1)
      has = lw_situation_check(blocked, i).has.value;
  cr_expect_lt(fabs(has - 1.82), 5e-3, "has %g", has);
  free(result);
}
