/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stdlib.h>

#include "base/print.h"
#include "plan_view.h"

/* The strip of soil between the drainage stone of a bed's sides: in a narrow bed little is left of it. */

/* From a place straight in, to where the face is met again. [m] */
static double across(const lw_spot *face, int count, lw_spot from, lw_spot way) {
  double nearest = INFINITY;
  for (int i = 0; i + 1 < count; i++) {
    lw_spot a = {face[i].x_m - from.x_m, face[i].y_m - from.y_m};
    lw_spot b = {face[i + 1].x_m - from.x_m, face[i + 1].y_m - from.y_m};
    double beside_a = way.x_m * a.y_m - way.y_m * a.x_m, beside_b = way.x_m * b.y_m - way.y_m * b.x_m;
    if ((beside_a > 0.0) == (beside_b > 0.0)) continue;
    double share = beside_a / (beside_a - beside_b);
    double ahead = way.x_m * (a.x_m + share * (b.x_m - a.x_m)) + way.y_m * (a.y_m + share * (b.y_m - a.y_m));
    if (ahead > 0.01) nearest = fmin(nearest, ahead);
  }
  return nearest;
}

/* Across from the middle of each run, the least of them. */
static double narrowest(const lw_plan_view *v, lw_spot *face) {
  int count = lw_plan_face(v->order, 0.0, face);
  double least = INFINITY;
  for (int i = 0; i < v->order->plan.run_count; i++) {
    lw_spot out, middle = lw_plan_on_run(v->order, i, 0.5, &out);
    least = fmin(least, across(face, count, middle, (lw_spot){-out.x_m, -out.y_m}));
  }
  return least;
}

/* The stone stands upright from the lowest course up and reaches as far in as the course that is farthest in
 * asks for. */
static double reach(const lw_plan_view *v) {
  const lw_plan *plan = &v->order->plan;
  return fmax(plan->base_depth_m, v->top_m + plan->depth_m) + v->s.result->wall.site.stone_width_m;
}

double lw_plan_bed_legend(lw_plan_view *v, double y_mm) {
  char words[160] = "The drainage stone of facing sides meets: at depth no soil is left between them.";
  bool bed = v->order->plan.closed && v->s.result->given.site.behind.value == LW_BEHIND_BED;
  if (!bed || !(v->s.result->wall.site.stone_width_m > 0.0)) return y_mm;
  lw_spot *face = calloc(LW_FACE_SPOTS, sizeof *face);
  v->s.paper->failed = v->s.paper->failed || !face;
  double left = face ? narrowest(v, face) - 2.0 * reach(v) : 0.0;
  free(face);
  if (!isfinite(left)) return y_mm;
  if (left > 0.0005)
    lw_print(words, sizeof words,
             "Between the drainage stone of facing sides %s of soil is left at depth, where the bed is "
             "narrowest.",
             lw_sketch_mm(&v->s, left).text);
  return lw_sketch_wrap(v->s.paper, (lw_xy_mm){LW_MARGIN_MM, y_mm}, v->s.width_mm - 2.0 * LW_MARGIN_MM,
                        LW_SMALL_MM, false, words);
}
