/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <assert.h>
#include <math.h>

#include "parts.h"

static const double SAME_M = 1e-9, HALF_LINE_M = 0.005;

double lw_slip_surface(const lw_slip_ground *ground, double x_m, bool from_behind) {
  const lw_corner *at = ground->corner;
  int last = ground->corner_count - 1, i = 0;
  if (x_m <= at[0].x_m) return at[0].y_m;
  while (i < last && (from_behind ? at[i + 1].x_m <= x_m : at[i + 1].x_m < x_m)) i++;
  if (i == last) return at[last].y_m;
  double share = (x_m - at[i].x_m) / (at[i + 1].x_m - at[i].x_m);
  return at[i].y_m + share * (at[i + 1].y_m - at[i].y_m);
}

/* The wall's underside and top at an x between two of its corners. */
static bool body_at(const lw_slip_ground *ground, double x_m, double *bottom_m, double *top_m) {
  *bottom_m = INFINITY;
  *top_m = -INFINITY;
  for (int i = 0; i < ground->body_count; i++) {
    const lw_corner *p = &ground->body[i], *q = &ground->body[(i + 1) % ground->body_count];
    if ((p->x_m - x_m) * (q->x_m - x_m) >= 0.0) continue;
    double y = p->y_m + (q->y_m - p->y_m) * (x_m - p->x_m) / (q->x_m - p->x_m);
    *bottom_m = lw_smaller(*bottom_m, y);
    *top_m = lw_larger(*top_m, y);
  }
  return *top_m > *bottom_m;
}

/* From its levels a little inside both ends. */
static void body_of(const lw_slip_ground *ground, lw_slip_strip *strip) {
  double width = strip->to_x_m - strip->from_x_m, in = 0.25 * width;
  double b1, t1, b2, t2;
  strip->has_body = body_at(ground, strip->from_x_m + in, &b1, &t1);
  if (!strip->has_body) return;
  (void)body_at(ground, strip->to_x_m - in, &b2, &t2);
  strip->bottom = (lw_slip_line){b1 - 0.5 * (b2 - b1), b2 + 0.5 * (b2 - b1)};
  strip->top = (lw_slip_line){t1 - 0.5 * (t2 - t1), t2 + 0.5 * (t2 - t1)};
}

static double water_at(const lw_slip_water *water, double x_m) {
  if (x_m <= water->front_x_m) return water->front_y_m;
  if (x_m >= water->rear_x_m) return water->rear_y_m;
  double share = (x_m - water->front_x_m) / (water->rear_x_m - water->front_x_m);
  return water->front_y_m + share * (water->rear_y_m - water->front_y_m);
}

/* Where there is water on one side alone it stands level to where the other side's begins. */
static lw_slip_line water_over(const lw_slip_water *water, double from_m, double to_m) {
  double middle = 0.5 * (from_m + to_m), more = lw_larger(water->front_y_m, water->rear_y_m);
  bool between = middle > water->front_x_m && middle < water->rear_x_m;
  bool both = isfinite(water->front_y_m) && isfinite(water->rear_y_m);
  if (between && !both) return (lw_slip_line){more, more};
  return (lw_slip_line){water_at(water, from_m), water_at(water, to_m)};
}

static double pressure_on(const lw_slip_ground *ground, double x_m) {
  double sum = 0.0;
  for (int i = 0; i < ground->load_count; i++) {
    const lw_slip_load *load = &ground->load[i];
    bool here = load->from_x_m < x_m && x_m < load->to_x_m;
    if (here && load->below_m <= 0.0) sum += load->pressure_kpa;
  }
  return sum;
}

/* So deep below the ground in front; behind the toe below its level there, for above it the ground was dug
 * and filled. */
static lw_slip_line paired_below(const lw_slip_ground *ground, const lw_slip_strip *strip) {
  double front = lw_slip_surface(ground, 0.0, false), depth = ground->paired_depth_m;
  if (strip->to_x_m > SAME_M) return (lw_slip_line){front - depth, front - depth};
  return (lw_slip_line){lw_smaller(front, strip->soil.start) - depth,
                        lw_smaller(front, strip->soil.end) - depth};
}

