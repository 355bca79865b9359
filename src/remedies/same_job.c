/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "same_job.h"

#include <math.h>

#include "sheet/values.h"
#include "tables/known.h"

/* A wall that holds up half of the ground stands, and leaves the other half to fall: it is no cure. */

static const double ROUNDING_M = 1e-6;

double lw_change_depth_now(const lw_case *c) {
  const lw_quantity *depth =
      c->wall.kind.value == LW_WALL_COURSES ? &c->courses.block_depth : &c->shape.base_width;
  return lw_si_or(depth, 0.0);
}

double lw_change_held(const lw_result *result) {
  return result->verdict.height_m[LW_HEIGHT_EXPOSED] - result->wall.site.soil_below_top_m;
}

bool lw_change_keeps_held(const lw_result *now, double held_then_m) {
  double share = lw_known_value(now->tables, LW_THRESHOLD_SAME_JOB);
  return held_then_m >= share * lw_change_held(now) - ROUNDING_M;
}

/* A wall of deeper blocks already may keep them. */
bool lw_change_keeps_depth(const lw_result *now, double depth_then_m) {
  double laid = lw_known_value(now->tables, LW_THRESHOLD_HAND_LAID_DEPTH);
  return depth_then_m <= fmax(laid, lw_change_depth_now(&now->given)) + ROUNDING_M;
}

lw_remedy_kind lw_change_kind(const lw_result *now, const lw_result *then) {
  bool courses = then->given.wall.kind.value == LW_WALL_COURSES;
  if (courses && !lw_change_keeps_depth(now, lw_change_depth_now(&then->given))) return LW_REMEDY_OTHER_WALL;
  return lw_change_keeps_held(now, lw_change_held(then)) ? LW_REMEDY_CURE : LW_REMEDY_LOWER_JOB;
}
