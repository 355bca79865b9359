/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/print.h"
#include "order/steps.h"
#include "elevation.h"

/* What stands above and below a strip: corners, lengths of the runs, steps of the base. What finds no room is
 * told in the legend. */

static const double TICK_MM = 2.0, BELOW_MM = 4.0;

static void tick(const lw_elevation *e, double at_m) {
  lw_xy_mm foot = lw_sketch_at(&e->s, at_m, e->top_m);
  lw_xy_mm line[] = {{foot.x_mm, foot.y_mm - 0.3}, {foot.x_mm, foot.y_mm - TICK_MM}};
  lw_drawing_line(e->s.paper, LW_PEN_SEEN, line, 2);
}

/* Over a run's beginning: its peg, and how the wall turns there. */
static void corner(lw_elevation *e, const lw_face_strip *strip, double at_m, int peg, double turn_rad) {
  static const double ROW_MM = 3.0, AIR_MM = 0.9;
  lw_xy_mm foot = lw_sketch_at(&e->s, at_m, e->top_m);
  bool first = at_m<strip->from_m + 1e-6, last = at_m> strip->to_m - 1e-6;
  lw_anchor anchor = first ? LW_ANCHOR_START : last ? LW_ANCHOR_END : LW_ANCHOR_MIDDLE;
  lw_xy_mm at = {foot.x_mm, foot.y_mm - TICK_MM - AIR_MM};
  bool turns = fabs(turn_rad) > 0.002; /* a tenth of a degree: it runs on */
  double degrees = turn_rad * LW_DEG_PER_RAD;
  if (turns && lw_sketch_place(&e->s, at, anchor, (lw_move){-ROW_MM, 1}, "B%d, turns %.0f deg", peg, degrees))
    return;
  bool named = lw_sketch_place(&e->s, at, anchor, (lw_move){-ROW_MM, 2}, "B%d", peg);
  e->untold_corner[peg - 1] = !named || turns;
}

static void corner_of(lw_elevation *e, const lw_face_strip *strip, double at_m, int peg, bool words) {
  const lw_plan *plan = &e->order->plan;
  bool past = peg > plan->run_count && !plan->closed; /* the last peg of an open wall turns nothing */
  if (at_m < strip->from_m - 1e-6 || at_m > strip->to_m + 1e-6) return;
  if (words)
    corner(e, strip, at_m, peg, past ? 0.0 : lw_elevation_turn_before(plan, peg - 1));
  else
    tick(e, at_m);
}

/* What of a run falls on a strip, below it; false: nothing. */
static bool run_line(const lw_elevation *e, const lw_face_strip *strip, double from_m, double to_m,
                     lw_xy_mm line[2]) {
  double from = fmax(from_m, strip->from_m), to = fmin(to_m, strip->to_m);
  line[0] = lw_sketch_at(&e->s, from, e->bottom_m);
  line[1] = lw_sketch_at(&e->s, to, e->bottom_m);
  line[0].y_mm += BELOW_MM;
  line[1].y_mm += BELOW_MM;
  return to - from > 1e-6;
}

static void run_length(lw_elevation *e, const lw_face_strip *strip, double from_m, double to_m) {
  lw_xy_mm line[2];
  if (!run_line(e, strip, from_m, to_m, line)) return;
  lw_drawing_line(e->s.paper, LW_PEN_FINE, line, 2);
  if (from_m >= strip->from_m - 1e-6) lw_sketch_slash(e->s.paper, line[0]);
  if (to_m <= strip->to_m + 1e-6) lw_sketch_slash(e->s.paper, line[1]);
}

