/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "plan.h"

#include <math.h>

#include "laying.h"
#include "plan_cross.h"
#include "steps.h"
#include "sheet/values.h"

/* The plan: runs of face one after the other, straight or on an arc, with a turn at the end of each. */

static const double FULL_TURN = 6.283185307179586;
static const double RUNS_ON = 0.002; /* [rad] a tenth of a degree is no corner */
static const double MEETS = 0.010;   /* [m] a plan that comes so near to its beginning is closed */

int lw_plan_at(const lw_plan *plan, int run) {
  int count = plan->run_count;
  return ((run % count) + count) % count;
}

double lw_plan_offset(const lw_plan *plan, int course) {
  return course * plan->setback_m;
}

double lw_plan_depth(const lw_plan *plan, int course) {
  return course < plan->base_courses ? plan->base_depth_m : plan->depth_m;
}

static double bend(const lw_plan_run *run) {
  return run->radius_m < 0.0 || run->radius_m > 0.0 ? run->length_m / run->radius_m : 0.0;
}

/* The half turn's tangent at the beginning or end of a run; 0 at an open end. */
static double tangent_before(const lw_plan *plan, int run) {
  if (run == 0 && !plan->closed) return 0.0;
  return tan(plan->run[lw_plan_at(plan, run - 1)].turn_rad / 2.0);
}

static double tangent_after(const lw_plan *plan, int run) {
  if (run == plan->run_count - 1 && !plan->closed) return 0.0;
  return tan(plan->run[run].turn_rad / 2.0);
}

double lw_plan_tangent(const lw_plan *plan, int run, bool after) {
  return after ? tangent_after(plan, run) : tangent_before(plan, run);
}

double lw_plan_run_length(const lw_plan *plan, int run, double offset_m) {
  const lw_plan_run *r = &plan->run[run];
  return r->length_m - offset_m * (bend(r) + tangent_before(plan, run) + tangent_after(plan, run));
}

double lw_plan_module(const lw_plan *plan, int run, int course) {
  double radius = plan->run[run].radius_m;
  if (!(radius > 0.0)) return plan->module_m;
  double face = radius - lw_plan_offset(plan, course), rear = face - lw_plan_depth(plan, course);
  double opened = rear > 0.0 ? plan->tail_m * face / rear : plan->module_m;
  return fmax(plan->module_m, opened);
}

double lw_plan_end_back(const lw_plan *plan, int run, int course) {
  int free_ends = plan->closed ? 0 : (run == 0 ? 1 : 0) + (run == plan->run_count - 1 ? 1 : 0);
  return free_ends * course * plan->end_setback_m;
}

static lw_spot ahead(lw_spot from, double heading_rad, double length_m) {
  return (lw_spot){from.x_m + length_m * cos(heading_rad), from.y_m + length_m * sin(heading_rad)};
}

static lw_spot to_the_left(lw_spot from, double heading_rad, double length_m) {
  return ahead(from, heading_rad + FULL_TURN / 4.0, length_m);
}

lw_spot lw_plan_corner(const lw_plan *plan, int run, double offset_m) {
  bool last = run == plan->run_count;
  if (last && plan->closed) return lw_plan_corner(plan, 0, offset_m);
  const lw_plan_run *r = &plan->run[last ? run - 1 : run];
  lw_spot at = last ? r->end : r->begin;
  double heading = last ? r->heading_rad + bend(r) : r->heading_rad;
  double back = last ? 0.0 : tangent_before(plan, run);
  return ahead(to_the_left(at, heading, offset_m), heading, offset_m * back);
}

/* Where each run begins and ends; gives the heading after the last turn. */
static double place_runs(lw_plan *plan) {
  lw_spot at = {0.0, 0.0};
  double heading = 0.0, from = 0.0;
  for (int i = 0; i < plan->run_count; i++) {
    lw_plan_run *r = &plan->run[i];
    double after = heading + bend(r);
    r->begin = at;
    r->heading_rad = heading;
    r->from_m = from;
    r->centre = to_the_left(at, heading, r->radius_m);
    at = fabs(r->radius_m) > 0.0 ? to_the_left(r->centre, after, -r->radius_m)
                                 : ahead(at, heading, r->length_m);
    r->end = at;
    from += r->length_m;
    heading = after + r->turn_rad;
  }
  plan->length_m = from;
  return heading;
}

