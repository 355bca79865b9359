/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "soil/site.h"
#include "standards/factors.h"
#include "load_cases/load_case.h"
#include "tables/find.h"
#include "wall/wall.h"
#include "contacts.h"
#include "../checks/random_wall.h"
#include "../checks/support.h"

/* A thrust is told in parts, because each has a partial factor of its own: soil, surcharge, earthquake, loads
 * at a distance, level pushes. The parts must be the whole, and each must act on the plane. */

enum { WALLS = 64 / RANDOM_SHARE };

static bool is_thrust(lw_force_kind kind) {
  return kind == LW_FORCE_THRUST || kind == LW_FORCE_SURCHARGE_THRUST || kind == LW_FORCE_LOADS_THRUST ||
         kind == LW_FORCE_LEVEL_THRUST || kind == LW_FORCE_SEISMIC_THRUST;
}

/* Elastic loads stand beside the thrust, unless the wedge carries them. */
static bool is_beside(const lw_push *push, lw_force_kind kind) {
  return kind == LW_FORCE_LOADS_THRUST && !push->wedge_governs && push->elastic.push_kn_per_m >= 1e-12;
}

/* Every row on the plane, their sum the thrust, and their moment the thrust's at its height. */
static void expect_whole(const lw_push *push, const lw_free_body *body, const char *what) {
  const lw_back_plane *back = &push->back;
  double force = 0.0, moment = 0.0, room = 1e-9 * (1.0 + back->plane.height_m);
  for (int i = 0; i < body->forces.count; i++) {
    const lw_force *f = &body->forces.force[i];
    double arm = f->y_m - back->foot_y_m;
    if (!is_thrust(f->kind)) continue;
    cr_expect(arm >= -room && arm <= back->plane.height_m + room, "%s: kind %d at %g of %g", what, f->kind,
              arm, back->plane.height_m);
    cr_expect_lt(fabs(f->x_m - (back->foot_x_m - arm * back->lean)), room, "%s: kind %d off the plane", what,
                 f->kind);
    if (is_beside(push, f->kind)) continue;
    force += f->horizontal_kn_per_m;
    moment += f->horizontal_kn_per_m * arm;
  }
  const lw_thrust *t = &push->thrust;
  cr_expect_lt(fabs(force - t->horizontal_kn_per_m), 1e-9 * (1.0 + force), "%s: %g of %g", what, force,
               t->horizontal_kn_per_m);
  double turns = t->horizontal_kn_per_m * t->height_of_action_m;
  cr_expect_lt(fabs(moment - turns), 1e-9 * (1.0 + turns), "%s: moment %g of %g", what, moment, turns);
}

/* Whose factor a row takes, written down once more. */
static double factor_of(const lw_factors *f, lw_force_kind kind) {
  const double by_kind[] = {
      [LW_FORCE_PART] = f->wall_weight,
      [LW_FORCE_SOIL_ON_WALL] = f->soil_weight,
      [LW_FORCE_SURCHARGE_ON_WALL] = f->surcharge_on_wall,
      [LW_FORCE_THRUST] = f->earth_pressure,
      [LW_FORCE_SURCHARGE_THRUST] = f->variable,
      [LW_FORCE_LOADS_THRUST] = f->variable,
      [LW_FORCE_LEVEL_THRUST] = f->level_push,
      [LW_FORCE_WATER] = f->water,
      [LW_FORCE_FRONT_WATER] = f->front_water,
      [LW_FORCE_UPLIFT] = f->water,
      [LW_FORCE_PEOPLE] = f->variable_on_wall,
      [LW_FORCE_CAP_LOAD] = f->variable_on_wall,
      [LW_FORCE_SEISMIC_THRUST] = 1.0,
      [LW_FORCE_INERTIA] = 1.0,
      [LW_FORCE_SEISMIC_WATER] = 1.0,
      [LW_FORCE_TRENCH] = f->trench,
  };
  return f->factored ? by_kind[kind] : 1.0;
}

typedef struct sums {
  double down, level, holds;
} sums;

