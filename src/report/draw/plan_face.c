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

int lw_plan_run_at(const lw_order *order, double along_m, double *share) {
  const lw_plan *plan = &order->plan;
  int run = 0;
  while (run + 1 < plan->run_count && along_m > plan->run[run + 1].from_m) run++;
  *share = (along_m - plan->run[run].from_m) / plan->run[run].length_m;
  return run;
}

lw_spot lw_plan_away(const lw_order *order, int corner) {
  const lw_plan *plan = &order->plan;
  lw_spot before = {0.0, 0.0}, after = {0.0, 0.0}, way;
  bool begins = plan->closed || corner > 0, goes_on = plan->closed || corner < plan->run_count;
  if (begins) lw_plan_on_run(order, (corner + plan->run_count - 1) % plan->run_count, 1.0, &before);
  if (goes_on) lw_plan_on_run(order, corner % plan->run_count, 0.0, &after);
  way = (lw_spot){before.x_m + after.x_m, before.y_m + after.y_m};
  /* Along the run is a quarter turn left of the way out. */
  if (!begins) way = (lw_spot){after.x_m + after.y_m, after.y_m - after.x_m};
  if (!goes_on) way = (lw_spot){before.x_m - before.y_m, before.y_m + before.x_m};
  double size = fmax(hypot(way.x_m, way.y_m), 1e-6);
  return (lw_spot){way.x_m / size, way.y_m / size};
}
