/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "steps.h"

#include <math.h>

/* A base on falling ground rises in steps of whole courses. The sheet's wall is its highest part; the top
 * stays level, so that a raised base has so many courses less. */

static const double NEAR = 1e-6; /* [m] */

static void put_step(lw_plan *plan, double at_m, int rise) {
  if (plan->step_count < LW_COURSE_MAX) plan->step[plan->step_count++] = (lw_plan_step){at_m, rise};
}

/* The k-th step may stand where the ground has risen by k courses over that at the low end, so that the
 * lowest course is nowhere less deep than there; moved uphill to a half unit counted from the low end. */
static double step_from_low_end(const lw_plan *plan, int k, double fall_m) {
  double half = plan->module_m / 2.0;
  double allowed = k * plan->course_m * plan->length_m / fall_m;
  return ceil(allowed / half - NEAR) * half;
}

static void add_fall(lw_plan *plan) {
  double fall = fabs(plan->fall_m);
  bool low_at_end = plan->fall_m > 0.0;
  double at[LW_COURSE_MAX];
  int count = 0;
  while (count + 1 < plan->courses && count < LW_COURSE_MAX - 1) {
    double distance = step_from_low_end(plan, count + 1, fall);
    if (distance > plan->length_m - plan->module_m / 2.0 + NEAR) break;
    at[count++] = distance;
  }
  plan->first_raised = low_at_end ? count : 0;
  for (int i = 0; i < count; i++)
    put_step(plan, low_at_end ? plan->length_m - at[count - 1 - i] : at[i], low_at_end ? -1 : 1);
}

static void add_given(const lw_case_order *items, lw_plan *plan) {
  int level = 0, least = 0;
  for (int i = 0; i < LW_STEP_MAX && items->step[i].distance.origin != LW_ABSENT; i++) {
    int rise = (int)lround(items->step[i].courses.si);
    put_step(plan, items->step[i].distance.si, rise);
    level += rise;
    least = level < least ? level : least;
  }
  plan->first_raised = -least;
}

void lw_plan_add_steps(const lw_case_order *items, lw_plan *plan) {
  plan->falls = items->ground_fall.origin != LW_ABSENT && fabs(items->ground_fall.si) > NEAR;
  plan->fall_m = plan->falls ? items->ground_fall.si : 0.0;
  if (plan->falls)
    add_fall(plan);
  else
    add_given(items, plan);
}

int lw_plan_raised(const lw_plan *plan, double at_m, bool after) {
  int raised = plan->first_raised;
  for (int i = 0; i < plan->step_count; i++) {
    double beyond = at_m - plan->step[i].at_m;
    if (beyond > NEAR || (after && beyond > -NEAR)) raised += plan->step[i].rise;
  }
  return raised;
}
