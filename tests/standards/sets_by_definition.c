/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sets_by_definition.h"

#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "../checks/support.h"

/* The factored checks of random walls, worked out here from unfactored forces as the codes define them:
 * the strengths to design with are typed into a sheet, the wall is run under a set that factors nothing, and
 * every force then takes the factor of its source, each source favourable and not. */

static const double PI = 3.14159265358979323846;

/* [EN1997-1 T.A.1] to [EN1997-1 T.A.4], [EN1997-1 T.A.13]; [AASHTO-LRFD T.3.4.1-2], [AASHTO-LRFD T.3.4.1-1],
 * [AASHTO-LRFD T.10.5.5.2.2-1]. */
const code_set CODE_SETS[CODE_SET_COUNT] = {
    {"en1997-da1-1", 1.0, 1.0, {1.0, 1.35}, {1.0, 1.35}, {1.0, 1.35}, 1.5, 1.5, 1.0, 1.0, 0.4, false},
    {"en1997-da1-2", 1.25, 1.4, {1.0, 1.0}, {1.0, 1.0}, {1.0, 1.0}, 1.3, 1.3, 1.0, 1.0, 0.4, false},
    {"en1997-da2-geo",
     1.0,
     1.0,
     {1.0, 1.35},
     {1.0, 1.35},
     {1.0, 1.35},
     1.5,
     1.5,
     1.0 / 1.1,
     1.0 / 1.4,
     0.4,
     false},
    {"en1997-da3-geo", 1.25, 1.4, {1.0, 1.35}, {1.0, 1.0}, {1.0, 1.0}, 1.3, 1.5, 1.0, 1.0, 0.4, false},
    {"en1997-equ", 1.25, 1.4, {0.9, 1.1}, {0.9, 1.1}, {0.9, 1.1}, 1.5, 1.5, 1.0, 1.0, INFINITY, true},
    {"ibc", 1.0, 1.0, {1.0, 1.0}, {1.0, 1.0}, {1.0, 1.0}, 1.0, 1.0, 1.0, 1.0, INFINITY, true},
    {"aashto-lrfd-strength-1",
     1.0,
     1.0,
     {0.9, 1.25},
     {1.0, 1.35},
     {0.9, 1.5},
     1.75,
     1.75,
     0.8,
     0.45,
     INFINITY,
     false},
};

double code_design_angle(double angle_deg, double strength) {
  return atan(tan(angle_deg * PI / 180.0) / strength) * 180.0 / PI;
}

void code_wall_make(dice *d, code_wall *w) {
  *w = (code_wall){.buried_m = 0.0};
  w->height_m = dice_between(d, 0.5, 2.5);
  w->base_m = dice_between(d, 0.12, 0.7) * w->height_m;
  w->lean = dice_pick(d, 2) ? dice_between(d, 0.0, 0.35) : 0.0;
  w->face = dice_pick(d, 2) ? dice_between(d, 0.0, 0.35) : 0.0;
  w->weight = dice_between(d, 16.0, 25.0);
  w->phi_deg = dice_between(d, 27.0, 42.0);
  w->delta_deg = dice_between(d, 0.0, 0.8) * w->phi_deg;
  w->gamma = dice_between(d, 16.0, 21.0);
  w->slope_deg = dice_pick(d, 2) ? dice_between(d, 0.0, 0.6) * w->phi_deg : 0.0;
  w->load_kpa = dice_pick(d, 2) ? dice_between(d, 0.0, 12.0) : 0.0;
  w->footing_deg = dice_between(d, 22.0, 36.0);
  /* No more than the ground's own, which would be the weaker of the two. */
  w->friction = dice_between(d, 0.3, 0.95 * tan(w->footing_deg * PI / 180.0));
  w->coulomb = dice_pick(d, 2);
}

void code_wall_on_clay(dice *d, code_wall *w) {
  code_wall_make(d, w);
  w->footing_deg = w->friction = 0.0;
  w->clay_kpa = dice_between(d, 10.0, 120.0);
  w->adhesion_kpa = dice_between(d, 0.3, 1.0) * w->clay_kpa;
}

static void add_footing(const code_wall *w, double strength, double undrained, random_wall *items) {
  random_wall_add(items, "footing soil friction angle=%.17g deg",
                  code_design_angle(w->footing_deg, strength));
  random_wall_add(items, "base friction=%.17g", w->friction / strength);
  if (w->clay_kpa <= 0.0) return;
  random_wall_add(items, "footing soil cohesion=%.17g kPa", w->clay_kpa / undrained);
  random_wall_add(items, "base adhesion=%.17g kPa", w->adhesion_kpa / undrained);
  random_wall_add(items, "method bearing=en1997");
  random_wall_add(items, "method base pressure=effective");
}

