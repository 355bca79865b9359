/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/print.h"
#include "order/cap_pieces.h"
#include "order/steps.h"
#include "elevation.h"
#include "hatch.h"

/* One strip of the wall seen from in front. */

/* Where a distance from a stretch's beginning lies along the plan. */
static double along_plan(const lw_elevation *e, int stretch, double at_m) {
  const lw_plan *plan = &e->order->plan;
  double at = e->order->stretch[stretch].from_m + at_m;
  return plan->closed && at > plan->length_m ? at - plan->length_m : at;
}

/* What of a stretch of the development falls on the strip, on paper; false: nothing. */
static bool on_strip(const lw_elevation *e, const lw_face_strip *strip, lw_box *box, const double side_m[4]) {
  double from = fmax(side_m[0], strip->from_m), to = fmin(side_m[1], strip->to_m);
  lw_xy_mm low = lw_sketch_at(&e->s, from, side_m[2]), high = lw_sketch_at(&e->s, to, side_m[3]);
  *box = (lw_box){low.x_mm, high.y_mm, high.x_mm, low.y_mm};
  return to - from > 1e-6;
}

/* The name of a cut on the piece, where it is large enough for it. */
static void letter(lw_elevation *e, const lw_box *b, const char *name) {
  static const double AIR_MM = 0.5;
  double width = lw_drawing_text_width(name, LW_SMALL_MM);
  if (b->right_mm - b->left_mm < width + AIR_MM || b->bottom_mm - b->top_mm < LW_SMALL_MM + AIR_MM) return;
  lw_sketch_place(&e->s, (lw_xy_mm){0.5 * (b->left_mm + b->right_mm), 0.5 * (b->top_mm + b->bottom_mm) + 0.7},
                  LW_ANCHOR_MIDDLE, (lw_move){0}, "%s", name);
}

/* The pieces of a row, or the names of those that are cut. */
static void row(lw_elevation *e, const lw_face_strip *strip, int index, bool names) {
  const lw_laid *r = &e->order->row[index];
  double high = e->order->plan.course_m, begin = e->begins_m[r->stretch];
  int count = lw_order_pieces(e->order, index, e->piece);
  for (int i = 0; i < count; i++) {
    const lw_piece *p = &e->piece[i];
    double side[] = {begin + p->from_m, begin + p->to_m, r->course * high, (r->course + 1) * high};
    lw_box box;
    char name[4];
    if (!on_strip(e, strip, &box, side)) continue;
    if (!names) lw_elevation_piece(e->s.paper, p->kind, &box);
    e->seen[p->kind] = true;
    if (names && lw_elevation_cut_name(e, p, r->course, name)) letter(e, &box, name);
  }
}

/* A solid wall shows no joints. */
static void solid(lw_elevation *e, const lw_face_strip *strip, int stretch) {
  double side[] = {e->begins_m[stretch], lw_elevation_end(e, stretch), 0.0, e->top_m};
  lw_box box;
  if (on_strip(e, strip, &box, side)) lw_elevation_piece(e->s.paper, LW_PIECE_WHOLE, &box);
}

/* Every place where the base begins, steps or ends, as pieces of one level. */
static double level_ends(const lw_elevation *e, int stretch, double from_m) {
  const lw_plan *plan = &e->order->plan;
  const lw_stretch *s = &e->order->stretch[stretch];
  double nearest = s->length_m;
  for (int i = 0; i < plan->step_count; i++) {
    double at = plan->step[i].at_m - s->from_m;
    if (at < -1e-6 && plan->closed) at += plan->length_m;
    if (at > from_m + 1e-6 && at < nearest) nearest = at;
  }
  return nearest;
}

static void pad(const lw_elevation *e, const lw_face_strip *strip, double from_m, double to_m,
                double base_m) {
  double top = base_m - e->bedding_m;
  double bed[] = {from_m, to_m, top, base_m}, stone[] = {from_m, to_m, top - e->pad_m, top};
  lw_xy_mm corner[4];
  lw_box box;
  if (e->pad_m > 0.0 && on_strip(e, strip, &box, stone)) {
    lw_elevation_corners(&box, corner);
    lw_drawing_hatch(e->s.paper, LW_HATCH_PAD, corner, 4);
    lw_drawing_area(e->s.paper, LW_PEN_SEEN, LW_FILL_NONE, corner, 4);
  }
  if (e->bedding_m > 0.0 && on_strip(e, strip, &box, bed)) {
    lw_elevation_corners(&box, corner);
    lw_drawing_hatch(e->s.paper, LW_HATCH_SAND, corner, 4);
    lw_drawing_area(e->s.paper, LW_PEN_SEEN, LW_FILL_NONE, corner, 4);
  }
}

/* Beside the wall the ground runs on a little, shaded as ground is. */
static void beside(lw_drawing *paper, lw_xy_mm *end, double way) {
  static const double LONG_MM = 2.8, DEEP_MM = 2.4;
  lw_xy_mm past = {end->x_mm + way * LONG_MM, end->y_mm};
  lw_xy_mm band[] = {*end, past, {past.x_mm, past.y_mm + DEEP_MM}, {end->x_mm, end->y_mm + DEEP_MM}};
  lw_drawing_hatch(paper, LW_HATCH_EARTH, band, 4);
  *end = past;
}

