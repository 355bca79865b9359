/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial_wedge_shape.h"

#include <assert.h>
#include <math.h>

#include "base/extremes.h"
#include "base/solve.h"
#include "wall/polygon.h"

#include "profile.h"

enum { CORNERS = 12 };
/* Higher than any ground. */
static const double FAR_M = 1e6;

typedef struct body_corners {
  lw_corner corner[CORNERS];
  int count;
} body_corners;

/* Ground that rises is of the first layer where it leaves the wall, and stands above water that reaches up
 * there; level ground begins at the plane's top. */
static void zones_build(lw_wedge_frame *frame) {
  const lw_plane *plane = frame->plane;
  bool rises = plane->slope_rad > 0.0;
  double depth = rises ? -FAR_M : 0.0;
  while (depth < plane->height_m) {
    assert(frame->zone_count < LW_WEDGE_ZONES);
    int i = lw_layer_at(plane, depth);
    bool wet = depth >= plane->water_depth_m;
    double bottom = lw_smaller(plane->height_m, plane->layer[i].bottom_m);
    if (!wet) bottom = lw_smaller(bottom, plane->water_depth_m);
    frame->zone[frame->zone_count++] = (lw_wedge_zone){.layer = i,
                                                       .low_m = plane->height_m - bottom,
                                                       .effective = lw_layer_weight(plane, i, wet),
                                                       .moved = lw_layer_moved(plane, i, wet)};
    depth = bottom;
  }
  for (int i = frame->zone_count - 1; i > 0; i--) {
    const lw_wedge_zone *zone = &frame->zone[i];
    frame->zone[i - 1].below_kpa = zone->below_kpa + zone->effective * (zone[-1].low_m - zone->low_m);
  }
}

lw_wedge_frame lw_wedge_frame_of(const lw_plane *plane) {
  lw_wedge_frame frame;
  frame.plane = plane;
  frame.tan_slope = tan(plane->slope_rad);
  frame.top = (lw_corner){-plane->height_m * tan(plane->batter_rad), plane->height_m};
  frame.zone_count = 0;
  frame.told = NULL;
  zones_build(&frame);
  for (int i = 0; i < plane->layer_count; i++) frame.tan_friction[i] = tan(plane->layer[i].friction_rad);
  return frame;
}

/* What ground up to a level weighs, per area, above the level of the foot. */
static double weight_up_to(const lw_wedge_frame *frame, double y_m) {
  const lw_wedge_zone *zone = frame->zone, *last = zone + frame->zone_count - 1;
  while (zone < last && y_m < zone->low_m) zone++;
  return zone->below_kpa + zone->effective * (y_m - zone->low_m);
}

static double ground_at(const lw_wedge_frame *frame, double behind_m) {
  return frame->top.y_m + lw_smaller(behind_m, frame->plane->slope_run_m) * frame->tan_slope;
}

/* How far behind the plane's top the failure plane comes out: on the slope, else on level ground beyond. */
static bool daylight(const lw_wedge_frame *frame, const lw_wedge_line *line, double *behind_m) {
  double slope = frame->tan_slope, end = frame->plane->slope_run_m;
  double closing = line->rise - line->run * slope, level = frame->top.y_m - slope * frame->top.x_m;
  double behind = closing > 1e-12 ? level / closing * line->run - frame->top.x_m : INFINITY;
  if (behind > end) {
    behind = ground_at(frame, end) * line->run / line->rise - frame->top.x_m;
  }
  *behind_m = lw_larger(behind, 0.0);
  return isfinite(behind);
}

static double plane_at(const lw_wedge_frame *frame, const lw_wedge_line *line, double behind_m) {
  return (frame->top.x_m + behind_m) * line->rise / line->run;
}

typedef struct column {
  const lw_wedge_frame *frame;
  const lw_wedge_line *line;
} column;

/* Vertical stress on the failure plane below a point of the ground. */
static double stress_below(const column *c, double behind_m) {
  return c->frame->plane->surcharge_kpa + weight_up_to(c->frame, ground_at(c->frame, behind_m)) -
         weight_up_to(c->frame, plane_at(c->frame, c->line, behind_m));
}

