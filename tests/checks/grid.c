/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/report.h>
#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "soil/site.h"
#include "random_wall.h"
#include "support.h"

/* A few thousand walls by chance: what must hold of every one of them. */

enum { WALLS = 3000 / LONG_SHARE };

typedef struct walk {
  const char *name; /* of the wall in hand */
  int plain, stages, shown, not_shown;
} walk;

static void finite_figure(void *context, const lw_figure *figure) {
  const walk *w = context;
  if (figure->value.known)
    cr_expect(isfinite(figure->value.value), "%s is not finite: %s", figure->key, w->name);
  else
    cr_expect_neq(figure->reason, LW_REASON_NONE, "%s is missing without a reason: %s", figure->key, w->name);
}

static bool finite_contact(const lw_contact *c) {
  return isfinite(c->vertical_kn_per_m) && isfinite(c->horizontal_kn_per_m) && isfinite(c->resultant_m) &&
         isfinite(c->resisting_knm_per_m) && isfinite(c->overturning_knm_per_m) && isfinite(c->front_kpa) &&
         isfinite(c->rear_kpa) && isfinite(c->greatest_kpa) && isfinite(c->effective_width_m) &&
         isfinite(c->eccentricity_m) && isfinite(c->share_in_compression) && isfinite(c->uplift_kn_per_m);
}

typedef struct sums {
  double vertical, horizontal, moment, size;
} sums;

static sums sums_of(const lw_free_body *body, double foot_y_m) {
  sums s = {0};
  for (int i = 0; i < body->forces.count; i++) {
    const lw_force *f = &body->forces.force[i];
    double turns = f->vertical_kn_per_m * (f->x_m - body->contact.front_m) -
                   f->horizontal_kn_per_m * (f->y_m - foot_y_m);
    s.vertical += f->vertical_kn_per_m;
    s.horizontal += f->horizontal_kn_per_m;
    s.moment += turns;
    s.size += fabs(f->vertical_kn_per_m) + fabs(f->horizontal_kn_per_m) + fabs(turns);
  }
  return s;
}

/* What the forces add up to is what the contact balances. */
static void expect_balance(const walk *w, const lw_free_body *body, double foot_y_m) {
  sums s = sums_of(body, foot_y_m);
  const lw_contact *c = &body->contact;
  double net = c->resisting_knm_per_m - c->overturning_knm_per_m, slack = 1e-9 * (1.0 + s.size);
  cr_expect(fabs(s.vertical - c->vertical_kn_per_m) <= slack, "vertical: %s", w->name);
  cr_expect(fabs(s.horizontal - c->horizontal_kn_per_m) <= slack, "horizontal: %s", w->name);
  cr_expect(fabs(s.moment - net) <= slack, "moment %g, %g: %s", s.moment, net, w->name);
  if (c->inside)
    cr_expect(fabs(c->resultant_m * c->vertical_kn_per_m - net) <= slack, "resultant: %s", w->name);
}

/* Pressure over the contact carries what stands on it, where the whole width may bear. */
static void expect_carried(const walk *w, const lw_wall *wall, const lw_contact *c) {
  if (!c->inside) return;
  double carried;
  if (wall->method.base_pressure == LW_BASE_EFFECTIVE)
    carried = c->greatest_kpa * c->effective_width_m;
  else if (wall->method.base_pressure == LW_BASE_LINEAR)
    carried = 0.5 * (c->front_kpa + c->rear_kpa) * c->width_m;
  else
    carried = 0.5 * (c->front_kpa + c->rear_kpa) * c->share_in_compression * c->width_m;
  cr_expect(checks_test_near(carried, c->vertical_kn_per_m, 1e-9), "carried %g of %g: %s", carried,
            c->vertical_kn_per_m, w->name);
}

static void hold_stage(walk *w, const lw_wall *wall, const lw_free_body *body, double foot_y_m, bool solid) {
  cr_expect_not(body->faulty, "formula %.9g and wedge %.9g: %s", body->formula_kn_per_m,
                body->wedge.thrust_kn_per_m, w->name);
  if (body->status != LW_OK) {
    cr_expect_neq(body->reason, LW_REASON_NONE, "no reason: %s", w->name);
    return;
  }
  w->stages++;
  cr_expect(finite_contact(&body->contact), "not finite: %s", w->name);
  expect_balance(w, body, foot_y_m);
  if (solid) expect_carried(w, wall, &body->contact);
  if (!body->wedge_known || body->back.plane.height_m <= 0.0 || !lw_plane_is_plain(&body->back.plane)) return;
  w->plain++;
  cr_expect(checks_test_near(body->formula_kn_per_m, body->wedge.thrust_kn_per_m, 1e-6), "%.9g, %.9g: %s",
            body->formula_kn_per_m, body->wedge.thrust_kn_per_m, w->name);
}

static void hold_check(walk *w, const lw_check *c) {
  *(c->holds == LW_CANNOT_SHOW ? &w->not_shown : &w->shown) += 1;
  cr_expect(!c->has.known || isfinite(c->has.value), "has: %s", w->name);
  cr_expect(c->ratio.known || c->reason != LW_REASON_NONE, "no ratio and no reason: %s", w->name);
  if (!c->ratio.known) return;
  cr_expect(isfinite(c->ratio.value) && c->ratio.value >= 0.0, "ratio %g: %s", c->ratio.value, w->name);
  cr_expect_eq(c->holds == LW_HOLDS, c->ratio.value >= 1.0 - 1e-12, "ratio %.15g: %s", c->ratio.value,
               w->name);
}

static void hold_situation(walk *w, const lw_result *result, const lw_situation *s) {
  const lw_wall *wall = &result->wall;
  hold_stage(w, wall, &s->base, 0.0, true);
  if (s->pad.reason != LW_REASON_NO_PAD) hold_stage(w, wall, &s->pad, -wall->site.pad.thickness_m, false);
  for (int j = 0; j < s->joint_count; j++) {
    lw_free_body body;
    lw_situation_joint(wall, s, j + 1, &body);
    hold_stage(w, wall, &body, 0.0, wall->section.shell_m <= 0.0);
    cr_expect_eq((int)body.status, (int)s->joint[j].status, "joint: %s", w->name);
    if (body.status != LW_OK) continue;
    double again = body.contact.vertical_kn_per_m, noted = s->joint[j].contact.vertical_kn_per_m;
    cr_expect(checks_test_near(again, noted, 1e-12), "joint %d of %s: %.15g, %.15g: %s", j + 1,
              lw_situation_slug(s->name), again, noted, w->name);
  }
  for (int i = 0; i < s->check_count; i++) hold_check(w, checks_test_check(s, i));
}

Test(grid, every_wall_is_in_balance) {
  dice d = {20260117};
  walk w = {0};
  lw_result *result = calloc(1, sizeof *result);
  cr_assert_not_null(result);
  for (int i = 0; i < WALLS; i++) {
    random_wall wall;
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    w.name = random_wall_name(&wall, name, sizeof name);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK, "%s", w.name);
    for (int s = 0; s < result->situations.count; s++)
      hold_situation(&w, result, &result->situations.situation[s]);
    lw_figures_each(result, finite_figure, &w);
  }
  free(result);
  /* The walls reach what they are meant to reach. */
  cr_expect_lt(5 * WALLS, w.stages);
  cr_expect_lt(WALLS, w.plain);
  cr_expect_lt(10 * w.not_shown, w.shown, "%d shown, %d not", w.shown, w.not_shown);
  cr_log_info("%d stages, %d plain", w.stages, w.plain);
}
