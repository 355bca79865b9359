/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ground.h"

#include <assert.h>
#include <math.h>

#include "wall/polygon.h"
#include "wall/section.h"

/* The cross-section through wall and ground that circles are drawn in. */

static const double JUST_M = 1e-3;
/* How far circles are looked for beyond the end of a rise or fall, in heights of all that rises; and along
 * one that has no end, in heights of the wall. tests/bench/slip.c measures what lies further off. */
static const double REACH_IN_HEIGHTS = 4.0, ENDLESS_IN_HEIGHTS = 1000.0;

static lw_slip_soil soil_of(const lw_soil *soil, const lw_strength *strength, double bottom_y_m) {
  return (lw_slip_soil){strength->friction_rad,
                        strength->cohesion_kpa,
                        soil->unit_weight_kn_per_m3,
                        fmax(soil->saturated_unit_weight_kn_per_m3, soil->unit_weight_kn_per_m3),
                        bottom_y_m,
                        fmax(soil->unit_weight_kn_per_m3 - soil->light_unit_weight_kn_per_m3, 0.0)};
}

static void corner(lw_slip_ground *g, double x_m, double y_m) {
  g->corner[g->corner_count++] = (lw_corner){x_m, y_m};
}

/* No slip of two low walls reaches across a field between them. */
static bool takes_both(const lw_wall *wall) {
  const lw_tier *tier = &wall->tier;
  double heights = wall->section.height_m + wall->site.pad.thickness_m + tier->height_m;
  return tier->band != LW_TIER_NONE && tier->height_m > 0.0 && tier->distance_m <= REACH_IN_HEIGHTS * heights;
}

/* A drop of the ground in front: the face of a wall below, or of a trench. */
typedef struct drop {
  double distance_m, depth_m;
} drop;

static int drops_of(const lw_wall *wall, const lw_front *ahead, drop drops[2]) {
  const lw_tier *tier = &wall->tier;
  const lw_site *site = &wall->site;
  int count = 0;
  if (ahead->open) drops[count++] = (drop){fmax(site->trench_distance_m, JUST_M), site->trench_depth_m};
  if (!takes_both(wall) || tier->above) return count;
  bool nearer = count > 0 && tier->distance_m < drops[0].distance_m;
  if (nearer) drops[1] = drops[0];
  drops[nearer ? 0 : count] = (drop){tier->distance_m, tier->height_m};
  return count + 1;
}

/* In front: down the slope, and over the edge of a wall below and of a trench; a trench has no far side. */
static void front(const lw_wall *wall, const lw_front *ahead, double far_m, lw_slip_ground *g) {
  double y = ahead->bearing_embedment_m, fall = tan(ahead->slope_rad), below = 0.0;
  drop drops[2];
  int count = drops_of(wall, ahead, drops);
  for (int i = 0; i < count; i++) below += drops[i].depth_m;
  corner(g, -far_m, y - far_m * fall - below);
  for (int i = count - 1; i >= 0; i--) {
    double level = y - drops[i].distance_m * fall;
    corner(g, -drops[i].distance_m, level - below);
    below -= drops[i].depth_m;
    corner(g, -drops[i].distance_m, level - below);
  }
  corner(g, 0.0, y);
}

/* Behind: along the slope to the end of its run, and up the face of a wall above. */
static void behind(const lw_wall *wall, lw_corner from, double far_m, lw_slip_ground *g) {
  const lw_site *site = &wall->site;
  const lw_tier *tier = &wall->tier;
  bool raised = takes_both(wall) && tier->above;
  double rise = tan(site->slope_rad), end = far_m, run = fmin(site->slope_run_m, end);
  double at = raised ? fmin(tier->distance_m, end) : end;
  corner(g, from.x_m, g->corner[g->corner_count - 1].y_m);
  corner(g, from.x_m, from.y_m);
  if (run < at) corner(g, from.x_m + run, from.y_m + run * rise);
  double y = from.y_m + fmin(at, run) * rise;
  corner(g, from.x_m + at, y);
  if (!raised) return;
  g->raised_x_m = from.x_m + at;
  g->raised_y_m = y;
  g->raised_kn_per_m3 = tier->pressure_kpa > 0.0 ? tier->pressure_kpa / tier->height_m : 0.0;
  corner(g, from.x_m + at, y + tier->height_m);
  if (run > at && run < end) corner(g, from.x_m + run, from.y_m + run * rise + tier->height_m);
  corner(g, from.x_m + end, from.y_m + run * rise + tier->height_m);
}

static void layers(const lw_site *site, const lw_strengths *design, double height_m, lw_slip_ground *g) {
  g->soil_count = site->soil_count;
  for (int i = 0; i < site->soil_count; i++) {
    bool last = i == site->soil_count - 1;
    double bottom = last ? 0.0 : fmax(height_m - site->soil[i].bottom_m, 0.0);
    g->soil[i] = soil_of(&site->soil[i], &design->soil[i], bottom);
  }
  g->below = soil_of(&site->footing, &design->footing, -INFINITY);
  g->paired_kpa = design->paired_kpa;
  g->paired_depth_m = site->paired.depth_m;
  g->shallow_kpa = design->shallow_kpa;
}

/* As it stands behind the wall and in front, above the ground too: under the wall it is the uplift's. In
 * front no lower than the base where it seeps under. */
