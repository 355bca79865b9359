/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"
#include "random_wall.h"
#include "support.h"
#include "load_cases/basis.h"
#include "soil/site.h"

/* Ground in front that resists along a rough face turns up, and lifts the wall: what that costs in friction
 * is worked out here from the coefficient's formula, under every set of factors. */

enum { WALLS = 25 };

/* [COULOMB1776 general form], upright face: the whole thrust over γ D²/2. */
static double coulomb(double phi, double delta, double slope) {
  double root = sqrt(sin(phi + delta) * sin(phi + slope) / (cos(delta) * cos(slope)));
  return pow(cos(phi), 2) / (cos(delta) * pow(1.0 - root, 2));
}

/* Level part less what its lift costs under the base or the pad, the share included. */
static double counted(const lw_wall *wall, const lw_strengths *design, double depth_m, double friction) {
  const lw_soil *soil = &wall->site.footing;
  double phi = design->footing.friction_rad, slope = wall->site.front_slope_rad;
  bool planes = wall->method.pressure == LW_PRESSURE_COULOMB || slope > 0.0;
  double delta = planes ? fmin(design->wall_friction_rad, phi / 3.0) : 0.0;
  double k = coulomb(phi, delta, -slope);
  double weight = soil->light_unit_weight_kn_per_m3 * depth_m * depth_m / 2.0;
  double thrust = k * weight + 2.0 * design->footing.cohesion_kpa * sqrt(k) * depth_m;
  return wall->method.passive_share * thrust * (cos(delta) - friction * sin(delta));
}

static random_wall wall_by(dice *d) {
  random_wall wall = {0};
  random_wall_plain(d, &wall);
  random_wall_add(&wall, "soil 1 friction angle=%.4f deg", dice_between(d, 26.0, 40.0));
  random_wall_add(&wall, "footing soil friction angle=%.4f deg", dice_between(d, 22.0, 36.0));
  random_wall_add(&wall, "footing soil cohesion=%.4f kPa", dice_pick(d, 2) ? dice_between(d, 0.0, 5.0) : 0.0);
  random_wall_add(&wall, "method pressure=%s", dice_pick(d, 3) ? "coulomb" : "rankine");
  random_wall_add(&wall, "method passive=%.4f", dice_between(d, 0.1, 1.0));
  random_wall_add(&wall, "method passive as=resistance");
  random_wall_add(&wall, "method slip=not");
  random_wall_add(&wall, "ground slope=0 deg");
  if (dice_pick(d, 3) == 0) random_wall_add(&wall, "front slope=%.4f deg", dice_between(d, 2.0, 12.0));
  if (dice_pick(d, 2)) return wall;
  random_wall_add(&wall, "pad thickness=%.4f mm", dice_between(d, 100.0, 400.0));
  random_wall_add(&wall, "pad material=crushed rock");
  return wall;
}