static void add_to(sums *s, const lw_force *f, double factor, const lw_contact *contact, double foot_m) {
  double level = factor * f->horizontal_kn_per_m, down = factor * f->vertical_kn_per_m;
  s->down += down;
  s->level += level;
  s->holds += down * (f->x_m - contact->front_m) - level * (f->y_m - foot_m);
}

/* What is not the same with factors as without: uplift where a contact opens and the stone of the pad below
 * go by the resultant, what an earthquake takes off a weight is a share of the weight with its factor, and
 * ground in front of a pad holds no more than what pushes on the pad with its own. */
static bool made_of_others(const lw_force *f) {
  return f->kind == LW_FORCE_UPLIFT || (f->kind == LW_FORCE_PART && f->index < 0) ||
         f->kind == LW_FORCE_INERTIA || f->kind == LW_FORCE_TRENCH;
}

static void expect_factored(const lw_free_body *plain, const lw_free_body *body, double foot_m,
                            const char *what) {
  const lw_contact *c = &body->contact;
  sums sum = {0.0, 0.0, 0.0};
  for (int i = 0; i < plain->forces.count; i++) {
    const lw_force *f = &plain->forces.force[i];
    if (!made_of_others(f)) add_to(&sum, f, factor_of(&body->forces.factors, f->kind), c, foot_m);
  }
  for (int i = 0; i < body->forces.count; i++)
    if (made_of_others(&body->forces.force[i])) add_to(&sum, &body->forces.force[i], 1.0, c, foot_m);
  double holds = c->resisting_knm_per_m - c->overturning_knm_per_m;
  double room = 1e-9 * (1.0 + c->resisting_knm_per_m + c->overturning_knm_per_m);
  cr_expect(checks_test_near(1.0 + sum.down, 1.0 + c->vertical_kn_per_m, 1e-9), "%s: V", what);
  cr_expect(checks_test_near(1.0 + sum.level, 1.0 + c->horizontal_kn_per_m, 1e-9), "%s: H", what);
  cr_expect_lt(fabs(sum.holds - holds), room, "%s: moment %g, of the unfactored rows %g", what, holds,
               sum.holds);
}

static void expect_contact(const lw_wall *wall, const lw_factor_set *factor_set,
                           const lw_load_case *load_case, const test_contact *contact, const char *what) {
  static lw_free_body plain, body;
  lw_factors factors[LW_LEANINGS];
  lw_load_case with = *load_case;
  if (!contact_stage(wall, &with, contact, &plain)) return;
  expect_whole(&contact->push, &plain, what);
  int count = lw_factor_set_on_actions(factor_set, load_case, wall, factors);
  for (int i = 0; i < count; i++) {
    with.actions.factors = factors[i];
    contact_stage(wall, &with, contact, &body);
    bool pad = contact->place.at == LW_AT_PAD;
    expect_factored(&plain, &body, pad ? -contact->place.stack.below_m : 0.0, what);
  }
}

/* Under one set, dry or wet, shaken or not. */
static void expect_set(dice *d, const lw_wall *wall, const lw_factor_row *row, const char *name) {
  static test_contact contact[CONTACTS_MAX];
  lw_factor_set factor_set;
  bool shaken = dice_pick(d, 4) == 0, wet = dice_pick(d, 2) == 0;
  lw_load_case load_case = {
      .situation = shaken ? LW_SITUATION_EARTHQUAKE : LW_SITUATION_DRAINED,
      .kind = shaken ? LW_EXTREME : LW_USUAL,
      .actions = {.people_down_kn_per_m = 0.4, .people_out_kn_per_m = 0.1, .cap_load = true}};
  lw_ground *ground = &load_case.ground;
  ground->water_depth_m = wet ? lw_site_blocked_depth(&wall->site) : wall->site.water_depth_m;
  if (shaken) ground->seismic = (lw_seismic){0.1, dice_between(d, -0.05, 0.05), 0.6, dice_pick(d, 2) == 0};
  lw_factor_set_read_of(sheet_test_tables(), row, &factor_set);
  lw_load_case_ground(wall, &factor_set, &load_case, NULL);
  int count = contacts_of(wall, ground, contact);
  for (int i = 0; i < count; i++) {
    const lw_place *place = &contact[i].place;
    char what[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3) + 64];
    snprintf(what, sizeof what, "%s, %s%s, contact %d: %s", row->factor_set, wet ? "wet" : "dry",
             shaken ? ", shaken" : "", place->joint > 0 ? place->joint : -(int)place->at, name);
    expect_contact(wall, &factor_set, &load_case, &contact[i], what);
  }
}

