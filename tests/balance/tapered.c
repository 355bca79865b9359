/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/wall.h>
#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "wall/courses.h"
#include "wall/section.h"

/* Blocks that taper, beside sums over their plan that are made here: block by block of one module of the run,
 * the upper course laid over the lower one by half a block. */

enum { WALLS = 60, SLICES = 400 };

/* Length along the run, in modules, that blocks of a part take up at x, about z = 0 in the middle of one. */
static double half_length(const lw_part *part, double tail, double x_m) {
  if (part->kind != LW_PART_COURSE) return 0.5;
  if (x_m < part->front_m || x_m > part->rear_m) return 0.0;
  double from_rear = part->rear_m - x_m, depth = part->rear_m - part->front_m;
  return 0.5 * (tail + (1.0 - tail) * from_rear / depth);
}

static double overlap(double a, double b, double c, double d) {
  return fmax(0.0, fmin(b, d) - fmax(a, c));
}

/* What both courses have in plan at x: the upper block lies over the joint of two lower ones. */
static double both_at(const lw_section *section, int joint, double x_m) {
  double up = half_length(&section->part[joint], section->tail_share, x_m);
  double low = half_length(&section->part[joint - 1], section->tail_share, x_m);
  return overlap(-up, up, -0.5 - low, -0.5 + low) + overlap(-up, up, 0.5 - low, 0.5 + low);
}

typedef struct sums {
  double area, first, second;
} sums;

static sums sums_of(const lw_contact *c) {
  sums s = {0};
  double step = c->width_m / SLICES;
  for (int i = 0; i < SLICES; i++) {
    double x = (i + 0.5) * step, w = c->taper.front + (c->taper.rear - c->taper.front) * x / c->width_m;
    s.area += w * step, s.first += w * x * step, s.second += w * x * x * step;
  }
  return s;
}

static void add_tail(dice *d, random_wall *wall, double tail) {
  random_wall_add(wall, "block length=400 mm");
  random_wall_add(wall, "block tail length=%.6f mm", 400.0 * tail);
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "fill unit weight=%.3f kN/m3", dice_between(d, 12.0, 18.0));
}

static void stack_make(dice *d, random_wall *wall) {
  random_wall_plain(d, wall);
  if (dice_pick(d, 2)) random_wall_add(wall, "setback=%.3f mm", dice_between(d, 0.0, 60.0));
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "cap height=60 mm");
}

/* A course weighs what its blocks weigh, slice by slice, and what is filled in between them. */
static void expect_weights(const lw_section *section, const lw_case *c) {
  double fill = section->tails_filled ? c->courses.fill_unit_weight.si : 0.0;
  double block = c->courses.block_unit_weight.si;
  if (section->tails_filled) block += fmax(0.0, 1.0 - block / 21.0) * fill;
  for (int i = 0; i < section->course_count; i++) {
    const lw_part *part = &section->part[i];
    double step = (part->rear_m - part->front_m) / SLICES, weight = 0.0, moment = 0.0;
    for (int k = 0; k < SLICES; k++) {
      double x = part->front_m + (k + 0.5) * step, w = 2.0 * half_length(part, section->tail_share, x);
      double slice = (w * block + (1.0 - w) * fill) * step * (part->top_m - part->bottom_m);
      weight += slice, moment += slice * x;
    }
    cr_expect(checks_test_near(part->weight_kn_per_m, weight, 1e-5), "course %d weighs %g, summed %g", i + 1,
              part->weight_kn_per_m, weight);
    cr_expect_float_eq(part->x_m - part->front_m, moment / weight - part->front_m, 1e-5);
    cr_expect(checks_test_near(part->area_m2 * part->unit_weight_kn_per_m3, part->weight_kn_per_m, 1e-12));
  }
}

