/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/result.h>
#include <math.h>
#include <stdlib.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "../sheet/support.h"

/* Coulomb's thrust on the wall's own back: the line from the rear of the base to the rear of the top. */

static const lw_free_body *base_of(const lw_result *result) {
  return &checks_test_situation(result, LW_SITUATION_DRAINED)->base;
}

#define HEELED \
  "wall kind=section", "wall height=1 m", "wall embedment=0 mm", "top width=0.3 m", "base width=0.8 m", \
      "heel length=0.5 m", "slab thickness=0.2 m", "soil 1 friction angle=33 deg", "load 1 kind=none", \
      "soil 1 light unit weight=15 kN/m3", "soil 1 unit weight=19 kN/m3", "ground slope=0 deg", \
      "wall friction=16 deg"

/* By hand: the line falls back by 0.5 m over 1 m; at the slab's top it is 0.4 m behind the stem, and the soil
 * in front of it is a triangle 0.4 m wide and 0.8 m high. Of a stem alone nothing stands in front. */
Test(own_back, a_heel_carries_the_soil_in_front_of_the_line) {
  lw_result *own = RUN(HEELED), *stem = RUN(HEELED, "method plane=back");
  const lw_free_body *a = base_of(own), *b = base_of(stem);
  cr_expect_eq(own->wall.method.pressure, LW_PRESSURE_COULOMB);
  cr_expect(checks_test_near(a->back.plane.batter_rad, atan(0.5), 1e-12));
  cr_expect(checks_test_near(a->back.foot_x_m, 0.8, 1e-12) && checks_test_near(a->back.top_x_m, 0.3, 1e-12));
  cr_expect(checks_test_near(checks_test_vertical(a, LW_FORCE_SOIL_ON_WALL), 0.5 * 0.4 * 0.8 * 15.0, 1e-9));
  cr_expect_float_eq(b->back.plane.batter_rad, 0.0, 1e-12);
  cr_expect_lt(fabs(checks_test_vertical(b, LW_FORCE_SOIL_ON_WALL)), 1e-12);
  free(own);
  free(stem);
}

/* The same wall as a slab with a heel and by its points: one line, one thrust. */
Test(own_back, a_heel_by_lengths_and_by_points_is_one_wall) {
  lw_result *lengths = RUN(HEELED);
  lw_result *points =
      RUN("wall kind=section", "wall height=1 m", "wall embedment=0 mm", "point 1 x=0 m", "point 1 y=0 m",
          "point 2 x=0.8 m", "point 2 y=0 m", "point 3 x=0.8 m", "point 3 y=0.2 m", "point 4 x=0.3 m",
          "point 4 y=0.2 m", "point 5 x=0.3 m", "point 5 y=1 m", "point 6 x=0 m", "point 6 y=1 m",
          "soil 1 friction angle=33 deg", "load 1 kind=none", "soil 1 light unit weight=15 kN/m3",
          "soil 1 unit weight=19 kN/m3", "ground slope=0 deg", "wall friction=16 deg");
  const lw_contact *a = &base_of(lengths)->contact, *b = &base_of(points)->contact;
  cr_expect(checks_test_near(a->horizontal_kn_per_m, b->horizontal_kn_per_m, 1e-9));
  cr_expect(checks_test_near(a->vertical_kn_per_m, b->vertical_kn_per_m, 1e-9));
  cr_expect(checks_test_near(a->resisting_knm_per_m, b->resisting_knm_per_m, 1e-9));
  free(lengths);
  free(points);
}

/* Without friction on an upright back under level ground Coulomb's thrust is Rankine's, whatever the load,
 * the water and the cohesion. */