/* What the last column of the body adds to the thrust less what its cohesion holds back, over its push: below
 * 0 it only pulls, and the soil cracks in front of it. */
static double gain(double behind_m, const void *context) {
  const column *c = context;
  int i = c->line->cracked_in;
  double up = c->line->rise - c->frame->tan_friction[i] * c->line->run;
  double held = c->frame->plane->layer[i].cohesion_kpa;
  return up > 1e-9 ? stress_below(c, behind_m) - held / (c->line->run * up) : -1e6 - held;
}

/* Where the failure plane passes the bottom of a layer. */
static double passes(const lw_wedge_frame *frame, const lw_wedge_line *line, int layer) {
  double depth = lw_smaller(frame->plane->layer[layer].bottom_m, frame->plane->height_m);
  return (frame->plane->height_m - depth) * line->run / line->rise - frame->top.x_m;
}

/* Draw the end of the body back to the best crack that ends in the line's layer; soil that lies on the back
 * stays. False when the plane does not pass that layer behind the back. */
static bool crack(const lw_wedge_frame *frame, const lw_wedge_line *line, double *behind_m) {
  column c = {frame, line};
  int i = line->cracked_in;
  if (line->run <= 1e-9 || line->rise <= 1e-9) return false;
  double low = lw_larger(lw_larger(-frame->top.x_m, 0.0), passes(frame, line, i));
  double high = i > 0 ? lw_smaller(*behind_m, passes(frame, line, i - 1)) : *behind_m;
  if (low >= high) return false;
  *behind_m = high;
  if (gain(high, &c) >= 0.0) return true;
  *behind_m = low;
  if (gain(low, &c) <= 0.0) return true;
  return lw_solve_root(gain, &c, low, high, 1e-12, behind_m) == LW_OK;
}

/* Anticlockwise; the second corner is where the failure plane ends. */
static void shape(const lw_wedge_frame *frame, double behind_m, double crack_m, body_corners *body) {
  double end = frame->plane->slope_run_m, top_x = frame->top.x_m, ground = ground_at(frame, behind_m);
  body->count = 0;
  body->corner[body->count++] = (lw_corner){0.0, 0.0};
  body->corner[body->count++] = (lw_corner){top_x + behind_m, ground - crack_m};
  if (crack_m > 0.0) body->corner[body->count++] = (lw_corner){top_x + behind_m, ground};
  if (end < behind_m && fabs(frame->tan_slope) > 1e-12)
    body->corner[body->count++] = (lw_corner){top_x + end, ground_at(frame, end)};
  body->corner[body->count++] = frame->top;
}

static const lw_wedge_units SOIL = {"m2", "kN/m3"}, LOAD = {"m", "kPa"}, LINE = {"", "kN/m"},
                            RUBS = {"kN/m", ""};

static void tell_weight(lw_trial_wedge_told *told, const lw_wedge_units *in, double size, double each,
                        double moved) {
  if (told == NULL || fabs(size * each) <= 0.0) return;
  assert(told->weight_count < LW_WEDGE_TERMS);
  told->weight[told->weight_count++] = (lw_wedge_term){size, each, moved, 0, in};
}

static void tell_plane(lw_trial_wedge_told *told, int layer, double rubs, double cohesion_kpa,
                       double length_m) {
  if (told == NULL) return;
  if (rubs > 0.0) told->rub[told->rub_count++] = (lw_wedge_term){.size = rubs, .layer = layer, .in = &RUBS};
  if (cohesion_kpa > 0.0)
    told->held[told->held_count++] =
        (lw_wedge_term){.size = length_m, .each = cohesion_kpa, .layer = layer, .in = &LOAD};
}

static void add_weight(lw_wedge_body *body, double weight, double moved, double x_m, double y_m) {
  body->weight_kn_per_m += weight;
  body->moved_kn_per_m += moved;
  body->x_m += weight * x_m;
  body->y_m += weight * y_m;
}

