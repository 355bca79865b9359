/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "lines_solid.h"

#include <lowwall/wall.h>

#include "wall/polygon.h"
#include "plan_area.h"
#include "take_off.h"

/* A wall that is no stack of blocks: stone laid dry, or concrete, by volume and by tonne. */

void lw_lines_solid(const lw_take_off *t) {
  const lw_section *section = t->laying->section;
  double area, volume = 0.0;
  lw_corner middle;
  lw_polygon_area(section->outline, section->outline_count, &area, &middle);
  /* Swept along the plan: its area times the length of the way of its centroid. */
  for (int i = 0; i < t->part_count; i++) volume += area * lw_face_at(&t->part[i].face, middle.x_m);
  lw_order_line line = {.kind = LW_LINE_WALL_STONE, .volume_m3 = volume};
  line.unit_weight_kn_per_m3 = t->laying->unit_weight_kn_per_m3;
  line.net = volume * t->laying->unit_weight_kn_per_m3 / 9.80665;
  lw_order_line *l = lw_line_put(t, &line, &t->o->stone_allowance);
  l->mass_kg = l->order * 1000.0;
}