static void expect_contacts(const lw_section *section, const char *name) {
  for (int joint = 1; joint < section->part_count; joint++) {
    lw_section above;
    lw_section_above(section, joint, &above);
    double front = section->part[joint].front_m,
           to = fmin(section->part[joint - 1].rear_m, section->part[joint].rear_m);
    double from = fmax(section->part[joint - 1].front_m, front), step = (to - from) / SLICES;
    lw_contact c = {.width_m = above.contact_rear_m - above.contact_front_m, .taper = above.contact};
    sums found = sums_of(&c), summed = {0};
    for (int k = 0; k < SLICES; k++) {
      double x = (k + 0.5) * step, w = both_at(section, joint, from + x);
      summed.area += w * step, summed.first += w * x * step, summed.second += w * x * x * step;
    }
    cr_expect(checks_test_near(found.area, summed.area, 1e-4), "joint %d: %g, summed %g: %s", joint,
              found.area, summed.area, name);
    cr_expect(checks_test_near(found.first, summed.first, 1e-4), "joint %d: %s", joint, name);
    cr_expect(checks_test_near(found.second, summed.second, 1e-4), "joint %d: %s", joint, name);
  }
}

Test(tapered, weights_and_contacts_are_sums_over_the_plan) {
  dice d = {41};
  for (int n = 0; n < WALLS; n++) {
    random_wall wall;
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    lw_section section;
    stack_make(&d, &wall);
    add_tail(&d, &wall, dice_between(&d, 0.1, 1.0));
    lw_case c = random_wall_case(&wall);
    lw_section_build(&c, sheet_test_tables(), &section);
    expect_weights(&section, &c);
    expect_contacts(&section, random_wall_name(&wall, name, sizeof name));
  }
}

/* Pressure at x: straight over what is in compression, from the edge that is pressed most. */
static double pressure_at(const lw_contact *c, double x_m) {
  if (c->share_in_compression > 1.0 - 1e-12)
    return c->front_kpa + (c->rear_kpa - c->front_kpa) * x_m / c->width_m;
  bool front = c->front_kpa > c->rear_kpa;
  double from_edge = front ? x_m : c->width_m - x_m;
  return fmax(0.0, 1.0 - from_edge / c->compressed_m) * fmax(c->front_kpa, c->rear_kpa);
}

/* The pressures over the plan carry what presses down, at the resultant. */
static bool expect_balance(const lw_contact *c, const char *name) {
  if (!c->inside || !(c->area_m2 < c->width_m) || c->compressed_m < 0.02 * c->width_m) return false;
  double step = c->width_m / (25 * SLICES), force = 0.0, moment = 0.0, pressed = 0.0;
  for (int k = 0; k < 25 * SLICES; k++) {
    double x = (k + 0.5) * step, w = c->taper.front + (c->taper.rear - c->taper.front) * x / c->width_m;
    double p = pressure_at(c, x);
    force += p * w * step, moment += p * w * x * step, pressed += p > 0.0 ? w * step : 0.0;
  }
  cr_expect(checks_test_near(force, c->vertical_kn_per_m, 1e-4), "%g pressed, %g stands: %s", force,
            c->vertical_kn_per_m, name);
  cr_expect_float_eq(moment / force / c->width_m, c->resultant_m / c->width_m, 1e-4, "%s", name);
  cr_expect_float_eq(pressed / c->area_m2, c->share_in_compression, 5e-4, "%s", name);
  return true;
}

