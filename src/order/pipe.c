/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pipe.h"

#include <math.h>

#include "laying.h"
#include "note.h"
#include "steps.h"

/* The drain pipe: from its high point it falls at least so much a metre, beside the pad, so that where the
 * base steps down the pipe steps down too, and higher where it could not come out else: its outlets lie at
 * the `outlet level`, which the check counts them by. */

static const double NEAR = 1e-6; /* [m] */
/* More than these are levelled as if they were so few: deeper, so on the safe side. */
static const double OUTLETS_TOLD = 9.0;

typedef struct piping {
  const lw_plan *plan;
  lw_setting_out *setting_out;
  double fall, outlet_length_m, bedding_m;
  double ground_m, outlet_level_m;
  int spare_outlets;            /* still to be placed, beside those at the ends of the ways */
  double level_m;               /* of the pipe where we are */
  double gone_m[LW_INVERT_MAX]; /* along its way, of each invert */
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

/* What an invert stands at: the number of its corner or step. */
typedef struct place {
  lw_invert_kind kind;
  int number;
} place;

static const place HIGH_POINT = {LW_INVERT_HIGH, 0}, OUTLET = {LW_INVERT_OUTLET, 0};
static const place LEAVES = {LW_INVERT_LEAVES, 0};

static void tell(piping *p, place what, lw_step_side side, double at_m) {
  if (p->setting_out->invert_count >= LW_INVERT_MAX) return;
  p->setting_out->invert[p->setting_out->invert_count++] =
      (lw_invert){.kind = what.kind,
                  .number = what.number,
                  .side = side,
                  .along_m = wrapped(p->plan, at_m) + 0.0,
                  .level_m = p->level_m + 0.0};
}

/* One way of the water along the wall, and how far we are. */
typedef struct way {
  double from_m, length_m, gone_m;
  double exits_m; /* between outlets on the way where the base no longer steps down; 0: none */
  bool forward;
} way;

static double place_of(const way *w, double gone_m) {
  return w->from_m + (w->forward ? gone_m : -gone_m);
}

/* The next corner peg or step on the way, as a distance from where it began; where the pipe leaves the wall
 * when there is none. */
static double next_place(const piping *p, const way *w, place *what) {
  const lw_plan *plan = p->plan;
  double nearest = w->exits_m > 0.0 ? fmin(w->gone_m + w->exits_m, w->length_m) : w->length_m;
  *what = LEAVES;
  for (int i = 0; i < plan->run_count + plan->step_count; i++) {
    bool step = i >= plan->run_count;
    double at = step ? plan->step[i - plan->run_count].at_m : plan->run[i].from_m;
    double there = w->forward ? at - w->from_m : w->from_m - at;
    if (plan->closed) there -= floor(there / plan->length_m) * plan->length_m;
    if (there <= w->gone_m + NEAR || there >= nearest - NEAR) continue;
    nearest = there;
    *what = step ? (place){LW_INVERT_STEP, i - plan->run_count + 1} : (place){LW_INVERT_CORNER, i + 1};
  }
  return nearest;
}

/* Where it comes out: at its level above the ground in front there, which rises with the base. What leads
 * to it is raised as far as the fall asks for; the pipe from the wall to daylight may fall more steeply. */
static void come_out(piping *p, const way *w, int first) {
  lw_setting_out *setting_out = p->setting_out;
  double at = place_of(w, w->gone_m);
  int raised = lw_plan_raised(p->plan, wrapped(p->plan, at), !w->forward);
  double out = raised * p->plan->course_m + p->ground_m + p->outlet_level_m;
  for (int i = first; i < setting_out->invert_count; i++) {
    double left = w->gone_m - p->gone_m[i] + p->outlet_length_m;
    setting_out->invert[i].level_m = fmax(setting_out->invert[i].level_m, out + p->fall * left);
  }
  p->level_m = out;
  tell(p, OUTLET, LW_SIDE_LEVEL, at);
  setting_out->pipe_outlet_m = fmin(setting_out->pipe_outlet_m, out);
  setting_out->pipe_length_m =
      fmax(setting_out->pipe_length_m, w->gone_m - p->gone_m[first] + p->outlet_length_m);
}

static void tell_on_way(piping *p, const way *w, place what, lw_step_side side) {
  if (p->setting_out->invert_count < LW_INVERT_MAX) p->gone_m[p->setting_out->invert_count] = w->gone_m;
  tell(p, what, side, place_of(w, w->gone_m));
}

/* Come out where the pipe is, and begin anew at the top of the pad beyond. */
static int begin_anew(piping *p, const way *w, double beyond_m, int first) {
  p->spare_outlets--;
  tell_on_way(p, w, LEAVES, LW_SIDE_LEVEL);
  come_out(p, w, first);
  p->level_m = beyond_m;
  int again = p->setting_out->invert_count;
  tell_on_way(p, w, HIGH_POINT, LW_SIDE_LEVEL);
  return again;
}

static bool steps_down_ahead(const piping *p, const way *w) {
  const lw_plan *plan = p->plan;
  for (int i = 0; i < plan->step_count; i++) {
    double at = plan->step[i].at_m, ahead = w->forward ? at - w->from_m : w->from_m - at;
    if (plan->closed) ahead -= floor(ahead / plan->length_m) * plan->length_m;
    bool down = pad_top(p, at, w->forward, true) < pad_top(p, at, w->forward, false) - NEAR;
    if (down && ahead > w->gone_m + NEAR && ahead < w->length_m - NEAR) return true;
  }
  return false;
}

/* Outlets that find no step to come out at share what is left of the way. */
static void share_out(const piping *p, way *w) {
  bool flat = p->spare_outlets > 0 && !steps_down_ahead(p, w);
  w->exits_m = flat ? (w->length_m - w->gone_m) / (p->spare_outlets + 1) : 0.0;
}

/* On to the next place; false at the way's end. */
static bool go_on(piping *p, way *w, int *first) {
  place what;
  double exit = w->exits_m > 0.0 ? w->gone_m + w->exits_m : INFINITY;
  double next = next_place(p, w, &what), at = place_of(w, next);
  p->level_m = fmin(p->level_m - p->fall * (next - w->gone_m), pad_top(p, at, w->forward, false));
  w->exits_m = fmax(0.0, w->exits_m - (next - w->gone_m));
  w->gone_m = next;
  double pad = pad_top(p, at, w->forward, true),
         beyond = what.kind != LW_INVERT_LEAVES ? fmin(p->level_m, pad) : p->level_m;
  bool drops = beyond < p->level_m - NEAR, ended = next >= w->length_m - NEAR;
  if (!ended && p->spare_outlets > 0 && (drops || next > exit - NEAR)) {
    *first = begin_anew(p, w, pad, *first);
    share_out(p, w);
    return true;
  }
  tell_on_way(p, w, what, drops ? LW_SIDE_BEFORE : LW_SIDE_LEVEL);
  if (drops) {
    p->level_m = beyond;
    tell_on_way(p, w, what, LW_SIDE_AFTER);
  }
  return !ended;
}

/* From the high point to the outlet and out to daylight. */
static void run_pipe(piping *p, double from_m, double length_m, bool forward) {
  way w = {.from_m = from_m, .length_m = length_m, .forward = forward};
  int first = p->setting_out->invert_count;
  p->level_m = pad_top(p, from_m, forward, true);
  share_out(p, &w);
  tell_on_way(p, &w, HIGH_POINT, LW_SIDE_LEVEL);
  while (length_m > NEAR && go_on(p, &w, &first)) continue;
  come_out(p, &w, first);
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
  p->spare_outlets = outlets - count;
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
    p->spare_outlets = outlets - 2;
    run_pipe(p, high, high, false);
    run_pipe(p, high, length - high, true);
    return;
  }
  p->spare_outlets = outlets - 1;
  double low = low_end ? length : low_begin ? 0.0 : middle_of(plan, 0);
  if (low > NEAR) run_pipe(p, 0.0, low, true);
  if (low < length - NEAR) run_pipe(p, length, length - low, false);
}