Test(own_back, smooth_upright_and_level_it_is_rankines) {
  enum { WALLS = 120 / RANDOM_SHARE };
  dice d = {20260};
  for (int i = 0; i < WALLS; i++) {
    random_wall wall = {0}, other;
    double height = 0.2 * (2 + dice_pick(&d, 6));
    random_wall_add(&wall, "wall kind=section");
    random_wall_add(&wall, "wall height=%.17g m", height);
    random_wall_add(&wall, "wall embedment=%.17g m", dice_between(&d, 0.0, 0.2));
    random_wall_add(&wall, "base width=%.17g m", height);
    random_wall_add(&wall, "top width=%.17g m", dice_between(&d, 0.2, height));
    random_wall_add(&wall, "back batter=0 deg");
    random_wall_add(&wall, "wall friction=0 deg");
    random_wall_add(&wall, "ground slope=0 deg");
    random_wall_add(&wall, "soil 1 friction angle=%.17g deg", dice_between(&d, 20.0, 40.0));
    random_wall_add(&wall, "soil 1 cohesion=%.17g kPa", dice_pick(&d, 2) * dice_between(&d, 0.0, 2.0));
    random_wall_add(&wall, "water depth=%.17g m", dice_between(&d, 0.0, 2.0));
    random_wall_add(&wall, "load 1 kind=uniform");
    random_wall_add(&wall, "load 1 pressure=%.17g kPa", dice_between(&d, 0.0, 5.0));
    random_wall_add(&wall, "method slip=not");
    other = wall;
    random_wall_add(&wall, "method pressure=coulomb");
    random_wall_add(&other, "method pressure=rankine");
    lw_result *coulomb = random_wall_run(&wall), *rankine = random_wall_run(&other);
    const lw_contact *a = &base_of(coulomb)->contact, *b = &base_of(rankine)->contact;
    cr_expect(checks_test_near(a->horizontal_kn_per_m, b->horizontal_kn_per_m, 1e-9), "wall %d", i);
    cr_expect(checks_test_near(a->overturning_knm_per_m, b->overturning_knm_per_m, 1e-9), "wall %d", i);
    cr_expect(checks_test_near(a->resisting_knm_per_m, b->resisting_knm_per_m, 1e-9), "wall %d", i);
    free(coulomb);
    free(rankine);
  }
}

/* Upright blocks of H and B on friction mu, no water, worked by hand and by another program: K by Coulomb,
 * P = K (gamma H^2/2 + q H); (W + P sin d) mu / (P cos d) slides, and (W B/2 + P sin d B) over
 * K cos d (gamma H^3/6 + q H^2/2) tips. */
Test(own_back, six_walls_worked_by_hand) {
  static const struct {
    double height, width, phi, share, weight, load, mu, block, slides, tips;
  } rows[] = {
      {0.75, 0.35, 30.0, 0.5, 20.0, 1.0, 0.45, 21.0, 1.4571, 2.3178},
      {0.75, 0.35, 32.5, 2.0 / 3.0, 18.0, 0.5, 0.55, 22.0, 2.5491, 3.4050},
      {0.75, 0.20, 28.0, 0.5, 20.0, 2.0, 0.35, 21.0, 0.5759, 0.6857},
      {0.75, 0.20, 32.0, 2.0 / 3.0, 18.0, 1.0, 0.45, 22.0, 1.1730, 1.1263},
      {0.90, 0.20, 26.0, 0.5, 20.0, 3.0, 0.30, 21.0, 0.3744, 0.4381},
      {0.90, 0.20, 28.0, 2.0 / 3.0, 18.0, 1.5, 0.35, 22.0, 0.6453, 0.6744},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    random_wall wall = {0};
    random_wall_add(&wall, "wall kind=section");
    random_wall_add(&wall, "wall height=%.17g m", rows[i].height);
    random_wall_add(&wall, "wall embedment=0 m");
    random_wall_add(&wall, "base width=%.17g m", rows[i].width);
    random_wall_add(&wall, "top width=%.17g m", rows[i].width);
    random_wall_add(&wall, "wall unit weight=%.17g kN/m3", rows[i].block);
    random_wall_add(&wall, "wall friction=%.17g", rows[i].share);
    random_wall_add(&wall, "ground slope=0 deg");
    random_wall_add(&wall, "soil 1 friction angle=%.17g deg", rows[i].phi);
    random_wall_add(&wall, "soil 1 unit weight=%.17g kN/m3", rows[i].weight);
    random_wall_add(&wall, "load 1 kind=uniform");
    random_wall_add(&wall, "load 1 pressure=%.17g kPa", rows[i].load);
    random_wall_add(&wall, "base friction=%.17g", rows[i].mu);
    random_wall_add(&wall, "people on cap=no");
    random_wall_add(&wall, "method slip=not");
    lw_result *r = random_wall_run(&wall);
    const lw_situation *s = checks_test_situation(r, LW_SITUATION_DRAINED);
    double slides = checks_test_at_base(s, LW_CHECK_SLIDING)->has.value;
    double tips = checks_test_at_base(s, LW_CHECK_OVERTURNING)->has.value;
    cr_expect_float_eq(slides, rows[i].slides, 0.5e-4, "wall %zu slides: %.6f", i, slides);
    cr_expect_float_eq(tips, rows[i].tips, 0.5e-4, "wall %zu tips: %.6f", i, tips);
    free(r);
  }
}

