/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "measure.h"

#include <math.h>

#include "base/extremes.h"

/* What is read off the outline: crest, rear and the lean of the back. */

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