static void make(dice *d, random_wall *wall) {
  random_wall_make(d, wall);
  double near = dice_between(d, 0.0, 1.2);
  if (dice_pick(d, 2)) {
    random_wall_add(wall, "load 2 kind=strip");
    random_wall_add(wall, "load 2 pressure=%.3f kPa", dice_between(d, 0.0, 100.0));
    random_wall_add(wall, "load 2 far edge=%.3f m", near + dice_between(d, 0.1, 2.0));
    random_wall_add(wall, "load 2 near edge=%.3f m", near);
  } else {
    random_wall_add(wall, "load 2 kind=line");
    random_wall_add(wall, "load 2 force=%.3f kN/m", dice_between(d, 0.0, 20.0));
    random_wall_add(wall, "load 2 distance=%.3f m", near);
  }
}

Test(thrust_parts, add_up_on_every_contact_under_every_set) {
  const lw_tables *tables = sheet_test_tables();
  dice d = {20260711};
  int tried = 0;
  for (int i = 0; i < WALLS; i++) {
    static lw_wall wall;
    char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
    random_wall items;
    make(&d, &items);
    lw_case c = random_wall_case(&items);
    lw_wall_build(&c, tables, &wall);
    random_wall_name(&items, name, sizeof name);
    bool at_rest = wall.method.pressure == LW_PRESSURE_AT_REST;
    if (i % 2 == 0 && !at_rest) wall.method.load_pressure = LW_LOAD_PRESSURE_WEDGE;
    /* A post of a fence leans on the ground behind. */
    if (i % 3 == 0 && wall.site.load_count > 0) wall.site.load[0].push_kn_per_m = dice_between(&d, 0.0, 1.0);
    for (int k = 0; k < tables->factor_count; k++) {
      if (lw_tables_factor_set(tables, tables->factor[k].factor_set) != k) continue;
      expect_set(&d, &wall, &tables->factor[k], name);
      tried++;
    }
  }
  cr_expect_lt(20 * WALLS, tried);
}

/* By hand: soil 0.382 x 18/2 = 3.4385 kN/m at a third of the height, times 1.1; the wedge through the line
 * has 9.2453 kN/m at 0.44754 m, so that the line's 5.8068 acts at 0.5152 m, times 1.5. Against them 16.5 kN/m
 * of blocks at 0.375 m, times 0.9: 5.5688 / (1.2608 + 4.4872) = 0.969. */
Test(thrust_parts, a_line_load_that_tips_the_wall_takes_its_own_factor) {
  lw_result *result =
      RUN("course count=5", "block height=200 mm", "block depth=750 mm", "block unit weight=22 kN/m3",
          "soil 1 friction angle=32 deg", "soil 1 unit weight=18 kN/m3", "wall embedment=0 m",
          "ground slope=0 deg", "load 1 kind=line", "load 1 force=6 kN/m", "load 1 distance=0.3 m",
          "people on cap=no", "method format=en1997-equ", "method slip=not", "wall friction=0 deg");
  const lw_situation *drained = checks_test_situation(result, LW_SITUATION_DRAINED);
  const lw_check *tips = checks_test_at_base(drained, LW_CHECK_OVERTURNING);
  cr_expect_lt(fabs(tips->has.value - 0.969), 5e-4, "has %g", tips->has.value);
  cr_expect_eq(tips->holds, LW_FALLS_SHORT);
  free(result);
}