/* Head of the water under the base at x of its length: whole between the tails and where it gapes. */
static void expect_uplift(const lw_result *result, const lw_situation *s, const char *name) {
  const lw_site *site = &result->wall.site;
  const lw_section *section = &result->wall.section;
  const lw_contact *c = &s->base.contact;
  double rear = fmax(section->height_m - s->water_depth_m, 0.0), sum = 0.0, step = c->width_m / SLICES;
  double front = fmax(section->height_m - site->front_water_depth_m, 0.0);
  bool gapes = c->vertical_kn_per_m <= 0.0 || c->eccentricity_m > c->kern_m;
  double pressed = !gapes ? c->width_m : c->inside ? c->compressed_m : 0.0;
  for (int k = 0; k < SLICES; k++) {
    double x = (k + 0.5) * step, w = c->taper.front + (c->taper.rear - c->taper.front) * x / c->width_m;
    double head = x < pressed ? front + (rear - front) * x / pressed : rear;
    sum += (head * w + (section->tails_filled ? rear * (1.0 - w) : 0.0)) * step;
  }
  cr_expect(checks_test_near(c->uplift_kn_per_m, sum * site->water_unit_weight_kn_per_m3, 2e-3),
            "uplift %g, summed %g: %s", c->uplift_kn_per_m, sum * site->water_unit_weight_kn_per_m3, name);
}

Test(tapered, pressures_and_uplift_balance_over_the_plan) {
  dice d = {42};
  lw_result *result = malloc(sizeof *result);
  int seen = 0, lifted = 0;
  for (int n = 0; n < WALLS / RANDOM_SHARE; n++) {
    random_wall wall;
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    stack_make(&d, &wall);
    add_tail(&d, &wall, dice_between(&d, 0.1, 0.99));
    random_wall_add(&wall, "water depth=%.3f m", dice_between(&d, 0.0, 1.0));
    random_wall_add(&wall, "method slip=not");
    if (dice_pick(&d, 3) == 0) random_wall_add(&wall, "wall joints=sealed");
    lw_case c = random_wall_case(&wall);
    random_wall_name(&wall, name, sizeof name);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
    for (int i = 0; i < result->situations.count; i++) {
      const lw_situation *s = &result->situations.situation[i];
      if (s->base.status != LW_OK) continue;
      seen += expect_balance(&s->base.contact, name);
      for (int j = 0; j < s->joint_count; j++)
        if (s->joint[j].status == LW_OK) seen += expect_balance(&s->joint[j].contact, name);
      if (isfinite(s->water_depth_m) && !s->load_case.actions.factors.factored)
        expect_uplift(result, s, name), lifted++;
    }
  }
  free(result);
  cr_expect(seen > WALLS / RANDOM_SHARE && lifted > WALLS / RANDOM_SHARE / 2, "%d contacts, %d lifted", seen,
            lifted);
}

static void run_with_tail(const lw_case *completed, double tail, lw_result *result) {
  lw_case c = *completed;
  c.order.tail_length = (lw_quantity){.si = 0.4 * tail, .kind = LW_KIND_LENGTH, .origin = LW_GIVEN};
  c.courses.block_length = (lw_quantity){.si = 0.4, .kind = LW_KIND_LENGTH, .origin = LW_GIVEN};
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
}

/* A tail as long as the face is a rectangle, and one that is shorter by nothing that counts is as good. */
Test(tapered, a_tail_as_long_as_the_face_is_a_rectangle) {
  dice d = {43};
  lw_result *whole = malloc(sizeof *whole), *almost = malloc(sizeof *almost);
  for (int n = 0; n < WALLS / RANDOM_SHARE; n++) {
    random_wall wall;
    stack_make(&d, &wall);
    random_wall_add(&wall, "water depth=%.3f m", dice_between(&d, 0.0, 1.0));
    random_wall_add(&wall, "method slip=not");
    random_wall_add(&wall, "soil 1 friction angle=26 deg");
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, whole, NULL), LW_OK);
    for (int step = 0; step < 2; step++) {
      run_with_tail(&c, step ? 1.0 - 1e-13 : 1.0, almost);
      for (int i = 0; i < whole->situations.count; i++)
        for (int k = 0; k < whole->situations.situation[i].check_count; k++) {
          const lw_check *a = checks_test_check(&whole->situations.situation[i], k);
          const lw_check *b = checks_test_check(&almost->situations.situation[i], k);
          /* Where the two nearly cancel the last digits of either are all there is. */
          bool cancels = a->has.value > 50.0 || a->has.value < 0.1;
          if (!a->has.known || cancels) continue;
          cr_expect(checks_test_near(a->has.value, b->has.value, 2e-12), "%s: %.15g and %.15g",
                    lw_check_slug(a->kind), a->has.value, b->has.value);
        }
    }
  }
  free(whole);
  free(almost);
}