/* Lengths measured at the top are those of the lowest face after this; headings do not change. */
static void from_the_top(lw_plan *plan) {
  double offset = lw_plan_offset(plan, plan->courses - 1);
  lw_plan measured = *plan;
  for (int i = 0; i < plan->run_count; i++) {
    lw_plan_run *r = &plan->run[i];
    const lw_plan_run *top = &measured.run[i];
    double corners = tangent_before(&measured, i) + tangent_after(&measured, i);
    bool curved = fabs(top->radius_m) > 0.0;
    r->radius_m = curved ? top->radius_m + offset : 0.0;
    double length = top->length_m + lw_plan_end_back(plan, i, plan->courses - 1);
    r->length_m = (curved ? length * r->radius_m / top->radius_m : length) + offset * corners;
  }
}

static void take_runs(const lw_laying *laying, lw_plan *plan) {
  const lw_case_order *o = laying->items;
  const lw_quantity *all = &laying->courses->cap_depth;
  while (plan->run_count < LW_RUN_MAX && o->run[plan->run_count].length.origin != LW_ABSENT) {
    const lw_case_run *given = &o->run[plan->run_count];
    lw_plan_run *r = &plan->run[plan->run_count];
    r->length_m = given->length.si;
    r->radius_m = lw_si_or(&given->radius, 0.0);
    r->turn_rad = lw_si_or(&o->turn[plan->run_count], 0.0);
    double cap = lw_si_or(all, 0.0);
    r->cap_depth_m = lw_si_or(&given->cap_depth, cap);
    plan->run_count++;
  }
}

/* The face of a solid wall goes from its foot to the front of its top. */
static void take_solid(const lw_laying *laying, lw_plan *plan) {
  const lw_section *section = laying->section;
  double front = section->crest.x_m;
  for (int i = 0; i < section->outline_count; i++) {
    lw_corner corner = section->outline[i];
    if (corner.y_m > section->height_m - LW_TAKEN_UP) front = fmin(front, corner.x_m);
  }
  plan->solid = true;
  plan->unit_m = plan->module_m = plan->tail_m = 1.0;
  plan->depth_m = plan->base_depth_m = section->base_width_m;
  plan->courses = 2;
  plan->course_m = section->height_m / 2.0;
  plan->setback_m = front;
}

static void take_blocks(const lw_laying *laying, lw_plan *plan) {
  const lw_case_order *o = laying->items;
  const lw_case_courses *courses = laying->courses;
  plan->unit_m = courses->block_length.si;
  plan->gap_m = o->joint_gap.si;
  plan->module_m = plan->unit_m + plan->gap_m;
  plan->tail_m = o->tail_length.si;
  plan->depth_m = courses->block_depth.si;
  bool base = courses->base_count.origin != LW_ABSENT && courses->base_depth.origin != LW_ABSENT;
  plan->base_courses = base ? (int)lround(courses->base_count.si) : 0;
  plan->base_depth_m = plan->base_courses > 0 ? courses->base_depth.si : plan->depth_m;
  plan->course_m = courses->block_height.si;
  plan->courses = (int)lround(courses->count.si);
  plan->setback_m = courses->setback.si;
  plan->end_setback_m = o->end_setback.si;
  plan->curve_gap_m = o->curve_gap.si;
}

/* The distance by which the end misses the beginning. */
static double misses(const lw_plan *plan) {
  lw_spot end = plan->run[plan->run_count - 1].end;
  return hypot(end.x_m, end.y_m);
}

static lw_status refuse(const lw_plan_fault *why, lw_plan_fault *fault) {
  *fault = *why;
  return LW_FAULTS;
}

static lw_status close_plan(const lw_case_order *items, lw_plan *plan, lw_plan_fault *fault) {
  int last_run = plan->run_count - 1;
  lw_plan_run *last = &plan->run[last_run];
  bool given = items->turn[last_run].origin != LW_ABSENT;
  double heading = place_runs(plan);
  /* The last turn is what is left of a full one, the nearer way round. */
  double whole = heading - (given ? 0.0 : last->turn_rad) < 0.0 ? -FULL_TURN : FULL_TURN;
  if (!given)
    last->turn_rad = whole - heading;
  else if (fabs(heading - whole) > 0.01)
    return refuse(&(lw_plan_fault){LW_PLAN_TURNS, .at = last_run, .angle_rad = heading}, fault);
  if (fabs(last->turn_rad) > 3.0) return refuse(&(lw_plan_fault){LW_PLAN_OPEN, .at = 0}, fault);
  if (misses(plan) <= MEETS + 1e-9) return LW_OK;
  return refuse(&(lw_plan_fault){LW_PLAN_APART, .at = last_run, .length_m = misses(plan)}, fault);
}