static void strip_of(const lw_slip_ground *ground, double from_m, double to_m, lw_slip_strip *strip) {
  double middle = 0.5 * (from_m + to_m);
  *strip = (lw_slip_strip){.from_x_m = from_m, .to_x_m = to_m, .over_width = 1.0 / (to_m - from_m)};
  strip->soil = (lw_slip_line){lw_slip_surface(ground, from_m, true), lw_slip_surface(ground, to_m, false)};
  strip->water = water_over(&ground->water, from_m, to_m);
  if (ground->paired_kpa > 0.0) strip->paired = paired_below(ground, strip);
  strip->layered = ground->soil_count > 0 && middle > ground->layer_x_m;
  strip->raised = middle > ground->raised_x_m;
  strip->pressure_kpa = pressure_on(ground, middle);
  body_of(ground, strip);
  if (strip->has_body) return;
  strip->spare_kn_per_m3 = middle < ground->layer_x_m ? ground->below.spare_kn_per_m3 : 0.0;
  /* Water does not stand above ground that falls away below its level: it runs off. */
  strip->water.start = lw_smaller(strip->water.start, strip->soil.start);
  strip->water.end = lw_smaller(strip->water.end, strip->soil.end);
}

typedef struct cuts {
  int count;
  double x_m[LW_SLIP_STRIP_MAX + 1];
} cuts;

static void cut_at(cuts *all, double x_m) {
  if (!isfinite(x_m)) return;
  assert(all->count <= LW_SLIP_STRIP_MAX);
  int i = all->count++;
  for (; i > 0 && all->x_m[i - 1] > x_m; i--) all->x_m[i] = all->x_m[i - 1];
  all->x_m[i] = x_m;
}

/* Where a stretch of the ground dips below water that stands level: in front of the wall, or behind it. */
static void cut_at_shore(const lw_corner *p, const lw_corner *q, double level_m, cuts *all) {
  if (isfinite(level_m) && (p->y_m - level_m) * (q->y_m - level_m) < 0.0)
    cut_at(all, p->x_m + (q->x_m - p->x_m) * (level_m - p->y_m) / (q->y_m - p->y_m));
}

static void cut_at_shores(const lw_slip_ground *ground, cuts *all) {
  const lw_slip_water *water = &ground->water;
  for (int i = 0; i + 1 < ground->corner_count; i++) {
    const lw_corner *p = &ground->corner[i], *q = p + 1;
    if (q->x_m <= water->front_x_m) cut_at_shore(p, q, water->front_y_m, all);
    if (p->x_m >= water->rear_x_m) cut_at_shore(p, q, water->rear_y_m, all);
  }
}

static void cuts_of(const lw_slip_ground *ground, cuts *all) {
  all->count = 0;
  for (int i = 0; i < ground->corner_count; i++) cut_at(all, ground->corner[i].x_m);
  for (int i = 0; i < ground->body_count; i++) cut_at(all, ground->body[i].x_m);
  for (int i = 0; i < ground->load_count; i++) {
    /* A line load stands in the middle of a narrow slice, whose slope is that of the circle under it. */
    double spread = ground->load[i].force_kn_per_m > 0.0 ? HALF_LINE_M : 0.0;
    cut_at(all, ground->load[i].from_x_m - spread);
    cut_at(all, ground->load[i].to_x_m + spread);
  }
  if (ground->soil_count > 0) cut_at(all, ground->layer_x_m);
  cut_at(all, ground->raised_x_m);
  cut_at_shores(ground, all);
  cut_at(all, ground->water.front_x_m);
  cut_at(all, ground->water.rear_x_m);
}

void lw_slip_cut(const lw_slip_ground *ground, lw_slip_strips *strips) {
  cuts all;
  cuts_of(ground, &all);
  strips->ground = ground;
  strips->count = 0;
  lw_slip_hull_of(ground, strips);
  for (int i = 0; i < ground->soil_count; i++) strips->tan_friction[i] = tan(ground->soil[i].friction_rad);
  strips->tan_below = tan(ground->below.friction_rad);
  strips->by_slice = false;
  for (int i = 0; i < ground->load_count; i++) {
    const lw_slip_load *load = &ground->load[i];
    double level = lw_slip_surface(ground, load->from_x_m, true) - load->below_m;
    strips->load_y_m[i] = load->below_m > 0.0 ? level : INFINITY;
    strips->by_slice = strips->by_slice || load->below_m > 0.0 || load->force_kn_per_m > 0.0;
  }
  for (int i = 0; i + 1 < all.count; i++)
    if (all.x_m[i + 1] - all.x_m[i] > SAME_M)
      strip_of(ground, all.x_m[i], all.x_m[i + 1], &strips->strip[strips->count++]);
}
