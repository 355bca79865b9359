/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/print.h"
#include "parts.h"

/* The drain pipe: from its high point it falls at least so much a metre, and it lies nowhere above the pad
 * beside it, so that where the base steps down the pipe steps down too. */

static const double NEAR = 1e-6; /* [m] */
/* More than these are levelled as if they were so few: deeper, so on the safe side. */
static const double OUTLETS_TOLD = 9.0;

enum { LW_PLACE_NAME = 24 };

typedef struct piping {
  const lw_plan *plan;
  lw_pegs *pegs;
  double fall, outlet_length_m, bedding_m;
  double level_m; /* of the pipe where we are */
} piping;

static double wrapped(const lw_plan *plan, double at_m) {
  double length = plan->length_m;
  if (!plan->closed) return fmin(fmax(at_m, 0.0), length);
  double at = at_m - floor(at_m / length) * length;
  return at > length - NEAR ? 0.0 : at;
}

/* The top of the pad just before or after a place, on the way. */
static double pad_top(const piping *p, double at_m, bool forward, bool beyond) {
  return lw_plan_raised(p->plan, wrapped(p->plan, at_m), forward == beyond) * p->plan->course_m -
         p->bedding_m;
}

static void tell(piping *p, const char *name, double at_m) {
  if (p->pegs->invert_count >= LW_INVERT_MAX) return;
  lw_invert *i = &p->pegs->invert[p->pegs->invert_count++];
  *i = (lw_invert){.along_m = wrapped(p->plan, at_m) + 0.0, .level_m = p->level_m + 0.0};
  lw_print(i->name, sizeof i->name, "%s", name);
}

/* One way of the water along the wall, and how far we are. */
typedef struct way {
  double from_m, length_m, gone_m;
  bool forward;
} way;

static double place_of(const way *w, double gone_m) {
  return w->from_m + (w->forward ? gone_m : -gone_m);
}

/* The next corner peg or step on the way, as a distance from where it began; the way's length when none. */
static double next_place(const piping *p, const way *w, char name[LW_PLACE_NAME]) {
  const lw_plan *plan = p->plan;
  double nearest = w->length_m;
  name[0] = '\0';
  for (int i = 0; i < plan->run_count + plan->step_count; i++) {
    bool step = i >= plan->run_count;
    double at = step ? plan->step[i - plan->run_count].at_m : plan->run[i].from_m;
    double there = w->forward ? at - w->from_m : w->from_m - at;
    if (plan->closed) there -= floor(there / plan->length_m) * plan->length_m;
    if (there <= w->gone_m + NEAR || there >= nearest - NEAR) continue;
    nearest = there;
    lw_print(name, LW_PLACE_NAME, "%c%d", step ? 'S' : 'B', step ? i - plan->run_count + 1 : i + 1);
  }
  return nearest;
}

/* From the high point to the outlet and out to daylight. */
static void run_pipe(piping *p, double from_m, double length_m, bool forward) {
  way w = {.from_m = from_m, .length_m = length_m, .forward = forward};
  char name[LW_PLACE_NAME], line[48];
  p->level_m = pad_top(p, from_m, forward, true);
  tell(p, "high point", from_m);
  while (w.gone_m < length_m - NEAR) {
    double next = next_place(p, &w, name), at = place_of(&w, next);
    p->level_m = fmin(p->level_m - p->fall * (next - w.gone_m), pad_top(p, at, forward, false));
    w.gone_m = next;
    double beyond = name[0] != '\0' ? fmin(p->level_m, pad_top(p, at, forward, true)) : p->level_m;
    bool drops = beyond < p->level_m - NEAR;
    lw_print(line, sizeof line, drops ? "%s, before the step" : "%s", name);
    tell(p, name[0] != '\0' ? line : "where it leaves the wall", at);
    if (!drops) continue;
    p->level_m = beyond;
    lw_print(line, sizeof line, "%s, after the step", name);
    tell(p, line, at);
  }
  p->level_m -= p->fall * p->outlet_length_m;
  tell(p, "outlet", place_of(&w, length_m));
  lw_pegs *pegs = p->pegs;
  pegs->pipe_outlet_m = fmin(pegs->pipe_outlet_m, p->level_m);
  pegs->pipe_length_m = fmax(pegs->pipe_length_m, length_m + p->outlet_length_m);
}

