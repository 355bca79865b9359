/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "back_plane.h"

#include <lowwall/pressure.h>

#include <math.h>

#include "base/extremes.h"

/* The ground behind, in the section's axes: it starts at the wall's back and rises, level beyond its run. */
typedef struct surface {
  double x_m, y_m, slope_rad, run_m;
} surface;

/* Rearmost x of the outline at one level between base and crest. */
static double rear_at(const lw_section *section, double y_m) {
  bool met = false;
  double rear = section->crest.x_m;
  for (int i = 0; i < section->outline_count; i++) {
    const lw_corner *a = &section->outline[i], *b = &section->outline[(i + 1) % section->outline_count];
    double low = lw_smaller(a->y_m, b->y_m), high = lw_larger(a->y_m, b->y_m);
    if (y_m < low - 1e-12 || y_m > high + 1e-12) continue;
    double rise = b->y_m - a->y_m;
    double x =
        fabs(rise) < 1e-12 ? lw_larger(a->x_m, b->x_m) : a->x_m + (b->x_m - a->x_m) * (y_m - a->y_m) / rise;
    rear = met ? lw_larger(rear, x) : x;
    met = true;
  }
  return rear;
}

static surface surface_of(const lw_site *site, const lw_section *section) {
  double y = section->height_m - site->soil_below_top_m;
  return (surface){.x_m = rear_at(section, lw_smaller(lw_larger(y, 0.0), section->crest.y_m)),
                   .y_m = y,
                   .slope_rad = site->slope_rad,
                   .run_m = site->slope_run_m};
}

static double ground_level(const surface *g, double x_m) {
  double along = lw_smaller(lw_larger(x_m - g->x_m, 0.0), g->run_m);
  return g->y_m + along * tan(g->slope_rad);
}

static bool on_the_back(const lw_method *method) {
  bool own_is_back = method->pressure == LW_PRESSURE_COULOMB || method->pressure == LW_PRESSURE_WEDGE;
  return method->plane == LW_PLANE_BACK || (method->plane == LW_PLANE_OWN && own_is_back);
}

static bool along_ground(const lw_method *method) {
  return method->pressure == LW_PRESSURE_RANKINE || method->pressure == LW_PRESSURE_AT_REST;
}

/* A vertical plane through the rearmost point: a stack that leans back carries the ground above its top. */
static void place_upright(const lw_section *section, const surface *g, double extra_depth_m,
                          lw_back_plane *back) {
  double x = lw_larger(section->rear_m, g->x_m);
  back->foot_x_m = back->top_x_m = x;
  back->foot_y_m = -extra_depth_m;
  back->top_y_m = ground_level(g, x);
}

/* A line of the back: where it meets the level of the base, and how it leans. */
typedef struct line {
  double foot_m, lean, rad;
} line;

/* The wall's own back reaches from the rear of the base to the rear of the top, over a heel too: what stands
 * in front of that line is weight. The back of the stem alone leaves the soil on its heel out. */
static line line_of(const lw_method *method, const lw_section *section) {
  double heel = section->base_width_m - section->back_foot_m;
  if (method->plane == LW_PLANE_BACK || fabs(heel) < 1e-12)
    return (line){section->back_foot_m, section->back_lean, section->back_rad};
  double lean = section->back_lean + heel / section->crest.y_m;
  return (line){section->base_width_m, lean, atan(lean)};
}

/* Where the line of the back meets the ground: at the ground's own start, or up the slope where that starts
 * in front of the line, on a ledge. */
static double meets_ground(const line *along, const surface *g) {
  double lean = along->lean, ahead = along->foot_m - g->y_m * lean - g->x_m;
  if (ahead <= 0.0 || g->slope_rad <= 0.0) return g->y_m;
  double rise = tan(g->slope_rad), closing = 1.0 + lean * rise;
  if (closing <= 1e-3) return g->y_m;
  return g->y_m + lw_smaller(ahead / closing, g->run_m) * rise;
}

/* The line of the back, carried down to the foot. */
static void place_on_back(const line *along, const surface *g, double extra_depth_m, lw_back_plane *back) {
  double top_y = meets_ground(along, g);
  back->plane.batter_rad = along->rad;
  back->lean = along->lean;
  back->foot_x_m = along->foot_m + extra_depth_m * back->lean;
  back->foot_y_m = -extra_depth_m;
  back->top_x_m = along->foot_m - top_y * back->lean;
  back->top_y_m = top_y;
}

/* A layer that ends above the plane's top is still there where the ground rises behind it. */
static void layers_build(const lw_site *site, const lw_strength *strength, double above_top_m,
                         lw_plane *plane) {
  bool rises = plane->slope_rad > 0.0;
  for (int i = 0; i < site->soil_count; i++) {
    const lw_soil *soil = &site->soil[i];
    double bottom = soil->bottom_m + above_top_m;
    bool last = i == site->soil_count - 1;
    if (!last && bottom <= 0.0 && !rises) continue;
    plane->layer[plane->layer_count++] = (lw_layer){
        .bottom_m = last ? INFINITY : bottom,
        .friction_rad = strength[i].friction_rad,
        .cohesion_kpa = strength[i].cohesion_kpa,
        .unit_weight_kn_per_m3 = soil->unit_weight_kn_per_m3,
        .saturated_unit_weight_kn_per_m3 = soil->saturated_unit_weight_kn_per_m3,
        .overconsolidation = soil->overconsolidation,
    };
  }
}

