/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/section.h>

#include <math.h>
#include <stddef.h>
#include <string.h>

#include "base/extremes.h"

#include "outline.h"

void lw_section_build(const lw_case *c, lw_section *section) {
  /* All but the lists, which are filled up to their counts. */
  memset(section, 0, offsetof(lw_section, part));
  section->kind = (lw_wall_kind)c->wall_kind.value;
  section->embedment_m = c->wall_embedment.si;
  section->bearing_embedment_m = c->wall_embedment.origin == LW_GIVEN ? c->wall_embedment.si : 0.0;
  section->height_m = c->wall_height.si + c->wall_embedment.si;
  if (section->kind == LW_WALL_COURSES)
    lw_section_of_courses(c, section);
  else
    lw_section_of_polygon(c, section);
  if (section->outline_count > 0) lw_section_measure(section);
}

void lw_section_copy(const lw_section *from, lw_section *to) {
  memcpy(to, from, offsetof(lw_section, part));
  memcpy(to->part, from->part, (size_t)from->part_count * sizeof from->part[0]);
  memcpy(to->outline, from->outline, (size_t)from->outline_count * sizeof from->outline[0]);
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

double lw_section_rear(const lw_section *section, double y_m) {
  double rear = 0.0;
  for (int i = 0; i < section->outline_count; i++) {
    const lw_corner *a = &section->outline[i], *b = &section->outline[(i + 1) % section->outline_count];
    if (a->y_m >= y_m - 1e-9) rear = lw_larger(rear, a->x_m);
    bool crosses = (a->y_m - y_m) * (b->y_m - y_m) < 0.0;
    if (crosses) rear = lw_larger(rear, a->x_m + (b->x_m - a->x_m) * (y_m - a->y_m) / (b->y_m - a->y_m));
  }
  return rear;
}

static lw_corner crest_of(const lw_section *section) {
  lw_corner crest = section->outline[0];
  for (int i = 1; i < section->outline_count; i++) {
    const lw_corner *at = &section->outline[i];
    bool higher = at->y_m > crest.y_m + 1e-9, level = fabs(at->y_m - crest.y_m) <= 1e-9;
    if (higher || (level && at->x_m > crest.x_m)) crest = *at;
  }
  return crest;
}

static double back_lean_of(const lw_section *section) {
  double top = section->crest.x_m;
  /* A cap shallower than the blocks does not pull the back forwards: the blocks under it still lean. */
  if (section->has_cap && section->part_count > 1)
    top = lw_larger(top, section->part[section->part_count - 2].rear_m);
  return (section->back_foot_m - top) / section->crest.y_m;
}

void lw_section_measure(lw_section *section) {
  section->crest = crest_of(section);
  /* A sheet's heights may differ by a millimetre: what stands there is what its courses or points make. */
  section->height_m = section->crest.y_m;
  section->rear_m = lw_section_rear(section, 0.0);
  section->back_lean = back_lean_of(section);
  section->back_rad = atan(section->back_lean);
}
