/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "checks/bearing.h"
#include "checks/compression.h"
#include "checks/overturning.h"
#include "random_wall.h"
#include "support.h"
#include "load_cases/situations.h"
#include "wall/wall.h"

/* What holds a contact, and what does not: adhesion, and a resultant that leaves it on either side. */

enum { WALLS = 120 / RANDOM_SHARE };

static double resistance_of(const lw_situation *situation, lw_at at) {
  for (int i = 0; i < situation->check_count; i++)
    if (situation->kept[i].kind == LW_CHECK_SLIDING && situation->kept[i].at == at)
      return lw_situation_check(situation, i).resistance.value;
  return NAN;
}

/* The same wall with 10 kPa of adhesion and without. */
static void adhesion_of(random_wall items, double *base_kn_per_m, double *pad_kn_per_m, lw_free_body *base,
                        lw_free_body *pad) {
  double held[2][2];
  for (int i = 0; i < 2; i++) {
    static lw_wall wall;
    static lw_situations all;
    random_wall with = items;
    random_wall_add(&with, "base adhesion=%d kPa", 10 * i);
    lw_case c = random_wall_case(&with);
    lw_wall_build(&c, sheet_test_tables(), &wall);
    lw_situations_run(&wall, sheet_test_tables(), LW_DETAIL_EVERYTHING, &all);
    held[i][0] = resistance_of(&all.situation[0], LW_AT_BASE);
    held[i][1] = resistance_of(&all.situation[0], LW_AT_PAD);
    *base = all.situation[0].base;
    *pad = all.situation[0].pad;
  }
  *base_kn_per_m = held[1][0] - held[0][0];
  *pad_kn_per_m = held[1][1] - held[0][1];
}

/* On what touches the ground; on the effective width, once, where the pressure is even over that: under a pad
 * and by `effective`. */
Test(held, adhesion_on_the_width_that_bears) {
  dice d = {140};
  int tried = 0, opened = 0;
  for (int i = 0; i < WALLS; i++) {
    static lw_free_body base, pad;
    random_wall items;
    double at_base, at_pad;
    random_wall_plain(&d, &items);
    bool effective = i % 2 == 0;
    random_wall_add(&items, "soil 1 friction angle=%.3f deg", dice_between(&d, 24.0, 40.0));
    random_wall_add(&items, "pad thickness=%.3f m", dice_between(&d, 0.05, 0.3));
    random_wall_add(&items, "pad width=4 m");
    random_wall_add(&items, "pad material=crushed rock");
    random_wall_add(&items,
                    "footing soil friction angle=24 deg"); /* no clay, which holds no more than its own */
    random_wall_add(&items, "method base pressure=%s", effective ? "effective" : "no tension");
    random_wall_add(&items, "method slip=not");
    adhesion_of(items, &at_base, &at_pad, &base, &pad);
    if (base.status != LW_OK || !base.contact.inside) continue;
    double width =
        effective ? base.contact.effective_width_m : base.contact.width_m * base.contact.share_in_compression;
    cr_expect_lt(fabs(at_base - 10.0 * width), 1e-9, "wall %d: %g on %g", i, at_base, width);
    tried++;
    if (!pad.contact.inside) continue;
    cr_expect_lt(fabs(at_pad - 10.0 * pad.contact.effective_width_m), 1e-9, "wall %d, pad", i);
    opened += base.contact.share_in_compression < 0.999;
  }
  cr_expect_lt(20 / RANDOM_SHARE, tried);
  cr_expect_lt(4 / RANDOM_SHARE, opened);
}

/* A free body whose resultant stands at a distance from the front edge of a contact of 0.4 m. */
static lw_free_body stage_at(double resultant_m, double overturning_knm_per_m) {
  double weight = 6.0;
  return (lw_free_body){.status = LW_OK,
                        .contact = {.width_m = 0.4,
                                    .vertical_kn_per_m = weight,
                                    .resisting_knm_per_m = weight * resultant_m + overturning_knm_per_m,
                                    .overturning_knm_per_m = overturning_knm_per_m,
                                    .resultant_m = resultant_m,
                                    .eccentricity_m = 0.2 - resultant_m,
                                    .inside = resultant_m > 0.0 && resultant_m < 0.4}};
}

/* In front of the contact or behind it, with something that overturns or nothing: it stands on nothing. */
Test(held, a_resultant_outside_is_ratio_0_on_either_side) {
  static const double places[] = {-0.01, 0.41, 0.8}, turns[] = {0.0, 0.7};
  lw_wall wall = {.method = {.base_pressure = LW_BASE_NO_TENSION}};
  lw_factor_set_family family;
  lw_factor_set_read(sheet_test_tables(), "lowwall", &family);
  lw_load_case load_case = {.kind = LW_USUAL, .ground = {.water_depth_m = INFINITY}};
  const lw_place on_base = {LW_AT_BASE, 0, {&wall.section, 0.0}},
                 on_joint = {LW_AT_JOINT, 2, {&wall.section, 0.0}};
  lw_check_context context = {&wall, &family.set[0], &load_case, &on_base};
  lw_check_context of_joint = {&wall, &family.set[0], &load_case, &on_joint};
  for (int i = 0; i < 3; i++)
    for (int k = 0; k < 2; k++) {
      lw_free_body body = stage_at(places[i], turns[k]);
      lw_check checks[] = {
          lw_check_overturning(&context, &body, NULL), lw_check_overturning(&of_joint, &body, NULL),
          lw_check_compression(&context, &body, NULL), lw_check_bearing(&context, &body, NULL)};
      for (int n = 0; n < 4; n++) {
        cr_expect(checks[n].ratio.known && fabs(checks[n].ratio.value) < 1e-15, "%g, %g, check %d", places[i],
                  turns[k], n);
        cr_expect_eq(checks[n].holds, LW_FALLS_SHORT, "%g, %g, check %d", places[i], turns[k], n);
        cr_expect_eq(checks[n].reason, LW_REASON_OUTSIDE_BASE);
      }
    }
  lw_free_body inside = stage_at(0.3, 0.0);
  cr_expect_eq(lw_check_overturning(&context, &inside, NULL).reason, LW_REASON_NO_DEMAND);
}

/* A set may ask for no factor on overturning. What nothing tips holds all the same, as what nothing pushes
 * does; of a resultant outside others speak, and this check has no say. */
Test(held, nothing_asked_and_nothing_that_tips) {
  static const double places[] = {-0.01, 0.2, 0.39, 0.41};
  lw_wall wall = {.method = {.base_pressure = LW_BASE_NO_TENSION}};
  lw_factor_set asks_nothing = {0};
  lw_load_case load_case = {.kind = LW_USUAL, .ground = {.water_depth_m = INFINITY}};
  const lw_place on_base = {LW_AT_BASE, 0, {&wall.section, 0.0}};
  lw_check_context context = {&wall, &asks_nothing, &load_case, &on_base};
  for (int i = 0; i < 4; i++) {
    lw_free_body body = stage_at(places[i], 0.0);
    lw_check check = lw_check_overturning(&context, &body, NULL);
    cr_expect_eq(check.counts, body.contact.inside, "resultant at %g", places[i]);
    cr_expect_eq(check.holds, LW_HOLDS, "resultant at %g", places[i]);
    cr_expect_eq(check.reason, LW_REASON_NO_DEMAND, "resultant at %g", places[i]);
  }
}
