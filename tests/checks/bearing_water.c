/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "balance/ground.h"
#include "checks/bearing.h"
#include "../balance/contacts.h"
#include "wall/wall.h"
#include "random_wall.h"
#include "support.h"

/* Bearing by theory where water stands in front of the wall. */

enum { WALLS = 160 / RANDOM_SHARE, SLICES = 20000 };

/* Effective weight of a column of the ground between two levels, slice by slice. */
static double column(const lw_site *site, double low_m, double high_m, double water_m) {
  double sum = 0.0, thick = (high_m - low_m) / SLICES;
  const lw_soil *soil = &site->footing;
  for (int i = 0; i < SLICES; i++) {
    double y = low_m + (i + 0.5) * thick;
    double buoyant = soil->saturated_unit_weight_kn_per_m3 - site->water_unit_weight_kn_per_m3;
    sum += thick * (y < water_m ? buoyant : soil->light_unit_weight_kn_per_m3);
  }
  return sum;
}

static void expect_strip(const lw_wall *wall, const lw_load_case *load_case, const test_contact *contact,
                         const lw_free_body *body, const char *name) {
  lw_strip strip = lw_bearing_strip(wall, &load_case->ground, body, contact->place.at, NULL);
  double foot = contact->place.at == LW_AT_PAD ? -wall->site.pad.thickness_m : 0.0;
  double ground = wall->section.bearing_embedment_m,
         water = wall->section.height_m - wall->site.front_water_depth_m;
  double beside = column(&wall->site, foot, ground, water), width = strip.width_m;
  double below = column(&wall->site, foot - width, foot, water) / width;
  cr_expect(checks_test_near(1.0 + strip.overburden_kpa, 1.0 + beside, 1e-3), "beside %g, by slices %g: %s",
            strip.overburden_kpa, beside, name);
  cr_expect(checks_test_near(strip.unit_weight_kn_per_m3, below, 1e-3), "below %g, by slices %g: %s",
            strip.unit_weight_kn_per_m3, below, name);
}

/* Base and pad of any wall, the water in front anywhere from far below the base to the top. */
Test(bearing_water, the_ground_weighs_what_its_columns_weigh) {
  static test_contact contact[CONTACTS_MAX];
  static lw_wall wall;
  static lw_free_body body;
  lw_load_case load_case = {.actions = {.cap_load = true}};
  dice d = {10};
  int tried = 0;
  for (int i = 0; i < WALLS; i++) {
    char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
    random_wall items;
    random_wall_make(&d, &items);
    lw_case c = random_wall_case(&items);
    lw_wall_build(&c, sheet_test_tables(), &wall);
    wall.site.water_depth_m = INFINITY;
    wall.site.front_water_depth_m = dice_between(&d, 0.0, 3.0 * wall.section.height_m);
    random_wall_name(&items, name, sizeof name);
    lw_ground_own(&wall, &load_case.ground);
    int count = contacts_of(&wall, &load_case.ground, contact);
    for (int k = 0; k < count && contact[k].place.at != LW_AT_JOINT; k++) {
      if (!contact_stage(&wall, &load_case, &contact[k], &body) || !body.contact.inside) continue;
      expect_strip(&wall, &load_case, &contact[k], &body, name);
      tried++;
    }
  }
  cr_expect_lt(WALLS / 2, tried);
}

#define UPRIGHT \
  "wall kind=section", "wall height=1 m", "top width=0.8 m", "base width=0.8 m", \
      "wall unit weight=22 kN/m3", "wall embedment=0.3 m", "footing soil friction angle=30 deg", \
      "footing soil unit weight=18 kN/m3", "footing soil saturated unit weight=20 kN/m3", \
      "load 1 kind=none", "method bearing=hansen", "people on cap=no", "ground slope=0 deg", \
      "soil 1 friction angle=30 deg", "soil 1 unit weight=18 kN/m3", "drain outlets=2", "method slip=not", \
      "method base pressure=no tension", "wall friction=0 deg"

static double has_of(const char *water) {
  lw_result *result = RUN(UPRIGHT, water);
  const lw_situation *drained = checks_test_situation(result, LW_SITUATION_DRAINED);
  double has = checks_test_at_base(drained, LW_CHECK_BEARING)->has.value;
  free(result);
  return has;
}

/* By hand: of 99.9 kPa on 45.8 kPa, moist, 10.19/18 is left with the water at the ground in front. */
Test(bearing_water, at_the_ground_in_front_all_of_it_is_buoyant) {
  double wet = has_of("front water depth=1 m");
  cr_expect_lt(fabs(wet - 1.234), 5e-4, "has %g", wet);
}

/* From a base width below the base upwards it only takes away, and nothing jumps. */
Test(bearing_water, nearer_to_the_base_bears_less) {
  const lw_soil soil = {.friction_rad = 0.5,
                        .unit_weight_kn_per_m3 = 18.0,
                        .light_unit_weight_kn_per_m3 = 17.0,
                        .saturated_unit_weight_kn_per_m3 = 20.0};
  static lw_wall wall;
  wall.site.footing = soil;
  wall.site.water_unit_weight_kn_per_m3 = 9.81;
  wall.section.height_m = 1.2;
  wall.section.bearing_embedment_m = 0.3;
  wall.site.water_depth_m = INFINITY;
  lw_free_body *body = calloc(1, sizeof *body);
  body->contact = (lw_contact){
      .width_m = 0.7, .area_m2 = 0.7, .effective_width_m = 0.7, .vertical_kn_per_m = 20.0, .inside = true};
  lw_ground ground;
  double before = 0.0;
  for (double depth = 0.5; depth < 3.0; depth += 0.01) {
    wall.site.front_water_depth_m = depth;
    lw_ground_own(&wall, &ground);
    lw_strip strip = lw_bearing_strip(&wall, &ground, body, LW_AT_BASE, NULL);
    lw_bearing bearing;
    cr_assert_eq(lw_bearing_hansen(&strip, &bearing, NULL, NULL), LW_OK);
    cr_expect_leq(before, bearing.ultimate_kpa);
    if (before > 0.0) cr_expect_lt(bearing.ultimate_kpa - before, 0.03 * before, "at %g", depth);
    before = bearing.ultimate_kpa;
  }
  free(body);
}
