/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "order/plan.h"
#include "plan_view.h"

/* Where the faces of the wall lie from above. */

static lw_spot on_arc(const lw_plan_run *run, double share, double offset_m) {
  double heading = run->heading_rad + share * run->length_m / run->radius_m, r = run->radius_m - offset_m;
  return (lw_spot){run->centre.x_m + r * sin(heading), run->centre.y_m - r * cos(heading)};
}

int lw_plan_face(const lw_order *order, double offset_m, lw_spot *spot) {
  const lw_plan *plan = &order->plan;
  int count = 0;
  for (int i = 0; i < plan->run_count; i++) {
    spot[count++] = lw_plan_corner(plan, i, offset_m);
    for (int k = 1; k < LW_ARC_SPOTS && lw_plan_is_curved(&plan->run[i]); k++)
      spot[count++] = on_arc(&plan->run[i], (double)k / LW_ARC_SPOTS, offset_m);
  }
  spot[count++] = lw_plan_corner(plan, plan->run_count, offset_m);
  return count;
}

lw_spot lw_plan_on_run(const lw_order *order, int run, double share, lw_spot *outward) {
  const lw_plan_run *r = &order->plan.run[run];
  double heading = r->heading_rad + (lw_plan_is_curved(r) ? share * r->length_m / r->radius_m : 0.0);
  *outward = (lw_spot){sin(heading), -cos(heading)};
  if (lw_plan_is_curved(r)) return on_arc(r, share, 0.0);
  return (lw_spot){r->begin.x_m + share * (r->end.x_m - r->begin.x_m),
                   r->begin.y_m + share * (r->end.y_m - r->begin.y_m)};
}