/* Two ways may lead to one outlet. */
static int outlets_told(const lw_setting_out *setting_out) {
  int count = 0;
  for (int i = 0; i < setting_out->invert_count; i++) {
    bool again = setting_out->invert[i].kind != LW_INVERT_OUTLET;
    for (int k = 0; k < i && !again; k++) {
      const lw_invert *a = &setting_out->invert[k], *b = &setting_out->invert[i];
      again = a->kind == LW_INVERT_OUTLET && fabs(a->along_m - b->along_m) < NEAR &&
              fabs(a->level_m - b->level_m) < NEAR;
    }
    count += again ? 0 : 1;
  }
  return count;
}

/* Around or along a low wall a long pipe may rise out of its soil. */
static void note_high(const lw_laying *laying) {
  const lw_setting_out *setting_out = &laying->order->setting_out;
  double soil = laying->soil_m;
  if (setting_out->pipe_high_m < soil - laying->items->soil_plug.si) return;
  lw_order_note_add(laying->order,
                    &(lw_order_note){.kind = LW_NOTE_PIPE_HIGH, .length_m = soil - setting_out->pipe_high_m});
}

void lw_order_pipe(const lw_laying *laying) {
  lw_setting_out *setting_out = &laying->order->setting_out;
  double outlets = laying->outlets;
  setting_out->pipe_known = outlets > 0.5 && laying->stone_m > 0.0;
  if (!setting_out->pipe_known) return;
  piping p = {.plan = laying->plan, .setting_out = setting_out, .fall = laying->items->pipe_fall.si};
  p.outlet_length_m = laying->items->outlet_length.si;
  p.ground_m = laying->embedment_m;
  p.outlet_level_m = laying->outlet_level_m;
  p.bedding_m = laying->bedding_m;
  setting_out->pipe_fall = p.fall;
  setting_out->pipe_outlet_m = INFINITY;
  (laying->plan->closed ? pipe_around : pipe_along)(&p, (int)fmin(outlets + 0.5, OUTLETS_TOLD));
  setting_out->pipe_high_m = setting_out->invert[0].level_m;
  for (int i = 0; i < setting_out->invert_count; i++)
    setting_out->pipe_high_m = fmax(setting_out->pipe_high_m, setting_out->invert[i].level_m);
  setting_out->pipe_below_front_m = laying->embedment_m - setting_out->pipe_outlet_m + 0.0;
  setting_out->outlet_count = outlets_told(setting_out);
  note_high(laying);
}