static void water(const lw_site *site, const lw_section *section, double depth_m, lw_slip_ground *g) {
  double rear = section->height_m - depth_m;
  double ahead = section->height_m - site->front_water_depth_m;
  if (isfinite(rear) && !isfinite(ahead)) ahead = fmin(rear, 0.0);
  g->water = (lw_slip_water){.front_x_m = 0.0,
                             .front_y_m = isfinite(ahead) ? ahead : -INFINITY,
                             .rear_x_m = fmax(section->base_width_m, JUST_M),
                             .rear_y_m = isfinite(rear) ? rear : ahead,
                             .unit_weight_kn_per_m3 = site->water_unit_weight_kn_per_m3};
}

static void load(lw_slip_ground *g, lw_slip_load one) {
  assert(g->load_count < LW_SLIP_LOAD_MAX);
  g->load[g->load_count++] = one;
}

static void loads(const lw_site *site, lw_corner from, double middle_m, double far_m, lw_slip_ground *g) {
  if (site->surcharge_kpa > 0.0)
    load(g, (lw_slip_load){from.x_m, from.x_m + far_m, site->surcharge_kpa, 0.0, 0.0});
  for (int i = 0; i < site->load_count; i++) {
    const lw_site_load *l = &site->load[i];
    if (l->other_wall) continue;
    if (l->kind == LW_LOAD_STRIP)
      load(g, (lw_slip_load){from.x_m + fmax(l->near_m, 0.0), from.x_m + l->far_m, l->pressure_kpa, 0.0,
                             l->below_m});
    else if (l->kind == LW_LOAD_CAP)
      load(g, (lw_slip_load){middle_m, middle_m, 0.0, l->force, 0.0});
    else
      load(g, (lw_slip_load){from.x_m + l->near_m, from.x_m + l->near_m, 0.0, l->force, l->below_m});
  }
}

/* All of its weight, cap included, spread over its outline. */
static void body(const lw_section *section, lw_slip_ground *g) {
  double area;
  lw_corner at;
  g->body_count = section->outline_count;
  for (int i = 0; i < section->outline_count; i++) g->body[i] = section->outline[i];
  lw_polygon_area(section->outline, section->outline_count, &area, &at);
  g->body_kn_per_m3 = lw_section_weight(section) / area;
}

static void pad(const lw_site *site, const lw_section *section, lw_slip_ground *g) {
  double beyond = fmax(0.5 * (site->pad.width_m - section->base_width_m), 0.0);
  bool there = site->pad.thickness_m > 0.0;
  g->pad_front_m = there ? -beyond : 0.0;
  g->pad_rear_m = section->base_width_m + (there ? beyond : 0.0);
  g->pad_y_m = -site->pad.thickness_m;
}

/* Height of the wall, of a second one that is taken with it, and of a trench. */
static double height_of(const lw_wall *wall, const lw_front *ahead) {
  double trench = ahead->open ? wall->site.trench_depth_m : 0.0;
  return wall->section.height_m + wall->site.pad.thickness_m +
         (takes_both(wall) ? wall->tier.height_m : 0.0) + trench;
}

/* Where the last load ends, behind the wall. */
static double loads_end(const lw_site *site) {
  double end = 0.0;
  for (int i = 0; i < site->load_count; i++) {
    const lw_site_load *l = &site->load[i];
    if (l->other_wall || l->kind == LW_LOAD_CAP) continue;
    end = fmax(end, l->kind == LW_LOAD_STRIP ? l->far_m : l->near_m);
  }
  return end;
}

/* Where circles come out and go in, from the wall: to the end of a rise, a fall or a load and some heights
 * beyond. */
typedef struct reach {
  double ahead_m, behind_m;
} reach;

static reach reach_of(const lw_wall *wall, const lw_front *ahead) {
  const lw_site *site = &wall->site;
  bool rises = site->slope_rad > 0.0 && site->slope_run_m > 0.0, ends = isfinite(site->slope_run_m);
  double run = rises && ends ? site->slope_run_m : 0.0, height = height_of(wall, ahead);
  double own = REACH_IN_HEIGHTS * (height + run * tan(site->slope_rad)) +
               (takes_both(wall) ? wall->tier.distance_m : 0.0) +
               (ahead->open ? site->trench_distance_m : 0.0);
  if (ahead->slope_rad > 0.0 || (rises && !ends)) own = fmax(ENDLESS_IN_HEIGHTS * height, own);
  return (reach){own, own + fmax(run, loads_end(site))};
}

static void box(const lw_section *section, double height, double crest_m, const reach *far,
                lw_slip_ground *g) {
  double rear = fmax(fmax(section->rear_m, g->pad_rear_m), crest_m);
  g->box = (lw_slip_box){.exit_from_m = -far->ahead_m,
                         .exit_to_m = fmin(g->pad_front_m, 0.0) - JUST_M,
                         .entry_from_m = rear + JUST_M,
                         .entry_to_m = rear + far->behind_m,
                         .exit_half_m = height,
                         .entry_half_m = height};
}

void lw_slip_ground_build(const lw_wall *wall, const lw_ground *state, lw_slip_ground *g) {
  const lw_section *section = &wall->section;
  const lw_site *site = &wall->site;
  lw_corner from = {fmax(section->crest.x_m, JUST_M), section->height_m - site->soil_below_top_m};
  reach far = reach_of(wall, &state->front);
  *g = (lw_slip_ground){
      .floor_y_m = -INFINITY, .raised_x_m = INFINITY, .seismic_horizontal = state->seismic.horizontal};
  front(wall, &state->front, 2.0 * far.ahead_m, g);
  behind(wall, from, 2.0 * far.behind_m, g);
  layers(site, &state->design, section->height_m, g);
  water(site, section, state->water_depth_m, g);
  loads(site, from, 0.5 * from.x_m, 2.0 * far.behind_m, g);
  body(section, g);
  pad(site, section, g);
  box(section, height_of(wall, &state->front), from.x_m, &far, g);
}