/* The longer the tail, the heavier the wall and the further back its weight: it slides and tips no sooner. */
Test(tapered, a_longer_tail_holds_no_less) {
  dice d = {44};
  lw_result *shorter = malloc(sizeof *shorter), *longer = malloc(sizeof *longer);
  for (int n = 0; n < WALLS / RANDOM_SHARE; n++) {
    random_wall wall;
    double tail = dice_between(&d, 0.1, 0.9);
    stack_make(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    lw_case c = random_wall_case(&wall);
    run_with_tail(&c, tail, shorter);
    run_with_tail(&c, tail + dice_between(&d, 0.0, 1.0 - tail), longer);
    cr_expect_leq(lw_section_weight(&shorter->wall.section),
                  lw_section_weight(&longer->wall.section) + 1e-12);
    for (int i = 0; i < shorter->situations.count; i++)
      for (int k = 0; k < shorter->situations.situation[i].check_count; k++) {
        const lw_check *a = checks_test_check(&shorter->situations.situation[i], k);
        const lw_check *b = checks_test_check(&longer->situations.situation[i], k);
        bool moves =
            a->kind == LW_CHECK_SLIDING || a->kind == LW_CHECK_OVERTURNING || a->kind == LW_CHECK_TILTING;
        /* Water lifts less under a shorter tail, so only where none stands behind. */
        bool dry = !isfinite(shorter->situations.situation[i].water_depth_m);
        if (!moves || !dry || !a->has.known || !b->has.known) continue;
        cr_expect_leq(a->has.value, b->has.value * (1.0 + 1e-12));
      }
  }
  free(shorter);
  free(longer);
}

#define DRY_WALL \
  "course count=3", "block height=0.2 m", "block depth=0.3 m", "block length=300 mm", \
      "block unit weight=22 kN/m3", "soil 1 friction angle=32 deg", "soil 1 unit weight=18 kN/m3", \
      "ground slope=0 deg", "people on cap=no", "base friction=0.5", "load 1 kind=none", \
      "wall embedment=0 m", "method slip=not", "wall friction=0 deg"

/* By hand: a trapezium with half its face for a tail has (1 + t)/2 = 3/4 of the rectangle's weight, its
 * centroid at (1 + 2t)/(3 (1 + t)) = 4/9 of the depth instead of 1/2, so 2/3 of its moment. */
Test(tapered, half_a_tail_holds_three_quarters) {
  lw_result *whole = RUN(DRY_WALL), *half = RUN(DRY_WALL, "block tail length=150 mm");
  const lw_situation *a = &whole->situations.situation[0], *b = &half->situations.situation[0];
  double slides = checks_test_at_base(b, LW_CHECK_SLIDING)->has.value /
                  checks_test_at_base(a, LW_CHECK_SLIDING)->has.value;
  double tips = checks_test_at_base(b, LW_CHECK_OVERTURNING)->has.value /
                checks_test_at_base(a, LW_CHECK_OVERTURNING)->has.value;
  cr_expect_float_eq(slides, 0.75, 1e-12);
  cr_expect_float_eq(tips, 2.0 / 3.0, 1e-12);
  /* A mass is that of the block as it is: 30 kg on 0.3 m of the run. */
  lw_result *given = RUN("course count=3", "block height=0.2 m", "block depth=0.3 m", "block length=300 mm",
                         "block tail length=150 mm", "block mass=30 kg", "method slip=not");
  cr_expect_float_eq(given->wall.section.part[0].weight_kn_per_m, 30.0 * 9.80665e-3 / 0.3, 1e-9);
  free(whole), free(half), free(given);
}