/* The part of the body within a zone, which reaches up to a level. */
static void add_zone(const body_corners *whole, const lw_wedge_zone *zone, double high_m,
                     lw_trial_wedge_told *told, lw_wedge_body *body) {
  lw_corner above[CORNERS + 2], band[CORNERS + 4];
  int n = lw_polygon_cut(whole->corner, whole->count, zone->low_m, true, above);
  n = lw_polygon_cut(above, n, high_m, false, band);
  if (n < 3) return;
  lw_patch patch = lw_patch_of(band, n);
  add_weight(body, patch.area_m2 * zone->effective, patch.area_m2 * zone->moved, patch.x_m, patch.y_m);
  tell_weight(told, &SOIL, patch.area_m2, zone->effective, zone->moved);
}

static double highest(const body_corners *whole) {
  double y = 0.0;
  for (int i = 0; i < whole->count; i++) y = lw_larger(y, whole->corner[i].y_m);
  return y;
}

/* One stretch of the failure plane within a layer: its share of the reaction goes by the columns of soil and
 * load that stand on it. */
typedef struct reaction {
  double weight, tangent;
} reaction;

/* Columns over a stretch without a bend of the ground above it, times the rise of the plane over its run. */
static double columns_on(const column *c, double from_y_m, double to_y_m) {
  double over = c->line->run / c->line->rise, top_x = c->frame->top.x_m;
  double first = stress_below(c, from_y_m * over - top_x), last = stress_below(c, to_y_m * over - top_x);
  return 0.5 * (lw_larger(first, 0.0) + lw_larger(last, 0.0)) * (to_y_m - from_y_m);
}

static void add_stretch(const column *c, int layer, double low_m, double high_m, reaction *sum) {
  /* Beyond its slope the ground above the stretch is level. */
  double bend = (c->frame->plane->slope_run_m + c->frame->top.x_m) * c->line->rise;
  double cut = lw_smaller(lw_larger(low_m, bend / lw_larger(c->line->run, 1e-12)), high_m);
  double weight = columns_on(c, low_m, cut) + columns_on(c, cut, high_m);
  sum->weight += weight;
  sum->tangent += weight * c->frame->tan_friction[layer];
}

static void layered(const lw_wedge_frame *frame, const body_corners *whole, const lw_wedge_line *line,
                    lw_wedge_body *body) {
  column c = {frame, line};
  reaction sum = {0.0, 0.0};
  double high = lw_larger(highest(whole), frame->plane->height_m), end = whole->corner[1].y_m, held = 0.0;
  for (int i = 0; i < frame->zone_count; i++) {
    const lw_wedge_zone *zone = &frame->zone[i];
    add_zone(whole, zone, high, frame->told, body);
    double top = lw_smaller(high, end);
    if (top > zone->low_m) {
      double before = sum.weight, cohesion = frame->plane->layer[zone->layer].cohesion_kpa;
      add_stretch(&c, zone->layer, zone->low_m, top, &sum);
      held += cohesion * (top - zone->low_m);
      tell_plane(frame->told, zone->layer, sum.weight - before, cohesion,
                 (top - zone->low_m) / lw_larger(line->rise, 1e-6));
    }
    high = zone->low_m;
  }
  body->friction_tan = sum.weight > 0.0 ? sum.tangent / sum.weight : frame->tan_friction[0];
  body->cohesion_kn_per_m = held / lw_larger(line->rise, 1e-6);
}

static void plain(const lw_wedge_frame *frame, const body_corners *whole, lw_wedge_body *body) {
  lw_patch patch = lw_patch_of(whole->corner, whole->count);
  add_weight(body, patch.area_m2 * frame->zone[0].effective, patch.area_m2 * frame->zone[0].moved, patch.x_m,
             patch.y_m);
  body->friction_tan = frame->tan_friction[frame->zone[0].layer];
  double cohesion = frame->plane->layer[frame->zone[0].layer].cohesion_kpa;
  double length = cohesion > 0.0 ? hypot(whole->corner[1].x_m, whole->corner[1].y_m) : 0.0;
  body->cohesion_kn_per_m = cohesion * length;
  tell_weight(frame->told, &SOIL, patch.area_m2, frame->zone[0].effective, frame->zone[0].moved);
  tell_plane(frame->told, frame->zone[0].layer, 0.0, cohesion, length);
}