/* gives whether the ground in front lifts the wall */
static bool expect(const lw_result *r, const lw_check *check, const char *name) {
  lw_basis by;
  bool pad = check->at == LW_AT_PAD;
  if (check->kind != LW_CHECK_SLIDING || (!pad && check->at != LW_AT_BASE) || !check->has.known) return false;
  cr_assert(lw_check_basis(&r->wall, r->tables, &r->situations.situation[0], check, &by), "%s", name);
  const lw_strengths *design = &by.load_case.ground.design;
  double mu = pad ? design->pad_friction : design->base_friction;
  double depth = by.wall->section.embedment_m + (pad ? by.wall->site.pad.thickness_m : 0.0);
  /* A tenth of what stands above the ground in front, at most 0.5 m, is dug away first [EN1997-1 9.3.2.2]. */
  bool digs = check->by && strncmp(check->by->factor_set, "en1997-da", 9) == 0;
  double above = by.wall->section.height_m - by.wall->section.embedment_m;
  if (digs) depth = fmax(depth - fmin(0.1 * above, 0.5), 0.0);
  const lw_contact *c = &by.body.contact;
  double own = mu * c->vertical_kn_per_m;
  if (c->inside) own += design->base_adhesion_kpa * c->width_m * c->share_in_compression;
  double wanted = by.on_sliding * own + by.on_passive * counted(by.wall, design, depth, mu);
  /* A set that asks more where the ground in front counts asks its plain figure where it does not. */
  bool asks = check->by && lw_tables_factor(r->tables, check->by->factor_set, "sliding-with-passive");
  if (asks && strcmp(check->by->quantity, "sliding") == 0) wanted = by.on_sliding * own;
  /* A factor on every strength is told as the resistance at full strength over the push that is left. */
  if (by.wedges > 0.0) wanted *= by.wedges;
  cr_expect(checks_test_near(check->resistance.value, wanted, 1e-9), "%.9g, by hand %.9g: %s",
            check->resistance.value, wanted, name);
  return by.wall->method.pressure == LW_PRESSURE_COULOMB && design->wall_friction_rad > 0.01;
}

Test(passive, what_it_lifts_costs_friction_under_every_set) {
  const lw_tables *tables = sheet_test_tables();
  dice d = {.state = 1312};
  int lifted = 0;
  for (int w = 0; w < WALLS; w++) {
    random_wall bare = wall_by(&d);
    for (int i = 0; i < tables->factor_count; i++) {
      char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
      const char *format = tables->factor[i].factor_set;
      if (i > 0 && strcmp(format, tables->factor[i - 1].factor_set) == 0) continue;
      random_wall wall = bare;
      random_wall_add(&wall, "method format=%s", format);
      lw_result *r = malloc(sizeof *r);
      lw_case c = random_wall_case(&wall);
      cr_assert_eq(lw_run(&c, tables, LW_DETAIL_EVERYTHING, r, NULL), LW_OK);
      random_wall_name(&wall, name, sizeof name);
      const lw_situation *drained = &r->situations.situation[0];
      for (int k = 0; k < drained->check_count; k++) lifted += expect(r, checks_test_check(drained, k), name);
      free(r);
    }
  }
  cr_expect(lifted > 8 * WALLS, "%d thrusts lift", lifted);
}

/* A tenth of two metres is all the ground that is in front: none is left to resist. Of 0.5 m of it a tenth of
 * 1.5 m goes, and 0.35 m are left: (0.35/0.5)² = 0.49 of what resists under a lumped set. */
Test(passive, ground_in_front_is_dug_away_by_the_code) {
  static const char *const formats[] = {"method format=lowwall", "method format=en1997-da1-1"};
  double shallow[2], deep[2];
  for (int i = 0; i < 2; i++) {
    lw_result *a = RUN("wall kind=section", "wall height=2 m", "wall embedment=0.2 m", "base width=1.5 m",
                       "top width=1.5 m", "method passive=1", "footing soil friction angle=30 deg",
                       "soil 1 friction angle=30 deg", "method slip=not", formats[i]);
    lw_result *b = RUN("wall kind=section", "wall height=1.5 m", "wall embedment=0.5 m", "base width=1.5 m",
                       "top width=1.5 m", "method passive=1", "footing soil friction angle=30 deg",
                       "soil 1 friction angle=30 deg", "method slip=not", formats[i]);
    shallow[i] = checks_test_situation(a, LW_SITUATION_DRAINED)->base.passive_kn_per_m;
    deep[i] = checks_test_situation(b, LW_SITUATION_DRAINED)->base.passive_kn_per_m;
    free(a);
    free(b);
  }
  cr_expect(shallow[0] > 0.0 && fabs(shallow[1]) < 1e-12, "%g and %g", shallow[0], shallow[1]);
  cr_expect(checks_test_near(deep[1], 0.49 * deep[0], 1e-12), "%g of %g", deep[1], deep[0]);
}