/* The posts of a fence in the wind push the ground as a line does; in front of the plane all of it is the
 * wall's. */
static void wind_build(const lw_ground *ground, double from_crest_m, lw_plane *plane) {
  double at = lw_larger(ground->wind_distance_m - from_crest_m, 0.0);
  if (ground->wind_kn_per_m <= 0.0) return;
  plane->load[plane->load_count++] =
      (lw_plane_load){.near_m = at,
                      .far_m = at,
                      .below_m = ground->wind_below_m,
                      .push_kn_per_m = ground->wind_kn_per_m * ground->level_push};
}

static void person_build(const lw_ground *ground, double from_crest_m, lw_plane *plane) {
  double near = lw_larger(ground->person_near_m - from_crest_m, 0.0),
         far = ground->person_far_m - from_crest_m;
  if (ground->person_kpa <= 0.0 || far <= near) return;
  plane->load[plane->load_count++] =
      (lw_plane_load){.near_m = near, .far_m = far, .pressure_kpa = ground->person_kpa};
}

/* A point load is taken whole on the metre of wall in front of it. A load that reaches over the wall pushes
 * only from behind it. */
static void loads_build(const lw_site *site, const lw_ground *ground, double from_crest_m, lw_plane *plane) {
  for (int i = 0; i < site->load_count; i++) {
    const lw_site_load *load = &site->load[i];
    if (load->kind == LW_LOAD_CAP) continue;
    bool strip = load->kind == LW_LOAD_STRIP;
    double near = lw_larger(load->near_m - from_crest_m, 0.0), far = load->far_m - from_crest_m;
    if (strip ? far <= near : far < 0.0) continue;
    plane->load[plane->load_count++] = (lw_plane_load){
        .near_m = near,
        .far_m = far,
        .pressure_kpa = strip ? load->pressure_kpa : 0.0,
        .force_kn_per_m = strip ? 0.0 : load->force,
        .below_m = load->below_m,
        .point = load->kind == LW_LOAD_POINT,
        .push_kn_per_m = load->push_kn_per_m * ground->level_push,
    };
  }
  wind_build(ground, from_crest_m, plane);
  person_build(ground, from_crest_m, plane);
}

/* Where the plane stands: upright behind the wall, or on its back. */
static void place(const lw_method *method, const lw_stack *stack, const surface *g, lw_back_plane *back) {
  line along = line_of(method, stack->section);
  if (on_the_back(method) && !along_ground(method))
    place_on_back(&along, g, stack->below_m, back);
  else
    place_upright(stack->section, g, stack->below_m, back);
  if (!on_the_back(method) || !along_ground(method)) return;
  back->foot_x_m = back->top_x_m = g->x_m;
  back->top_y_m = g->y_m;
}

void lw_back_plane_build(const lw_site *site, const lw_ground *ground, const lw_method *method,
                         const lw_stack *stack, lw_back_plane *back) {
  const lw_section *section = stack->section;
  surface g = surface_of(site, section);
  *back = (lw_back_plane){
      .overhangs = section->rear_m > section->base_width_m + 1e-9, .ground_x_m = g.x_m, .ground_y_m = g.y_m};
  place(method, stack, &g, back);
  lw_plane *plane = &back->plane;
  double above_top = back->top_y_m - section->height_m;
  /* Soil that lies lower than the foot of this stack of courses leaves it free. */
  plane->height_m = lw_larger(back->top_y_m - back->foot_y_m, 0.0);
  plane->along_ground = along_ground(method);
  plane->slope_run_m = lw_larger(site->slope_run_m - lw_larger(back->top_x_m - g.x_m, 0.0), 0.0);
  /* Where the slope has ended in front of the plane, what pushes on it is level ground. */
  plane->slope_rad = plane->slope_run_m > 0.0 ? site->slope_rad : 0.0;
  plane->wall_friction_rad = plane->along_ground ? plane->slope_rad : ground->design.wall_friction_rad;
  plane->surcharge_kpa = ground->surcharge_kpa;
  plane->water_depth_m = lw_larger(ground->water_depth_m + above_top, 0.0);
  plane->water_unit_weight_kn_per_m3 = site->water_unit_weight_kn_per_m3;
  plane->crack = method->crack;
  plane->overconsolidation = method->overconsolidation;
  plane->coefficient = method->coefficient;
  plane->seismic = ground->seismic;
  layers_build(site, ground->design.soil, above_top, plane);
  loads_build(site, ground, back->top_x_m - section->crest.x_m, plane);
}
