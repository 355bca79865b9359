/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "studies/construction.h"

/* The wall while it is built. */

#define COURSES \
  "course count=4", "block height=200 mm", "block unit weight=22 kN/m3", "base friction=0.45", \
      "soil 1 unit weight=18 kN/m3", "wall embedment=100 mm"
#define KITCHEN COURSES, "block depth=250 mm", "joint friction=0.6", "soil 1 friction angle=35 deg"

static double least_ratio(const lw_result *r, const lw_plant *plant, double distance) {
  lw_check check = {.ratio = {0}};
  cr_assert(lw_construction_at(&r->wall, r->tables, &r->construction, plant, distance, &check));
  cr_assert(check.ratio.known);
  return check.ratio.value;
}

/* By hand: a layer of 0.2 m, φ 35, γ 18, beside a plate of 90 kg, 15 kN, 0.5 m. It is shallower than zc, so
 * P = γ h²/(2 Ka) = 18 x 0.04/(2 x 0.2710) = 1.328 kN/m at h/3. A course of 0.2 x 0.25 m weighs 1.1 kN/m and
 * holds 0.6 x 1.1 = 0.66 by friction, 1.1 x 0.125 = 0.1375 by weight against 1.328 x 0.2/3 = 0.0886. */
Test(checks, building_by_hand) {
  lw_result *r = RUN(KITCHEN, "plant=medium plate compactor");
  const lw_construction *b = &r->construction;
  cr_assert(b->studied);
  cr_assert_eq(b->course_count, 4);
  const lw_construction_course *second = &b->course[1];
  cr_expect(epsilon_eq(dbl, second->push.thrust_kn_per_m, 1.328, 0.0008));
  cr_expect(epsilon_eq(dbl, second->sliding.has.value, 0.66 / 1.328, 0.0005));
  cr_expect(epsilon_eq(dbl, second->tilting.has.value, 0.1375 / 0.0886, 0.001));
  cr_expect(epsilon_eq(dbl, second->sliding.needs.value, 1.33, 1e-9));
  cr_expect(epsilon_eq(dbl, second->tilting.needs.value, 1.33, 1e-9));
  cr_expect_eq(second->sliding.holds, LW_FALLS_SHORT);
  cr_expect_eq(second->sliding.at, LW_AT_JOINT);
  cr_expect_eq(second->sliding.joint, 1);
  /* The base course slides on its bed: 0.45 x 1.1. */
  cr_expect(epsilon_eq(dbl, b->course[0].sliding.has.value, 0.495 / 1.328, 0.0005));
  cr_expect_eq(b->course[0].sliding.at, LW_AT_BASE);
  cr_expect_eq(b->worst, 0);
  cr_expect_not(b->course[0].has_lower);
  /* Under four courses the toe: the newest layer 0.6 m up, and below it 0.6 m of earth that has yielded,
   * 1.328 (0.6 + 0.2/3) + 0.2710 x 18 (0.2 x 0.36/2 + 0.216/6) = 1.2365. */
  cr_expect(b->course[3].has_lower);
  cr_expect_eq(b->course[3].lower.kind, LW_CHECK_OVERTURNING);
  cr_expect(epsilon_eq(dbl, b->course[3].lower.demand.value, 1.2365, 0.001));
  cr_expect(epsilon_eq(dbl, b->course[3].lower.resistance.value, 4.0 * 0.1375, 1e-9));
  free(r);
}

