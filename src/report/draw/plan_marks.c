/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stdlib.h>

#include "hatch.h"
#include "plan_view.h"

/* What is drawn of the plan: the wall and the soil's side, pegs and what checks them, lines of lengths. All
 * lines come before all words, which keep clear of them. */

enum { BAND_SPOTS = 2 * LW_FACE_SPOTS };

/* Between two faces, as one area. gives the number of spots */
static size_t between(const lw_plan_view *v, double front_m, double rear_m, lw_xy_mm *area, lw_spot *spot) {
  size_t count = 0;
  int front = lw_plan_face(v->order, front_m, spot);
  for (int i = 0; i < front; i++) area[count++] = lw_sketch_at(&v->s, spot[i].x_m, spot[i].y_m);
  int rear = lw_plan_face(v->order, rear_m, spot);
  for (int i = rear - 1; i >= 0; i--) area[count++] = lw_sketch_at(&v->s, spot[i].x_m, spot[i].y_m);
  return count;
}

void lw_plan_draw_wall(lw_plan_view *v) {
  static const double SOIL_MM = 4.5;
  lw_spot *spot = calloc(LW_FACE_SPOTS, sizeof *spot);
  lw_xy_mm *area = calloc(BAND_SPOTS, sizeof *area);
  v->s.paper->failed = v->s.paper->failed || !spot || !area;
  if (spot && area) {
    size_t count = between(v, v->depth_m, v->depth_m + SOIL_MM / v->s.mm_per_m, area, spot);
    lw_drawing_hatch(v->s.paper, LW_HATCH_FILL, area, count);
    count = between(v, 0.0, v->depth_m, area, spot);
    size_t half = count / 2;
    lw_drawing_area(v->s.paper, LW_PEN_NONE, LW_FILL_TINT, area, count);
    lw_drawing_line(v->s.paper, LW_PEN_CUT, area, half);
    lw_drawing_line(v->s.paper, LW_PEN_SEEN, area + half, half);
    if (v->top_m * v->s.mm_per_m > 0.4) {
      between(v, v->top_m, v->depth_m, area, spot);
      lw_drawing_line(v->s.paper, LW_PEN_DASHED, area, half);
    }
  }
  free(spot);
  free(area);
}

static void cross(lw_drawing *paper, lw_xy_mm at, double arm_mm) {
  lw_xy_mm level[] = {{at.x_mm - arm_mm, at.y_mm}, {at.x_mm + arm_mm, at.y_mm}};
  lw_xy_mm upright[] = {{at.x_mm, at.y_mm - arm_mm}, {at.x_mm, at.y_mm + arm_mm}};
  lw_drawing_line(paper, LW_PEN_SEEN, level, 2);
  lw_drawing_line(paper, LW_PEN_SEEN, upright, 2);
}

static void stake(lw_drawing *paper, lw_xy_mm at) {
  static const double HALF_MM = 0.8;
  lw_xy_mm square[] = {{at.x_mm - HALF_MM, at.y_mm - HALF_MM},
                       {at.x_mm + HALF_MM, at.y_mm - HALF_MM},
                       {at.x_mm + HALF_MM, at.y_mm + HALF_MM},
                       {at.x_mm - HALF_MM, at.y_mm + HALF_MM}};
  lw_drawing_area(paper, LW_PEN_SEEN, LW_FILL_INK, square, 4);
}

static bool in_window(const lw_sketch *s, lw_spot at) {
  return at.x_m > s->left_m - 1e-6 && at.x_m < s->right_m + 1e-6 && at.y_m > s->bottom_m - 1e-6 &&
         at.y_m < s->top_m + 1e-6;
}

/* The distances that check the corners, from peg to peg; once where two corners share one. */
static void diagonals(lw_plan_view *v) {
  const lw_setting_out *setting_out = &v->order->setting_out;
  for (int i = 0; i < setting_out->check_count; i++) {
    int peg[2];
    if (lw_plan_check_told(setting_out, i) || !lw_plan_check_pegs(setting_out, i, peg)) continue;
    lw_spot a = setting_out->peg[peg[0]].at, b = setting_out->peg[peg[1]].at;
    lw_xy_mm line[] = {lw_sketch_at(&v->s, a.x_m, a.y_m), lw_sketch_at(&v->s, b.x_m, b.y_m)};
    lw_drawing_line(v->s.paper, LW_PEN_CHAIN, line, 2);
  }
}

static void centres(lw_plan_view *v) {
  const lw_plan *plan = &v->order->plan;
  for (int i = 0; i < plan->run_count; i++) {
    lw_spot outward, centre = plan->run[i].centre;
    if (!lw_plan_is_curved(&plan->run[i]) || !in_window(&v->s, centre)) continue;
    lw_spot middle = lw_plan_on_run(v->order, i, 0.5, &outward);
    lw_xy_mm line[] = {lw_sketch_at(&v->s, centre.x_m, centre.y_m),
                       lw_sketch_at(&v->s, middle.x_m, middle.y_m)};
    lw_drawing_line(v->s.paper, LW_PEN_CHAIN, line, 2);
  }
}

static void keep_clear(lw_sketch *s, lw_xy_mm at) {
  static const double HALF_MM = 1.0;
  lw_sketch_take(s, (lw_box){at.x_mm - HALF_MM, at.y_mm - HALF_MM, at.x_mm + HALF_MM, at.y_mm + HALF_MM});
}

bool lw_plan_peg_is_shown(const lw_plan_view *v, const lw_peg *peg) {
  static const double APART_MM = 2.5;
  bool apart = v->order->setting_out.base_offset_m * v->s.mm_per_m >= APART_MM;
  return (peg->kind != LW_PEG_TOP || apart) && in_window(&v->s, peg->at);
}

/* Base line pegs in ink, the others as crosses; those of the top line only where they can be told apart. */
void lw_plan_draw_pegs(lw_plan_view *v) {
  const lw_setting_out *setting_out = &v->order->setting_out;
  diagonals(v);
  centres(v);
  for (int i = 0; i < setting_out->peg_count; i++) {
    const lw_peg *p = &setting_out->peg[i];
    lw_xy_mm at = lw_sketch_at(&v->s, p->at.x_m, p->at.y_m);
    if (!lw_plan_peg_is_shown(v, p)) continue;
    if (p->kind == LW_PEG_BASE)
      stake(v->s.paper, at);
    else
      cross(v->s.paper, at, 1.3);
    keep_clear(&v->s, at);
  }
}

lw_xy_mm lw_plan_moved(lw_xy_mm from, lw_spot way, double by_mm) {
  return (lw_xy_mm){from.x_mm + way.x_m * by_mm, from.y_mm - way.y_m * by_mm};
}
