/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "setting_out.h"

#include <math.h>

#include "base/angles.h"
#include "tables/known.h"
#include "laying.h"
#include "pipe.h"
#include "plan.h"
#include "steps.h"

/* Pegs and levels. Levels are above the underside of the lowest course where it is lowest. */

static void put_peg(lw_setting_out *setting_out, lw_peg_kind kind, int number, lw_spot at, double level_m) {
  if (setting_out->peg_count >= LW_PEG_MAX) return;
  setting_out->peg[setting_out->peg_count++] = (lw_peg){kind, number, at, level_m};
}

static void put_level(lw_setting_out *setting_out, lw_level_kind kind, int number, double level_m) {
  if (setting_out->level_count >= LW_LEVEL_MAX) return;
  setting_out->level[setting_out->level_count++] = (lw_level){kind, number, level_m + 0.0}; /* never -0 */
}

/* Where a distance along the lowest face lies, on a face that has stepped back from it. */
static lw_spot along(const lw_plan *plan, double at_m, double back_m) {
  int run = 0;
  while (run + 1 < plan->run_count && at_m > plan->run[run + 1].from_m) run++;
  const lw_plan_run *r = &plan->run[run];
  double s = at_m - r->from_m;
  double heading = r->heading_rad + (fabs(r->radius_m) > 0.0 ? s / r->radius_m : 0.0);
  if (!(fabs(r->radius_m) > 0.0))
    return (lw_spot){r->begin.x_m + s * cos(heading) - back_m * sin(heading),
                     r->begin.y_m + s * sin(heading) + back_m * cos(heading)};
  double radius = r->radius_m - back_m;
  return (lw_spot){r->centre.x_m + radius * sin(heading), r->centre.y_m - radius * cos(heading)};
}

/* A corner of the face of a course; at a free end it has stepped back along the wall as well. */
static lw_spot corner_of(const lw_plan *plan, int corner, int course) {
  bool last = corner == plan->run_count;
  double back_m = lw_plan_offset(plan, course);
  lw_spot at = lw_plan_corner(plan, corner, back_m);
  if (plan->closed || (corner > 0 && !last)) return at;
  const lw_plan_run *r = &plan->run[last ? corner - 1 : corner];
  double along = (last ? -1.0 : 1.0) * course * plan->end_setback_m;
  bool curved = fabs(r->radius_m) > 0.0;
  double heading = r->heading_rad + (curved && last ? r->length_m / r->radius_m : 0.0);
  if (!curved) return (lw_spot){at.x_m + along * cos(heading), at.y_m + along * sin(heading)};
  double radius = r->radius_m - back_m;
  heading += along / radius;
  return (lw_spot){r->centre.x_m + radius * sin(heading), r->centre.y_m - radius * cos(heading)};
}

/* Where the base has risen its lowest course has stepped back: the pegs stand on the face that is laid. */
static void place_pegs(const lw_plan *plan, lw_setting_out *setting_out, double top_m) {
  int corners = plan->closed ? plan->run_count : plan->run_count + 1;
  double back = lw_plan_offset(plan, plan->courses - 1);
  for (int i = 0; i < corners; i++) {
    double at = i < plan->run_count ? plan->run[i].from_m : plan->length_m;
    int raised = lw_plan_raised(plan, at, i < plan->run_count);
    put_peg(setting_out, LW_PEG_BASE, i + 1, corner_of(plan, i, raised), raised * plan->course_m);
  }
  for (int i = 0; i < corners && back > 0.0; i++)
    put_peg(setting_out, LW_PEG_TOP, i + 1, corner_of(plan, i, plan->courses - 1), top_m);
  for (int i = 0; i < plan->run_count; i++)
    if (fabs(plan->run[i].radius_m) > 0.0)
      put_peg(setting_out, LW_PEG_CENTRE, i + 1, plan->run[i].centre, 0.0);
  for (int i = 0; i < plan->step_count; i++) {
    int raised = lw_plan_raised(plan, plan->step[i].at_m, true);
    lw_spot at = along(plan, plan->step[i].at_m, lw_plan_offset(plan, raised));
    put_peg(setting_out, LW_PEG_STEP, i + 1, at, raised * plan->course_m);
  }
}