/* The stand-off is the root: there the newest course has exactly what it needs, and no nearer. */
Test(checks, stand_off_is_exact) {
  const lw_tables *t = sheet_test_tables();
  for (int i = 0; i < t->plant_count; i++) {
    char plant[80];
    lw_print(plant, sizeof plant, "plant=%s", t->plant[i].name);
    lw_result *r = RUN(KITCHEN, plant);
    const lw_construction *b = &r->construction;
    cr_assert(b->stand_off.distance_m.known, "%s", plant);
    double x = b->stand_off.distance_m.value;
    cr_assert(lt(dbl, 0.0, x), "%s", plant);
    cr_expect(epsilon_eq(dbl, least_ratio(r, &b->plant, x), 1.0, 1e-6), "%s", plant);
    cr_expect(lt(dbl, least_ratio(r, &b->plant, 0.9 * x), 1.0), "%s", plant);
    cr_expect(lt(dbl, 1.0, least_ratio(r, &b->plant, b->stand_off.keep_m.value + 0.01)), "%s", plant);
    cr_expect(le(dbl, x, b->stand_off.keep_m.value + 1e-9));
    /* The wall of four courses, one half buried, stands 0.7 m high. */
    double floor = t->plant[i].mass_kg > 1500.0 ? 1.0 : t->plant[i].mass_kg < 20.0 ? 0.0 : 0.7;
    cr_expect(le(dbl, floor, b->stand_off.keep_m.value), "%s", plant);
    cr_expect(lt(dbl, b->stand_off.keep_m.value - 0.05, fmax(x, floor)), "%s", plant);
    free(r);
  }
}

/* The same root told to the sheet as the distance. */
Test(checks, stand_off_run_again) {
  lw_result *r = RUN(KITCHEN, "plant=small plate compactor");
  char near[64], far[64];
  lw_print(near, sizeof near, "plant distance=%.6f m", 0.99 * r->construction.stand_off.distance_m.value);
  lw_print(far, sizeof far, "plant distance=%.6f m", r->construction.stand_off.keep_m.value);
  lw_result *moves = RUN(KITCHEN, "plant=small plate compactor", near);
  lw_result *stays = RUN(KITCHEN, "plant=small plate compactor", far);
  cr_expect(moves->construction.moves);
  cr_expect_eq(moves->construction.at_distance.holds, LW_FALLS_SHORT);
  cr_expect_not(stays->construction.moves);
  cr_expect_eq(stays->construction.at_distance.holds, LW_HOLDS);
  cr_expect_not(r->construction.moves, "no distance is given");
  /* It is over when the wall stands: the verdict of the finished wall is the same. */
  cr_expect_eq(moves->verdict.stands, stays->verdict.stands);
  cr_expect_eq(moves->verdict.exit_status, stays->verdict.exit_status);
  free(r);
  free(moves);
  free(stays);
}

typedef struct variant {
  const char *depth, *friction, *soil, *mass, *force;
} variant;

static double stand_off(variant v) {
  lw_result *r =
      RUN(COURSES, v.depth ? v.depth : "block depth=250 mm", v.friction ? v.friction : "joint friction=0.6",
          v.soil ? v.soil : "soil 1 friction angle=35 deg", v.mass ? v.mass : "plant mass=90 kg",
          v.force ? v.force : "plant force=15 kN");
  cr_assert(r->construction.stand_off.distance_m.known);
  double x = r->construction.stand_off.distance_m.value;
  free(r);
  return x;
}

Test(checks, stand_off_grows_and_shrinks) {
  double usual = stand_off((variant){0}), last = INFINITY;
  cr_expect(lt(dbl, usual, stand_off((variant){.mass = "plant mass=300 kg"})));
  cr_expect(lt(dbl, usual, stand_off((variant){.force = "plant force=30 kN"})));
  cr_expect(lt(dbl, usual, stand_off((variant){.friction = "joint friction=0.4"})));
  cr_expect(lt(dbl, usual, stand_off((variant){.soil = "soil 1 friction angle=28 deg"})));
  cr_expect(lt(dbl, stand_off((variant){.depth = "block depth=280 mm"}), usual));
  lw_result *r = RUN(KITCHEN);
  for (double x = 0.0; x < 4.0; x += 0.1) {
    double push = 1.0 / least_ratio(r, &r->construction.plant, x);
    cr_expect(le(dbl, push, last + 1e-12), "pushes harder from further off, %g m", x);
    last = push;
  }
  free(r);
}

