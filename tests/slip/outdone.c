/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/random_wall.h"
#include "../sheet/support.h"
#include "slip/outdone.h"
#include "slip/parts.h"

#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* What is left out of a search: a circle whose factor is known to lie above a number, and cross-sections that
 * another one of the same wall outdoes. */

enum { GROUNDS = 24, TURNS = 32 / RANDOM_SHARE, CIRCLES = 10, SLICES = 48 };

static void soil(dice *d, random_wall *w, const char *of) {
  double weight = dice_between(d, 12.0, 20.0);
  random_wall_add(w, "%s friction angle=%.2f deg", of, dice_between(d, 12.0, 36.0));
  random_wall_add(w, "%s cohesion=%.2f kPa", of, dice_pick(d, 2) ? dice_between(d, 0.0, 3.0) : 0.0);
  random_wall_add(w, "%s unit weight=%.2f kN/m3", of, weight);
  random_wall_add(w, "%s saturated unit weight=%.2f kN/m3", of,
                  weight + dice_between(d, 0.0, dice_pick(d, 2) ? 5.0 : 2.0));
}

/* The cross-section of a wall that holds up ground. */
static bool throw_ground(dice *d, lw_result *r, lw_slip_ground *ground) {
  random_wall w = {.count = 0};
  random_wall_add(&w, "site behind=ground");
  random_wall_add(&w, "course count=%d", 2 + dice_pick(d, 6));
  random_wall_add(&w, "block height=%.3f m", dice_between(d, 0.1, 0.25));
  random_wall_add(&w, "block depth=%.3f m", dice_between(d, 0.2, 0.8));
  random_wall_add(&w, "setback=%.3f m", dice_pick(d, 2) * dice_between(d, 0.0, 0.05));
  random_wall_add(&w, "wall embedment=%.3f m", dice_between(d, 0.0, 0.15));
  if (dice_pick(d, 2)) random_wall_add(&w, "pad thickness=%.3f m", dice_between(d, 0.05, 0.2));
  random_wall_add(&w, "ground slope=%.2f deg", dice_pick(d, 2) * dice_between(d, 0.0, 11.0));
  random_wall_add(&w, "front slope=%.2f deg", dice_pick(d, 2) * dice_between(d, 0.0, 11.0));
  random_wall_add(&w, "load 1 kind=uniform");
  random_wall_add(&w, "load 1 pressure=%.2f kPa", dice_between(d, 0.0, 10.0));
  soil(d, &w, "soil 1");
  soil(d, &w, "footing soil");
  lw_case c = random_wall_case(&w);
  if (lw_run(&c, sheet_test_tables(), LW_DETAIL_VERDICT, r, NULL) != LW_OK) return false;
  lw_situation_slip_ground(&r->wall, sheet_test_tables(), &r->situations.situation[0], ground);
  return true;
}

/* Another that is graver or milder than it, or neither. */
static void vary(dice *d, const lw_slip_ground *from, lw_slip_ground *to) {
  *to = *from;
  double rear = dice_between(d, -0.5, 1.6), less = dice_between(d, 0.7, 1.0);
  if (dice_pick(d, 2)) {
    to->water.rear_y_m = dice_pick(d, 4) ? rear : -INFINITY;
    to->water.front_y_m = isfinite(to->water.rear_y_m) ? fmin(rear, dice_between(d, -1.0, 1.0)) : -INFINITY;
  }
  if (dice_pick(d, 3) == 0) to->below.cohesion_kpa *= less;
  if (dice_pick(d, 3) == 0) to->soil[0].friction_rad *= less;
  if (dice_pick(d, 3) == 0) to->below.spare_kn_per_m3 = 2.0;
  if (dice_pick(d, 8) == 0) to->soil[0].unit_weight_kn_per_m3 *= less;
}

static bool throw_circle(dice *d, const lw_slip_ground *g, lw_slip_circle *c) {
  const lw_slip_box *box = &g->box;
  double sag = dice_between(d, 0.05, 1.0);
  c->exit_x_m = box->exit_to_m - box->exit_half_m * dice_between(d, 0.0, 1.5);
  c->entry_x_m = box->entry_from_m + box->entry_half_m * dice_between(d, 0.0, 2.0);
  c->exit_y_m = lw_slip_surface(g, c->exit_x_m, false);
  c->entry_y_m = lw_slip_surface(g, c->entry_x_m, true);
  double dx = c->entry_x_m - c->exit_x_m, dy = c->entry_y_m - c->exit_y_m, half = 0.5 * hypot(dx, dy);
  sag *= half;
  double up = (half * half - sag * sag) / (2.0 * sag);
  c->radius_m = up + sag;
  c->centre_x_m = 0.5 * (c->exit_x_m + c->entry_x_m) - up * dy / (2.0 * half);
  c->centre_y_m = 0.5 * (c->exit_y_m + c->entry_y_m) + up * dx / (2.0 * half);
  return up > 0.0;
}