static double apart(lw_spot a, lw_spot b) {
  return hypot(a.x_m - b.x_m, a.y_m - b.y_m);
}

static void put_check(lw_setting_out *setting_out, lw_peg_check check) {
  if (setting_out->check_count < LW_PEG_CHECK_MAX) setting_out->check[setting_out->check_count++] = check;
}

/* Each diagonal once, whichever way it is named. */
static bool told(const lw_setting_out *setting_out, int from, int to) {
  for (int i = 0; i < setting_out->check_count; i++)
    if (setting_out->check[i].from == to && setting_out->check[i].to == from) return true;
  return false;
}

/* 3-4-5 in the largest multiple of 50 mm that fits the two runs. */
static void check_square(const lw_plan_run *p, const lw_plan_run *q, int corner,
                         lw_setting_out *setting_out) {
  if (fabs(fabs(p->turn_rad) - LW_HALF_PI) > 1e-6) return;
  double shorter = fmin(p->length_m, q->length_m), longer = fmax(p->length_m, q->length_m);
  double unit = floor(fmin(shorter / 3.0, longer / 4.0) / 0.05 + 1e-9) * 0.05;
  if (unit > 0.0) setting_out->square[setting_out->square_count++] = (lw_right_angle){corner, unit};
}

/* Over each corner of straight runs the distance between the pegs on both sides of it: of a rectangle
 * these are its diagonals. The tolerance is an error of that distance; at the corner it is an angle. */
static void check_corners(const lw_plan *plan, lw_setting_out *setting_out, double tolerance_m) {
  int corners = plan->closed ? plan->run_count : plan->run_count + 1;
  for (int i = plan->closed ? 0 : 1; i < plan->run_count; i++) {
    int before = (i - 1 + corners) % corners, after = (i + 1) % corners;
    const lw_plan_run *p = &plan->run[lw_plan_at(plan, i - 1)], *q = &plan->run[i];
    if (before == after || fabs(p->radius_m) > 0.0 || fabs(q->radius_m) > 0.0) continue;
    if (!(fabs(p->turn_rad) > 0.0)) continue;
    check_square(p, q, i + 1, setting_out);
    if (told(setting_out, before + 1, after + 1)) continue;
    const lw_peg *b = setting_out->peg;
    double distance = apart(b[before].at, b[after].at);
    double legs = apart(b[before].at, b[i].at) * apart(b[i].at, b[after].at);
    double sine = sin(LW_PI - fabs(p->turn_rad));
    put_check(setting_out,
              (lw_peg_check){.from = before + 1,
                             .to = after + 1,
                             .distance_m = distance,
                             .tolerance_m = tolerance_m,
                             .angle_deg = tolerance_m * distance / (legs * sine) * LW_DEG_PER_RAD});
  }
}

/* Of a curve the chord and the radius. */
static void check_curves(const lw_plan *plan, lw_setting_out *setting_out, double tolerance_m) {
  for (int i = 0; i < plan->run_count; i++) {
    const lw_plan_run *r = &plan->run[i];
    if (!(fabs(r->radius_m) > 0.0)) continue;
    int after = plan->closed ? (i + 1) % plan->run_count : i + 1;
    double chord = apart(setting_out->peg[i].at, setting_out->peg[after].at);
    int raised = lw_plan_raised(plan, r->from_m, true);
    double radius = fabs(r->radius_m - lw_plan_offset(plan, raised));
    if (chord > tolerance_m)
      put_check(setting_out, (lw_peg_check){i + 1, after + 1, chord, tolerance_m, 0.0});
    put_check(setting_out, (lw_peg_check){i + 1, 0, radius, tolerance_m, 0.0});
  }
}