/* Plant that weighs next to nothing leaves the layer of earth, and that a course carries: it may touch. */
Test(checks, no_plant_is_active_earth_on_the_newest_course) {
  lw_result *r = RUN(KITCHEN, "plant mass=1 kg", "plant force=0 kN", "plant width=10 m");
  const lw_construction_course *course = &r->construction.course[2];
  cr_expect(epsilon_eq(dbl, course->earth.thrust_kn_per_m, 0.2710 * 18.0 * 0.04 / 2.0, 1e-4));
  cr_expect(lt(dbl, course->push.thrust_kn_per_m, 1.2 * course->earth.thrust_kn_per_m));
  cr_expect(r->construction.stand_off.distance_m.known);
  cr_expect(epsilon_eq(dbl, r->construction.stand_off.distance_m.value, 0.0, 0.0));
  cr_expect(epsilon_eq(dbl, r->construction.stand_off.keep_m.value, 0.0, 0.0));
  free(r);
}

Test(checks, stand_off_where_none_helps) {
  lw_result *r = RUN(COURSES, "block depth=250 mm", "joint friction=0.05");
  cr_expect_not(r->construction.stand_off.distance_m.known);
  cr_expect_not(r->construction.stand_off.keep_m.known);
  cr_expect_eq(r->construction.stand_off.reason, LW_REASON_NO_STAND_OFF);
  free(r);
}

/* The usual plate is studied where none is named, and a thicker layer pushes the courses below harder. */
Test(checks, plant_and_layers) {
  lw_result *r = RUN(KITCHEN), *thick = RUN(KITCHEN, "layer thickness=500 mm");
  cr_expect_not(r->construction.plant.named);
  cr_expect_str_eq(r->construction.plant.name, "medium plate compactor");
  cr_expect_eq(r->construction.layers, 2);
  cr_expect(epsilon_eq(dbl, r->construction.layer_m, 0.1, 1e-12));
  cr_expect_not(r->construction.layer_too_thick);
  cr_expect(thick->construction.layer_too_thick);
  cr_expect(
      lt(dbl, thick->construction.course[3].lower.ratio.value, r->construction.course[3].lower.ratio.value));
  free(r);
  free(thick);
  r = RUN(KITCHEN, "plant=digger");
  cr_expect(r->construction.plant.named);
  cr_expect_str_eq(r->construction.plant.name, "mini excavator");
  cr_expect(epsilon_eq(dbl, r->construction.plant.line_load_kn_per_m, 1800.0 * 9.80665 / 1000.0 / 1.2, 1e-9));
  free(r);
}

/* As few layers as do, and none thicker than the plant compacts. */
Test(checks, no_layer_is_thicker_than_the_plant_compacts) {
  const lw_tables *t = sheet_test_tables();
  for (int i = 0; i < t->plant_count; i++)
    for (int height = 110; height <= 310; height += 50) {
      char plant[80], block[32];
      lw_print(plant, sizeof plant, "plant=%s", t->plant[i].name);
      lw_print(block, sizeof block, "block height=%d mm", height);
      lw_result *r = RUN("course count=2", block, "block depth=300 mm", "wall embedment=50 mm", plant);
      const lw_construction *b = &r->construction;
      double course = height / 1000.0;
      cr_assert(b->studied, "%s, %d mm", plant, height);
      cr_expect(epsilon_eq(dbl, b->layers * b->layer_m, course, 1e-12), "%s, %d mm", plant, height);
      cr_expect(le(dbl, b->layer_m, b->layer_most_m + 1e-9), "%s, %d mm", plant, height);
      cr_expect(lt(dbl, (b->layers - 1) * b->layer_most_m, course), "%s, %d mm", plant, height);
      free(r);
    }
}

/* Where the courses would stand it nearer, a plate keeps one height of the wall off, as far as it stands out
 * of the ground: 0.8 m less 0.1 m. [LOWWALL hazards] */
Test(checks, a_plate_keeps_one_height_that_is_seen_off) {
  lw_result *r =
      RUN("course count=4", "block height=200 mm", "block unit weight=22 kN/m3", "base friction=0.6",
          "soil 1 unit weight=18 kN/m3", "wall embedment=100 mm", "block depth=900 mm", "joint friction=0.6",
          "soil 1 friction angle=35 deg", "plant=medium plate compactor");
  cr_expect(lt(dbl, r->construction.stand_off.distance_m.value, 0.55));
  cr_expect(epsilon_eq(dbl, r->construction.stand_off.keep_m.value, 0.7, 1e-9));
  free(r);
}

