/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "section.h"

#include <lowwall/wall.h>

#include <stddef.h>
#include <string.h>

#include "courses.h"
#include "measure.h"
#include "trapezoid.h"

void lw_section_build(const lw_case *c, const lw_tables *tables, lw_section *section) {
  /* All but the lists, which are filled up to their counts. */
  memset(section, 0, offsetof(lw_section, part));
  section->kind = (lw_wall_kind)c->wall.kind.value;
  section->embedment_m = c->wall.embedment.si;
  section->bearing_embedment_m = c->wall.embedment.origin == LW_GIVEN ? c->wall.embedment.si : 0.0;
  section->height_m = c->wall.height.si + c->wall.embedment.si;
  if (section->kind == LW_WALL_COURSES)
    lw_section_of_courses(c, tables, section);
  else
    lw_section_of_polygon(c, section);
  if (section->outline_count > 0) lw_section_measure(section);
}

double lw_section_weight(const lw_section *section) {
  double sum = 0.0;
  for (int i = 0; i < section->part_count; i++) sum += section->part[i].weight_kn_per_m;
  return sum;
}

double lw_section_moment(const lw_section *section) {
  double sum = 0.0;
  for (int i = 0; i < section->part_count; i++)
    sum += section->part[i].weight_kn_per_m * section->part[i].x_m;
  return sum;
}
