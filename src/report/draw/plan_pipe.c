/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stdlib.h>

#include "order/plan.h"
#include "plan_view.h"

/* The drain pipe from above, and where it comes out. */

static const double NEAR_M = 1e-6;

/* In the middle of the stone, or as much behind the wall as can be told from it. */
static double offset(const lw_plan_view *v) {
  static const double APART_MM = 1.4;
  return v->depth_m + fmax(0.5 * v->s.result->wall.site.stone_width_m, APART_MM / v->s.mm_per_m);
}

/* Whether an outlet is told at an earlier invert: two ways may lead to one. */
static bool is_told(const lw_setting_out *p, int invert) {
  for (int i = 0; i < invert; i++)
    if (p->invert[i].kind == LW_INVERT_OUTLET &&
        fabs(p->invert[i].along_m - p->invert[invert].along_m) < NEAR_M)
      return true;
  return false;
}

/* At a corner and at a free end slantwise away, elsewhere straight through the wall to the front. */
static void outlet_at(const lw_plan_view *v, double along_m, lw_spot *from, lw_spot *face, lw_spot *way) {
  const lw_plan *plan = &v->order->plan;
  double share, deep = offset(v);
  int run = lw_plan_run_at(v->order, along_m, &share);
  bool begins = share * plan->run[run].length_m < NEAR_M,
       ends = (1.0 - share) * plan->run[run].length_m < NEAR_M;
  int corner = ends ? run + 1 : run;
  if (begins || ends) {
    *from = lw_plan_corner(plan, corner, deep);
    *face = lw_plan_corner(plan, corner, 0.0);
    *way = lw_plan_away(v->order, corner);
    return;
  }
  *face = lw_plan_on_run(v->order, run, share, way);
  *from = (lw_spot){face->x_m - deep * way->x_m, face->y_m - deep * way->y_m};
}

static void outlet(lw_plan_view *v, double along_m) {
  static const double BEYOND_MM = 5.0, STEP_MM = 1.5, HALF_MM = 0.7;
  lw_spot from, face, way;
  outlet_at(v, along_m, &from, &face, &way);
  lw_xy_mm start = lw_sketch_at(&v->s, from.x_m, from.y_m), out = lw_sketch_at(&v->s, face.x_m, face.y_m);
  lw_xy_mm tip = {out.x_mm + BEYOND_MM * way.x_m, out.y_mm - BEYOND_MM * way.y_m};
  lw_drawing_arrow(v->s.paper, LW_PEN_SEEN, start, tip);
  for (double at = 0.0; at <= BEYOND_MM; at += STEP_MM) {
    double x = out.x_mm + at * way.x_m, y = out.y_mm - at * way.y_m;
    lw_sketch_take(&v->s, (lw_box){x - HALF_MM, y - HALF_MM, x + HALF_MM, y + HALF_MM});
  }
}

void lw_plan_draw_pipe(lw_plan_view *v) {
  static const double HALF_MM = 0.45;
  const lw_setting_out *p = &v->order->setting_out;
  lw_spot *spot = calloc(LW_FACE_SPOTS, sizeof *spot);
  lw_xy_mm *line = calloc(LW_FACE_SPOTS, sizeof *line);
  v->s.paper->failed = v->s.paper->failed || !spot || !line;
  for (int side = -1; side <= 1 && spot && line && p->pipe_known; side += 2) {
    int count = lw_plan_face(v->order, offset(v) + side * HALF_MM / v->s.mm_per_m, spot);
    for (int i = 0; i < count; i++) line[i] = lw_sketch_at(&v->s, spot[i].x_m, spot[i].y_m);
    lw_drawing_line(v->s.paper, LW_PEN_FINE, line, (size_t)count);
  }
  free(spot);
  free(line);
  for (int i = 0; i < p->invert_count && p->pipe_known; i++)
    if (p->invert[i].kind == LW_INVERT_OUTLET && !is_told(p, i)) outlet(v, p->invert[i].along_m);
}

double lw_plan_pipe_legend(lw_plan_view *v, double y_mm) {
  const lw_setting_out *p = &v->order->setting_out;
  lw_text words = {0};
  bool first = true;
  if (!p->pipe_known) return y_mm;
  lw_text_addf(&words,
               "Double line: drain pipe behind the wall, inside bottom %s at its highest; the longest way "
               "to daylight is %s. Arrows: its outlets, along the face from B1 at",
               lw_sketch_m(&v->s, lw_plan_level(p->pipe_high_m), 3).text,
               lw_sketch_m(&v->s, p->pipe_length_m, 2).text);
  for (int i = 0; i < p->invert_count; i++) {
    if (p->invert[i].kind != LW_INVERT_OUTLET || is_told(p, i)) continue;
    lw_text_addf(&words, "%s %s (level %s)", first ? "" : ",",
                 lw_sketch_m(&v->s, p->invert[i].along_m, 2).text,
                 lw_sketch_m(&v->s, lw_plan_level(p->invert[i].level_m), 3).text);
    first = false;
  }
  lw_text_add(&words, "; the way on from there is not drawn.");
  if (words.failed)
    v->s.paper->failed = true;
  else
    y_mm = lw_sketch_wrap(v->s.paper, (lw_xy_mm){LW_MARGIN_MM, y_mm}, v->s.width_mm - 2.0 * LW_MARGIN_MM,
                          LW_SMALL_MM, false, words.data);
  lw_text_free(&words);
  return y_mm;
}
