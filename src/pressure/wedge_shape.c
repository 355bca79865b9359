/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "wedge_shape.h"

#include <math.h>

#include "profile.h"

enum { CORNERS = 12 };

typedef struct body_corners { lw_corner corner[CORNERS]; int count; } body_corners;

static bool one_zone(const lw_plane *plane) {
  bool one_soil = plane->layer_count == 1 || plane->layer[0].bottom_m >= plane->height_m;
  return one_soil && (plane->water_depth_m <= 0.0 || plane->water_depth_m >= plane->height_m);
}

lw_wedge_frame lw_wedge_frame_of(const lw_plane *plane) {
  return (lw_wedge_frame){
      .plane = plane, .tan_slope = tan(plane->slope_rad),
      .top = {-plane->height_m * tan(plane->batter_rad), plane->height_m},
      .one_zone = one_zone(plane), .tan_friction = tan(plane->layer[0].friction_rad)};
}

static double ground_at(const lw_wedge_frame *frame, double behind_m) {
  return frame->top.y_m + fmin(behind_m, frame->plane->slope_run_m) * frame->tan_slope;
}

/* How far behind the plane's top the failure plane comes out: on the slope, else on the level ground beyond. */
static bool daylight(const lw_wedge_frame *frame, double run, double rise, double *behind_m) {
  double slope = frame->tan_slope, end = frame->plane->slope_run_m;
  double closing = rise - run * slope, level = frame->top.y_m - slope * frame->top.x_m;
  double behind = closing > 1e-12 ? level / closing * run - frame->top.x_m : INFINITY;
  if (behind > end) {
    if (rise <= 1e-12) return false;
    behind = ground_at(frame, end) * run / rise - frame->top.x_m;
  }
  *behind_m = fmax(behind, 0.0);
  return isfinite(behind);
}

static void shape(const lw_wedge_frame *frame, double behind_m, body_corners *body) {
  double end = frame->plane->slope_run_m, top_x = frame->top.x_m;
  body->count = 0;
  body->corner[body->count++] = (lw_corner){0.0, 0.0};
  body->corner[body->count++] = (lw_corner){top_x + behind_m, ground_at(frame, behind_m)};
  if (end < behind_m && fabs(frame->tan_slope) > 1e-12)
    body->corner[body->count++] = (lw_corner){top_x + end, ground_at(frame, end)};
  body->corner[body->count++] = frame->top;
}

static double unit_weight_of(const lw_plane *plane, int layer, bool wet) {
  const lw_layer *soil = &plane->layer[layer];
  return wet ? soil->saturated_unit_weight_kn_per_m3 - plane->water_unit_weight_kn_per_m3
             : soil->unit_weight_kn_per_m3;
}

static void add_weight(lw_wedge_body *body, double weight, double x_m, double y_m) {
  body->weight_kn_per_m += weight;
  body->x_m += weight * x_m;
  body->y_m += weight * y_m;
}

/* The part of the body between two depths below the plane's top. */
static void add_band(const body_corners *whole, double high_y, double low_y, double unit_weight,
                     lw_wedge_body *body) {
  lw_corner above[CORNERS + 2], band[CORNERS + 4], at;
  double area;
  int n = lw_polygon_cut(whole->corner, whole->count, low_y, true, above);
  n = lw_polygon_cut(above, n, high_y, false, band);
  if (n < 3) return;
  lw_polygon_area(band, n, &area, &at);
  add_weight(body, area * unit_weight, at.x_m, at.y_m);
}

/* One stretch of the failure plane within a layer: its share of the reaction goes by the stress on it. */
typedef struct reaction { double stress, tangent, cohesion; } reaction;

static void add_stretch(const lw_plane *plane, int layer, double stress_kpa, double rise_m, double rise,
                        reaction *sum) {
  double share = fmax(stress_kpa, 0.0) * rise_m;
  sum->stress += share;
  sum->tangent += share * tan(plane->layer[layer].friction_rad);
  sum->cohesion += plane->layer[layer].cohesion_kpa * rise_m / fmax(rise, 1e-6);
}

/* Ground above the plane's top belongs to the first layer. */
static void layered(const lw_plane *plane, const body_corners *whole, double rise, lw_wedge_body *body) {
  reaction sum = {0};
  double stress = plane->surcharge_kpa, top_y = whole->corner[1].y_m;
  for (double depth = 0.0; depth < plane->height_m;) {
    int i = lw_layer_at(plane, depth);
    bool wet = depth >= plane->water_depth_m;
    double bottom = fmin(plane->height_m, plane->layer[i].bottom_m), weight = unit_weight_of(plane, i, wet);
    if (!wet) bottom = fmin(bottom, plane->water_depth_m);
    double high = depth > 0.0 ? plane->height_m - depth : INFINITY;
    add_band(whole, high, plane->height_m - bottom, weight, body);
    double through = fmin(high, top_y) - (plane->height_m - bottom);
    if (through > 0.0) add_stretch(plane, i, stress + 0.5 * weight * through, through, rise, &sum);
    stress += weight * (bottom - depth);
    depth = bottom;
  }
  body->friction_tan = sum.stress > 0.0 ? sum.tangent / sum.stress : tan(plane->layer[0].friction_rad);
  body->cohesion_kn_per_m = sum.cohesion;
}

static void plain(const lw_wedge_frame *frame, const body_corners *whole, lw_wedge_body *body) {
  const lw_plane *plane = frame->plane;
  double area;
  lw_corner at;
  lw_polygon_area(whole->corner, whole->count, &area, &at);
  add_weight(body, area * unit_weight_of(plane, 0, plane->water_depth_m <= 0.0), at.x_m, at.y_m);
  body->friction_tan = frame->tan_friction;
  body->cohesion_kn_per_m = plane->layer[0].cohesion_kpa * hypot(whole->corner[1].x_m, whole->corner[1].y_m);
}

/* Loads that stand on the body. */
static void add_loads(const lw_wedge_frame *frame, double behind_m, lw_wedge_body *body) {
  const lw_plane *plane = frame->plane;
  double middle = 0.5 * behind_m;
  add_weight(body, plane->surcharge_kpa * behind_m, frame->top.x_m + middle, ground_at(frame, middle));
  for (int i = 0; i < plane->load_count; i++) {
    const lw_plane_load *load = &plane->load[i];
    if (load->near_m > behind_m) continue;
    double far = fmin(load->far_m, behind_m), at = 0.5 * (load->near_m + far);
    double force = load->force_kn_per_m + load->pressure_kpa * (far - load->near_m);
    add_weight(body, force, frame->top.x_m + at, ground_at(frame, at));
  }
}

bool lw_wedge_body_of(const lw_wedge_frame *frame, double run, double rise, lw_wedge_body *body) {
  double behind;
  body_corners whole;
  if (!daylight(frame, run, rise, &behind)) return false;
  *body = (lw_wedge_body){.reach_m = behind};
  shape(frame, behind, &whole);
  if (frame->one_zone) plain(frame, &whole, body);
  else layered(frame->plane, &whole, rise, body);
  add_loads(frame, behind, body);
  if (body->weight_kn_per_m > 0.0) {
    body->x_m /= body->weight_kn_per_m;
    body->y_m /= body->weight_kn_per_m;
  }
  return true;
}

double lw_wedge_angle_to(const lw_wedge_frame *frame, double x_m) {
  return atan2(ground_at(frame, x_m), frame->top.x_m + x_m);
}
