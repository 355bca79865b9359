/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "../checks/random_wall.h"
#include "../checks/support.h"

/* Layers of any thickness against courses of any height: the push on each contact below the newest course,
 * added up here slice by slice from the pressures that docs/theory.md has. */

static const double PI = 3.14159265358979323846;
enum { WALLS = 40, SLICES = 4000 };

typedef struct bed {
  int courses;
  double course_m, depth_m, layer_m;
  double k, weight, line_load; /* of the fill, and of the plant along the wall */
  double block, joint, base;   /* unit weight and frictions */
} bed;

/* [INGOLD-1979 29(3)] over the layer just compacted, active earth under its weight below. */
static double pressure_at(const bed *b, double depth_m) {
  double root = sqrt(2.0 * b->line_load / (PI * b->weight)), most = sqrt(2.0 * b->line_load * b->weight / PI);
  double earth = b->k * b->weight * depth_m;
  if (depth_m > fmax(b->layer_m, b->course_m)) return earth;
  if (depth_m < b->k * root) return most * depth_m / (b->k * root);
  return fmax(most, earth);
}

/* Push and its moment on the wall down to a depth. */
static void push_to(const bed *b, double depth_m, double *push, double *moment) {
  double slice = depth_m / SLICES;
  *push = *moment = 0.0;
  for (int i = 0; i < SLICES; i++) {
    double z = (i + 0.5) * slice, p = pressure_at(b, z) * slice;
    *push += p;
    *moment += p * (depth_m - z);
  }
}

/* The least ratio of the contacts below the newest course, which is the i-th from 0. */
static double least_below(const bed *b, int i, double sliding, double tilting) {
  double least = INFINITY;
  for (int j = 0; j < i; j++) {
    double push, moment, weight = (i - j + 1) * b->course_m * b->depth_m * b->block;
    push_to(b, (i - j + 1) * b->course_m, &push, &moment);
    double slides = (j ? b->joint : b->base) * weight / push, tips = weight * b->depth_m / 2.0 / moment;
    least = fmin(least, fmin(slides / sliding, tips / tilting));
  }
  return least;
}

static bed bed_of(dice *d, random_wall *wall) {
  double phi = dice_between(d, 28.0, 40.0), force = dice_between(d, 1.0, 30.0);
  bed b = {.courses = 2 + dice_pick(d, 5),
           .course_m = dice_between(d, 0.08, 0.25),
           .depth_m = dice_between(d, 0.2, 0.9),
           .layer_m = dice_between(d, 0.03, 0.7),
           .k = (1.0 - sin(phi * PI / 180.0)) / (1.0 + sin(phi * PI / 180.0)),
           .weight = dice_between(d, 16.0, 20.0),
           .line_load = (90.0 * 9.80665 / 1000.0 + force) / 0.5,
           .block = dice_between(d, 17.0, 24.0),
           .joint = dice_between(d, 0.3, 0.7),
           .base = dice_between(d, 0.3, 0.7)};
  random_wall_add(wall, "course count=%d", b.courses);
  random_wall_add(wall, "block height=%.17g m", b.course_m);
  random_wall_add(wall, "block depth=%.17g m", b.depth_m);
  random_wall_add(wall, "block unit weight=%.17g kN/m3", b.block);
  random_wall_add(wall, "joint friction=%.17g", b.joint);
  random_wall_add(wall, "base friction=%.17g", b.base);
  random_wall_add(wall, "soil 1 friction angle=%.17g deg", phi);
  random_wall_add(wall, "soil 1 unit weight=%.17g kN/m3", b.weight);
  random_wall_add(wall, "layer thickness=%.17g m", b.layer_m);
  random_wall_add(wall, "plant force=%.17g kN", force);
  random_wall_add(wall, "wall embedment=0.02 m");
  random_wall_add(wall, "method slip=not");
  return b;
}

Test(building_layers, what_a_layer_pushes_is_the_sum_of_its_pressures) {
  dice d = {.state = 150};
  char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  int between = 0;
  for (int w = 0; w < WALLS; w++) {
    random_wall wall = {0};
    bed b = bed_of(&d, &wall);
    lw_result *r = malloc(sizeof *r);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, r, NULL), LW_OK);
    const lw_construction *g = &r->construction;
    cr_assert(g->studied);
    random_wall_name(&wall, name, sizeof name);
    double sliding = g->course[0].sliding.needs.value, tilting = g->course[0].tilting.needs.value;
    for (int i = 1; i < g->course_count; i++) {
      double wanted = least_below(&b, i, sliding, tilting), found = g->course[i].lower.ratio.value;
      cr_expect(checks_test_near(found, wanted, 2e-3), "course %d: %.6f, slice by slice %.6f: %s", i + 1,
                found, wanted, name);
    }
    between += b.layer_m > b.course_m ? 1 : 0;
    cr_expect_eq(g->layer_too_thick, b.layer_m > fmin(b.course_m, g->plant.layer_m), "%s", name);
    free(r);
  }
  cr_expect(between > WALLS / 4, "%d layers thicker than a course", between);
}

/* Whatever holds, an engine keeps off, and no layer is thicker than a course. */
Test(building_layers, an_engine_never_comes_near) {
  const lw_tables *t = sheet_test_tables();
  dice d = {.state = 15};
  char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  int touch = 0;
  for (int w = 0; w < WALLS; w++) {
    const lw_plant_row *plant = &t->plant[w % t->plant_count];
    double course = dice_between(&d, 0.05, 0.3), depth = dice_between(&d, 0.3, 2.5);
    int count = 2 + dice_pick(&d, 6);
    random_wall wall = {0};
    random_wall_add(&wall, "course count=%d", count);
    random_wall_add(&wall, "block height=%.17g m", course);
    random_wall_add(&wall, "block depth=%.17g m", depth);
    random_wall_add(&wall, "wall embedment=0.02 m");
    random_wall_add(&wall, "method slip=not");
    random_wall_add(&wall, "plant=%s", plant->name);
    lw_result *r = malloc(sizeof *r);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, t, LW_DETAIL_EVERYTHING, r, NULL), LW_OK);
    const lw_construction *g = &r->construction;
    random_wall_name(&wall, name, sizeof name);
    cr_expect(g->layer_most_m <= course + 1e-12 && g->layer_most_m <= plant->layer_m + 1e-12, "%s", name);
    cr_expect(g->hand_layer_most_m <= course + 1e-12 && g->layer_m <= course + 1e-12, "%s", name);
    bool known = g->stand_off.keep_m.known;
    double engine = plant->mass_kg < 20.0 ? 0.0 : 0.6, keep = known ? g->stand_off.keep_m.value : INFINITY;
    if (plant->mass_kg > 1500.0) engine = 1.0;
    if (plant->mass_kg >= 20.0 && plant->force_kn > 0.0) engine = fmax(engine, count * course - 0.02);
    double just = g->stand_off.distance_m.value;
    cr_expect(keep >= fmax(engine, just) - 1e-9, "keep %.3f: %s", keep, name);
    touch += plant->mass_kg >= 20.0 && g->stand_off.distance_m.value <= 0.0;
    free(r);
  }
  cr_expect(touch > 2, "%d engines may touch: the walls tell nothing", touch);
}