/* Once it has yielded the earth alone is left, a triangle: K γ H²/2 at H/3, H of 0.8 m up to the top. */
Test(checks, earth_that_has_yielded_is_a_triangle) {
  lw_result *r = RUN(KITCHEN, "soil below top=0 mm");
  const lw_construction *b = &r->construction;
  double k = (1.0 - sin(35.0 * acos(-1.0) / 180.0)) / (1.0 + sin(35.0 * acos(-1.0) / 180.0));
  cr_expect(epsilon_eq(dbl, b->yielded.thrust_kn_per_m, k * 18.0 * 0.8 * 0.8 / 2.0, 1e-9));
  cr_expect(epsilon_eq(dbl, b->yielded.height_m, 0.8 / 3.0, 1e-12));
  free(r);
}

/* A course turns about its own front edge, wherever the one below it has its own. */
Test(checks, a_course_set_back_turns_over_its_own_edge) {
  lw_result *upright = RUN(KITCHEN), *back = RUN(KITCHEN, "setback=30 mm");
  for (int i = 0; i < 4; i++) {
    const lw_construction_course *a = &upright->construction.course[i], *b = &back->construction.course[i];
    cr_expect(epsilon_eq(dbl, b->tilting.resistance.value, a->tilting.resistance.value, 1e-9), "course %d",
              i);
    cr_expect(epsilon_eq(dbl, b->tilting.demand.value, a->tilting.demand.value, 1e-9), "course %d", i);
  }
  free(upright);
  free(back);
}

/* A set of partial factors asks 1 where its margin lies on loads that this study has none of: then the
 * project's own figures are asked, and never 1. */
Test(checks, building_is_never_asked_for_no_margin) {
  static const char *const SETS[] = {"method format=en1997-da1-2", "method format=en1997-da2-geo",
                                     "method format=aashto-lrfd-strength-1"};
  for (int i = 0; i < 3; i++) {
    lw_result *r = RUN(KITCHEN, SETS[i]);
    for (int k = 0; k < 4; k++) {
      const lw_construction_course *course = &r->construction.course[k];
      cr_expect(epsilon_eq(dbl, course->sliding.needs.value, 1.33, 1e-9), "%s", SETS[i]);
      cr_expect(epsilon_eq(dbl, course->tilting.needs.value, 1.33, 1e-9), "%s", SETS[i]);
    }
    free(r);
  }
}

/* Soil that stays below the top leaves the last course with less, or nothing, against it. */
Test(checks, top_course_without_fill) {
  lw_result *r = RUN(KITCHEN, "soil below top=200 mm"), *half = RUN(KITCHEN, "soil below top=100 mm");
  cr_expect(epsilon_eq(dbl, r->construction.course[3].height_m, 0.0, 1e-12));
  cr_expect_eq(r->construction.course[3].sliding.reason, LW_REASON_NO_DEMAND);
  cr_expect(epsilon_eq(dbl, half->construction.course[3].height_m, 0.1, 1e-12));
  cr_expect(epsilon_eq(dbl, half->construction.stand_off.distance_m.value,
                       r->construction.stand_off.distance_m.value, 1e-9));
  free(r);
  free(half);
}

Test(checks, building_not_studied) {
  lw_result *section = RUN("wall kind=section", "wall height=0.8 m", "top width=0.4 m", "base width=0.5 m");
  lw_result *unknown = RUN("course count=3");
  cr_expect_not(section->construction.studied);
  cr_expect_eq(section->construction.reason, LW_REASON_NO_COURSES);
  cr_expect_not(unknown->construction.studied);
  cr_expect_eq(unknown->construction.reason, LW_REASON_NO_DEPTH);
  lw_result *clay = RUN(KITCHEN, "soil 1 name=peat");
  cr_expect_eq(clay->construction.reason, LW_REASON_REFUSED_BACKFILL);
  free(section);
  free(unknown);
  free(clay);
}
