/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "order/steps.h"
#include "elevation.h"

/* Heights beside the ends of the wall: each end has those of its own base and ground. */

bool lw_elevation_ground(const lw_elevation *e, double at_m, int raised, double *level_m) {
  const lw_plan *plan = &e->order->plan;
  if (!plan->falls && raised > 0) return false;
  double slope = plan->falls ? plan->fall_m / plan->length_m : 0.0;
  *level_m = e->ground_m + (plan->falls ? fmax(plan->fall_m, 0.0) : 0.0) - slope * at_m;
  return true;
}

static int raised_at(const lw_elevation *e, lw_face_end end) {
  const lw_plan *plan = &e->order->plan;
  return end == LW_AT_END ? lw_plan_raised(plan, plan->length_m, false) : lw_plan_raised(plan, 0.0, true);
}

bool lw_elevation_ends_differ(const lw_elevation *e) {
  double level[2];
  int raised[] = {raised_at(e, LW_AT_BEGINNING), raised_at(e, LW_AT_END)};
  if (e->order->plan.closed) return false;
  if (raised[0] != raised[1]) return true;
  return lw_elevation_ground(e, 0.0, raised[0], &level[0]) &&
         lw_elevation_ground(e, e->length_m, raised[1], &level[1]) && fabs(level[0] - level[1]) > 1e-6;
}

/* Put in between those that are there; not beyond the first, nor twice. */
static void add(double *level, int *count, double value_m) {
  int at = *count;
  while (at > 0 && level[at - 1] > value_m - 1e-6) at--;
  if (at == 0 || (at < *count && level[at] < value_m + 1e-6)) return;
  for (int i = *count; i > at; i--) level[i] = level[i - 1];
  level[at] = value_m;
  (*count)++;
}

/* Those of one end from the bottom up, and its base. gives their number */
static int levels_of(const lw_elevation *e, lw_face_end end, double level[LW_DIMENSIONS_MAX],
                     double *base_m) {
  double at = end == LW_AT_END ? e->length_m : 0.0, ground;
  int raised = raised_at(e, end), count = 1;
  *base_m = raised * e->order->plan.course_m;
  level[0] = *base_m + e->bottom_m;
  add(level, &count, *base_m);
  add(level, &count, e->top_m - e->cap_m);
  add(level, &count, e->top_m);
  if (lw_elevation_ground(e, at, raised, &ground) && ground < e->top_m) add(level, &count, ground);
  return count;
}

static const double BESIDE_MM = 4.0; /* of paper from the wall to the first chain */

void lw_elevation_levels_room(lw_elevation *e) {
  static const double LEAST_MM = 17.0, APART_MM = 8.6, SLASH_MM = 2.6, OUTER_MM = 1.8;
  e->apart_mm = APART_MM;
  e->levels_mm = LEAST_MM;
  for (int end = LW_AT_BEGINNING; end <= LW_AT_END; end++) {
    double level[LW_DIMENSIONS_MAX], base;
    int count = levels_of(e, (lw_face_end)end, level, &base);
    double whole[] = {base, e->top_m};
    e->apart_mm = fmax(e->apart_mm, lw_sketch_upright_wide(&e->s, level, count) + SLASH_MM);
    double outer = BESIDE_MM + e->apart_mm + lw_sketch_upright_wide(&e->s, whole, 2) + OUTER_MM;
    e->levels_mm = fmax(e->levels_mm, outer - LW_MARGIN_MM);
  }
}

void lw_elevation_levels(lw_elevation *e, lw_face_end end) {
  bool right = end == LW_AT_END;
  double way = right ? 1.0 : -1.0, level[LW_DIMENSIONS_MAX], base;
  int count = levels_of(e, end, level, &base);
  double x = lw_sketch_at(&e->s, right ? e->length_m : 0.0, 0.0).x_mm + way * BESIDE_MM;
  double whole[] = {base, e->top_m};
  lw_sketch_upright(&e->s, x, right, level, count);
  if (count > 2) lw_sketch_upright(&e->s, x + way * e->apart_mm, right, whole, 2);
}