void code_wall_items(const code_wall *w, double strength, double undrained, random_wall *items) {
  double phi = code_design_angle(w->phi_deg, strength), delta = code_design_angle(w->delta_deg, strength);
  *items = (random_wall){0};
  random_wall_add(items, "wall kind=section");
  random_wall_add(items, "wall height=%.17g m", w->height_m - w->buried_m);
  random_wall_add(items, "wall embedment=%.17g m", w->buried_m);
  random_wall_add(items, "base width=%.17g m", w->base_m);
  random_wall_add(items, "top width=%.17g m", w->base_m * (1.0 - w->lean - w->face));
  random_wall_add(items, "face batter=%.17g deg", atan(w->base_m * w->face / w->height_m) * 180.0 / PI);
  random_wall_add(items, "back batter=%.17g deg", atan(w->base_m * w->lean / w->height_m) * 180.0 / PI);
  random_wall_add(items, "wall unit weight=%.17g kN/m3", w->weight);
  random_wall_add(items, "soil 1 friction angle=%.17g deg", phi);
  random_wall_add(items, "soil 1 unit weight=%.17g kN/m3", w->gamma);
  random_wall_add(items, "soil 1 cohesion=0 kPa");
  random_wall_add(items, "wall friction=%.17g deg", delta);
  random_wall_add(items, "ground slope=%.17g deg", w->slope_deg);
  random_wall_add(items, "load 1 kind=%s", w->load_kpa > 0.0 ? "uniform" : "none");
  if (w->load_kpa > 0.0) random_wall_add(items, "load 1 pressure=%.17g kPa", w->load_kpa);
  add_footing(w, strength, undrained, items);
  random_wall_add(items, "people on cap=yes");
  random_wall_add(items, "method slip=not");
  random_wall_add(items, "method surcharge on heel=presses");
  random_wall_add(items, "method pressure=%s", w->coulomb ? "coulomb" : "rankine");
}

lw_result *code_run(const random_wall *items, const char *format) {
  random_wall wall = *items;
  lw_result *result = malloc(sizeof *result);
  cr_assert_not_null(result);
  random_wall_add(&wall, "method format=%s", format);
  lw_case c = random_wall_case(&wall);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  return result;
}

double code_factor_of(const code_set *s, const code_leaning *as, lw_force_kind kind) {
  switch (kind) {
  case LW_FORCE_PART: return s->wall[as->wall_heavy];
  case LW_FORCE_SOIL_ON_WALL: return s->soil[as->soil_heavy];
  case LW_FORCE_THRUST: return s->push[!as->pushes_less];
  case LW_FORCE_SURCHARGE_THRUST: return as->no_load ? 0.0 : s->variable;
  case LW_FORCE_PEOPLE: return s->people;
  case LW_FORCE_SURCHARGE_ON_WALL: return as->on_heel && !as->no_load ? s->variable : 0.0;
  default: cr_assert_fail("a force that these walls have not");
  }
  return 0.0;
}

code_balance code_balance_of(const code_set *s, const code_leaning *as, const lw_free_body *plain) {
  code_balance b = {0};
  for (int i = 0; i < plain->forces.count; i++) {
    const lw_force *f = &plain->forces.force[i];
    double factor = code_factor_of(s, as, f->kind);
    double down = factor * f->vertical_kn_per_m, level = factor * f->horizontal_kn_per_m;
    if (f->kind == LW_FORCE_PEOPLE && as->nobody_down) down = 0.0;
    double moments[] = {down * f->x_m, -level * f->y_m};
    b.down += down;
    b.level += level;
    for (int k = 0; k < 2; k++) *(moments[k] >= 0.0 ? &b.holds : &b.tips) += fabs(moments[k]);
  }
  double from_toe = b.down > 0.0 ? (b.holds - b.tips) / b.down : -1.0;
  double near = fmin(from_toe, plain->contact.width_m - from_toe);
  b.inside = near > 0.0;
  b.pressed = b.inside ? fmin(1.0, 3.0 * near / plain->contact.width_m) : 0.0;
  b.effective_m = fmax(2.0 * near, 0.0);
  return b;
}

int code_leanings(const code_set *s, code_leaning all[CODE_LEANINGS]) {
  bool one_source = fabs(s->wall[0] - s->soil[0]) + fabs(s->wall[1] - s->soil[1]) < 1e-12;
  bool lumped = s->variable < 1.2;
  int count = 0;
  for (int i = 0; i < CODE_LEANINGS; i++) {
    code_leaning as = {i & 1, i & 2, i & 4, i & 8, i & 16, i & 32};
    if (one_source && as.wall_heavy != as.soil_heavy) continue;
    /* A lumped set leaves every load where it is, but for people who may get up. */
    if (lumped && (as.no_load || !as.on_heel)) continue;
    all[count++] = as;
  }
  return count;
}

void code_expect(const lw_situation *s, lw_check_kind kind, double wanted, const char *what) {
  const lw_check *check = checks_test_at_base(s, kind);
  cr_assert(check && check->has.known, "%s", what);
  cr_expect(checks_test_near(check->has.value, wanted, 1e-7), "%s has %.9g, by definition %.9g: %s",
            lw_check_slug(kind), check->has.value, wanted, what);
}