static void ground(const lw_elevation *e, const lw_face_strip *strip, const double side_m[2], int raised) {
  double from = fmax(side_m[0], strip->from_m), to = fmin(side_m[1], strip->to_m), level[2];
  if (to - from < 1e-6 || !lw_elevation_ground(e, from, raised, &level[0]) ||
      !lw_elevation_ground(e, to, raised, &level[1]))
    return;
  lw_xy_mm line[] = {lw_sketch_at(&e->s, from, level[0]), lw_sketch_at(&e->s, to, level[1])};
  if (from < strip->from_m + 1e-6) beside(e->s.paper, &line[0], -1.0);
  if (to > strip->to_m - 1e-6) beside(e->s.paper, &line[1], 1.0);
  lw_drawing_line(e->s.paper, LW_PEN_CUT, line, 2);
}

static void base(lw_elevation *e, const lw_face_strip *strip, int stretch, bool only_ground) {
  const lw_stretch *s = &e->order->stretch[stretch];
  double high = e->order->plan.course_m;
  for (double from = 0.0; from < s->length_m - 1e-6;) {
    double to = level_ends(e, stretch, from);
    double along = along_plan(e, stretch, 0.5 * (from + to));
    int raised = lw_plan_raised(&e->order->plan, along, true);
    double side[] = {e->begins_m[stretch] + from, e->begins_m[stretch] + to};
    if (only_ground)
      ground(e, strip, side, raised);
    else
      pad(e, strip, side[0], side[1], raised * high);
    from = to;
  }
}

/* Cap by cap as they are laid; what stands out past a corner is the other run's to show, and at an inside
 * corner the other run's overhang fills what is left. */
static void cap_run(lw_elevation *e, const lw_face_strip *strip, double begins_m, int run) {
  const lw_plan *plan = &e->order->plan;
  double top = plan->courses * plan->course_m, ends = begins_m + plan->run[run].length_m;
  bool inside[] = {lw_elevation_turn_before(plan, run) < 0.0, plan->run[run].turn_rad < 0.0};
  const lw_cap_row *caps = &e->order->run[run].caps;
  int count = lw_order_cap_pieces(e->order, run, e->piece);
  lw_box head; /* at a butt joint the end of the other run's cap is seen here */
  double hides[] = {begins_m, fmin(begins_m + caps->base_from_m, ends), top, top + e->cap_m};
  if (count > 0 && caps->hidden_m > 0.0 && on_strip(e, strip, &head, hides))
    lw_elevation_piece(e->s.paper, LW_PIECE_HEAD, &head);
  for (int i = 0; i < count; i++) {
    const lw_piece *p = &e->piece[i];
    double from = i == 0 && inside[0] ? begins_m : fmax(begins_m + p->from_m, begins_m);
    double to = i + 1 == count && inside[1] ? ends : fmin(begins_m + p->to_m, ends);
    lw_box box;
    if (!on_strip(e, strip, &box, (double[]){from, to, top, top + e->cap_m})) continue;
    e->cap_cut = e->cap_cut || p->kind != LW_PIECE_WHOLE;
    lw_elevation_piece(e->s.paper, p->kind, &box);
  }
}

static void cap(lw_elevation *e, const lw_face_strip *strip, int stretch) {
  const lw_stretch *s = &e->order->stretch[stretch];
  double at = e->begins_m[stretch];
  for (int i = 0; i < s->run_count && e->cap_m > 0.0; i++) {
    int run = (s->first_run + i) % e->order->plan.run_count;
    cap_run(e, strip, at, run);
    at += e->order->plan.run[run].length_m;
  }
}

/* A wavy end where the strip breaks off within a stretch. */
static void broken(const lw_elevation *e, double at_m) {
  lw_xy_mm a = lw_sketch_at(&e->s, at_m, e->top_m), b = lw_sketch_at(&e->s, at_m, e->bottom_m);
  double middle = 0.5 * (a.y_mm + b.y_mm), x = a.x_mm;
  lw_xy_mm line[] = {{x, a.y_mm - 1.5},       {x, middle - 1.5}, {x - 1.2, middle - 0.5},
                     {x + 1.2, middle + 0.5}, {x, middle + 1.5}, {x, b.y_mm + 1.5}};
  lw_drawing_line(e->s.paper, LW_PEN_FINE, line, 6);
}

static bool at_an_end(const lw_elevation *e, double at_m) {
  bool found = at_m < 1e-6;
  for (int i = 0; i < e->order->stretch_count; i++)
    found = found || fabs(lw_elevation_end(e, i) - at_m) < 1e-6;
  return found;
}

static void all_lines(lw_elevation *e, const lw_face_strip *strip) {
  for (int i = 0; i < e->order->stretch_count; i++) base(e, strip, i, false);
  for (int i = 0; i < e->order->row_count; i++) row(e, strip, i, false);
  for (int i = 0; i < e->order->stretch_count && e->order->plan.solid; i++) solid(e, strip, i);
  for (int i = 0; i < e->order->stretch_count; i++) {
    cap(e, strip, i);
    base(e, strip, i, true);
    lw_elevation_runs(e, strip, i, false);
  }
  if (!at_an_end(e, strip->from_m)) broken(e, strip->from_m);
  if (!at_an_end(e, strip->to_m)) broken(e, strip->to_m);
}

/* Words last, so that they keep clear of every line. */
void lw_elevation_strip(lw_elevation *e, const lw_face_strip *strip) {
  all_lines(e, strip);
  for (int i = 0; i < e->order->stretch_count; i++) {
    lw_elevation_steps(e, strip, i);
    lw_elevation_runs(e, strip, i, true);
  }
  for (int i = 0; i < e->order->row_count; i++) row(e, strip, i, true);
}
