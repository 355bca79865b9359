/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "lines_ground.h"

#include <stdlib.h>

#include "tables/known.h"
#include "plan_area.h"
#include "take_off.h"

/* Lines of what is dug, and of what is laid under the blocks: lengths and areas are those of the plan. */

/* At a step the lower dig runs on under the upper one, as deep as the base rises there. */
static double under_steps(const lw_take_off *t, bool to_the_rear) {
  double sum = 0.0;
  for (int i = 0; i + 1 < t->part_count; i++) {
    int rise = lw_part_rise(t, i);
    const lw_base_part *p = &t->part[rise > 0 ? i + 1 : i];
    double wide = p->pad_front_m + (to_the_rear ? p->dig_rear_m : p->pad_rear_m);
    sum += t->step_under_m * wide * abs(rise) * t->laying->plan->course_m;
  }
  return sum;
}

static void digging(const lw_take_off *t) {
  double dig = under_steps(t, true);
  for (int i = 0; i < t->part_count; i++) {
    const lw_base_part *p = &t->part[i];
    dig += lw_part_strip(p, -p->pad_front_m, p->dig_rear_m) * (p->ground_m + t->bedding_m + t->pad_m);
  }
  lw_line_put(t, &(lw_order_line){.kind = LW_LINE_DIG, .net = dig}, NULL);
  lw_quantity swell = t->o->spoil_bulking;
  swell.si -= 1.0;
  lw_order *order = t->laying->order;
  lw_order_line *l = lw_line_put(t, &(lw_order_line){.kind = LW_LINE_SPOIL, .net = dig}, &swell);
  order->spoil_kg = l->mass_kg = dig * lw_known_value(t->tables, LW_ORDERING_SOIL_DUG);
  order->skips = (int)lw_pieces_up(l->order / t->o->skip_volume.si);
  order->spoil_barrows = lw_barrows(t, l->order, l->mass_kg);
}

static void pad(const lw_take_off *t) {
  if (!(t->pad_m > 0.0)) return;
  double volume = under_steps(t, false), bedding = 0.0;
  for (int i = 0; i < t->part_count; i++) {
    const lw_base_part *p = &t->part[i];
    volume += lw_part_strip(p, -p->pad_front_m, p->pad_rear_m) * t->pad_m;
    bedding += lw_face_strip(&p->face, p->offset_m, p->offset_m + p->depth_m) * t->bedding_m;
  }
  lw_quantity loose = t->o->stone_compaction;
  loose.si -= 1.0;
  lw_order_line *l = lw_line_put(t, &(lw_order_line){.kind = LW_LINE_PAD_STONE, .net = volume}, &loose);
  l->mass_kg = volume * lw_known_value(t->tables, LW_ORDERING_PAD_STONE_DENSITY);
  double sand = bedding * lw_known_value(t->tables, LW_ORDERING_BEDDING_LOOSE);
  if (!(bedding > 0.0)) return;
  l = lw_line_put(t, &(lw_order_line){.kind = LW_LINE_BEDDING_SAND, .net = sand}, NULL);
  l->mass_kg = sand * lw_known_value(t->tables, LW_ORDERING_SAND_DENSITY);
  double cement = sand / t->o->bedding_ratio.si * lw_known_value(t->tables, LW_ORDERING_CEMENT_DENSITY);
  l = lw_line_put(t, &(lw_order_line){.kind = LW_LINE_CEMENT, .net = cement / t->o->cement_bag_mass.si},
                  NULL);
  l->order = lw_pieces_up(l->net);
  l->mass_kg = l->order * t->o->cement_bag_mass.si;
}

void lw_lines_ground(const lw_take_off *t) {
  digging(t);
  pad(t);
}
