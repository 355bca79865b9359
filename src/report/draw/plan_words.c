/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/print.h"
#include "report/order/words.h"
#include "plan_view.h"

/* The words of the plan. Each stands where it is seen what it belongs to, apart from lines and other words;
 * what finds no such place is told below the drawing. */

enum { CLOSE = 1, NEAR = 3 }; /* rings around the place where words belong */

static void peg_name(lw_plan_view *v, int index) {
  static const double AWAY_MM = 3.4;
  const lw_peg *p = &v->order->setting_out.peg[index];
  int number = p->number - 1;
  char name[LW_SPOT_NAME];
  double share;
  lw_spot way = {0.7, 0.7};
  lw_xy_mm at = lw_sketch_at(&v->s, p->at.x_m, p->at.y_m);
  if (p->kind == LW_PEG_BASE) way = lw_plan_away(v->order, number);
  if (p->kind == LW_PEG_STEP) {
    int run = lw_plan_run_at(v->order, v->order->plan.step[number].at_m, &share);
    lw_plan_on_run(v->order, run, share, &way);
  }
  if (p->kind == LW_PEG_TOP)
    way = (lw_spot){-lw_plan_away(v->order, number).x_m, -lw_plan_away(v->order, number).y_m};
  lw_peg_name(p, name);
  v->untold_peg[index] = !lw_sketch_around(&v->s, lw_plan_moved(at, way, AWAY_MM), 2, "%s", name) &&
                         !lw_sketch_lead(&v->s, at, name);
}

/* A curve has no such line: its length stands nearer. */
static double line_mm(const lw_plan_view *v, int run) {
  return lw_plan_is_curved(&v->order->plan.run[run]) ? 0.25 * LW_LENGTH_MM : LW_LENGTH_MM;
}

/* Along the line of its length, beyond it or between it and the face. */
static bool beside_length(lw_plan_view *v, int run, const char *words) {
  static const double SHARES[] = {0.5, 0.35, 0.65, 0.2, 0.8}, BESIDE_MM = 1.4;
  enum { COUNT = sizeof SHARES / sizeof *SHARES };
  double half = 0.5 * lw_drawing_text_width(words, LW_SMALL_MM), line = line_mm(v, run);
  for (int i = 0; i < 2 * COUNT; i++) {
    lw_spot out, spot = lw_plan_on_run(v->order, run, SHARES[i % COUNT], &out);
    double beyond = line + BESIDE_MM + fabs(out.x_m) * half + fabs(out.y_m) * 0.5 * LW_SMALL_MM;
    lw_xy_mm face = lw_sketch_at(&v->s, spot.x_m, spot.y_m);
    if (lw_sketch_around(&v->s, lw_plan_moved(face, out, i < COUNT ? beyond : 0.5 * line), 0, "%s", words))
      return true;
  }
  return false;
}

/* Near the middle of its length, and on the side where that is. */
static bool about_length(lw_plan_view *v, int run, const char *words) {
  static const double AWAY_MM = 4.0;
  double half = 0.5 * lw_drawing_text_width(words, LW_SMALL_MM);
  lw_spot out, spot = lw_plan_on_run(v->order, run, 0.5, &out);
  lw_xy_mm face = lw_sketch_at(&v->s, spot.x_m, spot.y_m);
  double away = AWAY_MM + fabs(out.x_m) * half + line_mm(v, run);
  return lw_sketch_around(&v->s, lw_plan_moved(face, out, away), CLOSE, "%s", words);
}

static void run_length(lw_plan_view *v, int run) {
  char whole[40], name[16];
  lw_plan_run_words(v, run, whole, sizeof whole);
  lw_print(name, sizeof name, "run %d", run + 1);
  bool told = beside_length(v, run, whole) || about_length(v, run, whole);
  v->untold_run[run] = !told;
  if (!told && !beside_length(v, run, name)) about_length(v, run, name);
}

