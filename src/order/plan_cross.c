/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "plan_cross.h"

#include <math.h>

/* Whether the face of a plan crosses itself: no wall can be built like that, and no count would be right. */

enum { BENDS = 16, SIDES_MAX = LW_RUN_MAX * BENDS };

typedef struct side {
  lw_spot from, to;
  int run;
} side;

static lw_spot on_run(const lw_plan_run *r, double share) {
  double along = share * r->length_m;
  if (!(fabs(r->radius_m) > 0.0))
    return (lw_spot){r->begin.x_m + along * cos(r->heading_rad), r->begin.y_m + along * sin(r->heading_rad)};
  double heading = r->heading_rad + along / r->radius_m;
  return (lw_spot){r->centre.x_m + r->radius_m * sin(heading), r->centre.y_m - r->radius_m * cos(heading)};
}

static int sides_of(const lw_plan *plan, side sides[SIDES_MAX]) {
  int count = 0;
  for (int i = 0; i < plan->run_count; i++) {
    const lw_plan_run *r = &plan->run[i];
    int parts = fabs(r->radius_m) > 0.0 ? BENDS : 1;
    for (int k = 0; k < parts; k++)
      sides[count++] = (side){on_run(r, (double)k / parts), on_run(r, (k + 1.0) / parts), i};
  }
  return count;
}

/* Twice the area of the triangle, positive to the left. */
static double turn_of(lw_spot a, lw_spot b, lw_spot c) {
  return (b.x_m - a.x_m) * (c.y_m - a.y_m) - (b.y_m - a.y_m) * (c.x_m - a.x_m);
}

/* Through each other, not only up to each other: a plan may come back to where it began. */
static bool cross(const side *a, const side *b) {
  static const double TOUCH_M2 = 1e-6;
  double a1 = turn_of(a->from, a->to, b->from), a2 = turn_of(a->from, a->to, b->to);
  double b1 = turn_of(b->from, b->to, a->from), b2 = turn_of(b->from, b->to, a->to);
  bool apart = fmin(fabs(a1), fabs(a2)) < TOUCH_M2 || fmin(fabs(b1), fabs(b2)) < TOUCH_M2;
  return !apart && a1 * a2 < 0.0 && b1 * b2 < 0.0;
}

bool lw_plan_crosses(const lw_plan *plan, int *first, int *second) {
  side sides[SIDES_MAX];
  int count = sides_of(plan, sides);
  for (int i = 0; i < count; i++)
    for (int k = i + 2; k < count; k++) {
      bool around = plan->closed && i == 0 && k == count - 1;
      if (around || !cross(&sides[i], &sides[k])) continue;
      *first = sides[i].run;
      *second = sides[k].run;
      return true;
    }
  return false;
}