static void run_words(lw_elevation *e, const lw_face_strip *strip, double from_m, double to_m, int run) {
  static const double AIR_MM = 3.5, ROW_MM = 3.0;
  lw_xy_mm line[2];
  if (!run_line(e, strip, from_m, to_m, line)) return;
  lw_amount length = lw_sketch_dimension(&e->s, e->order->plan.run[run].length_m);
  bool whole = from_m >= strip->from_m - 1e-6 && to_m <= strip->to_m + 1e-6;
  lw_xy_mm at = {0.5 * (line[0].x_mm + line[1].x_mm), line[0].y_mm + AIR_MM};
  e->untold_run[run] = !lw_sketch_place(&e->s, at, LW_ANCHOR_MIDDLE, (lw_move){0}, "run %d%s: %s", run + 1,
                                        whole ? "" : " (in parts)", length.text) &&
                       !lw_sketch_place(&e->s, at, LW_ANCHOR_MIDDLE, (lw_move){ROW_MM, 1}, "%s", length.text);
}

void lw_elevation_runs(lw_elevation *e, const lw_face_strip *strip, int stretch, bool words) {
  const lw_plan *plan = &e->order->plan;
  const lw_stretch *s = &e->order->stretch[stretch];
  double at = e->begins_m[stretch];
  for (int i = 0; i < s->run_count; i++) {
    int run = (s->first_run + i) % plan->run_count, next = run + 2;
    double to = at + plan->run[run].length_m;
    if (words)
      run_words(e, strip, at, to, run);
    else
      run_length(e, strip, at, to);
    if (at < strip->to_m - 1e-6) corner_of(e, strip, at, run + 1, words);
    if (plan->closed && next > plan->run_count) next = 1;
    if (fabs(to - strip->to_m) < 1e-6) corner_of(e, strip, to, next, words);
    at = to;
  }
}

void lw_elevation_steps(lw_elevation *e, const lw_face_strip *strip, int stretch) {
  const lw_plan *plan = &e->order->plan;
  const lw_stretch *s = &e->order->stretch[stretch];
  for (int i = 0; i < plan->step_count; i++) {
    double at = plan->step[i].at_m - s->from_m;
    if (at < -1e-6 && plan->closed) at += plan->length_m;
    double x = e->begins_m[stretch] + at;
    if (at < 0.0 || at > s->length_m || x < strip->from_m || x > strip->to_m) continue;
    int under = lw_plan_raised(plan, plan->step[i].at_m, false);
    int over = lw_plan_raised(plan, plan->step[i].at_m, true), least = under < over ? under : over;
    lw_xy_mm foot = lw_sketch_at(&e->s, x, least * plan->course_m - e->bedding_m - e->pad_m);
    lw_sketch_place(&e->s, (lw_xy_mm){foot.x_mm, foot.y_mm + 2.6}, LW_ANCHOR_MIDDLE, (lw_move){0.4, 3}, "S%d",
                    i + 1);
  }
}

static const char *told_before(const lw_text *words) {
  return words->length > 0 ? ", " : "Without room on the drawing: ";
}

double lw_elevation_untold(lw_elevation *e, double y_mm) {
  const lw_plan *plan = &e->order->plan;
  lw_text words = {0};
  for (int i = 0; i < plan->run_count; i++)
    if (e->untold_run[i])
      lw_text_addf(&words, "%srun %d: %s", told_before(&words), i + 1,
                   lw_sketch_dimension(&e->s, plan->run[i].length_m).text);
  for (int i = 0; i <= plan->run_count; i++) {
    double turn = i < plan->run_count ? lw_elevation_turn_before(plan, i) : 0.0;
    if (e->untold_corner[i])
      lw_text_addf(&words, "%sat B%d a turn of %.0f deg", told_before(&words), i + 1, turn * LW_DEG_PER_RAD);
  }
  if (words.length > 0) lw_text_add(&words, ".");
  if (words.failed)
    e->s.paper->failed = true;
  else if (words.length > 0)
    y_mm = 0.9 + lw_sketch_wrap(e->s.paper, (lw_xy_mm){LW_MARGIN_MM, y_mm},
                                e->s.width_mm - 2.0 * LW_MARGIN_MM, LW_SMALL_MM, false, words.data);
  lw_text_free(&words);
  return y_mm;
}