static lw_status close_or_leave(const lw_case_order *items, lw_plan *plan, lw_plan_fault *fault) {
  place_runs(plan);
  plan->closed_told = items->ends.origin != LW_GIVEN;
  plan->closed = plan->closed_told ? misses(plan) <= MEETS : items->ends.value == LW_ENDS_CLOSED;
  lw_status status = plan->closed ? close_plan(items, plan, fault) : LW_OK;
  if (status != LW_OK || plan->closed) return status;
  if (items->turn[plan->run_count - 1].origin == LW_ABSENT) return LW_OK;
  return refuse(&(lw_plan_fault){LW_PLAN_LAST_TURN, .at = plan->run_count - 1}, fault);
}

/* Every course must still have a face to cover, and its blocks room between those of the runs beside. */
static lw_status hold_run(const lw_plan *plan, int run, lw_plan_fault *fault) {
  double offset = lw_plan_offset(plan, plan->courses - 1), length = plan->run[run].length_m;
  double top = lw_plan_run_length(plan, run, offset) - lw_plan_end_back(plan, run, plan->courses - 1);
  double rear = fmin(lw_plan_run_length(plan, run, lw_plan_depth(plan, 0)),
                     lw_plan_run_length(plan, run, offset + lw_plan_depth(plan, plan->courses - 1)));
  if (fmin(top, length) < plan->unit_m / 2.0)
    return refuse(&(lw_plan_fault){LW_PLAN_SHORT, .at = run}, fault);
  return rear >= -1e-9 ? LW_OK : refuse(&(lw_plan_fault){LW_PLAN_NO_ROOM, .at = run}, fault);
}

/* A row may have no more units than there is room for, and no run may cross another. */
static lw_status hold_lengths(const lw_plan *plan, lw_plan_fault *fault) {
  int first, second;
  for (int i = 0; i < plan->run_count; i++)
    if (hold_run(plan, i, fault) != LW_OK) return LW_FAULTS;
  if (lw_plan_crosses(plan, &first, &second))
    return refuse(&(lw_plan_fault){LW_PLAN_CROSSES, .at = second, .other = first}, fault);
  if (plan->length_m / plan->module_m < LW_ROW_UNITS - 8) return LW_OK;
  return refuse(&(lw_plan_fault){LW_PLAN_LONG, .at = 0}, fault);
}

static lw_status hold_steps(const lw_plan *plan, lw_plan_fault *fault) {
  int sum = 0, most = plan->first_raised;
  for (int i = 0; i < plan->step_count; i++) {
    sum += plan->step[i].rise;
    most = most > plan->first_raised + sum ? most : plan->first_raised + sum;
    if (plan->step[i].at_m > 0.0 && plan->step[i].at_m < plan->length_m) continue;
    return refuse(&(lw_plan_fault){LW_PLAN_STEP_OUTSIDE, .at = i}, fault);
  }
  if (plan->closed && (plan->falls || sum != 0))
    return refuse(&(lw_plan_fault){LW_PLAN_STEPS_ROUND, .falls = plan->falls}, fault);
  if (most < plan->courses) return LW_OK;
  return refuse(&(lw_plan_fault){LW_PLAN_STEPS_HIGH, .falls = plan->falls}, fault);
}

lw_status lw_plan_build(const lw_laying *laying, lw_plan *plan, lw_plan_fault *fault) {
  const lw_case_order *items = laying->items;
  lw_plan work = {0};
  (laying->section->kind == LW_WALL_COURSES ? take_blocks : take_solid)(laying, &work);
  take_runs(laying, &work);
  lw_status status = close_or_leave(items, &work, fault);
  if (status != LW_OK) return status;
  if (items->line.value == LW_LINE_TOP) from_the_top(&work);
  place_runs(&work);
  for (int i = 0; i < work.run_count; i++)
    if (fabs(work.run[i].turn_rad) < RUNS_ON) work.run[i].turn_rad = 0.0;
  lw_plan_add_steps(items, &work);
  status = hold_lengths(&work, fault);
  if (status == LW_OK) status = hold_steps(&work, fault);
  if (status == LW_OK) *plan = work;
  return status;
}
