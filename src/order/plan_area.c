/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "plan_area.h"

#include <math.h>

#include "plan.h"

/* Areas in plan. A face moved towards the soil by `o` has the length L - o K, K being the bends and twice the
 * tangents of the half turns: a strip is the integral of that, exact for mitred corners. */

static double shortening(const lw_plan *plan) {
  double sum = 0.0;
  for (int i = 0; i < plan->run_count; i++) sum += plan->run[i].length_m - lw_plan_run_length(plan, i, 1.0);
  return sum;
}

double lw_plan_strip(const lw_plan *plan, double from_m, double to_m) {
  return plan->length_m * (to_m - from_m) - shortening(plan) * (to_m * to_m - from_m * from_m) / 2.0;
}

/* What a run between two places of it loses for each metre that its face is moved towards the soil. */
static double loses(const lw_plan *plan, int run, double share, bool begins, bool ends) {
  const lw_plan_run *r = &plan->run[run];
  double before = begins ? lw_plan_tangent(plan, run, false) : 0.0;
  double after = ends ? lw_plan_tangent(plan, run, true) : 0.0;
  double bend = fabs(r->radius_m) > 0.0 ? r->length_m / r->radius_m : 0.0;
  return share * bend + before + after;
}

lw_face lw_face_between(const lw_plan *plan, double from_m, double to_m) {
  static const double NEAR = 1e-9;
  lw_face face = {0};
  for (int i = 0; i < plan->run_count; i++) {
    double begin = plan->run[i].from_m, end = begin + plan->run[i].length_m;
    double low = fmax(begin, from_m), high = fmin(end, to_m);
    if (high <= low) continue;
    face.length_m += high - low;
    face.loses += loses(plan, i, (high - low) / (end - begin), low <= begin + NEAR, high >= end - NEAR);
  }
  return face;
}

/* Between the chord and the arc of a run, positive on the right of the chord: outside. */
static double segment(const lw_plan_run *r) {
  if (!(fabs(r->radius_m) > 0.0)) return 0.0;
  double bend = r->length_m / r->radius_m;
  return r->radius_m * r->radius_m / 2.0 * (bend - sin(bend));
}

double lw_plan_inside(const lw_plan *plan, double offset_m) {
  if (!plan->closed) return 0.0;
  double twice = 0.0, bulges = 0.0;
  for (int i = 0; i < plan->run_count; i++) {
    const lw_plan_run *r = &plan->run[i];
    twice += r->begin.x_m * r->end.y_m - r->end.x_m * r->begin.y_m;
    bulges += segment(r);
  }
  return fmax(0.0, twice / 2.0 + bulges - lw_plan_strip(plan, 0.0, offset_m));
}