/* A section with a back that is upright or that soil lies on, or upright blocks. */
static void soil_lies_on(dice *d, random_wall *wall) {
  double height = 0.2 * (3 + dice_pick(d, 5));
  random_wall_add(wall, "wall kind=section");
  random_wall_add(wall, "wall height=%.17g m", height);
  random_wall_add(wall, "wall embedment=0 m");
  random_wall_add(wall, "base width=%.17g m", dice_between(d, 0.4, 0.9) * height);
  random_wall_add(wall, "top width=0.2 m");
  if (dice_pick(d, 2)) random_wall_add(wall, "face batter=0 deg");
  random_wall_add(wall, "soil 1 friction angle=%.17g deg", dice_between(d, 24.0, 38.0));
  random_wall_add(wall, "soil 1 unit weight=%.17g kN/m3", dice_between(d, 16.0, 20.0));
  random_wall_add(wall, "ground slope=%.17g deg", dice_pick(d, 3) ? 0.0 : dice_between(d, 0.0, 20.0));
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "water depth=%.17g m", dice_between(d, 0.0, height));
  random_wall_add(wall, "load 1 kind=uniform");
  random_wall_add(wall, "load 1 pressure=%.17g kPa", dice_between(d, 0.0, 5.0));
  random_wall_add(wall, "base friction=%.17g", dice_between(d, 0.3, 0.6));
  random_wall_add(wall, "people on cap=no");
  random_wall_add(wall, "method slip=not");
}

Test(own_back, more_friction_never_holds_less) {
  enum { WALLS = 60 / RANDOM_SHARE };
  dice d = {20265};
  for (int i = 0; i < WALLS; i++) {
    random_wall bare = {0};
    double slides = 0.0, tips = 0.0;
    soil_lies_on(&d, &bare);
    for (int share = 0; share <= 6; share++) {
      random_wall wall = bare;
      char name[2048];
      random_wall_add(&wall, "wall friction=%.17g", share / 6.0);
      lw_result *r = random_wall_run(&wall);
      const lw_situation *s = checks_test_situation(r, LW_SITUATION_DRAINED);
      double now[] = {checks_test_at_base(s, LW_CHECK_SLIDING)->has.value,
                      checks_test_at_base(s, LW_CHECK_OVERTURNING)->has.value};
      cr_expect(now[0] >= slides * (1.0 - 1e-9), "slides %.6g, %.6g before: %s", now[0], slides,
                random_wall_name(&wall, name, sizeof name));
      cr_expect(now[1] >= tips * (1.0 - 1e-9), "tips %.6g, %.6g before: %s", now[1], tips,
                random_wall_name(&wall, name, sizeof name));
      slides = now[0], tips = now[1];
      free(r);
    }
  }
}