/* The middle of the first stretch of the plan whose base is raised so far. */
static double middle_of(const lw_plan *plan, int raised) {
  double from = 0.0;
  for (int i = 0; i <= plan->step_count; i++) {
    double to = i < plan->step_count ? plan->step[i].at_m : plan->length_m;
    if (lw_plan_raised(plan, (from + to) / 2.0, true) == raised) return (from + to) / 2.0;
    from = to;
  }
  return plan->length_m / 2.0;
}

static int highest(const lw_plan *plan) {
  int most = lw_plan_raised(plan, 0.0, true);
  for (int i = 0; i < plan->step_count; i++) {
    int raised = lw_plan_raised(plan, plan->step[i].at_m, true);
    most = raised > most ? raised : most;
  }
  return most;
}

/* Around a closed plan the water comes from midway between the outlets, both ways; all of them evenly
 * spaced on a level base, at its low place on one with steps. */
static void pipe_around(piping *p, int outlets) {
  const lw_plan *plan = p->plan;
  bool level = plan->step_count == 0;
  int count = level ? outlets : 1;
  double outlet = level ? 0.0 : middle_of(plan, 0), arm = plan->length_m / (2.0 * count);
  for (int i = 0; i < count; i++) {
    double at = outlet + i * plan->length_m / count;
    run_pipe(p, wrapped(plan, at - arm), arm, true);
    run_pipe(p, wrapped(plan, at + arm), arm, false);
  }
}

/* Along an open plan: to both ends where both are low and there are outlets enough, on a level base to the
 * others between them too, evenly spaced; else to the low place. */
static void pipe_along(piping *p, int outlets) {
  const lw_plan *plan = p->plan;
  double length = plan->length_m;
  bool two = outlets > 1;
  bool low_begin = lw_plan_raised(plan, 0.0, true) == 0, low_end = lw_plan_raised(plan, length, false) == 0;
  if (two && plan->step_count == 0) {
    double half = length / (outlets - 1) / 2.0;
    for (int i = 0; i < outlets - 1; i++) {
      run_pipe(p, (2 * i + 1) * half, half, false);
      run_pipe(p, (2 * i + 1) * half, half, true);
    }
    return;
  }
  if (two && low_begin && low_end) {
    double high = middle_of(plan, highest(plan));
    run_pipe(p, high, high, false);
    run_pipe(p, high, length - high, true);
    return;
  }
  double low = low_end ? length : low_begin ? 0.0 : middle_of(plan, 0);
  if (low > NEAR) run_pipe(p, 0.0, low, true);
  if (low < length - NEAR) run_pipe(p, length, length - low, false);
}

void lw_order_pipe(lw_laying *laying, const lw_result *result) {
  const lw_case *c = &result->given;
  lw_pegs *pegs = &laying->order->pegs;
  double outlets = c->drain_outlets.origin == LW_GIVEN ? c->drain_outlets.si : 0.0;
  pegs->pipe_known = outlets > 0.5 && c->stone_width.origin == LW_GIVEN && c->stone_width.si > 0.0;
  if (!pegs->pipe_known) return;
  piping p = {.plan = laying->plan, .pegs = pegs, .fall = c->order.pipe_fall.si};
  p.outlet_length_m = c->order.outlet_length.si;
  p.bedding_m = c->pad_thickness.origin != LW_ABSENT ? c->order.bedding_thickness.si : 0.0;
  pegs->pipe_fall = p.fall;
  pegs->pipe_outlet_m = INFINITY;
  (laying->plan->closed ? pipe_around : pipe_along)(&p, (int)fmin(outlets + 0.5, OUTLETS_TOLD));
  pegs->pipe_high_m = pegs->invert[0].level_m;
  for (int i = 0; i < pegs->invert_count; i++)
    pegs->pipe_high_m = fmax(pegs->pipe_high_m, pegs->invert[i].level_m);
  pegs->pipe_below_front_m = c->wall_embedment.si - pegs->pipe_outlet_m;
}
