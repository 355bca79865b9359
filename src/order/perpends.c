/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "perpends.h"

#include <math.h>

/* At a corner turned outwards the head of the other run's unit stands beside a row that stops there. */
static bool head_beside(const lw_laying *laying, int corner, lw_row_end end) {
  return end == LW_ROW_STOPPED && laying->order->corner[corner].turn_rad > 0.0;
}

/* Modules in their order along the row; the end of each is a joint, the last one's is the row's end. */
static int modules_of(const lw_laid *row) {
  int ends = (row->first_m > 0.0 ? 1 : 0) + (row->last_m > 0.0 ? 1 : 0);
  return ends + row->before + row->closer_count + row->after;
}

static double module_at(const lw_perpends *s, int index) {
  const lw_laid *row = s->row;
  int i = index;
  if (row->first_m > 0.0 && i-- == 0) return row->first_m;
  if (i < row->before) return s->module_m;
  i -= row->before;
  if (i < row->closer_count) return row->closer_m[i];
  return i - row->closer_count < row->after ? s->module_m : row->last_m;
}

/* The next joint as it is laid, a ring not yet closed. */
static bool laid_next(lw_perpends *s, double *at_m) {
  int module = s->index - 1, count = modules_of(s->row);
  if (module < 0) {
    s->index++;
    *at_m = lw_spans_base(s->span, s->spans, s->u_m);
    return s->head_before || laid_next(s, at_m);
  }
  if (module + 1 < count) {
    s->index++;
    s->u_m += module_at(s, module);
    *at_m = lw_spans_base(s->span, s->spans, s->u_m);
    return true;
  }
  if (module + 1 > count || !s->head_after) return false;
  s->index = count + 2;
  *at_m = s->to_m;
  return true;
}

static void back_to_start(lw_perpends *s) {
  s->index = 0;
  s->u_m = s->row->from_m;
}

static bool past(const lw_perpends *s, double at_m) {
  return at_m >= s->ring_m - 1e-9;
}

/* A ring has no beginning: joints past its length come round to the front. */
static void go_round(lw_perpends *s) {
  double at = 0.0;
  lw_perpends before = *s;
  while (laid_next(s, &at) && !past(s, at)) before = *s;
  *s = before;
  s->around = true;
}

lw_perpends lw_perpends_of(const lw_laying *laying, const lw_laid *row) {
  const lw_stretch *stretch = &laying->order->stretch[row->stretch];
  bool ring = row->start == LW_ROW_RING;
  lw_perpends s = {.row = row, .module_m = laying->plan->module_m, .ring_m = ring ? stretch->length_m : 0.0};
  s.spans = lw_spans_of(laying->order, stretch, row->course, s.span);
  s.from_m = ring ? 0.0 : lw_spans_base(s.span, s.spans, row->from_m);
  s.to_m = ring ? s.ring_m : lw_spans_base(s.span, s.spans, row->to_m);
  s.head_before = ring || head_beside(laying, stretch->corner_before, row->start);
  s.head_after = head_beside(laying, stretch->corner_after, row->end);
  back_to_start(&s);
  if (ring) go_round(&s);
  return s;
}

bool lw_perpends_next(lw_perpends *s, double *at_m) {
  bool found = laid_next(s, at_m);
  if (!(s->ring_m > 0.0)) return found;
  if (s->around && found) {
    *at_m -= s->ring_m;
    return true;
  }
  if (s->around) {
    back_to_start(s);
    found = laid_next(s, at_m);
  }
  s->around = false;
  return found && !past(s, *at_m);
}

lw_nearest lw_nearest_of(const lw_perpends *perpends) {
  lw_nearest n = {.rest = *perpends};
  n.any = lw_perpends_next(&n.rest, &n.here_m);
  n.more = n.any && lw_perpends_next(&n.rest, &n.next_m);
  return n;
}

double lw_nearest_to(lw_nearest *n, double at_m) {
  while (n->more && fabs(n->next_m - at_m) <= fabs(n->here_m - at_m)) {
    n->here_m = n->next_m;
    n->more = lw_perpends_next(&n->rest, &n->next_m);
  }
  return n->any ? fabs(n->here_m - at_m) : INFINITY;
}

bool lw_perpends_overlap(const lw_perpends *lower, const lw_perpends *upper, double *least_m, double *at_m) {
  lw_nearest near = lw_nearest_of(lower);
  lw_perpends above = *upper;
  bool found = false;
  for (double at; near.any && lw_perpends_next(&above, &at);) {
    if (at < lower->from_m || at > lower->to_m) continue;
    double distance = lw_nearest_to(&near, at);
    if (found && distance >= *least_m) continue;
    found = true;
    *least_m = distance;
    *at_m = at;
  }
  return found;
}

double lw_perpends_lack(const lw_perpends *lower, const lw_perpends *upper, double needs_m) {
  lw_nearest near = lw_nearest_of(lower);
  lw_perpends above = *upper;
  double lack = 0.0;
  for (double at; near.any && lw_perpends_next(&above, &at);) {
    if (at < lower->from_m || at > lower->to_m) continue;
    double short_m = fmax(0.0, needs_m - lw_nearest_to(&near, at));
    lack += short_m * short_m / needs_m; /* one joint over another is worse than two half so near */
  }
  return lack;
}
