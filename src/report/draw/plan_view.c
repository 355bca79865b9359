/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "plan_view.h"

#include <math.h>
#include <stdlib.h>

#include "base/print.h"
#include "order/plan.h"

/* The page of the plan: the window and the scale. */

static const double HIGHEST_MM = 190.0;

/* Paper around the window for pegs' names and outlets, and for lengths on the sides that have some. */
typedef struct around {
  double left_mm, right_mm, above_mm, below_mm;
} around;

static void reach(lw_sketch *s, lw_spot spot) {
  s->left_m = fmin(s->left_m, spot.x_m);
  s->right_m = fmax(s->right_m, spot.x_m);
  s->bottom_m = fmin(s->bottom_m, spot.y_m);
  s->top_m = fmax(s->top_m, spot.y_m);
}

/* All of both faces and of the pipe; the centre of a curve only where it makes the picture little larger. */
static bool open_window(lw_plan_view *v) {
  lw_spot *spot = calloc(LW_FACE_SPOTS, sizeof *spot);
  lw_sketch *s = &v->s;
  double pipe = v->order->setting_out.pipe_known ? 0.5 * v->s.result->wall.site.stone_width_m : 0.0;
  double offsets[] = {0.0, v->depth_m + pipe};
  if (!spot) return false;
  s->left_m = s->bottom_m = INFINITY;
  s->right_m = s->top_m = -INFINITY;
  for (int side = 0; side < 2; side++)
    for (int i = lw_plan_face(v->order, offsets[side], spot) - 1; i >= 0; i--) reach(s, spot[i]);
  free(spot);
  double size = fmax(s->right_m - s->left_m, s->top_m - s->bottom_m);
  for (int i = 0; i < v->order->plan.run_count; i++) {
    lw_sketch with = *s;
    if (!lw_plan_is_curved(&v->order->plan.run[i])) continue;
    reach(&with, v->order->plan.run[i].centre);
    if (fmax(with.right_m - with.left_m, with.top_m - with.bottom_m) < 1.3 * size) *s = with;
  }
  return true;
}

static around sides(const lw_plan_view *v) {
  static const double LEAST_MM = 10.0, AIR_MM = 2.0;
  around a = {LEAST_MM, LEAST_MM, LEAST_MM, LEAST_MM};
  for (int run = 0; run < v->order->plan.run_count; run++)
    for (int spot = 0; spot <= 4; spot++) {
      char words[40];
      lw_spot out;
      lw_plan_on_run(v->order, run, 0.25 * spot, &out);
      lw_plan_run_words(v, run, words, sizeof words);
      double wide = LW_LENGTH_MM + AIR_MM + lw_drawing_text_width(words, LW_SMALL_MM);
      double high = LW_LENGTH_MM + AIR_MM + LW_LINE_MM;
      a.left_mm = fmax(a.left_mm, -out.x_m * wide);
      a.right_mm = fmax(a.right_mm, out.x_m * wide);
      a.above_mm = fmax(a.above_mm, out.y_m * high);
      a.below_mm = fmax(a.below_mm, -out.y_m * high);
    }
  return a;
}

static bool choose(lw_sketch *s, const around *a) {
  double room = s->width_mm - 2.0 * LW_MARGIN_MM - a->left_mm - a->right_mm;
  for (int i = 0; (s->scale = lw_sketch_scale(s, i)) > 0; i++) {
    s->mm_per_m = 1000.0 / s->scale;
    if ((s->right_m - s->left_m) * s->mm_per_m <= room &&
        (s->top_m - s->bottom_m) * s->mm_per_m <= HIGHEST_MM)
      return true;
  }
  return false;
}

static void describe(lw_plan_view *v) {
  const lw_plan *plan = &v->order->plan;
  lw_drawing *paper = v->s.paper;
  const char *title = v->s.result->given.about.title.text;
  lw_text_addf(&paper->title, "Plan of the wall%s%s", title[0] ? ": " : "", title);
  lw_text_addf(&paper->description, "%s %s plan of %d runs, %s on the lowest face.",
               v->s.result->verdict.headline, plan->closed ? "A closed" : "An open", plan->run_count,
               lw_sketch_m(&v->s, plan->length_m, 3).text);
  for (int i = 0; i < plan->run_count; i++) {
    const lw_plan_run *r = &plan->run[i];
    lw_text_addf(&paper->description, " Run %d: %s", i + 1, lw_sketch_m(&v->s, r->length_m, 3).text);
    if (lw_plan_is_curved(r))
      lw_text_addf(&paper->description, ", radius %s", lw_sketch_m(&v->s, fabs(r->radius_m), 2).text);
    if (lw_plan_turns(plan, i))
      lw_text_addf(&paper->description, ", then a turn of %.0f deg", r->turn_rad * LW_DEG_PER_RAD);
    lw_text_add(&paper->description, ".");
  }
  paper->failed = paper->failed || paper->title.failed || paper->description.failed;
}

static void head(lw_plan_view *v, char *words, size_t size) {
  lw_print(
      words, size,
      "Plan, %s when printed %s wide; lengths of the face %s in %s. The soil is "
      "where the dots are, on the left of who walks from B1 on. Which way is north is not given: run 1 is "
      "drawn to the right.",
      lw_sketch_scale_words(&v->s).text, lw_sketch_mm(&v->s, v->s.width_mm / 1000.0).text,
      v->order->plan.solid ? "at its foot" : "of the lowest course", lw_sketch_lengths_in(&v->s));
}

static void draw(lw_plan_view *v, const around *a) {
  lw_sketch *s = &v->s;
  char words[320];
  head(v, words, sizeof words);
  double y = lw_sketch_head(s, words) + a->above_mm;
  double wide = (s->right_m - s->left_m) * s->mm_per_m;
  double left = LW_MARGIN_MM + a->left_mm;
  left += 0.5 * (s->width_mm - LW_MARGIN_MM - a->right_mm - left - wide); /* what is over, on both sides */
  s->origin = (lw_xy_mm){left - s->left_m * s->mm_per_m, y + s->top_m * s->mm_per_m};
  y += (s->top_m - s->bottom_m) * s->mm_per_m + a->below_mm;
  lw_sketch_take(s, (lw_box){0.0, y, s->width_mm, INFINITY});
  lw_plan_draw_wall(v);
  lw_plan_draw_pipe(v);
  lw_plan_draw_pegs(v);
  lw_plan_draw_lengths(v);
  lw_plan_draw_words(v);
  y = lw_sketch_bar(s, (lw_xy_mm){LW_MARGIN_MM, y}, s->width_mm - 2.0 * LW_MARGIN_MM);
  s->paper->width_mm = s->width_mm;
  s->paper->height_mm = lw_plan_legend(v, y) + LW_MARGIN_MM;
  describe(v);
}

lw_status lw_draw_plan(const lw_result *result, const lw_order *order, double width_mm, lw_drawing *drawing,
                       lw_error *error) {
  lw_plan_view *v = calloc(1, sizeof *v);
  bool fits = false, memory = v != NULL;
  if (v) {
    v->s = (lw_sketch){.paper = drawing, .result = result, .width_mm = width_mm};
    v->order = order;
    v->depth_m = fmax(order->plan.depth_m, order->plan.base_depth_m);
    v->top_m = lw_plan_offset(&order->plan, order->plan.courses - 1);
    around a = sides(v);
    memory = open_window(v);
    fits = memory && choose(&v->s, &a);
    if (fits) draw(v, &a);
  }
  free(v);
  if (!memory || drawing->failed) return LW_NO_MEMORY;
  if (fits) return LW_OK;
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NONE,
                      "the plan is too large to be drawn on this paper");
}
