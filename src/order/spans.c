/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "spans.h"

#include <math.h>

#include "plan.h"

/* Where the runs of a stretch lie in a course. */

/* What a course is short of at a free end, or of its neighbour's offset at a corner. */
static double shift_of(const lw_order *order, int corner, int course) {
  if (corner < 0) return course * order->plan.end_setback_m;
  return lw_plan_offset(&order->plan, course) * tan(order->corner[corner].turn_rad / 2.0);
}

int lw_spans_of(const lw_order *order, const lw_stretch *stretch, int course, lw_span span[LW_RUN_MAX]) {
  const lw_plan *plan = &order->plan;
  double u = 0.0, base = 0.0;
  for (int i = 0; i < stretch->run_count; i++) {
    int run = lw_plan_at(plan, stretch->first_run + i);
    double length = plan->run[run].length_m;
    double left = i == 0 && !stretch->ring ? shift_of(order, stretch->corner_before, course) : 0.0;
    bool last = i == stretch->run_count - 1 && !stretch->ring;
    double right = last ? shift_of(order, stretch->corner_after, course) : 0.0;
    double radius = plan->run[run].radius_m;
    bool curved = fabs(radius) > 0.0;
    double scale = curved ? 1.0 - lw_plan_offset(plan, course) / radius : 1.0;
    double face = length * scale - left - right;
    double laid = face * plan->module_m / lw_plan_module(plan, run, course);
    span[i] = (lw_span){run, u, u + laid, base + left, base + length - right};
    u += laid;
    base += length;
  }
  return stretch->run_count;
}

double lw_spans_base(const lw_span *span, int count, double u_m) {
  int i = 0;
  while (i + 1 < count && u_m > span[i].u_to) i++;
  const lw_span *s = &span[i];
  return s->base_from + (u_m - s->u_from) / (s->u_to - s->u_from) * (s->base_to - s->base_from);
}

double lw_spans_lay(const lw_span *span, int count, double base_m) {
  int i = 0;
  while (i + 1 < count && base_m > span[i].base_to) i++;
  const lw_span *s = &span[i];
  return s->u_from + (base_m - s->base_from) / (s->base_to - s->base_from) * (s->u_to - s->u_from);
}