typedef struct tally {
  int outdone, not_known, circles, above, other;
} tally;

/* Where one outdoes the other no circle of the milder lies below the factor unless it does in the graver. The
 * waters cut slices at different places, which is worth less than a hundredth. */
static void hold_pair(dice *d, const lw_slip_ground *graver, const lw_slip_ground *milder, tally *t) {
  double factor = dice_between(d, 0.8, 2.5);
  bool known = lw_slip_graver(graver, milder, factor);
  lw_slip_circle circle;
  lw_slip a, b;
  known ? t->outdone++ : t->not_known++;
  for (int i = 0, tries = 0; known && i < CIRCLES && tries < 20 * CIRCLES; tries++) {
    if (!throw_circle(d, graver, &circle) || lw_slip_of_circle(graver, &circle, SLICES, &a, NULL) != LW_OK ||
        lw_slip_of_circle(milder, &circle, SLICES, &b, NULL) != LW_OK)
      continue;
    i++;
    t->circles += b.bishop < factor ? 1 : 0;
    cr_expect_lt(fmin(a.bishop, factor), 1.01 * b.bishop, "%.4f, and in milder ground %.4f; asked for %.3f",
                 a.bishop, b.bishop, factor);
  }
}

Test(outdone, no_circle_of_milder_ground_has_less) {
  lw_result *r = malloc(sizeof *r);
  dice d = {20261129};
  tally t = {0};
  lw_slip_ground ground, one, other;
  cr_assert_not_null(r);
  for (int i = 0; i < GROUNDS; i++) {
    if (!throw_ground(&d, r, &ground)) continue;
    for (int k = 0; k < TURNS; k++) {
      vary(&d, &ground, &one);
      vary(&d, &one, &other);
      hold_pair(&d, &one, &other, &t);
      hold_pair(&d, &other, &one, &t);
      hold_pair(&d, &one, &one, &t);
    }
  }
  cr_expect_gt(t.outdone, t.not_known / 8, "%d outdone, %d not known", t.outdone, t.not_known);
  cr_expect_gt(t.not_known, GROUNDS, "%d outdone, %d not known", t.outdone, t.not_known);
  cr_expect_gt(t.circles, 100, "%d circles had less than was asked for", t.circles);
  free(r);
}

static void hold_circle(dice *d, const lw_slip_ground *ground, tally *t) {
  lw_slip_circle circle;
  lw_slip_slices list;
  lw_slip_strips strips;
  lw_slip slip;
  double share = dice_between(d, 0.6, 1.3);
  lw_slip_cut(ground, &strips);
  if (!throw_circle(d, ground, &circle) || !lw_slip_clear(&strips, &circle) ||
      !lw_slip_slice_up(&strips, &circle, 12, &list))
    return;
  lw_slip_slices same = list;
  if (lw_slip_worse(&list, &circle, 0.0, LW_SLIP_BISHOP, &slip) != LW_OK) return;
  bool above = lw_slip_above(&same, share * slip.bishop);
  cr_expect(!above || share < 1.0, "%.6f is not above %.3f times itself", slip.bishop, share);
  cr_expect(!lw_slip_above(&same, slip.bishop), "%.6f is not above itself", slip.bishop);
  if (share < 0.95) above ? t->above++ : t->other++;
}

/* It is never said of a factor that is not above; and mostly said of one that is, or nothing is gained. */
Test(outdone, a_factor_is_above_only_what_it_is_above) {
  lw_result *r = malloc(sizeof *r);
  dice d = {20261129};
  tally t = {0};
  lw_slip_ground ground, one;
  cr_assert_not_null(r);
  for (int i = 0; i < GROUNDS; i++) {
    if (!throw_ground(&d, r, &ground)) continue;
    for (int k = 0; k < TURNS; k++) {
      vary(&d, &ground, &one);
      for (int n = 0; n < CIRCLES; n++) hold_circle(&d, &one, &t);
    }
  }
  cr_expect_gt(t.above, 3 * t.other, "%d told, %d not", t.above, t.other);
  cr_expect_gt(t.above, 100);
  free(r);
}