static void levels(const lw_laying *laying, double top_m) {
  const lw_plan *plan = laying->plan;
  lw_setting_out *setting_out = &laying->order->setting_out;
  double bedding = laying->bedding_m, cap = laying->cap_m;
  put_level(setting_out, LW_LEVEL_TOP, 0, top_m);
  if (cap > 0.0) put_level(setting_out, LW_LEVEL_UNDER_CAP, 0, top_m - cap);
  put_level(setting_out, LW_LEVEL_GROUND, 0, laying->embedment_m);
  if (plan->solid) put_level(setting_out, LW_LEVEL_UNDER_WALL, 0, 0.0);
  for (int i = 0; i < plan->courses && !plan->solid; i++)
    put_level(setting_out, LW_LEVEL_UNDER_COURSE, i + 1, i * plan->course_m);
  for (int i = 0; i < plan->step_count; i++) {
    double at = plan->step[i].at_m;
    put_level(setting_out, LW_LEVEL_BEFORE_STEP, i + 1, lw_plan_raised(plan, at, false) * plan->course_m);
    put_level(setting_out, LW_LEVEL_AFTER_STEP, i + 1, lw_plan_raised(plan, at, true) * plan->course_m);
  }
  if (!(laying->pad_m > 0.0)) return;
  put_level(setting_out, LW_LEVEL_PAD_TOP, 0, -bedding);
  put_level(setting_out, LW_LEVEL_DIG_BOTTOM, 0, -bedding - laying->pad_m);
  for (int i = 0; i < plan->step_count; i++) {
    double at = plan->step[i].at_m;
    int upper = lw_plan_raised(plan, at, true), under = lw_plan_raised(plan, at, false);
    double pad_top = (upper > under ? upper : under) * plan->course_m - bedding;
    put_level(setting_out, LW_LEVEL_STEP_PAD_TOP, i + 1, pad_top);
    put_level(setting_out, LW_LEVEL_STEP_DIG_BOTTOM, i + 1, pad_top - laying->pad_m);
  }
}

/* A sixth from both ends and the middle. A raised base leaves so much less to lean. */
static void stations(const lw_plan *plan, lw_setting_out *setting_out, double lean_share) {
  double top = lw_plan_offset(plan, plan->courses - 1);
  for (int i = 0; i < LW_STATION_MAX; i++) {
    double at = (2 * i + 1) * plan->length_m / (2.0 * LW_STATION_MAX);
    int raised = lw_plan_raised(plan, at, true);
    lw_station *s = &setting_out->station[setting_out->station_count++];
    *s = (lw_station){.along_m = at, .height_m = (plan->courses - raised) * plan->course_m};
    s->reading_m = top - lw_plan_offset(plan, raised);
    s->lean_alarm_m = lean_share * s->height_m;
  }
}

void lw_order_setting_out(const lw_laying *laying) {
  const lw_plan *plan = laying->plan;
  lw_setting_out *setting_out = &laying->order->setting_out;
  double top = plan->courses * plan->course_m + laying->cap_m;
  place_pegs(plan, setting_out, top);
  double lean_share = lw_known_value(laying->tables, LW_THRESHOLD_MOVEMENT_ALARM);
  double tolerance = lw_known_value(laying->tables, LW_ORDERING_PEG_TOLERANCE);
  check_corners(plan, setting_out, tolerance);
  check_curves(plan, setting_out, tolerance);
  levels(laying, top);
  lw_order_pipe(laying);
  stations(plan, setting_out, lean_share);
  setting_out->base_offset_m = lw_plan_offset(plan, plan->courses - 1);
  setting_out->batter_reading_m = setting_out->base_offset_m;
  setting_out->lean_alarm_m = lean_share * plan->courses * plan->course_m;
  setting_out->batter_alarm_m = setting_out->batter_reading_m - setting_out->lean_alarm_m;
  setting_out->joint_alarm_m = lw_known_value(laying->tables, LW_ORDERING_JOINT_STEP_ALARM);
}
