/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "gather.h"

#include <math.h>

#include "base/extremes.h"
#include "wall/measure.h"
#include "forces.h"
#include "inertia.h"
#include "outline_water.h"
#include "soil_on_wall.h"

static void add_weights(const lw_section *section, lw_forces *forces) {
  for (int i = 0; i < section->part_count; i++) {
    const lw_part *part = &section->part[i];
    lw_forces_add(forces, (lw_force){.kind = LW_FORCE_PART,
                                     .index = i,
                                     .area_m2 = part->area_m2,
                                     .unit_weight_kn_per_m3 = part->unit_weight_kn_per_m3,
                                     .moved_kn_per_m = part->weight_kn_per_m,
                                     .vertical_kn_per_m = part->weight_kn_per_m,
                                     .x_m = part->x_m,
                                     .y_m = part->y_m});
  }
}

/* The uniform load above a heel presses on it only where the method says so. */
static void add_surcharge_on_wall(const lw_wall *wall, const lw_section *section, const lw_back_plane *back,
                                  lw_forces *forces) {
  /* Nobody loads ground that a course or a cap hangs over. */
  double start = lw_larger(back->ground_x_m, lw_section_rear(section, back->ground_y_m));
  double width = back->top_x_m - start, load = back->plane.surcharge_kpa * width;
  if (wall->method.surcharge_on_heel != LW_SURCHARGE_PRESSES || load <= 0.0 || back->overhangs) return;
  lw_forces_add(forces, (lw_force){.kind = LW_FORCE_SURCHARGE_ON_WALL,
                                   .area_m2 = width,
                                   .moved_kn_per_m = load,
                                   .vertical_kn_per_m = load,
                                   .x_m = start + 0.5 * width,
                                   .y_m = back->top_y_m});
}

/* Where a thrust at this height meets its plane. */
static double plane_x(const lw_back_plane *back, double above_foot_m) {
  return back->foot_x_m - above_foot_m * back->lean;
}

/* Each part of the thrust has a factor of its own. */
static void add_thrust(const lw_push *push, lw_forces *forces) {
  static const lw_force_kind KIND[LW_PUSH_PARTS] = {LW_FORCE_THRUST, LW_FORCE_SURCHARGE_THRUST,
                                                    LW_FORCE_SEISMIC_THRUST, LW_FORCE_LOADS_THRUST,
                                                    LW_FORCE_LEVEL_THRUST};
  const lw_thrust *t = &push->thrust;
  for (int i = 0; i < LW_PUSH_PARTS; i++) {
    const lw_lateral *part = &push->part[i];
    if (part->thrust_kn_per_m < 1e-12) continue;
    double share = part->thrust_kn_per_m / t->total_kn_per_m;
    lw_forces_add(forces, (lw_force){.kind = KIND[i],
                                     .horizontal_kn_per_m = share * t->horizontal_kn_per_m,
                                     .vertical_kn_per_m = share * t->vertical_kn_per_m,
                                     .x_m = plane_x(&push->back, part->height_m),
                                     .y_m = push->back.foot_y_m + part->height_m});
  }
}

/* Loads at a distance push level, beside the formula's thrust; a wedge that governs carries them already. */
static void add_loads_thrust(const lw_push *push, lw_forces *forces) {
  const lw_elastic *loads = &push->elastic;
  if (push->wedge_governs || loads->push_kn_per_m < 1e-12) return;
  lw_forces_add(forces, (lw_force){.kind = LW_FORCE_LOADS_THRUST,
                                   .horizontal_kn_per_m = loads->push_kn_per_m,
                                   .x_m = plane_x(&push->back, loads->height_m),
                                   .y_m = push->back.foot_y_m + loads->height_m});
}

/* Water that stands in a tension crack pushes above the water that stands behind the wall. */
static void add_crack_water(const lw_push *push, lw_forces *forces) {
  const lw_plane *plane = &push->back.plane;
  const lw_thrust *t = &push->thrust;
  double deep = lw_larger(plane->height_m - plane->water_depth_m, 0.0);
  double behind = 0.5 * plane->water_unit_weight_kn_per_m3 * deep * deep;
  double crack = t->water_kn_per_m - behind;
  if (crack <= 1e-9) return;
  double height = (t->water_kn_per_m * t->water_height_m - behind * deep / 3.0) / crack;
  lw_forces_add(forces, (lw_force){.kind = LW_FORCE_WATER,
                                   .horizontal_kn_per_m = crack,
                                   .x_m = push->back.foot_x_m,
                                   .y_m = push->back.foot_y_m + height});
}

/* Front edge of the top: of the cap, or of the highest block. */
static lw_corner top_front(const lw_section *section) {
  lw_corner front = section->crest;
  for (int i = 0; i < section->outline_count; i++)
    if (section->outline[i].y_m > front.y_m - 1e-9)
      front.x_m = lw_smaller(front.x_m, section->outline[i].x_m);
  if (section->has_cap) front.x_m = section->cap_front_m;
  return front;
}

static void add_people(const lw_section *section, const lw_actions *actions, lw_forces *forces) {
  if (actions->people_down_kn_per_m <= 0.0 && actions->people_out_kn_per_m <= 0.0) return;
  lw_corner front = top_front(section);
  lw_forces_add(forces, (lw_force){.kind = LW_FORCE_PEOPLE,
                                   .horizontal_kn_per_m = actions->people_out_kn_per_m,
                                   .vertical_kn_per_m = actions->people_down_kn_per_m,
                                   .x_m = front.x_m,
                                   .y_m = front.y_m});
}

/* A load on the cap stands on its middle, and may be absent; what pushes at its level does so always. */
static void add_cap_loads(const lw_site *site, const lw_section *section, bool weighs, lw_forces *forces) {
  for (int i = 0; i < site->load_count; i++) {
    const lw_site_load *load = &site->load[i];
    if (load->kind != LW_LOAD_CAP || (!weighs && load->push <= 0.0)) continue;
    double front = top_front(section).x_m;
    double rear = section->has_cap ? front + section->cap_depth_m : section->crest.x_m;
    lw_forces_add(forces, (lw_force){.kind = LW_FORCE_CAP_LOAD,
                                     .moved_kn_per_m = weighs ? load->force : 0.0,
                                     .horizontal_kn_per_m = load->push,
                                     .vertical_kn_per_m = weighs ? load->force : 0.0,
                                     .x_m = 0.5 * (front + rear),
                                     .y_m = section->crest.y_m});
  }
}

void lw_forces_gather(const lw_wall *wall, const lw_load_case *load_case, const lw_section *section,
                      const lw_push *push, lw_forces *forces) {
  const lw_ground *ground = &load_case->ground;
  lw_stack stack = {section, -push->back.foot_y_m};
  forces->count = 0;
  forces->factors = load_case->actions.factors;
  add_weights(section, forces);
  lw_soil_on_wall(wall, ground, section, &push->back, forces);
  add_surcharge_on_wall(wall, section, &push->back, forces);
  add_thrust(push, forces);
  add_loads_thrust(push, forces);
  add_crack_water(push, forces);
  lw_water_on_outline(&wall->site, ground, &stack, forces);
  add_people(section, &load_case->actions, forces);
  add_cap_loads(&wall->site, section, load_case->actions.cap_load, forces);
  lw_seismic_on_wall(&wall->site, ground, section, &push->back, forces);
}