/* On its spoke, where the centre is near enough, else by its length. */
static void radius(lw_plan_view *v, int run) {
  static const double ROOM_MM = 9.0, FAR_MM = 20.0, AWAY_MM = 3.0;
  const lw_plan_run *r = &v->order->plan.run[run];
  lw_spot out, middle = lw_plan_on_run(v->order, run, 0.5, &out);
  double inward = r->radius_m > 0.0 ? -1.0 : 1.0, in_mm = 0.5 * fabs(r->radius_m) * v->s.mm_per_m;
  lw_xy_mm face = lw_sketch_at(&v->s, middle.x_m, middle.y_m);
  lw_xy_mm spoke = lw_plan_moved(face, out, inward * fmin(in_mm, FAR_MM));
  if (in_mm < ROOM_MM) spoke = lw_plan_moved(face, out, LW_LENGTH_MM + AWAY_MM);
  v->untold_radius[run] =
      !lw_sketch_around(&v->s, spoke, NEAR, "R %s", lw_sketch_dimension(&v->s, fabs(r->radius_m)).text);
}

bool lw_plan_turns(const lw_plan *plan, int run) {
  return fabs(plan->run[run].turn_rad) >= LW_NO_TURN_RAD && (plan->closed || run + 1 < plan->run_count);
}

/* Inside the corner, or outside of it. */
static void turn(lw_plan_view *v, int run) {
  static const double IN_MM = 6.5, OUT_MM = 8.0, DIAGONAL = 1.4142135623730951;
  const lw_plan *plan = &v->order->plan;
  lw_spot before, after;
  if (!lw_plan_turns(plan, run)) return;
  lw_spot corner = lw_plan_on_run(v->order, run, 1.0, &before);
  lw_plan_on_run(v->order, (run + 1) % plan->run_count, 0.0, &after);
  lw_spot outward = {before.x_m + after.x_m, before.y_m + after.y_m};
  double size = fmax(hypot(outward.x_m, outward.y_m), 1e-6);
  outward = (lw_spot){outward.x_m / size, outward.y_m / size};
  double in = IN_MM + DIAGONAL * v->depth_m * v->s.mm_per_m,
         degrees = plan->run[run].turn_rad * LW_DEG_PER_RAD;
  lw_xy_mm at = lw_sketch_at(&v->s, corner.x_m, corner.y_m);
  v->untold_turn[run] =
      !lw_sketch_around(&v->s, lw_plan_moved(at, outward, -in), CLOSE, "%.0f deg", degrees) &&
      !lw_sketch_around(&v->s, lw_plan_moved(at, outward, OUT_MM), CLOSE, "%.0f deg", degrees);
}

/* Which side is which, once, along whichever run has the room. */
static void side(lw_plan_view *v, const char *words, double out_mm) {
  static const double SHARES[] = {0.35, 0.65, 0.5, 0.2, 0.8};
  for (int run = 0; run < v->order->plan.run_count; run++)
    for (size_t i = 0; i < sizeof SHARES / sizeof *SHARES; i++) {
      lw_spot out, spot = lw_plan_on_run(v->order, run, SHARES[i], &out);
      lw_xy_mm face = lw_sketch_at(&v->s, spot.x_m, spot.y_m);
      if (lw_sketch_around(&v->s, lw_plan_moved(face, out, out_mm), 1, "%s", words)) return;
    }
}

void lw_plan_draw_words(lw_plan_view *v) {
  const lw_setting_out *setting_out = &v->order->setting_out;
  int runs = v->order->plan.run_count;
  for (int i = 0; i < setting_out->peg_count; i++)
    if (lw_plan_peg_is_shown(v, &setting_out->peg[i])) peg_name(v, i);
  for (int i = 0; i < runs; i++) run_length(v, i);
  for (int i = 0; i < runs; i++)
    if (lw_plan_is_curved(&v->order->plan.run[i])) radius(v, i);
  side(v, "soil", -(v->depth_m * v->s.mm_per_m + 7.0));
  side(v, "front", 3.0);
  for (int i = 0; i < runs; i++) turn(v, i);
}
