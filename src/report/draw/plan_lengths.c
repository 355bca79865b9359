/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "plan_view.h"

/* The lines of the lengths, one in front of each straight run. In an inside corner two of them cross, as both
 * reach as far as their runs. */

/* Along a straight run in front of it, beginning to end; false for a curve. */
static bool line_of(const lw_plan_view *v, int run, lw_xy_mm line[2]) {
  const lw_plan_run *r = &v->order->plan.run[run];
  lw_spot out;
  lw_plan_on_run(v->order, run, 0.5, &out);
  line[0] = lw_plan_moved(lw_sketch_at(&v->s, r->begin.x_m, r->begin.y_m), out, LW_LENGTH_MM);
  line[1] = lw_plan_moved(lw_sketch_at(&v->s, r->end.x_m, r->end.y_m), out, LW_LENGTH_MM);
  return !lw_plan_is_curved(r);
}

static double turned(lw_xy_mm a, lw_xy_mm b) {
  return a.x_mm * b.y_mm - a.y_mm * b.x_mm;
}

static lw_xy_mm way(lw_xy_mm from, lw_xy_mm to) {
  return (lw_xy_mm){to.x_mm - from.x_mm, to.y_mm - from.y_mm};
}

/* The share of one line at which another crosses it; beyond 1 where none does. */
static double crossed_at(const lw_xy_mm line[2], const lw_xy_mm other[2]) {
  static const double NOWHERE = 2.0;
  lw_xy_mm along = way(line[0], line[1]), beside = way(other[0], other[1]);
  lw_xy_mm apart = way(line[0], other[0]);
  double turn = turned(along, beside);
  if (fabs(turn) < 1e-9) return NOWHERE;
  double share = turned(apart, beside) / turn, of_other = turned(apart, along) / turn;
  return share > 0.0 && share < 1.0 && of_other > 0.0 && of_other < 1.0 ? share : NOWHERE;
}

/* The later of two that cross is broken there, so that each is seen to go on: common practice, no source. */
static void broken_line(lw_plan_view *v, int run, const lw_xy_mm line[2]) {
  static const double GAP_MM = 0.9;
  lw_xy_mm along = way(line[0], line[1]);
  double gap = GAP_MM / fmax(hypot(along.x_mm, along.y_mm), GAP_MM), from = 0.0;
  while (from < 1.0) {
    double to = 1.0 + gap;
    for (int i = 0; i < run; i++) {
      lw_xy_mm other[2];
      double at = line_of(v, i, other) ? crossed_at(line, other) : to;
      if (at > from) to = fmin(to, at);
    }
    lw_xy_mm piece[] = {{line[0].x_mm + from * along.x_mm, line[0].y_mm + from * along.y_mm},
                        {line[0].x_mm + (to - gap) * along.x_mm, line[0].y_mm + (to - gap) * along.y_mm}};
    if (to - gap > from) lw_drawing_line(v->s.paper, LW_PEN_FINE, piece, 2);
    from = to + gap;
  }
}

/* With a slash at each end. */
static void length(lw_plan_view *v, int run, const lw_xy_mm line[2]) {
  const lw_plan_run *r = &v->order->plan.run[run];
  lw_spot out, ends[2] = {r->begin, r->end};
  lw_plan_on_run(v->order, run, 0.5, &out);
  for (int i = 0; i < 2; i++) {
    lw_xy_mm face = lw_sketch_at(&v->s, ends[i].x_m, ends[i].y_m);
    lw_xy_mm witness[] = {lw_plan_moved(face, out, 1.2), lw_plan_moved(face, out, LW_LENGTH_MM + 1.0)};
    lw_drawing_line(v->s.paper, LW_PEN_FINE, witness, 2);
    lw_sketch_slash(v->s.paper, line[i]);
  }
  broken_line(v, run, line);
}

void lw_plan_draw_lengths(lw_plan_view *v) {
  lw_xy_mm line[2];
  for (int run = 0; run < v->order->plan.run_count; run++)
    if (line_of(v, run, line)) length(v, run, line);
}