static void add_push(lw_wedge_body *body, double push_kn_per_m, double x_m, double y_m) {
  double sum = body->push_kn_per_m + push_kn_per_m;
  if (fabs(push_kn_per_m) < 1e-12 || fabs(sum) < 1e-12) return;
  double share = push_kn_per_m / sum;
  body->push_x_m += share * (x_m - body->push_x_m);
  body->push_y_m += share * (y_m - body->push_y_m);
  body->push_kn_per_m = sum;
}

/* The level at which a load meets the ground: a footing is level, at its near edge. */
static double level_of(const lw_wedge_frame *frame, const lw_plane_load *load) {
  return ground_at(frame, load->near_m) - load->below_m;
}

/* How far back a load stands on the body: up to its end, and below ground to the failure plane. */
static double stands_up_to(const lw_wedge_frame *frame, const lw_wedge_line *line, const lw_plane_load *load,
                           double behind_m) {
  if (load->below_m <= 0.0) return behind_m;
  double level = level_of(frame, load);
  if (level <= 0.0) return -INFINITY;
  double passes = line->rise > 1e-12 ? level * line->run / line->rise - frame->top.x_m : INFINITY;
  return lw_smaller(behind_m, passes);
}

/* Loads that stand on the body or push it, and footings in it that the failure plane passes below. */
static void add_loads(const lw_wedge_frame *frame, const lw_wedge_line *line, double behind_m,
                      lw_wedge_body *body) {
  const lw_plane *plane = frame->plane;
  double middle = 0.5 * behind_m, all_over = plane->surcharge_kpa * behind_m;
  add_weight(body, all_over, all_over, frame->top.x_m + middle, ground_at(frame, middle));
  tell_weight(frame->told, &LOAD, behind_m, plane->surcharge_kpa, plane->surcharge_kpa);
  for (int i = 0; i < plane->load_count; i++) {
    const lw_plane_load *load = &plane->load[i];
    double end = stands_up_to(frame, line, load, behind_m);
    if (load->near_m > end) continue;
    double far = lw_smaller(load->far_m, end), at = 0.5 * (load->near_m + far);
    double force = load->force_kn_per_m + load->pressure_kpa * (far - load->near_m);
    double level = load->below_m > 0.0 ? level_of(frame, load) : ground_at(frame, at);
    add_weight(body, force, force, frame->top.x_m + at, level);
    tell_weight(frame->told, &LOAD, far - load->near_m, load->pressure_kpa, load->pressure_kpa);
    tell_weight(frame->told, &LINE, 1.0, load->force_kn_per_m, load->force_kn_per_m);
    add_push(body, load->push_kn_per_m, frame->top.x_m + load->near_m, level_of(frame, load));
  }
}

bool lw_wedge_body_of(const lw_wedge_frame *frame, const lw_wedge_line *line, lw_wedge_body *body) {
  double behind, crack_m = 0.0;
  body_corners whole;
  if (!daylight(frame, line, &behind)) return false;
  if (line->cracked_in >= 0) {
    if (!crack(frame, line, &behind)) return false;
    crack_m = lw_larger(ground_at(frame, behind) - plane_at(frame, line, behind), 0.0);
  }
  *body = (lw_wedge_body){.cracked_in = line->cracked_in, .reach_m = behind, .crack_depth_m = crack_m};
  shape(frame, behind, crack_m, &whole);
  if (frame->zone_count == 1)
    plain(frame, &whole, body);
  else
    layered(frame, &whole, line, body);
  add_loads(frame, line, behind, body);
  if (body->weight_kn_per_m > 0.0) {
    body->x_m /= body->weight_kn_per_m;
    body->y_m /= body->weight_kn_per_m;
  }
  return true;
}

double lw_wedge_level(double sign, const lw_plane *plane, const lw_wedge_body *body) {
  return sign * plane->seismic.horizontal * body->moved_kn_per_m + body->push_kn_per_m;
}

double lw_wedge_angle_to(const lw_wedge_frame *frame, double x_m) {
  return atan2(ground_at(frame, x_m), frame->top.x_m + x_m);
}

double lw_wedge_angle_to_load(const lw_wedge_frame *frame, const lw_plane_load *load, double x_m) {
  double level = load->below_m > 0.0 ? level_of(frame, load) : ground_at(frame, x_m);
  return atan2(level, frame->top.x_m + x_m);
}
