/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "outline_water.h"

#include <math.h>

#include "base/extremes.h"
#include "forces.h"

/* Water acts normal to the real outline: inwards on the back, down on steps, up under overhangs. */

typedef struct push_sum {
  double force, moment;
} push_sum;

typedef struct water_sum {
  push_sum level, down, up;
} water_sum;

/* One edge of the outline, wall on its left, in water that stands at level_m. */
static void edge(lw_corner p, lw_corner q, double level_m, double unit_weight, water_sum *sum) {
  double hp = level_m - p.y_m, hq = level_m - q.y_m;
  if (hp <= 0.0 && hq <= 0.0) return;
  if (hp < 0.0 || hq < 0.0) {
    double t = hp / (hp - hq);
    lw_corner at = {p.x_m + t * (q.x_m - p.x_m), level_m};
    if (hp < 0.0)
      p = at, hp = 0.0;
    else
      q = at, hq = 0.0;
  }
  double mean = 0.5 * unit_weight * (hp + hq), t = (hp + 2.0 * hq) / (3.0 * (hp + hq));
  double x = p.x_m + t * (q.x_m - p.x_m), y = p.y_m + t * (q.y_m - p.y_m);
  double level = mean * (q.y_m - p.y_m), down = -mean * (q.x_m - p.x_m);
  push_sum *vertical = down >= 0.0 ? &sum->down : &sum->up;
  sum->level.force += level;
  sum->level.moment += level * y;
  vertical->force += down;
  vertical->moment += down * x;
}

static void add(lw_forces *forces, lw_force_kind kind, const push_sum *vertical, const push_sum *level) {
  bool stands = fabs(vertical->force) > 1e-12, pushes = level && fabs(level->force) > 1e-12;
  if (!stands && !pushes) return;
  lw_forces_add(forces, (lw_force){.kind = kind,
                                   .horizontal_kn_per_m = pushes ? level->force : 0.0,
                                   .vertical_kn_per_m = stands ? vertical->force : 0.0,
                                   .x_m = stands ? vertical->moment / vertical->force : 0.0,
                                   .y_m = pushes ? level->moment / level->force : 0.0});
}

/* Corners of the outline run counter-clockwise from the toe: base, back, top, face. */
static int crest_index(const lw_section *section) {
  lw_corner crest = section->crest;
  int i = 0;
  while (fabs(section->outline[i].x_m - crest.x_m) > 1e-12 ||
         fabs(section->outline[i].y_m - crest.y_m) > 1e-12)
    i++;
  return i;
}

static int rear_foot_index(const lw_section *section) {
  int i = 0;
  while (section->outline[i + 1].y_m < 1e-9) i++;
  return i;
}

static void side(const lw_section *section, int from, int to, double level_m, double unit_weight,
                 water_sum *sum) {
  for (int i = from; i < to; i++)
    edge(section->outline[i], section->outline[(i + 1) % section->outline_count], level_m, unit_weight, sum);
}

/* Undersides that the outline leaves out: of a cap's overhang, which holds no ground, and of what the lowest
 * course of a stack above a joint has beyond that joint. */
static void lift_behind(const lw_section *section, double level_m, double unit_weight, water_sum *sum) {
  const lw_part *cap = &section->part[section->part_count - 1];
  lw_corner bears = {section->crest.x_m, cap->bottom_m}, rear = {cap->rear_m, cap->bottom_m};
  edge((lw_corner){section->contact_rear_m, 0.0}, section->outline[rear_foot_index(section)], level_m,
       unit_weight, sum);
  if (section->has_cap) edge(bears, rear, level_m, unit_weight, sum);
}

static void lift_front(const lw_section *section, double level_m, double unit_weight, water_sum *sum) {
  const lw_part *cap = &section->part[section->part_count - 1], *below = cap - 1;
  edge(section->outline[0], (lw_corner){section->contact_front_m, 0.0}, level_m, unit_weight, sum);
  if (!section->has_cap || section->part_count < 2) return;
  lw_corner front = {cap->front_m, cap->bottom_m};
  lw_corner bears = {lw_larger(below->front_m, cap->front_m), cap->bottom_m};
  edge(front, bears, level_m, unit_weight, sum);
}

void lw_water_on_outline(const lw_site *site, const lw_ground *ground, const lw_stack *stack,
                         lw_forces *forces) {
  const lw_section *section = stack->section;
  double behind = section->height_m - ground->water_depth_m,
         front = section->height_m - site->front_water_depth_m, below_m = stack->below_m;
  double unit_weight = site->water_unit_weight_kn_per_m3;
  if (behind <= -below_m && front <= -below_m) return;
  int foot = rear_foot_index(section), crest = crest_index(section);
  if (behind > -below_m) {
    water_sum sum = {0};
    double rear = section->outline[foot].x_m;
    edge((lw_corner){rear, -below_m}, (lw_corner){rear, 0.0}, behind, unit_weight, &sum);
    side(section, foot, crest, behind, unit_weight, &sum);
    lift_behind(section, behind, unit_weight, &sum);
    add(forces, LW_FORCE_WATER, &sum.down, &sum.level);
    add(forces, LW_FORCE_WATER, &sum.up, NULL);
  }
  if (front > -below_m) {
    water_sum sum = {0};
    side(section, crest, section->outline_count, front, unit_weight, &sum);
    lift_front(section, front, unit_weight, &sum);
    edge((lw_corner){0.0, 0.0}, (lw_corner){0.0, -below_m}, front, unit_weight, &sum);
    add(forces, LW_FORCE_FRONT_WATER, &sum.down, &sum.level);
    add(forces, LW_FORCE_FRONT_WATER, &sum.up, NULL);
  }
}
