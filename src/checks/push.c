/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "stage.h"

#include <math.h>

/* Formula and wedge that must agree do so to this share of the thrust. */
static const double AGREEMENT = 1e-6;

static lw_earth_state state_of(const lw_method *method) {
  return method->pressure == LW_PRESSURE_AT_REST ? LW_AT_REST : LW_ACTIVE;
}

static void fail(lw_push *push, const lw_error *error) {
  push->status = LW_NO_SOLUTION;
  push->reason = error->reason == LW_REASON_NONE ? LW_REASON_NO_WEDGE : error->reason;
}

/* The independent recheck on the same plane and in the same direction; the larger of the two is used. */
static bool find_wedge(const lw_push *like, lw_push *push, const lw_working *working) {
  const lw_plane *plane = &push->back.plane;
  bool known = like && like->wedge_known;
  if (known && lw_wedge_scale(&like->back.plane, &like->wedge, plane, &push->wedge)) return true;
  return lw_wedge_thrust(LW_ACTIVE, plane, &push->wedge, NULL, working) == LW_OK;
}

static void recheck(const lw_method *method, const lw_push *like, lw_push *push, const lw_working *working) {
  const lw_plane *plane = &push->back.plane;
  if (method->pressure == LW_PRESSURE_AT_REST || !find_wedge(like, push, working)) return;
  push->wedge_known = true;
  double wedge = push->wedge.thrust_kn_per_m, formula = push->formula_kn_per_m;
  if (lw_plane_is_plain(plane)) {
    push->faulty = fabs(wedge - formula) > AGREEMENT * fmax(fabs(formula), 1e-9);
    return;
  }
  push->wedge_governs = wedge > formula * (1.0 + AGREEMENT);
  if (!push->wedge_governs) return;
  push->thrust.total_kn_per_m = wedge;
  push->thrust.height_of_action_m = fmax(push->thrust.height_of_action_m, push->wedge.height_of_action_m);
}

/* Level thrust, thrust whose downward part is not counted, thrust on soil under an overhang: the direction is
 * settled here, after the size. */
static void direct(const lw_method *method, lw_push *push) {
  lw_thrust *thrust = &push->thrust;
  /* At rest nothing slides down the back: a downward part there would hold a wall that no friction holds. */
  bool level = method->direction == LW_DIRECTION_LEVEL || method->pressure == LW_PRESSURE_AT_REST;
  double angle = level ? 0.0 : thrust->angle_rad;
  thrust->angle_rad = angle;
  thrust->horizontal_kn_per_m = thrust->total_kn_per_m * cos(angle);
  thrust->vertical_kn_per_m = thrust->total_kn_per_m * sin(angle);
  bool down_misses = push->back.overhangs && push->back.plane.along_ground && thrust->vertical_kn_per_m > 0.0;
  if (method->thrust_vertical == LW_NOT_COUNTED || down_misses) thrust->vertical_kn_per_m = 0.0;
}

void lw_push_find(const lw_wall *wall, const lw_section *section, double extra_depth_m, const lw_push *like,
                  lw_push *push, const lw_working *working) {
  const lw_method *method = &wall->method;
  lw_error error = {0};
  *push = (lw_push){.status = LW_OK};
  lw_back_plane_build(&wall->site, section, method, wall->wall_friction_rad, extra_depth_m, &push->back);
  if (wall->site.backfill_refused) {
    push->status = LW_NO_SOLUTION;
    push->reason = LW_REASON_REFUSED_BACKFILL;
    return;
  }
  if (push->back.plane.height_m <= 0.0) return;
  const lw_pressure_routine *routine = lw_pressure_routine_of(method->pressure);
  if (routine->thrust(state_of(method), &push->back.plane, &push->thrust, &error, working) != LW_OK) {
    fail(push, &error);
    return;
  }
  push->formula_kn_per_m = push->thrust.total_kn_per_m;
  recheck(method, like, push, working);
  direct(method, push);
}
