/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "wedge_shape.h"

#include <math.h>

#include "profile.h"

enum { CORNERS = 12 };

typedef struct body_corners { lw_corner corner[CORNERS]; int count; } body_corners;

static lw_corner top_of(const lw_plane *plane) {
  return (lw_corner){-plane->height_m * tan(plane->batter_rad), plane->height_m};
}

static double ground_at(const lw_plane *plane, double behind_m) {
  return plane->height_m + fmin(behind_m, plane->slope_run_m) * tan(plane->slope_rad);
}

/* How far behind the plane's top a line from the foot at this angle comes out: first on the slope, else on the
 * level ground beyond its run. */
static bool daylight(const lw_plane *plane, double angle_rad, double *behind_m) {
  lw_corner top = top_of(plane);
  double rise = sin(angle_rad), run = cos(angle_rad), slope = tan(plane->slope_rad);
  double closing = rise - run * slope, level = plane->height_m - slope * top.x_m;
  double behind = closing > 1e-12 ? level / closing * run - top.x_m : INFINITY;
  if (behind > plane->slope_run_m) {
    if (rise <= 1e-12) return false;
    behind = ground_at(plane, plane->slope_run_m) * run / rise - top.x_m;
  }
  *behind_m = fmax(behind, 0.0);
  return isfinite(behind);
}

static void shape(const lw_plane *plane, double behind_m, body_corners *body) {
  lw_corner top = top_of(plane);
  body->count = 0;
  body->corner[body->count++] = (lw_corner){0.0, 0.0};
  body->corner[body->count++] = (lw_corner){top.x_m + behind_m, ground_at(plane, behind_m)};
  if (plane->slope_run_m < behind_m && fabs(plane->slope_rad) > 1e-12)
    body->corner[body->count++] = (lw_corner){top.x_m + plane->slope_run_m, ground_at(plane, plane->slope_run_m)};
  body->corner[body->count++] = top;
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

static void add_stretch(const lw_plane *plane, int layer, double stress_kpa, double rise_m, double angle_rad,
                        reaction *sum) {
  double share = fmax(stress_kpa, 0.0) * rise_m;
  sum->stress += share;
  sum->tangent += share * tan(plane->layer[layer].friction_rad);
  sum->cohesion += plane->layer[layer].cohesion_kpa * rise_m / fmax(sin(angle_rad), 1e-6);
}

static bool one_zone(const lw_plane *plane) {
  bool one_soil = plane->layer_count == 1 || plane->layer[0].bottom_m >= plane->height_m;
  return one_soil && (plane->water_depth_m <= 0.0 || plane->water_depth_m >= plane->height_m);
}

/* Ground above the plane's top belongs to the first layer. */
static void layered(const lw_plane *plane, const body_corners *whole, double angle_rad, lw_wedge_body *body) {
  reaction sum = {0};
  double stress = plane->surcharge_kpa, top_y = whole->corner[1].y_m;
  for (double depth = 0.0; depth < plane->height_m;) {
    int i = lw_layer_at(plane, depth);
    bool wet = depth >= plane->water_depth_m;
    double bottom = fmin(plane->height_m, plane->layer[i].bottom_m), weight = unit_weight_of(plane, i, wet);
    if (!wet) bottom = fmin(bottom, plane->water_depth_m);
    double high = depth > 0.0 ? plane->height_m - depth : INFINITY;
    add_band(whole, high, plane->height_m - bottom, weight, body);
    double rise = fmin(high, top_y) - (plane->height_m - bottom);
    if (rise > 0.0) add_stretch(plane, i, stress + 0.5 * weight * rise, rise, angle_rad, &sum);
    stress += weight * (bottom - depth);
    depth = bottom;
  }
  body->friction_tan = sum.stress > 0.0 ? sum.tangent / sum.stress : tan(plane->layer[0].friction_rad);
  body->cohesion_kn_per_m = sum.cohesion;
}

static void plain(const lw_plane *plane, const body_corners *whole, lw_wedge_body *body) {
  double area;
  lw_corner at;
  lw_polygon_area(whole->corner, whole->count, &area, &at);
  add_weight(body, area * unit_weight_of(plane, 0, plane->water_depth_m <= 0.0), at.x_m, at.y_m);
  body->friction_tan = tan(plane->layer[0].friction_rad);
  body->cohesion_kn_per_m = plane->layer[0].cohesion_kpa * hypot(whole->corner[1].x_m, whole->corner[1].y_m);
}

/* Loads that stand on the body. */
static void add_loads(const lw_plane *plane, double behind_m, lw_wedge_body *body) {
  double top_x = top_of(plane).x_m;
  double middle = 0.5 * behind_m;
  add_weight(body, plane->surcharge_kpa * behind_m, top_x + middle, ground_at(plane, middle));
  for (int i = 0; i < plane->load_count; i++) {
    const lw_plane_load *load = &plane->load[i];
    if (load->near_m > behind_m) continue;
    double far = fmin(load->far_m, behind_m), at = 0.5 * (load->near_m + far);
    double force = load->force_kn_per_m + load->pressure_kpa * (far - load->near_m);
    add_weight(body, force, top_x + at, ground_at(plane, at));
  }
}

bool lw_wedge_body_of(const lw_plane *plane, double angle_rad, lw_wedge_body *body) {
  double behind;
  body_corners whole;
  if (!daylight(plane, angle_rad, &behind)) return false;
  *body = (lw_wedge_body){.reach_m = behind};
  shape(plane, behind, &whole);
  if (one_zone(plane)) plain(plane, &whole, body);
  else layered(plane, &whole, angle_rad, body);
  add_loads(plane, behind, body);
  if (body->weight_kn_per_m > 0.0) {
    body->x_m /= body->weight_kn_per_m;
    body->y_m /= body->weight_kn_per_m;
  }
  return true;
}

double lw_wedge_angle_to(const lw_plane *plane, double x_m) {
  return atan2(ground_at(plane, x_m), top_of(plane).x_m + x_m);
}
